"""Dates, hours and numbers on the sheet."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
from django.template import Context, Template
from django.utils import translation

from aftercare.templatetags.sheet import KINDS, SERVICES, kind, language, on_axis, span
from studio.catalogue import ROOT
from studio.models import Client, Studio

NOW = datetime(2027, 3, 9, 12, 31, tzinfo=UTC)


def say(tag: str, value: Any, *, zone: str = "America/New_York", region: str = "US") -> str:
    studio = Studio(time_zone=zone, region=region)
    template = Template("{% load sheet %}{% " + tag + " value %}")
    return template.render(Context({"studio": studio, "now": NOW, "value": value}))


@pytest.mark.parametrize(
    ("zone", "region", "said"),
    [
        ("America/New_York", "US", "3:05 pm"),
        ("Europe/London", "GB", "20:05"),
        ("Europe/Madrid", "ES", "21:05"),
        ("Australia/Sydney", "AU", "7:05 am"),
    ],
)
def test_an_hour_is_said_on_the_studio_s_wall_clock_as_people_there_say_it(zone: str, region: str, said: str) -> None:
    assert say("hour", datetime(2027, 3, 9, 20, 5, 59, tzinfo=UTC), zone=zone, region=region) == said


def test_a_day_near_midnight_is_the_studio_s() -> None:
    late = datetime(2027, 3, 10, 3, 0, tzinfo=UTC)

    assert say("day", late) == "Tuesday 9 March"
    assert say("day", late, zone="Europe/London") == "Wednesday 10 March"


def test_a_year_is_said_where_it_is_not_this_one() -> None:
    assert say("short", date(2026, 12, 31)) == "31 Dec 2026"
    assert say("short", date(2027, 12, 31)) == "31 Dec"
    assert say("moment", datetime(2026, 3, 9, 14, 0, tzinfo=UTC)) == "Mon 9 Mar 2026, 10:00 am"


def test_what_is_not_there_is_not_said() -> None:
    assert [say(tag, None) for tag in ("hour", "day", "short", "moment")] == ["", "", "", ""]


@pytest.mark.parametrize(
    ("length", "said"),
    [
        (45, "45 min"),
        (60, "1 h"),
        (380, "6 h 20"),
        (65, "1 h 05"),
        (timedelta(seconds=59), "0 min"),
        (timedelta(hours=47, minutes=59), "47 h"),
        (timedelta(hours=48), "2 days"),
        (None, ""),
    ],
)
def test_how_long_is_said_in_minutes_hours_or_days(length: timedelta | int | None, said: str) -> None:
    assert span(length) == said.replace(" ", "\N{NO-BREAK SPACE}")


# The shapes are those of the general phonenumbers library, NATIONAL and INTERNATIONAL (ITU-T E.123).


@pytest.mark.parametrize(
    ("number", "region", "said"),
    [
        ("+12125550177", "US", "(212) 555-0177"),
        ("+12125550177", "GB", "+1 212-555-0177"),
        ("+442079460958", "GB", "020 7946 0958"),
        ("no number", "GB", "no number"),
    ],
)
def test_a_number_is_shown_as_people_of_the_country_write_it(number: str, region: str, said: str) -> None:
    assert say("number", number, region=region) == said


# Names from the Unicode CLDR, English.


@pytest.mark.parametrize(
    ("code", "said"),
    [("es", "Spanish"), ("vi", "Vietnamese"), ("pt-BR", "Portuguese (Brazil)"), ("no such", "no such")],
)
def test_a_language_is_named_and_not_coded(code: str, said: str) -> None:
    assert language(code) == said


@pytest.mark.parametrize(("name", "said"), [("full_set", "full set"), ("caution", "on hold: the caution alone")])
def test_a_wording_s_kind_says_when_it_goes(name: str, said: str) -> None:
    assert kind(name) == said


def test_no_wording_s_kind_is_shown_by_its_file_s_name() -> None:
    files = (ROOT / "templates/messages").glob("*/en/*.txt")
    kinds = {part for file in files for part in file.name.split(".")[1:-1] if not part.isdigit()}

    assert {name for name in kinds if name not in KINDS and name.replace("_", " ") not in SERVICES} == set()


def test_a_day_under_a_drawing_has_no_year() -> None:
    assert on_axis(date(2029, 3, 9)) == "9 Mar"


def test_days_are_said_as_each_language_says_them() -> None:
    on = date(2027, 3, 9)

    with translation.override("es"):
        assert (say("day", on), say("short", on)) == ("martes 9 de marzo", "9 mar")
        assert say("day", date(2028, 3, 9)) == "jueves 9 de marzo de 2028"
    assert say("day", date(2028, 3, 9)) == "Thursday 9 March 2028"


@pytest.mark.parametrize(
    ("zone", "said"),
    [
        ("America/Los_Angeles", "Mon 10:05 pm for her"),
        ("Europe/London", "5:05 am for her"),
        ("America/Toronto", ""),  # another name for the same hours
        ("", ""),  # not stated: none is guessed
    ],
)
def test_the_hour_on_her_own_clock_is_said_where_it_differs(zone: str, said: str) -> None:
    at = datetime(2027, 3, 16, 5, 5, tzinfo=UTC)
    template = Template("{% load sheet %}{% hers client at %}")
    shown = {"studio": Studio(time_zone="America/New_York", region="US"), "now": NOW, "at": at}

    assert template.render(Context({**shown, "client": Client(time_zone=zone)})) == said
