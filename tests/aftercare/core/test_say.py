"""Dates, hours and numbers as people say them, against CLDR through babel and against what the countries publish."""

from __future__ import annotations

import re
from datetime import date, datetime, time, timedelta
from decimal import Decimal

import pytest
from babel.dates import format_date, format_time

from aftercare.core import say
from aftercare.core.segments import cheaper, measure

YEAR = [date(2027, 1, 1) + timedelta(days=day) for day in range(365)]
HOURS = [time(0, 5), time(9, 0), time(11, 59), time(12, 0), time(14, 30), time(23, 45)]


def test_a_day_is_said_without_comma_or_year() -> None:
    assert say.day(date(2027, 3, 9), "en") == "Tuesday 9 March"
    assert say.day(date(2027, 3, 9), "es") == "martes 9 de marzo"


@pytest.mark.parametrize("when", YEAR[::7])
def test_days_are_cldr_s_own_but_for_comma_and_year(when: date) -> None:
    # CLDR, full dates of en_IE (EEEE d MMMM y) and es (EEEE, d 'de' MMMM 'de' y), as babel carries it.
    assert f"{say.day(when, 'en')} {when.year}" == format_date(when, "full", locale="en_IE")
    assert f"{say.day(when, 'es')} de {when.year}" == format_date(when, "full", locale="es").replace(",", "")


@pytest.mark.parametrize("region", ["US", "CA", "AU", "NZ", "GB", "IE", "IN", "ZA", "DE"])
@pytest.mark.parametrize("when", HOURS)
def test_english_hours_are_cldr_s_but_for_the_space_that_makes_an_sms_dear(when: time, region: str) -> None:
    theirs = format_time(when, "short", locale=f"en_{region}").replace("\u202f", " ").replace("\u00a0", " ").lower()

    assert say.hour(when, "en", region) == theirs.replace(".", "")


@pytest.mark.parametrize("region", ["US", "MX", "ES", "AR", "CO", "CL"])
@pytest.mark.parametrize("when", HOURS)
def test_spanish_hours_are_cldr_s_but_for_the_points_and_spaces(when: time, region: str) -> None:
    theirs = format_time(when, "short", locale=f"es_{region}").replace("\u202f", " ")

    assert say.hour(when, "es", region) == re.sub(r"([ap])\W+m\W*$", r"\1m", theirs)


@pytest.mark.parametrize(
    ("language", "region", "said"),
    [("en", "US", "2:30 pm"), ("en", "GB", "14:30"), ("es", "ES", "14:30"), ("es", "US", "2:30 pm")],
)
def test_an_hour_is_said_on_the_clock_of_the_country(language: str, region: str, said: str) -> None:
    assert say.hour(time(14, 30), language, region) == said


@pytest.mark.parametrize("region", ["", "ZZ", "JP", "not a country", "us"])
def test_any_region_gets_an_hour(region: str) -> None:
    assert say.hour(time(14, 30), "en", region) == "2:30 pm"
    assert ":30" in say.hour(time(14, 30), "es", region)


def test_midnight_and_noon_are_twelve() -> None:
    assert say.hour(time(0, 0), "en", "US") == "12:00 am"
    assert say.hour(time(12, 0), "en", "US") == "12:00 pm"


def test_seconds_are_left_out() -> None:
    assert say.moment(datetime.combine(date(2027, 3, 9), time(14, 30, 59)), "en", "US") == "Tuesday 9 March, 2:30 pm"


@pytest.mark.parametrize(
    ("first", "last", "english", "spanish"),
    [
        ((2027, 6, 9), (2027, 6, 15), "between Wed 9 and Tue 15 June", "entre el mié 9 y el mar 15 de junio"),
        (
            (2027, 6, 28),
            (2027, 7, 5),
            "between Mon 28 June and Mon 5 July",
            "entre el lun 28 de junio y el lun 5 de julio",
        ),
        (
            (2027, 12, 30),
            (2028, 1, 2),
            "between Thu 30 December and Sun 2 January",
            "entre el jue 30 de diciembre y el dom 2 de enero",
        ),
        ((2027, 6, 9), (2027, 6, 9), "on Wed 9 June", "el mié 9 de junio"),
        (
            (2027, 6, 9),
            (2028, 6, 15),
            "between Wed 9 June and Thu 15 June",
            "entre el mié 9 de junio y el jue 15 de junio",
        ),
    ],
)
def test_a_range_of_days_names_a_month_once_where_it_can(
    first: tuple[int, int, int], last: tuple[int, int, int], english: str, spanish: str
) -> None:
    assert say.between(date(*first), date(*last), "en") == english
    assert say.between(date(*first), date(*last), "es") == spanish


def test_a_range_that_ends_before_it_begins_is_refused() -> None:
    with pytest.raises(ValueError, match="exchange the two"):
        say.between(date(2027, 6, 15), date(2027, 6, 9), "en")


