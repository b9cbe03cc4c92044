"""What people do about open matters: say whose one is, take it, close it with what came of it, open it again; see to a
lost message, or to a set that is likely to fail early.

Guarded by the state that each step starts from, so that of two people who tap at once only one has it.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from datetime import datetime

from django.core.exceptions import ValidationError
from django.db import transaction
from django.db.models import F, QuerySet
from django.utils.translation import gettext as _

from aftercare import stops
from aftercare.core import delivery, outcomes
from aftercare.core.outcomes import A_REACTION, NOT_ABOUT_HEALTH, Outcome, offered
from aftercare.core.ticks import Ticked
from aftercare.models import Flag, Forecast, Message, Reply, Wish
from studio import records
from studio.models import Client, Staff, Studio, Visit

State = Flag.State


def take(flag: Flag, *, by: Staff, now: datetime) -> Flag:
    """Note who has it. Taking over from a colleague is allowed: the newest name stands."""
    taken = _standing(flag).update(state=State.TAKEN, taken_at=now, taken_by=by, try_again_at=None)
    return _after(flag, taken)


def give_back(flag: Flag, *, by: Staff, now: datetime) -> Flag:
    """Note that she has it no longer: it waits for whoever takes it, and pages as if it had never been taken."""
    given = Flag.objects.filter(pk=flag.pk, state=State.TAKEN, taken_by=by, try_again_at=None)
    return _after(flag, given.update(state=State.OPEN, taken_at=None, taken_by=None))


@dataclass(frozen=True, slots=True)
class Told:
    """What was read in the replies of a matter: its signs, each once, the side, and her words."""

    signs: tuple[str, ...]
    side: str
    words: str

    @property
    def any_sign(self) -> bool:
        return bool(self.signs)


def told(flag: Flag) -> Told:
    """Put together what her replies say."""
    replies = list(flag.replies.order_by("received_at", "pk"))
    signs = dict.fromkeys(sign for reply in replies for sign in reply.reading.get("signs", ()))
    sides = {side for reply in replies if (side := reply.reading.get("side"))}
    side = "" if not sides else sides.pop() if len(sides) == 1 else "both"
    words = (part for reply in replies for part in (Ticked.kept(reply.ticked).sentences, reply.text or reply.subject))
    return Told(tuple(signs), side, "\n".join(filter(None, words)))


@transaction.atomic
def say_whose(flag: Flag, client: Client) -> Flag:
    """Say whose matter it is, of several who share a number: from here on it is hers alone, and so are its replies."""
    if not flag.clients.filter(pk=client.pk).exists():
        raise ValidationError(_("Choose one of those whom it may be from."))
    _touch(flag)
    flag.clients.set([client])
    flag.replies.update(client=client)
    flag.messages.filter(client=None, staff=None).update(client=client)
    return flag


@transaction.atomic
def close(flag: Flag, *, outcome: Outcome, words: str, on_record: bool, by: Staff, now: datetime) -> Flag:
    """Close it with what came of it.

    ``on_record``: it is put on her record as a reaction, and she stays on hold until a person releases her. What was
    held for the matter alone is judged again by whoever plans. Raises ValidationError where it may be several clients',
    and where nothing is said of what is, or may be, about her health.
    """
    if outcome is Outcome.NOT_REACHED:
        raise ValueError("she who could not be reached is tried again: see try_again")
    if not words.strip() and (outcome not in NOT_ABOUT_HEALTH or is_about_health(flag)):
        raise ValidationError({"words": _("Write a few words: they are all that is kept of it.")})
    said, client = told(flag), _one_client(flag, outcome)
    if outcome not in offered(flag.urgency, tells_a_sign=said.any_sign):
        raise ValidationError({"outcome": _("Say what came of her eyes: this cannot be closed without.")})
    closed = _standing(flag).update(
        state=State.CLOSED, closed_at=now, closed_by=by, outcome=outcome, words=words.strip(), try_again_at=None
    )
    _after(flag, closed)
    if client is not None and on_record and outcome in A_REACTION:
        _put_on_record(client, flag, said, outcome=outcome, words=words, by=by, now=now)
    if client is not None and outcome is Outcome.REMOVED:
        records.note_no_set(client=client, by=by, now=now)
    _touch(flag)
    return flag


def _put_on_record(
    client: Client, flag: Flag, said: Told, *, outcome: Outcome, words: str, by: Staff, now: datetime
) -> None:
    """Put it on her record; of a matter that was opened again, what stands there already is put right."""
    at = min(flag.opened_at, now)
    standing = client.reactions.filter(at=at, released_at=None).exclude(outcome="").first()
    if standing is not None:
        records.put_reaction_right(reaction=standing, words=words, outcome=outcome, by=by)
        return
    records.record_reaction(
        client=client,
        visit=_set_before(client, flag.opened_at),
        words=f"{said.words}\n{words.strip()}".strip(),
        at=at,
        signs=said.signs,
        side=said.side,
        outcome=outcome,
        by=by,
        now=now,
    )


@transaction.atomic
def try_again(flag: Flag, *, at: datetime, words: str, by: Staff, now: datetime) -> Flag:
    """Note that she could not be reached: it stays open, with whoever tried, until somebody tries again ``at``."""
    if at <= now:
        raise ValidationError({"try_again_at": _("That moment has passed: choose one ahead.")})
    tried = _standing(flag).update(
        state=State.TAKEN, taken_at=now, taken_by=by, try_again_at=at, outcome=Outcome.NOT_REACHED, words=words.strip()
    )
    return _after(flag, tried)


@transaction.atomic
def close_several(flags: Collection[Flag], *, outcome: Outcome, by: Staff, now: datetime) -> int:
    """Close matters that have nothing to do with anybody's health at once; raises ValidationError if one has."""
    if outcome not in NOT_ABOUT_HEALTH:
        raise ValidationError(_("What came of somebody’s eyes is said for each by itself."))
    if any(is_about_health(flag) for flag in flags):
        raise ValidationError(_("One of them is about health: close it by itself. Nothing was closed."))
    standing = Flag.objects.filter(pk__in=[flag.pk for flag in flags], state__in=[State.OPEN, State.TAKEN])
    return standing.update(state=State.CLOSED, closed_at=now, closed_by=by, outcome=outcome)


