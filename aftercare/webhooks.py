"""Where carriers call: whether a call is theirs, and keep it. What it says is read by the next sweep (hearing).

The provider is told yes only once the call is committed; where that fails, it hears 5xx and calls again.
"""

from __future__ import annotations

import hashlib
import json
import logging
import threading
import time

from django.conf import settings
from django.contrib.auth.decorators import login_not_required
from django.core.exceptions import ImproperlyConfigured
from django.db import Error as AnyDatabaseError
from django.db import connection
from django.http import HttpRequest, HttpResponse
from django.views.decorators.csrf import csrf_exempt
from django.views.decorators.http import require_http_methods

from aftercare import lines, tasks
from aftercare.models import Line, StoredCallback
from aftercare.transports.base import Callback, Forged, Transport

log = logging.getLogger(__name__)

MOST_BYTES = 64 * 1024  # of address and body: a text of 1,600 characters in JSON is 10 KB
KNOWN_SECONDS = 5  # for so long a changed secret is not noticed; without this every call would read its line
NUDGE_SECONDS = 0.2
_SECRETS = frozenset({"authorization", "proxy-authorization", "cookie"})
# One statement and one commit. The columns that it leaves out have their defaults in the database.
_KEEP = (
    f"INSERT INTO {StoredCallback._meta.db_table} (line_id, digest, url, headers, body) VALUES (%s, %s, %s, %s, %s) "
    "ON CONFLICT (line_id, digest) DO NOTHING"
)
_known = threading.local()  # transports are not shared between threads
_last_nudge = 0.0


@csrf_exempt
@login_not_required
@require_http_methods(["GET", "POST"])
def hook(request: HttpRequest, line_id: int, secret: str = "") -> HttpResponse:
    """Keep one call at a line's address: 413, 404, 403, or kept (200), in this order. A repeated one is kept once.

    The answer is empty, as some gateways send what it says to the client; and 200 alone do all of them take for a yes.
    """
    if "chunked" in request.META.get("HTTP_TRANSFER_ENCODING", ""):  # how long it is shows only at its end
        return HttpResponse(status=411)
    path = request.get_full_path()
    if _length(request) + len(path) > MOST_BYTES:
        return HttpResponse(status=413)
    try:
        transport = _transport(line_id)
        if transport is None:
            return HttpResponse(status=404)
        callback = Callback(
            url=f"{settings.PUBLIC_URL}{path}",
            headers=_headers(request),
            body=request.body,
        )
        transport.verify(callback)
        _keep(line_id, callback)
    except Forged as error:
        log.warning("a call at line %d is forged, or not set up: %s", line_id, error)
        return HttpResponse(status=403)
    except (AnyDatabaseError, ImproperlyConfigured) as error:
        log.error("a call at line %d could not be kept: %s", line_id, error)
        return HttpResponse(status=503, headers={"Retry-After": "30"})
    _nudge()
    return HttpResponse()


def forget() -> None:
    """Forget what this thread knows of lines: they may have changed."""
    _known.__dict__.clear()


def _length(request: HttpRequest) -> int:
    try:
        return int(request.META.get("CONTENT_LENGTH") or 0)
    except ValueError:
        return 0


def _headers(request: HttpRequest) -> dict[str, str]:
    """Return the headers by their names in lower case (PEP 3333, "environ Variables"), but for those of length."""
    found = {name[5:].replace("_", "-").lower(): value for name, value in request.META.items() if name[:5] == "HTTP_"}
    return {**found, "content-type": request.META.get("CONTENT_TYPE", "")}


def _transport(line_id: int) -> Transport | None:
    """Return the transport of a line, None where there is no such line; known for some seconds."""
    found: dict[int, tuple[float, Transport]] = _known.__dict__.setdefault("transports", {})
    until, transport = found.get(line_id, (0.0, None))
    if transport is not None and time.monotonic() < until:
        return transport
    line = Line.objects.filter(pk=line_id).first()
    if line is None:
        found.pop(line_id, None)
        return None
    made = lines.transport_of(line)
    found[line_id] = (time.monotonic() + KNOWN_SECONDS, made)
    return made


def _keep(line_id: int, callback: Callback) -> None:
    digest = hashlib.sha256(callback.url.encode("utf-8", "backslashreplace") + b"\n" + callback.body).hexdigest()
    headers = json.dumps({name: value for name, value in callback.headers.items() if name not in _SECRETS})
    with connection.cursor() as cursor:
        cursor.execute(_KEEP, [line_id, digest, callback.url, headers, callback.body])


def _nudge() -> None:
    """Have it read soon; once for the many calls that come together."""
    global _last_nudge
    if time.monotonic() - _last_nudge > NUDGE_SECONDS:
        _last_nudge = time.monotonic()
        tasks.nudge()
