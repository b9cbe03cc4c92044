import re
from datetime import UTC, datetime, timedelta
from pathlib import Path
from time import perf_counter
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.book import ics
from studio.book.rows import BadRow, Book, Context

FILES = Path(__file__).parent / "files"
NOW = datetime(2026, 3, 5, 12, tzinfo=UTC)
STUDIO = Context(ZoneInfo("America/New_York"), "US", service_names={"mega volume": "full set", "supplies": ""})


def calendar(*events: str, head: str = "", line_end: str = "\r\n") -> bytes:
    """A calendar of these events, each given as its lines without BEGIN and END."""
    inside = "".join(f"BEGIN:VEVENT\n{event.strip()}\nEND:VEVENT\n" for event in events)
    return f"BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:-//x//x//EN\n{head}{inside}END:VCALENDAR\n".replace(
        "\n", line_end
    ).encode()


def event(
    *lines: str, uid: str = "one", start: str = "DTSTART:20260309T183000Z", title: str = "Fill - Mia Lopez"
) -> str:
    return "\n".join([f"UID:{uid}", start, f"SUMMARY:{title}", *lines])


def read(*events: str, context: Context = STUDIO, now: datetime = NOW, head: str = "") -> Book:
    return ics.read(calendar(*events, head=head), context, now=now)


def starts(book: Book) -> list[str]:
    return [str(row.visit_says["starts_at"]) for row in book.rows]


def test_a_whole_calendar_is_read() -> None:
    book = ics.read((FILES / "week.ics").read_bytes(), STUDIO, now=NOW)

    assert book.bad == ()
    assert [(row.number, row.visit) for row in book.rows] == [
        (1, "one@studio.example"),
        (2, "two@studio.example/20260302T150000Z"),
        (3, "two@studio.example/20260413T140000Z"),
        (2, "two@studio.example/20260504T140000Z"),
        (2, "two@studio.example/20260525T140000Z"),
        (4, "three@studio.example"),
    ]
    first, fill, moved, *_, cancelled = book.rows
    assert first.client == "mia@example.com"
    assert first.visit_says == {
        "service": "full set",
        "service_name": "Full set",
        "artist": "Ada",
        "adhesive_lot": "LOT-7, opened Monday",
        "starts_at": "2026-03-09T18:30:00Z",
        "minutes": 180,
        "status": "booked",
        "sequence": 3,
    }
    assert first.client_says == {
        "first_name": "Mia",
        "last_name": "Lopez",
        "email": "Mia@example.com",
        "mobile": "+12125550123",
        "wears_lenses": True,
    }
    assert (fill.client, fill.client_says, fill.visit_says["minutes"]) == ("zoe", {"first_name": "Zoe"}, 75)
    assert (moved.visit_says["starts_at"], moved.visit_says["minutes"]) == ("2026-04-14T15:30:00Z", 90)
    assert moved.visit_says["sequence"] == 1
    assert (cancelled.visit_says["status"], cancelled.visit_says["service"]) == ("cancelled", "lift")
    assert any('"Closed"' in note for note in book.notes)
    assert 'Events left out because "Supplies" is no visit: 1.' in book.notes


def test_the_same_calendar_read_twice_says_the_same() -> None:
    data = (FILES / "week.ics").read_bytes()

    assert ics.read(data, STUDIO, now=NOW) == ics.read(data, STUDIO, now=NOW)


@pytest.mark.parametrize(
    ("start", "moment"),
    [
        ("DTSTART:20260309T183000Z", "2026-03-09T18:30:00Z"),
        ("DTSTART;TZID=America/New_York:20260309T143000", "2026-03-09T18:30:00Z"),
        ('DTSTART;TZID="Europe/London":20260309T183000', "2026-03-09T18:30:00Z"),
        # RFC 5545, 3.2.19: a name that is unique in the world; common software puts IANA's at its end.
        ("DTSTART;TZID=/example.org/tz/America/New_York:20260309T143000", "2026-03-09T18:30:00Z"),
        # CLDR's table of another system's names for zones.
        ("DTSTART;TZID=Eastern Standard Time:20260309T143000", "2026-03-09T18:30:00Z"),
        # A time without a zone is the studio's wall clock, by RFC 5545, 3.3.5 (and FACTS 4.5's check values).
        ("DTSTART:20260309T143000", "2026-03-09T18:30:00Z"),
        ("DTSTART:20260308T023000", "2026-03-08T07:30:00Z"),
        ("DTSTART:20261101T013000", "2026-11-01T05:30:00Z"),
        ("DTSTART;TZID=America/New_York:20260308T023000", "2026-03-08T07:30:00Z"),
        ("DTSTART;TZID=America/New_York:20261101T013000", "2026-11-01T05:30:00Z"),
    ],
)
def test_a_start_is_read_in_its_zone(start: str, moment: str) -> None:
    book = read(event(start=start))

    assert book.bad == ()
    assert starts(book) == [moment]
    assert book.rows[0].visit == "one"


