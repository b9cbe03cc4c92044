"""Forgetting a client at her wish: her records, and all that was written to her and by her.

Stops stay, by number and address: without them the next import would write to her again. They are kept for that alone
(GDPR, article 17(3) and recital 65, from memory), without her words.
"""

from __future__ import annotations

from datetime import datetime

from django.core.exceptions import ValidationError
from django.db import transaction
from django.db.models import Q, QuerySet
from django.utils.translation import gettext as _

from aftercare import links, outbox
from aftercare.core import delivery
from aftercare.core.delivery import OPEN, Event, State
from aftercare.models import (
    Attachment,
    Attempt,
    Consultation,
    Flag,
    Message,
    Receipt,
    Reply,
    Stop,
    StoredCallback,
    Wish,
)
from studio import records
from studio.models import Client, Staff

WHY = "she was forgotten at her wish"


def refuse(client: Client, now: datetime) -> None:
    """Raise ValidationError where something of hers is still to come, or waits for a person."""
    records.refuse_erasing(client, now)
    if client.flags.exclude(state=Flag.State.CLOSED).exists():
        raise ValidationError(_("Something that she wrote is still open: see to it on the morning list first."))


@transaction.atomic
def erase(client: Client, *, by: Staff, now: datetime) -> None:
    """Forget her for good. Raises ValidationError, and changes nothing, where something still waits.

    What shows that a message went, when and how it ended stays; to whom and what it said does not.
    """
    refuse(client, now)
    stops = Q(line__channel="sms", address=client.mobile) | Q(line__channel="email", address=client.email.lower())
    Stop.objects.filter(stops, line__studio=client.studio).update(words="", lifted_how="")
    _forget_callbacks(client)
    links.revoke(client, why="forgotten", now=now)
    ids = records.erase_client(client=client, by=by, now=now)
    _forget_messages(Message.objects.filter(client__in=ids), now)
    _forget_replies(Reply.objects.filter(client__in=ids), by, now)
    _forget_answers(Consultation.objects.filter(client__in=ids), now)
    Flag.objects.filter(clients__in=ids).update(words="")


def _forget_messages(messages: QuerySet[Message], now: datetime) -> None:
    waiting = list(messages.filter(state__in=OPEN).exclude(state=State.WITHDRAWN))
    for message in waiting:
        message.state, message.reason, message.ended_at = _withdrawn(message), WHY, now
    outbox.replan(waiting)
    Receipt.objects.filter(attempt__message__in=messages).update(raw="")
    Attempt.objects.filter(message__in=messages).update(problem="")
    messages.update(text="", subject="", address="", own_words="")


def _forget_callbacks(client: Client) -> None:
    """What a carrier called to say and nobody understood may be hers: it is, where it has her number in it."""
    number = client.mobile.removeprefix("+")
    kept = StoredCallback.objects.filter(line__studio=client.studio).only("url", "body") if number else ()
    hers = [one.pk for one in kept if number in one.url or number.encode() in bytes(one.body)]
    StoredCallback.objects.filter(pk__in=hers).delete()


def _forget_answers(answered: QuerySet[Consultation], now: datetime) -> None:
    """That she answered the questions and when stays; what, and who signed, does not."""
    answered.filter(withdrawn_at=None).update(withdrawn_at=now)
    answered.update(
        answers={}, more="", style="", signed_name="", guardian_name="", to_look_at=0, changes=0, set_lenses=None
    )


def _withdrawn(message: Message) -> State:
    return delivery.advance(State(message.state), Event.WITHDRAW)


def _forget_replies(replies: QuerySet[Reply], by: Staff, now: datetime) -> None:
    Attachment.objects.filter(reply__in=replies).delete()
    Wish.objects.filter(reply__in=replies, seen_to_at=None).update(seen_to_at=now, seen_to_by=by)
    replies.update(text="", subject="", below="", raw="", from_address="", reading={}, ticked={})
