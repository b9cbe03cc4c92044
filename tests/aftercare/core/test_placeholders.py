"""The owner's small grammar, against python-liquid, which fills the wordings in."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from liquid import Environment

from aftercare.core import placeholders

KNOWN = frozenset({"studio", "artist", "first", "step", "caution"})
LIQUID = Environment()
PIECES = [
    *(
        "{{ studio }}",
        "{{artist}}",
        "{{- caution -}}",
        "{{ studio | upcase }}",
        "{{ nothing }}",
        "{{ now }}",
        "{{",
        "}}",
    ),
    *(
        "{{ studio.size }}",
        "{{ (1..9) }}",
        '{{ artist | default: "us" }}',
        "{{ artist | truncate: 5, '' }}",
        "{{ x | map }}",
    ),
    *("{% if first %}", "{% if step == 1 and first %}", "{% elsif artist %}", "{% else %}", "{% endif %}", "{% if %}"),
    *(
        "{% unless first %}",
        "{% endunless %}",
        "{% comment %}",
        "{% endcomment %}",
        "{% for a in b %}",
        "{% raw %}",
        "{%",
    ),
    *("Hi ", "\n", " ", "é", "%}", "{", "}", "'", '"', "|"),
]


def problems_of(text: str) -> list[tuple[int, int, str]]:
    return [(problem.line, problem.column, problem.what) for problem in placeholders.read(text, KNOWN).problems]


@given(st.lists(st.sampled_from(PIECES), max_size=12).map("".join))
def test_whatever_is_accepted_here_liquid_accepts_and_names_the_same_fields(text: str) -> None:
    source = placeholders.read(text, KNOWN)

    if not source.problems:
        assert set(LIQUID.from_string(text).variables()) == set(source.fields)


@given(st.text(alphabet="{}%|'\"- \n:,.=<>abcstudiofirne_0129éñ", max_size=80))
def test_no_text_can_break_the_reader(text: str) -> None:
    source = placeholders.read(text, KNOWN)

    if not source.problems:
        LIQUID.from_string(text)
    assert len(source.shown) == len(source.places)
    assert all(problem.line >= 1 and problem.column >= 1 and problem.cure for problem in source.problems)


@pytest.mark.parametrize(
    ("text", "line", "column", "what"),
    [
        ("Hi {{ name }}", 1, 4, "There is no field “name” here."),
        ("Hi\n  {{ studio | json }}", 2, 3, "“json” is not offered."),
        ("{{ studio.size }}", 1, 1, "There is no field “studio.size” here."),
        ("{{ now }}", 1, 1, "There is no field “now” here."),
        ("a {% if first %} b", 1, 3, "This {% if %} is never closed."),
        ("a {% unless first %}{% endif %}", 1, 21, "{% endif %} belongs to nothing."),
        ("{% endif %}", 1, 1, "{% endif %} belongs to nothing."),
        ("a\nb {% for x in y %}", 2, 3, "{% for %} is not offered."),
        ("{% assign x = 1 %}", 1, 1, "{% assign %} is not offered."),
        ("{% include 'x' %}", 1, 1, "{% include %} is not offered."),
        ("{% raw %}x{% endraw %}", 1, 1, "{% raw %} is not offered."),
        ("{% comment %} x", 1, 1, "This comment is never closed."),
        ("Hi {{ studio", 1, 4, "“{{” is never closed."),
        ("Hi }}", 1, 4, "“}}” closes nothing."),
        ("Hi {{ studio }, {{ artist }}", 1, 4, "A brace is missing in “{{ studio }”."),
        ("Hi { studio }}", 1, 4, "A brace is missing in “{ studio }}”."),
        ("Hi { studio }", 1, 4, "A brace is missing in “{ studio }”."),
        ("Hi {% if first }x{% endif %}", 1, 4, "A brace is missing in “{% if first }”."),
        ("{% if %}x{% endif %}", 1, 1, "The condition of {% if %} cannot be read."),
        ("{% if first == %}x{% endif %}", 1, 1, "The condition of {% if %} cannot be read."),
        ("{% if first %}{% else %}{% else %}{% endif %}", 1, 25, "{% else %} comes after an else."),
        ("{% if first %}{% else artist %}{% endif %}", 1, 15, "“artist” does not belong in {% else %}."),
        ('{{ artist | default: "us }}', 1, 1, "A quotation mark is missing."),
        ("{{ artist | default: first }}", 1, 1, "“default: first” cannot be read."),
        ("{{ }}", 1, 1, "Nothing stands between {{ and }}."),
        ("{{ 'text' }}", 1, 1, "There is no field “'text'” here."),
    ],
)
def test_each_fault_is_named_with_its_line_and_column(text: str, line: int, column: int, what: str) -> None:
    assert (line, column, what) in problems_of(text)


@pytest.mark.parametrize(
    ("text", "always"),
    [
        ("{{ caution }}", True),
        ("{% if first %}a{% else %}b{% endif %}{{ caution }}", True),
        ("{% if first %}{{ caution }}{% else %}{{ caution }}{% endif %}", True),
        ("{% if first %}{{ caution }}{% elsif step %}{{ caution }}{% else %}{{ caution }}{% endif %}", True),
        ("{% if first %}{{ caution }}{% endif %}", False),
        ("{% if first %}{{ caution }}{% elsif step %}x{% else %}{{ caution }}{% endif %}", False),
        ("{% unless first %}{{ caution }}{% else %}x{% endunless %}", False),
        ("{% comment %}{{ caution }}{% endcomment %}", False),
        ("{{ caution | truncate: 3 }}", False),
        ('{{ artist | default: "caution" }}', False),
        ("{% if caution %}x{% endif %}", False),
        ("{{ caution", False),
    ],
)
def test_a_field_is_certain_only_where_no_if_filter_or_comment_can_take_it_away(text: str, always: bool) -> None:
    assert ("caution" in placeholders.read(text, KNOWN).always) is always


def test_what_a_reader_may_see_leaves_out_tags_and_comments_and_keeps_words_in_quotes() -> None:
    source = placeholders.read(
        'a{% if first %}b{% endif %}{% comment %}c{% endcomment %}{{ artist | default: "d" }}e', KNOWN
    )

    assert source.shown == "ab\ufffc d e"
    assert source.places[-1] == len(source.text) - 1


def test_too_deep_ifs_and_endless_sources_are_refused() -> None:
    deep = "{% if first %}" * 5 + "{% endif %}" * 5

    assert problems_of(deep) == [(1, 57, "More than 4 ifs stand inside one another.")]
    assert "10001 characters" in problems_of("a" * 10_001)[0][2]


def test_a_hopeless_source_is_given_up_early() -> None:
    assert len(problems_of("{{ x }}" * 1000)) == placeholders.MOST_PROBLEMS


@pytest.mark.parametrize(("name", "meant"), [("artits", "artist"), ("studio_name", "studio"), ("Caution", "caution")])
def test_a_field_that_was_misspelled_is_named_as_it_may_have_been_meant(name: str, meant: str) -> None:
    [problem] = placeholders.read(f"Hi {{{{ {name} }}}}", KNOWN).problems

    assert problem.cure == f"Did you mean {meant}?"


def test_a_name_like_none_is_not_guessed_at() -> None:
    [problem] = placeholders.read("Hi {{ xyzw }}", KNOWN).problems

    assert problem.cure == "Insert one from the list of fields."


def test_a_problem_shows_the_words_around_its_place() -> None:
    [problem] = placeholders.read("One line.\nDear {{ nobody }}, welcome to us\nall.", KNOWN).problems

    assert problem.around == ("Dear ", "{{ nobody }}", ", welcome to us")
    assert (problem.line, problem.lines) == (2, 3)


def test_what_is_shown_around_a_place_is_cut_between_words_and_tags() -> None:
    text = "{{ studio }}: {{ first_name }}, your eyes are {{ nobody }} marvellous, {{ studio }} says {{ how_to_stop }}"

    [problem] = placeholders.read(text, {"studio", "first_name", "how_to_stop"}).problems

    assert problem.around == (", your eyes are ", "{{ nobody }}", " marvellous,")
