"""Shares left, counted of the set that she came in with."""

from __future__ import annotations

from dataclasses import astuple, replace
from datetime import timedelta

import pytest

from aftercare.core import rates
from aftercare.figures import Span, shares
from studio.models import Adhesive, Service
from tests.cast import Cast, make


def test_a_set_belongs_to_whoever_put_it_on_and_to_what_it_was_put_on_with(cast: Cast, span: Span) -> None:
    her, glue = cast.client("Mia"), Adhesive.objects.create(studio=cast.studio, product="Alder", lot="7")
    cast.done(her, cast.at(9, -40), Service.FULL_SET, artist=cast.ada, adhesive=glue)
    cast.done(her, cast.at(9, -20), artist=cast.noor, share_left=60)

    groups = shares(span)

    assert set(groups["artist"]) == {(str(cast.ada.pk),)}
    assert set(groups["adhesive"]) == {(str(glue.pk),)}
    assert set(groups["service"]) == {("full set",)}
    [found] = groups["all"].values()
    assert found.sums.cases == 1
    assert [found.sums.value, found.beside] == pytest.approx([0.6, 20])


def test_sums_agree_with_those_of_the_cases_themselves(cast: Cast, span: Span) -> None:
    values, clients = [], []
    for number in range(6):
        her = cast.client(f"Person{number}")
        cast.done(her, cast.at(9, -80))
        for visit in range(number % 3 + 1):
            share = 40 + 7 * number - 5 * visit
            cast.done(her, cast.at(9, -60 + 20 * visit), share_left=share)
            values.append(share / 100)
            clients.append(number)

    [found] = shares(span)["all"].values()

    assert astuple(rates.mean_of(found.sums)) == pytest.approx(astuple(rates.mean(values, clients)))


def test_what_was_seen_after_a_removal_is_of_no_set(cast: Cast, span: Span) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -40))
    cast.done(her, cast.at(9, -30), Service.REMOVAL)
    cast.done(her, cast.at(9, -20), Service.FULL_SET, share_left=10)

    assert shares(span)["all"] == {}


def test_only_the_days_of_the_span_count_but_the_set_may_be_from_before(cast: Cast, span: Span) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -140))
    cast.done(her, cast.at(9, -120), share_left=10)  # before the span
    cast.done(her, cast.at(9, -95), share_left=50)
    cast.done(her, cast.at(9, 0), share_left=90)  # after its end: it is not yet nine

    [found] = shares(span)["all"].values()

    assert found.sums.cases == 1
    assert found.sums.value == pytest.approx(0.5)


@pytest.mark.parametrize(("worn", "cases"), [(120.4, 1), (121, 0), (150, 0)])
@pytest.mark.parametrize("days", [10, 300])
def test_of_a_set_worn_too_long_nothing_counts_however_long_the_span(
    worn: float, cases: int, days: int, cast: Cast
) -> None:
    """Source: LONGEST_WORN, by which the forecasts leave the same readings out."""
    her, seen = cast.client("Mia"), cast.at(9, -9)
    cast.done(her, seen - timedelta(days=worn))
    cast.done(her, seen, Service.FULL_SET, share_left=5)

    found = shares(Span(cast.studio, cast.at(0, -days), cast.now, "month"))["all"]

    assert sum(one.sums.cases for one in found.values()) == cases


@pytest.mark.parametrize("removal_first", [True, False])
def test_a_removal_marked_at_the_same_moment_as_a_new_set_came_before_it(removal_first: bool, cast: Cast) -> None:
    her, at = cast.client("Mia"), cast.at(9, -40)
    for service in sorted((Service.REMOVAL, Service.FULL_SET), reverse=removal_first):
        cast.done(her, at, service)
    cast.done(her, cast.at(9, -20), share_left=60)

    [found] = shares(Span(cast.studio, cast.at(0, -100), cast.now, "month"))["all"].values()

    assert found.sums.value == pytest.approx(0.6)


def test_steps_begin_on_the_studios_own_first_of_the_month(cast: Cast) -> None:
    cast.studio.time_zone = "America/New_York"
    span = Span(cast.studio, cast.at(0, -400), cast.now, "month")
    her = cast.client("Mia")
    first = cast.at(0, -50).astimezone(cast.studio.zone).replace(day=1, hour=0, minute=30)
    cast.done(her, first.replace(minute=0) - (cast.now - cast.at(0, -20)))
    cast.done(her, first, share_left=60)

    assert set(shares(span)["bucket"]) == {(first.date().isoformat(),)}


def test_an_artist_sees_her_own_sets_alone_and_no_studio_anothers(cast: Cast, span: Span) -> None:
    strangers = make("larkhill")
    for where in (cast, strangers):
        her = where.client("Mia")
        where.done(her, where.at(9, -40), artist=where.ada)
        where.done(her, where.at(9, -20), artist=where.noor, share_left=60)
        where.done(her, where.at(9, -2), artist=where.ada, share_left=30)

    [whole] = shares(span)["all"].values()
    [hers] = shares(replace(span, artist=cast.noor.pk))["all"].values()

    assert whole.sums.cases == 2
    assert hers.sums.cases == 1
    assert hers.sums.value == pytest.approx(0.3)
