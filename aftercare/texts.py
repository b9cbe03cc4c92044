"""One message's words: from its client, visit and studio to the text that reaches her, by the wording in force."""

from __future__ import annotations

import logging
from collections.abc import Callable
from dataclasses import replace
from datetime import date, datetime
from typing import Any

from django.conf import settings
from django.urls import reverse

from aftercare import links, versions
from aftercare.core import reminders, say
from aftercare.core.fields import BLOCKS, Facts
from aftercare.core.mornings import Waiting
from aftercare.core.occasions import TEST
from aftercare.core.timing import MOVES_ANEW, NOTHING, REMINDERS, Occasion
from aftercare.facts import ClientBook
from aftercare.links import Purpose
from aftercare.models import Message
from aftercare.wording import Finder, WordingError, Words, compose, first_wording, unmark_caution, values
from studio.models import Client, Staff, Studio, Visit

log = logging.getLogger(__name__)
RECORD = "your_record"  # of an answer: the link to what is kept about her
DRY_HOURS = 24  # where the adhesive is not known or says nothing; common practice, no source


Count = Callable[[Staff, datetime], Waiting]
"""Says what waits for a member of staff. Pages know it, which lie above: whoever sends brings it along."""


def for_message(
    message: Message,
    book: ClientBook | None,
    now: datetime,
    find: Finder | None = None,
    count: Count | None = None,
    *,
    on_page: bool = False,
) -> Words:
    """Return the words of a message as they stand at ``now``; ``book`` is None for a message to staff.

    ``find`` finds the studio's wordings in force: pass one where many messages are written. ``count`` is needed for a
    morning list. ``on_page``: they stand on a page of hers, where letters cost nothing. Where the wording in force
    cannot be filled in, the first wording goes: a caution is never late for it. Raises WordingError where that cannot.
    """
    find = find or versions.finder(book.studio if book else message.studio)
    return _by_what_can_be_filled_in(lambda find: _for_message(message, book, now, find, count, on_page=on_page), find)


def _by_what_can_be_filled_in(write: Callable[[Finder], Words], find: Finder) -> Words:
    try:
        return write(find)
    except WordingError:
        log.exception("a wording in force cannot be filled in: the first wording goes in its place")
        return write(first_wording)


def _for_message(
    message: Message,
    book: ClientBook | None,
    now: datetime,
    find: Finder,
    count: Count | None,
    *,
    on_page: bool,
) -> Words:
    if message.own_words and message.occasion != Occasion.NOTICE:
        words = Words(message.subject or _own_subject(message, book), message.own_words, message.language)
        return unmark_caution(words) if message.kind == TEST else words
    facts = facts_of(message, book, now) if book else _staff_facts(message, now, count)
    # While she is on hold nothing is said as if all were as usual: her aftercare goes as its caution alone.
    if book is not None and book.on_hold and message.occasion == Occasion.CARE:
        facts = replace(facts, kind="caution")
    words = find(facts.occasion, facts.kind, facts.step, facts.channel, facts.language)
    if message.own_words:  # a notice that was worded for this once: filled in as a wording is
        words = replace(words, body=message.own_words)
    return compose(words, facts, find, on_page=on_page)


def for_page(occasion: Occasion, visit: Visit, book: ClientBook, language: str, now: datetime, find: Finder) -> str:
    """Return what her own page says before or after a visit: the e-mail's words, without what the page itself has.

    The caution and the way to stop have a place of their own there. Where the wording in force cannot be filled in, it
    is the first wording's.
    """
    message = Message(client=book.client, visit=visit, occasion=occasion, channel="email", language=language)
    facts = replace(facts_of(message, book, now), page="")
    if facts.questions:  # whoever was sent this page reads no more than a visit: nothing that she answered before
        facts = replace(facts, questions=links.address(Purpose.ANEW, visit, revoked=book.revoked))

    def without_blocks(occasion: str, kind: str, step: int, channel: str, language: str) -> Words:
        return Words("", "") if occasion in BLOCKS else find(occasion, kind, step, channel, language)

    def write(find: Finder) -> Words:
        words = find(occasion, facts.kind, facts.step, facts.channel, facts.language)
        return compose(words, facts, without_blocks)

    return _by_what_can_be_filled_in(write, find).body