def is_about_health(flag: Flag) -> bool:
    """Whether anything in it is, or may be: what was not understood may be."""
    topics = [topic for reply in flag.replies.all() for topic in reply.reading.get("about", ("irritation",))]
    return outcomes.is_about_health(flag.urgency, topics)


@transaction.atomic
def reopen(flag: Flag, *, now: datetime) -> Flag:
    """Open it again: what was written on closing stays with it. What is urgent pages anew."""
    opened = Flag.objects.filter(pk=flag.pk, state=State.CLOSED).update(
        state=State.OPEN, urgent_since=now, taken_at=None, taken_by=None, closed_at=None, closed_by=None
    )
    _touch(flag)
    return _after(flag, opened)


def _one_client(flag: Flag, outcome: Outcome) -> Client | None:
    """Return whose matter it is, None where it is nobody known's; something is written on a record of one alone."""
    clients = list(flag.clients.all())
    if len(clients) > 1 and outcome in A_REACTION:
        raise ValidationError({"client": _("Say first whose it is: several clients have this number.")})
    return clients[0] if len(clients) == 1 else None


def _set_before(client: Client, at: datetime) -> Visit | None:
    """The last visit that was done before she wrote."""
    return client.visits.filter(status=Visit.Status.DONE, starts_at__lte=at).order_by("starts_at", "pk").last()


def see_to(message: Message, *, by: Staff, now: datetime) -> None:
    """Note that somebody has done something about a message that did not arrive, or may not have."""
    lost = [delivery.State.UNDELIVERED, delivery.State.UNSURE]
    seen = Message.objects.filter(pk=message.pk, state__in=lost).update(seen_to_at=now, seen_to_by=by)
    if not seen:
        raise ValidationError(_("It has moved on by itself: look at the list again."))


def unsee(message: Message) -> None:
    """Put a message back on the list of those to be seen to."""
    seen = Message.objects.filter(pk=message.pk).exclude(seen_to_at=None)
    _back(seen.update(seen_to_at=None, seen_to_by=None))


