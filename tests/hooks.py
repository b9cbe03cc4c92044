"""Calls at a line's address, as a provider that signs JSON makes them, and the line that they are for."""

from __future__ import annotations

import hashlib
import hmac
import json
from copy import deepcopy
from typing import Any

from django.test import Client as Browser

from aftercare.models import Line
from studio.models import Studio

HTTP_SMS = "aftercare.transports.http_sms.HttpSms"
SECRET = "a-secret-of-the-two"  # of the tests alone
OPTIONS: dict[str, Any] = {
    "url": "http://127.0.0.1:9/send",
    "fields": {"to": "{to}", "text": "{text}"},
    "receipts": {"word": "state", "words": {"DELIVRD": "delivered", "UNDELIV": "failed"}, "provider_ref": "id"},
    "replies": {"text": "text", "from_address": "from", "to_address": "to", "provider_ref": "id"},
    "signature": {"header": "X-Signature", "secret": SECRET},
    "account": "carrier",
}
NUMBER, MIA = "+12125550199", "+12125550101"


def make_line(studio: Studio, address: str = NUMBER, **options: Any) -> Line:
    """Make a line by HTTP."""
    facts = {"channel": "sms", "address": address, "transport": HTTP_SMS}
    return Line.objects.create(studio=studio, options={**deepcopy(OPTIONS), **options}, **facts)


def signed(body: bytes) -> dict[str, str]:
    return {"X-Signature": hmac.new(SECRET.encode(), body, hashlib.sha256).hexdigest()}


def call(line_id: int, rows: Any, *, query: str = "", **headers: str) -> int:
    """Call a line's address; return the status of the answer."""
    body = rows if isinstance(rows, bytes) else json.dumps(rows).encode()
    given = headers or signed(body)
    answer = Browser().post(f"/hooks/{line_id}/{query}", body, content_type="application/json", headers=given)
    return answer.status_code
