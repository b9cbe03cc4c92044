"""The owner's numbers: how they stand, changing them with a look at what moves, and their history."""

from __future__ import annotations

import hashlib
import json
import time
from collections.abc import Mapping
from typing import Any

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import Http404, HttpResponse, HttpResponseBase
from django.shortcuts import get_object_or_404, redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_safe

from aftercare import facts, numbers, ruling, tasks, upkeep
from aftercare.forms.timing import NumbersForm
from aftercare.models import RuleSet
from aftercare.numbers import GROUPS
from aftercare.pages import moves
from aftercare.planning.ahead import Moves
from aftercare.views.errors import tell
from studio.access import StudioRequest, page

SECONDS, AT_MOST = 8, 25  # that a look takes before it is shown as far as it got; that one at everybody may take
Values = Mapping[str, object]


@require_safe
@page("owner")
def timing(request: StudioRequest) -> HttpResponse:
    """Show every number, and which of them she has changed."""
    values = ruling.values_of(request.studio)
    groups = [(group, list(numbers.standing(group, values, request.studio.region))) for group in GROUPS]
    changed = sum(one.is_changed for _group, rows in groups for one in rows)
    newest = RuleSet.objects.filter(studio=request.studio).select_related("by").first()
    return render(request, "aftercare/timing.html", {"groups": groups, "changed": changed, "newest": newest})


@require_http_methods(["GET", "POST"])
@page("owner")
def timing_group(request: StudioRequest, slug: str) -> HttpResponseBase:
    """Change the numbers of one group: first a look at what moves, then save."""
    group = next((group for group in GROUPS if group.slug == slug), None)
    if group is None:
        raise Http404
    values, version = ruling.values_of(request.studio), ruling.version_of(request.studio)
    usual = facts.defaults(request.studio.region)
    back = request.GET.get("usual", "")
    asked = {back: usual[back]} if back in group.names else {}
    form = NumbersForm(
        request.POST or None,
        group=group,
        values=values,
        shown={**values, **asked},
        region=request.studio.region,
        version=version,
    )
    if request.method == "POST":
        asked = form.numbers() if form.is_valid() else {}
    changed = ruling.changed(values, request.studio.region, asked)
    shown = _looked_at(request, form, changed, version) if asked else {}
    if "saved" in shown:
        messages.success(request, _("Saved. What has not left yet follows from now on."))
        return redirect("timing")
    return render(request, "aftercare/timing_group.html", {"group": group, "form": form, **shown})


def _looked_at(request: StudioRequest, form: NumbersForm, changed: Values, version: int) -> dict[str, Any]:
    """Save what was looked at before, or look at it now; of numbers that cannot be, say what is wrong."""
    seen = int(form["seen"].value() or 0)
    if (
        "save" in request.POST
        and _is_confirmed(request)
        and form["previewed"].value() == _digest(changed)
        and _saved(request, form, changed, seen)
    ):
        return {"saved": True}
    if seen != version and not form.errors:
        form.add_error(None, _("Somebody changed the rules meanwhile: look at them again, then change them."))
    if form.errors:
        return {}
    try:
        return _ahead(request, changed)
    except facts.BadRule as error:
        form.blame(error.cures)
    return {}


def _saved(request: StudioRequest, form: NumbersForm, changed: Values, seen: int) -> bool:
    saved = form.writes(
        lambda _clean: ruling.put(request.studio, changed, by=request.staff, now=request.now, seen=seen)
    )
    if saved:
        tasks.nudge()
    return saved


def _ahead(request: StudioRequest, changed: Values) -> dict[str, Any]:
    """What the pages show of a change before it is saved. Raises BadRule."""
    rules = ruling.read(changed, request.studio, request.now)
    before = ruling.values_of(request.studio)
    differ = numbers.differences(before, changed, request.studio.region)
    if not differ:
        return {"same": True}
    found = Moves(clients=0)
    if not {one.number.name for one in differ} <= ruling.PLANS_NOTHING:
        behind = upkeep.settle(request.studio, request.now)
        if behind:
            return {"differ": differ, "behind": behind}
        end = time.monotonic() + (AT_MOST if "whole" in request.POST else SECONDS)
        found = upkeep.preview(request.studio, rules, request.now, stop=lambda: time.monotonic() > end)
    leaving = moves.at_once(found, request.now)
    return {
        "differ": differ,
        "moves": found,
        "told": moves.told(found),
        "at_once": leaving,
        "heaps": list(moves.heaps(found, leaving)),
        "digest": _digest(changed),
        "unconfirmed": "save" in request.POST and not _is_confirmed(request),
    }


def _is_confirmed(request: StudioRequest) -> bool:
    """Whether what the page showed to leave at once, if anything, was ticked."""
    return "at_once" not in request.POST or "confirmed" in request.POST


def _digest(values: Values) -> str:
    """Stands for the very numbers that were looked at: others are looked at anew before they are saved."""
    return hashlib.sha256(json.dumps(values, sort_keys=True).encode()).hexdigest()


@require_safe
@page("owner")
def timing_history(request: StudioRequest) -> HttpResponse:
    """Show every version of the numbers: who, when, what changed."""
    rows = list(RuleSet.objects.filter(studio=request.studio).select_related("by"))
    befores: list[Values] = [*(row.values for row in rows[1:]), {}]  # the first one changed what the service came with
    region = request.studio.region
    versions = [
        (row, numbers.differences(before, row.values, region)) for row, before in zip(rows, befores, strict=False)
    ]
    now = ruling.values_of(request.studio)
    brings = {row.version: numbers.differences(now, row.values, region) for row in rows}
    context = {
        "versions": versions,
        "brings": {**brings, 0: numbers.differences(now, {}, region)},
        "before": rows[1].version if len(rows) > 1 else 0,
    }
    return render(request, "aftercare/timing_history.html", context)


@require_http_methods(["GET", "POST"])
@page("owner")
def timing_put_back(request: StudioRequest, version: int) -> HttpResponseBase:
    """Put an earlier version back, 0: as the service came; first a look at what moves, then save."""
    row = get_object_or_404(RuleSet, studio=request.studio, version=version) if version else None
    values: dict[str, object] = dict(row.values) if row else {}
    seen = ruling.version_of(request.studio)
    if request.method == "POST" and "save" in request.POST and _is_confirmed(request):
        try:
            asked = int(request.POST.get("seen", "")) if request.POST.get("seen", "").isdigit() else -1
            ruling.put(request.studio, values, by=request.staff, now=request.now, seen=asked)
        except ValidationError as error:
            tell(request, error)
            return redirect("timing_put_back", version)
        tasks.nudge()
        messages.success(request, _("Put back. What has not left yet follows from now on."))
        return redirect("timing")
    try:
        shown = _ahead(request, values)
    except facts.BadRule as error:
        shown = {"wrong": str(error)}
    return render(request, "aftercare/timing_put_back.html", {"row": row, "version": version, "seen": seen, **shown})
