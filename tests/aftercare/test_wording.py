"""Finding and filling in a wording, and attacks on both."""

from __future__ import annotations

import re
import time as clock
from contextlib import suppress
from dataclasses import replace
from datetime import date, datetime, time
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aftercare import wording
from aftercare.core.fields import FIELDS, Facts
from aftercare.wording import MESSAGES, WordingError, Words, compose, first_wording, problems, render

SHORTEST = Facts(
    occasion="prepare",
    studio="Z",
    first_name="Bo",
    starts_at=datetime.combine(date(2027, 5, 1), time(9, 0)),
    window=(date(2027, 5, 4), date(2027, 5, 4)),
)


def _facts(occasion: str, kind: str, step: int, channel: str, language: str) -> Facts:
    return replace(wording.LONGEST, occasion=occasion, kind=kind, step=step, channel=channel, language=language)


def test_the_most_exact_wording_wins() -> None:
    assert first_wording("prepare", "full set", 1, "sms", "en") != first_wording("prepare", "full set", 0, "sms", "en")
    assert first_wording("care", "removal", 0, "sms", "en") != first_wording("care", "fill", 0, "sms", "en")
    assert first_wording("care", "fill", 0, "sms", "en") == first_wording("care", "", 0, "sms", "en")
    assert first_wording("care", "fill", 0, "sms", "fr") == first_wording("care", "fill", 0, "sms", "en")
    assert first_wording("care", "fill", 0, "sms", "es-MX") == first_wording("care", "fill", 0, "sms", "es")


@pytest.mark.parametrize(("occasion", "kind"), [("../care", ""), ("care", "../../x"), ("nothing", ""), ("care", "a/b")])
def test_an_unknown_occasion_or_a_path_is_no_wording(occasion: str, kind: str) -> None:
    with pytest.raises(WordingError):
        first_wording(occasion, kind, 0, "sms", "en")


@pytest.mark.parametrize(
    "source",
    [
        "{{ studio.__class__ }}",
        "{{ studio['__class__'] }}",
        "{{ studio.size }}",
        "{{ now }}",
        "{{ today }}",
        "{{ forloop }}",
        "{{ studio | safe }}",
        "{{ studio | map: 'x' }}",
        "{{ studio | append: 'x' }}",
        "{{ (1..999999999) }}",
        "{{ 'text' }}",
        "{% for i in (1..999999999) %}x{% endfor %}",
        "{% assign x = studio %}",
        "{% capture x %}y{% endcapture %}",
        "{% include 'settings' %}",
        "{% render 'settings' %}",
        "{% liquid echo studio %}",
        "{% echo studio %}",
        "{% raw %}{{ studio }}{% endraw %}",
        "{% doc %}x{% enddoc %}",
        "{% case studio %}{% when 'Z' %}{% endcase %}",
        "{% tablerow i in (1..9) %}x{% endtablerow %}",
        "{% increment x %}",
        "{% cycle 'a', 'b' %}",
        "{% if studio.size > 1 %}x{% endif %}",
        "{% if (1..9) contains 1 %}x{% endif %}",
        "{{ nobody_s_field }}",
        "{% if nobody_s_field %}x{% endif %}",
        "{{ studio",
        "{% if first %}x",
        "{{ " + "9" * 5000 + " }}",
        "{% if first %}" * 500 + "{% endif %}" * 500,
        "{{ studio }}" * 2000,
    ],
)
def test_an_attack_by_template_ends_in_a_clear_error(source: str) -> None:
    with pytest.raises(WordingError, match=r"Line \d+, column \d+: .+\."):
        render(source, dict.fromkeys(FIELDS, "Z"))


def test_an_endless_text_is_refused() -> None:
    with pytest.raises(WordingError, match="limit"):
        render("{{ studio }} " * 700, {"studio": "Z" * 80})


def test_a_field_that_this_message_has_not_got_is_a_clear_error() -> None:
    with pytest.raises(WordingError, match="'window' is undefined.+Use the fields that are offered"):
        render("{{ window }}", {"studio": "Z"})


def test_a_field_that_this_message_has_not_got_counts_as_false_in_an_if() -> None:
    assert render("{% if window %}x{% else %}y{% endif %}", {"studio": "Z"}) == "y"


HOSTILE = [
    "{{ studio }}",
    "{% if first %}x{% endif %}",
    "<script>alert(1)</script>",
    "[Mia](https://evil.example)",
    "**Mia** & _co_",
    "%} }} {{",
]


@pytest.mark.parametrize("name", HOSTILE)
@pytest.mark.parametrize("channel", ["sms", "email"])
def test_a_name_is_plain_text_whatever_it_looks_like(name: str, channel: str) -> None:
    facts = replace(_facts("check", "fill", 1, channel, "en"), first_name=name, artist=name)

    words = compose(first_wording("check", "fill", 1, channel, "en"), facts)

    assert name in words.body
    assert words.body.count("{{ studio }}") == name.count("{{ studio }}") * words.body.count(name)


