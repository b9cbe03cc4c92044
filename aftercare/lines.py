"""A studio's lines: where its messages leave from and its replies come in, and the road that each takes."""

from __future__ import annotations

import re
from decimal import Decimal
from typing import Any

from django.conf import settings
from django.utils.module_loading import import_string

from aftercare.models import Line
from aftercare.transports.base import Stream, Transport
from studio.models import Studio

_NOT_DIGITS = re.compile(r"[^0-9]")


def lines_of(studio: Studio) -> dict[str, Line]:
    """Return the studio's line for each channel, of several in use the oldest.

    A studio without one gets one on the transport of the settings.
    """
    found = {line.channel: line for line in Line.objects.filter(studio=studio, is_active=True).order_by("-pk")}
    for channel in ("sms", "email"):
        if channel not in found:
            found[channel] = Line.objects.create(studio=studio, channel=channel)
    return found


def save(
    line: Line, price: Decimal | None, currency: str, most_a_second: int | None = None, most_a_day: int | None = None
) -> Line:
    """Note what one text costs by this line (None: not known), and how many may leave (None: any number)."""
    line.price, line.currency = price, currency if price is not None else ""
    line.most_a_second, line.most_a_day = most_a_second, most_a_day
    line.save(update_fields=["price", "currency", "most_a_second", "most_a_day"])
    return line


def transport_of(line: Line) -> tuple[type[Transport], dict[str, Any]]:
    """Return the class of a line's transport and the options that it is made with.

    The line's own, else those of the settings for its channel. Raises ImportError for one that is not there.
    """
    configured = settings.AFTERCARE[line.channel.upper()]
    path = line.transport or configured["TRANSPORT"]
    options = {**({} if line.transport else configured["OPTIONS"]), **line.options}
    made: type[Transport] = import_string(path)
    if made.takes_callback:
        options.setdefault("callback", f"{settings.PUBLIC_URL}/hooks/{line.pk}/")
    return made, options


def account_of(line: Line) -> str:
    """Return the account of a line's road: its provider's references are unique within it."""
    made, options = transport_of(line)
    return made.account_of(options)


def bind_of(line: Line) -> str:
    """Return the name of the open road that a line's messages take; '' for a line whose road is opened when needed."""
    try:
        made, options = transport_of(line)
    except ImportError:  # whoever writes its messages says so
        return ""
    return str(options.get("bind", "")) if issubclass(made, Stream) else ""


def bound() -> dict[str, frozenset[int]]:
    """Return whose texts go by which open road: the live studios by the name of the bind."""
    found: dict[str, set[int]] = {}
    first: dict[int, Line] = {}
    for line in Line.objects.filter(channel="sms", is_active=True).order_by("-pk"):
        first[line.studio_id] = line
    for studio in Studio.objects.exclude(live_since=None).values_list("pk", flat=True):
        bind = bind_of(first.get(studio) or Line(studio_id=studio, channel="sms"))
        if bind:
            found.setdefault(bind, set()).add(studio)
    return {bind: frozenset(studios) for bind, studios in found.items()}


def with_number(account: str, number: str) -> Line | None:
    """Return the line in use on an account that has this number; None where none has.

    Numbers are compared by their digits: providers leave out the "+", and short codes have no country.
    """
    wanted = _NOT_DIGITS.sub("", number)
    candidates = Line.objects.filter(is_active=True).exclude(address="").select_related("studio")
    if wanted:
        candidates = candidates.filter(address__endswith=wanted[-4:])
    for line in candidates:
        ours = _NOT_DIGITS.sub("", line.address)
        if (ours == wanted if wanted else line.address.lower() == number.lower()) and account_of(line) == account:
            return line
    return None
