"""The owner's wordings as a page lists them: what is in force in each language, and who received which version."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cache

from babel import Locale
from babel.localedata import locale_identifiers
from django.db.models import Count
from django.utils.translation import get_language

from aftercare import versions
from aftercare.core import say
from aftercare.core.timing import Occasion
from aftercare.models import Message, Wording
from aftercare.versions import Slot
from aftercare.wording import WordingError, Words
from studio.models import Studio

ORDER = {str(occasion): place for place, occasion in enumerate(Occasion)}
# Occasions with a wording for any other service: the list names each service, so that none seems forgotten.
BY_SERVICE = ("prepare", "care", "check")


@dataclass(frozen=True, slots=True)
class Cell:
    """One slot of the list: the owner's newest version of it, and what goes instead where it has no words."""

    slot: Slot
    own: Wording | None
    instead: Slot | None

    @property
    def has_own(self) -> bool:
        return self.own is not None and bool(self.own.body or self.own.added)


@dataclass(frozen=True, slots=True)
class Row:
    """One text of the list, by each channel that it has."""

    occasion: str
    kind: str
    step: int
    sms: Cell | None
    email: Cell | None


def languages(studio: Studio, own: dict[Slot, Wording], asked: str = "") -> list[str]:
    """Return the languages to choose from: those of the first wordings, the owner's own, and the one asked for."""
    further = {slot.language for slot, row in own.items() if row.body or row.added} | {asked} - {""}
    return [*say.LANGUAGES, *sorted(further - set(say.LANGUAGES))]


def further_languages() -> list[tuple[str, str]]:
    """Return the languages that no first wording comes in and that dates can be said in, by name in her own."""
    return _further(say.language_of(get_language() or "en"))


@cache
def _further(reader: str) -> list[tuple[str, str]]:
    codes = {name for name in locale_identifiers() if len(name) == 2} - set(say.LANGUAGES)
    names = [(code, Locale.parse(code).get_display_name(reader) or code) for code in codes]
    return sorted(names, key=lambda language: language[1].casefold())


def rows(studio: Studio, own: dict[Slot, Wording], language: str, occasion: str = "") -> list[Row]:
    """Return every text that there is or might be in a language, whatever language it has words in."""
    shapes = {replace(slot, language=language) for slot in versions.slots()}
    shapes |= {replace(slot, language=language) for slot in versions.added(own)}
    shapes |= {
        Slot(about, kind, 0, channel, language)
        for about in BY_SERVICE
        for kind in versions.ADDABLE[about][0]
        for channel in ("sms", "email")
    }
    found: dict[tuple[str, str, int], dict[str, Cell]] = {}
    for slot in sorted(shapes):
        if occasion in ("", slot.occasion):
            found.setdefault((slot.occasion, slot.kind, slot.step), {})[slot.channel] = _cell(slot, own, studio)
    order = sorted(found, key=lambda text: (ORDER.get(text[0], len(ORDER)), text[0], not text[1], text))
    return [Row(*text, found[text].get("sms"), found[text].get("email")) for text in order]


def _cell(slot: Slot, own: dict[Slot, Wording], studio: Studio) -> Cell:
    used = _used(slot, own, studio)
    return Cell(slot, own.get(slot), None if used == slot else used)


def in_its_place(slot: Slot, studio: Studio) -> Slot | None:
    """Return the slot whose words go where this one has none of its own; None of one that the service came with."""
    if slot.is_first:
        return None
    others = {one: row for one, row in versions.newest(studio).items() if one != slot}
    return _used(slot, others, studio)


def words_in_its_place(slot: Slot, studio: Studio) -> Words | None:
    """Return these words."""
    instead = in_its_place(slot, studio)
    return versions.in_force(instead, versions.newest(studio).get(instead)) if instead else None


def _used(slot: Slot, own: dict[Slot, Wording], studio: Studio) -> Slot:
    for spoken in dict.fromkeys((slot.language, say.language_of(studio.language), "en")):
        for one in versions.candidates(slot.occasion, slot.kind, slot.step, slot.channel, spoken):
            if versions.in_force(one, own.get(one)):
                return one
    raise WordingError(f"Nothing goes for {slot}: there is a first wording for each.")


@dataclass(frozen=True, slots=True)
class Received:
    """How many got a version, and the last of them."""

    count: int
    latest: list[Message]


NEWEST = 8


def received(studio: Studio, slot: Slot, numbers: Iterable[int]) -> dict[int, Received]:
    """Return for each version (0: the first wording) who was sent it. Two queries and one more a version."""
    named = {slot.at(number): number for number in numbers}
    sent = Message.objects.filter(studio=studio, worded__in=list(named), handed_over_at__isnull=False)
    counts = dict(sent.order_by().values_list("worded").annotate(n=Count("pk")))
    return {
        number: Received(
            counts[worded],
            list(sent.filter(worded=worded).select_related("client", "staff").order_by("-handed_over_at")[:NEWEST]),
        )
        for worded, number in named.items()
        if worded in counts
    }
