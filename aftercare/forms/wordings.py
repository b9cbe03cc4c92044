"""Editing a wording: its words, a caution's, for whom it is shown; adding one; the head of the letters."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from django import forms
from django.core.exceptions import ValidationError
from django.utils.translation import gettext_lazy as _

from aftercare.core.placeholders import LONGEST_SOURCE
from aftercare.pages.wording import Draft
from aftercare.versions import NOBODY, Seen, Slot
from studio.forms.fields import Day, RecordForm

if TYPE_CHECKING:
    from django_stubs_ext import StrPromise as _StrPromise

NOBODY_REAL = "longest"
LONGEST_ADDITION = 1_000  # characters: a caution that nobody reads to its end warns of nothing


def _text(label: _StrPromise, rows: int, **more: Any) -> forms.CharField:
    return forms.CharField(
        label=label,
        required=False,  # the check says it better
        strip=False,
        widget=forms.Textarea(attrs={"rows": rows, "spellcheck": "true", "dir": "auto"}),
        **more,
    )


class WordingForm(RecordForm):
    """The text with its fields, on which version it builds, and for whom it is shown."""

    subject = forms.CharField(label=_("Subject"), max_length=200, required=False)
    body = _text(
        _("Text"),
        12,
        max_length=LONGEST_SOURCE,
        help_text=_("What stands in braces is filled in for each client; all else goes as you write it."),
    )
    added = _text(
        _("Added below the caution"),
        4,
        max_length=LONGEST_ADDITION,
        help_text=_("For example where she is seen at night. What the caution says stays as it is, above."),
    )
    confirmed = forms.BooleanField(
        label=_("A clinician has seen exactly these words and agrees to them"), required=False
    )
    seen_by = forms.CharField(label=_("name of the clinician"), max_length=120, required=False)
    seen_on = Day(label=_("seen on"), required=False)
    seen = forms.IntegerField(widget=forms.HiddenInput, min_value=0)
    token = forms.CharField(widget=forms.HiddenInput, max_length=40, required=False)

    def __init__(self, *args: Any, slot: Slot, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.slot = slot
        if slot.channel == "sms" or slot.is_caution:
            del self.fields["subject"]
        if slot.is_caution:
            self.fields["body"].label = _("The caution itself")
        else:
            for name in ("added", "confirmed", "seen_by", "seen_on"):
                del self.fields[name]

    def clean_body(self) -> str:
        """Return the text with plain line ends; '' where it is the caution's own."""
        body = _plain(self.cleaned_data["body"])
        own = self.slot.is_caution and (body == self.slot.first().body or not body)
        return "" if own else body

    def clean_added(self) -> str:
        """Return what is added with plain line ends."""
        return _plain(self.cleaned_data["added"])

    @property
    def draft(self) -> Draft:
        """What was typed; needs a valid form."""
        clean = self.cleaned_data
        return Draft(clean.get("subject", ""), clean["body"], clean.get("added", ""))

    @property
    def professional(self) -> Seen:
        """Who has seen a caution's other words. Raises ValidationError where nobody confirms that it was these."""
        clean = self.cleaned_data
        if not self.slot.is_caution or not clean["body"]:
            return NOBODY
        if not clean["confirmed"]:
            raise ValidationError(
                {"confirmed": _("Other words for the caution need a clinician’s eyes first: confirm it, or add below.")}
            )
        return Seen(clean["seen_by"], clean["seen_on"])


def _plain(text: str) -> str:
    """Return a text as it was typed, with line ends of one kind: a browser sends its own."""
    return str(text).replace("\r\n", "\n").strip()


class WhoForm(forms.Form):
    """For whom a wording is shown: one of her clients, found by name, or the longest names."""

    find = forms.CharField(
        label=_("Another client"), required=False, max_length=80, widget=forms.TextInput(attrs={"type": "search"})
    )
    who = forms.ChoiceField(label=_("Shown for"), required=False)

    def __init__(self, *args: Any, people: list[tuple[str, str]], **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.fields["who"] = forms.ChoiceField(
            label=_("Shown for"), required=False, choices=[(NOBODY_REAL, _("the longest names there are")), *people]
        )


class LogoForm(RecordForm):
    """The picture above the letters."""

    logo = forms.FileField(
        label=_("logo"),
        help_text=_("PNG or JPEG, up to 5 MB. It is made small and shown 240 by 80 pixels at most."),
        widget=forms.ClearableFileInput(attrs={"accept": "image/png,image/jpeg"}),
    )