def vtimezone(tzid: str, *, rule: str = "FREQ=YEARLY;BYMONTH={};BYDAY={}") -> str:
    """A VTIMEZONE with the United States' changes since 2007 at the offsets of New York."""
    return f"""BEGIN:VTIMEZONE
TZID:{tzid}
X-LIC-LOCATION:Somewhere
BEGIN:STANDARD
DTSTART:20071104T020000
RRULE:{rule.format(11, "1SU")}
TZOFFSETFROM:-0400
TZOFFSETTO:-0500
END:STANDARD
BEGIN:DAYLIGHT
DTSTART:20070311T020000
RRULE:{rule.format(3, "2SU")}
TZOFFSETFROM:-0500
TZOFFSETTO:-0400
END:DAYLIGHT
END:VTIMEZONE
"""


@pytest.mark.parametrize(
    ("local", "moment"),
    [
        ("20260309T143000", "2026-03-09T18:30:00Z"),
        ("20260201T143000", "2026-02-01T19:30:00Z"),
        # The same gap and fold as above, though the zone is the file's own.
        ("20260308T023000", "2026-03-08T07:30:00Z"),
        ("20261101T013000", "2026-11-01T05:30:00Z"),
    ],
)
def test_a_zone_that_the_file_describes_is_used(local: str, moment: str) -> None:
    book = read(event(start=f"DTSTART;TZID=Our Time:{local}"), head=vtimezone("Our Time"))

    assert book.bad == ()
    assert starts(book) == [moment]


def test_a_zone_described_in_one_file_is_unknown_in_the_next() -> None:
    start = "DTSTART;TZID=Our Time:20260309T143000"

    assert len(read(event(start=start), head=vtimezone("Our Time")).rows) == 1
    assert [bad.field for bad in read(event(start=start)).bad] == ["DTSTART"]


def test_an_iana_name_means_that_zone_whatever_the_file_says_of_it() -> None:
    book = read(event(start="DTSTART;TZID=Europe/London:20260709T120000"), head=vtimezone("Europe/London"))

    assert starts(book) == ["2026-07-09T11:00:00Z"]


@pytest.mark.parametrize("rule", ["FREQ=SECONDLY", "FREQ=YEARLY;INTERVAL=0;BYMONTH={};BYDAY={}"])
def test_a_zone_that_would_be_walked_through_for_ever_is_not_used(rule: str) -> None:
    start = "DTSTART;TZID=Our Time:20260309T143000"

    book = read(event(start=start), head=vtimezone("Our Time", rule=rule))

    assert [(bad.row, bad.field, bad.value) for bad in book.bad] == [(1, "DTSTART", "Our Time")]


@pytest.mark.parametrize(
    ("length", "minutes"),
    [
        ("DTEND:20260309T193000Z", 60),
        ("DTEND;TZID=America/New_York:20260309T160000", 90),
        ("DURATION:PT1H15M", 75),
        ("DURATION:PT45M30S", 45),
        ("DURATION:P0DT3H", 180),
        ("DTEND:20260309T183000Z", None),
        ("CLASS:PRIVATE", None),
    ],
)
def test_the_length_is_what_lies_between_start_and_end(length: str, minutes: int | None) -> None:
    assert read(event(length)).rows[0].visit_says.get("minutes") == minutes


def test_the_length_is_elapsed_time_though_the_clock_changes_meanwhile() -> None:
    book = read(
        event("DTEND;TZID=America/New_York:20260308T033000", start="DTSTART;TZID=America/New_York:20260308T013000")
    )

    assert book.rows[0].visit_says["minutes"] == 60


@pytest.mark.parametrize("line_end", ["\r\n", "\n"])
def test_folded_lines_are_joined_even_inside_a_character(line_end: str) -> None:
    # RFC 5545, 3.1: a fold is a line break and one space or tab, counted in octets.
    data = calendar(event("DESCRIPTION:Artist: Zoë Ruiz"), line_end=line_end)
    for fold in (b"\r\n ", b"\n\t"):
        for place in range(data.index(b"SUMMARY") + 1, data.index(b"END:VEVENT") - 2):
            book = ics.read(data[:place] + fold + data[place:], STUDIO, now=NOW)
            assert [row.visit_says["artist"] for row in book.rows] == ["Zoë Ruiz"], (fold, place)


def test_text_is_unescaped_once_from_left_to_right() -> None:
    # RFC 5545, 3.3.11: backslash, semicolon, comma, and newline as \n or \N.
    book = read(event(r"DESCRIPTION:Artist: A\\nn\, Ada\; B\NAdhesive: x\\\\y\nPhone: 212 555 0123"))

    assert book.rows[0].visit_says["artist"] == r"A\nn, Ada; B"
    assert book.rows[0].visit_says["adhesive"] == r"x\\y"
    assert book.rows[0].client_says["mobile"] == "+12125550123"


