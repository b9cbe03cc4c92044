"""Settings: the studio's facts, closing days, adhesives, the names of its services, its calendar."""

from __future__ import annotations

from collections import Counter

from django.contrib import messages
from django.http import HttpResponseBase
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils.translation import gettext as _
from django.utils.translation import ngettext
from django.views.decorators.http import require_http_methods, require_POST, require_safe

from studio import booked, records, undo
from studio.access import StudioRequest, page
from studio.book.pattern import FIELDS, PLACES
from studio.forms.settings import (
    KINDS,
    NO_VISIT,
    AdhesiveForm,
    ClosingDayForm,
    FeedForm,
    PatternForm,
    ServiceNameForm,
    StudioForm,
    kind_of,
)
from studio.models import Absence, Adhesive, CalendarFeed, ClosingDay, ServiceName


@require_safe
@page("owner")
def settings(request: StudioRequest) -> HttpResponseBase:
    """Show what can be set, and how it stands."""
    feed = CalendarFeed.objects.filter(studio=request.studio).first()
    shown = {
        "feed": feed,
        "closing_days": request.studio.closing_days.filter(
            date__gte=request.now.astimezone(request.studio.zone)
        ).count(),
        "adhesives": request.studio.adhesives.count(),
        "names": request.studio.service_names.count(),
        "away": Absence.objects.filter(
            staff__studio=request.studio, last_day__gte=request.now.astimezone(request.studio.zone)
        ).count(),
        "people": request.studio.staff.filter(is_active=True).count(),
    }
    return render(request, "studio/settings.html", shown)


@require_http_methods(["GET", "POST"])
@page("owner")
def studio_facts(request: StudioRequest) -> HttpResponseBase:
    """Name, telephone, clock, country, language, date order."""
    form = StudioForm(request.POST or None, studio=request.studio)
    if request.method == "POST" and form.writes(
        lambda clean: records.save_studio(studio=request.studio, by=request.staff, now=request.now, **clean)
    ):
        messages.success(request, _("Saved."))
        return redirect("settings")
    return render(request, "studio/settings_studio.html", {"form": form})


@require_http_methods(["GET", "POST"])
@page("owner")
def closing_days(request: StudioRequest) -> HttpResponseBase:
    """The days on which the studio is closed; add one."""
    form = ClosingDayForm(request.POST or None)
    if request.method == "POST" and form.writes(
        lambda clean: records.save_closing_day(
            studio=request.studio, day=None, by=request.staff, now=request.now, **clean
        )
    ):
        day = form.cleaned_data["date"]
        added(request, booked.by_day(request.studio, day, day, request.now).total())
        return redirect("closing_days")
    rows = list(request.studio.closing_days.all())
    days = [row.date for row in rows]
    found = booked.by_day(request.studio, min(days), max(days), request.now) if days else Counter()
    return render(
        request,
        "studio/closing_days.html",
        {"form": form, "days": [(row, {row.date: found[row.date]} if found[row.date] else {}) for row in rows]},
    )


def added(request: StudioRequest, visits: int) -> None:
    """Say that days were added, and what is booked on them."""
    said = _("Added.")
    if visits:
        counted = ngettext("%(n)s visit is booked then.", "%(n)s visits are booked then.", visits) % {"n": visits}
        said = f"{said} {counted}"
    messages.success(request, said)


@require_POST
@page("owner")
def closing_day_remove(request: StudioRequest, day_id: int) -> HttpResponseBase:
    """Take a day off the list."""
    day = get_object_or_404(ClosingDay, studio=request.studio, pk=day_id)
    records.remove_closing_day(day=day, by=request.staff, now=request.now)
    kept = [("date", day.date), ("name", day.name)]
    undo.said(request, _("Taken off the list."), reverse("closing_days"), kept)
    return redirect("closing_days")


@require_http_methods(["GET", "POST"])
@page("owner", "artist")
def adhesives(request: StudioRequest, adhesive_id: int | None = None) -> HttpResponseBase:
    """The adhesives with their lots and hours; add one, or change the one named."""
    adhesive = get_object_or_404(Adhesive, studio=request.studio, pk=adhesive_id) if adhesive_id else None
    form = AdhesiveForm(request.POST or None, adhesive=adhesive)
    if request.method == "POST" and form.writes(
        lambda clean: records.save_adhesive(
            studio=request.studio, adhesive=adhesive, by=request.staff, now=request.now, **clean
        )
    ):
        messages.success(request, _("Saved."))
        return redirect("adhesives")
    shown = {"form": form, "adhesive": adhesive, "adhesives": request.studio.adhesives.all()}
    return render(request, "studio/adhesives.html", shown)


@require_http_methods(["GET", "POST"])
@page("owner", "front desk")
def service_names(request: StudioRequest) -> HttpResponseBase:
    """What the studio's own names for services stand for; add or change one."""
    form = ServiceNameForm(request.POST or None)
    if request.method == "POST" and form.writes(
        lambda clean: records.save_service_name(
            studio=request.studio, name=clean["name"], kind=kind_of(clean["kind"]), by=request.staff, now=request.now
        )
    ):
        messages.success(request, _("Saved. It counts from the next file on."))
        return redirect("service_names")
    rows = [(row, KINDS[row.kind or NO_VISIT]) for row in request.studio.service_names.all()]
    return render(request, "studio/service_names.html", {"form": form, "rows": rows})


@require_POST
@page("owner", "front desk")
def service_name_remove(request: StudioRequest, name_id: int) -> HttpResponseBase:
    """Forget a name; the next file that holds it asks again."""
    row = get_object_or_404(ServiceName, studio=request.studio, pk=name_id)
    records.remove_service_name(service_name=row, by=request.staff, now=request.now)
    kept = [("name", row.name), ("kind", row.kind or NO_VISIT)]
    undo.said(request, _("Forgotten."), reverse("service_names"), kept)
    return redirect("service_names")


@require_http_methods(["GET", "POST"])
@page("owner")
def calendar(request: StudioRequest) -> HttpResponseBase:
    """The calendar that is polled, and how its entries are read."""
    feed = CalendarFeed.objects.filter(studio=request.studio).first()
    asked = request.POST.get("form")
    feed_form = FeedForm(request.POST if asked == "feed" else None, feed=feed)
    pattern_form = PatternForm(
        request.POST if asked == "pattern" else None, initial={"calendar_pattern": request.studio.calendar_pattern}
    )
    if asked == "feed" and feed_form.writes(
        lambda clean: records.save_feed(studio=request.studio, by=request.staff, now=request.now, **clean)
    ):
        messages.success(request, _("Saved. The calendar is read within the next minutes."))
        return redirect("calendar")
    if asked == "pattern" and pattern_form.writes(
        lambda clean: records.save_studio(studio=request.studio, by=request.staff, now=request.now, **clean)
    ):
        messages.success(request, _("Saved."))
        return redirect("calendar")
    shown = {"feed": feed, "feed_form": feed_form, "pattern_form": pattern_form, "places": PLACES, "fields": FIELDS}
    return render(request, "studio/calendar.html", shown)


@require_POST
@page("owner")
def calendar_remove(request: StudioRequest) -> HttpResponseBase:
    """Stop polling."""
    feed = get_object_or_404(CalendarFeed, studio=request.studio)
    records.remove_feed(feed=feed, by=request.staff, now=request.now)
    messages.success(request, _("The calendar is no longer read; its visits stay."))
    return redirect("calendar")
