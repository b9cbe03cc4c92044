"""The usual reading of an event, where the owner has set no pattern: which service, and for whom.

The title is split where people split titles ("fill - Mia Lopez", "Mia Lopez (full set)", "Lift with Mia"); the part
that is a known service is the service and the rest is the client. An attendee who is not the organizer is the client.
Lines of the description like ``Phone: 0412 345 678`` fill the column that they name.
"""

import html
import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field

from studio.book.cells import known_service
from studio.book.rows import COLUMNS, Context
from studio.book.text import fold

TITLE_LENGTH = 500
PARTS = 12

_BETWEEN = re.compile(r"( -+ ?|-+ | ?[–—]+ ?| ?[:|/,()] ?| w/ ?| (?:with|for|con|para) )", re.IGNORECASE)
_KEY_AND_VALUE = re.compile(r"\s*([^\W\d_][\w .-]{0,30}?)\s*:\s*(\S.*)")
_BREAK = re.compile(r"<(?:br|/p|/div|/li)\b[^<>]{0,200}>", re.IGNORECASE)
_MARKUP = re.compile(r"</?[a-z][^<>]{0,500}>", re.IGNORECASE)

# What people write before a colon, without spaces and capitals, to the column it fills. "client" is a reference if it
# holds a digit and a name if not.
_KEYS = {name.replace("_", ""): name for name in COLUMNS if name not in ("visit", "starts_at", "minutes")} | {
    "phone": "mobile",
    "telephone": "mobile",
    "tel": "mobile",
    "cell": "mobile",
    "cellphone": "mobile",
    "mobilephone": "mobile",
    "phonenumber": "mobile",
    "teléfono": "mobile",
    "móvil": "mobile",
    "mail": "email",
    "emailaddress": "email",
    "correo": "email",
    "name": "name",
    "clientname": "name",
    "nombre": "name",
    "clientid": "client",
    "clientnumber": "client",
    "cliente": "client",
    "treatment": "service",
    "servicio": "service",
    "lashartist": "artist",
    "artista": "artist",
    "lot": "adhesive_lot",
    "lotnumber": "adhesive_lot",
    "lenses": "wears_lenses",
    "contactlenses": "wears_lenses",
}


@dataclass(frozen=True, slots=True)
class Person:
    """Someone on an event's list of attendees; either may be blank."""

    name: str
    email: str


@dataclass(slots=True)
class Reading:
    """What an event says: texts by field (``name`` is first and last together), and the parts of its title."""

    fields: dict[str, str] = field(default_factory=dict)
    parts: list[str] = field(default_factory=list)


def read(summary: str, description: str, people: Sequence[Person], context: Context) -> Reading:
    """Return what the event says about the service and the client; what it does not say is not in ``fields``."""
    reading = Reading(_described(description))
    title = " ".join(summary.split())[:TITLE_LENGTH]
    parts = _parts(title)
    reading.parts = [text for _, text in parts]
    service, rest = _service(title, parts, context)
    if service:
        reading.fields.setdefault("service", service)
    elif "service" not in reading.fields:
        rest = []  # no table knows any part: which one is the client cannot be told either
    _name_client(reading.fields, people, rest)
    return reading


def unknown_name(parts: Sequence[str], client: str, seen: Counter[str]) -> str:
    """Return the part of a title that is most likely the name of a service that no table has.

    ``seen`` counts the (folded) parts of all such titles: names of services come back, those of clients less often.
    """
    others = [part for part in parts if fold(part) != fold(client)] or list(parts)
    return max(others, key=lambda part: seen[fold(part)], default="")


def _described(description: str) -> dict[str, str]:
    if "<" in description:
        description = html.unescape(_MARKUP.sub("", _BREAK.sub("\n", description)))
    fields: dict[str, str] = {}
    for line in description.splitlines():
        found = _KEY_AND_VALUE.fullmatch(line[:TITLE_LENGTH])
        column = _KEYS.get(re.sub(r"[\s._-]", "", fold(found[1]))) if found else None
        if found and column:
            fields.setdefault(column, found[2].strip())
    if not any(map(str.isdigit, fields.get("client", "0"))):
        fields.setdefault("name", fields.pop("client"))
    return fields


def _parts(title: str) -> list[tuple[str, str]]:
    """Return the parts of a title, each with the mark before it."""
    pieces = ["", *_BETWEEN.split(title)]
    pairs = [(pieces[index].strip().casefold(), pieces[index + 1].strip()) for index in range(0, len(pieces) - 1, 2)]
    return [(mark, text) for mark, text in pairs if text][:PARTS]


def _service(title: str, parts: list[tuple[str, str]], context: Context) -> tuple[str, list[tuple[str, str]]]:
    """Return the longest known service in the title, as written, and the parts beside it."""
    if known_service(title, context) is not None:
        return title, []
    best, rest = "", parts
    at: list[int] = []
    end = 0
    for _, text in parts:
        at.append(title.index(text, end))
        end = at[-1] + len(text)
    for first in range(len(parts)):
        for last in range(first, len(parts)):
            name = title[at[first] : at[last] + len(parts[last][1])]
            name += ")" * (name.count("(") - name.count(")"))
            if len(name) > len(best) and known_service(name, context) is not None:
                best, rest = name, parts[:first] + parts[last + 1 :]
    return best, rest


def _name_client(fields: dict[str, str], people: Sequence[Person], rest: list[tuple[str, str]]) -> None:
    name, artist = _names(rest)
    person = _client_among(people, fields.get("name", "") or name)
    if person and person.email:
        fields.setdefault("email", person.email)
    if person and person.name:
        name = person.name
    if name and not _named(fields):
        fields["name"] = name
    if artist:
        fields.setdefault("artist", artist)


def _named(fields: dict[str, str]) -> bool:
    return bool(fields.get("name") or fields.get("first_name"))


def _client_among(people: Sequence[Person], name: str) -> Person | None:
    if len(people) == 1:
        return people[0]
    same = [person for person in people if person.name and fold(person.name) == fold(name)]
    return same[0] if len(same) == 1 else None


def _names(rest: list[tuple[str, str]]) -> tuple[str, str]:
    """Return the client's and the artist's name in the parts beside the service; blank where it cannot be told."""
    for_her = [text for mark, text in rest if mark in ("for", "para")]
    with_whom = [text for mark, text in rest if mark in ("with", "con", "w/")]
    if len(for_her) == 1 and len(with_whom) == 1:
        return for_her[0], with_whom[0]
    if len(rest) > 1:
        rest = [(mark, text) for mark, text in rest if mark != "("] or rest  # a remark behind the name
    if len(rest) == 1:
        return rest[0][1], ""
    if len(rest) == 2 and rest[1][0] == ",":
        return f"{rest[1][1]} {rest[0][1]}", ""  # Lopez, Mia
    return "", ""
