"""Trying a wording out on oneself: to one's own phone or address, through the same doors as any message.

In rehearsal it goes to the pretend phone, after a stop of one's own not at all, and never to anybody else. It is marked
as a test, and it is the draft as it stands: nothing needs to be saved.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

from django.core.exceptions import ValidationError
from django.utils.translation import gettext as _

from aftercare import outbox
from aftercare.core.occasions import TEST, Occasion
from aftercare.models import Message
from aftercare.wording import Words, mark_caution
from studio.models import Staff

LAST = timedelta(minutes=30)  # later it would only puzzle
MOST = 10  # an hour and person: each is a text that costs
HOUR = timedelta(hours=1)


def address_of(person: Staff, channel: str) -> str:
    """Return where a test by a channel goes: her own mobile or address; '' where she has none."""
    return person.mobile if channel == "sms" else person.email


def send(words: Words, channel: str, *, to: Staff, token: str, now: datetime) -> bool:
    """Promise a test of these words, filled in, due now; return whether it is new: one ``token`` is one test.

    Raises ValidationError where she has no number or address of her own, or has tried out too often.
    """
    address = address_of(to, channel)
    if not address:
        raise ValidationError(
            _("There is no mobile of yours on record: add it under People.")
            if channel == "sms"
            else _("There is no e-mail address of yours on record: add it under People.")
        )
    mine = Message.objects.filter(studio=to.studio_id, staff=to, occasion=Occasion.ALERT, kind=TEST)
    if mine.filter(planned_from__gt=now - HOUR).count() >= MOST:
        raise ValidationError(_("That were %(most)s tests within an hour: wait a little, then go on.") % {"most": MOST})
    marked = _marked(words, channel)
    message = Message(
        studio_id=to.studio_id,
        key=f"staff:{to.pk}:{Occasion.ALERT}:{TEST}:{token[:40]}",
        staff=to,
        occasion=Occasion.ALERT,
        kind=TEST,
        language=words.language,
        own_words=mark_caution(marked),
        subject=marked.subject[:200],
        channel=channel,
        address=address,
        due_at=now,
        no_later_than=now + LAST,
        planned_from=now,
    )
    return bool(outbox.promise([message]))


def newest(person: Staff) -> Message | None:
    """Return her last test."""
    mine = Message.objects.filter(studio=person.studio_id, staff=person, occasion=Occasion.ALERT, kind=TEST)
    return mine.order_by("-planned_from", "-pk").first()


def _marked(words: Words, channel: str) -> Words:
    if channel == "sms":
        return replace(words, body=_("Test: %(text)s") % {"text": words.body})
    return replace(words, subject=_("Test: %(text)s") % {"text": words.subject})
