from contextlib import suppress
from time import perf_counter

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.book import pattern
from studio.book.pattern import PatternError

OWNERS = """
SUMMARY: {service} - {first_name} {last_name}
DESCRIPTION: Phone {mobile}
DESCRIPTION: Artist: {artist}
"""


def test_each_field_is_read_from_its_place() -> None:
    found = pattern.compile(OWNERS).read(
        {"SUMMARY": "Full set - Mia de la Cruz", "DESCRIPTION": "Hello\nPhone (212) 555-0123\nArtist: Ada\nBye"}
    )

    assert found == {
        "service": "Full set",
        "first_name": "Mia",
        "last_name": "de la Cruz",
        "mobile": "(212) 555-0123",
        "artist": "Ada",
    }


@pytest.mark.parametrize(
    ("wanted", "title", "service", "name"),
    [
        ("{service} - {name}", "Touch-up - Mia Lopez", "Touch-up", "Mia Lopez"),
        ("{service} - {name}", "Touch-up – Mia-Ana Lopez", "Touch-up", "Mia-Ana Lopez"),
        ("{service} - {name}", "fill -Mia", "fill", "Mia"),
        ("{service} - {name}", "  fill   -   Mia  ", "fill", "Mia"),
        ("{service} with {name}", "FILL WITH Mia", "FILL", "Mia"),
        ("{service}:{name}", "fill : Mia", "fill", "Mia"),
        ("{name} ({service})", "Mia Lopez(fill)", "Mia Lopez", "fill"),
        ("{name} ({service})", "Mia ( full set )", "Mia", "full set"),
        ("[{service}] {name}", "[fill] Mia", "fill", "Mia"),
        ("{{{service}}} {name}", "{fill} Mia", "fill", "Mia"),
        ("Booked: {service} / {ignore} / {name}", "booked: fill / 2 / Mia", "fill", "Mia"),
        ("{service} * {name} (new)", "fill * Mia (old) (new)", "fill", "Mia (old)"),
        ("{ First Name } | {service}", "Mia | fill", "Mia", "fill"),
    ],
)
def test_text_outside_braces_must_be_there_whatever_its_capitals_and_spaces(
    wanted: str, title: str, service: str, name: str
) -> None:
    found = pattern.compile(f"SUMMARY: {wanted}").read({"SUMMARY": title})

    assert set(found.values()) == {service, name}
    assert found["service"] in (service, name)


@pytest.mark.parametrize(
    "title", ["Touch-up Mia", "Fillwith Mia", "fill", " - Mia", "fill - ", "x" * 600 + " - Mia", ""]
)
def test_a_title_that_does_not_fit_says_nothing(title: str) -> None:
    assert pattern.compile("SUMMARY: {service} - {name}").read({"SUMMARY": title}) == {}


def test_of_several_lines_for_the_title_the_first_that_fits_is_taken_alone() -> None:
    wanted = pattern.compile("SUMMARY: {service} - {name}\nSUMMARY: {name} ({service})\nSUMMARY: {ignore} ({artist})")

    assert wanted.read({"SUMMARY": "fill - Mia (Ada)"}) == {"service": "fill", "name": "Mia (Ada)"}
    assert wanted.read({"SUMMARY": "Mia (fill)"}) == {"service": "fill", "name": "Mia"}


@pytest.mark.parametrize(
    ("text", "line", "column", "cure"),
    [
        ("", 1, 1, "write {service}"),
        ("SUMMARY: {service}", 1, 1, "write {name}"),
        ("SUMMARY: {name}", 1, 1, "write {service}"),
        ("{service} - {name}", 1, 1, "write one of SUMMARY"),
        ("TITLE: {service} - {name}", 1, 1, "write one of SUMMARY"),
        ("SUMMARY: {service} - {name}\n\nDESCRIPTION: {fone}", 3, 14, "{fone}"),
        ("SUMMARY: {servce} - {name}", 1, 10, "write {service}"),
        ("SUMMARY: {} - {name}", 1, 10, "write one of"),
        ("SUMMARY: {service - {name}", 1, 10, 'a lone "{"'),
        ("SUMMARY: {service} } {name}", 1, 20, 'a lone "}"'),
        ("SUMMARY: {service}{name}", 1, 19, "write a mark"),
        ("SUMMARY: {service} {name}", 1, 20, "write a mark"),
        ("SUMMARY: {name} {service}", 1, 17, "write a mark"),
        ("SUMMARY: {service} - {name} - {name}", 1, 31, "stands twice"),
        ("SUMMARY: {service} - {name}\nDESCRIPTION: Phone", 2, 19, "write one"),
        ("SUMMARY: {service} at {starts_at} - {name}", 1, 23, "write {ignore}"),
        ("SUMMARY: {visit} - {service} - {name}", 1, 10, "write {ignore}"),
        ("SUMMARY: {service} - {name}" + " " * 300, 1, 301, "shorten"),
        ("SUMMARY: {service} - {name}\n" * 21, 21, 1, "remove"),
    ],
)
def test_a_pattern_that_cannot_be_used_is_refused_with_line_column_and_cure(
    text: str, line: int, column: int, cure: str
) -> None:
    with pytest.raises(PatternError) as refused:
        pattern.compile(text)

    assert (refused.value.line, refused.value.column) == (line, column)
    assert str(refused.value).startswith(f"Line {line}, column {column}: ")
    assert cure in str(refused.value)


@given(st.text(max_size=120))
def test_no_text_makes_the_pattern_fail_but_with_its_own_error(text: str) -> None:
    for wanted in (text, f"SUMMARY: {{service}}{text}{{name}}"):
        with suppress(PatternError):
            found = pattern.compile(wanted).read({"SUMMARY": f"fill{text}Mia", "DESCRIPTION": text})
            assert all(found.values())


LITERAL = st.text("-–/:|()[]*+?.^$\\ ab", min_size=1, max_size=5).filter(lambda text: text.strip())


@given(before=LITERAL, between=LITERAL, behind=LITERAL, data=st.data())
def test_what_a_pattern_writes_it_reads(before: str, between: str, behind: str, data: st.DataObject) -> None:
    words = st.text("xyzé", min_size=1, max_size=8)
    service, name = data.draw(words), data.draw(words)

    found = pattern.compile(f"SUMMARY: {before}{{service}}{between}{{name}}{behind}").read(
        {"SUMMARY": f"{before}{service}{between}{name}{behind}"}
    )

    assert found == {"service": service, "name": name}


def test_time_grows_with_the_text_however_the_pattern_is_made() -> None:
    fields = " - ".join(f"{{{name}}}" for name in ("service", "name", "artist", "client", "mobile", "email", "ignore"))
    wanted = pattern.compile(f"SUMMARY: {fields} - {{adhesive}}!")

    start = perf_counter()
    for title in (" - a" * 124, "- " * 249, " -" * 249, "a - " * 60 + " " * 200):
        assert wanted.read({"SUMMARY": title}) == {}

    assert perf_counter() - start < 0.2  # going back over seven fields would take hours
