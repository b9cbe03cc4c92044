"""Occasion, client and visit in; the words that reach her out, in her language.

A first wording is a file, ``templates/messages/<occasion>/<language>/<channel>[.<kind>][.<step>].txt``: the most exact
one that is there holds. An e-mail's first line is its subject. Two blocks lie beside the occasions and are put in as
fields: ``caution`` and ``how_to_stop``.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import date, datetime, time
from functools import lru_cache
from itertools import product
from pathlib import Path
from typing import Any, Protocol, TypeGuard

from django.conf import settings
from liquid import Environment as LiquidEnvironment
from liquid import Mode
from liquid.exceptions import LiquidError
from liquid.template import BoundTemplate
from liquid.undefined import FalsyStrictUndefined

from aftercare.core import placeholders, say, wordcheck
from aftercare.core.fields import BLOCKS, FIELDS, Facts, Value, kind_of
from aftercare.core.fields import values as plain_values
from aftercare.core.segments import cheaper, measure

MESSAGES = Path(__file__).resolve().parent.parent / "templates" / "messages"
_TAGS = frozenset({"content", "output", "illegal", "if", "unless", "comment"})
_SUBJECT = "Subject:"
_MARK = "\x1e"  # "record separator": no name, no wording and no road holds one
MOST_WITH_LINK = 2  # segments: a link that would make a text dearer is left out where the wording allows it
_IF_PAGE = re.compile(r"\{%-?\s*if page\s*-?%\}.*?\{%-?\s*(?:else|elsif|endif)\b", re.DOTALL)
_LINK = re.compile(r"https?://[^\s{}<>\"']+[^\s{}<>\"'.,;:!?)]")
_FLAGS = frozenset({"moved", "first", "waiver_due", "under_18", "wears_lenses"})


class WordingError(ValueError):
    """A wording cannot be read or filled in. The message names the place and the cure."""


@dataclass(frozen=True, slots=True)
class Words:
    """A text: its source with fields, or filled in. An SMS has no subject.

    ``language`` is the one that it was found in ('': as asked), ``source`` the wording and version that it is. Filled
    in, it knows its ``caution`` as it stands in the body, and the ``links`` that its owner or the service put there.
    """

    subject: str
    body: str
    language: str = field(default="", compare=False)
    source: str = field(default="", compare=False)
    caution: str = field(default="", compare=False)
    links: tuple[str, ...] = field(default=(), compare=False)


class Finder(Protocol):
    """Finds the wording in force: ``first_wording``, or one that looks among the owner's versions before it."""

    def __call__(self, occasion: str, kind: str, step: int, channel: str, language: str) -> Words: ...


class Environment(LiquidEnvironment):
    """Liquid cut down to what an owner needs: no loops, no assignment, no files, no way into a value."""

    output_stream_limit = 20_000  # bytes; a long e-mail has 5,000
    context_depth_limit = 4
    local_namespace_limit = 0
    loop_iteration_limit = 0
    block_nesting_limit = 10

    def setup_tags_and_filters(self, *, extra: bool = False) -> None:
        """Keep the tags and filters that the owner may use, and no other."""
        super().setup_tags_and_filters(extra=extra)
        self.tags = {name: tag for name, tag in self.tags.items() if name in _TAGS}
        self.filters = {name: filter_ for name, filter_ in self.filters.items() if name in placeholders.FILTERS}


_environment = Environment(undefined=FalsyStrictUndefined, tolerance=Mode.STRICT, autoescape=False)


@lru_cache(maxsize=2048)
def _parsed(source: str) -> tuple[BoundTemplate, frozenset[str]]:
    """Parse a wording and name its fields. Raises WordingError with the first problem.

    Our own reader goes first. It is the stricter of the two: Liquid would let ``now``, ``x.size`` and ranges through.
    """
    read = placeholders.read(source, FIELDS)
    if read.problems:
        raise WordingError(str(read.problems[0]))
    try:
        return _environment.from_string(source), frozenset(read.fields)
    except (LiquidError, RecursionError, ValueError) as error:
        raise WordingError(f"The wording cannot be read: {error}") from error


def fields_used(source: str) -> frozenset[str]:
    """Name the fields that a wording uses, in its ifs too. Raises WordingError where it cannot be read."""
    return _parsed(source)[1]


