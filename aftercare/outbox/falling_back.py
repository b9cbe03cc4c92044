"""The other channel, once: what became undelivered by one, where safety hangs on it, is tried by the one still open."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from aftercare import facts
from aftercare.core import delivery
from aftercare.core.delivery import Event, State
from aftercare.core.reach import Purpose, reach
from aftercare.models import Message

CHANGED = ("state", "reason", "channel", "due_at", "ended_at", "tries", "not_before", "fell_back")


def may_fall_back(message: Message, now: datetime) -> bool:
    """Whether the other channel may be tried: in time, for what safety hangs on, and not a second time."""
    if message.fell_back or message.occasion not in delivery.FALLS_BACK or message.client_id is None:
        return False
    return message.no_later_than is None or now <= message.no_later_than


def fall_back(messages: Sequence[Message], now: datetime) -> None:
    """Set those of these undelivered messages, held by the caller, to go by the other channel; who saves them writes.

    See CHANGED for what is set.
    """
    able = [message for message in messages if message.state == State.UNDELIVERED and may_fall_back(message, now)]
    books = facts.load({message.client_id for message in able if message.client_id is not None}, now) if able else {}
    for message in able:
        book = books.get(message.client_id or 0)
        channel = reach(book.contact, Purpose.VISITS, avoid=message.channel).channel if book is not None else ""
        if channel:
            go_by(message, channel, now)


def go_by(message: Message, channel: str, now: datetime) -> None:
    """Set an undelivered message to go by another channel, now."""
    message.state = delivery.advance(State.UNDELIVERED, Event.SEND_AGAIN)
    message.fell_back, message.channel, message.tries, message.not_before = True, channel, 0, None
    message.due_at, message.ended_at, message.reason = now, None, ""