@pytest.mark.parametrize(
    ("start", "rule", "days"),
    [
        # RFC 5545, 3.8.5.3, its examples (from memory) moved from 1997 to 2025, which has the same days of the week.
        (
            "20250902T090000",
            "FREQ=DAILY;COUNT=10",
            ["9/2", "9/3", "9/4", "9/5", "9/6", "9/7", "9/8", "9/9", "9/10", "9/11"],
        ),
        ("20250902T090000", "FREQ=DAILY;INTERVAL=10;COUNT=5", ["9/2", "9/12", "9/22", "10/2", "10/12"]),
        (
            "20250902T090000",
            "FREQ=WEEKLY;UNTIL=20251007T000000Z;WKST=SU;BYDAY=TU,TH",
            ["9/2", "9/4", "9/9", "9/11", "9/16", "9/18", "9/23", "9/25", "9/30", "10/2"],
        ),
        (
            "20250902T090000",
            "FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH",
            ["9/2", "9/4", "9/16", "9/18", "9/30", "10/2", "10/14", "10/16"],
        ),
        (
            "20250905T090000",
            "FREQ=MONTHLY;COUNT=10;BYDAY=1FR",
            ["9/5", "10/3", "11/7", "12/5", "1/2", "2/6", "3/6", "4/3", "5/1", "6/5"],
        ),
        (
            "20250902T090000",
            "FREQ=MONTHLY;COUNT=10;BYMONTHDAY=2,15",
            ["9/2", "9/15", "10/2", "10/15", "11/2", "11/15", "12/2", "12/15", "1/2", "1/15"],
        ),
        ("20250805T090000", "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO", ["8/5", "8/10", "8/19", "8/24"]),
        ("20250805T090000", "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU", ["8/5", "8/17", "8/19", "8/31"]),
        ("20260115T090000", "FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5", ["1/15", "1/30", "2/15", "3/15", "3/30"]),
        # A last day without an hour is within.
        ("20250902T090000", "FREQ=DAILY;UNTIL=20250904", ["9/2", "9/3", "9/4"]),
        ("20250902T090000", "FREQ=DAILY;UNTIL=20250904T090000", ["9/2", "9/3", "9/4"]),
    ],
)
def test_a_series_comes_up_on_the_standards_own_days_at_one_hour_of_the_clock(
    start: str, rule: str, days: list[str]
) -> None:
    book = read(event(f"RRULE:{rule}", start=f"DTSTART;TZID=America/New_York:{start}"))

    moments = [datetime.fromisoformat(moment).astimezone(STUDIO.zone) for moment in starts(book)]
    assert [f"{moment.month}/{moment.day}" for moment in moments] == days
    assert {(moment.hour, moment.minute) for moment in moments} == {(9, 0)}


def test_an_occurrence_is_known_by_its_recurrence_id_in_utc() -> None:
    book = read(event("RRULE:FREQ=WEEKLY;COUNT=2", start="DTSTART;TZID=America/New_York:20260302T143000"))

    assert [row.visit for row in book.rows] == ["one/20260302T193000Z", "one/20260309T183000Z"]
    assert {row.number for row in book.rows} == {1}


def test_a_series_is_written_out_from_400_days_back_to_400_days_ahead() -> None:
    book = read(event("RRULE:FREQ=DAILY", start="DTSTART:20240101T120000Z"))

    assert starts(book)[0] == "2025-01-29T12:00:00Z"  # 400 days before noon of the fifth of March 2026, this one in
    assert starts(book)[-1] == "2027-04-08T12:00:00Z"  # and 400 after, that one out
    assert len(book.rows) == 800


def test_a_single_event_is_read_however_far_away_it_is() -> None:
    assert starts(read(event(start="DTSTART:20200309T183000Z"))) == ["2020-03-09T18:30:00Z"]


def test_days_added_and_left_out_are_heeded() -> None:
    book = read(
        event(
            "DURATION:PT1H",
            "RRULE:FREQ=DAILY;COUNT=4",
            "RDATE:20260320T120000Z,20260321T120000Z",
            "RDATE;VALUE=PERIOD:20260322T120000Z/PT30M,20260323T120000Z/20260323T140000Z",
            "EXDATE;TZID=America/New_York:20260310T143000",
            "EXDATE;VALUE=DATE:20260312",
            "EXDATE:20260321T120000Z",
        )
    )

    assert [(row.visit, row.visit_says["minutes"]) for row in book.rows] == [
        ("one/20260309T183000Z", 60),
        ("one/20260311T183000Z", 60),
        ("one/20260320T120000Z", 60),
        ("one/20260322T120000Z", 30),
        ("one/20260323T120000Z", 120),
    ]


