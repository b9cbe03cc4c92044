"""Which automatic answer a reply gets at once, at any hour: by kind, the worst first; '' is none.

Sources of the order and of what is to be seen the same day: NHS, "Red eye", reviewed 21 March 2022 (light that hurts,
sight that changed, a painful red eye, a red eye in a lens wearer); first aid for cyanoacrylate as medical encyclopedias
and poison centers agree on it (rinse, no solvent, no force). A clinician signs the words, which are the owner's.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime, timedelta

from aftercare.core.reading import Reading, Sign, Urgency
from aftercare.core.say import LANGUAGES

BREATHING, CHEMICAL, SEALED, SIGHT = "breathing", "chemical", "sealed", "sight"
SEEN_TODAY, SAME_DAY = "seen_today", "same_day"
CALLED_BACK = frozenset({SEEN_TODAY, SAME_DAY})  # those that say by when a person calls
NOBODY_YET = "nobody_yet"  # an hour after an emergency that nobody has taken
AFTER_A_STOP = frozenset({"stopped", "stopped_with_sign", BREATHING, CHEMICAL, SEALED, SIGHT})
WORST_FIRST = (BREATHING, CHEMICAL, SEALED, SIGHT, SEEN_TODAY, SAME_DAY)
# How soon the same answer may go again. A worse kind goes whatever went before.
AGAIN = {kind: timedelta(minutes=10) for kind in (BREATHING, CHEMICAL, SEALED, SIGHT)}
AGAIN |= {SEEN_TODAY: timedelta(hours=12), SAME_DAY: timedelta(hours=12)}
MOST_A_DAY = 6  # of one kind to one address: two services that answer each other come to an end


def answer_to(reading: Reading, *, wears_lenses: bool, after_check: bool) -> str:
    """Return the kind of answer that a reading calls for.

    ``after_check``: it answers a question about her eyes. What was not understood then is taken as a sign.
    """
    signs = set(reading.signs)
    if reading.urgency is Urgency.EMERGENCY:
        return _emergency(signs)
    if reading.urgency is Urgency.SAME_DAY:
        return SEEN_TODAY if _to_be_seen(signs, wears_lenses) else SAME_DAY
    return SAME_DAY if reading.unread and after_check else ""


def _emergency(signs: set[Sign]) -> str:
    if signs & {Sign.BREATHING, Sign.FAINT, Sign.HIVES}:
        return BREATHING
    if Sign.GLUE_IN_EYE in signs:
        return CHEMICAL
    return SEALED if Sign.SEALED_EYE in signs else SIGHT


def _to_be_seen(signs: set[Sign], wears_lenses: bool) -> bool:
    """Red and painful, a red eye in a lens wearer, discharge with pain, light that hurts, sight."""
    red, painful = Sign.REDNESS in signs, Sign.PAIN in signs
    return (
        bool(signs & {Sign.LIGHT, Sign.VISION})
        or (red and (painful or wears_lenses))
        or (painful and Sign.DISCHARGE in signs)
    )


def may_go(kind: str, gone: Iterable[tuple[str, datetime]], now: datetime) -> bool:
    """Whether this answer may go, after the answers (kind, moment) that went to this address in the last day."""
    told = list(gone)
    if sum(one == kind for one, _at in told) >= MOST_A_DAY:
        return False
    # A worse answer has said what these two would; what to do at once in one emergency says nothing of another.
    covers = WORST_FIRST[: WORST_FIRST.index(kind) + 1] if kind in (SEEN_TODAY, SAME_DAY) else (kind,)
    return all(at <= now - AGAIN[kind] for one, at in told if one in covers)


def languages(written: str, hers: str) -> tuple[str, ...]:
    """Return the languages in which an answer goes, one message each.

    ``written`` is that of her words as it was read ("und": not known), ``hers`` one that there are wordings in. Where
    there are none in what she wrote, she gets them in each that there is, hers first: she, or somebody near her, may
    read one.

    >>> languages("es", "en"), languages("und", "en"), languages("pt", "es")
    (('es',), ('en',), ('es', 'en'))
    """
    if written in LANGUAGES:
        return (written,)
    return (hers,) if written == "und" else (hers, *(one for one in LANGUAGES if one != hers))
