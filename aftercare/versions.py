"""The owner's versions of wordings, beside the first wordings that come with the service.

A slot is one text that can be edited: an occasion, a kind (a service, or an answer's kind; '' serves all others), a
step, a channel and a language. Slots are the files of first wordings; the owner's newest version of a slot is in force,
and a version with a blank body puts the first wording back.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from functools import cache
from typing import Any

from django.core.exceptions import ValidationError
from django.db import IntegrityError, transaction
from django.db.models import Max, QuerySet
from django.utils.translation import gettext as _

from aftercare.core import say
from aftercare.core.fields import kind_of
from aftercare.models import Wording
from aftercare.wording import MESSAGES, Finder, WordingError, Words, first_wording
from studio.models import Staff, Studio

CHANNELS = ("sms", "email")
FIXED = ("caution", "how_to_stop")  # blocks that go into other wordings; nobody drops or changes them here


@dataclass(frozen=True, slots=True, order=True)
class Slot:
    """One text that can be edited."""

    occasion: str
    kind: str
    step: int
    channel: str
    language: str

    @property
    def variant(self) -> str:
        """Its kind and step in an address: ``any``, ``removal.0``, ``full_set.1``."""
        return f"{self.kind}.{self.step}" if self.kind else "any"

    @property
    def is_fixed(self) -> bool:
        return self.occasion in FIXED

    def first(self) -> Words:
        """Return the wording that comes with the service."""
        return first_wording(self.occasion, self.kind, self.step, self.channel, self.language)


@cache
def slots() -> tuple[Slot, ...]:
    """Return every slot there is, in the order of their names."""
    return tuple(sorted(_found()))


def _found() -> Iterator[Slot]:
    for file in MESSAGES.glob("*/*/*.txt"):
        channel, *rest = file.stem.split(".")
        kind = rest[0] if rest else ""
        step = int(rest[1]) if len(rest) > 1 else 0
        if channel in CHANNELS:
            yield Slot(file.parent.parent.name, kind, step, channel, file.parent.name)


def slot_of(occasion: str, kind: str, step: int, channel: str, language: str) -> Slot | None:
    """Return the most exact slot for a message, as ``first_wording`` does; None where there is none."""
    spoken, name = say.language_of(language), kind_of(kind)
    exact = (Slot(occasion, name, step, channel, spoken), Slot(occasion, name, 0, channel, spoken))
    known = _known()
    return next((slot for slot in (*exact, Slot(occasion, "", 0, channel, spoken)) if slot in known), None)


def slot_at(occasion: str, variant: str, channel: str, language: str) -> Slot | None:
    """Return the slot that an address names, or None."""
    named = (occasion, variant, channel, language)
    return next((slot for slot in slots() if (slot.occasion, slot.variant, slot.channel, slot.language) == named), None)


@cache
def _known() -> frozenset[Slot]:
    return frozenset(slots())


def newest(studio: Studio) -> dict[Slot, Wording]:
    """Return the owner's newest version of each slot that she ever changed. One query."""
    found: dict[Slot, Wording] = {}
    for row in Wording.objects.filter(studio=studio).select_related("by").order_by("version"):
        found[_slot(row)] = row
    return found


def finder(studio: Studio) -> Finder:
    """Return what finds the wording in force in this studio. One query now, none later."""
    own = newest(studio)

    def find(occasion: str, kind: str, step: int, channel: str, language: str) -> Words:
        slot = slot_of(occasion, kind, step, channel, language)
        row = own.get(slot) if slot and not slot.is_fixed else None
        if row is not None and row.body:
            return Words(row.subject, row.body)
        return first_wording(occasion, kind, step, channel, language)

    return find


def history(studio: Studio, slot: Slot) -> list[Wording]:
    """Return the owner's versions of a slot, newest first."""
    rows = _rows(studio, slot)
    return list(rows.select_related("by").order_by("-version"))


def save(studio: Studio, slot: Slot, words: Words, *, by: Staff, now: datetime, seen: int) -> Wording:
    """Add a version; a blank body puts the first wording back. The words were checked before.

    ``seen`` is the version on which it builds: raises ValidationError where someone saved another meanwhile, and for a
    fixed block.
    """
    if slot.is_fixed:
        raise ValidationError(_("This text is fixed: it carries the caution, or the way to stop."))
    if slot not in _known():
        raise WordingError(f"There is no wording {slot}.")
    rows = _rows(studio, slot)
    conflict = ValidationError(_("Someone saved this wording meanwhile: look at it again, then change it."))
    try:
        with transaction.atomic():
            last = rows.aggregate(last=Max("version"))["last"] or 0
            if last != seen:
                raise conflict
            return Wording.objects.create(
                **_columns(slot),
                studio=studio,
                version=last + 1,
                subject=words.subject.strip(),
                body=words.body.strip(),
                at=now,
                by=by,
            )
    except IntegrityError as error:
        raise conflict from error


def _rows(studio: Studio, slot: Slot) -> QuerySet[Wording]:
    return Wording.objects.filter(studio=studio, **_columns(slot))


def _slot(row: Wording) -> Slot:
    return Slot(row.occasion, row.kind, row.step, row.channel, row.language)


def _columns(slot: Slot) -> dict[str, Any]:
    return {
        "occasion": slot.occasion,
        "kind": slot.kind,
        "step": slot.step,
        "channel": slot.channel,
        "language": slot.language,
    }
