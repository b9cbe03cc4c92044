"""The lines of a studio: where its messages leave from and its replies come in."""

from __future__ import annotations

from decimal import Decimal

from aftercare.models import Line
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
