"""Phrases as a tree: every way that a phrase may be written is found under its name, and under no other's."""

from __future__ import annotations

import itertools
from collections.abc import Iterator

import pytest

from aftercare.core.reading.phrases import Phrases, endings
from aftercare.core.reading.tokens import tokenize

LISTS = (
    {"one": "red|pink|sore eye{s/}|lid{s/} today|now?", "two": "pink lid now please, sore eyes"},
    {"one": "my? p|b c|d e, p c", "two": "b c, p d e f, my b", "three": "c e"},
    {"one": "x? x|y z?", "two": "x z, y z z, x x"},
    {"one": "p|b? b|c c|d", "two": "p b c d, c c c, b"},
    {"one": "p|q b? b|c d", "two": "p b d e"},
    {"one": "do|can not open|see it, cannot see", "two": "cant see"},
)


def _ways(text: str) -> Iterator[tuple[str, ...]]:
    """Write out each way of a list of phrases; the grammar is in the module's first words."""
    for phrase in text.split(","):
        choices = []
        for element in phrase.split():
            options = [word for one in element.removesuffix("?").split("|") for word in endings(one)]
            choices.append([*options, ""] if element.endswith("?") else options)
        for words in itertools.product(*choices):
            yield tuple(word for word in words if word)


@pytest.mark.parametrize("given", LISTS)
def test_each_way_is_found_under_its_own_names(given: dict[str, str]) -> None:
    tree = Phrases({})
    for name, text in given.items():
        tree.add(name, text)
    words = sorted({word for text in given.values() for way in _ways(text) for word in way})
    longest = max(len(way) for text in given.values() for way in _ways(text))
    named = {name: {_contracted(way) for way in _ways(text)} for name, text in given.items()}

    for length in range(1, min(longest, 4) + 1):
        for said in itertools.product(words, repeat=length):
            tokens = tokenize(" ".join(said), str)
            whole = {m.name for m in tree.find(tokens) if (m.start, m.end) == (0, len(tokens))}
            asked = tuple(token.word for token in tokens)
            assert whole == {name for name, ways in named.items() if asked in ways}, said


def _contracted(way: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(token.word for token in tokenize(" ".join(way), str))


def test_what_is_added_below_one_way_is_not_below_the_others() -> None:
    tree = Phrases({})
    tree.add("one", "red|pink eye|lid")
    tree.add("two", "red eye today")

    assert [mark.name for mark in tree.find(tokenize("pink eye today", str))] == ["one"]
    assert {mark.name for mark in tree.find(tokenize("red eye today", str))} == {"one", "two"}


def test_no_phrase_reaches_through_fillers_without_end() -> None:
    """From each of a thousand all the rest would be walked through, and everybody else would wait meanwhile."""
    tree = Phrases({})
    tree.add("one", "red eye")

    assert [mark.name for mark in tree.find(tokenize(f"red {'a ' * 20} eye", str))] == ["one"]
    assert not tree.find(tokenize(f"red {'a ' * 200} eye", str))
