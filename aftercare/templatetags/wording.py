"""What a wording costs, in words."""

from __future__ import annotations

from decimal import Decimal

from babel.numbers import UnknownCurrencyError, format_currency
from django import template
from django.utils.translation import get_language

from aftercare.core import say

register = template.Library()


@register.filter
def money(amount: Decimal, currency: str) -> str:
    """Say a sum as the page's language does, with as many decimals as a carrier's price has: $0.0079."""
    digits = max(2, -int(amount.normalize().as_tuple().exponent)) if amount < 1 else 2
    language = say.language_of(get_language() or "en")
    try:
        return format_currency(amount, currency, f"¤#,##0.{'0' * digits}", locale=language, currency_digits=False)
    except UnknownCurrencyError:
        return f"{amount:.{digits}f} {currency}".strip()
