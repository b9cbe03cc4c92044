"""E-mail through Django's mail: an SMTP server, any provider that anymail knows, or Django's backends for trying out.

Messages go one by one on an open connection: Django's ``send_messages`` stops at the first refusal and does not tell
which had gone. SMTP is spoken step by step (RFC 5321, 3.3), because only the step tells whether a message whose
connection broke may have arrived: before DATA certainly not, from DATA on nobody knows.
"""

from __future__ import annotations

import smtplib
from collections.abc import Iterator, Sequence
from contextlib import suppress
from email import encoders
from email.errors import MessageError
from email.message import Message as MIME
from email.mime.base import MIMEBase
from email.mime.multipart import MIMEMultipart
from email.utils import formataddr, parseaddr
from typing import Any, ClassVar

import requests
from anymail.backends.base import AnymailBaseBackend
from anymail.exceptions import AnymailError, AnymailInvalidAddress, AnymailRecipientsRefused, AnymailRequestsAPIError
from django.core.exceptions import ValidationError
from django.core.mail import EmailMessage, EmailMultiAlternatives, get_connection
from django.core.mail.backends.base import BaseEmailBackend
from django.core.mail.backends.smtp import EmailBackend as SMTPBackend
from django.core.mail.message import sanitize_address
from django.core.validators import validate_email

from aftercare.core.delivery import Event
from aftercare.transports.base import Enclosure, Outcome, Outgoing, Transport

REFERENCE_HEADER = "X-Message-Reference"
_REFUSED_BY_PROVIDER = frozenset({"rejected", "invalid", "failed"})  # anymail's words for a recipient's status
_NEVER_CONNECTED = (requests.exceptions.ConnectTimeout, requests.exceptions.InvalidURL)


class Email(Transport):
    """``backend`` is a Django mail backend's dotted path, else the one in Django's settings; the rest is its own."""

    name: ClassVar[str] = "email"
    channels: ClassVar[frozenset[str]] = frozenset({"email"})

    # Two minutes are six answers of a server that is slow with each of them.
    def __init__(
        self, *, backend: str | None = None, from_address: str = "", patience: int = 120, **options: Any
    ) -> None:
        self.patience = patience
        self.backend: BaseEmailBackend = get_connection(backend, **options)
        self.from_address = parseaddr(from_address or EmailMessage().from_email)[1]  # else Django's own default
        self.is_open = False

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        for outgoing in batch:
            yield self._send(outgoing)

    def close(self) -> None:
        self.is_open = False
        with suppress(OSError):  # smtplib's errors are OSErrors too; what was taken was answered for before
            self.backend.close()

    def _send(self, outgoing: Outgoing) -> Outcome:
        try:
            validate_email(outgoing.address)
            email = self._email(outgoing)
            raw = email.message().as_bytes(linesep="\r\n")
        except (ValidationError, ValueError, MessageError):
            return _refused(outgoing, f"“{outgoing.address}” is not an e-mail address.")
        try:
            self._open()
        except (OSError, AnymailError) as error:
            self.close()
            return _not_taken(outgoing, f"The mail server could not be reached ({_said(error)}).")
        if isinstance(self.backend, SMTPBackend):
            outcome = _by_smtp(self.backend, outgoing, email, raw)
        else:
            outcome = _by_backend(self.backend, outgoing, email)
        if outcome.event not in (Event.TAKEN, Event.REFUSED):
            self.close()  # whatever state the connection is in, the next message begins on a fresh one
        return outcome

    def _open(self) -> None:
        if not self.is_open:
            self.backend.open()
            self.is_open = True

    def _email(self, outgoing: Outgoing) -> EmailMessage:
        sender = outgoing.sender or self.from_address
        email = _Letter(
            subject=" ".join(outgoing.subject.split()),
            body=outgoing.text,
            from_email=formataddr((outgoing.sender_name, sender)),
            to=[outgoing.address],
            connection=self.backend,
            headers={
                "Message-ID": f"<{outgoing.reference}@{_domain(sender)}>",
                REFERENCE_HEADER: outgoing.reference,
                "Auto-Submitted": "auto-generated",  # RFC 3834: no out-of-office answers, please
                **outgoing.headers,
            },
        )
        email.metadata = {"reference": outgoing.reference}  # type: ignore[attr-defined]  # anymail's: comes back in callbacks
        within = [one for one in outgoing.enclosures if one.inline_id]
        if outgoing.html:
            email.attach_alternative(outgoing.html, "text/html")
        if isinstance(self.backend, AnymailBaseBackend):  # each provider nests pictures in its own way: anymail knows
            email.attachments += [_part(one) for one in within]
        else:
            email.within = [_part(one) for one in within]
        email.attachments += [_part(one) for one in outgoing.enclosures if not one.inline_id]
        return email


