"""What people do about open matters."""

from __future__ import annotations

import pytest
from django.core.exceptions import ValidationError

from aftercare import matters
from aftercare.core.delivery import State
from aftercare.models import Flag, Forecast
from studio.models import Client
from tests.cast import Cast, make
from tests.forecasts import forecast


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


@pytest.fixture
def flag(cast: Cast) -> Flag:
    return cast.wrote(cast.client("Mia"), "it burns", cast.at(6))


def test_who_takes_it_last_has_it(cast: Cast, flag: Flag) -> None:
    matters.take(flag, by=cast.ada, now=cast.now)
    matters.take(flag, by=cast.olga, now=cast.now)

    assert (flag.state, flag.taken_by, flag.taken_at) == ("taken", cast.olga, cast.now)


def test_of_two_who_close_it_the_first_is_kept(cast: Cast, flag: Flag) -> None:
    same = Flag.objects.get(pk=flag.pk)
    matters.close(flag, outcome="spoke", words="Called her.", by=cast.ada, now=cast.now)

    with pytest.raises(ValidationError, match="Someone was quicker"):
        matters.close(same, outcome="spoke", words="Me too.", by=cast.olga, now=cast.now)

    same.refresh_from_db()
    assert (same.words, same.closed_by) == ("Called her.", cast.ada)


def test_a_closed_one_cannot_be_taken_and_can_be_opened_again(cast: Cast, flag: Flag) -> None:
    matters.close(flag, outcome="spoke", words="Called her.", by=cast.ada, now=cast.now)
    with pytest.raises(ValidationError):
        matters.take(flag, by=cast.ada, now=cast.now)

    matters.reopen(flag)

    assert (flag.state, flag.taken_by, flag.closed_by, flag.words) == ("open", None, None, "Called her.")


def test_closing_without_words_changes_nothing(cast: Cast, flag: Flag) -> None:
    with pytest.raises(ValidationError):
        matters.close(flag, outcome="spoke", words=" \n", by=cast.ada, now=cast.now)

    flag.refresh_from_db()
    assert flag.state == "open"


def test_closing_and_opening_have_her_planned_anew(cast: Cast, flag: Flag) -> None:
    before = Client.objects.get(first_name="Mia").revision

    matters.close(flag, outcome="spoke", words="Called her.", by=cast.ada, now=cast.now)
    matters.reopen(flag)

    assert Client.objects.get(first_name="Mia").revision == before + 2


@pytest.mark.parametrize("state", [State.UNDELIVERED, State.UNSURE])
def test_who_sees_to_a_message_that_was_lost_is_kept(state: State, cast: Cast) -> None:
    lost = cast.gone(cast.client("Mia"), None, "answer", cast.at(5), state=state)

    matters.see_to(lost, by=cast.dee, now=cast.now)

    lost.refresh_from_db()
    assert (lost.seen_to_by, lost.seen_to_at, lost.state) == (cast.dee, cast.now, state)


def test_a_message_that_arrived_after_all_cannot_be_seen_to(cast: Cast) -> None:
    arrived = cast.gone(cast.client("Mia"), None, "answer", cast.at(5), state=State.DELIVERED)

    with pytest.raises(ValidationError, match="look at the list again"):
        matters.see_to(arrived, by=cast.dee, now=cast.now)

    arrived.refresh_from_db()
    assert arrived.seen_to_at is None


def test_who_looks_into_an_early_set_is_kept_with_the_forecast_that_said_so(cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -2))
    old, newest = (forecast(visit, cast.at(10, day), fill_day=8) for day in (-2, -1))

    matters.see_to_early(visit, by=cast.ada, now=cast.now)

    newest.refresh_from_db()
    old.refresh_from_db()
    assert (newest.seen_to_by, newest.seen_to_at, old.seen_to_at) == (cast.ada, cast.now, None)


def test_a_set_of_which_nothing_is_forecast_cannot_be_seen_to(cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -2))

    with pytest.raises(ValidationError, match="look at the list again"):
        matters.see_to_early(visit, by=cast.ada, now=cast.now)

    assert not Forecast.objects.exists()
