"""The figures: an owner's of the whole studio or of one artist, an artist's of her own work alone."""

from __future__ import annotations

from django.http import Http404, HttpResponse
from django.shortcuts import render
from django.utils.text import slugify
from django.utils.translation import gettext as _
from django.views.decorators.http import require_safe

from aftercare.pages.report import period as periods
from aftercare.pages.report import sections
from aftercare.pages.report.report import Names, Report, names
from aftercare.pages.report.summary import summary
from aftercare.pages.report.table import as_csv
from studio.access import StudioRequest, page

SHOWN = 40  # rows of a table; the spreadsheet has all
ALL = "all"


@require_safe
@page("owner", "artist")
def figures(request: StudioRequest) -> HttpResponse:
    """Show the figures of a period, each with what stands behind it."""
    report, problem = _report(request)
    every = sections.every(report)
    lines = summary(every)
    summed_up = {line.key for line in lines}
    context = {
        "report": report,
        "sections": every,
        "summary": lines,
        "others": [section for section in every if section.key not in summed_up],
        "period": report.period,
        "periods": [(name, words) for name, words in periods.PERIODS.items() if name != periods.OWN],
        "problem": problem,
        "artists": _artists(report.names) if request.may.own else [],
        "chosen": str(report.artist or ALL),
        "shown": SHOWN,
    }
    return render(request, "aftercare/figures.html", context)


@require_safe
@page("owner", "artist")
def figures_csv(request: StudioRequest, section: str, table: str) -> HttpResponse:
    """Give one of their tables as a spreadsheet, with the days and whose it is in each row."""
    if section not in sections.SECTIONS:
        raise Http404
    report, _problem = _report(request)
    whole = sections.SECTIONS[section](report)
    found = next((one for one in whole.tables if one.key == table), None)
    if found is None:
        raise Http404
    first, last = report.period.first.isoformat(), report.period.last.isoformat()
    beside = [
        (_("Whose"), report.whose),
        (_("From"), first),
        (_("To"), last),
        (_("Time zone"), request.studio.time_zone),
    ]
    answer = HttpResponse(as_csv(found, beside), content_type="text/csv; charset=utf-8")
    what = slugify(f"{whole.title} {found.title}")
    name = f"{slugify(request.studio.slug)}-{what}-{first}-{last}.csv"
    answer["Content-Disposition"] = f'attachment; filename="{name}"'
    return answer


def _report(request: StudioRequest) -> tuple[Report, str]:
    period, problem = periods.read(request.GET, request.studio, request.now)
    known = names(request.studio)
    asked = request.GET.get("artist", "")
    chosen = int(asked) if asked in known.people else None
    artist = chosen if request.may.own else request.staff.pk
    return Report(request.studio, period, request.now, known, artist, request.may.own), problem


def _artists(known: Names) -> list[tuple[str, str]]:
    """Return whose figures an owner can choose, by name."""
    return [(key, name) for key, name in known.people.items() if key in known.treats]
