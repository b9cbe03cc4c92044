"""The owner's pattern: where in a calendar's event the service and the client stand.

One line for each place, with the fields in braces::

    SUMMARY: {service} - {first_name} {last_name}
    DESCRIPTION: Phone {mobile}
    DESCRIPTION: Artist: {artist}

Before the colon stands the place; what is outside braces must be there, whatever its capitals and spaces. In places of
several lines each line is tried. Of several lines for ``SUMMARY`` the first that fits is taken. ``{name}`` is first and
last name together; ``{ignore}`` is whatever stands there; ``{{`` and ``}}`` are braces themselves.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches

from django.utils.translation import gettext as _

from studio.book.rows import COLUMNS

PLACES = ("SUMMARY", "DESCRIPTION", "LOCATION", "ATTENDEE", "CATEGORIES", "COMMENT", "CONTACT")
# When a visit is, how long it takes and what it is called in the book: an event says so itself.
FIELDS = (*(name for name in COLUMNS if name not in ("visit", "starts_at", "minutes")), "name", "ignore")
LINES = 20
LINE_LENGTH = 300
TEXT_LENGTH = 500

_ONE_WORD = ("first_name", "last_name", "client", "email", "share_left")
_DASH = "[-–—]"
_PIECE = re.compile(r"\{\{|\}\}|\{([^{}]*)\}|[{}]|[^{}]+")


class PatternError(ValueError):
    """A pattern that cannot be used: a sentence with its line, column (both from 1) and the cure."""

    def __init__(self, line: int, column: int, problem: str) -> None:
        super().__init__(_("Line {line}, column {column}: {problem}").format(line=line, column=column, problem=problem))
        self.line = line
        self.column = column


@dataclass(frozen=True, slots=True)
class Pattern:
    """A pattern ready to be used: for each line its place and what to look for."""

    lines: tuple[tuple[str, re.Pattern[str]], ...]

    def read(self, places: Mapping[str, str]) -> dict[str, str]:
        """Return the texts of the fields found, from the texts of an event's places."""
        fields: dict[str, str] = {}
        settled: set[str] = set()
        for place, wanted in self.lines:
            if place in settled:
                continue
            found = _first(wanted, places.get(place, ""))
            if found is not None and place == "SUMMARY":
                settled.add(place)
            for name, text in (found or {}).items():
                fields.setdefault(name, text)
        return fields


def _first(wanted: re.Pattern[str], text: str) -> dict[str, str] | None:
    for line in text.splitlines():
        line = " ".join(line.split())
        found = wanted.fullmatch(line) if len(line) <= TEXT_LENGTH else None
        if found:
            return {name: text.strip() for name, text in found.groupdict().items() if text.strip()}
    return None


def compile(text: str) -> Pattern:
    """Return the owner's pattern ready for use. Raises :class:`PatternError`."""
    lines: list[tuple[str, re.Pattern[str]]] = []
    named: set[str] = set()
    numbered = [(number, line) for number, line in enumerate(text.splitlines(), 1) if line.strip()]
    for number, line in numbered:
        if len(lines) == LINES:
            raise PatternError(
                number,
                1,
                _("there are more than {lines} lines; remove the ones that are not needed.").format(lines=LINES),
            )
        if len(line) > LINE_LENGTH:
            raise PatternError(
                number,
                LINE_LENGTH + 1,
                _("the line is too long; shorten it to {line_length} characters.").format(line_length=LINE_LENGTH),
            )
        place, start = _place(number, line)
        pieces = _pieces(number, line, start)
        named.update(name for name, _, _ in pieces if name)
        lines.append((place, _expression(number, pieces)))
    last = numbered[-1][0] if numbered else 1
    if "service" not in named:
        raise PatternError(last, 1, _("no line says where the service stands; write {service} in its place."))
    if not named & {"name", "first_name"}:
        raise PatternError(last, 1, _("no line says where the client's name stands; write {name} in its place."))
    return Pattern(tuple(lines))


def _place(number: int, line: str) -> tuple[str, int]:
    head, colon, _rest = line.partition(":")
    place = head.strip().upper()
    if not colon or place not in PLACES:
        problem = _('the line does not begin with a place and a colon; write one of {names}, like "SUMMARY:".').format(
            names=", ".join(PLACES)
        )
        raise PatternError(number, 1, problem)
    return place, len(head) + 1


