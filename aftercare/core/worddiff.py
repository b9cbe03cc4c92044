"""What differs between two texts, word by word."""

from __future__ import annotations

import re
from dataclasses import dataclass
from difflib import SequenceMatcher
from typing import Literal

_TOKEN = re.compile(r"\{\{.*?\}\}|\{%.*?%\}|\w+|\s+|[^\w\s]", re.DOTALL)  # a field is one word


@dataclass(frozen=True, slots=True)
class Change:
    """A stretch that both texts have, or one has: ``same``, ``taken`` out of the earlier, ``added`` in the later."""

    kind: Literal["same", "taken", "added"]
    text: str


def compare(earlier: str, later: str) -> tuple[Change, ...]:
    """Return the stretches that lead from one text to the other, in order.

    All that is not ``added`` is the earlier text, all that is not ``taken`` the later.
    """
    before, after = _TOKEN.findall(earlier), _TOKEN.findall(later)
    changes: list[Change] = []
    for kind, start, end, new_start, new_end in SequenceMatcher(None, before, after, autojunk=False).get_opcodes():
        if kind == "equal":
            changes.append(Change("same", "".join(before[start:end])))
            continue
        if end > start:
            changes.append(Change("taken", "".join(before[start:end])))
        if new_end > new_start:
            changes.append(Change("added", "".join(after[new_start:new_end])))
    return tuple(changes)
