"""Texts that clients write, joined from their parts.

A part is not acknowledged before the whole is stored: carriers send again what is not. Where the rest does not come in
time, what there is is handed on with gaps, as her words must not wait for a part that is lost. What was held when a
line drops is forgotten here and comes again. A text stored just before a line dropped may come twice.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from aftercare.transports.base import ReplyNote
from aftercare.transports.smpp import pdu, texts
from aftercare.transports.smpp.texts import Piece

_INTERNATIONAL = 1  # type of number, 5.2.5


@dataclass(frozen=True, slots=True)
class Whole:
    """A text as it goes on, with the sequence numbers of the units that it acknowledges."""

    note: ReplyNote
    sequences: tuple[int, ...]


@dataclass(slots=True, eq=False)
class _Held:
    first: pdu.Message
    since: float
    pieces: dict[int, Piece] = field(default_factory=dict)
    sequences: list[int] = field(default_factory=list)


class Joiner:
    """Holds the parts of texts that are not whole; ``patience`` in seconds, moments of any one clock."""

    def __init__(self, patience: float) -> None:
        self.patience = patience
        self._held: dict[tuple[pdu.Address, pdu.Address, int, int], _Held] = {}

    def add(self, sequence: int, message: pdu.Message, now: float) -> Whole | None:
        """Take one incoming unit; return the text where it is whole now. A part that comes again counts once."""
        piece = texts.piece_of(message)
        if piece.total == 1:
            return _whole(message, [piece], 1, [sequence])
        key = message.source, message.destination, piece.reference, piece.total
        held = self._held.setdefault(key, _Held(message, now))
        held.pieces[piece.number] = piece
        held.sequences.append(sequence)
        if len(held.pieces) < piece.total:
            return None
        del self._held[key]
        return _whole(held.first, held.pieces.values(), piece.total, held.sequences)

    def overdue(self, now: float) -> list[Whole]:
        """Return what has waited too long for its rest, as far as it is there."""
        late = [(key, held) for key, held in self._held.items() if now - held.since >= self.patience]
        for key, _ in late:
            del self._held[key]
        return [_whole(held.first, held.pieces.values(), key[3], held.sequences) for key, held in late]

    @property
    def next_due(self) -> float:
        """When `overdue` has something next; infinite where nothing is held."""
        return min((held.since for held in self._held.values()), default=math.inf) + self.patience

    def forget(self) -> None:
        """Forget what is held: the line has dropped."""
        self._held.clear()


def _whole(message: pdu.Message, pieces: Iterable[Piece], total: int, sequences: Sequence[int]) -> Whole:
    pieces = list(pieces)
    raw = " ".join(f"{piece.data_coding}:{piece.octets.hex()}" for piece in pieces)
    note = ReplyNote(
        provider_ref="",  # SMPP 3.4 gives none
        from_address=number_of(message.source),
        to_address=number_of(message.destination),
        text=texts.text_of(pieces, total),
        raw=raw,
    )
    return Whole(note, tuple(sequences))


def number_of(address: pdu.Address) -> str:
    """Return an address as numbers are kept here: E.164 where the carrier says that it is international."""
    if address.ton == _INTERNATIONAL and address.text.isdigit():
        return f"+{address.text}"
    return address.text