def emergency_number(client: Client) -> str:
    """Return the number that a page of hers calls: of where she says she is, else the studio's; '' for none known."""
    return say.emergency_number(say.country_of(client.time_zone) or client.studio.region)


def caution(client: Client, language: str, channel: str, find: Finder) -> str:
    """Return the caution of aftercare as it stands on a page: which signs are not normal, and what to do."""
    studio = client.studio
    facts = Facts(
        studio=studio.name,
        studio_phone=studio.phone,
        language=language,
        region=studio.region,
        country=say.country_of(client.time_zone),
        channel=channel,
        occasion=Occasion.CARE,
    )
    return str(values(facts, find)["caution"])


def facts_of(message: Message, book: ClientBook, now: datetime) -> Facts:
    """Return what a message to a client is about, as things stand at ``now``."""
    client, studio = book.client, book.studio
    visit = book.visits.get(message.visit_id or 0)
    facts = Facts(
        studio=studio.name,
        studio_phone=studio.phone,
        language=message.language or client.language or studio.language,
        region=studio.region,
        country=say.country_of(client.time_zone),
        channel=message.channel,
        occasion=message.occasion,
        step=message.step,
        moved=_tells_of_a_move(message, visit, book),
        first_name=client.first_name,
        first=book.calendar.is_first_client,
        waiver_due=client.waiver_signed_on is None,
        under_18=bool(client.under_18),
        wears_lenses=bool(client.wears_lenses),
        call_by=_call_by(message, studio, now),
        record=_record(message, book),
        visit_ahead=book.on_hold and any(book.calendar.is_booked(one) for one in book.calendar.visits),
        **(_of_visit(message, visit, book) if visit else {"kind": message.kind}),
    )
    if visit is None or message.occasion not in REMINDERS:
        return facts
    return _with_next(facts, message, visit, book, now)


def _tells_of_a_move(message: Message, visit: Visit | None, book: ClientBook) -> bool:
    """Whether she has been told of another hour of this visit, and of the one at which it stands by nothing yet.

    A step that goes for the first time is the one to say so where it is too late for the other's next edition. What
    another client had been told, whose visit it was, is news to her.
    """
    if visit is None or message.occasion not in MOVES_ANEW or message.pk is None:
        return False
    own = book.standing.get((visit.pk, Occasion(message.occasion), message.step), NOTHING)
    if message.edition > 1:
        return not own.gone_elsewhere
    slots = ((visit.pk, Occasion(message.occasion), step) for step in (0, 1))
    gone = [book.standing.get(slot, NOTHING) for slot in slots]
    told = {one.gone_start for one in gone if one.gone_start and not one.gone_elsewhere}
    return bool(told) and visit.starts_at.replace(microsecond=0) not in told


def _of_visit(message: Message, visit: Visit, book: ClientBook) -> dict[str, Any]:
    """Return those of the facts that follow from the visit."""
    return {
        "kind": message.kind or visit.service,
        "artist": visit.artist.name.split()[0] if visit.artist and visit.artist.name.strip() else "",
        "service": _own_name(visit),
        "starts_at": visit.starts_at.astimezone(book.studio.zone),
        "minutes": visit.minutes,
        "dry_hours": _dry_hours(visit) if visit.is_set else None,
        "page": links.address(Purpose.VISIT, visit, revoked=book.revoked),
        "questions": _questions(visit, book) if message.occasion == Occasion.PREPARE else "",
    }


def _questions(visit: Visit, book: ClientBook) -> str:
    """The link to the questions before a visit; '' once she has answered them."""
    if any(one.visit == visit.pk for one in book.filled):
        return ""
    return links.address(Purpose.CONSULTATION, visit, revoked=book.revoked)


