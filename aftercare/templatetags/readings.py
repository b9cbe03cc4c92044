"""A client's own words on a page, with what was found in them marked; and what that is, in words."""

from __future__ import annotations

from typing import Any

from django import template
from django.utils.functional import Promise
from django.utils.html import format_html, format_html_join
from django.utils.safestring import SafeString
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from aftercare.core.ticks import Asks, Ticked
from aftercare.pages.outcomes import ON_RECORD
from aftercare.pages.signs import SIDES, SIGNS
from aftercare.pages.ticks import in_words, suits_in_words

register = template.Library()

ASKED: dict[str, Promise] = {
    Asks.CONFIRM: gettext_lazy("she comes"),
    Asks.MOVE: gettext_lazy("another day"),
    Asks.FORGET: gettext_lazy("to be forgotten"),
    Asks.NOT_ME: gettext_lazy("not about her"),
}


@register.filter
def marked(text: str, reading: dict[str, Any]) -> SafeString:
    """Show her words with the places marked at which a sign was found. Everything is escaped."""
    spans = sorted((start, end) for finding, start, end in reading.get("why", []) if finding in SIGNS)
    parts: list[str] = []
    place = 0
    for start, end in spans:
        if start >= place and start < end <= len(text):
            parts += [text[place:start], format_html("<mark>{}</mark>", text[start:end])]
            place = end
    return format_html_join("", "{}", ((part,) for part in [*parts, text[place:]]))


@register.filter
def found(reading: dict[str, Any]) -> str:
    """Say which signs were read, on which side, and which she denies; '' where there is nothing to say."""
    said = [", ".join(str(SIGNS[sign]) for sign in reading.get("signs", []) if sign in SIGNS)]
    side = reading.get("side")
    said.append(str(SIDES[side]) if side in SIDES else "")
    denied = ", ".join(str(SIGNS[sign]) for sign in reading.get("negated", []) if sign in SIGNS)
    said.append(_("denied: %(signs)s") % {"signs": denied} if denied else "")
    return " · ".join(part for part in said if part)


@register.filter
def came_of(outcome: str) -> str:
    """Say what came of a matter; '' where nobody said."""
    return str(ON_RECORD.get(outcome, ""))


@register.filter
def ticked(kept: dict[str, Any]) -> str:
    """Say what she ticked on her own page, or asked for there by a button."""
    said = Ticked.kept(kept)
    if said.asks is not None:
        return " · ".join(filter(None, [str(ASKED[said.asks]), suits_in_words(said)]))
    return in_words(said) or _("nothing")
