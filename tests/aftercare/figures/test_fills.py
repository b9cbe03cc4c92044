"""Fills within their window, after a reminder and without. The forecast's fill level is reached on day 14.4 to 22.5."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from aftercare.core.delivery import State
from aftercare.figures import Span, fills
from aftercare.figures.fills import BOOKED, NOT_REMINDED, REMINDED
from aftercare.models import Message
from studio.models import Visit
from tests.cast import Cast
from tests.forecasts import forecast


def worn(cast: Cast, name: str, came: float | None, *, sent: float | None = 11, **fields: Any) -> Message:
    """A set of 60 days ago whose reminder left on its day ``sent``, and a next set on its day ``came``."""
    her = cast.client(name)
    visit = cast.done(her, cast.at(9, -60))
    state = State.WITHHELD if sent is None else State.DELIVERED
    gone = None if sent is None else visit.starts_at + timedelta(days=sent)
    if came is not None:
        heard = visit.starts_at + timedelta(days=12)
        start = visit.starts_at + timedelta(days=came)
        nxt = cast.done(her, start)
        Visit.objects.filter(pk=nxt.pk).update(heard_at=fields.pop("heard_at", heard))
    return Message.objects.create(
        studio=cast.studio,
        client=her,
        visit=visit,
        key=f"{name}:fill_due",
        occasion="fill_due",
        state=state,
        aim_at=visit.starts_at + timedelta(days=11),
        planned_from=visit.starts_at,
        handed_over_at=gone,
        forecast=forecast(visit, visit.starts_at, fill_day=18),
        **fields,
    )


def counted(span: Span) -> dict[str, tuple[int, float]]:
    return {way: (one.sums.cases, one.sums.total) for (way,), one in fills(span)["way"].items()}


@pytest.mark.parametrize(
    ("came", "hits"), [(13, 0), (14, 1), (18, 1), (23, 1), (24, 0), (13.6, 1), (23.4, 1), (None, 0)]
)
def test_a_hit_is_a_next_set_on_a_day_of_the_window(came: float | None, hits: int, cast: Cast, span: Span) -> None:
    worn(cast, "Mia", came)

    assert counted(span) == {REMINDED: (1, hits)}


def test_sets_are_told_apart_by_what_went_and_what_had_been_booked_by_then(cast: Cast, span: Span) -> None:
    worn(cast, "Mia", 18)
    worn(cast, "Zoe", 18, sent=None)
    worn(cast, "Bea", 30, sent=None, heard_at=cast.at(9, -59))
    worn(cast, "Ines", None, sent=None)

    assert counted(span) == {REMINDED: (1, 1), NOT_REMINDED: (2, 1), BOOKED: (1, 0)}


def test_what_was_only_rehearsed_reached_nobody(cast: Cast, span: Span) -> None:
    worn(cast, "Mia", 18, rehearsed=True)

    assert counted(span) == {NOT_REMINDED: (1, 1)}


def test_a_reminder_that_left_when_the_window_was_over_says_nothing(cast: Cast, span: Span) -> None:
    worn(cast, "Mia", 40, sent=30)

    assert counted(span) == {}


def test_a_set_counts_once_its_window_is_over(cast: Cast) -> None:
    worn(cast, "Mia", 18)

    assert counted(Span(cast.studio, cast.at(0, -100), cast.at(9, -60 + 22))) == {}
    assert counted(Span(cast.studio, cast.at(0, -100), cast.at(9, -60 + 25))) == {REMINDED: (1, 1)}


def test_of_several_editions_the_newest_counts(cast: Cast, span: Span) -> None:
    message = worn(cast, "Mia", 18)
    message.pk, message.key, message.edition = None, "again", 2
    message.save()

    assert counted(span) == {REMINDED: (1, 1)}


def test_a_visit_that_was_missed_is_no_fill(cast: Cast, span: Span) -> None:
    worn(cast, "Mia", 18)
    Visit.objects.filter(client=cast.clients["Mia"]).order_by("-starts_at").first().delete()  # type: ignore[union-attr]  # it is there
    cast.visit(cast.clients["Mia"], cast.at(9, -42), status=Visit.Status.MISSED)

    assert counted(span) == {REMINDED: (1, 0)}
