"""What a wording costs, in words."""

from __future__ import annotations

from decimal import Decimal

from django import template
from django.utils.translation import get_language

from aftercare.core import say
from aftercare.pages import puts

register = template.Library()
register.simple_tag(puts.put)


@register.filter
def money(amount: Decimal, currency: str) -> str:
    """Say a sum as the page's language does, with as many decimals as a carrier's price has: $0.0079."""
    return say.money(amount, currency, get_language() or "en")
