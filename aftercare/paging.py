"""Paging: the people of a studio are told of a client who cannot wait, one after the other, until somebody has her.

The flag's row is what cannot be lost: each round of the engine looks at those that are open and promises the pages
that are due by now. A page holds no name and no sign, since locked screens are read by others.
"""

from __future__ import annotations

import logging
from collections import defaultdict
from collections.abc import Iterable, Sequence
from datetime import datetime

from django.db import DatabaseError
from django.db.models import Q

from aftercare import facts, outbox
from aftercare.core import answering, paging, say
from aftercare.core.answering import NOBODY_YET
from aftercare.core.delivery import State
from aftercare.core.occasions import Occasion
from aftercare.core.paging import Alarm, Page
from aftercare.facts import Team
from aftercare.models import HELD_BY, Flag, Message, Reply
from studio.models import Staff, Studio

log = logging.getLogger(__name__)

LOST = (State.UNDELIVERED, State.WITHHELD)  # resting, and nobody was told
TRY_AGAIN, SAME_DAY = "try_again", "same_day"  # kinds of pages; an emergency's has none


def look(now: datetime, studio_id: int | None = None) -> int:
    """Promise every page, and every word to a client that nobody could see hers, that is due; return how many.

    One query where nothing is open. Twice at once is as once: a page has one key.
    """
    urgent = Q(state=Flag.State.OPEN, urgency__in=HELD_BY)
    again = Q(state=Flag.State.TAKEN, try_again_at__lte=now)
    flags = Flag.objects.filter(urgent | again, state__in=[Flag.State.OPEN, Flag.State.TAKEN])
    if studio_id is not None:
        flags = flags.filter(studio=studio_id)
    of_studio = defaultdict(list)
    for flag in flags.select_related("studio").order_by("urgent_since", "pk"):
        of_studio[flag.studio].append(flag)
    return sum(_look_at(studio, found, now) for studio, found in of_studio.items())


def _look_at(studio: Studio, flags: Sequence[Flag], now: datetime) -> int:
    try:
        return _Watch(studio, now).look(flags)
    except DatabaseError:
        raise
    except Exception:  # what is wrong with one studio must not keep the others' people asleep
        log.exception("nobody of studio %s could be paged", studio.pk)
        return 0


