"""What is kept about a client, in full, as she reads it and takes it with her. Reads, never writes.

It is hers by law in many countries (GDPR, articles 15 and 20, from memory), and hers to see everywhere. What people
here wrote about her is about her, and is in it. Nobody else is named in it but her artists.
"""

from __future__ import annotations

import base64
import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import date, datetime
from typing import Any

from django.db.models import QuerySet
from django.utils import timezone
from django.utils.functional import Promise
from django.utils.translation import get_language, gettext_lazy
from django.utils.translation import gettext as _

from aftercare import stops
from aftercare.core import say
from aftercare.core.delivery import GONE
from aftercare.core.ticks import Ticked
from aftercare.models import Attachment, Consultation, Flag, Forecast, Message, Reply, Stop
from aftercare.pages import consultation
from aftercare.pages.shown import language_name
from aftercare.pages.signs import SIDES, SIGNS, TOPICS
from aftercare.pages.spoken import spoken
from aftercare.pages.ticks import in_words
from studio.models import Client, Consent, Reaction, Visit

Value = str | int | bool | date | datetime | list[str] | None
Thing = dict[str, Value]

LABELS: dict[str, Promise] = {
    "you": gettext_lazy("You"),
    "visits": gettext_lazy("Visits"),
    "messages": gettext_lazy("What was sent to you"),
    "replies": gettext_lazy("What you wrote"),
    "matters": gettext_lazy("What came of it"),
    "reactions": gettext_lazy("Reactions on record"),
    "consultations": gettext_lazy("What you answered before visits"),
    "answers": gettext_lazy("Answers"),
    "agreed": gettext_lazy("To be kept"),
    "withdrawn_at": gettext_lazy("Taken back"),
    "signed_name": gettext_lazy("Signed as"),
    "signed_on": gettext_lazy("Signed on"),
    "waiver": gettext_lazy("What was signed"),
    "forecasts": gettext_lazy("What was expected of your sets"),
    "set_of": gettext_lazy("Set of"),
    "fill_day": gettext_lazy("Ready for a fill after, days"),
    "full_set_day": gettext_lazy("May need a new set after, days"),
    "consents": gettext_lazy("What you agreed to"),
    "stops": gettext_lazy("Messages that you stopped"),
    "first_name": gettext_lazy("First name"),
    "last_name": gettext_lazy("Last name"),
    "mobile": gettext_lazy("Mobile"),
    "email": gettext_lazy("E-mail"),
    "time_zone": gettext_lazy("Time zone"),
    "language": gettext_lazy("Language"),
    "channel": gettext_lazy("By"),
    "wished_hours": gettext_lazy("To be written to"),
    "sensitive": gettext_lazy("Noted as sensitive"),
    "wears_lenses": gettext_lazy("Wears contact lenses"),
    "oily_lids": gettext_lazy("Oily lids"),
    "under_18": gettext_lazy("Under 18"),
    "guardian_name": gettext_lazy("Guardian"),
    "guardian_mobile": gettext_lazy("Guardian’s mobile"),
    "guardian_agreed_on": gettext_lazy("Guardian agreed on"),
    "waiver_signed_on": gettext_lazy("Waiver signed on"),
    "on_break": gettext_lazy("Takes a break from lashes"),
    "note": gettext_lazy("Note"),
    "at": gettext_lazy("When"),
    "service": gettext_lazy("Service"),
    "minutes": gettext_lazy("Minutes"),
    "status": gettext_lazy("Status"),
    "artist": gettext_lazy("Artist"),
    "style": gettext_lazy("Style"),
    "lash_map": gettext_lazy("Lash map"),
    "adhesive": gettext_lazy("Adhesive"),
    "remover": gettext_lazy("Remover"),
    "tape": gettext_lazy("Tape or pads"),
    "primer": gettext_lazy("Primer"),
    "share_left": gettext_lazy("Share left, %"),
    "outgrown": gettext_lazy("Outgrown lashes"),
    "mirror_check": gettext_lazy("Mirror check"),
    "test_result": gettext_lazy("Result of the patch test"),
    "subject": gettext_lazy("Subject"),
    "words": gettext_lazy("Words"),
    "ticked": gettext_lazy("Ticked"),
    "read_in_it": gettext_lazy("What the software read in it"),
    "outcome": gettext_lazy("Outcome"),
    "signs": gettext_lazy("Signs"),
    "side": gettext_lazy("Eye"),
    "released_at": gettext_lazy("Released"),
    "purpose": gettext_lazy("For"),
    "given": gettext_lazy("Agreed"),
    "how": gettext_lazy("How"),
    "words_shown": gettext_lazy("Words shown"),
    "address": gettext_lazy("Number or address"),
}
_PURPOSES: dict[str, Promise] = {
    Consent.Purpose.VISITS: gettext_lazy("messages about your visits"),
    Consent.Purpose.REMINDERS: gettext_lazy("reminders"),
}
# What is kept by a short name, in words; a machine gets the name.
_IN_WORDS: dict[str, dict[str, Any]] = {
    "channel": dict(Client.Channel.choices),
    "wished_hours": dict(Client.Hours.choices),
    "read_in_it": {**TOPICS, **SIGNS},
    "signs": SIGNS,
    "side": SIDES,
}
OF_HER = (
    *("first_name", "last_name", "mobile", "email", "time_zone", "language", "channel", "wished_hours", "sensitive"),
    *("wears_lenses", "oily_lids", "under_18", "guardian_name", "guardian_mobile", "guardian_agreed_on"),
    *("waiver_signed_on", "on_break", "note"),
)