def test_an_event_that_was_read_without_fault_is_stated_in_full_with_its_version() -> None:
    book = read(
        event("RRULE:FREQ=DAILY;COUNT=3", "SEQUENCE:2"),
        event("RECURRENCE-ID:20260310T183000Z", "SEQUENCE:7", start="DTSTART:20260310T193000Z"),
        event(uid="two"),
        event("RECURRENCE-ID:20260310T183000Z", uid="three"),  # one day of it, sent by itself
        event(uid="four", title="Supplies"),
        event(uid="five", start="DTSTART;VALUE=DATE:20260309"),
        event(uid="six", title="Wispy - Mia"),
        event("RRULE:FREQ=DAILY;COUNT=3", uid="seven"),
        event("RECURRENCE-ID:20260310T183000Z", "DURATION:tomorrow", uid="seven"),
        event("STATUS:CANCELLED", uid="eight"),
    )

    assert book.stated == {"one": 2, "two": 0, "eight": 0}
    assert book.reach is not None
    assert book.reach[0] < NOW - timedelta(days=398) < NOW + timedelta(days=398) < book.reach[1]


def test_a_changed_occurrence_takes_the_place_of_its_own() -> None:
    book = read(
        event("RRULE:FREQ=DAILY;COUNT=3"),
        event(
            "RECURRENCE-ID;TZID=America/New_York:20260310T143000",
            start="DTSTART:20260315T100000Z",
            title="Removal - Mia Lopez",
        ),
        event("RECURRENCE-ID:20260311T183000Z", "STATUS:CANCELLED", start="DTSTART:20260311T183000Z"),
    )

    assert [(row.number, row.visit, row.visit_says["service"], row.visit_says.get("status")) for row in book.rows] == [
        (1, "one/20260309T183000Z", "fill", None),
        (3, "one/20260311T183000Z", "fill", "cancelled"),
        (2, "one/20260310T183000Z", "removal", None),
    ]


def test_a_change_to_this_and_all_later_occurrences_moves_them_and_keeps_their_names() -> None:
    book = read(
        event("RRULE:FREQ=DAILY;COUNT=4"),
        event(
            "RECURRENCE-ID;RANGE=THISANDFUTURE:20260311T183000Z",
            start="DTSTART:20260311T193000Z",
            title="Lift - Mia Lopez",
        ),
    )

    assert [(row.visit, row.visit_says["starts_at"], row.visit_says["service"]) for row in book.rows] == [
        ("one/20260309T183000Z", "2026-03-09T18:30:00Z", "fill"),
        ("one/20260310T183000Z", "2026-03-10T18:30:00Z", "fill"),
        ("one/20260311T183000Z", "2026-03-11T19:30:00Z", "lift"),
        ("one/20260312T183000Z", "2026-03-12T19:30:00Z", "lift"),
    ]


def test_a_changed_occurrence_without_its_series_is_read() -> None:
    book = read(event("RECURRENCE-ID:20260310T183000Z", start="DTSTART:20260310T200000Z"))

    assert [row.visit for row in book.rows] == ["one/20260310T183000Z"]


def test_an_occurrence_that_is_bad_or_left_out_does_not_fall_back_to_its_series() -> None:
    book = read(
        event("RRULE:FREQ=DAILY;COUNT=3"),
        event("RECURRENCE-ID:20260310T183000Z", start="DTSTART:20260310T190000Z", title="Wispy - Mia"),
        event("RECURRENCE-ID:20260311T183000Z", start="DTSTART:20260311T183000Z", title="Supplies"),
    )

    assert [row.visit for row in book.rows] == ["one/20260309T183000Z"]
    assert [(bad.row, bad.field) for bad in book.bad] == [(2, "service")]
    assert book.seen == {"one/20260309T183000Z", "one/20260310T183000Z"}


def test_the_visits_of_a_series_that_is_bad_are_seen_and_its_fault_said_once() -> None:
    book = read(event("RRULE:FREQ=DAILY;COUNT=3", title="Wispy - Mia"))

    assert [(bad.row, bad.field, bad.value) for bad in book.bad] == [(1, "service", "Wispy")]
    assert book.seen == {"one/20260309T183000Z", "one/20260310T183000Z", "one/20260311T183000Z"}


