"""The labelled replies, and how well a reader does on them."""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from aftercare.core.reading import Reading

CORPUS = Path(__file__).with_name("corpus")
SEEN = (
    "one",
    "two",
    "three",
    "ann",
    "cal",
    "dee",
    "fay",
    "kit",
    "liz",
    "mar",
    "nat",
    "sam",
    "tea",
    "uma",
    "viv",
    "wyn",
    "xia",
    "yan",
    "abe",
    "bea",
    "coy",
    "dot",
    "eve",
    "flo",
    "ida",
    "joy",
    "lou",
    "ned",
    "pam",
    "ros",
    "sid",
    "tom",
    "ulf",
    "wes",
    "many_signs",
    "many_emergencies",
    "many_harmless",
    "many_mixed",
    "yas",
    "many_wolves",
    "many_topics",
    "many_alarms",
    "many_words",
    "many_spanish",
    "many_odd",
    "many_stories",
    "many_hidden",
    "many_waning",
    "many_shed",
    "many_senas",
    "many_replies",
    "many_raves",
    "many_plain",
    "many_others",
    "many_now",
    "many_mezcla",
    "many_leave",
    "many_hints",
    "many_grumbles",
    "many_errands",
    "many_englishes",
    "many_dictated",
    "many_clear",
    "many_chat",
    "many_calma",
    "many_asks",
    "ken",
    "ivy",
)
# Measured as a whole, never read: see corpus/README.md.
UNSEEN = ("ora", "pip", "que", "rex", "gil", "hal", "xen", "gus", "eva")
URGENT = ("emergency", "same_day")
Row = dict[str, Any]


def seen(*, unseen: bool = False) -> list[Row]:
    """Return the replies that the reader is worked on with; or those that it is measured with."""
    return [row for hand in (UNSEEN if unseen else SEEN) for row in rows(CORPUS / f"{hand}.jsonl")]


def rows(file: Path) -> list[Row]:
    """Return the labelled replies of a file, one JSON object a line."""
    return [json.loads(line) for line in file.read_text(encoding="utf-8").splitlines() if line.strip()]


@dataclass(frozen=True, slots=True)
class Scores:
    """Shares, 0 to 1."""

    emergencies: float  # read as emergencies
    current: float  # current signs read as same day or emergency
    reached: float  # current signs that reach the artist in any way
    wolf: float  # harmless ones that cry wolf
    stops: float  # opt-outs obeyed
    false_stops: float  # others taken for one
    signs: float  # micro F1
    topics: float  # micro F1
    unread: float
    unread_en_es: float  # of the English and Spanish ones
    denied: float  # denied signs, micro F1
    sides: float  # the side right


def score(rows: Sequence[Row], read: Callable[[str], Reading]) -> Scores:
    pairs = [(row, read(row["text"])) for row in rows]
    urgent = [(row, found) for row, found in pairs if row["urgency"] in URGENT]
    harmless = [found for row, found in pairs if row["urgency"] == "none"]
    stops = [found for row, found in pairs if "stop" in row["about"]]
    others = [found for row, found in pairs if "stop" not in row["about"]]
    return Scores(
        emergencies=_share(found.urgency == "emergency" for row, found in urgent if row["urgency"] == "emergency"),
        current=_share(found.urgency in URGENT for _row, found in urgent),
        reached=_share(_reaches(found) for _row, found in urgent),
        wolf=_share(found.urgency in URGENT for found in harmless),
        stops=_share("stop" in found.about for found in stops),
        false_stops=_share("stop" in found.about for found in others),
        signs=_f1([(row["signs"], found.signs) for row, found in pairs]),
        topics=_f1([(row["about"], found.about) for row, found in pairs]),
        unread=_share(found.unread for _row, found in pairs),
        unread_en_es=_share(found.unread for row, found in pairs if row["lang"] in ("en", "es")),
        denied=_f1([(row["negated"], found.negated) for row, found in pairs]),
        sides=_share(found.side == row["side"] for row, found in pairs),
    )


def _reaches(found: Reading) -> bool:
    return found.urgency != "none" or found.unread or "irritation" in found.about


def _share(of: Any) -> float:
    values = [bool(one) for one in of]
    return sum(values) / max(1, len(values))


def _f1(pairs: Sequence[tuple[Sequence[str], Sequence[str]]]) -> float:
    both = sum(len(set(true) & {str(one) for one in read}) for true, read in pairs)
    return 2 * both / max(1, sum(len(set(true)) + len(set(read)) for true, read in pairs))
