"""The other channel, once, for what a receipt says did not arrive: as it is for what is refused at once."""

from __future__ import annotations

from datetime import datetime

from django.db import transaction

from aftercare import facts
from aftercare.core import delivery
from aftercare.core.delivery import Event, State
from aftercare.core.reach import Purpose, reach
from aftercare.models import Message


def fall_back(message_id: int, now: datetime) -> bool:
    """Plan an undelivered message anew by the other channel, if it is of a kind for that, and she is open to it.

    Return whether it goes. What has been tried by both, or is too late, or of a rehearsal, stays as it is.
    """
    with transaction.atomic():
        message = Message.objects.select_for_update().get(pk=message_id)
        if message.state != State.UNDELIVERED or message.fell_back or message.occasion not in delivery.FALLS_BACK:
            return False
        if message.client_id is None or (message.no_later_than is not None and message.no_later_than < now):
            return False
        book = facts.load([message.client_id], now).get(message.client_id)
        way = reach(book.contact, Purpose.VISITS, avoid=message.channel) if book is not None else None
        if way is None or not way.channel:
            return False
        message.state = delivery.advance(State.UNDELIVERED, Event.SEND_AGAIN)
        message.fell_back, message.channel, message.tries = True, way.channel, 0
        message.due_at, message.ended_at, message.reason = now, None, ""
        message.save(update_fields=["state", "fell_back", "channel", "tries", "due_at", "ended_at", "reason"])
    return True