@pytest.mark.parametrize(
    ("older", "newer"),
    [
        (["SEQUENCE:1", "DTSTAMP:20260305T000000Z"], ["SEQUENCE:2", "DTSTAMP:20260301T000000Z"]),
        (["DTSTAMP:20260301T000000Z"], ["SEQUENCE:1"]),
        (["SEQUENCE:1", "DTSTAMP:20260301T000000Z"], ["SEQUENCE:1", "DTSTAMP:20260302T000000Z"]),
        (["LAST-MODIFIED:20260301T000000Z"], ["LAST-MODIFIED:20260302T000000Z"]),
        (["SEQUENCE:9"], ["SEQUENCE:10"]),
    ],
)
def test_of_an_event_sent_again_the_newer_wins_in_any_order(older: list[str], newer: list[str]) -> None:
    # RFC 5546, 2.1.4 and 2.1.5: SEQUENCE first, then DTSTAMP.
    old, new = event(*older), event(*newer, start="DTSTART:20260401T120000Z")

    for events in ((old, new), (new, old)):
        book = read(*events)
        assert (starts(book), book.bad) == (["2026-04-01T12:00:00Z"], ())


def test_a_fault_in_the_older_of_two_is_no_matter() -> None:
    assert read(event("SEQUENCE:1", title="?"), event("SEQUENCE:2")).bad == ()


def test_what_the_calendar_says_of_its_status_is_said() -> None:
    said = [
        read(event(*lines)).rows[0].visit_says.get("status")
        for lines in ([], ["STATUS:CONFIRMED"], ["STATUS:TENTATIVE"])
    ]

    assert said == [None, "booked", "booked"]


def test_a_calendar_of_cancellations_needs_no_more_than_whom_they_are_about() -> None:
    # RFC 5546, 3.2.5: a CANCEL may leave out what it does not change, and RECURRENCE-ID names one occurrence.
    book = read(
        "UID:one\nSEQUENCE:2\nDTSTART:20260309T183000Z",
        "UID:two\nRECURRENCE-ID:20260310T183000Z\nSEQUENCE:1",
        event(uid="three"),
        head="METHOD:CANCEL\n",
    )

    assert book.bad == ()
    assert [(row.visit, row.client, row.visit_says["status"]) for row in book.rows] == [
        ("one", "", "cancelled"),
        ("two/20260310T183000Z", "", "cancelled"),
        ("three", "mia lopez", "cancelled"),
    ]
    assert [row.visit_says["sequence"] for row in book.rows] == [2, 1, 0]


def test_a_title_that_says_canceled_on_an_event_that_is_not_stops_the_row() -> None:
    book = read(event(title="Canceled: Fill - Mia"))

    assert [(bad.row, bad.field) for bad in book.bad] == [(1, "first_name")]


def test_a_share_left_needs_no_other_word_that_the_visit_was_done() -> None:
    book = read(event("STATUS:CONFIRMED", "DESCRIPTION:Share left: 60%"))

    assert book.rows[0].visit_says["share_left"] == 60
    assert "status" not in book.rows[0].visit_says


@pytest.mark.parametrize(
    ("lines", "client"),
    [
        (["DESCRIPTION:Client: C17\\nE-mail: mia@example.com"], "C17"),
        (["DESCRIPTION:E-mail: Mia@Example.com\\nPhone: 212 555 0123"], "mia@example.com"),
        (["ATTENDEE:mailto:Mia@Example.com"], "mia@example.com"),
        (["DESCRIPTION:Phone: 212 555 0123"], "+12125550123"),
        ([], "mia lopez"),
    ],
)
def test_a_client_is_known_by_reference_address_number_or_name(lines: list[str], client: str) -> None:
    assert read(event(*lines, title="Fill - Mia  LOPEZ")).rows[0].client == client


def test_the_organizer_rooms_and_addresses_as_names_are_not_the_client() -> None:
    book = read(
        event(
            "ORGANIZER;CN=Ada:MAILTO:ada@studio.example",
            "ATTENDEE;CN=Ada:mailto:Ada@studio.example",
            "ATTENDEE;CUTYPE=RESOURCE;CN=Bed 1:mailto:bed@studio.example",
            "ATTENDEE;CN=mia@example.com;RSVP=TRUE:mailto:mia@example.com",
        )
    )

    assert book.rows[0].client_says == {"first_name": "Mia", "last_name": "Lopez", "email": "mia@example.com"}


def test_the_owners_pattern_is_used_and_nothing_beside_it() -> None:
    owners = "SUMMARY: {name} > {service}\nDESCRIPTION: call {mobile}\nATTENDEE: {ignore} <{email}>"
    lines = ["DESCRIPTION:Call 212 555 0123\\nArtist: Ada", "ATTENDEE;CN=M:mailto:mia@example.com"]

    book = read(
        event(*lines, title="Mia Lopez > Mega Volume"),
        context=Context(STUDIO.zone, "US", "", STUDIO.service_names, owners),
    )

    assert book.bad == ()
    assert book.rows[0].visit_says["service"] == "full set"
    assert "artist" not in book.rows[0].visit_says
    assert book.rows[0].client_says == {
        "first_name": "Mia",
        "last_name": "Lopez",
        "mobile": "+12125550123",
        "email": "mia@example.com",
    }


