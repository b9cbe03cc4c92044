"""What the owner's page says of the forecasts."""

from __future__ import annotations

import pytest

from aftercare.figures import Case, by
from aftercare.pages.quality import compared, quality
from tests.cast import Cast, make
from tests.forecasts import forecast


@pytest.fixture
def cast(db: None) -> Cast:
    """Mia seen twice by Ada, Zoe once by Noor; each set likely to be at 0.6 on its 18th day."""
    cast = make()
    mia, zoe = cast.client("Mia"), cast.client("Zoe")
    forecast(cast.done(mia, cast.at(9, -100)), cast.at(10, -100), readings=0)
    forecast(cast.done(mia, cast.at(9, -82), share_left=50), cast.at(10, -82), readings=1)
    cast.done(mia, cast.at(9, -64), share_left=70)
    forecast(cast.done(zoe, cast.at(9, -38), adhesive=None), cast.at(10, -38), readings=3)
    cast.done(zoe, cast.at(9, -20), share_left=40, artist=cast.noor)
    return cast


def test_everything_is_shown_by_reader_by_adhesive_and_by_what_was_known(cast: Cast) -> None:
    found = quality(cast.studio, "all", cast.now)

    assert found.score is not None
    assert found.score.visits == found.seen == 3
    assert [(group.name, group.score.visits) for group in found.readers] == [("Ada", 2), ("Noor", 1)]
    assert [group.name for group in found.adhesives] == ["Birch 4, lot 0226", "adhesive not known"]
    assert [group.name for group in found.known] == [
        "no reading of hers before",
        "one or two readings before",
        "three readings or more before",
    ]


def test_the_table_says_what_the_picture_does(cast: Cast) -> None:
    found = quality(cast.studio, "all", cast.now)

    [step] = found.steps
    assert (step.low, step.high, step.visits) == (60, 70, 3)
    assert (step.seen, step.expected) == pytest.approx((0.5333, 0.6), abs=1e-4)
    assert len(found.picture.spots) == 3


def test_a_period_leaves_older_visits_out(cast: Cast) -> None:
    later = cast.at(9, 60)

    assert quality(cast.studio, "quarter", later).seen == 1
    assert quality(cast.studio, "year", later).seen == 3


def test_a_studio_with_nothing_has_nothing_to_say(db: None) -> None:
    empty = make()

    found = quality(empty.studio, "year", empty.now)

    assert (found.score, found.seen, found.unscored, list(found.readers)) == (None, 0, 0, [])


def of_kinds(*biases: float) -> list[Case]:
    """Twelve visits a kind, each of another client, seen so much above the forecast, give or take."""
    return [
        Case(
            client=12 * kind + number,
            reader=f"Artist {kind}",
            adhesive="",
            readings=3,
            seen=0.6 + bias + (0.06, -0.06, 0.02, -0.02)[number % 4],
            expected=0.6,
            low=0.52,
            high=0.68,
            usual=0.6,
        )
        for kind, bias in enumerate(biases)
        for number in range(12)
    ]


def test_kinds_that_are_compared_are_drawn_towards_the_whole() -> None:
    groups = {
        group.name: group for group in compared(by(of_kinds(0.0, 0.01, -0.01, 0.0, 0.03), lambda one: one.reader))
    }

    far = groups["Artist 4"]
    assert far.bias is not None
    assert 0.006 < far.bias < far.score.bias.value
    assert far.covered is not None
    assert 0 < far.covered < 1


def test_three_kinds_are_too_few_to_draw_together() -> None:
    assert [one.bias for one in compared(by(of_kinds(0.0, 0.02, -0.02), lambda one: one.reader))] == [None] * 3
