"""A word to those who are booked on a day."""

from __future__ import annotations

from typing import Any
from uuid import uuid4

from django import forms
from django.utils.translation import gettext_lazy as _

from aftercare.telling import LONGEST
from studio.forms.fields import RecordForm


class TellForm(RecordForm):
    """Her own words, if any, and what makes two taps one message each."""

    text = forms.CharField(
        label=_("Your own words"),
        help_text=_("Leave it empty to send the studio’s wording. The studio’s name and how to stop are added."),
        required=False,
        max_length=LONGEST,
        widget=forms.Textarea(attrs={"rows": 4, "spellcheck": "true"}),
    )
    token = forms.CharField(widget=forms.HiddenInput, max_length=40)

    def __init__(self, data: Any = None) -> None:
        super().__init__(data, initial={"token": uuid4().hex})
