"""What the fields of a wording say for the facts of one message."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, time

import pytest

from aftercare.core.fields import FIELDS, STAFF, Facts, kind_of, values

NINTH = datetime.combine(date(2027, 3, 9), time(14, 30))


def test_every_field_has_a_value_a_sentence_and_an_example() -> None:
    filled = values(Facts(studio="Wrenfield", occasion="prepare"))

    assert set(filled) | {"caution", "how_to_stop"} == set(FIELDS)
    assert all(field.meaning.endswith(".") and field.example for field in FIELDS.values())


def test_a_visit_is_told_on_the_wall_clock_that_it_is_given() -> None:
    filled = values(Facts(studio="W", occasion="prepare", region="US", starts_at=NINTH, kind="patch test"))

    assert (filled["day"], filled["hour"], filled["service"]) == ("Tuesday 9 March", "2:30 pm", "patch test")


def test_a_service_without_a_name_of_the_studio_s_own_is_named_in_her_language() -> None:
    assert values(Facts(studio="W", occasion="care", kind="full set", language="es"))["service"] == "set completo"
    assert values(Facts(studio="W", occasion="care", kind="full set", service="Volume"))["service"] == "Volume"
    assert values(Facts(studio="W", occasion="care", kind="other"))["service"] == "visit"


@pytest.mark.parametrize(
    ("typed", "shown"),
    [
        ("  Mia \n Lou\t", "Mia Lou"),
        ("Mi\x00a", "Mi a"),
        ("Mia\u2028Lou", "Mia Lou"),
        ("Mia\u00a0Lou", "Mia Lou"),
        ("\u202eMia", "Mia"),
        ("M\u200bia", "Mia"),
        ("Mia\ud800", "Mia"),
        ("M" * 500, "M" * 80),
        ("<b>Mia</b> [x](http://y)", "<b>Mia</b> [x](http://y)"),
        ("Zoë {{ studio }}", "Zoë {{ studio }}"),
    ],
)
def test_a_name_arrives_on_one_line_without_invisible_letters(typed: str, shown: str) -> None:
    assert values(Facts(studio="W", occasion="care", first_name=typed))["first_name"] == shown


def test_facts_that_are_not_there_have_no_value() -> None:
    filled = values(Facts(studio="W", occasion="prepare"))

    absent = (
        "artist",
        "day",
        "hour",
        "dry_hours",
        "window",
        "booked_day",
        "call_by",
        "link",
        "studio_phone",
        "minutes",
        "poison_line",
    )
    assert [filled[name] for name in absent] == [None] * len(absent)


def test_a_reminder_names_its_days_or_says_soon_and_the_day_that_is_booked() -> None:
    days = (date(2027, 6, 8), date(2027, 6, 14))
    named = values(Facts(studio="W", occasion="fill_due", window=days, booked_at=NINTH))
    soon = values(Facts(studio="W", occasion="fill_due", language="es"))

    assert (named["window"], named["booked_day"]) == ("between Tue 8 and Mon 14 June", "Tuesday 9 March")
    assert (soon["window"], soon["booked_day"]) == ("en los próximos días", None)


def test_nothing_is_open_only_when_no_flag_and_no_promise_is() -> None:
    assert values(Facts(studio="W", occasion="morning_list"))["nothing_open"] is True
    assert values(Facts(studio="W", occasion="morning_list", open_flags=1))["nothing_open"] is False
    assert values(Facts(studio="W", occasion="morning_list", promises=1))["nothing_open"] is False


def test_no_word_to_staff_can_name_a_client_or_her_visit() -> None:
    for occasion in STAFF:
        offered = {name for name, field in FIELDS.items() if field.serves(occasion)}
        assert offered <= {
            *("studio", "link", "open_flags", "urgent_flags", "promises", "nothing_open"),
            *("as_of", "last_reply", "last_sweep"),
        }


def test_whether_she_is_sensitive_is_no_field() -> None:
    assert not any("sensitive" in name for name in FIELDS)


@pytest.mark.parametrize(
    ("kind", "name"), [("full set", "full_set"), ("touch-up", "touch_up"), ("breathing", "breathing")]
)
def test_a_kind_is_named_as_its_files_are(kind: str, name: str) -> None:
    assert kind_of(kind) == name


@pytest.mark.parametrize(
    ("name", "in_a_text"),
    [
        ("Wren \u2728 Lash Room", "Wren Lash Room"),
        ("Wren Lash\u2122", "Wren Lash"),
        ("Mia \U0001f44b\U0001f3fd", "Mia"),
        ("Mia \u2764\ufe0f\u200d\U0001f525", "Mia"),
        ("\u2728", "\u2728"),
        ("Мария", "Мария"),
        ("Siân & D'Arcy", "Siân & D'Arcy"),
        ("نا\u200cم", "نا\u200cم"),
    ],
)
def test_a_name_stands_without_pictures_in_a_text_and_with_them_in_an_email(name: str, in_a_text: str) -> None:
    facts = Facts(studio=name, first_name=name, artist=name, service=name, occasion="care")

    text, mail = values(facts), values(replace(facts, channel="email"))

    for field in ("studio", "first_name", "artist", "service"):
        assert (text[field], mail[field]) == (in_a_text, name)
