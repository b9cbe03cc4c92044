"""What other rules would move, against what planning then really does."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest
from django.db import connection, transaction
from django.db.models import F
from django.test.utils import CaptureQueriesContext
from hypothesis import HealthCheck, assume, event, given, settings
from hypothesis import strategies as st

from aftercare import facts, forecasting, planning, ruling, upkeep
from aftercare.core.delivery import State
from aftercare.models import Message
from aftercare.planning.ahead import DAYS, Kind, Moves
from studio.models import Client, Consent, Studio, Visit
from tests.people import NOW, make_client, make_staff, make_studio, make_visit

PLANNED_AT = NOW - timedelta(hours=9)  # of the same day: each night every forecast is made anew
Told = dict[str, tuple[str, Any, Any]]

CHANGES = st.one_of(
    st.fixed_dictionaries({"at": st.sampled_from((480, 600, 660, 900))}),
    st.fixed_dictionaries({"prepare_days": st.integers(2, 14), "evening_at": st.sampled_from((960, 1080))}),
    st.fixed_dictionaries({"check_days": st.sampled_from(([1, 2, 3], [2, 5, 9], [3, 6, 14]))}),
    st.fixed_dictionaries({"set_checks": st.integers(1, 3), "other_checks": st.integers(1, 3)}),
    st.fixed_dictionaries({"sensitive_sets": st.integers(1, 4), "check_last_hours": st.integers(12, 48)}),
    st.fixed_dictionaries({"lead_days": st.integers(0, 21), "reminder_gap_days": st.integers(2, 30)}),
    st.fixed_dictionaries({"reminder_hours": st.sampled_from(([660, 1080, [0, 6]], [600, 900, []]))}),
    st.fixed_dictionaries({"hours": st.sampled_from(([480, 1200, []], [720, 1080, []]))}),
    st.fixed_dictionaries({"care_minutes": st.integers(0, 180), "care_hours": st.just([600, 1000, []])}),
    st.fixed_dictionaries({"test_everyone": st.booleans(), "patch_test_days": st.integers(4, 30)}),
    st.fixed_dictionaries({"fill_level": st.sampled_from((0.5, 0.65, 0.8)), "full_set_level": st.just(0.35)}),
    st.fixed_dictionaries({"early_days": st.integers(5, 21), "reminder_after_days": st.integers(5, 28)}),
)
LATE = 18  # visits that begin at this hour are marked done long after: their aftercare counts from then
ONE_VISIT = st.tuples(
    st.sampled_from(("full set", "fill", "fill", "removal", "patch test", "lift", "touch-up")),
    st.sampled_from(("", "", "", "cancelled", "missed")),
    st.sampled_from((-70, -45, -30, -21, -15, -9, -6, -4, -2, -1, 1, 2, 4, 6, 9, 12, 16, 24)),
    st.integers(9, 18),
)
HERS = st.tuples(st.lists(ONE_VISIT, min_size=3, max_size=6), st.booleans(), st.booleans())


def write(studio: Studio, hers: tuple[list[tuple[str, str, int, int]], bool, bool]) -> Client:
    visits, sensitive, reminded = hers
    her = make_client(studio, email=f"mia{Client.objects.count()}@mail.example", sensitive=sensitive)
    if reminded:
        Consent.objects.create(client=her, channel="email", purpose="reminders", given=True, at=NOW, how="on paper")
    for service, fell_through, days, hour in visits:
        at = (NOW + timedelta(days=days)).replace(hour=hour)
        Visit.objects.create(
            studio=studio,
            client=her,
            service=service,
            starts_at=at,
            minutes=75,
            status=fell_through or ("done" if days < 0 else "booked"),
            heard_at=NOW - timedelta(days=80),
            marked_at=NOW - timedelta(days=1) if days < 0 and hour == LATE else None,
        )
    return her


def leaving(studio: Studio) -> dict[str, Any]:
    rows = Message.objects.filter(studio=studio, state__in=(State.PLANNED, State.CLAIMED))
    return dict(rows.values_list("key", "due_at"))


def really(before: dict[str, Any], after: dict[str, Any]) -> Told:
    """What came of a change: whichever leaves otherwise than before, within the days that are compared."""
    until, found = NOW + timedelta(days=DAYS), {}
    for key in before.keys() | after.keys():
        moments = [at for at in (before.get(key), after.get(key)) if at is not None]
        if before.get(key) != after.get(key) and min(moments) <= until:
            kind = Kind.COMES if key not in before else Kind.GOES if key not in after else Kind.MOVES
            found[key] = (kind.value, before.get(key), after.get(key))
    return found


def told(moves: Moves) -> Told:
    return {move.key: (move.kind.value, move.before, move.after) for move in moves.found}


@settings(
    max_examples=120, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow]
)
@given(
    people=st.lists(HERS, min_size=2, max_size=4),
    numbers=st.builds(lambda one, other: {**one, **other}, CHANGES, CHANGES),
    earlier=CHANGES | st.none(),
    gone=st.booleans(),
)
def test_it_tells_just_what_planning_then_does(
    db: None, people: list[Any], numbers: dict[str, Any], earlier: dict[str, object] | None, gone: bool
) -> None:
    with transaction.atomic():
        studio = make_studio()
        for hers in people:
            write(studio, hers)
        try:
            if earlier:
                ruling.put(studio, ruling.changed({}, "US", earlier), by=None, now=NOW - timedelta(days=3))
            rules = ruling.read(ruling.changed(ruling.values_of(studio), "US", numbers), studio, NOW)
        except (facts.BadRule, ValueError):
            assume(False)
        upkeep.catch_up(NOW - timedelta(days=7), studio=studio)
        if gone:
            left = Message.objects.filter(state=State.PLANNED, due_at__lte=PLANNED_AT)
            left.update(state=State.DELIVERED, handed_over_at=F("due_at"))
        forecasting.renew(studio, PLANNED_AT)
        upkeep.catch_up(PLANNED_AT, studio=studio)
        planning.plan_studio(studio, NOW)
        before = leaving(studio)

        moves = upkeep.preview(studio, rules, NOW)
        assert leaving(studio) == before

        ruling.change(studio, by=None, now=NOW, **numbers)
        upkeep.catch_up(NOW, studio=studio)
        expected = really(before, leaving(studio))
        event(f"moves: {min(len(expected), 3)}")
        assert told(moves) == expected
        transaction.set_rollback(True)


@pytest.fixture
def studio(db: None) -> Studio:
    return make_studio()


def regular(studio: Studio, days: int = 5) -> Client:
    """A regular: two sets done, the next one booked."""
    return write(studio, ([("full set", "", -45, 15), ("fill", "", -21, 15), ("fill", "", days, 15)], False, True))


def test_one_check_more_for_everybody_reaches_back_to_nobody(studio: Studio) -> None:
    write(studio, ([("full set", "", -45, 15), ("fill", "", -21, 15), ("fill", "", -1, 15)], False, False))
    planning.plan_studio(studio, PLANNED_AT)
    before = set(Message.objects.values_list("key", flat=True))

    ruling.change(studio, by=None, now=NOW, set_checks=3)
    planning.catch_up(NOW, studio=studio)

    new = Message.objects.exclude(key__in=before)
    assert sorted(new.values_list("occasion", "step", "state")) == [("check", 2, "planned"), ("check", 3, "planned")]
    assert len(set(new.values_list("visit"))) == 1  # of the last visit alone, and no line of the others is written


@pytest.mark.parametrize("numbers", [{"prepare_days": 5}, {"full_set_level": 0.39}])
def test_what_planning_would_change_by_the_rules_as_they_are_is_left_out(
    studio: Studio, numbers: dict[str, object]
) -> None:
    her = write(studio, ([("full set", "", -45, 15), ("fill", "", -21, 15)], False, True))
    booked = make_visit(her, starts_at=NOW - timedelta(hours=1), minutes=75)
    upkeep.catch_up(NOW - timedelta(hours=3), studio=studio)
    before = leaving(studio)
    assert Message.objects.filter(reason="already booked").exists()  # and by now that visit has begun, unmarked

    moves = upkeep.preview(studio, ruling.read(numbers, studio, NOW), NOW)

    assert [move.key for move in moves.found if move.kind is Kind.COMES] == []
    planning.plan_studio(studio, NOW)
    assert leaving(studio).keys() - before.keys()
    assert booked.status == Visit.Status.BOOKED


def test_it_says_why_what_goes_away_does(studio: Studio) -> None:
    her = regular(studio)
    planning.plan_studio(studio, NOW)
    rules = ruling.read({"prepare_last_hours": 24, "prepare_days": 1, "evening_days": 0, "at": 1020}, studio, NOW)

    moves = upkeep.preview(studio, rules, NOW)

    (move,) = moves.found
    assert (move.kind, move.client, move.why) == (Kind.GOES, her, "too late")
    assert move.after is None


def test_a_check_that_the_rules_call_for_no_longer_goes_away_and_says_so(studio: Studio) -> None:
    write(studio, ([("full set", "", -45, 15), ("fill", "", -1, 15)], False, False))
    ruling.change(studio, by=None, now=NOW - timedelta(days=2), set_checks=3)
    planning.plan_studio(studio, NOW)

    moves = upkeep.preview(studio, ruling.read({}, studio, NOW), NOW)

    assert [(move.kind, move.step, move.why) for move in moves.found] == [
        (Kind.GOES, 2, "no longer due for this visit"),
        (Kind.GOES, 3, "no longer due for this visit"),
    ]


def test_what_lies_beyond_the_days_compared_is_left_out(studio: Studio) -> None:
    regular(studio, days=40)
    planning.plan_studio(studio, NOW)

    moves = upkeep.preview(studio, ruling.read({"prepare_days": 5}, studio, NOW), NOW)

    assert moves.found == []


def test_another_studios_clients_are_not_looked_at(studio: Studio) -> None:
    regular(make_studio("elm"))

    moves = upkeep.preview(studio, ruling.read({"prepare_days": 5}, studio, NOW), NOW)

    assert (moves.clients, moves.looked, moves.found) == (0, 0, [])


def test_a_look_that_is_stopped_says_how_far_it_got(studio: Studio) -> None:
    regular(studio)

    moves = upkeep.preview(studio, ruling.read({"prepare_days": 5}, studio, NOW), NOW, stop=lambda: True)

    assert (moves.clients, moves.looked, moves.is_whole) == (1, 0, False)


@pytest.mark.parametrize("numbers", [{"prepare_days": 5}, {"fill_level": 0.65}])
def test_the_queries_are_as_many_for_thirty_clients_as_for_three(studio: Studio, numbers: dict[str, object]) -> None:
    asked = []
    for more in (3, 27):
        for _ in range(more):
            regular(studio)
        upkeep.catch_up(PLANNED_AT, studio=studio)
        rules = ruling.read(numbers, studio, NOW)
        upkeep.preview(studio, rules, NOW)
        with CaptureQueriesContext(
            connection,
        ) as queries:
            upkeep.preview(studio, rules, NOW)
        asked.append(len(queries))

    assert asked[0] == asked[1]


def test_books_read_for_a_look_plan_as_those_read_for_planning_do(studio: Studio) -> None:
    make_staff(studio)
    her = regular(studio)
    upkeep.catch_up(PLANNED_AT, studio=studio)

    full = facts.load([her.pk], NOW)[her.pk]
    slim = facts.load_as_if([her.pk], NOW, studio, full.rules)[her.pk]

    assert slim.facts == full.facts
    assert slim.planned_visits == full.planned_visits
    assert slim.standing.items() <= full.standing.items()  # what is over whatever the rules say is left out
    assert [(one.key, one.due, one.reason) for one in slim.plan(NOW)] == [
        (one.key, one.due, one.reason) for one in full.plan(NOW)
    ]
