from collections import Counter
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.book import usual
from studio.book.rows import Context
from studio.book.usual import Person

STUDIO = Context(
    ZoneInfo("America/New_York"),
    "US",
    service_names={"fill - mega volume": "fill", "lift & tint (brow)": "lift", "relleno": "fill", "lunch": ""},
)


@pytest.mark.parametrize(
    ("title", "service", "name"),
    [
        ("Fill - Mia Lopez", "Fill", "Mia Lopez"),
        ("Mia Lopez – full set", "full set", "Mia Lopez"),
        ("Touch-up — Mia-Ana Lopez", "Touch-up", "Mia-Ana Lopez"),
        ("Full set: Mia", "Full set", "Mia"),
        ("Mia | Removal", "Removal", "Mia"),
        ("Mia / patch test", "patch test", "Mia"),
        ("Lift with Mia Lopez", "Lift", "Mia Lopez"),
        ("Lift w/ Mia", "Lift", "Mia"),
        ("Consultation for Mia", "Consultation", "Mia"),
        ("Relleno para Mia", "Relleno", "Mia"),
        ("Fill, Mia Lopez", "Fill", "Mia Lopez"),
        ("Mia Lopez (Full-Set)", "Full-Set", "Mia Lopez"),
        ("Lopez, Mia - fill", "fill", "Mia Lopez"),
        ("Fill - Mia Lopez (likes it natural)", "Fill", "Mia Lopez"),
        # The longest name that a table has, though it holds marks itself.
        ("Fill - Mega Volume - Mia", "Fill - Mega Volume", "Mia"),
        ("Lift & Tint (Brow) - Mia", "Lift & Tint (Brow)", "Mia"),
        ("  Fill   -   Mia  ", "Fill", "Mia"),
    ],
)
def test_a_title_is_split_into_service_and_client(title: str, service: str, name: str) -> None:
    assert usual.read(title, "", [], STUDIO).fields == {"service": service, "name": name}


def test_for_is_the_client_and_with_the_artist_where_both_are_named() -> None:
    fields = usual.read("Fill for Mia with Ada", "", [], STUDIO).fields

    assert fields == {"service": "Fill", "name": "Mia", "artist": "Ada"}


@pytest.mark.parametrize("title", ["Fill - Mia - Zoe", "Fill - Mia | 2", "Fill"])
def test_a_client_who_cannot_be_told_is_not_guessed(title: str) -> None:
    assert usual.read(title, "", [], STUDIO).fields == {"service": "Fill"}


def test_no_part_of_a_title_without_a_known_service_is_taken_for_a_client() -> None:
    reading = usual.read("Wispy - Mia", "", [], STUDIO)

    assert reading.fields == {}
    assert reading.parts == ["Wispy", "Mia"]


def test_the_name_that_comes_back_is_the_service_that_no_table_has() -> None:
    seen = Counter(["wispy", "mia", "zoe", "wispy", "ada", "wispy"])

    assert usual.unknown_name(["Mia", "Wispy"], "", seen) == "Wispy"
    assert usual.unknown_name(["Mia", "Angel"], "mia", seen) == "Angel"


def test_one_attendee_is_the_client() -> None:
    fields = usual.read("Fill", "", [Person("Mia Lopez", "mia@example.com")], STUDIO).fields

    assert fields == {"service": "Fill", "name": "Mia Lopez", "email": "mia@example.com"}


def test_of_several_attendees_only_the_one_of_the_title_is_the_client() -> None:
    both = [Person("Ada", "ada@example.com"), Person("Mia Lopez", "mia@example.com")]

    assert usual.read("Fill - mia lopez", "", both, STUDIO).fields["email"] == "mia@example.com"
    assert "email" not in usual.read("Fill - Zoe", "", both, STUDIO).fields


def test_lines_of_the_description_fill_the_column_that_they_name() -> None:
    description = """Phone: (212) 555-0123
    E-mail : mia@example.com
    Client: C17
    Client name: Mia Lopez
    Artist: Ada
    Adhesive lot: LOT-7
    Wears lenses: yes
    Share left: 60%
    Remember: she is early
    https://example.com/booking?id=1
    Phone: 000"""

    assert usual.read("fill", description, [], STUDIO).fields == {
        "service": "fill",
        "mobile": "(212) 555-0123",
        "email": "mia@example.com",
        "client": "C17",
        "name": "Mia Lopez",
        "artist": "Ada",
        "adhesive_lot": "LOT-7",
        "wears_lenses": "yes",
        "share_left": "60%",
    }


def test_client_in_the_description_is_a_name_unless_it_holds_a_digit() -> None:
    assert usual.read("fill", "Client: Mia Lopez", [], STUDIO).fields == {"service": "fill", "name": "Mia Lopez"}
    assert usual.read("fill - Mia", "Client: 0017", [], STUDIO).fields["client"] == "0017"


def test_a_description_in_markup_is_read_line_by_line() -> None:
    fields = usual.read(
        "fill - Mia", "<p>Phone: <b>212 555 0123</b></p>Artist: Ada &amp; Zoe<br/>Bye", [], STUDIO
    ).fields

    assert (fields["mobile"], fields["artist"]) == ("212 555 0123", "Ada & Zoe")


@given(title=st.text(max_size=80), description=st.text(max_size=80))
def test_no_words_make_the_reading_fail(title: str, description: str) -> None:
    for words in (title, f"Fill - {title}", f"{title} (lift)"):
        fields = usual.read(words, f"{description}\nPhone: {title}", [Person(title.strip(), "")], STUDIO).fields
        assert all(text.strip() for text in fields.values())
