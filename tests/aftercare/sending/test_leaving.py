"""What is about to leave is journaled beside other work: it goes once that is done, and not where it could not be."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime
from types import SimpleNamespace
from typing import Any, cast

import pytest
from django.db import DatabaseError, OperationalError

from aftercare import outbox
from aftercare.models import Line, Message
from aftercare.sending import absence
from aftercare.sending.leaving import Leaving
from aftercare.sending.letters import Letter
from aftercare.sending.roads import Road, Roads
from studio import clock
from tests.letters import make_line, make_message, parcel_of
from tests.people import NOW, make_client, make_studio
from tests.streams import Pipe

pytestmark = pytest.mark.django_db(transaction=True)  # after a failure a connection is looked at, and may end


class Asked(outbox.Departures):
    """Stands in for a database that is asked without waiting; ``answers`` are what it says in turn."""

    def __init__(self, *answers: set[int] | DatabaseError) -> None:
        self.answers = list(answers)
        self.asked: list[list[int]] = []
        self.is_done = True

    def begin(self, parcels: Sequence[outbox.Parcel], now: datetime, at: datetime, patience: int) -> None:
        self.asked.append([parcel.message.pk for parcel in parcels])

    def fileno(self) -> int:
        return 7

    def are_written(self) -> bool:
        return self.is_done

    def end(self) -> set[int]:
        said = self.answers.pop(0)
        if isinstance(said, DatabaseError):
            raise said
        return said

    def close(self) -> None:
        pass


Letters = Callable[[int], list[Letter]]


@pytest.fixture
def letters(transactional_db: None) -> Letters:
    """Makes so many claimed letters."""

    mia = make_client(make_studio(live_since=NOW), mobile="+12125550101")
    line = make_line(mia.studio)

    def make(number: int) -> list[Letter]:
        for _ in range(number):
            make_message(mia)
        found = [SimpleNamespace(parcel=parcel_of(one, line), message=one) for one in outbox.claim(NOW, number)]
        return cast("list[Letter]", found)

    return make


def leaving(*beside: outbox.Departures, window: int = 3) -> Leaving:
    return Leaving(Road(Pipe(window=window)), Roads(), beside)


def test_it_goes_once_it_is_written_down(letters: Letters) -> None:
    one, other = letters(2)
    asked = Asked({one.message.pk})
    them = leaving(asked)

    assert them.begin([one, other], clock.now) == []

    asked.is_done = False
    assert (them.held, them.free, them.descriptors(), them.end()) == (2, 0, [7], [])
    asked.is_done = True
    assert them.end() == [one]
    assert (them.held, them.free, them.descriptors(), them.end()) == (0, 1, [], [])
    # What may not go after all is due again.
    assert Message.objects.get(pk=other.message.pk).state == "planned"


def test_two_portions_are_written_down_at_once_and_leave_as_they_are_done(letters: Letters) -> None:
    one, other = letters(2)
    slow, quick = Asked({one.message.pk}), Asked({other.message.pk})
    slow.is_done = False
    them = leaving(slow, quick)

    them.begin([one], clock.now)
    assert them.free == 1
    them.begin([other], clock.now)

    assert (them.held, them.free) == (2, 0)
    assert them.end() == [other]
    assert (them.held, them.free) == (1, 1)
    slow.is_done = True
    assert them.end() == [one]


@pytest.mark.parametrize(
    ("window", "places", "together"), [(1, 1, 1), (10, 1, 1), (10, 10, 2), (50, 10, 5), (50, 50, 12), (200, 200, 50)]
)
def test_some_places_are_filled_at_a_time_where_the_database_is_asked_beside(
    window: int, places: int, together: int
) -> None:
    assert leaving(Asked(), window=window).share(places) == together
    assert leaving(window=window).share(places) == places


def test_at_the_end_it_is_waited_for(letters: Letters) -> None:
    [one] = letters(1)
    asked = Asked({one.message.pk})
    asked.is_done = False
    them = leaving(asked)
    them.begin([one], clock.now)

    assert them.end(wait=True) == [one]


@pytest.mark.parametrize("limit", [None, 100])
def test_what_is_counted_on_its_day_or_not_asked_beside_goes_at_once(letters: Letters, limit: int | None) -> None:
    one, other = letters(2)
    Line.objects.update(most_a_day=limit)
    for letter in (one, other):
        letter.parcel.line.refresh_from_db()
    asked = Asked()
    them = leaving(*[asked] if limit else [])

    assert them.begin([one, other], clock.now) == [one, other]

    assert them.held == 0
    assert asked.asked == []
    assert set(Message.objects.values_list("state", flat=True)) == {"handing_over"}


def test_a_database_that_is_away_for_a_moment_holds_up_that_portion_alone(
    letters: Letters, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(absence, "_PAUSE", 0.0)
    one, other = letters(2)
    asked = Asked(OperationalError("away"), {other.message.pk})
    them = leaving(asked)

    them.begin([one], clock.now)
    assert (them.end(), them.held) == ([], 0)
    them.begin([other], clock.now)

    assert them.end() == [other]
    assert them.failed == [one]
    assert asked.asked == [[one.message.pk], [other.message.pk]]
    assert Message.objects.get(pk=one.message.pk).state == "claimed"  # until its lease is over


def test_what_is_given_up_while_it_is_written_down_has_not_left(letters: Letters) -> None:
    [one] = letters(1)
    asked = Asked({one.message.pk})
    them = leaving(asked)
    them.begin([one], clock.now)

    them.give_up()

    assert (them.failed, them.held, them.end()) == ([one], 0, [])


def test_one_that_stays_away_is_told_of(letters: Letters, monkeypatch: pytest.MonkeyPatch) -> None:
    clock_hand = [100.0]
    monkeypatch.setattr(absence, "_PAUSE", 0.0)
    monkeypatch.setattr("aftercare.sending.absence.time.monotonic", lambda: clock_hand[0])
    [one] = letters(1)
    away: Any = OperationalError("away")
    them = leaving(Asked(away, away, away))

    them.begin([one], clock.now)
    them.end()
    clock_hand[0] += absence.LONGEST
    them.begin([one], clock.now)
    them.end()
    clock_hand[0] += 1
    them.begin([one], clock.now)

    with pytest.raises(OperationalError, match="away"):
        them.end()


def test_a_clock_that_cannot_be_asked_holds_up_that_portion_alone_as_well(
    letters: Letters, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(absence, "_PAUSE", 0.0)
    [one] = letters(1)
    them = leaving(asked := Asked())

    def away() -> datetime:
        raise OperationalError("away")

    assert them.begin([one], away) == []

    assert (them.held, them.failed, asked.asked) == (0, [one], [])


@pytest.mark.parametrize("beside", [True, False])
def test_one_whose_hours_have_closed_since_it_was_judged_is_judged_anew(letters: Letters, beside: bool) -> None:
    one, other = letters(2)
    one.parcel.until = clock.now()
    asked = Asked({other.message.pk})
    them = leaving(*[asked] if beside else [])

    going = them.begin([one, other], clock.now) + them.end()

    assert going == [other]
    late = Message.objects.get(pk=one.message.pk)
    assert (late.state, late.lease_until) == ("planned", None)
    assert them.counts == {"planned": 1}


def test_nothing_is_asked_where_the_hours_of_all_have_closed(letters: Letters) -> None:
    [one] = letters(1)
    one.parcel.until = clock.now()
    asked = Asked()

    assert leaving(asked).begin([one], clock.now) == []

    assert asked.asked == []
