"""Dates and hours on the sheet: the studio's wall clock, as people say them."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from babel.dates import format_date
from django import template
from django.template.context import Context
from django.utils.functional import Promise
from django.utils.translation import get_language, gettext_lazy
from django.utils.translation import gettext as _

from aftercare.core import say
from aftercare.pages.shown import OCCASIONS, language_name, written_number
from aftercare.pages.spoken import spoken
from studio.models import Client, Service

register = template.Library()

_LONG = {"en": ("EEEE d MMMM", " y"), "es": ("EEEE d 'de' MMMM", " 'de' y")}
_SHORT, _WITH_WEEKDAY = ("d MMM", " y"), ("EEE d MMM", " y")

SERVICES: dict[str, Any] = {service.value.replace("-", " "): service.label for service in Service}
# Kinds of wordings that are no service, where the name alone would not say when they go.
KINDS: dict[str, Promise] = {
    "caution": gettext_lazy("on hold: the caution alone"),
    "nobody_yet": gettext_lazy("nobody has seen it yet"),
    "seen_today": gettext_lazy("to be seen by someone today"),
    "same_day": gettext_lazy("a same-day call"),
    "breathing": gettext_lazy("emergency: breathing, face, throat"),
    "chemical": gettext_lazy("emergency: adhesive or remover in the eye"),
    "sealed": gettext_lazy("emergency: an eye that will not open"),
    "sight": gettext_lazy("emergency: sight, severe pain"),
    "check": gettext_lazy("how are your eyes"),
    "stopped": gettext_lazy("she said stop"),
    "stopped_with_sign": gettext_lazy("she said stop, and named a sign"),
    "started": gettext_lazy("she said start"),
    "your_record": gettext_lazy("she asked to see what is kept about her"),
    "help": gettext_lazy("she asked for help with the texts"),
    "unmarked": gettext_lazy("a visit that nobody marked"),
    "try_again": gettext_lazy("time to try again"),
    "staff_stop": gettext_lazy("a colleague gets no more texts"),
    "road_away": gettext_lazy("messages do not leave"),
    "ask_more": gettext_lazy("to start from: asking more"),
    "will_call": gettext_lazy("to start from: we call you"),
    "come_in": gettext_lazy("to start from: coming in to be looked at"),
    "lot": gettext_lazy("those who wore a lot that is set aside"),
}


register.filter(spoken)


@register.simple_tag(takes_context=True)
def hour(context: Context, at: datetime | None) -> str:
    """Say the time of day: "2:30 pm", "14:30"."""
    if at is None:
        return ""
    local = at.astimezone(_zone(context))
    return say.hour(local.time().replace(second=0, microsecond=0), _language(), _region(context))


@register.simple_tag(takes_context=True)
def day(context: Context, at: date | None) -> str:
    """Say the day: "Tuesday 9 March", with its year where that is not this one."""
    return _dated(context, at, _LONG[_language()])


@register.simple_tag(takes_context=True)
def short(context: Context, at: date | None) -> str:
    """Say the day in short: "9 Mar", with its year where that is not this one."""
    return _dated(context, at, _SHORT)


@register.simple_tag(takes_context=True)
def with_weekday(context: Context, at: date | None) -> str:
    """Say the day in short, with its weekday: "Tue 9 Mar", with its year where that is not this one."""
    return _dated(context, at, _WITH_WEEKDAY)


@register.simple_tag(takes_context=True)
def dated(context: Context, at: date) -> str:
    """Say the day in short and with its year, on what is read elsewhere or later: "9 Mar 2027"."""
    return _dated(context, at, ("".join(_SHORT), ""))


@register.simple_tag
def on_axis(at: date) -> str:
    """Say the day under a drawing, where there is no room for a year: "9 Mar"."""
    return format_date(at, "d MMM", locale=_language())


@register.simple_tag(takes_context=True)
def moment(context: Context, at: datetime | None) -> str:
    """Say day and hour: "Tue 9 Mar, 2:30 pm"."""
    if at is None:
        return ""
    return f"{_dated(context, at, _WITH_WEEKDAY)}, {hour(context, at)}"


@register.simple_tag(takes_context=True)
def hers(context: Context, client: Client | None, at: datetime | None) -> str:
    """Say what her clock shows then, where she stated a zone that shows another hour: "5:10 am for her"."""
    if at is None or client is None or not client.time_zone:
        return ""
    here, there = at.astimezone(_zone(context)), at.astimezone(ZoneInfo(client.time_zone))
    if here.utcoffset() == there.utcoffset():
        return ""
    hour_there = say.hour(there.time().replace(second=0, microsecond=0), _language(), _region(context))
    if here.date() != there.date():
        hour_there = f"{format_date(there, 'EEE', locale=_language())} {hour_there}"
    return _("%(hour)s for her") % {"hour": hour_there}


@register.filter
def span(length: timedelta | int | None) -> str:
    """Say how long: minutes, or a timedelta: "45 min", "2 h 05", "23 h", "3 days", never broken between two lines."""
    return _long(length).replace(" ", "\N{NO-BREAK SPACE}")


def _long(length: timedelta | int | None) -> str:
    if length is None:
        return ""
    minutes = length if isinstance(length, int) else int(length.total_seconds()) // 60
    if minutes < 60:
        return _("%(n)s min") % {"n": minutes}
    if minutes < 48 * 60:
        return (
            _("%(h)s h %(min)02d") % {"h": minutes // 60, "min": minutes % 60}
            if minutes % 60 and minutes < 12 * 60
            else _("%(h)s h") % {"h": minutes // 60}
        )
    return _("%(n)s days") % {"n": minutes // (24 * 60)}


def _dated(context: Context, at: date | None, pattern: tuple[str, str]) -> str:
    if at is None:
        return ""
    local = at.astimezone(_zone(context)).date() if isinstance(at, datetime) else at
    this_year = local.year == context["now"].astimezone(_zone(context)).year
    return format_date(local, pattern[0] if this_year else "".join(pattern), locale=_language())


def _zone(context: Context) -> ZoneInfo:
    zone: ZoneInfo = context["studio"].zone
    return zone


def _region(context: Context) -> str:
    region: Any = context["studio"].region
    return str(region)


def _language() -> str:
    return say.language_of(get_language() or "en")


@register.filter
def of(found: dict[Any, Any], key: object) -> Any:
    """Return what stands under ``key``, or None."""
    return found.get(key)


@register.simple_tag(takes_context=True)
def number(context: Context, e164: str) -> str:
    """Show a number as people of the studio's country write it; one from abroad with its country code."""
    return written_number(e164, _region(context))


@register.filter
def kind(name: str) -> str:
    """Show a wording's kind in words: ``full_set`` is a full set."""
    return str(KINDS.get(name) or SERVICES.get(name.replace("_", " "), name.replace("_", " ")))


@register.filter
def language(code: str) -> str:
    """Name a language in the reader's own: ``es`` is Spanish; what is no language code stays as it is written."""
    return language_name(code)


@register.filter
def occasion(name: str) -> str:
    """Show an occasion in words."""
    return str(OCCASIONS.get(name, name))
