"""Read a wording's source: its fields, its ifs, and what a reader will see of it, without filling anything in.

The owner's grammar is a small part of Liquid's: ``{{ field | filter: "text" }}``, ``if``, ``elsif``, ``else``,
``unless`` and ``comment``. Whatever this module accepts, Liquid accepts; the reverse is kept false on purpose.
"""

from __future__ import annotations

import re
from collections.abc import Collection
from dataclasses import dataclass, field

from rapidfuzz import fuzz, process

FILTERS = frozenset({"default", "upcase", "downcase", "capitalize", "truncate"})
LONGEST_SOURCE = 10_000  # characters; a long e-mail has 4,000
MOST_PROBLEMS = 40  # nobody reads on
DEEPEST = 4  # ifs inside one another: nobody can follow more
SHOWN_FIELD = "\ufffc"  # stands for a field's value in the text that is shown

_QUOTED = r"""(?:"[^"{}]*"|'[^'{}]*')"""
_NAME = r"[a-z_][a-z0-9_]*"
# No brace stands within a field or a tag: one that is closed with too few must not swallow what comes after it.
_PIECE = re.compile(r"\{\{-?(?P<output>[^{}]*?)-?\}\}|\{%-?(?P<tag>[^{}]*?)-?%\}|(?P<stray>\{\{|\{%|\}\}|%\})")
_FEW_AT_THE_END = re.compile(r"(?P<open>\{\{|\{%)-?\s*(?P<inside>[^{}%]*?)\s*[%}](?![%}])")
_FEW_AT_THE_START = re.compile(r"(?<!\{)\{\s*(?P<inside>[^{}%]*?)\s*$")
_ONE_EACH = re.compile(r"(?<!\{)\{\s*(?P<inside>[a-z_]+)\s*\}(?!\})")
_WORD_OR_PIECE = re.compile(r"\{\{[^{}]*\}\}|\{%[^{}]*%\}|\S+")
_WHOLE = re.compile(r"\{\{[^{}]*\}\}|\{%[^{}]*%\}|[^\s{}]+|[{}]+|\s+")  # what an excerpt keeps whole
AROUND = 24  # letters shown before and after a place, at most: words and tags stay whole
NEAR_ENOUGH = 75  # of 100, by which a name that is not known is taken for one that is
_OUTPUT = re.compile(r"\s*(?P<field>[^\s|]+)\s*(?P<filters>(?:\|.*)?)", re.DOTALL)
_FILTER = re.compile(
    rf"\s*(?P<name>\w+)\s*(?::\s*(?P<args>(?:{_QUOTED}|\d{{1,4}})(?:\s*,\s*(?:{_QUOTED}|\d{{1,4}}))*)\s*)?"
)
_PIPE = re.compile(rf"\|((?:{_QUOTED}|[^|\"'])*)")
_OPERAND = rf"(?:{_QUOTED}|\d{{1,4}}|{_NAME})"
_COMPARISON = rf"{_OPERAND}(?:\s*(?:==|!=|<=|>=|<|>|\bcontains\b)\s*{_OPERAND})?"
_CONDITION = re.compile(rf"\s*{_COMPARISON}(?:\s+(?:and|or)\s+{_COMPARISON})*\s*")
_WORDS = re.compile(rf"{_QUOTED}|\b{_NAME}\b")
_RESERVED = frozenset({"and", "or", "contains", "true", "false", "nil", "null", "empty", "blank"})


@dataclass(frozen=True, slots=True)
class Problem:
    """What is wrong with a wording, where (line and column from 1), and the cure. A warning does not stop a save.

    ``around`` are the letters before the place, those that are wrong, and those after it: all '' where it has none, as
    of what is missing. ``lines`` is how many lines the text has.
    """

    line: int
    column: int
    what: str
    cure: str
    warning: bool = False
    part: str = "body"
    around: tuple[str, str, str] = ("", "", "")
    lines: int = 1

    def __str__(self) -> str:
        return f"Line {self.line}, column {self.column}: {self.what} {self.cure}"


