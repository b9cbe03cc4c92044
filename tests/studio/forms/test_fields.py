from __future__ import annotations

from datetime import UTC, date, datetime, time
from zoneinfo import ZoneInfo

import pytest
from django.core.exceptions import ValidationError

from studio.forms.fields import ThreeWay, moment, regions, zones

NEW_YORK = ZoneInfo("America/New_York")


@pytest.mark.parametrize(
    ("day", "hour", "meant"),
    [
        (date(2026, 3, 8), time(1, 59), datetime(2026, 3, 8, 6, 59, tzinfo=UTC)),
        (date(2026, 3, 8), time(3, 0), datetime(2026, 3, 8, 7, 0, tzinfo=UTC)),
        (date(2007, 11, 4), time(1, 30), datetime(2007, 11, 4, 5, 30, tzinfo=UTC)),  # twice: the first
        (date(2026, 11, 1), time(1, 30), datetime(2026, 11, 1, 5, 30, tzinfo=UTC)),
    ],
)
def test_an_hour_is_a_moment_on_the_wall_clock(day: date, hour: time, meant: datetime) -> None:
    """RFC 5545, 3.3.5: 4 November 2007, 01:30 in New York, is 01:30 EDT, four hours behind UTC (from memory)."""
    assert moment(day, hour, NEW_YORK, field="hour") == meant


@pytest.mark.parametrize("hour", [time(2, 0), time(2, 30), time(2, 59)])
def test_an_hour_that_does_not_exist_is_refused_on_its_field(hour: time) -> None:
    """The clocks of New York went from 02:00 to 03:00 on 8 March 2026."""
    with pytest.raises(ValidationError) as refused:
        moment(date(2026, 3, 8), hour, NEW_YORK, field="hour")

    assert list(refused.value.message_dict) == ["hour"]


@pytest.mark.parametrize(("given", "known"), [("yes", True), ("no", False), ("", None)])
def test_three_answers_stay_three(given: str, known: bool | None) -> None:
    field = ThreeWay()

    assert field.clean(given) is known
    assert field.prepare_value(known) == given


def test_a_zone_on_record_is_never_lost_from_the_list() -> None:
    names = [name for name, _shown in zones(blank="the studio’s", also="US/Eastern")]

    assert names[:2] == ["", "US/Eastern"]
    assert "America/New_York" in names
    assert len(names) == len(set(names))


def test_countries_are_listed_by_name() -> None:
    assert dict(regions())["GB"] == "United Kingdom"
