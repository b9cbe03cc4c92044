"""What the owner says of her lines: what a text costs, and how many may leave."""

from __future__ import annotations

from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.utils.translation import gettext_lazy as _

from studio.forms.fields import RecordForm


class LineForm(RecordForm):
    """What one text costs, as the carrier bills it, and how many may leave."""

    price = forms.DecimalField(
        label=_("price of one text"),
        required=False,
        min_value=0,
        max_digits=9,
        decimal_places=5,
        help_text=_("Of one part of 160 letters, as your carrier bills it. Empty: not known."),
    )
    currency = forms.CharField(
        label=_("currency"), required=False, max_length=3, help_text=_("Three letters, such as USD, GBP or EUR.")
    )

    most_a_day = forms.IntegerField(
        label=_("at most so many texts a day"),
        required=False,
        min_value=1,
        max_value=1_000_000,
        help_text=_(
            "As they are billed. Beyond it, instructions and reminders wait for the next day. Answers, pages, "
            "aftercare, checks and patch tests always go. Empty: no limit."
        ),
    )
    most_a_second = forms.IntegerField(
        label=_("at most so many texts a second"),
        required=False,
        min_value=1,
        max_value=10_000,
        help_text=_("Where your carrier takes only so many. Empty: no limit."),
    )

    def clean_currency(self) -> str:
        """Return the currency's code (ISO 4217) in capitals."""
        code = str(self.cleaned_data["currency"]).strip().upper()
        if code and not (len(code) == 3 and code.isascii() and code.isalpha()):
            raise ValidationError(
                _("“%(code)s” is no currency: write its three letters, such as USD."), params={"code": code}
            )
        return code

    def clean(self) -> dict[str, Any]:
        """A price without its currency says nothing."""
        clean = super().clean() or self.cleaned_data
        if clean.get("price") is not None and clean.get("currency") == "" and "currency" not in self.errors:
            self.add_error("currency", _("Say in which currency: three letters, such as USD."))
        return clean
