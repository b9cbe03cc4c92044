"""SMTP step by step (RFC 5321, 3.3), because only the step tells whether a message may have arrived.

Before DATA it has certainly not; from DATA on, where the line breaks, nobody knows.
"""

from __future__ import annotations

import smtplib
from contextlib import suppress
from email.utils import parseaddr

from django.core.mail import EmailMessage
from django.core.mail.backends.smtp import EmailBackend
from django.core.mail.message import sanitize_address

from aftercare.core import bounces
from aftercare.core.delivery import Event
from aftercare.transports.base import Outcome, Outgoing
from aftercare.transports.email.outcomes import by_code, is_yes, lost, not_taken, refused, said, words
from aftercare.transports.email.writing import REFERENCE_HEADER


def by_smtp(backend: EmailBackend, outgoing: Outgoing, email: EmailMessage, raw: bytes) -> Outcome:
    smtp: smtplib.SMTP = backend.connection  # type: ignore[assignment]  # open by now
    try:
        outcome = _envelope(smtp, outgoing, email, len(raw))
    except ValueError:
        outcome = refused(outgoing, f"“{outgoing.address}” is not an e-mail address that the mail server can take.")
    except OSError as error:  # smtplib's errors are OSErrors too
        return not_taken(outgoing, f"The mail server hung up before the message began ({said(error)}).")
    outcome = outcome or _content(smtp, outgoing, email, raw)
    if outcome.event is Event.REFUSED:
        with suppress(OSError):  # the next message finds out by itself
            smtp.rset()
    return outcome


def _envelope(smtp: smtplib.SMTP, outgoing: Outgoing, email: EmailMessage, size: int) -> Outcome | None:
    """Name sender and recipient; return None where the server takes both. What fails here has certainly not left."""
    sender = parseaddr(sanitize_address(email.from_email, "utf-8"))[1]
    smtp.ehlo_or_helo_if_needed()
    code, answer = smtp.mail(sender, _options(smtp, str(email.extra_headers[REFERENCE_HEADER]), size))
    if not is_yes(code):  # the sender is refused: the studio's matter, not hers, and one that can be mended
        return not_taken(outgoing, f"The mail server does not take mail from {sender} ({words(code, answer)}).")
    code, answer = smtp.rcpt(sanitize_address(outgoing.address, "utf-8"))
    if not is_yes(code):
        problem = f"The mail server refused {outgoing.address} ({words(code, answer)})."
        return by_code(outgoing, code, problem, bad_address=bounces.is_for_good([words(code, answer)]))
    return None


def _options(smtp: smtplib.SMTP, reference: str, size: int) -> list[str]:
    """What is said beside the sender: how large it is, and that a report on it names our reference, not her words."""
    options = [f"size={size}"] if smtp.has_extn("size") else []
    if smtp.has_extn("dsn"):  # RFC 3461, 4.3 and 4.4; letters, digits and hyphens need no coding
        options += [f"ENVID={reference}", "RET=HDRS"]
    return options


def _content(smtp: smtplib.SMTP, outgoing: Outgoing, email: EmailMessage, raw: bytes) -> Outcome:
    try:
        code, answer = smtp.data(raw)
    except smtplib.SMTPDataError as error:  # DATA itself was refused
        return by_code(outgoing, error.smtp_code, f"The mail server refused the message ({said(error)}).")
    except OSError as error:
        return lost(outgoing, f"The line dropped before the mail server answered ({said(error)})")
    if is_yes(code):
        message_id = str(email.extra_headers["Message-ID"])
        return Outcome(reference=outgoing.reference, event=Event.TAKEN, provider_ref=message_id)
    if not 400 <= code < 600:
        return lost(outgoing, f"The mail server's answer could not be read ({words(code, answer)})")
    return by_code(outgoing, code, f"The mail server refused the message ({words(code, answer)}).")
