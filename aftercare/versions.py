"""The owner's versions of wordings, beside the first wordings that come with the service.

A slot is one text that can be edited: an occasion, a kind (a service, or an answer's kind; '' serves all others), a
step (0 serves all others), a channel and a language. There is one for each file of first wordings; the owner adds
others, for a service or a step of its own and in further languages. Her newest version of a slot is in force; one with
a blank body puts the first wording back, or ends a slot that she added.

In a further language a wording serves only what it is as exact for as the first wordings are: a removal's aftercare
never goes in the words of any other service because nobody has translated it. What is missing falls back to the
studio's first language.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, datetime
from functools import cache, lru_cache
from typing import Any

from django.core.exceptions import ValidationError
from django.db import IntegrityError, transaction
from django.db.models import Max, QuerySet
from django.utils.translation import gettext as _

from aftercare.core import say
from aftercare.core.fields import SERVICE_NAMES, kind_of
from aftercare.models import Wording
from aftercare.wording import MESSAGES, Finder, WordingError, Words, first_wording
from studio.models import Staff, Studio

CHANNELS = ("sms", "email")
CAUTION = "caution"
FIXED = frozenset({"how_to_stop"})  # goes into other wordings; nobody drops or changes it here
_SERVICES = frozenset(SERVICE_NAMES["en"]) - {""}
_SETS = frozenset({"full_set", "fill"})
# For which services and steps the owner may add a wording: those that the table of moments gives messages.
ADDABLE: dict[str, tuple[frozenset[str], tuple[int, ...]]] = {
    "prepare": (_SERVICES, (0, 1)),
    "patch_test": (_SETS, (0,)),
    "care": (_SERVICES - {"consultation"}, (0,)),
    "check": (_SERVICES - {"consultation", "touch_up"}, (0, 1, 2, 3)),
    "fill_due": (_SETS, (0,)),
    "full_set_due": (_SETS, (0,)),
}


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
        """Its kind and step in an address: ``any``, ``any.2``, ``removal.0``, ``full_set.1``."""
        if not self.kind:
            return f"any.{self.step}" if self.step else "any"
        return f"{self.kind}.{self.step}"

    @property
    def path(self) -> str:
        """Its name in an address, and with a version behind it on each message."""
        return f"{self.occasion}/{self.variant}/{self.channel}/{self.language}"

    @property
    def is_fixed(self) -> bool:
        return self.occasion in FIXED

    @property
    def is_caution(self) -> bool:
        """Whether it can be added to, and changed only with a professional's name."""
        return self.occasion == CAUTION

    @property
    def is_first(self) -> bool:
        """Whether a wording for it comes with the service."""
        return self in _known()

    def first(self) -> Words:
        """Return the wording that comes with the service; of a slot that was added, the one that it stands in for."""
        return first_wording(self.occasion, self.kind, self.step, self.channel, self.language)

    def at(self, version: int) -> str:
        """Name a version of it; 0 is the first wording."""
        return f"{self.path}@{version}"


@cache
def slots() -> tuple[Slot, ...]:
    """Return every slot that a first wording comes for, in the order of their names."""
    return tuple(sorted(_found()))


def _found() -> Iterator[Slot]:
    for file in MESSAGES.glob("*/*/*.txt"):
        channel, *rest = file.stem.split(".")
        kind = rest[0] if rest else ""
        step = int(rest[1]) if len(rest) > 1 else 0
        if channel in CHANNELS:
            yield Slot(file.parent.parent.name, kind, step, channel, file.parent.name)


@cache
def _known() -> frozenset[Slot]:
    return frozenset(slots())


@lru_cache(maxsize=4096)
def candidates(occasion: str, kind: str, step: int, channel: str, language: str) -> tuple[Slot, ...]:
    """Return the slots that may serve a message in a language, the most exact first.

    The last is that which the first wordings have for it; nothing that is less exact will do.
    """
    name = kind_of(kind)
    exact = dict.fromkeys([(name, step), (name, 0), ("", step), ("", 0)])
    found: list[Slot] = []
    for a_kind, a_step in exact:
        found.append(Slot(occasion, a_kind, a_step, channel, language))
        if replace(found[-1], language="en") in _known():
            break
    return tuple(found)


def slot_of(occasion: str, kind: str, step: int, channel: str, language: str) -> Slot | None:
    """Return the most exact slot with a first wording for a message, as ``first_wording`` does; None where none is."""
    last = candidates(occasion, kind, step, channel, say.language_of(language))[-1]
    return last if last in _known() else None


def slot_at(occasion: str, variant: str, channel: str, language: str) -> Slot | None:
    """Return the slot that an address names, be it there already or one that the owner may add; else None."""
    kind, dot, digits = variant.partition(".")
    if (dot and not (digits.isascii() and digits.isdigit() and len(digits) == 1)) or channel not in CHANNELS:
        return None
    slot = Slot(occasion, "" if kind == "any" else kind, int(digits or 0), channel, language)
    if slot.variant != variant or say.subtag(language) != language:
        return None
    return slot if _may_be(slot) else None


