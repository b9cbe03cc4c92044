"""The demo: an invented studio with 60 clients, a year of visits and ten days of messages."""

from __future__ import annotations

import random
from collections.abc import Callable
from datetime import datetime, timedelta

from aftercare import ruling
from aftercare.demo import asked, cast, past, reactions, wordings
from aftercare.demo.days import Days
from aftercare.demo.year import Year, at

SEED = 7
DAYS = 10


def make(now: datetime, passwords: Callable[[], str], say: Callable[[str], None]) -> list[tuple[str, str, str]]:
    """Make the demo studio as of ``now``; return (role, e-mail, password) of each who can sign in.

    ``passwords`` makes one password a call; ``say`` is told how far it is.
    """
    pick = random.Random(SEED)
    today = now.astimezone(cast.ZONE).date()
    since = at(today - timedelta(days=DAYS), 6 * 60)
    say("demo studio: its staff, adhesives and 60 clients")
    studio = cast.studio()
    signing_in = cast.staff(studio, passwords)
    cast.closed_and_away(studio, today)
    owner = studio.staff.get(is_owner=True)
    ruling.change(studio, by=owner, now=since - timedelta(days=20), lead_days=9)
    ruling.change(studio, by=owner, now=since, lead_days=6, set_checks=2)
    year = Year(studio, cast.adhesives(studio), today, since, pick)
    people = cast.people(studio, pick, since)
    say("demo studio: a year of visits")
    year.write(people)
    reactions.write(studio, since, random.Random(SEED))  # a dice of its own: the rest of the demo stays as it was
    wordings.write(studio, since)
    days = Days(studio, people, year, since, now)
    days.forecast_before(say)
    past.write(studio, people, since, random.Random(SEED))
    days.live(say)
    asked.write(studio, now)
    return signing_in