def _pieces(number: int, line: str, start: int) -> list[tuple[str, str, int]]:
    """Return (field, literal text, column) for each part of the line; one of the first two is blank."""
    pieces: list[tuple[str, str, int]] = []
    for found in _PIECE.finditer(line, start):
        column, part = found.start() + 1, found.group()
        if found[1] is not None:
            pieces.append((_field(number, column, found[1]), "", column))
            continue
        if part in ("{", "}"):
            raise PatternError(
                number,
                column,
                _('a lone "{part}"; write a field like {{service}}, or "{twice}".').format(part=part, twice=part * 2),
            )
        literal = {"{{": "{", "}}": "}"}.get(part, part)
        if pieces and not pieces[-1][0]:
            literal = pieces.pop()[1] + literal
        pieces.append(("", literal, column))
    _check_order(number, line, pieces)
    return pieces


def _field(number: int, column: int, text: str) -> str:
    name = "_".join(text.casefold().replace("-", " ").split())
    if name in FIELDS:
        return name
    if name in COLUMNS:
        raise PatternError(
            number, column, _('the event itself says its "{name}"; remove it or write {{ignore}}.').format(name=name)
        )
    near = get_close_matches(name[:40], FIELDS, n=1)
    problem = (
        _('"{{{text}}}" is no field; write {like}.') if near else _('"{{{text}}}" is no field; write one of {like}.')
    )
    like = ", ".join(f"{{{field}}}" for field in near or FIELDS)
    raise PatternError(number, column, problem.format(text=text[:40], like=like))


def _check_order(number: int, line: str, pieces: list[tuple[str, str, int]]) -> None:
    names = [name for name, _, _ in pieces if name]
    if not names:
        raise PatternError(number, len(line) + 1, _("the line has no field; write one, like {service}."))
    seen: set[str] = set()
    before, between = "", "start"
    for name, literal, column in pieces:
        if not name:
            between = literal
            continue
        if name in seen:
            raise PatternError(
                number,
                column,
                _('"{{{name}}}" stands twice in the line; write {{ignore}} for one of them.').format(name=name),
            )
        if before and not between.strip() and not (between and before in _ONE_WORD):
            problem = _(
                "nothing tells where {{{before}}} ends and {{{name}}} begins; write a mark such as - between them."
            ).format(before=before, name=name)
            raise PatternError(number, column, problem)
        if name != "ignore":
            seen.add(name)
        before, between = name, ""


def _expression(number: int, pieces: list[tuple[str, str, int]]) -> re.Pattern[str]:
    # Each field reaches to the first place where the text after it stands, and no further: the atomic groups never go
    # back, so that the work grows with the text and not with its square or worse.
    parts: list[str] = []
    for index, (name, literal, _column) in enumerate(pieces):
        if not name:
            if index == 0:
                parts.append(_literal(literal, first=True, last=len(pieces) == 1))
            continue
        group = f"(?P<{name}>" if name != "ignore" else "(?:"
        if index + 1 == len(pieces):
            parts.append(f"{group}.+)")
        else:
            last = index + 2 == len(pieces)
            after = _literal(pieces[index + 1][1], first=False, last=last)
            parts.append(f"(?>{group}.+?){after}{'$' if last else ''})")
    return re.compile("".join(parts), re.IGNORECASE)


def _literal(text: str, *, first: bool, last: bool) -> str:
    """Return the expression for text between fields, in lines whose spaces are single.

    A dash that has spaces about it wants at least one, or it would be found inside "touch-up". Beside any other mark a
    space may be there or not; between letters it must.
    """
    text = re.sub(r"\s+", " ", text)
    if first:
        text = text.lstrip()
    if last:
        text = text.rstrip()
    parts: list[str] = []
    for found in re.finditer(r" ?[-–—] ?| |[^ –—-]+", text):
        piece = found.group()
        bare = piece.strip()
        if bare in ("-", "–", "—"):
            parts.append(f"(?: {_DASH} |{_DASH} | {_DASH})" if " " in piece else _DASH)
        elif bare:
            parts.append(re.sub(r"([^\W_]+)|(\W|_)+", lambda run: _run(run.group(), letters=bool(run[1])), bare))
        else:
            beside = text[max(found.start() - 1, 0) : found.start()] + text[found.end() : found.end() + 1]
            parts.append(" " if beside.isalnum() or not beside else " ?")
    return "".join(parts)


def _run(text: str, *, letters: bool) -> str:
    return re.escape(text) if letters else f" ?{re.escape(text)} ?"
