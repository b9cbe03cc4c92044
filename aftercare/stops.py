"""Stops as a person here writes them down. A stop belongs to a line and a number or address, never to a client.

What a client writes herself (STOP, START) is heard when it comes in; this is what she told someone who works here.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from django.core.exceptions import ValidationError
from django.db import transaction
from django.db.models import F, Q, QuerySet
from django.utils.translation import gettext as _

from aftercare.lines import lines_of
from aftercare.models import Line, Stop
from studio.models import Client, Staff, Studio

UNSUBSCRIBED = "unsubscribed by the link of an e-mail"
CAME_BACK = "what was sent there came back"
WROTE = "a mail came from it"
COMPLAINED = "told her mail provider that our e-mails are unwanted"


def standing(client: Client) -> dict[str, Stop]:
    """The stop in force for her number ("sms") and her address ("email"), where there is one."""
    stops = _in_force(client.studio, _addresses(client)).select_related("line", "by")
    return {stop.line.channel: stop for stop in stops}


def stopped_channels(clients: Iterable[Client]) -> set[str]:
    """The channels on which the number or the address of any of these clients said stop."""
    return {channel for client in clients for channel in standing(client)}


@transaction.atomic
def stop(client: Client, channel: str, *, words: str, by: Staff | None, now: datetime) -> Stop:
    """Write down that she wants nothing more on this channel; a stop that stands already stays as it is."""
    address = _addresses(client).get(channel)
    if not address:
        raise ValidationError(_("There is no number or address of hers to stop: write it on her card first."))
    line = lines_of(client.studio)[channel]
    row, _made = Stop.objects.get_or_create(
        line=line, address=address, lifted_at=None, defaults={"at": now, "words": words.strip(), "by": by}
    )
    _touch(client.studio, channel, address)
    return row


@transaction.atomic
def lift(client: Client, channel: str, *, how: str, by: Staff | None, now: datetime) -> bool:
    """Lift the stop on her number or address, as she asked for it anew; return whether there was one."""
    if not how.strip():
        raise ValidationError(_("Write how and in which words she asked for messages again."))
    address = _addresses(client).get(channel, "")
    in_force = _in_force(client.studio, {channel: address})
    lifted = in_force.update(lifted_at=now, lifted_how=how.strip(), lifted_by=by)
    if lifted:
        _touch(client.studio, channel, address)
    return bool(lifted)


@transaction.atomic
def unsubscribe(line: Line, address: str, *, now: datetime, words: str = UNSUBSCRIBED) -> bool:
    """End all e-mail of a line's studio to an address, whoever has it; return whether that was news.

    The stop stands at the line that the e-mail came from and at those in use, so that nothing that is on its way by
    another goes either.
    """
    _resting(line.studio, address).update(why=Stop.Why.SAID, words=words)  # what she says outlasts a mailbox
    return _end_email(line, address, Stop.Why.SAID, words, now)


@transaction.atomic
def rest(line: Line, address: str, *, now: datetime, words: str = CAME_BACK) -> bool:
    """Let an address rest that nobody has: no e-mail of the line's studio goes there; return whether that was news.

    ``words`` are the server's. Another address on her card is written to at once.
    """
    return _end_email(line, address, Stop.Why.BOUNCED, words, now)


def wake(line: Line, address: str, *, now: datetime) -> None:
    """Take an address at rest for somebody's again, as a mail came from it."""
    if _resting(line.studio, address).update(lifted_at=now, lifted_how=WROTE):
        _touch(line.studio, "email", address)


def _end_email(line: Line, address: str, why: Stop.Why, words: str, now: datetime) -> bool:
    news = False
    for one in _email_lines(line).select_for_update().order_by("pk"):
        row = {"at": now, "words": words, "why": why}
        _row, made = Stop.objects.get_or_create(line=one, address=address.lower(), lifted_at=None, defaults=row)
        news |= made
    if news:
        _touch(line.studio, "email", address)
    return news


def see_to(studio: Studio, address: str, *, by: Staff, now: datetime) -> bool:
    """Note that somebody has seen to it that an address is nobody's; return whether that was news."""
    return bool(_resting(studio, address).filter(seen_to_at=None).update(seen_to_at=now, seen_to_by=by))


def unsee(studio: Studio, address: str) -> bool:
    """Put an address that is nobody's back among what waits for a person; return whether it was not there."""
    return bool(_resting(studio, address).exclude(seen_to_at=None).update(seen_to_at=None, seen_to_by=None))


def _resting(studio: Studio, address: str) -> QuerySet[Stop]:
    return _in_force(studio, {"email": address.lower()}).filter(why=Stop.Why.BOUNCED)


def is_unsubscribed(line: Line, address: str) -> bool:
    """Whether the studio of a line writes no more e-mails to an address."""
    return _in_force(line.studio, {"email": address.lower()}).exists()


def _email_lines(line: Line) -> QuerySet[Line]:
    return Line.objects.filter(Q(pk=line.pk) | Q(is_active=True), studio=line.studio_id, channel="email")


def _addresses(client: Client) -> dict[str, str]:
    return {"sms": client.mobile, "email": client.email.lower()}


def _in_force(studio: Studio, addresses: dict[str, str]) -> QuerySet[Stop]:
    hers = Q(pk__in=[])
    for channel, address in addresses.items():
        if address:
            hers |= Q(line__channel=channel, address=address)
    return Stop.objects.filter(hers, line__studio=studio, lifted_at=None)


def _touch(studio: Studio, channel: str, address: str) -> None:
    """Have everyone who shares the number or address planned anew."""
    column = {"sms": "mobile", "email": "email__iexact"}[channel]
    studio.clients.filter(**{column: address}).update(revision=F("revision") + 1)