def test_a_title_that_does_not_fit_the_pattern_is_bad_unless_it_is_named_as_no_visit() -> None:
    with_pattern = Context(STUDIO.zone, "US", "", STUDIO.service_names, "SUMMARY: {service} - {name}")

    book = read(event(title="Supplies"), event(uid="two", title="Dentist"), context=with_pattern)

    assert [(bad.row, bad.field, bad.value) for bad in book.bad] == [(2, "SUMMARY", "Dentist")]
    _explains_itself(book.bad[0])
    assert book.unknown_services == ("Dentist",)


def test_a_pattern_that_cannot_be_used_is_one_bad_row() -> None:
    book = read(event(), context=Context(STUDIO.zone, "US", "", {}, "SUMMARY: {service} {name}"))

    assert [(bad.row, bad.field, bad.value) for bad in book.bad] == [(1, "pattern", "SUMMARY: {service} {name}")]
    assert "line 1, column 20" in book.bad[0].problem.lower()
    _explains_itself(book.bad[0])


def test_services_in_no_table_are_listed_by_the_name_that_comes_back() -> None:
    titles = ["Mia - Wispy", "Zoe - Wispy", "Wispy - Mia", "Dentist"]

    book = read(*[event(uid=str(number), title=title) for number, title in enumerate(titles)])

    assert book.unknown_services == ("Wispy", "Dentist")
    assert {(bad.field, bad.value) for bad in book.bad} == {("service", "Wispy"), ("service", "Dentist")}


def test_rows_of_one_client_that_disagree_are_bad_and_capitals_are_no_disagreement() -> None:
    book = read(
        event("DESCRIPTION:Phone: 212 555 0123"),
        event("DESCRIPTION:E-mail: zoe@example.com\\nArtist: Ada", uid="two", title="Fill - Zoe"),
        event("DESCRIPTION:E-mail: ZOE@example.com", uid="three", title="Fill - ZOE"),
        event("DESCRIPTION:E-mail: zoe@example.com", uid="four", title="Fill - Ana"),
    )

    assert [(bad.row, bad.field) for bad in book.bad] == [(2, "first_name"), (3, "first_name"), (4, "first_name")]
    assert [row.visit for row in book.rows] == ["one"]


def test_lines_that_are_no_property_are_left_out_with_a_remark() -> None:
    book = read(event("DESCRIPTION:Artist: Ada", "and a line that was not folded"))

    assert len(book.rows) == 1
    assert book.notes == ('Event 1: the line "and a line that was not folded" is no property and was left out.',)


def test_an_empty_calendar_is_no_fault_and_said() -> None:
    book = read()

    assert (book.rows, book.bad, book.notes) == ((), (), ("The calendar holds no events.",))


def test_progress_is_told_to_the_end() -> None:
    told: list[tuple[int, int]] = []
    events = [event(uid=str(number)) for number in range(150)]

    ics.read(calendar(*events), STUDIO, now=NOW, progress=lambda done, total: told.append((done, total)))

    assert told == [(0, 150), (100, 150), (150, 150)]


WHOLE = calendar(event(), event(uid="two")).decode()

BAD_CALENDARS: list[tuple[str, bytes, int, str, str]] = [
    ("nothing", b"", 1, "file", ""),
    ("a spreadsheet", b"visit,client,first_name\nV1,C1,Mia\n", 1, "file", "visit,client,first_name"),
    ("a web page", b"<html>Sign in</html>", 1, "file", "<html>Sign in</html>"),
    ("a zipped file", b"PK\x03\x04" + b"\x00" * 20, 1, "file", "zip"),
    ("UTF-16", WHOLE.encode("utf-16"), 1, "file", "UTF-16"),
    ("a NUL", WHOLE.replace("Mia", "M\0a").encode(), 1, "file", "NUL"),
    (
        "wrong letters",
        calendar(event(), event(uid="two", title="Fill - José")).replace("é".encode(), b"\x8e"),
        2,
        "file",
        "byte 0x8E",
    ),
    ("cut off in an event", WHOLE[: WHOLE.rindex("SUMMARY")].encode(), 2, "file", "VEVENT"),
    ("cut off behind one", WHOLE[: WHOLE.rindex("END:VCALENDAR")].encode(), 2, "file", "VCALENDAR"),
    ("ends what had not begun", WHOLE.replace("BEGIN:VEVENT", "X-A:1", 1).encode(), 1, "file", "END:VEVENT"),
    ("an answer to an invitation", calendar(event(), head="METHOD:REPLY\n"), 1, "METHOD", "REPLY"),
    ("another calendar's years", calendar(event(), head="CALSCALE:HEBREW\n"), 1, "CALSCALE", "HEBREW"),
]