class _Letter(EmailMultiAlternatives):
    """Text and HTML that say the same, the pictures of the latter beside it (RFC 2046, 5.1.4; RFC 2387)."""

    within: Sequence[MIMEBase] = ()

    def _create_mime_attachment(self, content: Any, mimetype: str) -> MIME:
        # Django builds each alternative by this: it has no public place for multipart/related.
        made: MIME = super()._create_mime_attachment(content, mimetype)  # type: ignore[misc]  # not in its stubs
        if mimetype != "text/html" or not self.within:
            return made
        related = MIMEMultipart("related", type="text/html")
        for part in (made, *self.within):
            related.attach(part)
        return related


def _part(enclosure: Enclosure) -> MIMEBase:
    """Write an enclosure as a part of a mail, its type's parameters kept."""
    media_type, *parameters = (piece.strip() for piece in enclosure.media_type.split(";"))
    part = MIMEBase(*media_type.split("/", 1))
    for parameter in parameters:
        name, _, value = parameter.partition("=")
        part.set_param(name, value.strip('"'))
    part.set_payload(enclosure.content)
    encoders.encode_base64(part)
    part.add_header("Content-Disposition", "inline" if enclosure.inline_id else "attachment", filename=enclosure.name)
    if enclosure.inline_id:
        part["Content-ID"] = f"<{enclosure.inline_id}>"
    return part


def _domain(address: str) -> str:
    return address.rpartition("@")[2].encode("idna").decode() if "@" in address else "localhost"


def _by_smtp(backend: SMTPBackend, outgoing: Outgoing, email: EmailMessage, raw: bytes) -> Outcome:
    smtp: smtplib.SMTP = backend.connection  # type: ignore[assignment]  # open by now
    try:
        outcome = _envelope(smtp, outgoing, email, len(raw))
    except ValueError:
        outcome = _refused(outgoing, f"“{outgoing.address}” is not an e-mail address that the mail server can take.")
    except OSError as error:  # smtplib's errors are OSErrors too
        return _not_taken(outgoing, f"The mail server hung up before the message began ({_said(error)}).")
    outcome = outcome or _content(smtp, outgoing, email, raw)
    if outcome.event is Event.REFUSED:
        with suppress(OSError):  # the next message finds out by itself
            smtp.rset()
    return outcome


def _envelope(smtp: smtplib.SMTP, outgoing: Outgoing, email: EmailMessage, size: int) -> Outcome | None:
    """Name sender and recipient; return None where the server takes both. What fails here has certainly not left."""
    sender = parseaddr(sanitize_address(email.from_email, "utf-8"))[1]
    smtp.ehlo_or_helo_if_needed()
    code, answer = smtp.mail(sender, _options(smtp, outgoing.reference, size))
    if not _is_yes(code):  # the sender is refused: the studio's matter, not hers, and one that can be mended
        return _not_taken(outgoing, f"The mail server does not take mail from {sender} ({_words(code, answer)}).")
    code, answer = smtp.rcpt(sanitize_address(outgoing.address, "utf-8"))
    if not _is_yes(code):
        return _by_code(outgoing, code, f"The mail server refused {outgoing.address} ({_words(code, answer)}).")
    return None


def _options(smtp: smtplib.SMTP, reference: str, size: int) -> list[str]:
    """What is said beside the sender: how large it is, and that a report on it names our reference, not her words."""
    options = [f"size={size}"] if smtp.has_extn("size") else []
    if smtp.has_extn("dsn"):  # RFC 3461, 4.3 and 4.4; a reference is in hexadecimals, which need no coding
        options += [f"ENVID={reference}", "RET=HDRS"]
    return options


def _content(smtp: smtplib.SMTP, outgoing: Outgoing, email: EmailMessage, raw: bytes) -> Outcome:
    try:
        code, answer = smtp.data(raw)
    except smtplib.SMTPDataError as error:  # DATA itself was refused
        return _by_code(outgoing, error.smtp_code, f"The mail server refused the message ({_said(error)}).")
    except OSError as error:
        return _lost(outgoing, f"The line dropped before the mail server answered ({_said(error)})")
    if _is_yes(code):
        message_id = str(email.extra_headers["Message-ID"])
        return Outcome(reference=outgoing.reference, event=Event.TAKEN, provider_ref=message_id)
    if not 400 <= code < 600:
        return _lost(outgoing, f"The mail server's answer could not be read ({_words(code, answer)})")
    return _by_code(outgoing, code, f"The mail server refused the message ({_words(code, answer)}).")


