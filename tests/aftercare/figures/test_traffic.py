"""Messages by where they stand, and their segments."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from aftercare.core.delivery import State
from aftercare.figures import Span, failures, traffic
from aftercare.figures.traffic import total
from aftercare.models import Message
from studio.models import Visit
from tests.cast import Cast


@pytest.fixture
def visit(cast: Cast) -> Visit:
    return cast.done(cast.client("Mia"), cast.at(9, -5))


def message(visit: Visit, number: int, **fields: Any) -> Message:
    facts: dict[str, Any] = {
        "due_at": visit.end,
        "aim_at": visit.end,
        "state": State.DELIVERED,
        "channel": "sms",
        "segments": 2,
    }
    facts["client"] = visit.client
    return Message.objects.create(
        studio=visit.studio,
        visit=visit,
        key=f"m{number}",
        occasion="care",
        planned_from=visit.starts_at,
        **{**facts, **fields},
    )


def test_alike_messages_are_one_row_with_their_segments(visit: Visit, span: Span) -> None:
    message(visit, 1)
    message(visit, 2, segments=3)
    message(visit, 3, state=State.UNDELIVERED, reason="No such number.")
    message(visit, 4, state=State.WITHHELD, reason="no consent", channel="", segments=None)

    found = {(row.state, row.channel, row.why): (row.messages, row.segments) for row in traffic(span)}

    assert found == {
        ("delivered", "sms", ""): (2, 5),
        ("undelivered", "sms", "No such number."): (1, 2),
        ("withheld", "", "no consent"): (1, 0),
    }
    assert total(traffic(span)) == (4, 7)


def test_what_was_rehearsed_is_counted_and_costs_nothing_but_in_the_demo(visit: Visit, span: Span) -> None:
    message(visit, 1, rehearsed=True)
    message(visit, 2)

    assert total(traffic(span)) == (2, 2)
    visit.studio.is_demo = True
    assert total(traffic(replace(span, studio=visit.studio))) == (2, 4)


def test_one_for_which_there_was_no_moment_counts_by_its_aim(visit: Visit, span: Span) -> None:
    message(visit, 1, due_at=None, state=State.WITHHELD, reason="too late")
    message(visit, 2, due_at=None, aim_at=span.until, state=State.WITHHELD, reason="too late")

    assert [row.messages for row in traffic(span)] == [1]


def test_one_that_was_withheld_stays_on_the_day_for_which_it_was_meant(visit: Visit, span: Span) -> None:
    """Planning anew, as after another rule, moves the moment at which it could still go: no news of the past."""
    message(visit, 1, due_at=span.until, state=State.WITHHELD, reason="already booked")
    message(visit, 2, due_at=visit.end, aim_at=span.until, state=State.WITHHELD, reason="already booked")

    assert [(row.why, row.messages) for row in traffic(span)] == [("already booked", 1)]


def test_pages_to_staff_and_other_days_are_left_out(cast: Cast, visit: Visit, span: Span) -> None:
    message(visit, 1, client=None, staff=cast.ada)
    message(visit, 2, due_at=span.until)

    assert traffic(span) == []


def test_an_artist_has_those_about_her_own_visits(cast: Cast, visit: Visit, span: Span) -> None:
    message(visit, 1)

    assert len(traffic(replace(span, artist=cast.ada.pk))) == 1
    assert traffic(replace(span, artist=cast.noor.pk)) == []


def test_what_failed_is_counted_of_what_the_road_has_told_of(visit: Visit, span: Span) -> None:
    message(visit, 1)
    message(visit, 2, state=State.UNDELIVERED)
    message(visit, 3, state=State.HANDED_OVER)
    message(visit, 4, rehearsed=True)
    message(visit, 5, channel="email")

    found = {road: (one.sums.cases, one.sums.total) for (road,), one in failures(span)["road"].items()}

    assert found == {"sms": (2, 1), "email": (1, 0)}