class _Watch:
    """One studio's open matters at one moment."""

    def __init__(self, studio: Studio, now: datetime) -> None:
        self.studio, self.now = studio, now
        self.rules = facts.rules_of(studio)
        self.team: Team = facts.team(studio, now.astimezone(studio.zone).date())
        self.ways = facts.ways(self.team.people.values())

    def look(self, flags: Sequence[Flag]) -> int:
        pages = _pages(flags)
        artists = self._artists(flags)
        new: list[Message] = []
        for flag in flags:
            said = pages[flag.pk]
            if flag.state == Flag.State.TAKEN:
                new += self._try_again(flag, said)
                continue
            since = [page for page in said if page.planned_from >= flag.urgent_since]
            alarm = self._alarm(flag, artists[flag.pk], since)
            new += self._due(flag, alarm, said)
            new += self._nobody_yet(flag, alarm)
        return outbox.promise(new) if new else 0

    def _alarm(self, flag: Flag, artists: Iterable[Staff], pages: Iterable[Message]) -> Alarm:
        return Alarm(
            urgency=flag.urgency,
            since=flag.urgent_since,
            zone=self.studio.zone,
            hours=paging.open_hours(self.rules),
            artists=self._reached(artist.pk for artist in artists),
            on_duty=self._reached([self.studio.on_duty_id]),
            owners=self._reached(owner.pk for owner in self.team.owners),
            third=self._reached([self.studio.third_contact_id]),
            pages=[
                Page(page.step, page.staff_id or 0, (page.ended_at or self.now) if page.state in LOST else None)
                for page in pages
                if page.kind != TRY_AGAIN
            ],
        )

    def _reached(self, people: Iterable[int | None]) -> list[int]:
        """Return those who stand for ``people`` today and can be reached."""
        standing = (self.team.standing(pk) for pk in people if pk is not None)
        return [person.pk for person in standing if person is not None and person.pk in self.ways]

    def _artists(self, flags: Sequence[Flag]) -> dict[int, list[Staff]]:
        """Whose clients they are, by flag: of several who share a number, each one's artist."""
        concerned = defaultdict(list)
        through = Flag.clients.through.objects.filter(flag__in=[flag.pk for flag in flags])
        for flag_id, client_id in through.order_by("pk").values_list("flag_id", "client_id"):
            concerned[flag_id].append(client_id)
        books = facts.load({pk for clients in concerned.values() for pk in clients}, self.now)
        found: dict[int, list[Staff]] = {}
        for flag in flags:
            hers = (facts.responsible(books[pk]) for pk in concerned[flag.pk] if pk in books)
            found[flag.pk] = [artist for artist in hers if artist is not None]
        return found

    def _due(self, flag: Flag, alarm: Alarm, said: Sequence[Message]) -> Iterable[Message]:
        kind = SAME_DAY if flag.urgency == SAME_DAY else ""
        due = paging.due(alarm, self.rules, self.now)
        return [
            self._page(flag, len(said) + number, page.person, kind, page.step, page.at)
            for number, page in enumerate(due, start=1)
        ]

    def _try_again(self, flag: Flag, said: Sequence[Message]) -> list[Message]:
        """Whoever could not reach her is told, once, that it is time to try again."""
        assert flag.try_again_at is not None  # see look()
        told = any(page.kind == TRY_AGAIN and page.planned_from >= flag.try_again_at for page in said)
        people = self._reached([flag.taken_by_id]) or self._reached(owner.pk for owner in self.team.owners)
        if told or not people:
            return []
        return [self._page(flag, len(said) + 1, people[0], TRY_AGAIN, 0, flag.try_again_at)]

    def _page(self, flag: Flag, number: int, person: int, kind: str, step: int, at: datetime) -> Message:
        way = self.ways[person]
        return Message(
            studio=self.studio,
            key=f"flag:{flag.pk}:{Occasion.ALERT}:{number}",
            staff_id=person,
            flag=flag,
            occasion=Occasion.ALERT,
            kind=kind,
            step=step,
            channel=way.channel,
            address=way.address,
            due_at=at,
            planned_from=self.now,
        )

    def _nobody_yet(self, flag: Flag, alarm: Alarm) -> list[Message]:
        """Tell her, once an alarm, that nobody could see her words yet, to where the newest of them came from."""
        at = paging.nobody_yet_at(alarm, self.rules)
        if at is None or at > self.now:
            return []
        told = flag.messages.filter(occasion=Occasion.ANSWER, kind=NOBODY_YET)
        if told.filter(planned_from__gte=flag.urgent_since).exists():
            return []
        reply = flag.replies.exclude(from_address="").select_related("line", "client").order_by("received_at").last()
        if reply is None:
            return []
        number = told.count() + 1
        return [self._told_nobody(flag, reply, number, language, at) for language in self._languages(reply)]

    def _languages(self, reply: Reply) -> tuple[str, ...]:
        on_record = say.language_of(reply.client.language if reply.client else "", self.studio.language)
        return answering.languages(reply.reading.get("language", "und"), on_record)

    def _told_nobody(self, flag: Flag, reply: Reply, number: int, language: str, at: datetime) -> Message:
        return Message(
            studio=self.studio,
            key=f"flag:{flag.pk}:{Occasion.ANSWER}:{NOBODY_YET}:{number}:{language}",
            client_id=reply.client_id,
            flag=flag,
            occasion=Occasion.ANSWER,
            kind=NOBODY_YET,
            language=language,
            channel=reply.line.channel,
            line=reply.line,
            address=reply.from_address,
            due_at=at,
            planned_from=self.now,
        )


def _pages(flags: Iterable[Flag]) -> dict[int, list[Message]]:
    """Every page of these flags, in the order in which they were promised."""
    found: dict[int, list[Message]] = defaultdict(list)
    rows = Message.objects.filter(flag__in=[flag.pk for flag in flags], occasion=Occasion.ALERT)
    for page in rows.order_by("pk"):
        found[page.flag_id or 0].append(page)
    return found
