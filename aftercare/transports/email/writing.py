"""An e-mail as it is written: its headers, both forms of its words, what belongs within and what beside (RFC 2046)."""

from __future__ import annotations

from collections.abc import Sequence
from email import encoders
from email.generator import BytesGenerator
from email.message import Message as MIME
from email.mime.base import MIMEBase
from email.mime.multipart import MIMEMultipart
from email.utils import formataddr
from io import BytesIO
from typing import Any

from anymail.backends.base import AnymailBaseBackend
from django.core.mail import EmailMessage, EmailMultiAlternatives
from django.core.mail.backends.base import BaseEmailBackend

from aftercare.transports.base import Enclosure, Outgoing

REFERENCE_HEADER = "X-Message-Reference"


def write(outgoing: Outgoing, from_address: str, reference: str, backend: BaseEmailBackend) -> EmailMultiAlternatives:
    """Write a message as the backend takes it; ``from_address`` is for a line that has none of its own."""
    sender = outgoing.sender or from_address
    email = Letter(
        subject=" ".join(outgoing.subject.split()),
        body=outgoing.text,
        from_email=formataddr((outgoing.sender_name, sender)),
        to=[outgoing.address],
        connection=backend,
        headers={
            "Message-ID": f"<{reference}@{_domain(sender)}>",
            REFERENCE_HEADER: reference,
            "Auto-Submitted": "auto-generated",  # RFC 3834: no out-of-office answers, please
            **outgoing.headers,
        },
    )
    email.metadata = {"reference": reference}  # type: ignore[attr-defined]  # anymail's: comes back in callbacks
    within = [one for one in outgoing.enclosures if one.inline_id]
    if outgoing.html:
        email.attach_alternative(outgoing.html, "text/html")
    if isinstance(backend, AnymailBaseBackend):  # each provider nests pictures in its own way: anymail knows
        email.attachments += [_part(one) for one in within]
    else:
        email.within = [_part(one) for one in within]
    email.attachments += [_part(one) for one in outgoing.enclosures if not one.inline_id]
    return email


def as_bytes(email: EmailMessage) -> bytes:
    """Return a mail as it goes over the wire.

    Headers stay on one line up to what SMTP carries (RFC 5322, 2.1.1): a fold in List-Unsubscribe has broken
    signatures on the way, and its link is hardly ever shorter than the 78 letters beyond which Django would fold it.
    """
    written = BytesIO()
    BytesGenerator(written, mangle_from_=False, maxheaderlen=998).flatten(email.message(), linesep="\r\n")
    return written.getvalue()


class Letter(EmailMultiAlternatives):
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
