"""Paging from the rows: who is told, what leaves, and what becomes of it when somebody has the client."""

from __future__ import annotations

import re
from datetime import timedelta

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from aftercare import matters, paging, receiving, tasks, triage
from aftercare.lines import lines_of
from aftercare.models import Flag, Message, Reply
from aftercare.transports import memory
from studio.models import Absence, Staff, Studio
from tests.cast import Cast, make
from tests.letters import MEMORY

NUMBERS = {"ada": "+12125550111", "olga": "+12125550112", "noor": "+12125550113", "dee": "+12125550114"}


@pytest.fixture
def cast(db: None) -> Cast:
    """A studio that is live, whose people have mobiles; Mia is Ada's client."""
    cast = make()
    Studio.objects.update(live_since=cast.now - timedelta(days=30))
    lines_of(cast.studio)
    cast.studio.lines.update(transport=MEMORY)
    for name, number in NUMBERS.items():
        Staff.objects.filter(pk=getattr(cast, name).pk).update(mobile=number, morning_at="20:00")
    cast.done(cast.client("Mia", "Quist"), cast.at(9, -12))  # no check or aftercare leaves in between
    memory.taken.clear()
    return cast


def writes(cast: Cast, text: str, hour: float, name: str = "Mia") -> Reply:
    """Have her write at that hour; the engine's next round reads it."""
    line = lines_of(cast.studio)["sms"]
    return receiving.receive(line, cast.clients[name].mobile, text, received_at=cast.at(hour))


def round_at(cast: Cast, hour: float) -> list[tuple[str, str]]:
    """Have the engine look once at that hour; return what left: to whom, and what."""
    before = len(memory.taken)
    tasks.send_due(studio_id=cast.studio.pk, now=cast.at(hour))
    names = {number: name for name, number in NUMBERS.items()} | {cast.clients["Mia"].mobile: "mia"}
    return [(names[one.address], one.text) for one in memory.taken[before:]]


def to(left: list[tuple[str, str]]) -> list[str]:
    return [who for who, _text in left]


def test_at_two_at_night_she_is_answered_and_her_artist_told_in_the_same_round(cast: Cast) -> None:
    writes(cast, "cant open my eye at all", 2)

    left = dict(round_at(cast, 2))

    assert set(left) == {"mia", "ada"}
    assert left["ada"].startswith("Wrenfield Lash Room: a client needs you. http")
    flag = Flag.objects.get()
    assert left["ada"].endswith(f"/morning#flag-{flag.pk}")
    assert not [word for word in ("Mia", "Quist", "eye", "open my") if word in left["ada"]]
    assert Message.objects.get(occasion="alert").key == f"flag:{flag.pk}:alert:1"


def test_untaken_it_goes_up_and_she_is_told_after_an_hour(cast: Cast) -> None:
    Studio.objects.update(third_contact=cast.noor)
    writes(cast, "cant open my eye at all", 2)
    round_at(cast, 2)

    assert to(round_at(cast, 2.2)) == []
    assert to(round_at(cast, 2.25)) == ["olga"]
    assert to(round_at(cast, 2.5)) == ["noor"]
    hour_later = round_at(cast, 3)

    assert sorted(to(hour_later)) == ["ada", "mia", "noor", "olga"]
    assert "nobody here could see your message yet" in dict(hour_later)["mia"]
    assert to(round_at(cast, 3.1)) == []
    assert "mia" not in to(round_at(cast, 4))


def test_once_somebody_has_her_nothing_more_goes(cast: Cast) -> None:
    writes(cast, "cant open my eye at all", 2)
    round_at(cast, 2)
    matters.take(Flag.objects.get(), by=cast.ada, now=cast.at(2.1))

    assert [to(round_at(cast, hour)) for hour in (2.25, 2.5, 3, 4)] == [[]] * 4


def test_a_page_that_is_promised_and_then_taken_is_withdrawn(cast: Cast) -> None:
    writes(cast, "cant open my eye at all", 2)
    round_at(cast, 2)
    paging.look(cast.at(2.25))
    matters.take(Flag.objects.get(), by=cast.ada, now=cast.at(2.25))

    assert to(round_at(cast, 2.26)) == []
    assert Message.objects.get(staff=cast.olga).state == "withdrawn"


def test_one_that_becomes_worse_pages_anew_whoever_has_it(cast: Cast) -> None:
    writes(cast, "my lid is a bit itchy", 14)
    assert set(to(round_at(cast, 14))) == {"mia", "ada"}
    matters.take(Flag.objects.get(), by=cast.ada, now=cast.at(14.1))
    writes(cast, "now I cannot breathe", 14.2)

    assert set(to(round_at(cast, 14.2))) == {"mia", "ada"}
    assert [page.key.rpartition(":")[2] for page in Message.objects.filter(occasion="alert").order_by("pk")] == [
        "1",
        "2",
    ]
    assert to(round_at(cast, 14.5)) == ["olga"]


