"""A mail provider through anymail, or one of Django's backends for trying out.

One call carries one message: anymail's calls for many take one text for all, and each of ours has its own words.
"""

from __future__ import annotations

import requests
from anymail.exceptions import AnymailError, AnymailInvalidAddress, AnymailRecipientsRefused, AnymailRequestsAPIError
from django.core.mail import EmailMessage
from django.core.mail.backends.base import BaseEmailBackend

from aftercare.core.delivery import Event
from aftercare.transports.base import Outcome, Outgoing
from aftercare.transports.email import keys
from aftercare.transports.email.outcomes import lost, not_taken, refused, said

_REFUSED = frozenset({"rejected", "invalid", "failed"})  # anymail's words for a recipient's status
_NEVER_CONNECTED = (requests.exceptions.ConnectTimeout, requests.exceptions.InvalidURL)


def by_backend(backend: BaseEmailBackend, outgoing: Outgoing, email: EmailMessage) -> Outcome:
    try:
        backend.send_messages([email])
    except (AnymailRecipientsRefused, AnymailInvalidAddress) as error:
        return refused(outgoing, f"The mail provider refused {outgoing.address} ({said(error)}).")
    except AnymailRequestsAPIError as error:
        if keys.was_taken_before(backend, outgoing.key, error):
            return _taken(outgoing, email, None)
        return _by_answer(outgoing, error)
    except AnymailError as error:  # our own fault or the settings': nothing has left
        return not_taken(outgoing, f"The message could not be given to the mail provider ({said(error)}).")
    status = getattr(email, "anymail_status", None)
    recipient = next(iter(status.recipients.values()), None) if status is not None else None
    if recipient is not None and _is_no(getattr(status, "esp_response", None)):
        # Postmark's backend reads its 422 as "unknown", where the address that is refused stands nowhere in its words.
        recipient.status = recipient.status if recipient.status in _REFUSED else "rejected"
    if recipient is not None and recipient.status in _REFUSED:
        problem = f"The mail provider refused {outgoing.address} ({recipient.status})."
        return refused(outgoing, problem, bad_address=recipient.status == "invalid")
    return _taken(outgoing, email, recipient.message_id if recipient is not None else None)


def _is_no(answer: requests.Response | None) -> bool:
    return answer is not None and getattr(answer, "status_code", 200) >= 400


def _taken(outgoing: Outgoing, email: EmailMessage, provider_ref: str | None) -> Outcome:
    found = str(provider_ref or email.extra_headers["Message-ID"])
    return Outcome(reference=outgoing.reference, event=Event.TAKEN, provider_ref=found)


def _by_answer(outgoing: Outgoing, error: AnymailRequestsAPIError) -> Outcome:
    """Judge by the provider's HTTP status; without one the request may or may not have arrived."""
    status = error.status_code
    if status is None and _never_left(error):
        return not_taken(outgoing, f"The mail provider could not be reached ({said(error)}).")
    # 2xx with an answer that cannot be read; 409: the same key is at work, or was used (RFC 9110, 15.5.10); 502, 504: a
    # gateway could not read the answer of whoever may have taken it, or gave up waiting for one (15.6.3, 15.6.5)
    if status is None or 200 <= status < 300 or status in (409, 502, 504):
        return lost(outgoing, f"The mail provider did not answer ({said(error)})")
    if status in (400, 413, 422):
        return refused(outgoing, f"The mail provider refused the message to {outgoing.address} ({said(error)}).")
    return Outcome(  # busy, or out of order, or a key that is wrong: all can be mended
        reference=outgoing.reference,
        event=Event.NOT_TAKEN,
        problem=f"The mail provider did not take the message ({said(error)})."[:400],
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
