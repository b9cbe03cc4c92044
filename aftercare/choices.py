"""What a client chooses on her own pages: channel, language and hours, no more messages, her record, no more links."""

from __future__ import annotations

from datetime import datetime

from django.core.exceptions import ValidationError
from django.utils.translation import gettext as _

from aftercare import facts, links, outbox, stops
from aftercare.core.reach import can_get_texts
from aftercare.core.say import LANGUAGES
from aftercare.core.timing import Occasion
from aftercare.models import Message
from aftercare.texts import RECORD
from studio import records
from studio.models import Client

HOW = "her own page"


def channels(client: Client) -> list[str]:
    """Return by what she can choose to be told: what there is a number or an address for that did not say stop."""
    stopped = stops.standing(client)
    known = {"sms": can_get_texts(client.mobile), "email": bool(client.email)}
    return [channel for channel, is_there in known.items() if is_there and channel not in stopped]


def choose_channel(client: Client, channel: str, *, words_shown: str, now: datetime) -> None:
    """Tell her by this channel from now on. Choosing it says yes to messages about her visits by it.

    Raises ValidationError for a channel by which nothing can reach her; that she stopped is lifted by her START alone.
    """
    if channel not in channels(client):
        raise ValidationError(_("That does not reach you now. Call the studio, and they write the right number down."))
    purpose = "visits"
    records.save_client(
        studio=client.studio,
        client=client,
        by=None,
        now=now,
        answers=[records.Answer(channel, purpose, True, HOW, words_shown)],
        channel=channel,
    )


def choose_language(client: Client, language: str, *, now: datetime) -> None:
    """Write to her in this language from now on."""
    if language not in LANGUAGES:
        raise ValidationError(_("There are no words in that language: choose one of those offered."))
    records.save_client(studio=client.studio, client=client, by=None, now=now, language=language)


def choose_hours(client: Client, hours: str, *, now: datetime) -> None:
    """Write to her at these hours from now on, as far as that is in time; '' for any within the studio's."""
    if hours not in Client.Hours.values:
        raise ValidationError(_("Choose one of the times offered."))
    records.save_client(studio=client.studio, client=client, by=None, now=now, wished_hours=hours)


def stop_everything(client: Client, *, now: datetime) -> list[str]:
    """End all messages to her number and her address; return by what she got them."""
    known = [channel for channel, where in (("sms", client.mobile), ("email", client.email)) if where]
    for channel in known:
        stops.stop(client, channel, words=HOW, by=None, now=now)
    return known


def send_record(client: Client, *, now: datetime) -> str:
    """Send her the link to what is kept about her, where she is reached; return by what, '' where by nothing.

    It goes to her own number or address, so that whoever was forwarded the link of a visit does not read it. Asked for
    again within the hour, it is one.
    """
    book = facts.load([client.pk], now)[client.pk]
    way = book.reach
    if not way.channel:
        return ""
    outbox.promise(
        [
            Message(
                studio_id=client.studio_id,
                key=f"client:{client.pk}:{Occasion.ANSWER}:{RECORD}:{now:%Y%m%d%H}",
                client=client,
                occasion=Occasion.ANSWER,
                kind=RECORD,
                channel=way.channel,
                address=way.address,
                due_at=now,
                planned_from=now,
            )
        ]
    )
    return way.channel


def end_links(client: Client, *, now: datetime) -> None:
    """End all links to her pages; new ones come with the next message."""
    links.revoke(client, why="asked", now=now)
