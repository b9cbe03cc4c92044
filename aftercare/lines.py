"""A studio's lines: where its messages leave from and its replies come in, and the road that each takes."""

from __future__ import annotations

import re
from contextlib import suppress
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Any

import phonenumbers
from django.conf import settings
from django.core.exceptions import ImproperlyConfigured
from django.utils.module_loading import import_string

from aftercare.models import Line
from aftercare.transports.base import Stream, Transport
from aftercare.transports.email import Email
from studio.models import Studio

_NOT_DIGITS = re.compile(r"[^0-9]")
NOBODY_GETS_THEM = ("aftercare.transports.console.Console", "aftercare.transports.memory.Memory")
MAIL_TO_NOBODY = (
    "django.core.mail.backends.console.EmailBackend",
    "django.core.mail.backends.dummy.EmailBackend",
    "django.core.mail.backends.locmem.EmailBackend",
)


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


def callback_address(line_id: int) -> str:
    """Return the address at which a line's provider calls back; a secret or a reference may follow it."""
    return f"{settings.PUBLIC_URL}/hooks/{line_id}"


def kind_of(line: Line) -> tuple[type[Transport], dict[str, Any]]:
    """Return the class of a line's transport and the options that it is made with, whether or not its studio rehearses.

    The line's own, else those of the settings for its channel. Raises ImproperlyConfigured for one that is not there.
    """
    configured = settings.AFTERCARE[line.channel.upper()]
    path: str = line.transport or configured["TRANSPORT"]
    try:
        kind: Any = import_string(path)
    except ImportError as error:
        raise _unusable(path, line, str(error)) from error
    if not (isinstance(kind, type) and issubclass(kind, Transport)):
        raise _unusable(path, line, "it is no transport's class")
    if not isinstance(line.options, dict):
        raise _unusable(path, line, "its options are no object in JSON, like {}")
    options = dict(line.options) if line.transport else {**configured["OPTIONS"], **line.options}
    if kind.takes_callback:
        options["callback"] = callback_address(line.pk)
    return kind, options


def reach_nobody(studio: Studio) -> list[str]:
    """Return the channels, sms and email, whose messages would only be shown or kept here once the studio is live."""
    return [channel for channel, line in lines_of(studio).items() if _reaches_nobody(line)]


def _reaches_nobody(line: Line) -> bool:
    try:
        kind, options = kind_of(line)
    except ImproperlyConfigured:  # nothing leaves by it, and the page of lines says why
        return False
    if issubclass(kind, Email):
        return (options.get("backend") or settings.EMAIL_BACKEND) in MAIL_TO_NOBODY
    return f"{kind.__module__}.{kind.__name__}" in NOBODY_GETS_THEM


def transport_of(line: Line) -> Transport:
    """Make a line's transport. Raises ImproperlyConfigured, with what is wrong, where it cannot be made."""
    kind, options = kind_of(line)
    try:
        return kind(**options)
    except (TypeError, ValueError) as error:
        raise _unusable(f"{kind.__module__}.{kind.__name__}", line, str(error)) from error


def _unusable(path: str, line: Line, why: str) -> ImproperlyConfigured:
    return ImproperlyConfigured(f"The transport “{path}” of line {line.pk} cannot be used: {why}")


def account_of(line: Line) -> str:
    """Return the account of a line's road: its provider's references are unique within it.

    Raises ImproperlyConfigured as :func:`transport_of`.
    """
    kind, options = kind_of(line)
    return kind.account_of(options) if issubclass(kind, Stream) else transport_of(line).account


def bind_of(line: Line) -> str:
    """Return the name of the open road that a line's messages take; '' for a line whose road is opened when needed."""
    try:
        kind, options = kind_of(line)
    except ImproperlyConfigured:  # whoever writes its messages says so
        return ""
    return str(options.get("bind", "")) if issubclass(kind, Stream) else ""


@dataclass(slots=True)
class Bound:
    """What goes by one open road: texts of studios whose line in use takes it, and what is bound to a line on it."""

    account: str = ""
    studios: set[int] = field(default_factory=set)
    lines: set[int] = field(default_factory=set)


def bound() -> dict[str, Bound]:
    """Return what goes by which open road, of live studios, by the name of the bind."""
    found: dict[str, Bound] = {}
    live = set(Studio.objects.exclude(live_since=None).values_list("pk", flat=True))
    first: dict[int, str] = {}
    for line in Line.objects.filter(channel="sms", studio__in=live).order_by("-pk"):
        bind = bind_of(line)
        if bind:  # out of use it answers still what came in by it
            found.setdefault(bind, Bound(account_of(line))).lines.add(line.pk)
        if line.is_active:
            first[line.studio_id] = bind
    usual = Line(channel="sms")  # of a studio that has none yet
    for studio in live:
        bind = first[studio] if studio in first else bind_of(usual)
        if bind and bind not in found:
            found[bind] = Bound(account_of(usual))
        if bind:
            found[bind].studios.add(studio)
    return found


def with_number(account: str, number: str, *, called: Line | None = None) -> Line | None:
    """Return the line on an account that a text to ``number`` came in to; None where none has that number.

    A number that has moved is that of the line in use. ``called`` is the line whose provider says so: numbers are read
    as in its region, and of several alike it comes first.
    """
    ways = _ways_of_writing(number, called.studio.region if called else None)
    found = Line.objects.filter(address__in=ways).select_related("studio")
    first = called.pk if called else None
    for line in sorted(found, key=lambda line: (not line.is_active, line.pk != first, -line.pk)):
        with suppress(ImproperlyConfigured):
            if account_of(line) == account:
                return line
    return None


def _ways_of_writing(number: str, region: str | None) -> set[str]:
    """Return how a line's own number may be written: as it came, in digits alone, with + and in E.164."""
    digits = _NOT_DIGITS.sub("", number)
    ways = {number.strip(), digits, f"+{digits}"} if digits else {number.strip()}
    try:
        parsed = phonenumbers.parse(number, region)
    except phonenumbers.NumberParseException:
        return ways
    return ways | {phonenumbers.format_number(parsed, phonenumbers.PhoneNumberFormat.E164)}