def test_a_page_that_cannot_be_delivered_goes_to_the_next_at_once(cast: Cast) -> None:
    writes(cast, "cant open my eye at all", 2)
    round_at(cast, 2)
    Message.objects.filter(staff=cast.ada).update(state="undelivered", ended_at=cast.at(2.05))

    assert to(round_at(cast, 2.06)) == ["olga"]


def test_whoever_covers_for_her_is_told_in_her_place(cast: Cast) -> None:
    today = cast.now.astimezone(cast.studio.zone).date()
    Absence.objects.create(staff=cast.ada, cover=cast.noor, first_day=today, last_day=today)
    Absence.objects.create(staff=cast.noor, cover=cast.dee, first_day=today, last_day=today)
    writes(cast, "cant open my eye at all", 2)

    assert set(to(round_at(cast, 2))) == {"mia", "dee"}


@pytest.mark.parametrize("circle", [True, False])
def test_where_nobody_stands_in_the_owner_is_told_at_once(cast: Cast, circle: bool) -> None:
    today = cast.now.astimezone(cast.studio.zone).date()
    Absence.objects.create(staff=cast.ada, cover=cast.noor if circle else None, first_day=today, last_day=today)
    if circle:
        Absence.objects.create(staff=cast.noor, cover=cast.ada, first_day=today, last_day=today)
    writes(cast, "cant open my eye at all", 2)

    assert set(to(round_at(cast, 2))) == {"mia", "olga"}


def test_of_what_is_to_be_seen_to_today_the_person_on_duty_is_told_too_and_the_answer_says_by_when(cast: Cast) -> None:
    Studio.objects.update(on_duty=cast.dee)
    writes(cast, "my lid is a bit itchy", 14)

    left = dict(round_at(cast, 14))

    assert set(left) == {"mia", "ada", "dee"}
    assert "a client needs you today" in left["dee"]
    assert re.search(r"We call you by \w+ \d+ \w+, 4:00 pm\.", left["mia"])
    assert "come in" not in left["mia"]  # she has nothing booked
    assert Flag.objects.get().call_by == cast.at(16)
    assert to(round_at(cast, 15)) == ["olga"]
    assert to(round_at(cast, 18)) == []
    assert "olga" in to(round_at(cast, 24 + 10))


def test_she_who_could_not_be_reached_is_tried_again_when_it_is_time(cast: Cast) -> None:
    writes(cast, "cant open my eye at all", 2)
    round_at(cast, 2)
    matters.take(Flag.objects.get(), by=cast.ada, now=cast.at(2.1))
    Flag.objects.update(try_again_at=cast.at(8))

    assert to(round_at(cast, 7.9)) == []
    [(who, text)] = round_at(cast, 8)
    assert (who, "time to try again" in text) == ("ada", True)
    assert to(round_at(cast, 8.5)) == []


def test_nobody_open_costs_one_query_and_twice_is_as_once(cast: Cast) -> None:
    with CaptureQueriesContext(connection) as asked:
        assert paging.look(cast.now) == 0
    assert len(asked) == 1
    writes(cast, "cant open my eye at all", 2)
    round_at(cast, 2)

    assert paging.look(cast.at(2)) == 0
    assert Message.objects.filter(occasion="alert").count() == 1


def test_of_two_who_share_a_number_each_ones_artist_is_told(cast: Cast) -> None:
    twin = cast.client("Nina", "Quist", mobile=cast.clients["Mia"].mobile)
    cast.done(twin, cast.at(9, -3), artist=cast.noor)
    writes(cast, "cant open my eye at all", 2)

    assert set(to(round_at(cast, 2))) == {"mia", "ada", "noor"}


def test_an_unknown_number_goes_to_the_owner(cast: Cast) -> None:
    receiving.receive(
        lines_of(cast.studio)["sms"], NUMBERS["dee"][:-1] + "9", "cant open my eye", received_at=cast.at(2)
    )
    tasks.send_due(studio_id=cast.studio.pk, now=cast.at(2))

    assert [page.staff for page in Message.objects.filter(occasion="alert")] == [cast.olga]


def test_what_is_wrong_with_one_studio_keeps_nobody_elses_people_asleep(cast: Cast) -> None:
    other = Studio.objects.create(slug="elm", name="Elm", time_zone="Mars/Olympus", region="US")
    Flag.objects.create(studio=other, urgency="emergency", opened_at=cast.at(1), urgent_since=cast.at(1))
    writes(cast, "cant open my eye at all", 2)
    triage.read_waiting(cast.at(2))

    assert paging.look(cast.at(2)) == 1


def test_she_who_has_a_visit_booked_is_asked_not_to_come_in_before(cast: Cast) -> None:
    cast.visit(cast.clients["Mia"], cast.at(12, 3))
    writes(cast, "my lid is a bit itchy", 14)

    assert "Do not come in before." in dict(round_at(cast, 14))["mia"]
