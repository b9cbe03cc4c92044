"""A visit as an entry for her calendar (RFC 5545)."""

from __future__ import annotations

from datetime import UTC
from urllib.parse import urlsplit

from django.conf import settings
from django.utils.translation import gettext as _
from icalendar import Calendar, Event

from studio.models import Visit

_STATUS = {Visit.Status.CANCELLED: "CANCELLED", Visit.Status.MISSED: "CANCELLED"}


def entry(visit: Visit, service: str) -> bytes:
    """Return a calendar of one event; ``service`` is the studio's own name for it.

    The same visit keeps its UID (3.8.4.7) and, once it changes, has a higher SEQUENCE (3.8.7.4), so that a calendar
    that knows it moves it. Without a METHOD, DTSTAMP says when it last changed (3.8.7.2). Nothing of health stands in
    it, nor the way to her page: calendars are shared.
    """
    studio = visit.studio
    changed = (visit.changed_at or visit.created_at).astimezone(UTC)
    event = Event()
    event.add("uid", f"visit-{visit.pk}@{urlsplit(settings.PUBLIC_URL).hostname or studio.slug}")
    event.add("dtstamp", changed)
    event.add("last-modified", changed)
    event.add("created", visit.created_at.astimezone(UTC))
    event.add("sequence", visit.revision)
    event.add("dtstart", visit.starts_at.astimezone(UTC))
    event.add("dtend", visit.booked_end.astimezone(UTC))
    event.add("summary", _("%(service)s, %(studio)s") % {"service": service.capitalize(), "studio": studio.name})
    event.add("status", _STATUS.get(Visit.Status(visit.status), "CONFIRMED"))
    if studio.address:
        event.add("location", studio.address)
    if studio.phone:
        event.add("description", _("To move it, call %(phone)s.") % {"phone": studio.phone})
    calendar = Calendar()
    calendar.add("prodid", "-//Lash aftercare//Visits//EN")
    calendar.add("version", "2.0")
    calendar.add_component(event)
    return bytes(calendar.to_ical())