@dataclass(frozen=True, slots=True)
class Section:
    """One kind of thing that is kept: what it is called, each with what is known of it, and the photos of each."""

    name: str
    things: list[Thing]
    photos: list[list[int]]  # of each thing, the keys of its pictures
    region: str = ""  # the studio's country, whose clock is read

    @property
    def label(self) -> str:
        return str(LABELS[self.name])

    @property
    def entries(self) -> Iterator[tuple[list[tuple[str, str]], list[int]]]:
        """Give each thing as pairs of words, with its pictures; what is not known is left out."""
        for thing, pictures in zip(self.things, self.photos, strict=True):
            known = {key: value for key, value in thing.items() if value not in (None, "", [])}
            said = [(key, _said(_in_words(key, value), self.region)) for key, value in known.items()]
            yield [(str(LABELS[key]), words) for key, words in said], pictures


def kept(client: Client) -> list[Section]:
    """Return all that is kept about her, in the order in which she would look for it. A fixed number of queries."""
    replies = list(Reply.objects.filter(client=client).order_by("received_at", "pk"))
    pictures: dict[int, list[int]] = {}
    rows = Attachment.objects.filter(reply__in=replies, content__isnull=False).order_by("pk")
    for pk, reply in rows.values_list("pk", "reply"):
        pictures.setdefault(reply, []).append(pk)
    sent = Message.objects.filter(client=client, state__in=GONE)
    found = [
        Section("you", [_her(client)], [[]]),
        _plain("visits", map(_visit, client.visits.select_related("artist", "adhesive").order_by("starts_at"))),
        _plain("messages", map(_message, sent.order_by("due_at", "pk"))),
        Section("replies", [_reply(one) for one in replies], [pictures.get(one.pk, []) for one in replies]),
        _plain("matters", map(_matter, _hers_alone(client).order_by("opened_at", "pk"))),
        _plain("reactions", map(_reaction, client.reactions.order_by("at", "pk"))),
        _plain("consultations", map(_consultation, client.consultations.order_by("at", "pk"))),
        _plain("forecasts", map(_forecast, client.forecasts.select_related("visit").order_by("made_at", "pk"))),
        _plain("consents", map(_consent, client.consents.order_by("at", "pk"))),
        _plain("stops", map(_stop, stops.standing(client).values())),
    ]
    return [replace(section, region=client.studio.region) for section in found if section.things]


def as_json(client: Client, sections: Iterable[Section], now: datetime) -> str:
    """Write it for a machine (GDPR, article 20, from memory): moments in ISO 8601, photos in base 64."""
    out: dict[str, Any] = {"studio": client.studio.name, "as_of": now.isoformat()}
    for section in sections:
        things = [dict(thing) for thing in section.things]
        for thing, pictures in zip(things, section.photos, strict=True):
            if pictures:
                thing["photos"] = [_encoded(pk) for pk in pictures]
        out[section.name] = things[0] if section.name == "you" else things
    return json.dumps(out, default=str, ensure_ascii=False, indent=2)


def as_text(client: Client, sections: Iterable[Section], now: datetime) -> str:
    """Write it to be read anywhere."""
    lines = [_("What %(studio)s keeps about you") % {"studio": client.studio.name}, _said(now, client.studio.region)]
    for section in sections:
        lines += ["", section.label.upper()]
        for pairs, pictures in section.entries:
            lines += ["", *(f"{label}: {value}" for label, value in pairs)]
            lines += [_("%(n)d photos") % {"n": len(pictures)}] if pictures else []
    return "\n".join(lines) + "\n"