@dataclass(slots=True)
class Source:
    """What was read.

    ``fields`` are those named, with the index of their first use. ``always`` are those printed in full whatever the ifs
    decide, and ``certain`` is the text outside every if. ``shown`` is all that a reader may see, the branches in a row,
    with ``places`` (the source index of each of its characters) and ``seams`` (the indexes in ``shown`` where a tag
    stood: what joins there may never be read together). ``broken``: a brace or a tag is missing, so that nothing can be
    said of what else is missing.
    """

    text: str
    problems: list[Problem] = field(default_factory=list)
    fields: dict[str, int] = field(default_factory=dict)
    always: set[str] = field(default_factory=set)
    certain: str = ""
    shown: str = ""
    places: list[int] = field(default_factory=list)
    seams: list[int] = field(default_factory=list)
    broken: bool = False

    def problem(
        self, index: int | None, what: str, cure: str, *, end: int | None = None, warning: bool = False
    ) -> None:
        """Note what is wrong from an index of the source to an end (none given: that of the word there).

        Without an index it has no place.
        """
        lines = self.text.count("\n") + 1
        if index is None:
            self.problems.append(Problem(1, 1, what, cure, warning, lines=lines))
            return
        before = self.text[:index]
        start = before.rfind("\n") + 1
        around = self._around(index, end, start)
        self.problems.append(
            Problem(before.count("\n") + 1, index - start + 1, what, cure, warning, around=around, lines=lines)
        )

    def _around(self, index: int, end: int | None, start: int) -> tuple[str, str, str]:
        if end is None:
            word = _WORD_OR_PIECE.match(self.text, index)
            end = word.end() if word else index
        before, after = self.text[start:index], self.text[end:].partition("\n")[0]
        earlier = [piece[0] for piece in _WHOLE.finditer(before) if piece.start() >= len(before) - AROUND]
        later = [piece[0] for piece in _WHOLE.finditer(after) if piece.end() <= AROUND]
        return "".join(earlier).lstrip(), self.text[index:end], "".join(later).rstrip()


@dataclass(slots=True)
class _Block:
    """An ``if`` or ``unless`` that is open: the fields that each branch so far prints, and the branch being read."""

    name: str
    index: int
    branches: list[set[str]]
    current: set[str]
    has_else: bool = False


def read(text: str, known: Collection[str]) -> Source:
    """Read a wording's source. Every problem of its grammar, and every field that is not ``known``, is noted."""
    source = Source(text)
    if len(text) > LONGEST_SOURCE:
        source.problem(LONGEST_SOURCE, f"The text has {len(text)} characters.", f"Keep it under {LONGEST_SOURCE}.")
        return source
    _Reader(source, known).read()
    return source


