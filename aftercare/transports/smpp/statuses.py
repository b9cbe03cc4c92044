"""What a carrier's command_status means for a text, in a sentence for the artist (SMPP 3.4, 5.1.3, from memory)."""

from __future__ import annotations

from typing import Final

OK: Final = 0x00
UNKNOWN_COMMAND: Final = 0x03  # ESME_RINVCMDID
ASK_AGAIN: Final = 0x64  # ESME_RX_T_APPN: we cannot take it now, send it again
QUEUE_FULL: Final = 0x14  # ESME_RMSGQFUL
THROTTLED: Final = 0x58  # ESME_RTHROTTLED
BUSY: Final = frozenset({QUEUE_FULL, THROTTLED})

_NUMBER = "The carrier does not take {address} as a number for texts. Correct it on the client's card."
_SENDER = "The carrier does not let us send from {sender}. Have it set up there, or change the line."
_UNDELIVERABLE = "The carrier refused the text to {address} for good."

# Trying again would end the same.
REFUSED: Final[dict[int, str]] = {
    0x01: "The carrier does not take a text of this length to {address}.",  # ESME_RINVMSGLEN
    0x0A: _SENDER,  # ESME_RINVSRCADR
    0x0B: _NUMBER,  # ESME_RINVDSTADR
    0x33: _NUMBER,  # ESME_RINVNUMDESTS
    0x43: "The carrier does not take a text of this kind to {address}.",  # ESME_RINVESMCLASS
    0x48: _SENDER,  # ESME_RINVSRCTON
    0x49: _SENDER,  # ESME_RINVSRCNPI
    0x50: _NUMBER,  # ESME_RINVDSTTON
    0x51: _NUMBER,  # ESME_RINVDSTNPI
    0x65: _UNDELIVERABLE,  # ESME_RX_P_APPN
    0x66: _UNDELIVERABLE,  # ESME_RX_R_APPN
    0xFE: _UNDELIVERABLE,  # ESME_RDELIVERYFAILURE
}
_PASSING: Final[dict[int, str]] = {
    QUEUE_FULL: "The carrier's queue is full; the text to {address} waits.",
    THROTTLED: "The carrier asks us to send more slowly; the text to {address} waits.",
}
_OTHER = "The carrier did not take the text to {address} (SMPP status {status:#x})."

# Those of a bind that only a person can mend.
BIND_REFUSED: Final[dict[int, str]] = {
    0x0D: "it does not let this account send",  # ESME_RBINDFAIL
    0x0E: "the password is wrong",  # ESME_RINVPASWD
    0x0F: "it does not know this user",  # ESME_RINVSYSID
    0x53: "it does not know this system type",  # ESME_RINVSYSTYP
}


def sentence(status: int, *, address: str, sender: str) -> str:
    """Say why a text was not taken."""
    words = REFUSED.get(status) or _PASSING.get(status, _OTHER)
    return words.format(address=address, sender=sender or "this sender", status=status)
