"""A promised hour that is past: each way in which the wordings say a moment, and the ways in which people write one."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from aftercare.core import pasthours, say

NOW = datetime(2027, 3, 9, 16, 0, tzinfo=UTC)  # a Tuesday


@pytest.mark.parametrize(("language", "region"), [("en", "US"), ("en", "GB"), ("es", "ES"), ("es", "US")])
@pytest.mark.parametrize("hours", [-30 * 24, -25, -1, 1, 25, 30 * 24])
def test_what_the_wordings_say_is_read_in_each_language_and_on_each_clock(
    language: str, region: str, hours: int
) -> None:
    moment = say.moment(NOW + timedelta(hours=hours), language, region)
    said = f"One of us calls you by {moment}." if language == "en" else f"Una de nosotras te llama antes del {moment}."

    assert bool(list(pasthours.find(said, NOW))) is (hours < 0), said


@pytest.mark.parametrize(
    "text",
    [
        "We call you at 10:30.",
        "Sorry! I will ring by 3 pm",
        "Te llamamos a las 15:30.",
        "We call you by 10.30am today",
        "Please come in at 2pm",
    ],
)
def test_an_hour_without_a_day_is_todays(text: str) -> None:
    assert list(pasthours.find(text, NOW))


@pytest.mark.parametrize(
    "text",
    [
        "We call you by 6 pm.",
        "We call you tomorrow at 10:30 am.",
        "We call you on Friday at 9:00",
        "Te llamamos mañana a las 9:00",
        "Your fill at 10:30 went well.",  # nothing is promised
        "You wrote at 9:00. We call you by 17:00.",
        "Call 1-800-222-1222 or 911.",
        "We call you by 25:00",
        "We call you by 2 April, 9:00",
    ],
)
def test_what_lies_ahead_and_what_promises_nothing_is_left_alone(text: str) -> None:
    assert list(pasthours.find(text, NOW)) == []


def test_a_day_after_new_year_lies_ahead() -> None:
    assert list(pasthours.find("We call you by 2 January, 9:00", datetime(2026, 12, 30, 12, tzinfo=UTC))) == []
    assert list(pasthours.find("We call you by 30 December, 9:00", datetime(2027, 1, 2, 12, tzinfo=UTC))) == [
        "30 December, 9:00"
    ]
