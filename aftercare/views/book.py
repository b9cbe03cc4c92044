"""The appointment book: its weeks, and files coming in. Nothing is written before a person has seen what would be."""

from __future__ import annotations

import re
from datetime import date, datetime, time, timedelta
from itertools import groupby
from typing import Any

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpResponseBase
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.utils.translation import get_language
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST, require_safe

from aftercare.core import say
from aftercare.views.errors import tell
from studio import records
from studio.access import StudioRequest, page
from studio.book.rows import COLUMNS, NEEDED
from studio.forms.book import BookFileForm, ConfirmForm, NamesForm, WholeForm
from studio.forms.settings import kind_of
from studio.models import BookFile, Studio, Visit

State = BookFile.State
BUSY = (State.READING, State.WRITING)
WAITS = (State.PREVIEW, State.FAILED)
MOMENT = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ")
LATEST = 8  # files shown
MOST = 100  # bad fields, and unknown names, on one page: more of them have one cause
LOOK_AGAIN = 2  # seconds after which the page of a file that is worked on is fetched again
QUOTED = re.compile('".*"', re.DOTALL)  # from the first mark to the last: a value may hold some itself
HEALTH = ("sensitive", "wears_lenses")  # columns of the book that are health notes


@require_http_methods(["GET", "POST"])
@page("front desk")
def book(request: StudioRequest) -> HttpResponseBase:
    """Show one week of visits and the latest files; take in a new file."""
    form = BookFileForm(request.POST or None, request.FILES or None)
    if request.method == "POST" and form.is_valid():
        return redirect("book_file", _taken_in(request, form).pk)
    monday, problem = _week(request.GET.get("week", ""), timezone.localdate(request.now))
    visits = list(_visits_of(request, monday))
    shown = {
        "form": form,
        "files": request.studio.book_files.defer("data").select_related("by")[:LATEST],
        "monday": monday,
        "sunday": monday + timedelta(days=6),
        "before": monday - timedelta(days=7),
        "after": monday + timedelta(days=7),
        "days": [(day, list(rows)) for day, rows in groupby(visits, lambda visit: timezone.localdate(visit.starts_at))],
        "count": len(visits),
        "problem": problem,
        "needed": NEEDED,
        "others": [name for name in COLUMNS if name not in NEEDED and (request.may.own or name not in HEALTH)],
    }
    return render(request, "aftercare/book.html", shown)


@require_safe
@page("front desk")
def book_file(request: StudioRequest, file_id: int) -> HttpResponseBase:
    """Show how far a file is: being read, what it would change, being written, what it changed."""
    return _shown(request, _file_or_404(request, file_id))


@require_POST
@page("front desk")
def book_file_names(request: StudioRequest, file_id: int) -> HttpResponseBase:
    """Keep what the unknown service names stand for, and read the file again."""
    file = _file_or_404(request, file_id)
    form = NamesForm(request.POST, names=_unknown(file))
    if form.is_valid():
        for name, choice in form.kinds().items():
            records.save_service_name(
                studio=request.studio, name=name, kind=kind_of(choice), by=request.staff, now=request.now
            )
        _move_on(file, WAITS, State.READING)
    return redirect("book_file", file.pk)


@require_POST
@page("front desk")
def book_file_whole(request: StudioRequest, file_id: int) -> HttpResponseBase:
    """Take the file as the whole book of some days, or no longer so, and look again at what it would change."""
    file = _file_or_404(request, file_id)
    if "not_whole" in request.POST:
        _move_on(file, WAITS, State.READING, whole_from=None, whole_to=None)
        return redirect("book_file", file.pk)
    form = WholeForm(request.POST)
    if not form.is_valid():
        return _shown(request, file, whole=form)
    _move_on(file, WAITS, State.READING, **form.cleaned_data)
    return redirect("book_file", file.pk)


@require_POST
@page("front desk")
def book_file_confirm(request: StudioRequest, file_id: int) -> HttpResponseBase:
    """Write what the preview showed."""
    file = _file_or_404(request, file_id)
    form = ConfirmForm(request.POST, bad=len(file.result.get("bad_rows", [])))
    if not form.is_valid():
        return _shown(request, file, confirm=form)
    _move_on(file, [State.PREVIEW], State.WRITING, skip_bad=form.cleaned_data.get("skip_bad", False))
    return redirect("book_file", file.pk)


@require_POST
@page("front desk")
def book_file_drop(request: StudioRequest, file_id: int) -> HttpResponseBase:
    """Forget a file; what was written from it stays."""
    file = _file_or_404(request, file_id)
    dropped, _tables = BookFile.objects.filter(pk=file.pk).exclude(state__in=BUSY).delete()
    if dropped:
        messages.success(request, _("%(name)s is forgotten.") % {"name": file.name})
        return redirect("book")
    tell(request, ValidationError(_("The file is being worked on: wait until that is done.")))
    return redirect("book_file", file.pk)


