"""Small pieces of the frame that every page has."""

from __future__ import annotations

from typing import Any

from django import template
from django.template.context import Context
from django.urls import reverse
from django.utils.html import format_html
from django.utils.safestring import SafeString

from studio import undo

register = template.Library()


@register.simple_tag(takes_context=True)
def place(context: Context, name: str, words: str, count: int = 0, counted: str = "", asks: str = "") -> SafeString:
    """Link to a page by its route's name, and say whether one is on it or below it.

    ``count`` is how many wait there, ``counted`` the words for it to whoever hears the page, ``asks`` the query with
    which the page shows all of those.
    """
    if count:
        shown = format_html('<b class="count">{}<span class="unseen"> {}</span></b>', count, counted)
        words = format_html("{}{}", words, shown)
    href = reverse(name)
    link = f"{href}?{asks}" if count and asks else href
    request: Any = context.get("request")
    path = request.path if request else ""
    if path == href:
        return format_html('<a href="{}" aria-current="page">{}</a>', link, words)
    if path.startswith(f"{href}/"):
        return format_html('<a href="{}" aria-current="true">{}</a>', link, words)
    return format_html('<a href="{}">{}</a>', link, words)


register.filter(undo.way_back)


@register.simple_tag(takes_context=True)
def turned(context: Context, **changes: object) -> str:
    """Return this page's address with some of its query changed; an empty value takes one out."""
    query = context["request"].GET.copy()
    for name, value in changes.items():
        if value in ("", None):
            query.pop(name, None)
        else:
            query[name] = str(value)
    return f"?{query.urlencode()}"
