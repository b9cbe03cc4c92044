"""Answering from the pretend phone."""

from __future__ import annotations

from typing import Any

from django import forms
from django.utils.translation import gettext_lazy as _


class AnswerForm(forms.Form):
    """What she writes, and by which road."""

    text = forms.CharField(
        label=_("Her answer"),
        max_length=2000,
        strip=False,
        widget=forms.Textarea(attrs={"rows": 3}),
        error_messages={"required": _("Write what she answers.")},
    )
    channel = forms.ChoiceField(label=_("Sent"), widget=forms.RadioSelect)

    def __init__(self, *args: Any, channels: list[tuple[str, str]], newest: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        field: Any = self.fields["channel"]
        field.initial = newest or next((name for name, _words in channels), "")
        field.choices = channels