@pytest.mark.parametrize(
    ("data", "row", "field", "value"), [b[1:] for b in BAD_CALENDARS], ids=[b[0] for b in BAD_CALENDARS]
)
def test_a_calendar_that_cannot_be_read_is_one_bad_row_with_its_cure(
    data: bytes, row: int, field: str, value: str
) -> None:
    book = ics.read(data, STUDIO, now=NOW)

    assert [(bad.row, bad.field, bad.value) for bad in book.bad] == [(row, field, value)]
    _explains_itself(book.bad[0])
    assert book.rows == ()


BAD_EVENTS: list[tuple[str, str, str, str]] = [
    ("DTSTART:20260309T183000Z\nSUMMARY:Fill - Mia", "UID", "", "export it"),
    (f"UID:{'x' * 190}\nDTSTART:20260309T183000Z\nSUMMARY:Fill - Mia", "UID", "x" * 59 + "…", "give it"),
    ("UID:one\nSUMMARY:Fill - Mia", "DTSTART", "", "give it a start"),
    (event(start="DTSTART:tomorrow"), "DTSTART", "tomorrow", "write it like"),
    (event(start="DTSTART:20260231T100000"), "DTSTART", "20260231T100000", "write it like"),
    (event(start="DTSTART:19260301T100000"), "DTSTART", "19260301T100000", "check the year"),
    (event(start="DTSTART;TZID=Mars/Base:20260309T143000"), "DTSTART", "Mars/Base", "write a name"),
    (event(start="DTSTART;TZID=localtime:20260309T143000"), "DTSTART", "localtime", "write a name"),
    (event("DTEND:20260309T173000Z"), "DTEND", "20260309T173000Z", "correct"),
    (event("DTEND:20260310T173000Z"), "DTEND", "20260310T173000Z", "correct it, or name"),
    (event("DTEND;TZID=Mars/Base:20260309T193000"), "DTEND", "Mars/Base", "write a name"),
    (event("DTEND;VALUE=DATE:20260310"), "DTEND", "20260310", "write it like"),
    (event("DURATION:75 minutes"), "DURATION", "75 minutes", "write it like"),
    (event("DURATION:-PT1H"), "DURATION", "-PT1H", "correct"),
    (event("DURATION:P2D"), "DURATION", "P2D", "correct"),
    (event("DURATION:P99999999999D"), "DURATION", "P99999999999D", "write it like"),
    (event("RRULE:FREQ=SECONDLY"), "RRULE", "FREQ=SECONDLY", "write each visit"),
    (event("RRULE:FREQ=HOURLY;COUNT=3"), "RRULE", "FREQ=HOURLY;COUNT=3", "write each visit"),
    (event("RRULE:FREQ=DAILY;BYHOUR=9,10"), "RRULE", "FREQ=DAILY;BYHOUR=9,10", "write each visit"),
    (event("RRULE:FREQ=DAILY;INTERVAL=0"), "RRULE", "FREQ=DAILY;INTERVAL=0", "correct it"),
    (event("RRULE:FREQ=DAILY;COUNT=0"), "RRULE", "FREQ=DAILY;COUNT=0", "correct it"),
    (event("RRULE:FREQ=FORTNIGHTLY"), "RRULE", "FREQ=FORTNIGHTLY", "correct it"),
    (event("RRULE:FREQ=DAILY;UNTIL=soon"), "RRULE", "FREQ=DAILY;UNTIL=soon", "correct it"),
    (event("RRULE:FREQ=MONTHLY;BYDAY=1XX"), "RRULE", "FREQ=MONTHLY;BYDAY=1XX", "correct it"),
    (event("RRULE:FREQ=DAILY", "EXRULE:FREQ=WEEKLY"), "EXRULE", "FREQ=WEEKLY", "write the days"),
    (event("RRULE:FREQ=DAILY", "EXDATE:then"), "EXDATE", "then", "write it like"),
    (event("RDATE:20260310T183000Z,then"), "RDATE", "then", "write it like"),
    (event("RECURRENCE-ID:then"), "RECURRENCE-ID", "then", "write it like"),
    (event("SEQUENCE:-1"), "SEQUENCE", "-1", "write 0"),
    (event(title="Wispy - Mia"), "service", "Wispy", "name it"),
    (event(title=""), "service", "", "write it like"),
    (event(title="Fill"), "first_name", "Fill", "write it like"),
    (event(title="Fill - Mia - Zoe"), "first_name", "Fill - Mia - Zoe", "set the pattern"),
    (event(title=f"Fill - {'x' * 90}"), "first_name", "x" * 59 + "…", "at most 80"),
    (event("DESCRIPTION:Phone: 6.14E+10"), "mobile", "6.14E+10", "format"),
    (event("DESCRIPTION:Phone: 12"), "mobile", "12", "country code"),
    (event("DESCRIPTION:E-mail: mia@"), "email", "mia@", "write one"),
    (event("ATTENDEE:mailto:mia lopez@example"), "email", "mia lopez@example", "write one"),
    (event("DESCRIPTION:Language: Klingonese"), "language", "Klingonese", "write it like"),
    (event("DESCRIPTION:Sensitive: rather"), "sensitive", "rather", "write yes or no"),
    (event("DESCRIPTION:Share left: 0.6"), "share_left", "0.6", "write it like 60"),
    (event("DESCRIPTION:Share left: 60", title="Lift - Mia"), "share_left", "60", "full set or a fill"),
    (event("DESCRIPTION:Status: paid"), "status", "paid", "booked, done, cancelled or missed"),
]


