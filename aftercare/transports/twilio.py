"""Texts through Twilio's public API, by HTTP: sending, receipts, replies, and its own way of signing.

Fields, statuses, error codes and the signature are as in its public documentation ("Message resource", "Webhooks
security", "Error and warning dictionary"), from memory but for the signature, which its own library judges in tests.
"""

from __future__ import annotations

import base64
import hashlib
import hmac
from typing import Any, ClassVar
from urllib.parse import parse_qsl, urlsplit, urlunsplit

from aftercare.transports.base import Callback, Forged
from aftercare.transports.http_sms import HttpSms

SIGNATURE, SIGNED_HOW = "x-twilio-signature", "x-twilio-webhooks-signature-settings"
ALGORITHMS = {"HMAC_SHA1": hashlib.sha1, "HMAC_SHA256": hashlib.sha256}

_CORRECT = "Correct it on the client's card."
# What is wrong with the very number, and stays so. Everything else can be mended: the account, the sender, the day.
REFUSED = {
    "21211": f"This is no number that exists. {_CORRECT}",
    "21217": f"This is no number that exists. {_CORRECT}",
    "21610": "This number has opted out of the studio's texts at the carrier: only her own START there ends that.",
    "21614": f"This number is no mobile and takes no texts. {_CORRECT}",
}
# Of a message that was taken; what a client's telephone or carrier did with it.
PROBLEMS = {
    "30003": "Her telephone could not be reached: switched off or out of range.",
    "30004": "Her number or her carrier blocks these texts.",
    "30005": f"Her number is unknown to its carrier: it may be out of use. {_CORRECT}",
    "30006": f"Her number is a landline, or its carrier takes no texts. {_CORRECT}",
    "30007": "The carrier took the text for unwanted advertising and filtered it.",
    "30008": "The carrier did not say why the text did not arrive.",
    "30032": "The sender's toll-free number is not verified: whoever runs the service has to see to it.",
    "30034": "The sender's number is not registered with the carriers: whoever runs the service has to see to it.",
}
WORDS = {
    **{"accepted": "", "scheduled": "", "queued": "", "sending": "", "sent": ""},
    **{
        "delivered": "delivered",
        "read": "delivered",
        "undelivered": "failed",
        "failed": "failed",
        "canceled": "failed",
    },
}


class Twilio(HttpSms):
    """``auth_token`` also signs callbacks; with an API key (``key_sid``, ``key_secret``) it does nothing else.

    ``messaging_service`` is the SID of a service that chooses the sender; without one, the line's number is.
    """

    name: ClassVar[str] = "twilio"

    def __init__(
        self,
        *,
        account_sid: str,
        auth_token: str,
        key_sid: str = "",
        key_secret: str = "",
        messaging_service: str = "",
        api: str = "https://api.twilio.com",
        callback: str = "",
        window: int | str = 20,
        timeout: float | str = 20,
        receipt_wait: int | str = 600,
    ) -> None:
        if not account_sid or not auth_token:
            raise ValueError("account_sid and auth_token are both needed: copy them from the provider's console.")
        sender = {"MessagingServiceSid": messaging_service} if messaging_service else {"From": "{from}"}
        options: dict[str, Any] = {
            "taken": {"status": [200, 201], "path": "sid"},
            "provider_ref": {"path": "sid"},
            "refused": {"path": "code", "codes": REFUSED},
            "receipts": {
                "word": "MessageStatus",
                "words": WORDS,
                "provider_ref": "MessageSid",
                "problem": "ErrorCode",
                "problems": PROBLEMS,
            },
            "replies": {"text": "Body", "from_address": "From", "to_address": "To", "provider_ref": "MessageSid"},
        }
        super().__init__(
            url=f"{api}/2010-04-01/Accounts/{account_sid}/Messages.json",
            fields={"To": "{to}", "Body": "{text}", "StatusCallback": "{callback}", **sender},
            user=key_sid or account_sid,
            password=key_secret or auth_token,
            callback=callback,
            account=account_sid,
            window=window,
            timeout=timeout,
            receipt_wait=receipt_wait,
            **options,
        )
        self.auth_token = auth_token

    def verify(self, callback: Callback) -> None:
        """Check the HMAC over the address and the sorted fields of the form; SHA-256 where the call says so."""
        algorithm = "HMAC_SHA1"
        for part in callback.headers.get(SIGNED_HOW, "").split(","):
            name, _, value = part.partition("=")
            algorithm = value.strip().upper() if name.strip() == "algorithm" else algorithm
        if algorithm not in ALGORITHMS:
            raise Forged(f"The callback is signed by {algorithm[:40]!r}, which is not known here.")
        given = callback.headers.get(SIGNATURE, "").encode("utf-8", "backslashreplace")
        signatures = [self._sign(url, callback.body, algorithm) for url in _with_and_without_port(callback.url)]
        if not any(hmac.compare_digest(given, one) for one in signatures):
            raise Forged("The callback's signature is wrong: check auth_token, and that PUBLIC_URL is what it calls.")

    def _sign(self, url: str, body: bytes, algorithm: str) -> bytes:
        fields = set(parse_qsl(body.decode("utf-8", "replace"), keep_blank_values=True))
        covered = url + "".join(name + value for name, value in sorted(fields))
        return base64.b64encode(hmac.digest(self.auth_token.encode(), covered.encode(), ALGORITHMS[algorithm]))


def _with_and_without_port(url: str) -> list[str]:
    """Return the address in both ways in which the provider signs it: it is not always the same."""
    parts = urlsplit(url)
    host = parts.netloc.partition(":")[0]
    port = parts.port or (443 if parts.scheme == "https" else 80)
    return [urlunsplit(parts._replace(netloc=netloc)) for netloc in (host, f"{host}:{port}")]
