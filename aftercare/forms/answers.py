"""A person's answer."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any
from uuid import uuid4

from django import forms
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from aftercare.answers import LONGEST, Road
from studio.forms.fields import RecordForm


def way(road: Road) -> str:
    """Say how an answer goes: by which channel, to where, and under which subject."""
    if road.channel == "sms":
        return gettext("by text to %(address)s") % {"address": road.address}
    return gettext("by e-mail to %(address)s, subject “%(subject)s”") % {
        "address": road.address,
        "subject": road.subject,
    }


class AnswerForm(RecordForm):
    """Her words, the road, and what makes two taps one message."""

    channel = forms.ChoiceField(label=_("How it goes"), widget=forms.RadioSelect)
    text = forms.CharField(
        label=_("Your answer"),
        max_length=2 * LONGEST,
        widget=forms.Textarea(attrs={"rows": 6, "spellcheck": "true"}),
        error_messages={"required": _("Write what is to be sent.")},
    )
    token = forms.CharField(widget=forms.HiddenInput, max_length=40)

    def __init__(self, data: Any = None, *, roads: Sequence[Road], text: str = "", channel: str = "") -> None:
        first = channel or next((road.channel for road in roads), "")
        super().__init__(data, initial={"channel": first, "text": text, "token": uuid4().hex})
        choices = [(road.channel, way(road)) for road in roads]
        self.fields["channel"].choices = choices  # type: ignore[attr-defined]
        if len(roads) == 1:
            self.fields["channel"].widget = forms.HiddenInput()