def _taken_in(request: StudioRequest, form: BookFileForm) -> BookFile:
    file = form.cleaned_data["file"]
    return BookFile.objects.create(
        studio=request.studio,
        name=file.name[:200],
        format=form.format,
        data=file.read(),
        by=request.staff,
        uploaded_at=request.now,
    )


def _file_or_404(request: StudioRequest, file_id: int) -> BookFile:
    return get_object_or_404(BookFile.objects.defer("data"), studio=request.studio, pk=file_id)


def _move_on(file: BookFile, expected: list[str] | tuple[str, ...], state: str, **fields: Any) -> None:
    """Have a worker take the file up again; a second tap finds it moved on already and changes nothing."""
    waiting = BookFile.objects.filter(pk=file.pk, state__in=expected)
    waiting.update(state=state, done_rows=0, all_rows=0, busy_until=None, **fields)


def _shown(
    request: StudioRequest, file: BookFile, *, whole: WholeForm | None = None, confirm: ConfirmForm | None = None
) -> HttpResponseBase:
    result = dict(file.result if request.may.own else _without_health(file.result))
    result["changes"] = [_in_words(change, request.studio) for change in result.get("changes", [])]
    for which in ("to_cancel", "gone"):
        result[which] = [_with_moment(visit, request.studio) for visit in result.get(which, [])]
    bad = result.get("bad_rows", [])
    shown = {
        "file": file,
        "busy": file.state in BUSY,
        "result": result,
        "names": NamesForm(names=_unknown(file)),
        "bad": bad[:MOST],
        "more_bad": max(0, len(bad) - MOST),
        "whole": whole or WholeForm(initial={"whole_from": file.whole_from, "whole_to": file.whole_to}),
        "confirm": confirm or ConfirmForm(bad=len(bad)),
        "nothing": not _would_change(result),
    }
    response = render(request, "aftercare/book_file.html", shown)
    if shown["busy"]:
        response["Refresh"] = str(LOOK_AGAIN)
    return response


def _unknown(file: BookFile) -> list[str]:
    """The service names to be asked about now; once they are known the file is read again, and asks on."""
    return [str(name) for name in file.result.get("unknown_services", [])][:MOST]


def _would_change(result: dict[str, Any]) -> bool:
    counts = [result.get(of, {}).get(what, 0) for of in ("visits", "clients") for what in ("new", "changed")]
    return any(counts) or bool(result.get("to_cancel"))


def _without_health(result: dict[str, Any]) -> dict[str, Any]:
    """The result for those who may not read health notes: that such a field changes, not how."""
    changes = [_hidden(row, "before", "after") for row in result.get("changes", [])]
    bad = [_hidden(row, "value", "problem") for row in result.get("bad_rows", [])]
    return {**result, "changes": changes, "bad_rows": bad}


def _hidden(row: dict[str, Any], *values: str) -> dict[str, Any]:
    """The row without what stands in these; of a sentence, without what is quoted in it, its cure stays."""
    if row.get("field") not in HEALTH:
        return row
    return {**row, **{name: QUOTED.sub('"…"', row[name]) if name == "problem" else "…" for name in values}}


def _in_words(change: dict[str, Any], studio: Studio) -> dict[str, Any]:
    return {**change, "before": _said(change["before"], studio), "after": _said(change["after"], studio)}


def _with_moment(visit: dict[str, Any], studio: Studio) -> dict[str, Any]:
    """A visit of the result, whose moment stands there as the studio's wall clock shows it."""
    return {**visit, "starts_at": _dated(datetime.fromisoformat(visit["starts_at"]), studio)}


def _dated(at: datetime, studio: Studio) -> str:
    return say.dated(at, say.language_of(get_language() or "en"), studio.region)


def _said(value: object, studio: Studio) -> str:
    """A value of the book as people write it: moments on the studio's wall clock, yes and no."""
    if value is None:
        return "—"
    if isinstance(value, bool):
        return _("yes") if value else _("no")
    if isinstance(value, str) and MOMENT.fullmatch(value):
        return _dated(datetime.fromisoformat(value).astimezone(studio.zone), studio)
    return str(value)


def _week(text: str, today: date) -> tuple[date, str]:
    """The Monday of the week asked for by any of its days; with words where that cannot be read."""
    problem = ""
    try:
        day = date.fromisoformat(text) if text else today
        if not 1970 <= day.year <= 2200:
            raise ValueError
    except ValueError:
        day = today
        problem = _("“%(text)s” is no date, so this is this week. Write it as 2027-03-09.") % {"text": text[:20]}
    return day - timedelta(days=day.weekday()), problem


def _visits_of(request: StudioRequest, monday: date) -> Any:
    zone = request.studio.zone
    first = datetime.combine(monday, time(), zone)
    last = datetime.combine(monday + timedelta(days=7), time(), zone)
    visits = Visit.objects.filter(studio=request.studio, starts_at__gte=first, starts_at__lt=last)
    return visits.select_related("client", "artist").order_by("starts_at", "pk")
