"""Clients, what they agreed to, and their reactions."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import TypedDict, Unpack
from zoneinfo import ZoneInfo

from django.core.exceptions import ValidationError
from django.db import transaction
from django.db.models import F
from django.utils.translation import gettext as _

from studio.models import Client, Consent, Reaction, Staff, Studio, Visit
from studio.records.numbers import number
from studio.records.writing import locked, put, raise_client_revision, same_studio

# The shape of a BCP 47 tag as far as a book or a person writes one: en, es-MX, zh-Hant.
_LANGUAGE = re.compile(r"[a-z]{2,3}(-[A-Za-z0-9]{2,8})*")

MOST_DECLINED = 99


class ClientFields(TypedDict, total=False):
    """What a person may write on a client's card. Numbers as anyone writes them; three-way answers: None is unknown."""

    first_name: str
    last_name: str
    mobile: str
    email: str
    time_zone: str
    language: str
    channel: str
    wished_hours: str
    sensitive: bool | None
    wears_lenses: bool | None
    oily_lids: bool | None
    under_18: bool | None
    guardian_name: str
    guardian_mobile: str
    guardian_agreed_on: date | None
    waiver_signed_on: date | None
    note: str
    on_break: bool


@dataclass(frozen=True, slots=True)
class Answer:
    """One answer about one channel and purpose: how it was given (on paper, by telephone) and the words shown."""

    channel: str
    purpose: str
    given: bool
    how: str
    words_shown: str = ""


@transaction.atomic
def save_client(
    *,
    studio: Studio,
    client: Client | None,
    by: Staff | None,
    now: datetime,
    answers: Iterable[Answer] = (),
    **fields: Unpack[ClientFields],
) -> Client:
    """Add a client, or change the fields given; with what she agreed to.

    Raises ValidationError with field → what is wrong and the cure; nothing is written then.
    """
    same_studio(studio, client=client, by=by)
    row = locked(client) if client else Client(studio=studio)
    if row.merged_into_id:
        raise ValidationError(_("She was merged into another client: change that one, or undo the merge first."))
    put(row, _clean(fields, studio.region))
    row.save()
    for answer in answers:
        _add_consent(row, answer, by, now)
    raise_client_revision(row.pk)
    row.refresh_from_db()
    return row


def give_consent(
    *,
    client: Client,
    channel: str,
    purpose: str,
    given: bool,
    how: str,
    words_shown: str = "",
    by: Staff | None,
    now: datetime,
) -> Consent:
    """Add one answer; the newest counts. Lifting a stop is another matter, as stops are by number."""
    same_studio(client.studio, by=by)
    with transaction.atomic():
        consent = _add_consent(client, Answer(channel, purpose, given, how, words_shown), by, now)
        raise_client_revision(client.pk)
    return consent


def pause(*, client: Client, until: date, by: Staff | None, now: datetime) -> Client:
    """Send her nothing until that day (the day itself is free again)."""
    today = now.astimezone(client.studio.zone).date()
    if until <= today:
        raise ValidationError({"until": _("That day is not ahead: choose a later one, or end the pause.")})
    return _set(client, by, paused_until=until)


def resume(*, client: Client, by: Staff | None, now: datetime) -> Client:
    """End the pause."""
    return _set(client, by, paused_until=None)


def end_pauses(now: datetime, *, studio: Studio | None = None) -> int:
    """End the pauses whose day has come, by each client's own date; return how many. What rested is planned again."""
    ahead = (now + timedelta(hours=14)).date()  # no clock is further
    paused = Client.objects.filter(paused_until__lte=ahead).select_related("studio")
    if studio is not None:
        paused = paused.filter(studio=studio)
    over = [client.pk for client in paused if client.paused_until and client.paused_until <= _her_date(client, now)]
    # Only if it is still the same: somebody may be prolonging it.
    ended = Client.objects.filter(pk__in=over, paused_until__lte=ahead)
    return ended.update(paused_until=None, revision=F("revision") + 1) if over else 0


def _her_date(client: Client, now: datetime) -> date:
    zone = ZoneInfo(client.time_zone) if client.time_zone else client.studio.zone
    return now.astimezone(zone).date()


def note_declined(*, client: Client, times: int, by: Staff | None) -> Client:
    """Note how often she has declined an earlier visit than she had booked: after two it is not offered again."""
    if not 0 <= times <= MOST_DECLINED:
        raise ValidationError({"times": _("That is a number from 0 to 99: 0 has it offered again.")})
    return _set(client, by, earlier_declined=times)