def _by_backend(backend: BaseEmailBackend, outgoing: Outgoing, email: EmailMessage) -> Outcome:
    try:
        backend.send_messages([email])
    except (AnymailRecipientsRefused, AnymailInvalidAddress) as error:
        return _refused(outgoing, f"The mail provider refused {outgoing.address} ({_said(error)}).")
    except AnymailRequestsAPIError as error:
        return _by_answer(outgoing, error)
    except AnymailError as error:  # our own fault or the settings': nothing has left
        return _not_taken(outgoing, f"The message could not be given to the mail provider ({_said(error)}).")
    status = getattr(email, "anymail_status", None)
    recipient = next(iter(status.recipients.values()), None) if status is not None else None
    if recipient is not None and recipient.status in _REFUSED_BY_PROVIDER:
        return _refused(outgoing, f"The mail provider refused {outgoing.address} ({recipient.status}).")
    found = (recipient.message_id if recipient is not None else None) or email.extra_headers["Message-ID"]
    return Outcome(reference=outgoing.reference, event=Event.TAKEN, provider_ref=str(found))


def _by_answer(outgoing: Outgoing, error: AnymailRequestsAPIError) -> Outcome:
    """Judge by the provider's HTTP status; without one the request may or may not have arrived."""
    status = error.status_code
    if status is None and _never_left(error):
        return _not_taken(outgoing, f"The mail provider could not be reached ({_said(error)}).")
    if status is None or 200 <= status < 300:  # 2xx with an answer that cannot be read
        return _lost(outgoing, f"The mail provider did not answer ({_said(error)})")
    if status in (400, 413, 422):
        return _refused(outgoing, f"The mail provider refused the message to {outgoing.address} ({_said(error)}).")
    return Outcome(  # busy, or out of order, or a key that is wrong: all can be mended
        reference=outgoing.reference,
        event=Event.NOT_TAKEN,
        problem=f"The mail provider did not take the message ({_said(error)})."[:400],
        retry_after=_seconds(error.response.headers.get("Retry-After", "") if error.response is not None else ""),
    )


def _never_left(error: AnymailRequestsAPIError) -> bool:
    if isinstance(error, _NEVER_CONNECTED):
        return True
    # requests has no class for "connection refused" or "no such host": urllib3's reason inside tells.
    return isinstance(error, requests.exceptions.ConnectionError) and any(
        word in repr(error.__cause__) for word in ("NewConnectionError", "NameResolutionError")
    )


def _seconds(retry_after: str) -> float | None:
    """Read Retry-After in seconds; its other form, a date (RFC 9110, 10.2.3), is left to our own waits."""
    return float(retry_after) if retry_after.isascii() and retry_after.isdigit() else None


def _is_yes(code: int) -> bool:
    return 200 <= code < 300


def _by_code(outgoing: Outgoing, code: int, problem: str) -> Outcome:
    """RFC 5321, 4.2.1: 5yz is for good, 4yz passes. 552 from old servers means "later" (4.5.3.1.10)."""
    return _refused(outgoing, problem) if 500 <= code < 600 and code != 552 else _not_taken(outgoing, problem)


def _refused(outgoing: Outgoing, problem: str) -> Outcome:
    sentence = f"{problem} Correct it on the client's card."
    return Outcome(reference=outgoing.reference, event=Event.REFUSED, problem=sentence)


def _not_taken(outgoing: Outgoing, problem: str) -> Outcome:
    return Outcome(reference=outgoing.reference, event=Event.NOT_TAKEN, problem=problem)


def _lost(outgoing: Outgoing, problem: str) -> Outcome:
    return Outcome(
        reference=outgoing.reference, event=Event.LOST, problem=f"{problem}: nobody knows whether the message left."
    )


def _words(code: int, answer: bytes) -> str:
    return f"{code} {' '.join(answer.decode('utf-8', 'replace').split())[:160]}"


def _said(error: Exception) -> str:
    if isinstance(error, smtplib.SMTPResponseException):
        answer = error.smtp_error
        return _words(error.smtp_code, answer if isinstance(answer, bytes) else str(answer).encode())
    return " ".join(str(error).split())[:160] or type(error).__name__
