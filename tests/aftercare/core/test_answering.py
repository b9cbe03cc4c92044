"""Which answer goes to what, the worst kind first. What is to be seen today follows NHS "Red eye" (2022-03-21)."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from aftercare.core.answering import MOST_A_DAY, answer_to, may_go
from aftercare.core.reading import Reading, Sign, Topic, Urgency

NOW = datetime(2027, 3, 9, 7, 0, tzinfo=UTC)


def says(urgency: Urgency, *signs: Sign, unread: bool = False) -> Reading:
    return Reading(urgency, (Topic.IRRITATION,), signs, (), None, "en", unread, ())


@pytest.mark.parametrize(
    ("signs", "kind"),
    [
        ((Sign.SWELLING, Sign.BREATHING, Sign.SEALED_EYE), "breathing"),
        ((Sign.HIVES,), "breathing"),
        ((Sign.FAINT,), "breathing"),
        ((Sign.GLUE_IN_EYE, Sign.SEALED_EYE), "chemical"),
        ((Sign.SEALED_EYE, Sign.VISION), "sealed"),
        ((Sign.VISION,), "sight"),
        ((), "sight"),
    ],
)
def test_an_emergency_is_answered_by_its_worst_kind(signs: tuple[Sign, ...], kind: str) -> None:
    assert answer_to(says(Urgency.EMERGENCY, *signs), wears_lenses=False, after_check=False) == kind


@pytest.mark.parametrize(
    ("signs", "lenses", "kind"),
    [
        ((Sign.REDNESS, Sign.PAIN), False, "seen_today"),
        ((Sign.REDNESS,), True, "seen_today"),
        ((Sign.LIGHT,), False, "seen_today"),
        ((Sign.DISCHARGE, Sign.PAIN), False, "seen_today"),
        ((Sign.REDNESS,), False, "same_day"),
        ((Sign.DISCHARGE,), False, "same_day"),
    ],
)
def test_who_should_be_seen_today_is_told_so(signs: tuple[Sign, ...], lenses: bool, kind: str) -> None:
    assert answer_to(says(Urgency.SAME_DAY, *signs), wears_lenses=lenses, after_check=True) == kind


def test_what_is_over_or_harmless_is_not_reassured() -> None:
    for urgency in (Urgency.WATCH, Urgency.NONE):
        assert answer_to(says(urgency), wears_lenses=True, after_check=True) == ""


def test_what_is_not_understood_counts_as_a_sign_after_a_check_alone() -> None:
    unclear = says(Urgency.NONE, unread=True)
    assert answer_to(unclear, wears_lenses=False, after_check=True) == "same_day"
    assert answer_to(unclear, wears_lenses=False, after_check=False) == ""


def test_a_worse_kind_goes_whatever_went_before() -> None:
    gone = [("same_day", NOW - timedelta(minutes=1)), ("sight", NOW - timedelta(minutes=1))]
    assert may_go("breathing", gone, NOW)
    assert not may_go("sight", gone, NOW)
    assert not may_go("same_day", gone, NOW)


def test_the_same_goes_again_after_its_time() -> None:
    assert may_go("same_day", [("same_day", NOW - timedelta(hours=12))], NOW)
    assert may_go("sealed", [("sealed", NOW - timedelta(minutes=10))], NOW)


def test_two_services_that_answer_each_other_come_to_an_end() -> None:
    gone = [("sight", NOW - timedelta(minutes=11 * number)) for number in range(1, MOST_A_DAY + 1)]
    assert not may_go("sight", gone, NOW)
