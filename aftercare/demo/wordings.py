"""The demo owner's own wordings: a text in two versions, a caution added to, a language begun; what a text costs."""

from __future__ import annotations

from datetime import datetime, timedelta
from decimal import Decimal

from aftercare import versions
from aftercare.lines import lines_of, save
from aftercare.versions import Slot
from aftercare.wording import Words
from studio.models import Staff, Studio

CHECK = Slot("check", "", 0, "sms", "en")
CAUTION = Slot("caution", "", 0, "email", "en")
FRENCH = Slot("check", "", 0, "email", "fr")
PRICE = Decimal("0.0079")  # invented, as are all prices here

_ASKS = (
    "{{ studio }}: Hi {{ first_name }}, how do your eyes feel today? Tell us anything you notice, or reply GOOD. "
    "{{ caution }} {{ how_to_stop }}"
)
_FRENCH = """Bonjour {{ first_name }},

Comment vont vos yeux aujourd’hui ? Dites-nous tout ce que vous remarquez.

{{ caution }}

{{ studio }}
Pour ne plus recevoir ces messages, répondez STOP. {{ how_to_stop }}"""


def write(studio: Studio, since: datetime) -> None:
    """Write them as of the days before the demo's messages begin."""
    owner = Staff.objects.filter(studio=studio, is_owner=True).first()
    if owner is None:
        return
    save(lines_of(studio)["sms"], PRICE, "USD")
    _save(studio, CHECK, Words("", _ASKS.replace("feel", "do")), owner, since - timedelta(days=20), 0)
    _save(studio, CHECK, Words("", _ASKS), owner, since - timedelta(days=3), 1)
    _save(studio, FRENCH, Words("Comment vont vos yeux ?", _FRENCH), owner, since - timedelta(days=3), 0)
    versions.save(
        studio,
        CAUTION,
        Words("", ""),
        by=owner,
        now=since - timedelta(days=2),
        seen=0,
        addition="The eye clinic at Wrenfield General is open at night: entrance on Alder Street.",
    )


def _save(studio: Studio, slot: Slot, words: Words, by: Staff, now: datetime, seen: int) -> None:
    versions.save(studio, slot, words, by=by, now=now, seen=seen)
