"""What became of every message of a fault, and everything about it that must not be."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

SENT_AGAIN = ("care", "check", "patch_test")  # after an unsure one; others are not
RESTS = ("handed_over", "delivered", "unsure")


@dataclass(frozen=True, slots=True)
class Fate:
    """One message: what it is, where it stands, its tries that nobody heard the end of, and how often it arrived."""

    occasion: str
    state: str
    leased: bool
    lost: int
    accepted: int


@dataclass(slots=True)
class Result:
    """What a fault left behind. ``seen`` is what else was counted, by name; ``faults`` what must not be."""

    name: str
    fates: list[Fate] = field(default_factory=list)
    seen: dict[str, object] = field(default_factory=dict)
    faults: list[str] = field(default_factory=list)

    def judge(self, messages: int) -> Result:
        """Add what must not be: lost, sent twice but by policy, not at rest, unsure for nothing."""
        found: Counter[str] = Counter()
        if len(self.fates) != messages:
            found[f"{len(self.fates)} messages instead of {messages}"] += 1
        for fate in self.fates:
            found.update(_wrong_with(fate))
        self.faults += [f"{number} × {fault}" for fault, number in found.items()]
        return self

    @property
    def _verdict(self) -> str:
        """One that was skipped has shown nothing."""
        return "FAILED" if self.faults else "not shown" if "skipped" in self.seen else "ok"

    def row(self) -> str:
        """Return the fault's line of the table."""
        accepted = Counter(min(fate.accepted, 2) for fate in self.fates)
        states = Counter(fate.state for fate in self.fates)
        told: dict[str, object] = dict(self.seen)
        if self.fates:  # some faults count by themselves
            counts = {"never": accepted[0], "once": accepted[1], "more": accepted[2], "unsure": states["unsure"]}
            told = {"messages": len(self.fates), **counts, **told}
        line = f"{self.name:34} " + "  ".join(f"{name} {value}" for name, value in told.items())
        return "\n".join([f"{line}  {self._verdict}", *(f"    {fault}" for fault in self.faults)])


def _wrong_with(fate: Fate) -> Iterable[str]:
    again = fate.occasion in SENT_AGAIN
    if fate.state not in RESTS or fate.leased:
        yield f"{fate.occasion} at no rest: {fate.state}"
    if fate.state in ("handed_over", "delivered") and not fate.accepted:
        yield f"{fate.occasion} lost"
    if fate.accepted > 1 and not (again and fate.accepted <= fate.lost + 1):
        yield f"{fate.occasion} sent {fate.accepted} times, {fate.lost} of them unheard"
    if fate.state == "unsure" and not fate.lost:
        yield f"{fate.occasion} unsure without a try that nobody heard the end of"
    if fate.state == "unsure" and again:
        yield f"{fate.occasion} unsure, and not sent again"


def fates(rows: Iterable[tuple[str, str, bool, int, str]], accepted: Mapping[str, int]) -> list[Fate]:
    """Put together what the database says (occasion, state, leased, lost, address) and how often each arrived."""
    return [
        Fate(occasion, state, leased, lost, accepted.get(address, 0)) for occasion, state, leased, lost, address in rows
    ]
