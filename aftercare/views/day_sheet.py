"""The day sheet: one line a visit, in the order of the day."""

from __future__ import annotations

from datetime import date, timedelta

from django.http import HttpResponse
from django.shortcuts import render
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext as _

from aftercare import facts
from aftercare.pages import sheet
from studio import covering
from studio.access import StudioRequest, page
from studio.models import Staff, Visit

ALL, NOBODY = "all", "none"


@page()
def day_sheet(request: StudioRequest) -> HttpResponse:
    """Show a day: an artist's own visits unless she asks for all; everybody's to the owner and the front desk."""
    today = timezone.localdate(request.now)
    day, problem = read_day(request.GET.get("day", ""), today)
    ids = sheet.visit_ids(request.studio, day)
    books = facts.load({client for _visit, client in ids}, request.now)
    every = sheet.lines(ids, books, request.may, request.now)
    artists = _artists(every)
    chosen = request.GET.get("artist") or ("" if request.may.see_every_list else str(request.staff.pk))
    lines = [line for line in every if _is_of(line, chosen)]
    return render(
        request,
        "aftercare/day_sheet.html",
        {
            "day": day,
            "is_today": day == today,
            "before": day - timedelta(days=1),
            "after": day + timedelta(days=1),
            "lines": lines,
            "artists": artists,
            "chosen": chosen,
            "chosen_name": next((artist.name for artist in artists if str(artist.pk) == chosen), ""),
            "others": len(every) - len(lines),
            "can_tell": _may_tell(request, chosen)
            and any(line.waits and line.visit.starts_at > request.now for line in lines),
            "minutes": sum(line.visit.minutes for line in lines),
            "on_hold": sum(line.on_hold and line.waits and line.reads_health for line in lines),
            "without_artist": any(line.visit.artist_id is None for line in every),
            "problem": problem,
            "days_off": covering.days_off(request.studio, day),
            "book_is_old": request.may.own and facts.book_is_old(request.studio, request.now),
        },
    )


def _may_tell(request: StudioRequest, chosen: str) -> bool:
    """Whether those on the sheet are hers to be told something: all of the day, or one artist's whose work she does."""
    if request.may.see_every_list:
        return chosen in ("", ALL) or chosen.isdecimal()
    return chosen in {str(artist) for artist in request.may.stands_for}


def read_day(text: str, today: date) -> tuple[date, str]:
    """Read the day asked for; one that cannot be read is today, with words that say so."""
    if not text:
        return today, ""
    try:
        found = date.fromisoformat(text)
    except ValueError:
        return today, _("“%(text)s” is no date, so this is today. Write it as 2027-03-09.") % {"text": text[:20]}
    if not 1970 <= found.year <= 2200:
        return today, _("There is no sheet for the year %(year)s, so this is today.") % {"year": found.year}
    return found, ""


def _artists(lines: list[sheet.Line]) -> list[Staff]:
    """Return who works on that day, by name."""
    found = {line.visit.artist_id: line.visit.artist for line in lines if line.visit.artist}
    return sorted(found.values(), key=lambda artist: artist.name)


def _is_of(line: sheet.Line, chosen: str) -> bool:
    if chosen in ("", ALL):
        return True
    return line.visit.artist_id is None if chosen == NOBODY else str(line.visit.artist_id) == chosen


def sheet_of(visit: Visit) -> str:
    """Return the address of a visit's own line on the sheet of its day."""
    return f"{reverse('day_sheet')}?day={timezone.localdate(visit.starts_at).isoformat()}#visit-{visit.pk}"