def _may_be(slot: Slot) -> bool:
    in_english = replace(slot, language="en")
    if in_english in _known():
        return not slot.is_fixed or slot in _known()
    kinds, steps = ADDABLE.get(slot.occasion, (frozenset(), ()))
    return slot.kind in {"", *kinds} and slot.step in steps


def is_language(code: str) -> bool:
    """Whether wordings can be written in it: a language's own letters, without a region."""
    return bool(code) and say.subtag(code) == code


def newest(studio: Studio) -> dict[Slot, Wording]:
    """Return the owner's newest version of each slot that she ever changed. One query."""
    found: dict[Slot, Wording] = {}
    for row in Wording.objects.filter(studio=studio).select_related("by").order_by("version"):
        found[_slot(row)] = row
    return found


def added(own: dict[Slot, Wording]) -> list[Slot]:
    """Return those of the owner's slots that no first wording comes for and that are in force."""
    return sorted(slot for slot, row in own.items() if not slot.is_first and (row.body or row.added))


def in_force(slot: Slot, row: Wording | None) -> Words | None:
    """Return the words of a slot as the owner's newest version has them; None where it has none."""
    if row is None or slot.is_fixed or not (row.body or row.added):
        first = slot.first() if slot.is_first else None
        return replace(first, source=slot.at(0)) if first else None
    if slot.is_caution:
        return caution(slot, row.body, row.added, row.version)
    return Words(row.subject, row.body, slot.language, slot.at(row.version))


def caution(slot: Slot, body: str, added_words: str, version: int = 0) -> Words:
    """Return a caution with what the owner added below it; ``body`` '' is the one that comes with the service.

    In a language that none comes in, it stays in the first wordings' own.
    """
    first = slot.first()
    between = " " if slot.channel == "sms" else "\n\n"
    text = between.join(part for part in (body or first.body, added_words) if part)
    return Words("", text, slot.language if body else first.language, slot.at(version))


def finder(studio: Studio) -> Finder:
    """Return what finds the wording in force in this studio. One query now, none later."""
    own = newest(studio)

    @cache  # hundreds of texts of one sweep ask for the same few
    def find(occasion: str, kind: str, step: int, channel: str, language: str) -> Words:
        for spoken in dict.fromkeys((say.subtag(language), say.subtag(studio.language), "en")):
            for slot in candidates(occasion, kind, step, channel, spoken) if spoken else ():
                if words := in_force(slot, own.get(slot)):
                    return words
        return first_wording(occasion, kind, step, channel, language)

    return find


def history(studio: Studio, slot: Slot) -> list[Wording]:
    """Return the owner's versions of a slot, newest first."""
    rows = _rows(studio, slot)
    return list(rows.select_related("by").order_by("-version"))


@dataclass(frozen=True, slots=True)
class Seen:
    """The professional who has seen other words for a caution, and when."""

    by: str = ""
    on: date | None = None


NOBODY = Seen()


def save(
    studio: Studio,
    slot: Slot,
    words: Words,
    *,
    by: Staff,
    now: datetime,
    seen: int,
    addition: str = "",
    professional: Seen = NOBODY,
) -> Wording:
    """Add a version; a blank body puts the first wording back. The words were checked before.

    ``seen`` is the version on which it builds. Raises ValidationError where someone saved another meanwhile, for a
    fixed block, and for a caution in other words that no professional is named to have seen.
    """
    if slot.is_fixed:
        raise ValidationError(_("This text is fixed: it says how everyone can stop."))
    if not _may_be(slot):
        raise WordingError(f"There is no wording {slot}.")
    body = words.body.strip()
    if slot.is_caution and body == slot.first().body and slot.first().language == slot.language:
        body = ""  # its own words again: nothing to answer for
    _check_professional(slot, body, professional, now.astimezone(studio.zone).date())
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
                body=body,
                added=addition.strip() if slot.is_caution else "",
                seen_by=professional.by.strip() if slot.is_caution and body else "",
                seen_on=professional.on if slot.is_caution and body else None,
                at=now,
                by=by,
            )
    except IntegrityError as error:
        raise conflict from error


def _check_professional(slot: Slot, body: str, professional: Seen, today: date) -> None:
    if not slot.is_caution or not body:
        return
    if not professional.by.strip():
        raise ValidationError(
            {"seen_by": _("Name the clinician who has seen these words, or keep the caution and add to it instead.")}
        )
    if professional.on is None:
        raise ValidationError({"seen_on": _("Write the day on which the clinician has seen these words.")})
    if professional.on > today:
        raise ValidationError({"seen_on": _("This day is still to come: write the day on which they were seen.")})


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
