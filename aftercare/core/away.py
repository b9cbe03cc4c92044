"""Whether a machine's answer says that somebody is away, and nothing else."""

from __future__ import annotations

import re

from aftercare.core.reading import Reading, Topic, Urgency

LONGEST = 1_000  # letters; what says more than an absence takes no longer

# As answering machines put it in the two languages (common practice, no source).
_AWAY = re.compile(
    r"\bout of (?:the |my )?office\b|\baway from (?:the |my )?(?:office|desk|e-?mail)\b|"
    r"\b(?:on|taking) (?:(?:annual|maternity|paternity|parental) )?(?:leave|vacation|holidays?)\b|"
    r"\bfuera de (?:la |mi )?oficina\b|\bausente de (?:la |mi )?oficina\b|\bde (?:vacaciones|permiso|viaje)\b",
    re.IGNORECASE,
)
# An absence for any of these is for a person to read.
_HEALTH = re.compile(
    r"\b(?:eyes?|eyelids?|lids?|lash(?:es)?|sick|ill|illness|medical|doctors?|hospital|surgery|emergency room|"
    r"ojos?|p[aá]rpados?|pestañas?|enferm[ao]s?|m[eé]dic[ao]s?|doctor[ae]?s?|hospital|operaci[oó]n|baja)\b",
    re.IGNORECASE,
)
_SAYS_NO_MORE = frozenset({Topic.OTHER, Topic.FINE, Topic.BOOKING})  # "Thank you for your message. Back on Monday."


def says_only_that(subject: str, text: str, reading: Reading) -> bool:
    """Whether a mail that a machine wrote tells of an absence alone.

    ``subject`` is without the one that it answers, ``reading`` is what ``text`` was read as.
    """
    whole = f"{subject}\n{text}"
    if len(whole) > LONGEST or not _AWAY.search(whole) or _HEALTH.search(whole):
        return False
    is_plain = reading.urgency is Urgency.NONE and not reading.signs and not reading.negated
    return is_plain and set(reading.about) <= _SAYS_NO_MORE
