"""How many open matters wait for whoever is at the page."""

from __future__ import annotations

from typing import Any

from django import template
from django.template.context import Context

from aftercare.pages import waiting

register = template.Library()


@register.simple_tag(takes_context=True)
def waiting_now(context: Context) -> int:
    """Count them, once a page; 0 to the front desk, to whom a number would tell of somebody's eyes."""
    request: Any = context.get("request")
    may = getattr(request, "may", None)
    if may is None:
        return 0
    if not hasattr(request, "waiting_now"):
        request.waiting_now = waiting.now(request.studio, may, request.now)
    return int(request.waiting_now)
