"""Editing a wording."""

from __future__ import annotations

from typing import Any

from django import forms
from django.utils.translation import gettext_lazy as _

from aftercare.core.placeholders import LONGEST_SOURCE
from studio.forms.fields import RecordForm


class WordingForm(RecordForm):
    """The text with its fields, and on which version it builds."""

    subject = forms.CharField(label=_("Subject"), max_length=200, required=False)
    body = forms.CharField(
        label=_("Text"),
        max_length=LONGEST_SOURCE,
        required=False,  # the check says it better
        strip=False,
        widget=forms.Textarea(attrs={"rows": 10, "spellcheck": "true"}),
    )
    seen = forms.IntegerField(widget=forms.HiddenInput, min_value=0)

    def __init__(self, *args: Any, channel: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        if channel == "sms":
            del self.fields["subject"]

    def clean_body(self) -> str:
        """Return the text with plain line ends: a browser sends its own."""
        return str(self.cleaned_data["body"]).replace("\r\n", "\n").strip()
