from zoneinfo import ZoneInfo

import pytest

from studio.book import cells
from studio.book.phones import phone
from studio.book.rows import SERVICES, Context, Value
from studio.book.text import Refused, clean, decode, fold, shown

STUDIO = Context(
    ZoneInfo("America/New_York"),
    "US",
    service_names={"mega volume": "full set", "brow lamination": "other", "lunch": ""},
)


@pytest.mark.parametrize(
    ("column", "text", "value"),
    [
        ("first_name", "Mia", "Mia"),
        ("first_name", "Mia\u00a0 Ana", "Mia Ana"),
        ("last_name", "'t Hart", "'t Hart"),
        ("email", "Mia.Lopez@Example.COM", "Mia.Lopez@example.com"),
        ("time_zone", "america/new york", "America/New_York"),
        ("time_zone", "Europe/Madrid", "Europe/Madrid"),
        ("language", "EN", "en"),
        ("language", "es_mx", "es-MX"),
        ("language", "zh-hant-tw", "zh-Hant-TW"),
        ("language", "es-419", "es-419"),
        ("sms_ok", "Yes", True),
        ("sms_ok", "y", True),
        ("sms_ok", "TRUE", True),
        ("sms_ok", "1", True),
        ("sms_ok", "Sí", True),
        ("sms_ok", "si\u0301", True),
        ("sms_ok", "No", False),
        ("sms_ok", "n", False),
        ("sms_ok", "false", False),
        ("sms_ok", "0", False),
        ("service", "Full-Set", "full set"),
        ("service", "patchtest", "patch test"),
        ("service", "TOUCH UP", "touch-up"),
        ("service", "Mega  Volume", "full set"),
        ("service", "lunch", ""),
        ("minutes", "75", 75),
        ("minutes", "75.0", 75),
        ("minutes", "75 min", 75),
        ("minutes", "720 minutes", 720),
        ("status", "Booked", "booked"),
        ("status", "canceled", "cancelled"),
        ("status", "No-show", "missed"),
        ("status", "no show", "missed"),
        ("share_left", "60", 60),
        ("share_left", "60%", 60),
        ("share_left", "62,5 %", 62.5),
        ("share_left", "0", 0),
        ("share_left", "100%", 100),
        ("visit", "12345", "12345"),
        ("visit", "1E5", "1E5"),
        ("client", "C 17/b", "C 17/b"),
    ],
)
def test_a_cell_says_its_value(column: str, text: str, value: Value) -> None:
    said = cells.parse(column, clean(text), STUDIO)

    assert said == value
    assert type(said) is type(value)


@pytest.mark.parametrize(
    ("text", "region", "number"),
    [
        # E.164 by the phonenumbers library, as FACTS 4.2 has computed them.
        ("020 7946 0958", "GB", "+442079460958"),
        ("0412 345 678", "AU", "+61412345678"),
        ("650 253 0000", "US", "+16502530000"),
        # Other ways of writing.
        ("(212) 555-0123", "US", "+12125550123"),
        ("+1 212 555 0123", "GB", "+12125550123"),
        ("0044 20 7946 0958", "ES", "+442079460958"),
        ("0171/1234567", "DE", "+491711234567"),
        ("mob. 0412 345 678", "AU", "+61412345678"),
        ("tel: 0412-345-678", "AU", "+61412345678"),
    ],
)
def test_a_number_in_any_usual_way_of_writing_becomes_e164(text: str, region: str, number: str) -> None:
    assert phone(text, region) == (number, True)


def test_a_number_of_a_range_not_in_use_is_kept_and_marked() -> None:
    # FACTS 4.2: Britain's range for drama is possible and not valid.
    assert phone("07700 900123", "GB") == ("+447700900123", False)


@pytest.mark.parametrize("text", ["12345678901234567", "12", "none", "call her mother", "555-0123 ext 5"])
def test_what_is_no_number_is_refused(text: str) -> None:
    with pytest.raises(Refused, match="write"):
        phone(text, "US")


@pytest.mark.parametrize(("text", "region"), [("0155 5555 5555 5555", "DE"), ("+49 555555555555555", "US")])
def test_a_number_with_more_than_fifteen_digits_is_refused_though_its_countrys_plan_allows_it(
    text: str, region: str
) -> None:
    with pytest.raises(Refused, match="too long"):
        phone(text, region)


def test_every_kind_of_service_is_read_under_its_own_name() -> None:
    assert [cells.service(kind, STUDIO) for kind in SERVICES] == list(SERVICES)


def test_the_kinds_come_before_the_owners_own_table() -> None:
    contrary = Context(STUDIO.zone, "US", service_names={"fill": ""})

    assert cells.service("Fill", contrary) == "fill"


@pytest.mark.parametrize(
    ("column", "cell", "bare"),
    [
        ("mobile", "'+12125550123", "+12125550123"),
        ("visit", "'0012", "0012"),
        ("mobile", '="0412345678"', "0412345678"),
        ("last_name", "'t Hart", "'t Hart"),
        ("first_name", "Mia", "Mia"),
    ],
)
def test_what_a_spreadsheet_adds_to_keep_a_cell_text_is_taken_off(column: str, cell: str, bare: str) -> None:
    assert cells.without_marks(column, cell) == bare


def test_space_around_a_cell_is_trimmed_whatever_its_width() -> None:
    assert clean(" \u00a0\u200b Mia\u00a0Lopez \u202f\ufeff") == "Mia\u00a0Lopez"


def test_accents_are_composed_so_that_two_ways_of_typing_are_one_name() -> None:
    assert clean("Jose\u0301") == "José"
    assert fold(" JOSE\u0301  Ruiz ") == fold("josé ruiz")


def test_a_value_is_shown_on_one_short_line() -> None:
    assert shown("a\nb\x00\u202e") == "a\\nb\\x00\\u202e"
    assert len(shown("x" * 500)) == 60


def test_windows_1252_is_read_where_it_makes_sense_and_said_so() -> None:
    text, note = decode("José Nuñez – “fill”".encode("cp1252"))

    assert text == "José Nuñez – “fill”"
    assert "Windows-1252" in note


def test_utf8_needs_no_remark_with_or_without_its_mark() -> None:
    assert decode("José".encode()) == ("José", "")
    assert decode("José".encode("utf-8-sig")) == ("José", "")
