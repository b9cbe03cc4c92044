"""Keys by which a mail provider knows a message again, so that one whose answer was lost may be sent once more.

Resend: the HTTP header Idempotency-Key, up to 256 letters, 24 hours; by SMTP the mail's header Resend-Idempotency-Key.
A key with other contents is answered with 409. https://resend.com/docs/dashboard/emails/idempotency-keys
Brevo: idempotencyKey among the headers in the call's body, a UUID, 30 minutes; a second use is answered with the error
duplicate_parameter. https://developers.brevo.com/docs/heterogenous-versions-batch-emails
Of no other provider that anymail knows was a documented key found.
"""

from __future__ import annotations

import uuid

from anymail.exceptions import AnymailRequestsAPIError
from django.core.mail import EmailMessage
from django.core.mail.backends.base import BaseEmailBackend
from django.core.mail.backends.smtp import EmailBackend as SMTPBackend

from aftercare.transports.base import Outgoing

RESEND, BREVO = "Resend", "Brevo"  # as anymail calls them
_LIFETIMES = {RESEND: 24 * 3600, BREVO: 30 * 60}  # seconds
_RESEND_BY_SMTP = "smtp.resend.com"


def lifetime(backend: BaseEmailBackend) -> int:
    """Return for how many seconds the provider behind a backend knows a key; 0 where it knows none."""
    return _LIFETIMES.get(_provider(backend), 0)


def wire_reference(backend: BaseEmailBackend, outgoing: Outgoing) -> str:
    """Return what names the message to the provider: under one key everything has to be the same, this included."""
    return outgoing.key if outgoing.key and lifetime(backend) else outgoing.reference


def put(backend: BaseEmailBackend, email: EmailMessage, key: str) -> None:
    """Put the key among a mail's headers, where the provider looks for it there."""
    if not key:
        return
    if _provider(backend) == BREVO:
        email.extra_headers["idempotencyKey"] = str(uuid.uuid5(uuid.NAMESPACE_OID, key))
    elif isinstance(backend, SMTPBackend) and lifetime(backend):
        email.extra_headers["Resend-Idempotency-Key"] = key


def put_in_session(backend: BaseEmailBackend, key: str) -> None:
    """Put the key into the HTTP call that comes next on an open backend: anymail has no place for it."""
    if _provider(backend) == RESEND and not isinstance(backend, SMTPBackend):
        backend.session.headers["Idempotency-Key"] = key or None  # type: ignore[attr-defined]  # anymail's; None: no such header


def was_taken_before(backend: BaseEmailBackend, key: str, error: AnymailRequestsAPIError) -> bool:
    """Whether an error says no more than that a message came under the same key before."""
    said = error.response.text if key and error.response is not None else ""
    return _provider(backend) == BREVO and "duplicate_parameter" in said


def _provider(backend: BaseEmailBackend) -> str:
    if isinstance(backend, SMTPBackend):
        return RESEND if str(backend.host).lower() == _RESEND_BY_SMTP else ""
    return str(getattr(backend, "esp_name", ""))
