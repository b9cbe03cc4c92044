from __future__ import annotations

import math

from aftercare.core.pace import Pace


def leave(pace: Pace, begin: float, seconds: float, *, at_once: int = 1000) -> int:
    """Let leave what may, looking each hundredth of a second; return how many."""
    left = 0
    for step in range(int(seconds * 100)):
        now = begin + step / 100
        room = min(at_once, pace.room(now))
        pace.spend(room, now)
        left += room
    return left


def test_no_more_leave_than_the_carrier_allows() -> None:
    assert 99 <= leave(Pace(10), 0, 10) <= 102
    assert 990 <= leave(Pace(100), 5_000, 10) <= 1012


def test_without_a_limit_everything_leaves() -> None:
    pace = Pace()

    assert pace.room(0) > 1_000_000
    assert pace.wait() == 0


def test_after_a_pause_there_is_no_flood() -> None:
    pace = Pace(100)
    leave(pace, 0, 1)

    assert pace.room(3_600) <= 11


def test_a_complaint_halves_the_pace_once_for_a_whole_window() -> None:
    pace = Pace(100)
    leave(pace, 0, 2)
    for _ in range(50):
        pace.slow(2.0)

    assert pace.rate == 50
    pace.slow(3.5)
    assert pace.rate == 25


def test_it_recovers_to_the_limit_and_no_further() -> None:
    pace = Pace(100)
    pace.slow(0.0)
    leave(pace, 0, 60)

    assert pace.rate == 100


def test_a_pace_without_limit_is_half_of_what_was_complained_of_and_free_again_in_time() -> None:
    pace = Pace()
    leave(pace, 0, 3, at_once=2)  # 200 a second

    pace.slow(3.0)

    assert 90 <= pace.rate <= 110
    leave(pace, 3, 60, at_once=2)
    assert pace.rate == math.inf


def test_it_never_stands_still() -> None:
    pace = Pace(2)
    for moment in range(20):
        pace.slow(moment * 2.0)

    assert pace.rate == 1
    assert 0 < pace.wait() <= 1
