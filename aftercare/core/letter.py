"""An e-mail's one text as the parts of a laid-out letter: paragraphs, lists, headings, and the caution set apart.

The owner writes plain text. A line that begins with "- " is an item of a list; one that ends with a colon and stands
right above a list, or alone, is a heading. Nothing else means anything: no name and nobody's words can make markup.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

_ITEM = "- "
_LONGEST_HEADING = 80
Shape = Literal["heading", "paragraph", "list"]


@dataclass(frozen=True, slots=True)
class Run:
    """A stretch of one line; ``link`` where it is an address that leads somewhere, as it is written."""

    text: str
    link: bool = False


@dataclass(frozen=True, slots=True)
class Block:
    """One part of a letter: a heading or a paragraph with its lines, or a list with its items."""

    shape: Shape
    lines: tuple[tuple[Run, ...], ...]


@dataclass(frozen=True, slots=True)
class Part:
    """Blocks in a row, the caution's own or others."""

    blocks: tuple[Block, ...]
    is_caution: bool = False


def parts(text: str, caution: str = "", links: Sequence[str] = ()) -> tuple[Part, ...]:
    """Take a text apart. ``caution`` is its caution as it stands in it; ``links`` are the addresses that may lead on.

    Where the caution is not found in one piece, nothing is set apart: it is still there, as written.
    """
    before, found, after = text.partition(caution) if caution else (text, "", "")
    known = _known(links)
    read = [(before, False), (found, True), (after, False)]
    made = (Part(tuple(_blocks(piece, known)), is_caution) for piece, is_caution in read)
    return tuple(part for part in made if part.blocks)


def _known(links: Sequence[str]) -> re.Pattern[str] | None:
    longest_first = sorted({link for link in links if link}, key=len, reverse=True)
    return re.compile("|".join(map(re.escape, longest_first))) if longest_first else None


def _blocks(text: str, links: re.Pattern[str] | None) -> Iterator[Block]:
    for chunk in re.split(r"\n\s*\n", text.strip("\n")):
        lines = [line.strip() for line in chunk.split("\n") if line.strip()]
        while lines:
            taken = _taken(lines)
            shape = _shape(lines, taken)
            bare = [line.removeprefix(_ITEM).strip() if shape == "list" else line for line in lines[:taken]]
            yield Block(shape, tuple(tuple(_runs(line, links)) for line in bare))
            lines = lines[taken:]


def _taken(lines: list[str]) -> int:
    """How many lines belong to the first block: all items of a list, a heading alone, else up to the next of them."""
    if lines[0].startswith(_ITEM):
        return next((place for place, line in enumerate(lines) if not line.startswith(_ITEM)), len(lines))
    for place, line in enumerate(lines):
        if line.startswith(_ITEM):
            return place if place == 1 or not _is_heading(lines[place - 1]) else place - 1
    return len(lines)


def _shape(lines: list[str], taken: int) -> Shape:
    if lines[0].startswith(_ITEM):
        return "list"
    stands_alone = taken == 1 and (len(lines) == 1 or lines[1].startswith(_ITEM))
    return "heading" if stands_alone and _is_heading(lines[0]) else "paragraph"


def _is_heading(line: str) -> bool:
    return line.endswith(":") and len(line) <= _LONGEST_HEADING


def _runs(line: str, links: re.Pattern[str] | None) -> Iterator[Run]:
    end = 0
    for found in links.finditer(line) if links else ():
        if found.start() > end:
            yield Run(line[end : found.start()])
        yield Run(found[0], link=True)
        end = found.end()
    if end < len(line):
        yield Run(line[end:])
