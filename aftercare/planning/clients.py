"""From a client's visits, her forecast and the rules to her messages. Idempotent; follows whatever changed."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable
from datetime import datetime

from django.db import transaction
from django.db.models import F, QuerySet

from aftercare import facts, outbox
from aftercare.core.delivery import OPEN, State
from aftercare.core.timing import UNPLANNED, Planned
from aftercare.facts import ClientBook
from aftercare.models import Message
from studio.models import Client, Studio
from studio.turns import in_turns, let_others_in

BATCH = 500  # clients in one transaction: small enough that no page or reply waits long for it


def catch_up(
    now: datetime, *, studio: Studio | None = None, progress: Callable[[int], None] | None = None
) -> Counter[str]:
    """Plan every client whose records are ahead of her plan; return how many messages came to stand how."""
    counts: Counter[str] = Counter()
    done = 0
    while ids := _behind(studio):
        if done:
            let_others_in()
        counts += plan_clients(ids, now)
        done += len(ids)
        if progress:
            progress(done)
    return counts


def behind(studio: Studio) -> int:
    """Return how many clients of a studio are ahead of their plan: what was last written is not in it yet."""
    return _ahead_of_their_plan(studio).count()


def _behind(studio: Studio | None) -> list[int]:
    return list(_ahead_of_their_plan(studio).values_list("pk", flat=True)[:BATCH])


def _ahead_of_their_plan(studio: Studio | None) -> QuerySet[Client]:
    found = Client.objects.filter(revision__gt=F("planned_revision")).order_by()  # any order: the index has them alone
    return found if studio is None else found.filter(studio=studio)


def plan_clients(client_ids: Iterable[int], now: datetime) -> Counter[str]:
    """Plan these clients anew at ``now``; return how many messages came to stand how through it."""
    counts: Counter[str] = Counter()
    for ids in in_turns(client_ids, BATCH):
        with transaction.atomic():
            counts += _plan_batch(ids, now)
    return counts


def plan_studio(studio: Studio, now: datetime) -> Counter[str]:
    """Plan all clients of a studio, as when its rules have changed."""
    Client.objects.filter(studio=studio).update(revision=F("revision") + 1)
    return catch_up(now, studio=studio)


def _plan_batch(ids: list[int], now: datetime) -> Counter[str]:
    # The revision is read first: what is written while this plans leaves her ahead of her plan, and is planned next.
    # The lock keeps off others who plan her: of two, one would compare with messages that the other is changing.
    held = Client.objects.filter(pk__in=ids).select_for_update(no_key=True).order_by("pk")
    revisions = dict(held.values_list("pk", "revision"))
    new: list[Message] = []
    changed: list[Message] = []
    for book in facts.load(ids, now).values():
        _compare(book, now, new, changed)
    outbox.promise(new)
    outbox.replan(changed)
    _caught_up(revisions)
    return Counter(message.state for message in (*new, *changed))


def _caught_up(revisions: dict[int, int]) -> None:
    by_revision: dict[int, list[int]] = {}
    for client, revision in revisions.items():
        by_revision.setdefault(revision, []).append(client)
    for revision, clients in by_revision.items():
        Client.objects.filter(pk__in=clients).update(planned_revision=revision)


def _compare(book: ClientBook, now: datetime, new: list[Message], changed: list[Message]) -> None:
    """Add to ``new`` and ``changed`` what sets this client's messages right."""
    standing = {message.key: message for message in book.messages.values() if State(message.state) in OPEN}
    for planned in book.plan(now):
        message = standing.pop(planned.key, None)
        if message is None:
            message = Message(
                studio=book.studio, client=book.client, visit_id=planned.visit.id, key=planned.key, planned_from=now
            )
            _write(message, planned, book, now)
            new.append(message)
        elif _write(message, planned, book, now):
            changed.append(message)
    for message in standing.values():
        if message.occasion not in UNPLANNED and message.state != State.WITHDRAWN:
            _make_hers(message, book)
            message.state = State.WITHDRAWN
            message.reason = facts.why_gone(message, book, now)
            message.ended_at = now
            changed.append(message)


def _write(message: Message, planned: Planned, book: ClientBook, now: datetime) -> bool:
    """Set the message to what was planned; return whether that changed anything that anyone can see."""
    before = _seen_of(message)
    claimed = message.state == State.CLAIMED
    withheld = planned.reason is not None
    _make_hers(message, book)
    message.occasion, message.step, message.edition = planned.occasion, planned.step, planned.edition
    message.state = State.WITHHELD if withheld else State.CLAIMED if claimed else State.PLANNED
    message.reason = planned.reason or ""
    _go_by(message, message.channel if message.fell_back else book.channel_for(planned.occasion))
    due = _as_soon_as_it_may(message, planned.due)
    message.due_at = due if message.state != State.CLAIMED else message.due_at
    message.aim_at, message.no_later_than = planned.aim, planned.no_later_than
    message.planned_from, message.about_start = planned.planned_from, planned.visit.start
    message.forecast_id = planned.forecast.id or None if planned.forecast else None
    if _seen_of(message) == before:
        return False
    if claimed and not withheld:  # the facts changed under a sender: it lets go, and the message is claimed again
        message.state, message.due_at = State.PLANNED, due
    message.ended_at = now if withheld else None
    return True


def _go_by(message: Message, channel: str) -> None:
    """By another channel it need not wait for what failed by this one."""
    if message.channel != channel:
        message.channel, message.not_before = channel, None


def _as_soon_as_it_may(message: Message, due: datetime | None) -> datetime | None:
    """A plan that was made anew changes nothing of a provider's having asked for patience."""
    return max(due, message.not_before) if due is not None and message.not_before is not None else due


def _seen_of(message: Message) -> tuple[object, ...]:
    return (
        *(message.client_id, message.state, message.reason, message.due_at, message.channel),
        *(message.aim_at, message.no_later_than, message.about_start),
    )


def _make_hers(message: Message, book: ClientBook) -> None:
    """A visit that was another client's takes along what has not gone; no channel of hers has failed yet."""
    if message.client_id != book.client.pk:
        message.client, message.fell_back, message.not_before = book.client, False, None