def see_to_address(client: Client, *, by: Staff, now: datetime) -> None:
    """Note that somebody has seen to it that what is sent to her address comes back."""
    if not stops.see_to(client.studio, client.email, by=by, now=now):
        raise ValidationError(_("It stands there no more: look at the list again."))


def unsee_address(client: Client) -> None:
    """Put it back on the list that what is sent to her address comes back."""
    _back(stops.unsee(client.studio, client.email))


def see_to_early(visit: Visit, *, by: Staff, now: datetime) -> None:
    """Note that somebody has looked into a set that is likely to fail early; later forecasts of it change nothing."""
    newest = Forecast.objects.in_force().filter(visit=visit)
    if not Forecast.objects.filter(pk__in=newest.values("pk")).update(seen_to_at=now, seen_to_by=by):
        raise ValidationError(_("Nothing is forecast of it any more: look at the list again."))


def unsee_early(visit: Visit) -> None:
    """Put a set that is likely to fail early back on the list."""
    newest = Forecast.objects.in_force().filter(visit=visit).exclude(seen_to_at=None)
    _back(Forecast.objects.filter(pk__in=newest.values("pk")).update(seen_to_at=None, seen_to_by=None))


def see_to_unhappy(visit: Visit, *, by: Staff, now: datetime) -> None:
    """Note that somebody has seen to it that she left unhappy."""
    standing = Visit.objects.filter(pk=visit.pk, mirror_check=Visit.MirrorCheck.UNHAPPY, unhappy_seen_to_at=None)
    if not standing.update(unhappy_seen_to_at=now, unhappy_seen_to_by=by):
        raise ValidationError(_("It stands there no more: look at the list again."))


def unsee_unhappy(visit: Visit) -> None:
    """Put it back on the list that she left unhappy."""
    seen = Visit.objects.filter(pk=visit.pk).exclude(unhappy_seen_to_at=None)
    _back(seen.update(unhappy_seen_to_at=None, unhappy_seen_to_by=None))


def see_to_wishes(studio: Studio, wishes: Collection[int], *, by: Staff, now: datetime) -> int:
    """Note that the front desk has seen to what was asked of it; return how many that was news of.

    Being forgotten is the owner's to see to.
    """
    standing = Wish.objects.filter(studio=studio, pk__in=wishes, seen_to_at=None)
    if not by.is_owner:
        standing = standing.exclude(kind=Wish.Kind.FORGET)
    return standing.update(seen_to_at=now, seen_to_by=by)


def unsee_wishes(studio: Studio, wishes: Collection[int]) -> int:
    """Put what was asked about bookings back on the front desk's list; return how many."""
    seen = Wish.objects.filter(studio=studio, pk__in=wishes).exclude(seen_to_at=None)
    return seen.update(seen_to_at=None, seen_to_by=None)


@transaction.atomic
def hand_over(wish: Wish, *, by: Staff, now: datetime) -> Flag:
    """Give a wish that is more than one to her artist: it stands on the morning list as one to be read."""
    reply = Reply.objects.select_for_update(of=("self",)).select_related("flag", "client").get(pk=wish.reply_id)
    if reply.flag is not None:
        return reply.flag
    flag = Flag.objects.create(
        studio_id=wish.studio_id, urgency="unread", opened_at=reply.received_at, urgent_since=now
    )
    if reply.client is not None:
        flag.clients.set([reply.client])
    Reply.objects.filter(pk=reply.pk).update(flag=flag)
    Wish.objects.filter(pk=wish.pk, seen_to_at=None).update(seen_to_at=now, seen_to_by=by)
    return flag


def _standing(flag: Flag) -> QuerySet[Flag]:
    return Flag.objects.filter(pk=flag.pk, state__in=[State.OPEN, State.TAKEN])


def _touch(flag: Flag) -> None:
    """A hold may end or begin with it: its clients are planned anew."""
    Client.objects.filter(pk__in=flag.clients.values("pk")).update(revision=F("revision") + 1)


def _back(changed: int) -> None:
    if not changed:
        raise ValidationError(_("Someone was quicker: look at the list again."))


def _after(flag: Flag, changed: int) -> Flag:
    if not changed:
        raise ValidationError(_("Someone was quicker: look at the list again."))
    flag.refresh_from_db()
    return flag
