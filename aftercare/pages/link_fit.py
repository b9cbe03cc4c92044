"""Whether the link to her page fits into a text: in the one shown, and for the clients of late who get it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from aftercare import facts, versions
from aftercare.core.fields import Facts
from aftercare.core.reach import SMS, Purpose, reach
from aftercare.core.segments import cheaper, room
from aftercare.core.timing import REMINDERS
from aftercare.pages import recipients, served
from aftercare.versions import Slot
from aftercare.wording import MOST_WITH_LINK, Finder, WordingError, Words, compose, fields_used, page_may_be_missing
from studio.models import Studio


@dataclass(frozen=True, slots=True)
class LinkFit:
    """How a text and the link to her page get on.

    ``room`` is how many letters more the text that is shown may have with the link in it; below 0, how many are too
    many, and it goes without. Of ``clients`` of late who get it as a text, ``without`` get it without the link, the
    worst of them for ``over`` letters too many.
    """

    room: int
    clients: int = 0
    without: int = 0
    over: int = 0

    @property
    def too_many(self) -> int:
        """How many letters are too many in the text that is shown; 0 where the link fits."""
        return max(0, -self.room)


def look(studio: Studio, about: Slot, words: Words, shown: Facts, find: Finder, now: datetime) -> LinkFit | None:
    """Return how the link fits into the message ``about``; None where its wording has none that may be left out."""
    if about.channel != SMS or "page" not in fields_used(words.body) or not page_may_be_missing(words.body):
        return None
    here = _room(words, shown, find)
    if here is None:
        return None
    rooms = list(_rooms(studio, about, words, find, now))
    tight = [one for one in rooms if one < 0]
    return LinkFit(here, len(rooms), len(tight), -min(tight, default=0))


def _room(words: Words, given: Facts, find: Finder) -> int | None:
    """Return the letters left of two texts with the link in them; None where she has no page to be led to."""
    if not given.page:
        return None
    return room(cheaper(compose(words, given, find, on_page=True).body), MOST_WITH_LINK)


def _rooms(studio: Studio, about: Slot, words: Words, find: Finder, now: datetime) -> Iterator[int]:
    """Give the room in the text of each client of late who gets it: by text, in this wording, of her own visit."""
    own = versions.newest(studio)
    purpose = Purpose.REMINDERS if about.occasion in REMINDERS else Purpose.VISITS
    books = facts.load([one.pk for one in recipients.of_late(studio, now)], now)
    for book in books.values():
        language = book.client.language or studio.language
        visit = recipients.visit_for(about, book, now)
        if visit is None or reach(book.contact, purpose).channel != SMS:
            continue
        if not served.serves(about, visit.service, language, studio, own):
            continue
        try:
            here = _room(words, recipients.facts_in(book, about, now), find)
        except WordingError:
            continue
        if here is not None:
            yield here
