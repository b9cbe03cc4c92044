from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo, available_timezones

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.book.moments import Unclear, starts_at, to_utc, written
from studio.book.rows import Context

NEW_YORK = Context(ZoneInfo("America/New_York"), "US")
DAY_FIRST = Context(ZoneInfo("America/New_York"), "US", date_order="dmy")
MONTH_FIRST = Context(ZoneInfo("America/New_York"), "US", date_order="mdy")


@pytest.mark.parametrize(
    ("text", "moment"),
    [
        # RFC 5545, 3.3.5, with the United States' changes of 2026: a gap takes the offset before it, a fold is first.
        ("2026-03-08T02:30", "2026-03-08T07:30:00Z"),
        ("2026-11-01T01:30", "2026-11-01T05:30:00Z"),
        ("2026-03-08T01:59:59", "2026-03-08T06:59:59Z"),
        ("2026-03-08T03:00", "2026-03-08T07:00:00Z"),
        # ISO 8601's ways of writing one moment.
        ("2026-03-09T14:30:00-04:00", "2026-03-09T18:30:00Z"),
        ("2026-03-09T18:30Z", "2026-03-09T18:30:00Z"),
        ("2026-03-09t18:30:00z", "2026-03-09T18:30:00Z"),
        ("20260309T183000Z", "2026-03-09T18:30:00Z"),
        ("20260309T1430", "2026-03-09T18:30:00Z"),
        ("2026-03-10T00:15+0545", "2026-03-09T18:30:00Z"),
        ("2026-03-09T20:30+02", "2026-03-09T18:30:00Z"),
        ("2026-03-09T14", "2026-03-09T18:00:00Z"),
        # What exports write.
        ("2026-03-09 14:30", "2026-03-09T18:30:00Z"),
        ("2026-03-09 14:30:00 -0400", "2026-03-09T18:30:00Z"),
        ("2026-03-09 18:30:00 UTC", "2026-03-09T18:30:00Z"),
        ("2026-03-09, 2:30 PM", "2026-03-09T18:30:00Z"),
        ("2026-03-09 2:30\u202fp.m.", "2026-03-09T18:30:00Z"),
        ("2026/3/9 14:30", "2026-03-09T18:30:00Z"),
        # Seconds are kept, fractions dropped.
        ("2026-03-09T14:30:05.999999", "2026-03-09T18:30:05Z"),
        ("2026-03-09T14:30:05,5", "2026-03-09T18:30:05Z"),
    ],
)
def test_a_start_is_read_in_utc(text: str, moment: str) -> None:
    assert starts_at(text, NEW_YORK) == moment


@pytest.mark.parametrize(
    ("text", "day_first", "month_first"),
    [
        ("12/03/2026 2:30 PM", "2026-03-12T18:30:00Z", "2026-12-03T19:30:00Z"),
        ("12.03.2026 14:30", "2026-03-12T18:30:00Z", "2026-12-03T19:30:00Z"),
        ("5-4-2026, 12:00 AM", "2026-04-05T04:00:00Z", "2026-05-04T04:00:00Z"),
        ("5/4/2026 12:00 pm", "2026-04-05T16:00:00Z", "2026-05-04T16:00:00Z"),
        ("5/4/2026 9 am", "2026-04-05T13:00:00Z", "2026-05-04T13:00:00Z"),
    ],
)
def test_slashed_dates_follow_the_order_that_the_studio_has_set(text: str, day_first: str, month_first: str) -> None:
    assert starts_at(text, DAY_FIRST) == day_first
    assert starts_at(text, MONTH_FIRST) == month_first


def test_a_slashed_date_is_refused_until_the_order_is_set_even_where_one_order_alone_fits() -> None:
    for text in ("12/03/2026 2:30 PM", "25/03/2026 14:30"):
        with pytest.raises(Unclear, match="date order") as refused:
            starts_at(text, NEW_YORK)
        assert text in str(refused.value)


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("25/13/2026 10:00", "no day or hour that exists with the day first"),
        ("12/03/26 10:00", "two digits"),
        ("12/03/2026 0:30 PM", "AM or PM"),
        ("12/03/2026 14:30 PM", "AM or PM"),
        ("12/03/2026 9", "hour without minutes"),
        ("12/03/2026", "no hour"),
        ("2026-03-12", "no hour"),
        ("20260312", "no hour"),
        ("45992.6", "spreadsheet's own number"),
        ("45992", "spreadsheet's own number"),
        ("2026-02-30T10:00", "no day or hour that exists"),
        ("2026-03-12T24:00", "no day or hour that exists"),
        ("2026-03-12T10:60", "no day or hour that exists"),
        ("2026-03-12T10:00+15:00", "further from UTC"),
        ("1999-12-31T10:00", "2000 and 2100"),
        ("2101-01-01T10:00", "2000 and 2100"),
        ("0001-01-01T00:00", "2000 and 2100"),
        ("tomorrow at ten", "not a date with its hour"),
        ("2026-W11-1T10:00", "not a date with its hour"),
    ],
)
def test_what_is_no_moment_is_refused_with_the_value_and_a_cure(text: str, why: str) -> None:
    with pytest.raises(Unclear, match="write|set|format") as refused:
        starts_at(text, DAY_FIRST)
    assert why in str(refused.value)
    assert f'"{text}"' in str(refused.value)


ZONES = sorted(available_timezones() - {"localtime", "Factory"})


@given(
    local=st.datetimes(datetime(2001, 1, 1), datetime(2037, 12, 31)),  # noqa: DTZ001 wall clocks
    zone=st.sampled_from(ZONES).map(ZoneInfo),
)
def test_a_wall_clock_time_that_exists_comes_back_and_is_the_first(local: datetime, zone: ZoneInfo) -> None:
    local = local.replace(microsecond=0)

    moment = to_utc(local, zone)

    back = moment.astimezone(zone).replace(tzinfo=None)
    if back == local:
        assert (moment - timedelta(hours=1)).astimezone(zone).replace(tzinfo=None) != local
    else:  # in a gap: as far behind the offset before it as the clock was put forward
        before = (moment - timedelta(days=1)).astimezone(zone).utcoffset()
        assert before is not None
        assert moment == (local - before).replace(tzinfo=UTC)


def test_a_moment_is_written_in_utc_with_whole_seconds() -> None:
    moment = datetime(2026, 3, 9, 14, 30, 5, 999, tzinfo=ZoneInfo("America/New_York"))

    assert written(moment) == "2026-03-09T18:30:05Z"
