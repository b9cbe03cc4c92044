"""A visit as the file that her own calendar reads: from the page of the visit, and with the e-mail before it."""

from __future__ import annotations

from datetime import datetime
from urllib.parse import urlsplit

from django.conf import settings
from django.utils import translation
from django.utils.translation import gettext as _

from aftercare.core import calendar_file
from studio.models import Visit


def of_visit(visit: Visit, now: datetime, language: str, *, url: str = "") -> bytes:
    """Return the calendar file of a visit, in her language. ``url`` is her own page about it.

    It says "visit" and no more: which service it is may be a health note, and calendars are seen by others.
    """
    studio = visit.studio
    with translation.override(language):
        summary = _("Visit at %(studio)s") % {"studio": studio.name}
        telephone = _("Telephone: %(number)s") % {"number": studio.phone} if studio.phone else ""
    return calendar_file.visit_ics(
        uid=calendar_file.uid_of(visit.pk, urlsplit(settings.PUBLIC_URL).hostname or "localhost"),
        sequence=visit.revision,
        starts_at=visit.starts_at.astimezone(studio.zone),
        minutes=visit.minutes,
        summary=summary,
        now=now,
        location=", ".join(part for part in (studio.name, studio.address) if part),
        description=telephone,
        url=url,
        cancelled=visit.status in (Visit.Status.CANCELLED, Visit.Status.MISSED),
    )
