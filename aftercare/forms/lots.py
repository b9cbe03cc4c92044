"""The owner's level for lots of adhesive."""

from __future__ import annotations

from django import forms
from django.utils.translation import gettext_lazy as _

from studio.forms.fields import RecordForm

LEVELS = (10, 20, 50, 100)  # of so many lots like all others, one may ever be marked


class LevelForm(RecordForm):
    """How readily a lot is marked."""

    one_in = forms.TypedChoiceField(
        label=_("Of so many lots like all others, one may be marked by chance"),
        choices=[(number, str(number)) for number in LEVELS],
        coerce=int,
        help_text=_("A smaller number marks a bad lot sooner, and a good one more often."),
    )
