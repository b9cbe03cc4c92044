"""The cast on paper: a studio, Ada the artist, Mia who replies, Zoe who opted out; rows made as plainly as can be."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

from django.test import Client as Browser

from studio.models import Client, Staff, Studio, User, Visit

NOW = datetime(2027, 3, 9, 15, 0, tzinfo=UTC)  # a Tuesday, 10:00 in New York


def make_studio(slug: str = "birch", **fields: Any) -> Studio:
    facts = {"name": "Birch Lane", "time_zone": "America/New_York", "region": "US"}
    return Studio.objects.create(slug=slug, **{**facts, **fields})


def make_staff(studio: Studio, name: str = "Ada", *, signs_in: bool = True, **roles: Any) -> Staff:
    user = User.objects.create_user(f"{name.lower()}@{studio.slug}.example") if signs_in else None
    return Staff.objects.create(studio=studio, name=name, user=user, **(roles or {"is_artist": True}))


def make_client(studio: Studio, first_name: str = "Mia", **fields: Any) -> Client:
    return Client.objects.create(studio=studio, first_name=first_name, **fields)


def make_visit(client: Client, **fields: Any) -> Visit:
    facts: dict[str, Any] = {
        "service": "fill",
        "starts_at": NOW + timedelta(days=3),
        "minutes": 75,
        "heard_at": NOW - timedelta(days=10),
    }
    return Visit.objects.create(studio=client.studio, client=client, **{**facts, **fields})


def sign_in(staff: Staff) -> Browser:
    """A browser in which she has signed in."""
    browser = Browser()
    assert staff.user is not None
    browser.force_login(staff.user)
    return browser