@pytest.mark.parametrize("name", ["Mia\nBcc: all@example.org", "Mia\r\n\r\nHi", "Mia\u2028x", "Mia\x0bx"])
def test_a_name_cannot_break_a_line(name: str) -> None:
    facts = replace(_facts("check", "fill", 1, "email", "en"), first_name=name)

    subject = compose(first_wording("check", "fill", 1, "email", "en"), facts).subject

    assert len(subject.splitlines()) == 1


FRAGMENTS = [
    "{{ studio }}",
    "{{ caution | upcase }}",
    "{{ studio | truncate: 3 }}",
    "{{ x }}",
    "{{",
    "}}",
    "{% else %}",
]
FRAGMENTS += [
    "{% if first %}",
    "{% if step < 2 %}",
    "{% endif %}",
    "{% unless artist %}",
    "{% endunless %}",
    "{% for %}",
]
FRAGMENTS += [
    "{% if studio < 2 %}",
    "{% if dry_hours > 4 %}",
    '{{ artist | default: "us", 3 }}',
    "{{ step | upcase }}",
    " a\n",
]


@given(st.lists(st.sampled_from(FRAGMENTS), max_size=10).map("".join))
def test_no_wording_does_anything_but_render_or_complain(source: str) -> None:
    with suppress(WordingError):
        assert not re.search(r"\{\{|\{%|%\}|\}\}", render(source, wording.values(replace(SHORTEST, occasion="care"))))


def test_values_offer_only_what_the_occasion_may_use() -> None:
    assert set(wording.values(replace(wording.LONGEST, occasion="alert"))) == {"studio", "link"}
    assert "caution" not in wording.values(replace(wording.LONGEST, occasion="prepare"))


def test_the_owner_s_own_blocks_are_asked_for_first() -> None:
    def owner_s(occasion: str, kind: str, step: int, channel: str, language: str) -> Words:
        if occasion == "caution":
            return Words("", "Rinse first, {{ studio }} says. {{ emergency_call }}.")
        return first_wording(occasion, kind, step, channel, language)

    body = compose(Words("", "{{ caution }} {{ how_to_stop }}"), _facts("care", "fill", 0, "sms", "en"), owner_s).body

    assert body == "Rinse first, Wrenfield Lash Room says. your local emergency number. Reply STOP to end texts"


def test_an_sms_leaves_in_its_cheapest_spelling_and_an_email_as_it_is_written() -> None:
    words = Words("{{ studio }}", "“Sí”, {{ studio }}…")
    facts = replace(SHORTEST, language="es")

    assert compose(words, facts).body == '"Si", Z...'
    assert compose(words, replace(facts, channel="email")) == Words("Z", "“Sí”, Z…")


def test_problems_of_an_owner_s_wording_count_its_length_with_the_longest_names() -> None:
    long = Words(
        "", "{{ studio }} {{ day }}, {{ hour }} {{ how_to_stop }} {% if first %}" + "word " * 50 + "{% endif %}"
    )

    (problem,) = problems("prepare", "fill", 0, "sms", "en", long)

    assert problem.what == "With the longest names it is charged as 3 texts."
    assert problem.warning


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize("condition", ["first contains 'x'", "minutes > 'a'", "artist > 3", "step contains '1'"])
def test_problems_name_an_if_that_reads_well_and_cannot_be_asked(condition: str, channel: str) -> None:
    body = "{{ studio }} {{ caution }} {{ how_to_stop }} {% if " + condition + " %}!{% endif %}"
    subject = "Your lashes" if channel == "email" else ""

    (problem,) = problems("care", "fill", 0, channel, "en", Words(subject, body, "en"))

    assert not problem.warning
    assert "cannot be filled in" in problem.what


def test_problems_of_a_wording_that_cannot_be_read_are_told_all_the_same() -> None:
    found = problems("prepare", "fill", 0, "sms", "en", Words("", "{{ studio }} {{ nobody }}"))

    assert "There is no field “nobody” here." in [problem.what for problem in found]


def test_rendering_a_sweep_s_texts_is_quick() -> None:
    # A generous bound, of a hundred times what one text takes: it finds a template that is parsed anew each time.
    facts = _facts("care", "fill", 0, "sms", "en")
    compose(first_wording("care", "fill", 0, "sms", "en"), facts)
    begin = clock.perf_counter()
    for number in range(200):
        compose(first_wording("care", "fill", 0, "sms", "en"), replace(facts, first_name=f"Mia {number}"))

    assert (clock.perf_counter() - begin) / 200 < 0.005


def test_the_folder_of_first_wordings_is_the_project_s_own() -> None:
    assert Path(__file__).resolve().parents[2] / "templates" / "messages" == MESSAGES
