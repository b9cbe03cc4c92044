"""Messages as pages show them: what each is, where it stands and why, in words.

Whoever may not read a client's health notes is not told which messages would give one away, nor why they are held.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass
from datetime import datetime

import phonenumbers
from babel import Locale, UnknownLocaleError
from django.utils.functional import Promise
from django.utils.translation import get_language, gettext_lazy
from django.utils.translation import gettext as _

from aftercare import links, planning
from aftercare.core import say
from aftercare.core.delivery import GONE, State
from aftercare.core.occasions import TEST
from aftercare.core.timing import Occasion, Reason, Rules
from aftercare.models import Message
from aftercare.pages.spoken import spoken
from studio.models import Staff

OCCASIONS: dict[str, Promise] = {
    Occasion.PREPARE: gettext_lazy("instructions before the visit"),
    Occasion.PATCH_TEST: gettext_lazy("patch test first"),
    Occasion.CARE: gettext_lazy("aftercare"),
    Occasion.CHECK: gettext_lazy("how are your eyes"),
    Occasion.FILL_DUE: gettext_lazy("time for a fill"),
    Occasion.FULL_SET_DUE: gettext_lazy("time for a full set"),
    Occasion.OPT_IN: gettext_lazy("welcome to messages"),
    Occasion.NOTICE: gettext_lazy("word to those booked"),
    Occasion.ANSWER: gettext_lazy("answer"),
    Occasion.ALERT: gettext_lazy("page to staff"),
    Occasion.MORNING_LIST: gettext_lazy("morning list"),
}
STATES: dict[str, Promise] = {
    State.PLANNED: gettext_lazy("planned"),
    State.CLAIMED: gettext_lazy("leaving now"),
    State.HANDING_OVER: gettext_lazy("leaving now"),
    State.HANDED_OVER: gettext_lazy("handed over, no receipt yet"),
    State.DELIVERED: gettext_lazy("delivered"),
    State.UNDELIVERED: gettext_lazy("not delivered"),
    State.WITHHELD: gettext_lazy("withheld"),
    State.WITHDRAWN: gettext_lazy("withdrawn"),
    State.UNSURE: gettext_lazy("not known whether it arrived"),
}
CHANNELS: dict[str, Promise] = {"sms": gettext_lazy("by text"), "email": gettext_lazy("by e-mail")}

# Occasions that exist, or whose words differ, because of how her eyes are.
TELLING = frozenset({Occasion.PATCH_TEST, Occasion.CHECK, Occasion.ANSWER, Occasion.ALERT})
TROUBLE = frozenset({State.UNDELIVERED, State.UNSURE})


@dataclass(frozen=True, slots=True)
class Shown:
    """One message as a line of a page. ``at`` is the moment that counts: due, handed over, or when it came to rest."""

    message: Message
    what: str
    by: str
    stands: str
    why: str
    subject: str
    text: str
    at: datetime | None

    @property
    def seen_to_by(self) -> Staff | None:
        """Who saw to it, where it did not arrive or may not have."""
        return self.message.seen_to_by if self.is_trouble else None

    @property
    def is_trouble(self) -> bool:
        return self.message.state in TROUBLE

    @property
    def is_withheld(self) -> bool:
        return self.message.state in (State.WITHHELD, State.WITHDRAWN)


def show(
    messages: Iterable[Message], rules: Rules, may_read: Collection[int], *, besides: Collection[int] = ()
) -> list[Shown]:
    """Put messages into words for someone who may read the health notes of the clients in ``may_read``.

    ``besides`` are the keys of messages to no one client that she may read all the same.
    """
    return [_show(message, rules, _reads(message, may_read, besides)) for message in messages]


def is_for_few(message: Message) -> bool:
    """Whether it went to no one client, and yet may say a word on somebody's health.

    That is an answer to a number that several share or nobody known has, and a wording that somebody tried out on
    herself: it may be filled in for a client, and have the way to her page in it. Pages and lists have neither.
    """
    return message.client_id is None and (message.staff_id is None or message.kind == TEST)


def _reads(message: Message, may_read: Collection[int], besides: Collection[int]) -> bool:
    if is_for_few(message):
        return message.pk in besides
    return message.client_id is None or message.client_id in may_read


def _show(message: Message, rules: Rules, reads: bool) -> Shown:
    telling = message.occasion in TELLING and not reads
    says = message.state in GONE and not telling
    return Shown(
        message=message,
        what=_("message") if telling and message.staff_id is None else _what(message),
        by=str(CHANNELS.get(message.channel, "")),
        stands=_stands(message),
        why=_why(message, rules, reads, telling),
        # What has not left yet has no text, and its row may have been read without one.
        subject=message.subject if says else "",
        text=(message.text if reads else links.hidden(message.text)) if says else "",
        at=_at(message),
    )


def _what(message: Message) -> str:
    if message.kind == TEST and message.staff_id is not None:
        return _("test of a wording")
    return str(OCCASIONS.get(message.occasion, message.occasion))


def _stands(message: Message) -> str:
    if message.state == State.HANDED_OVER and message.rehearsed:
        return _("on the pretend phone")
    return str(STATES[message.state])


def _why(message: Message, rules: Rules, reads: bool, telling: bool) -> str:
    if message.reason == Reason.ON_HOLD and not reads:
        return _("a person decides first")
    if message.state in (State.WITHHELD, State.WITHDRAWN):
        return spoken(message.reason)
    return "" if telling else spoken(planning.explain(message, rules))


def _at(message: Message) -> datetime | None:
    if message.state in (State.PLANNED, State.CLAIMED, State.HANDING_OVER):
        return message.due_at
    if message.state == State.HANDED_OVER:
        return message.handed_over_at
    if message.state in (State.WITHHELD, State.WITHDRAWN):
        return message.due_at or message.aim_at or message.ended_at
    return message.handed_over_at or message.ended_at


def language_name(code: str) -> str:
    """Name a language in the reader's own: ``es`` is Spanish; what is no language code stays as it is written."""
    try:
        return Locale.parse(code, sep="-").get_display_name(say.language_of(get_language() or "en")) or code
    except (ValueError, UnknownLocaleError):
        return code


def written_number(e164: str, region: str) -> str:
    """Return a number as people of ``region`` write it; one from abroad with its country code."""
    try:
        parsed = phonenumbers.parse(e164)
    except phonenumbers.NumberParseException:
        return e164
    at_home = phonenumbers.region_code_for_number(parsed) == region
    way = phonenumbers.PhoneNumberFormat.NATIONAL if at_home else phonenumbers.PhoneNumberFormat.INTERNATIONAL
    return phonenumbers.format_number(parsed, way)
