from __future__ import annotations

from aftercare.templatetags.readings import found, marked

READING = {"signs": ["swelling", "itching"], "negated": ["pain"], "side": "left", "why": [["swelling", 9, 14]]}


def test_what_was_found_is_marked_in_her_own_words() -> None:
    assert marked("left lid puffy", READING) == "left lid <mark>puffy</mark>"


def test_nothing_that_a_client_writes_becomes_a_tag() -> None:
    text = "<b>puffy<script>"
    assert marked(text, {"why": [["swelling", 3, 8]]}) == "&lt;b&gt;<mark>puffy</mark>&lt;script&gt;"


def test_spans_that_lie_outside_or_on_each_other_are_passed_over() -> None:
    why = [["swelling", 0, 5], ["itching", 3, 8], ["pain", 9, 99], ["no burning", 6, 8]]
    assert marked("puffy itchy", {"why": why}) == "<mark>puffy</mark> itchy"


def test_signs_side_and_what_she_denies_are_said_in_words() -> None:
    assert found(READING) == "swelling, itching · left eye · denied: pain"
    assert found({}) == ""
