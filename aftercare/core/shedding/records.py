"""Many clients' readings as arrays, oldest set first; equal readings are stored once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from aftercare.core.shedding.eye import FINEST, step_of
from aftercare.core.shedding.renewal import Floats
from aftercare.core.shedding.values import History, LashSet

Ints = NDArray[np.int64]
MOST_SETS = 24  # of one client that are looked at: the newest; older ones say nothing more


@dataclass(frozen=True, slots=True)
class Steps:
    """In which step each artist reads, and the studio as a whole."""

    studio: float
    artists: dict[str, float]

    @classmethod
    def of(cls, sets: Sequence[Sequence[LashSet]]) -> Steps:
        """Tell the steps from all that was read of each client's ``sets``; of too few of one artist, the studio's."""
        by_artist: dict[str, list[float]] = {}
        for seen in (seen for hers in sets for one in hers for seen in one.seen):
            by_artist.setdefault(seen.artist, []).append(seen.share)
        studio = step_of(share for shares in by_artist.values() for share in shares)
        return cls(studio, {artist: step_of(shares, studio) for artist, shares in by_artist.items()})

    def at(self, artist: str) -> float:
        """Return the step, as a share, in which an artist reads; the studio's where it is not known."""
        return self.artists.get(artist, self.studio)


@dataclass(frozen=True, slots=True)
class Kinds:
    """The different readings: after how many days, which share, in which step, by whom. Arrays of one length."""

    day: Ints
    share: Floats
    step: Floats
    artist: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Records:
    """Readings of past sets, one a set (its last): ``kind`` and ``lot`` have shape (clients, sets), -1 is none.

    Clients stand in the order of how many such sets they have, most first; ``order`` says where they came from.
    """

    order: Ints
    count: Ints
    kind: Ints
    lot: Ints
    kinds: Kinds
    lots: tuple[str, ...]


def seen_sets(history: History) -> tuple[LashSet, ...]:
    """Return her sets of which anything was seen, oldest first, with the one that she wears."""
    hers = history.past if history.worn is None else (*history.past, history.worn)
    return tuple(one for one in hers if one.seen)


def pack(sets: Sequence[Sequence[LashSet]], steps: Steps) -> Records:
    """Return the last reading of each set of these clients as arrays; each client's sets oldest first, all seen."""
    known: dict[tuple[int, float, float, str], int] = {}
    lots: dict[str, int] = {"": 0}
    rows: list[list[tuple[int, int]]] = []
    for hers in sets:
        rows.append(
            [
                (known.setdefault(kind_of(one, -1, steps), len(known)), lots.setdefault(one.lot, len(lots)))
                for one in hers[-MOST_SETS:]
            ]
        )
    count = np.array([len(row) for row in rows], int)
    order = np.argsort(-count, kind="stable")
    widest = int(count.max(initial=0))
    kind = np.full((len(rows), widest), -1)
    lot = np.full((len(rows), widest), -1)
    for place, index in enumerate(order):
        for column, (reading, which) in enumerate(rows[index]):
            kind[place, column], lot[place, column] = reading, which
    return Records(order, count[order], kind, lot, kinds_of(list(known)), tuple(lots))


def kind_of(one: LashSet, which: int, steps: Steps) -> tuple[int, float, float, str]:
    """Return what makes one reading of a set equal to another: days, share in its step, step, artist."""
    seen = one.seen[which]
    step = max(steps.at(seen.artist), FINEST)
    return (seen.on - one.on).days, round(round(seen.share / step) * step, 6), step, seen.artist


def kinds_of(keys: Sequence[tuple[int, float, float, str]]) -> Kinds:
    """Return readings told apart by `kind_of` as arrays: days, shares in their steps, steps, artists."""
    days, shares, steps, artists = zip(*keys, strict=True) if keys else ((), (), (), ())
    return Kinds(np.array(days, int), np.array(shares, float), np.array(steps, float), tuple(artists))
