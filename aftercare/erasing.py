"""Forgetting a client at her wish: her records, and all that was written to her and by her.

Stops stay, by number and address: without them the next import would write to her again. They are kept for that alone
(GDPR, article 17(3) and recital 65, from memory), without her words.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime
from urllib.parse import unquote

from django.core.exceptions import ValidationError
from django.db import transaction
from django.db.models import Q, QuerySet
from django.utils.translation import gettext as _

from aftercare import links, outbox
from aftercare.core import delivery
from aftercare.core.delivery import OPEN, Event, State
from aftercare.core.occasions import TEST, Occasion
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
    Stray,
    Wish,
)
from studio import records
from studio.models import Client, Staff, Studio

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
    hers_alone = _addresses_of_nobody_else(client)
    links.revoke(client, why="forgotten", now=now)
    ids = records.erase_client(client=client, by=by, now=now)
    _forget_messages(Message.objects.filter(client__in=ids), now)
    _forget_replies(Reply.objects.filter(client__in=ids), by, now)
    _forget_answers(Consultation.objects.filter(client__in=ids), now)
    Flag.objects.filter(clients__in=ids).update(words="")
    _forget_what_is_nobodys(client, hers_alone, by, now)
    _forget_tests(client)
    _forget_strays(hers_alone)
    _forget_callbacks(client.studio, hers_alone)


def _addresses_of_nobody_else(client: Client) -> list[tuple[str, str]]:
    """Return her numbers and addresses, by channel, that no other client of the studio has."""
    rows = [client, *client.merged.all()]
    others = Client.objects.standing().filter(studio=client.studio).exclude(pk=client.pk)
    numbers = {one.mobile for one in rows if one.mobile and not others.filter(mobile=one.mobile).exists()}
    mails = {one.email.lower() for one in rows if one.email and not others.filter(email__iexact=one.email).exists()}
    return [*(("sms", number) for number in sorted(numbers)), *(("email", mail) for mail in sorted(mails))]


def _forget_what_is_nobodys(client: Client, addresses: Iterable[tuple[str, str]], by: Staff, now: datetime) -> None:
    """What came from her number and was given to no one client is hers too, once nobody else here has that number.

    She shared it then, or wrote before she stood in the book. A matter that still waits for a person keeps its words.
    """
    for channel, address in addresses:
        replies = Reply.objects.filter(studio=client.studio, client=None, line__channel=channel, from_address=address)
        replies = replies.exclude(flag__in=Flag.objects.exclude(state=Flag.State.CLOSED))
        closed = Flag.objects.filter(pk__in=list(replies.exclude(flag=None).values_list("flag", flat=True)))
        closed.update(words="")
        _forget_replies(Reply.objects.filter(pk__in=list(replies.values_list("pk", flat=True))), by, now)
        told = Message.objects.filter(studio=client.studio, client=None, staff=None, channel=channel, address=address)
        _forget_messages(Message.objects.filter(pk__in=list(_ended(told).values_list("pk", flat=True))), now)


def _forget_strays(addresses: Iterable[tuple[str, str]]) -> None:
    """What she wrote to a number that is no line's is no studio's yet: it stays where another's client has hers too."""
    for channel, address in addresses:
        named = Q(mobile=address) if channel == "sms" else Q(email__iexact=address)
        if not Client.objects.standing().filter(named).exists():
            Stray.objects.filter(from_address__iexact=address).delete()


def _forget_tests(client: Client) -> None:
    """A wording that somebody tried out on herself may be filled in for her: of those that went, no words stay."""
    tests = Message.objects.filter(studio=client.studio, occasion=Occasion.ALERT, kind=TEST)
    _ended(tests).update(text="", subject="", own_words="")


def _ended(messages: QuerySet[Message]) -> QuerySet[Message]:
    """Leave out what may leave yet: to whom and what it says is needed for that."""
    ended = messages.exclude(state__in=[State.PLANNED, State.CLAIMED, State.HANDING_OVER])
    return ended.exclude(state=State.UNSURE, lease_until__isnull=False)


def _forget_messages(messages: QuerySet[Message], now: datetime) -> None:
    waiting = list(messages.filter(state__in=OPEN).exclude(state=State.WITHDRAWN))
    for message in waiting:
        message.state, message.reason, message.ended_at = _withdrawn(message), WHY, now
    outbox.replan(waiting)
    outbox.lock(list(messages.values_list("pk", flat=True)))  # what is said of them meanwhile waits, and sees it
    Receipt.objects.filter(attempt__message__in=messages).update(raw="")
    Attempt.objects.filter(message__in=messages).update(problem="")
    messages.update(text="", subject="", address="", own_words="")


def _forget_callbacks(studio: Studio, addresses: Iterable[tuple[str, str]]) -> None:
    """What a provider called to say and nobody understood may be hers: it is, where her number or address is in it."""
    said = [address.removeprefix("+") for _channel, address in addresses]
    kept = StoredCallback.objects.filter(line__studio=studio).only("url", "body") if said else ()
    hers = [one.pk for one in kept if any(word in _read(one) for word in said)]
    StoredCallback.objects.filter(pk__in=hers).delete()


def _read(callback: StoredCallback) -> str:
    """Return all that it says, in lower case; of what a form or an address escapes, what it stands for."""
    return unquote(f"{callback.url} {bytes(callback.body).decode(errors='replace')}").lower()


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
