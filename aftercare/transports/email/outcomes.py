"""What becomes of an e-mail, in sentences for the artist; what a server's code means (RFC 5321, 4.2.1)."""

from __future__ import annotations

import smtplib

from aftercare.core.delivery import Event
from aftercare.transports.base import Outcome, Outgoing


def is_yes(code: int) -> bool:
    return 200 <= code < 300


def by_code(outgoing: Outgoing, code: int, problem: str, *, bad_address: bool = False) -> Outcome:
    """RFC 5321, 4.2.1: 5yz is for good, 4yz passes. 552 from old servers means "later" (4.5.3.1.10)."""
    if 500 <= code < 600 and code != 552:
        return refused(outgoing, problem, bad_address=bad_address)
    return not_taken(outgoing, problem)


def refused(outgoing: Outgoing, problem: str, *, bad_address: bool = False) -> Outcome:
    sentence = f"{problem} Correct it on the client's card."
    return Outcome(reference=outgoing.reference, event=Event.REFUSED, problem=sentence, bad_address=bad_address)


def not_taken(outgoing: Outgoing, problem: str) -> Outcome:
    return Outcome(reference=outgoing.reference, event=Event.NOT_TAKEN, problem=problem)


def lost(outgoing: Outgoing, problem: str) -> Outcome:
    return Outcome(
        reference=outgoing.reference, event=Event.LOST, problem=f"{problem}: nobody knows whether the message left."
    )


def words(code: int, answer: bytes) -> str:
    return f"{code} {' '.join(answer.decode('utf-8', 'replace').split())[:160]}"


def said(error: Exception) -> str:
    if isinstance(error, smtplib.SMTPResponseException):
        answer = error.smtp_error
        return words(error.smtp_code, answer if isinstance(answer, bytes) else str(answer).encode())
    return " ".join(str(error).split())[:160] or type(error).__name__