def render(source: str, values: Mapping[str, Value]) -> str:
    """Fill a wording in. Values go in as they are and are never read as a wording themselves.

    Raises WordingError for a wording that cannot be read, a field without a value here, or an endless text.
    """
    template, _ = _parsed(source)
    try:
        return _tidy(template.render(values))
    except LiquidError as error:
        raise WordingError(
            f"The wording cannot be filled in: {error.message}. Use the fields that are offered."
        ) from error


def values(facts: Facts, find: Finder | None = None) -> dict[str, Value]:
    """Return the value of every field that the message's occasion may use, its blocks included."""
    filled = plain_values(facts)
    offered = {name: value for name, value in filled.items() if FIELDS[name].serves(facts.occasion)}
    for name in BLOCKS:
        if FIELDS[name].serves(facts.occasion):
            offered[name] = _block(name, facts, filled, find or first_wording)
    return offered


def compose(words: Words, facts: Facts, find: Finder | None = None, *, on_page: bool = False) -> Words:
    """Fill a wording in for one message, as it will arrive: an SMS in its cheapest spelling, but on a page of hers.

    Days and hours are said in the language that the wording was found in. ``find`` is asked for the blocks. The link to
    her page is left out of a text that it would make dearer than two, where the wording says what goes without it.
    Raises WordingError where the wording cannot be read or filled in.
    """
    if words.language and words.language != facts.language:
        facts = replace(facts, language=words.language)
    filled = values(facts, find)
    body = render(words.body, filled)
    if facts.channel == "sms":
        if on_page:
            return replace(words, subject="", body=body)
        body = cheaper(body)
        if filled.get("page") and measure(body).segments > MOST_WITH_LINK and page_may_be_missing(words.body):
            body = cheaper(render(words.body, {**filled, "page": None}))
        return replace(words, subject="", body=body)
    return replace(
        words,
        subject=" ".join(render(words.subject, filled).split()),
        body=body,
        caution=str(filled.get("caution") or ""),
        links=(*_LINK.findall(words.body), *(value for value in filled.values() if _is_link(value))),
    )


def page_may_be_missing(source: str) -> bool:
    """Say whether a wording names her page only where it asks first if there is one."""
    return "page" not in _IF_PAGE.sub("", source)


def mark_caution(words: Words) -> str:
    """Return a body with its caution between two marks that are in no text, so that it can be kept and found again."""
    before, found, after = words.body.partition(words.caution) if words.caution else (words.body, "", "")
    return f"{before}{_MARK}{found}{_MARK}{after}" if found else words.body


def unmark_caution(words: Words) -> Words:
    """Take the marks out again."""
    before, *rest = words.body.split(_MARK)
    return replace(words, body=before + "".join(rest), caution=rest[0] if len(rest) > 1 else "")


def _is_link(value: Value) -> TypeGuard[str]:
    """Say whether a field's whole value is an address of ours; a name that looks like one holds none."""
    return isinstance(value, str) and value.startswith(f"{settings.PUBLIC_URL}/") and len(value.split()) == 1


@lru_cache(maxsize=1024)
def first_wording(occasion: str, kind: str, step: int, channel: str, language: str) -> Words:
    """Return the first wording for an occasion, the most exact there is: of kind and step, of kind, of the occasion.

    A language without words gets English ones. Raises WordingError where the occasion has none for the channel.
    """
    name = kind_of(kind)
    if not all(re.fullmatch(r"[a-z_]*", part) for part in (occasion, name, channel)):
        raise WordingError(f"“{occasion}”, “{kind}” and “{channel}” do not name a wording: use small letters.")
    folder = MESSAGES / occasion / say.language_of(language)
    for file in (f"{channel}.{name}.{step}.txt", f"{channel}.{name}.txt", f"{channel}.txt"):
        if (folder / file).is_file():
            return _read(folder / file, folder.name)
    raise WordingError(f"There is no first wording for “{occasion}” by {channel}: add {occasion}/en/{channel}.txt.")