def _with_next(facts: Facts, message: Message, visit: Visit, book: ClientBook, now: datetime) -> Facts:
    """Add what a reminder says of the next visit: the days that would be best, and the set that she has booked."""
    zone = book.studio.zone
    leaves = max(message.due_at or now, now).astimezone(zone).date()
    booked = book.calendar.booked_sets if message.occasion == Occasion.FILL_DUE else []
    return replace(
        facts,
        window=_window(visit.starts_at.astimezone(zone).date(), visit, book, leaves),
        booked_at=booked[0].start.astimezone(zone) if booked else None,
    )


def _window(start: date, visit: Visit, book: ClientBook, today: date) -> tuple[date, date] | None:
    if book.forecast is None or book.forecast.visit != visit.pk:
        return None
    return reminders.window(start, book.forecast, book.rules, today, book.away(visit.artist_id))


def _record(message: Message, book: ClientBook) -> str:
    """The way to what is kept about her, in the one answer that she asked for: whoever has it reads her record."""
    if message.kind != RECORD:
        return ""
    return links.address(Purpose.DATA, book.client, revoked=book.revoked)


def _own_name(visit: Visit) -> str:
    """The studio's own name for the service; '' where it is the plain kind, which each language has a word for."""
    plain = visit.service_name.casefold().replace("-", " ").split()
    return "" if plain == visit.service.replace("-", " ").split() else visit.service_name


def _dry_hours(visit: Visit) -> int:
    known = visit.adhesive.dry_hours if visit.adhesive else None
    return DRY_HOURS if known is None else known


def _staff_facts(message: Message, now: datetime, count: Count | None) -> Facts:
    """What is said to staff; or to a number that nobody known has, or several clients."""
    studio: Studio = message.studio
    waiting = Waiting()
    if message.occasion == Occasion.MORNING_LIST:
        if message.staff is None or count is None:  # never "nothing open" because nobody looked
            raise WordingError("What waits for her is not known here.")
        waiting = count(message.staff, now)
    language = message.language or (message.staff.language if message.staff else "")
    return Facts(
        studio=studio.name,
        studio_phone=studio.phone,
        language=say.language_of(language, studio.language),
        region=studio.region,
        channel=message.channel,
        occasion=message.occasion,
        kind=message.kind,
        step=message.step,
        call_by=_call_by(message, studio, now),
        link=_link(message),
        as_of=_on_the_wall(waiting.as_of, studio),
        last_reply=_on_the_wall(waiting.last_reply, studio),
        last_sweep=_on_the_wall(waiting.last_sweep, studio),
        open_flags=waiting.open_flags,
        urgent_flags=waiting.urgent_flags,
        promises=waiting.promises,
    )


def _link(message: Message) -> str:
    """To her list; to the line of it that a page is about."""
    line = f"#flag-{message.flag_id}" if message.flag_id else ""
    return settings.PUBLIC_URL + reverse("morning") + line


def _call_by(message: Message, studio: Studio, now: datetime) -> datetime | None:
    """By when a person calls her: as it was worked out when she was answered; None where that is past, as the words
    leave late."""
    by = message.flag.call_by if message.flag_id and message.flag else None
    return _on_the_wall(by, studio) if by is not None and by > now else None


def _on_the_wall(at: datetime | None, studio: Studio) -> datetime | None:
    return at.astimezone(studio.zone) if at else None


def _own_subject(message: Message, book: ClientBook | None) -> str:
    """Of an e-mail in a person's own words: no word of hers, no name, no sign, as lists of mail are read by others."""
    if message.channel != "email":
        return ""
    return own_subject(book.client.language if book else "", message.studio)


def own_subject(language: str, studio: Studio) -> str:
    """Return the subject of an e-mail in a person's own words to a client who reads ``language`` (a BCP 47 tag)."""
    return _OWN_SUBJECTS[say.language_of(language, studio.language)].format(studio=studio.name)


_OWN_SUBJECTS = {"en": "Your message to {studio}", "es": "Tu mensaje a {studio}"}
