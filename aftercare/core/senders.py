"""What a line shows as its sender: a number, or a name in letters that no telephone can answer.

Source: 3GPP TS 23.040, 9.1.2.5 (alphanumeric addresses go one way), from memory.
"""

from __future__ import annotations

from typing import Final

from aftercare.core.occasions import Occasion

# What these say asks for an answer, or may be answered with what cannot wait.
ASK_FOR_AN_ANSWER: Final = (
    Occasion.PREPARE,
    Occasion.PATCH_TEST,
    Occasion.CARE,
    Occasion.CHECK,
    Occasion.OPT_IN,
    Occasion.NOTICE,
    Occasion.ANSWER,
)


def is_name(address: str) -> bool:
    """Tell a name in letters from a number or short code; '' leaves the sender to the carrier, and is none.

    >>> is_name("LashRoom"), is_name("+447700900123"), is_name("60777")
    (True, False, False)
    """
    return any(character.isalpha() for character in address)


def problem_of(address: str) -> str:
    """Return why an SMS line cannot have this sender, in a sentence; '' where it can."""
    if not is_name(address):
        return ""
    asking = ", ".join(occasion.value.replace("_", " ") for occasion in ASK_FOR_AN_ANSWER)
    return (
        f"“{address}” is a name in letters: nobody can answer it, and these messages ask for an answer: {asking}. "
        "Give the line a number that receives texts."
    )
