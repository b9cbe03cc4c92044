"""A mail provider's API that is busy, fails, and takes a message without an answer; a key that comes twice."""

from __future__ import annotations

from contextlib import ExitStack
from pathlib import Path
from typing import Any

from tests import mailproviders, services
from tests.faults import at_work, ledger
from tests.faults.smtp import end_of_it

KINDS = ("once-busy", "once-broken", "once-mute", "refuse")


def happen(folder: Path, small: bool, name: str = "postmark") -> tuple[dict[str, int], list[str]]:
    number = 24 if small else 300
    addresses = [f"{_kind(place)}-{place}@mail.example" for place in range(number)]
    data = folder / "data"
    data.mkdir()
    url = f"sqlite:///{data / 'studio.sqlite3'}"
    with ExitStack() as stack:
        provider = stack.enter_context(mailproviders.mail_provider())
        settings = services.environment(data)
        at_work.make_live_studio(settings, folder, addresses)
        options = provider.options(name, timeout=2, from_address="studio@mail.example")
        at_work.set_line(settings, "email", transport=at_work.EMAIL, options=options)
        stack.enter_context(at_work.engine(settings, folder))
        end_of_it(url, small)
    found = ledger.entries(url)
    accepted = [_reference(name, one) for one in provider.taken]
    refused = sum(address.startswith("refuse-") for address in addresses)
    faults = ledger.judge(found, accepted, [_reference(name, one) for one in provider.unanswered], refused)
    # Postmark knows no keys; Resend does: what was lost goes again under its key and is one message to the provider.
    if name == "resend" and len(set(accepted)) != len(accepted):
        faults.append("a message came twice under one key")
    if name == "resend" and any(entry.state == "unsure" for entry in found):
        faults.append("a message stayed unsure that could be sent again under its key")
    figures = {"unanswered": len(provider.unanswered), "refused": refused}
    return ledger.counts(found, accepted) | figures, faults


def _kind(place: int) -> str:
    """Every other pair meets a fault, each kind in turn, on aftercare and on instructions alike."""
    return KINDS[place // 4 % len(KINDS)] if place % 4 < 2 else "mia"


def _reference(name: str, sent: dict[str, Any]) -> str:
    """Return our reference as it came over the wire."""
    if name == "resend":
        return str(sent["headers"]["X-Message-Reference"])
    return str(next(one["Value"] for one in sent["Headers"] if one["Name"] == "X-Message-Reference"))
