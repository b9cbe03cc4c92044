"""The way out of every e-mail: a link of ours in its headers that ends them all, by one click and without a sign-in.

RFC 8058: the link names the recipient and what she is on, and ends it by POST alone, since mail hosts and their
scanners open whatever they find. The token is signed for this one purpose and kept nowhere: it works as long as the
line is there, whatever became of the client, and it says no more than the e-mail that carries it.
"""

from __future__ import annotations

from django.conf import settings
from django.core import signing
from django.urls import reverse

from aftercare.models import Line

_SIGNER = "aftercare.unsubscribing"  # the purpose: what was signed for another opens nothing here


def headers(line: Line, address: str) -> dict[str, str]:
    """Return the headers by which mail programs show a way out (RFC 2369, 3.2; RFC 8058, 3.1).

    A service without an https address offers the link alone: one click is promised for https only.
    """
    link = settings.PUBLIC_URL + reverse("unsubscribe", args=[token(line, address)])
    found = {"List-Unsubscribe": f"<{link}>"}
    if link.startswith("https://"):
        found["List-Unsubscribe-Post"] = "List-Unsubscribe=One-Click"
    return found


def token(line: Line, address: str) -> str:
    """Return what stands for this address on this line."""
    return _signer().sign_object([line.pk, address.lower()])


def read(given: str) -> tuple[Line, str] | None:
    """Return the line and the address, in lower case, that a token stands for; None for one that is not ours."""
    try:
        line_id, address = _signer().unsign_object(given)
    except signing.BadSignature:
        return None
    line = Line.objects.filter(pk=line_id).select_related("studio").first()
    return (line, address) if line is not None else None


def _signer() -> signing.Signer:
    return signing.Signer(salt=_SIGNER, sep=".")