@pytest.mark.parametrize(("lines", "field", "value", "cure"), BAD_EVENTS)
def test_an_event_that_cannot_be_used_names_its_number_field_value_and_cure(
    lines: str, field: str, value: str, cure: str
) -> None:
    book = read(event(uid="good", title="Fill - Zoe"), lines)

    assert [(bad.row, bad.field, bad.value) for bad in book.bad] == [(2, field, value)]
    assert cure in book.bad[0].problem
    _explains_itself(book.bad[0])
    assert [row.visit for row in book.rows] == ["good"]


def test_every_bad_property_of_an_event_is_reported_at_once() -> None:
    book = read(event("DURATION:long", "RRULE:FREQ=NEVER", "DESCRIPTION:Phone: 12", title="Wispy - Mia"))

    assert {bad.field for bad in book.bad} == {"DURATION", "RRULE", "mobile", "service"}


@pytest.mark.parametrize("rule", ["FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30", "FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30;COUNT=5"])
def test_a_rule_that_never_comes_true_is_not_searched_for_ever(rule: str) -> None:
    start = perf_counter()

    read(event(f"RRULE:{rule}"))

    assert perf_counter() - start < 1


def test_a_calendar_with_more_visits_than_a_studio_can_have_is_refused() -> None:
    events = [event("RRULE:FREQ=DAILY", uid=str(number), start="DTSTART:20250601T120000Z") for number in range(80)]

    book = read(*events)

    assert [(bad.field, bad.value) for bad in book.bad] == [("file", "50000")]
    _explains_itself(book.bad[0])
    assert book.rows == ()


@given(st.binary(max_size=300))
def test_no_bytes_make_the_reader_fail(data: bytes) -> None:
    _holds_together(ics.read(data, STUDIO, now=NOW))


LINES = [line for lines, *_ in BAD_EVENTS for line in lines.split("\n")] + [
    "RRULE:FREQ=WEEKLY;BYDAY=MO,WE;COUNT=6",
    "RRULE:FREQ=MONTHLY;BYSETPOS=-1;BYDAY=FR",
    "RRULE:FREQ=YEARLY;BYWEEKNO=53;BYYEARDAY=366",
    "RRULE:FREQ=WEEKLY;UNTIL=20250101T000000Z",
    "RDATE;TZID=America/New_York:20260401T100000",
    "EXDATE;VALUE=DATE:20260310",
    "RECURRENCE-ID:20260310T183000Z",
    "RECURRENCE-ID;VALUE=DATE:20260310",
    "RECURRENCE-ID;RANGE=THISANDFUTURE:20260310T183000Z",
    "DTSTART;VALUE=DATE:20260310",
    "DTSTART;TZID=Our Time:20260308T023000",
    "STATUS:CANCELLED",
    "BEGIN:VALARM",
    "END:VALARM",
    "METHOD:CANCEL",
]


@given(
    events=st.lists(st.lists(st.sampled_from(LINES) | st.text(max_size=30), max_size=8), max_size=4),
    head=st.sampled_from(["", "METHOD:CANCEL\n", vtimezone("Our Time")]),
)
def test_no_lines_make_the_reader_fail(events: list[list[str]], head: str) -> None:
    text = calendar(*["\n".join(["UID:one", *lines]) for lines in events], head=head)

    _holds_together(ics.read(text, STUDIO, now=NOW))


def _holds_together(book: Book) -> None:
    assert len({row.visit for row in book.rows}) == len(book.rows)
    for row in book.rows:
        assert row.visit
        assert "starts_at" in row.visit_says
        if row.visit_says.get("status") != "cancelled":
            assert row.client
            assert row.client_says["first_name"]
            assert "service" in row.visit_says
    for problem in book.bad:
        _explains_itself(problem)


def _explains_itself(bad: BadRow) -> None:
    assert bad.row >= 1
    assert bad.field
    assert bad.value in bad.problem
    assert bad.problem.endswith(".")
    assert "\n" not in bad.problem
    cures = r"\b(write|set|save|format|export|choose|unpack|check|correct|name|give|change|remove|shorten|fetch)\b"
    assert re.search(cures, bad.problem)