@pytest.mark.parametrize("language", say.LANGUAGES)
def test_nothing_said_costs_an_sms_its_cheap_alphabet(language: str) -> None:
    # 3GPP TS 23.038 6.2.1: neither U+202F nor U+00A0 is in the default alphabet.
    for when in YEAR:
        said = f"{say.moment(datetime.combine(when, time(14, 30)), language, 'US')} {say.between(when, when, language)}"
        assert said.split() == said.split(" ")
        assert measure(cheaper(said)).encoding == "gsm7"


@pytest.mark.parametrize(
    ("region", "number"),
    # From memory; the European Union's 112 is in Directive (EU) 2018/1972, article 109.
    [("US", "911"), ("CA", "911"), ("MX", "911"), ("GB", "999"), ("IE", "112"), ("ES", "112"), ("DE", "112")]
    + [("AU", "000"), ("NZ", "111"), ("gb", "999")],
)
def test_each_country_has_its_emergency_number(region: str, number: str) -> None:
    assert say.emergency_number(region) == number
    assert say.emergency_call("en", region) == f"{number} or your local emergency number"
    assert say.emergency_call("es", region) == f"al {number} o a emergencias de tu zona"


@pytest.mark.parametrize("region", ["", "BR", "CH", "ZZ"])
def test_an_unknown_country_gets_no_number_rather_than_a_wrong_one(region: str) -> None:
    assert say.emergency_number(region) == ""
    assert say.emergency_call("en", region) == "your local emergency number"
    assert say.emergency_call("es", region) == "a emergencias de tu zona"


def test_the_union_s_number_serves_its_twenty_seven_members() -> None:
    assert sum(number == "112" for number in say.EMERGENCY_NUMBERS.values()) == 27


def test_britain_s_line_for_advice_is_never_named() -> None:
    # NHS: 111 is for advice, 999 for emergencies.
    assert "111" not in say.emergency_call("en", "GB") + say.emergency_care("en", "GB")


def test_emergency_care_goes_by_the_name_that_the_country_knows() -> None:
    assert "(ER)" in say.emergency_care("en", "US")
    assert "A&E or eye casualty" in say.emergency_care("en", "GB")
    assert say.emergency_care("en", "NZ") == "emergency eye care"
    assert say.emergency_care("es", "ES") == "a urgencias"


def test_the_poison_line_is_named_only_where_it_answers() -> None:
    # MedlinePlus, "Cyanoacrylates": 1-800-222-1222 from anywhere in the United States.
    assert say.poison_line("US") == "1-800-222-1222"
    assert say.poison_line("GB") == ""


@pytest.mark.parametrize(
    ("tag", "language"),
    [("en", "en"), ("es", "es"), ("es-MX", "es"), ("ES_es", "es"), ("en-GB", "en"), ("fr", "en"), ("", "en")],
)
def test_a_language_tag_is_read_by_its_first_part(tag: str, language: str) -> None:
    assert say.language_of(tag) == language


def test_a_language_without_words_falls_back_to_the_one_named() -> None:
    assert say.language_of("fr", other="es") == "es"


@pytest.mark.parametrize(
    ("language", "expected"),
    [  # CLDR 44's patterns of a day with its month, as Babel carries them; both words written out
        ("fr", "mardi 9 mars"),
        ("pt", "terça-feira, 9 de março"),
        ("de", "Dienstag, 9. März"),
        ("it", "martedì 9 marzo"),
        ("vi", "Thứ Ba, 9 tháng 3"),
    ],
)
def test_a_day_is_said_in_further_languages_as_their_speakers_do(language: str, expected: str) -> None:
    assert say.day(date(2027, 3, 9), language) == expected


def test_what_is_said_in_further_languages_holds_no_space_or_dash_that_makes_a_text_dear() -> None:
    said = say.between(date(2027, 3, 9), date(2027, 4, 15), "fr")

    assert {"\u202f", "\u2009", "\u00a0", "\u2013"}.isdisjoint(said)
    assert "9 mars" in said
    assert "15 avr" in said


def test_in_a_language_without_its_words_the_emergency_number_stands_alone() -> None:
    assert say.emergency_call("fr", "FR") == "112"
    assert say.emergency_call("fr", "ZZ") == "your local emergency number"
    assert say.emergency_care("fr", "US") == say.emergency_care("en", "US")


@pytest.mark.parametrize(("tag", "language"), [("fr-CA", "fr"), ("PT_br", "pt"), ("xx", ""), ("", ""), ("../e", "")])
def test_a_language_is_one_that_dates_can_be_said_in(tag: str, language: str) -> None:
    assert say.subtag(tag) == language


@pytest.mark.parametrize(
    ("amount", "currency", "language", "said"),
    [
        ("0.0079", "USD", "en", "$0.0079"),
        ("0.9954", "USD", "en", "$1.00"),
        ("1234.5", "USD", "en", "$1,234.50"),
        ("0", "GBP", "en", "£0.00"),
        ("12.4", "EUR", "es", "€12,40"),
        ("3", "XQZ", "en", "XQZ3.00"),
    ],
)
def test_a_price_keeps_the_decimals_that_a_text_s_needs_and_a_sum_has_two(
    amount: str, currency: str, language: str, said: str
) -> None:
    assert say.money(Decimal(amount), currency, language) == said