def problems(
    occasion: str, kind: str, step: int, channel: str, language: str, words: Words, find: Finder | None = None
) -> tuple[wordcheck.Problem, ...]:
    """Return all that is wrong with a wording, its length at the longest names included.

    ``find`` is asked for the blocks: a caution that was added to makes each text longer.
    """
    first = first_wording(occasion, kind, step, channel, language).body if occasion == "caution" else ""
    spoken = say.subtag(language)
    draft = wordcheck.Draft(occasion, kind, channel, words.subject, words.body, language=spoken, first=first)
    found = wordcheck.check(draft)
    if wordcheck.blocks_saving(found):
        return found
    every = longest(occasion, kind, step, channel, language, words)
    try:
        texts = [compose(words, facts, find).body for facts in every]
    except WordingError as error:  # an if that compares what cannot be compared
        return (
            *found,
            wordcheck.Problem(1, 1, str(error), "Ask in each if for one field alone, as in {% if first %}."),
        )
    if channel != "sms":
        return found
    dearest = max(texts, key=lambda text: (measure(text).segments, measure(text).units))
    return wordcheck.check(replace(draft, longest=dearest))


def longest(occasion: str, kind: str, step: int, channel: str, language: str, words: Words) -> Iterator[Facts]:
    """Give the longest facts there are, once for each way that the wording's ifs can go and for each emergency line."""
    used = fields_used(words.body)
    ways: dict[str, tuple[Any, ...]] = dict.fromkeys(sorted(_FLAGS & used), (False, True))
    if "questions" in used:
        ways["questions"] = ("", QUESTIONS)
    if "booked_day" in used:
        ways["booked_at"] = (None, LONGEST.booked_at)
    base = replace(LONGEST, occasion=occasion, kind=kind, step=step, channel=channel, language=language)
    for region in ("US", "GB"):
        for decided in product(*ways.values()):
            yield replace(base, region=region, **dict(zip(ways, decided, strict=True)))


QUESTIONS = "https://wrenfield.example/c/4x9KabcdefGHIJkl"  # of the fourteen-millionth visit
LONGEST = Facts(
    occasion="prepare",
    studio="Wrenfield Lash Room",
    studio_phone="+1 555 010 0199",
    first_name="Wilhelmina",
    artist="Marguerite-Anne",
    service="volume full set",
    starts_at=datetime.combine(date(2026, 9, 30), time(10, 30)),
    minutes=180,
    dry_hours=48,
    window=(date(2026, 9, 30), date(2026, 10, 14)),
    booked_at=datetime.combine(date(2026, 9, 30), time(10, 30)),
    call_by=datetime.combine(date(2026, 9, 30), time(10, 30)),
    link="https://wrenfield.example/flags/1234567",
    page="https://wrenfield.example/v/4c92zKx9aTq0ZbLmE",
    record="https://wrenfield.example/d/4c92zKx9aTq0ZbLmE",
    visit_ahead=True,
    as_of=datetime.combine(date(2026, 9, 30), time(10, 30)),
    last_reply=datetime.combine(date(2026, 9, 23), time(10, 30)),
    last_sweep=datetime.combine(date(2026, 9, 30), time(10, 30)),
    open_flags=99,
    urgent_flags=99,
    promises=99,
)
"""The longest names of the demo studio, and a Wednesday in September: what a wording's length is judged by."""


def _read(file: Path, language: str) -> Words:
    text = file.read_text(encoding="utf-8").strip()
    if not text.startswith(_SUBJECT):
        return Words("", text, language)
    subject, _, body = text.partition("\n")
    return Words(subject.removeprefix(_SUBJECT).strip(), body.strip(), language)


def _block(name: str, facts: Facts, filled: Mapping[str, Value], find: Finder) -> str:
    """Fill in a block: an answer's caution is its kind's, any other the occasion's."""
    kind = facts.kind if facts.occasion == "answer" else facts.occasion
    found = find(name, kind, 0, facts.channel, facts.language)
    if found.language and found.language != say.subtag(facts.language):  # there is none in hers: say it in one language
        filled = plain_values(replace(facts, language=found.language))
    used = sorted(fields_used(found.body))
    return _filled(found.body, tuple((name, filled[name]) for name in used if name in filled))


@lru_cache(maxsize=4096)
def _filled(source: str, items: tuple[tuple[str, Value], ...]) -> str:
    # A block says the same to all of a studio's clients, so a sweep fills it in once.
    return render(source, dict(items))


def _tidy(text: str) -> str:
    """Take out what an empty field leaves behind: runs of spaces, spaces at a line's end, more than one blank line."""
    tidied = "\n".join(" ".join(line.split()) for line in text.split("\n")).strip()
    while "\n\n\n" in tidied:
        tidied = tidied.replace("\n\n\n", "\n\n")
    return tidied