class _Reader:
    """Walks the pieces of one source once."""

    def __init__(self, source: Source, known: Collection[str]) -> None:
        self.source = source
        self.known = known
        self.open: list[_Block] = []
        self.comment = 0  # how many comments are open, one inside another
        self.comment_index = 0
        self.shown: list[str] = []
        self.certain: list[str] = []

    def read(self) -> None:
        end = 0
        for piece in _PIECE.finditer(self.source.text):
            self._show(self.source.text[end : piece.start()], end)
            self._piece(piece)
            end = piece.end()
            if len(self.source.problems) >= MOST_PROBLEMS:
                return
        self._show(self.source.text[end:], end)
        self.source.shown = "".join(self.shown)
        self.source.certain = " ".join(self.certain)
        if self.comment:
            self.source.broken = True
            self._problem(self.comment_index, "This comment is never closed.", "Write {% endcomment %} after it.")
        for block in self.open:
            self.source.broken = True
            self._problem(
                block.index, f"This {{% {block.name} %}} is never closed.", f"Write {{% end{block.name} %}} after it."
            )

    def _problem(self, index: int, what: str, cure: str) -> None:
        self.source.problem(index, what, cure)

    def _show(self, text: str, index: int) -> None:
        if text and not self.comment:
            self.shown.append(text)
            self.source.places.extend(range(index, index + len(text)))
            if not self.open:
                self.certain.append(text)
            for one in _ONE_EACH.finditer(text):
                if one["inside"] in self.known:
                    self._few(index + one.start(), index + one.end(), f"{{{{ {one['inside']} }}}}")

    def _piece(self, piece: re.Match[str]) -> None:
        if piece["tag"] is not None:
            self._tag(piece["tag"].strip(), piece.start())
        elif piece["output"] is not None:
            if not self.comment:
                self._output(piece["output"], piece.start())
        elif piece["stray"] in ("{{", "{%"):
            self._never_closed(piece)
        elif not self.comment:
            self._closes_nothing(piece)

    def _never_closed(self, piece: re.Match[str]) -> None:
        few = _FEW_AT_THE_END.match(self.source.text, piece.start())
        if few and few["inside"]:
            whole = f"{{{{ {few['inside']} }}}}" if few["open"] == "{{" else f"{{% {few['inside']} %}}"
            self._few(few.start(), few.end(), whole)
            return
        self.source.broken = True
        close = {"{{": "}}", "{%": "%}"}[piece["stray"]]
        self._problem(piece.start(), f"“{piece['stray']}” is never closed.", f"Write {close} after it.")

    def _closes_nothing(self, piece: re.Match[str]) -> None:
        few = _FEW_AT_THE_START.search(self.source.text, 0, piece.start())
        if few and few["inside"] and piece["stray"] == "}}":
            self._few(few.start(), piece.end(), f"{{{{ {few['inside']} }}}}")
            return
        self.source.broken = True
        self._problem(piece.start(), f"“{piece['stray']}” closes nothing.", "Take it out, or open it before.")

    def _few(self, start: int, end: int, whole: str) -> None:
        self.source.broken = True
        what = f"A brace is missing in “{self.source.text[start:end]}”."
        self.source.problem(start, what, f"Write {whole}.", end=end)

    def _output(self, inside: str, index: int) -> None:
        found = _OUTPUT.fullmatch(inside)
        if not found:
            self._problem(index, "Nothing stands between {{ and }}.", "Write a field's name there, or take it out.")
            return
        self._field(found["field"], index)
        literals = self._filters(found["filters"], index)
        if not found["filters"]:
            (self.open[-1].current if self.open else self.source.always).add(found["field"])
        words = SHOWN_FIELD + literals
        self.shown.append(words)
        self.source.places.extend([index] * len(words))

    def _filters(self, text: str, index: int) -> str:
        """Check the filters behind a field and return the words in their quotes, which a reader may see."""
        parts = list(_PIPE.finditer(text))
        if "".join(part[0] for part in parts) != text:
            self._problem(
                index, "A quotation mark is missing.", 'Put the words in quotes: {{ artist | default: "us" }}.'
            )
            return ""
        literals = ""
        for part in parts:
            found = _FILTER.fullmatch(part[1])
            if not found:
                self._problem(
                    index, f"“{part[1].strip()}” cannot be read.", 'Write it like this: {{ artist | default: "us" }}.'
                )
            elif found["name"] not in FILTERS:
                self._problem(index, f"“{found['name']}” is not offered.", f"There are: {', '.join(sorted(FILTERS))}.")
            else:
                literals += "".join(f" {quoted[1:-1]} " for quoted in re.findall(_QUOTED, found["args"] or ""))
        return literals

    def _field(self, name: str, index: int) -> None:
        if name not in self.known:
            near = process.extractOne(name, sorted(self.known), scorer=fuzz.WRatio, score_cutoff=NEAR_ENOUGH)
            cure = f"Did you mean {near[0]}?" if near else "Insert one from the list of fields."
            self._problem(index, f"There is no field “{name}” here.", cure)
        self.source.fields.setdefault(name, index)

    def _tag(self, inside: str, index: int) -> None:
        name, rest = (*inside.split(maxsplit=1), "", "")[:2]
        if self.comment:
            self.comment += {"comment": 1, "endcomment": -1}.get(name, 0)
            return
        self.source.seams.append(len(self.source.places))
        if name == "comment":
            self.comment, self.comment_index = 1, index
        elif name in ("if", "unless"):
            self._condition(name, rest, index)
            self._open(name, index)
        elif name in ("elsif", "else", "endif", "endunless"):
            self._within(name, rest, index)
        else:
            self._problem(index, f"{{% {name} %}} is not offered.", "There are: if, elsif, else, unless and comment.")

    def _open(self, name: str, index: int) -> None:
        if len(self.open) == DEEPEST:
            self._problem(index, f"More than {DEEPEST} ifs stand inside one another.", "Use fewer.")
        self.open.append(_Block(name, index, [], set()))

    def _within(self, name: str, rest: str, index: int) -> None:
        block = self.open[-1] if self.open else None
        if block is None or (name.startswith("end") and name != f"end{block.name}"):
            self.source.broken = True
            self._problem(index, f"{{% {name} %}} belongs to nothing.", "Take it out, or open its if before.")
            return
        if name in ("elsif", "else") and block.has_else:
            self._problem(index, f"{{% {name} %}} comes after an else.", "Put the else last.")
        if name == "elsif":
            self._condition(name, rest, index)
        elif rest:
            self._problem(
                index, f"“{rest}” does not belong in {{% {name} %}}.", "Take it out; use elsif for another if."
            )
        block.branches.append(block.current)
        block.current = set()
        block.has_else = block.has_else or name == "else"
        if name.startswith("end"):
            self._close(self.open.pop())

    def _close(self, block: _Block) -> None:
        # Without an else there is a branch that prints nothing at all.
        certain = set.intersection(*block.branches) if block.has_else else set()
        (self.open[-1].current if self.open else self.source.always).update(certain)

    def _condition(self, name: str, text: str, index: int) -> None:
        if not _CONDITION.fullmatch(text):
            self._problem(
                index, f"The condition of {{% {name} %}} cannot be read.", "Write a field's name, as in {% if first %}."
            )
            return
        for word in _WORDS.findall(text):
            if word[0] not in "\"'" and word not in _RESERVED:
                self._field(word, index)
