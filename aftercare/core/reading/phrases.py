"""Phrases of the lexicon as a tree of words, and finding them in a reply.

A phrase is written in words: ``cant|cannot open .. eye{s/}``. ``|`` parts alternatives, ``{s/}`` endings, ``?`` marks
a word that may be missing, ``..`` stands for up to five words, ``<eye>`` for any word of a class; commas part phrases.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from aftercare.core.reading.tokens import CONTRACTIONS, LINE, PICTURE, WORD, Token, listed

GAP = ".."
_GAP_WORDS = 5
_LONGEST = 80  # tokens, far more than any phrase has: thousands of fillers in a row would be walked through from each
_NO_GAP = listed("but pero however though although except aunque")
_AND = listed("and y")
_NEW_SUBJECTS = listed("i im ive my its it they theyre there the now then i'm me mi mis se estoy tengo ando siento ya")
# Words that may stand anywhere within a phrase without changing it.
_FILLERS = listed("""
    a an so very really just kinda literally actually totally completely super quite absolutely proper properly
    fully honestly basically lowkey damn freaking fricking flipping effing rather extremely seriously
    un una unos unas muy tan super bien medio re
""")


@dataclass(slots=True)
class Node:
    """What may follow, and which names end here. One that is ``shared`` follows several words and stays as it is."""

    next: dict[str, Node] = field(default_factory=dict)
    names: list[str] = field(default_factory=list)
    shared: bool = False


@dataclass(slots=True)
class Mark:
    """One phrase found: its name, and its tokens from ``start`` up to ``end``."""

    name: str
    start: int
    end: int


class Phrases:
    """A tree of phrases under their names."""

    def __init__(self, classes: Mapping[str, str]) -> None:
        self.root = Node()
        self.words: set[str] = set()
        self._classes: dict[str, list[str]] = {}
        for name, text in classes.items():
            for written in text.replace("\n", " ").split():
                for word in endings(written):
                    self._classes.setdefault(word, []).append(f"<{name}>")
                    self.words.add(word)

    def add(self, name: str, text: str) -> None:
        """Add the phrases of ``text`` under ``name``."""
        for phrase in text.replace("\n", " ").split(","):
            for choices in _contracted(_choices(phrase)):
                self.words.update(word for words in choices for word in words if word[:1] not in ("", "<", "."))
                if any("" not in words for words in choices):
                    self._grow(self.root, choices, name, {})

    def _grow(self, node: Node, choices: list[list[str]], name: str, ends: dict[int, Node]) -> None:
        """Add below a node all that a phrase's choices make. What is new has one end in common (``ends``).

        Each of a thousand ways to say one thing would else have a branch of its own.
        """
        if not choices:
            if name not in node.names:
                node.names.append(name)
            return
        rest = choices[1:]
        for word in choices[0]:
            if not word or word == GAP and node is self.root:  # of a first word that may be missing: nothing is before
                self._grow(node, rest, name, ends)
                continue
            child = node.next.get(word)
            if child is None:
                if len(rest) not in ends:
                    ends[len(rest)] = Node(shared=True)
                    self._grow(ends[len(rest)], rest, name, ends)
                node.next[word] = ends[len(rest)]
                continue
            if child.shared:
                child = node.next[word] = Node(dict(child.next), list(child.names), node.shared)
            self._grow(child, rest, name, ends)

    def classes_of(self, word: str) -> list[str]:
        """Return the classes that a word belongs to."""
        return self._classes.get(word, [])

    def find(self, tokens: list[Token]) -> list[Mark]:
        """Return every phrase in ``tokens``, the longest of each name from each place."""
        keys = [
            (token.word, *self._classes.get(token.word, ())) if token.kind in (WORD, PICTURE) else ()
            for token in tokens
        ]
        found: list[Mark] = []
        for start in range(len(tokens)):
            if keys[start]:
                longest: dict[str, int] = {}
                self._walk(keys, tokens, start, longest)
                found.extend(Mark(name, start, end) for name, end in longest.items())
        return found

    def _walk(self, keys: list[tuple[str, ...]], tokens: list[Token], start: int, longest: dict[str, int]) -> None:
        states = [(self.root, 0)]
        place = start
        last = min(len(tokens), start + _LONGEST)
        while states and place < last:
            here = keys[place]
            if not here:
                if place > start and tokens[place].kind == LINE:  # chat breaks its lines in the middle of a phrase
                    place += 1
                    continue
                break
            word = tokens[place].word
            skipped = [(node, 0) for node, left in states if not left] if place > start and word in _FILLERS else []
            following: list[tuple[Node, int]] = []
            place += 1
            for node, left in states:
                ways = node.next
                for key in here:
                    if (child := ways.get(key)) is not None:
                        for name in child.names:
                            longest[name] = place
                        if child.next:
                            following.append((child, 0))
                gap = ways.get(GAP)
                if gap is not None:
                    for key in here:
                        if (child := gap.next.get(key)) is not None:
                            for name in child.names:
                                longest[name] = place
                            if child.next:
                                following.append((child, 0))
                if (gap is not None or left > 1) and word not in _NO_GAP and not _opens_a_clause(tokens, place - 1):
                    for passed, more in ((node, left - 1), (gap, _GAP_WORDS)):
                        if passed is not None and more > 0:
                            for name in passed.names:
                                longest[name] = place
                            following.append((passed, more))
            states = following + skipped


def _opens_a_clause(tokens: list[Token], place: int) -> bool:
    """Say whether a new clause begins at an "and": "it is red and I can't sleep"."""
    return tokens[place].word in _AND and place + 1 < len(tokens) and tokens[place + 1].word in _NEW_SUBJECTS


def contracted(words: Sequence[str]) -> list[str]:
    """Return the words with "do not" as "dont"; `tokens` does the same with what she writes."""
    found: list[str] = []
    for word in words:
        if word == "not" and found and found[-1] in CONTRACTIONS:
            found[-1] = CONTRACTIONS[found[-1]]
        else:
            found.append("cant" if word == "cannot" else word)
    return found


def endings(written: str) -> Iterator[str]:
    """``hinchad{o/a}`` is hinchado and hinchada."""
    head, brace, rest = written.partition("{")
    if not brace:
        yield written
        return
    inner, _, tail = rest.partition("}")
    for ending in inner.split("/"):
        yield from endings(head + ending + tail)


def _choices(phrase: str) -> list[list[str]]:
    """Return the words that may stand at each place of a phrase; '' where none need."""
    choices: list[list[str]] = []
    for element in phrase.split():
        may_miss = element.endswith("?")
        options = [word for one in element.removesuffix("?").split("|") for word in endings(one)]
        choices.append([*options, ""] if may_miss else options)
    return choices


def _contracted(choices: list[list[str]]) -> Iterable[list[list[str]]]:
    """Return the choices as they are, or where "not" may follow "do" and its like, each way to say it, contracted."""
    choices = [["cant" if word == "cannot" else word for word in words] for words in choices]
    may_contract = False
    for words in choices:
        if may_contract and "not" in words:
            break
        may_contract = may_contract and "" in words or bool(CONTRACTIONS.keys() & set(words))
    else:
        return [choices] if choices else []
    ways = (contracted([word for word in way if word]) for way in itertools.product(*choices))
    return [[[word] for word in way] for way in ways if way]