def note_no_set(*, client: Client, by: Staff | None, now: datetime) -> Client:
    """Note that her lashes are off, without a removal in the book; her next set ends it."""
    return _set(client, by, no_set_since=now)


def record_reaction(
    *,
    client: Client,
    visit: Visit | None,
    words: str,
    by: Staff | None,
    now: datetime,
    at: datetime | None = None,
    signs: Sequence[str] = (),
    side: str = "",
    outcome: str = "",
) -> Reaction:
    """Put a reaction on record, seen ``at`` (default: now). She is on hold until a person releases it.

    ``signs`` and ``side`` are what was read in her words, ``outcome`` what came of the matter that they made.
    """
    same_studio(client.studio, by=by, visit=visit)
    if visit is not None and visit.client_id != client.pk:
        raise ValidationError({"visit": _("That visit is another client’s: choose one of hers, or none.")})
    if not words.strip():
        raise ValidationError({"words": _("Write what was seen or said.")})
    if at is not None and at > now:
        raise ValidationError({"at": _("That moment is ahead: write when it was seen or said.")})
    reaction = Reaction(client=client, visit=visit, at=at or now, words=words.strip(), by=by)
    reaction.signs, reaction.side, reaction.outcome = list(signs), side, outcome
    with transaction.atomic():
        put(reaction, {})
        reaction.save()
        raise_client_revision(client.pk)
    return reaction


@transaction.atomic
def put_reaction_right(*, reaction: Reaction, words: str, outcome: str, by: Staff | None) -> Reaction:
    """Say anew what came of a reaction that still holds her, as where a wrong outcome was chosen.

    It stays one reaction; the words come after those that stand there.
    """
    same_studio(reaction.client.studio, by=by)
    row = locked(reaction)
    if row.released_at is not None:
        raise ValidationError(_("It has been released already: look at her card again."))
    put(row, {"words": f"{row.words}\n{words.strip()}".strip(), "outcome": outcome, "by": by})
    row.save()
    raise_client_revision(row.client_id)
    return row


@transaction.atomic
def release_reaction(
    *, reaction: Reaction, clinician_consulted: str, test_first: bool | None, by: Staff | None, now: datetime
) -> Reaction:
    """A person's decision that messages about visits may go to her again. It says nothing of her eyes."""
    same_studio(reaction.client.studio, by=by)
    row = locked(reaction)
    if row.released_at is not None:
        raise ValidationError(_("It has been released already: look at her card again."))
    if clinician_consulted not in Reaction.Consulted.values:
        raise ValidationError(
            {"clinician_consulted": _("Say whether a clinician was consulted: yes, no or not known.")}
        )
    if test_first is None:
        raise ValidationError({"test_first": _("Say whether a patch test comes first: yes or no.")})
    put(
        row,
        {"clinician_consulted": clinician_consulted, "test_first": test_first, "released_at": now, "released_by": by},
    )
    row.save()
    raise_client_revision(row.client_id)
    return row


def _clean(fields: ClientFields, region: str) -> dict[str, object]:
    cleaned: dict[str, object] = {
        name: value.strip() if isinstance(value, str) else value for name, value in fields.items()
    }
    for field in ("mobile", "guardian_mobile"):
        if field in cleaned:
            cleaned[field] = number(str(cleaned[field]), region=region, field=field)
    language = str(cleaned.get("language", ""))
    if language and not _LANGUAGE.fullmatch(language):
        raise ValidationError({"language": _("Write a language tag (BCP 47), such as en, es or es-MX.")})
    return cleaned


def _add_consent(client: Client, answer: Answer, by: Staff | None, now: datetime) -> Consent:
    if not answer.how.strip():
        raise ValidationError({"how": _("Say how she answered: on paper, by telephone, in a message.")})
    consent = Consent(
        client=client,
        channel=answer.channel,
        purpose=answer.purpose,
        given=answer.given,
        at=now,
        how=answer.how.strip(),
        words_shown=answer.words_shown.strip(),
        by=by,
    )
    consent.full_clean()
    consent.save()
    return consent


@transaction.atomic
def _set(client: Client, by: Staff | None, **fields: object) -> Client:
    same_studio(client.studio, by=by)
    row = locked(client)
    put(row, fields)
    row.save(update_fields=list(fields))
    raise_client_revision(row.pk)
    row.refresh_from_db()
    return row