def _hers_alone(client: Client) -> QuerySet[Flag]:
    """Return her matters: one of a shared number, of which nobody said whose it is, may be somebody else's."""
    others = Flag.clients.through.objects.exclude(client=client)
    return Flag.objects.filter(clients=client).exclude(pk__in=others.values("flag"))


def _plain(name: str, things: Iterable[Thing]) -> Section:
    listed = list(things)
    return Section(name, listed, [[] for _thing in listed])


def _encoded(pk: int) -> str:
    content = Attachment.objects.values_list("content", flat=True).get(pk=pk)
    return base64.b64encode(bytes(content or b"")).decode()


def _her(client: Client) -> Thing:
    return {name: getattr(client, name) for name in OF_HER}


def _visit(visit: Visit) -> Thing:
    return {
        "at": visit.starts_at,
        "service": visit.service_name or visit.get_service_display(),
        "minutes": visit.minutes,
        "status": visit.get_status_display(),
        "artist": visit.artist.name if visit.artist else "",
        "style": visit.style,
        "lash_map": visit.lash_map,
        "adhesive": str(visit.adhesive) if visit.adhesive else "",
        "remover": visit.get_remover_display(),
        "tape": visit.tape,
        "primer": visit.primer,
        "share_left": f"{float(visit.share_left):g}" if visit.share_left is not None else None,
        "outgrown": visit.get_outgrown_display(),
        "mirror_check": visit.get_mirror_check_display(),
        "test_result": visit.get_test_result_display(),
        "note": visit.note,
    }


def _message(message: Message) -> Thing:
    return {
        "at": message.handed_over_at,
        "channel": message.channel,
        "address": message.address,
        "subject": message.subject,
        "words": message.text,
    }


def _reply(reply: Reply) -> Thing:
    return {
        "at": reply.received_at,
        "address": reply.from_address,
        "subject": reply.subject,
        "words": reply.text,
        "ticked": in_words(Ticked.kept(reply.ticked)) if reply.ticked else "",
        "read_in_it": [*reply.reading.get("about", []), *reply.reading.get("signs", [])],
    }


def _matter(flag: Flag) -> Thing:
    return {"at": flag.opened_at, "status": flag.get_state_display(), "outcome": flag.outcome, "words": flag.words}


def _reaction(reaction: Reaction) -> Thing:
    return {
        "at": reaction.at,
        "words": reaction.words,
        "signs": list(reaction.signs),
        "side": reaction.side,
        "outcome": reaction.outcome,
        "released_at": reaction.released_at,
    }


def _consultation(row: Consultation) -> Thing:
    return {
        "at": row.at,
        "agreed": row.agreed,
        "withdrawn_at": row.withdrawn_at,
        "answers": [" ".join(f"{one.what}: {one.said} {one.words}".split()) for one in consultation.told(row)],
        "words": row.more,
        "style": row.style,
        "signed_name": row.signed_name,
        "signed_on": row.signed_on,
        "waiver": row.waiver,
        "guardian_name": row.guardian_name,
    }


def _forecast(forecast: Forecast) -> Thing:
    return {
        "at": forecast.made_at,
        "set_of": forecast.visit.starts_at,
        "fill_day": round(forecast.fill_day),
        "full_set_day": round(forecast.full_set_day),
    }


def _consent(consent: Consent) -> Thing:
    return {
        "at": consent.at,
        "channel": consent.get_channel_display(),
        "purpose": str(_PURPOSES[consent.purpose]),
        "given": consent.given,
        "how": consent.how,
        "words_shown": consent.words_shown,
    }


def _stop(row: Stop) -> Thing:
    return {"at": row.at, "channel": row.line.channel, "address": row.address, "words": row.words}


def _in_words(key: str, value: Value) -> Value:
    if key == "language":
        return language_name(str(value))
    if key == "how":
        return spoken(str(value))
    words = _IN_WORDS.get(key, {})
    if isinstance(value, list):
        return [str(words.get(one, one)) for one in value]
    return str(words.get(value, value)) if isinstance(value, str) else value


def _said(value: Value, region: str) -> str:
    if isinstance(value, bool):
        return str(_("yes") if value else _("no"))
    if isinstance(value, datetime):
        value = timezone.localtime(value)
    if isinstance(value, date):
        return say.dated(value, say.language_of(get_language() or "en"), region)
    return ", ".join(value) if isinstance(value, list) else str(value)
