"""Whose visit an event is, and for what."""

from studio.book import usual
from studio.book.drafts import Draft
from studio.book.events import Event
from studio.book.pattern import PLACES, Pattern
from studio.book.rows import Context
from studio.book.text import clean, fold

_NOT_PEOPLE = ("ROOM", "RESOURCE", "GROUP")
# What calendars write before the title of an event that was called off.
_PREFIXES = ("canceled:", "cancelled:", "cancelada:", "cancelado:")


def reading(event: Event, wanted: Pattern | None, context: Context) -> usual.Reading:
    """Return the texts of an event's fields, by the owner's pattern or in the usual way."""
    people = _people(event)
    if wanted:
        places = {place: event.text(place) for place in PLACES if place != "ATTENDEE"}
        places["ATTENDEE"] = "\n".join(f"{person.name} <{person.email}>".strip() for person in people)
        return usual.Reading(wanted.read(places))
    summary = event.text("SUMMARY").strip()
    if event.cancelled():
        for prefix in _PREFIXES:
            if fold(summary).startswith(prefix):
                summary = summary[len(prefix) :].strip()
    return usual.read(summary, event.text("DESCRIPTION"), people, context)


def _people(event: Event) -> list[usual.Person]:
    organizers = {_address(found.value).casefold() for found in event.all("ORGANIZER")}
    people: list[usual.Person] = []
    for found in event.all("ATTENDEE"):
        about = found.parameters
        email = _address(about.get("EMAIL", "") or found.value)
        if about.get("CUTYPE", "").upper() in _NOT_PEOPLE or email.casefold() in organizers - {""}:
            continue
        name = clean(about.get("CN", "").strip("\"'"))
        people.append(usual.Person("" if "@" in name else name, email))
    return people


def _address(value: str) -> str:
    value = value.strip()
    if value.lower().startswith("mailto:"):
        value = value[len("mailto:") :]
    return value if "@" in value and "/" not in value else ""


def split_name(fields: dict[str, str]) -> None:
    """Put ``name`` into ``first_name`` and ``last_name``: at the first space, or "Lopez, Mia" the other way round."""
    name = " ".join(fields.pop("name", "").split())
    if not name or "first_name" in fields:
        return
    last, comma, first = name.partition(", ")
    if not comma:
        first, _, last = name.partition(" ")
    fields["first_name"] = first
    if last:
        fields.setdefault("last_name", last)


def identify(draft: Draft) -> None:
    """Give the client a reference if the event has none: her address, else her number, else her name."""
    says = draft.client_says
    name = fold(f"{says.get('first_name', '')} {says.get('last_name', '')}")
    draft.client = draft.client or str(says.get("email", "")).lower() or str(says.get("mobile", "")) or name
