"""Two studios for each road, with one client for each kind of message that follows from a visit: all due now."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime, timedelta
from itertools import count
from typing import Any

from aftercare import planning, telling
from aftercare.models import Line, RuleSet
from studio.models import Client, Consent, Staff, Studio, Visit
from tests.cast import zone_where_it_is
from tests.forecasts import forecast

HOUR = 10  # on every studio's clock: reminders may leave, and a morning list is not too late yet
TOLD = ("prepare", "patch_test", "care", "check", "fill_due", "full_set_due", "notice")  # each a client of its own
_numbers = count(100)


def number() -> str:
    """Return a mobile that no one else has. The pretend provider takes what goes to one that ends in 1."""
    return f"+1212555{next(_numbers)}1"


@dataclass
class Branch:
    """One studio on a road: its line there, and the clients by the kind of message that is due."""

    studio: Studio
    line: Line
    ada: Staff
    clients: dict[str, Client] = field(default_factory=dict)


def ways(channel: str, road: str) -> dict[str, dict[str, str]]:
    """Return how the client of each kind is reached: alike in both studios of a road, who may share a client."""
    if channel == "email":
        return {kind: {"email": f"{kind.replace('_', '.')}@{road}.example"} for kind in TOLD}
    return {kind: {"mobile": number()} for kind in TOLD}


def branch(slug: str, line: dict[str, Any], reached: dict[str, dict[str, str]], now: datetime) -> Branch:
    """Make a live studio with one line in use, and plan what is due."""
    studio = Studio.objects.create(
        slug=slug,
        name=f"Lashes {slug}",
        time_zone=zone_where_it_is(HOUR, now),
        region="US",
        phone="+12125550199",
        live_since=now - timedelta(days=90),
    )
    # Reminders rest on another day of the week than the one on which this is run.
    hours = {"reminder_hours": [600, 1140, [(now.astimezone(studio.zone).weekday() + 3) % 7]]}
    RuleSet.objects.create(studio=studio, version=1, values=hours, at=now - timedelta(days=90))
    by_mail = line["channel"] == "email"
    way = {"email": f"ada@{slug}.example"} if by_mail else {"mobile": number()}
    ada = Staff.objects.create(studio=studio, name="Ada", is_artist=True, is_owner=True, **way)
    made = Branch(studio, Line.objects.create(studio=studio, **line), ada)
    for kind in TOLD:
        made.clients[kind] = _client(made, kind, reached[kind], now)
    planning.plan_studio(studio, now)
    booked = Visit.objects.filter(client=made.clients["notice"])
    telling.tell(telling.look(studio, booked, "", now), "", token="ill", by=ada, now=now)  # no secret
    return made


def _client(made: Branch, kind: str, way: dict[str, str], now: datetime) -> Client:
    zone = made.studio.time_zone
    her = Client.objects.create(
        studio=made.studio, first_name="Mia", time_zone=zone, sensitive=kind == "patch_test", **way
    )
    said = {"channel": made.line.channel, "given": True, "at": now - timedelta(days=80), "how": "on paper"}
    for purpose in ("visits", "reminders"):
        Consent.objects.create(client=her, purpose=purpose, **said)
    done = {"status": "done"}
    at_three = now.astimezone(made.studio.zone).replace(hour=15, minute=0, second=0, microsecond=0)
    visits: dict[str, dict[str, Any]] = {
        "prepare": {"starts_at": at_three + timedelta(days=3)},
        "patch_test": {"service": "full set", "starts_at": at_three + timedelta(days=7)},
        "care": {"starts_at": now - timedelta(minutes=110), **done},
        "check": {"starts_at": at_three - timedelta(days=2), **done},
        "fill_due": {"service": "full set", "starts_at": at_three - timedelta(days=20), **done},
        "full_set_due": {"service": "full set", "starts_at": at_three - timedelta(days=40), **done},
        "notice": {"starts_at": at_three + timedelta(days=5)},
    }
    facts = {"service": "fill", "minutes": 75, "heard_at": now - timedelta(days=70), **visits[kind]}
    visit = Visit.objects.create(studio=made.studio, client=her, artist=made.ada, **facts)
    if kind in ("fill_due", "full_set_due"):  # at the fill level a week from now, or at the full-set level by now
        forecast(visit, now - timedelta(days=9), fill_day=27 if kind == "fill_due" else 22)
    return her
