"""The lines of a studio: where its messages leave from and its replies come in."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from typing import Any

from django.conf import settings
from django.core.exceptions import ImproperlyConfigured
from django.utils.module_loading import import_string

from aftercare.models import Line
from aftercare.transports.base import Transport
from studio.models import Studio


def lines_of(studio: Studio) -> dict[str, Line]:
    """Return the studio's line for each channel; a studio without one gets one on the transport of the settings."""
    found = {line.channel: line for line in Line.objects.filter(studio=studio, is_active=True).order_by("-pk")}
    for channel in ("sms", "email"):
        if channel not in found:
            found[channel] = Line.objects.create(studio=studio, channel=channel)
    return found


def save_price(line: Line, price: Decimal | None, currency: str) -> Line:
    """Note what one text costs by this line; None: not known."""
    line.price, line.currency = price, currency if price is not None else ""
    line.save(update_fields=["price", "currency"])
    return line


def callback_address(line_id: int) -> str:
    """Return the address at which a line's provider calls back; a secret or a reference may follow it."""
    return f"{settings.PUBLIC_URL}/hooks/{line_id}"


def transport_of(line: Line) -> Transport:
    """Make the transport that a line's provider is heard by, whether or not its studio rehearses.

    Raises ImproperlyConfigured, with what is wrong, where it cannot be made as configured.
    """
    configured = settings.AFTERCARE[line.channel.upper()]
    path: str = line.transport or configured["TRANSPORT"]
    options: Mapping[str, Any] = line.options if line.transport else {**configured["OPTIONS"], **line.options}
    try:
        kind: type[Transport] = import_string(path)
        own = {"callback": callback_address(line.pk)} if kind.takes_callback else {}
        return kind(**{**options, **own})
    except (ImportError, TypeError, ValueError) as error:
        raise ImproperlyConfigured(f"The transport “{path}” of line {line.pk} cannot be used: {error}") from error
