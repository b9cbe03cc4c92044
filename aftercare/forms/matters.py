"""Closing an open matter."""

from __future__ import annotations

from django import forms
from django.utils.translation import gettext_lazy as _

from studio.forms.fields import RecordForm

# What came of it. The software never decides which: a person chooses, and says it in words.
OUTCOMES = [
    ("spoke", _("spoke with her")),
    ("sent to care", _("told her to see a doctor or an eye doctor")),
    ("comes in", _("she comes in to be looked at")),
    ("no reply needed", _("no answer was needed")),
    ("not reached", _("not reached, after several tries")),
]


class CloseForm(RecordForm):
    """What came of it."""

    outcome = forms.ChoiceField(
        label=_("What came of it?"),
        choices=OUTCOMES,
        widget=forms.RadioSelect,
        error_messages={"required": _("Choose what came of it.")},
    )
    words = forms.CharField(
        label=_("In your own words, or hers"),
        widget=forms.Textarea(attrs={"rows": 3}),
        help_text=_("What she said, what you said, what happens next. No diagnosis."),
        error_messages={"required": _("Write a few words: they are all that is kept of it.")},
    )
