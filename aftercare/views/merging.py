"""Two cards of one person: look at both, see what wins, make them one; and take that back."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.db import transaction
from django.db.models import Q, QuerySet
from django.http import HttpResponseBase
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils.text import capfirst
from django.utils.translation import get_language
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST, require_safe

from aftercare import links, stops, upkeep
from aftercare.core import say
from aftercare.pages.shown import language_name, written_number
from aftercare.views.clients import asked_for
from aftercare.views.errors import tell
from studio import access, records, undo
from studio.access import StudioRequest, client_or_404, page
from studio.forms.clients import HEALTH
from studio.models import Client, Merge
from studio.records import merging

FOUND = 20
CHOICES = {"channel": Client.Channel.choices, "wished_hours": Client.Hours.choices}
NUMBERS = ("mobile", "guardian_mobile")
LABELS = {column.name: column.verbose_name for column in Client._meta.concrete_fields}


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the comparison, in words."""

    label: str
    kept: str
    gone: str
    after: str


@require_http_methods(["GET", "POST"])
@page("front desk")
def client_merge(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Find the other card, show both side by side, and merge them when confirmed."""
    kept = client_or_404(request, client_id)
    other = request.POST.get("other") or request.GET.get("other") or ""
    if not other.isdecimal():
        asked = asked_for(request)
        found = _found(request, kept, asked)
        return render(request, "aftercare/merge_find.html", {"client": kept, "q": asked, "found": found})
    gone = get_object_or_404(access.clients(request), pk=int(other))
    if request.method == "POST" and _merge(request, kept, gone):
        return redirect("client", kept.pk)
    health = request.may.read_health_of([kept.pk, gone.pk]) == {kept.pk, gone.pk}
    rows = [*_rows(merging.preview(kept, gone), kept, health), *_consents(kept, gone)]
    shown = {"client": kept, "other": gone, "rows": rows, "counts": _counts(kept, gone), "health": health}
    return render(request, "aftercare/merge_form.html", shown)


@require_safe
@page("front desk")
def merges(request: StudioRequest) -> HttpResponseBase:
    """Every merge, newest first, each with its way back."""
    rows = Merge.objects.filter(studio=request.studio).select_related("kept", "gone", "by").order_by("-at", "-pk")
    return render(request, "aftercare/merges.html", {"merges": rows})


@require_POST
@page("front desk")
def merge_undo(request: StudioRequest, merge_id: int) -> HttpResponseBase:
    """Make two cards of one again."""
    merge = get_object_or_404(Merge, studio=request.studio, pk=merge_id)
    try:
        with transaction.atomic():
            records.undo_merge(merge=merge, now=request.now)
            links.part(merge.kept, merge.gone, since=merge.at, now=request.now)
    except ValidationError as error:
        tell(request, error)
    else:
        upkeep.plan_clients([merge.kept_id, merge.gone_id], request.now)
        messages.success(request, _("Undone: both cards stand as before."))
    return redirect("merges")


def _merge(request: StudioRequest, kept: Client, gone: Client) -> bool:
    try:
        merged = records.merge(
            kept=kept, gone=gone, by=request.staff, now=request.now, stopped=stops.stopped_channels([kept, gone])
        )
    except ValidationError as error:
        tell(request, error)
        return False
    upkeep.plan_clients([kept.pk, gone.pk], request.now)
    said = _("Merged. You find it under “merged cards”, where it can be undone.")
    undo.said(request, said, reverse("merge_undo", args=[merged.pk]))
    return True


def _found(request: StudioRequest, kept: Client, asked: str) -> QuerySet[Client]:
    """Cards that could be hers: by what was asked, else by her number, her address or her name."""
    others = access.clients(request).exclude(pk=kept.pk)
    if asked:
        wanted = Q()
        for word in asked.split():
            wanted &= (
                Q(first_name__icontains=word)
                | Q(last_name__icontains=word)
                | Q(mobile__contains=word)
                | Q(email__icontains=word)
            )
        return others.filter(wanted)[:FOUND]
    like = Q(first_name__iexact=kept.first_name, last_name__iexact=kept.last_name)
    if kept.mobile:
        like |= Q(mobile=kept.mobile)
    if kept.email:
        like |= Q(email__iexact=kept.email)
    return others.filter(like)[:FOUND]


def _rows(outcomes: Iterable[merging.Outcome], kept: Client, health: bool) -> list[Row]:
    return [
        Row(
            capfirst(str(LABELS[outcome.field])),
            *(_words(outcome.field, value, kept) for value in (outcome.kept, outcome.gone, outcome.after)),
        )
        for outcome in outcomes
        if (health or outcome.field not in HEALTH) and any((outcome.kept, outcome.gone, outcome.after))
    ]


def _words(field: str, value: object, of: Client) -> str:
    if isinstance(value, bool):
        return _("yes") if value else _("no")
    if isinstance(value, date):
        return say.dated(value, say.language_of(get_language() or "en"), "")
    if field == "language" and value:
        return language_name(str(value))
    if field in NUMBERS and value:
        return written_number(str(value), of.studio.region)
    if field in CHOICES:
        return str(dict(CHOICES[field]).get(str(value), "—")) if value else "—"
    return str(value) if value else "—"


def _consents(kept: Client, gone: Client) -> list[Row]:
    answers = [merging.standing_answers(client) for client in (kept, gone)]
    noes = merging.refused(kept, gone, stops.stopped_channels([kept, gone]))
    channels, words = {"sms": _("Texts"), "email": _("E-mail")}, {True: _("yes"), False: _("no"), None: "—"}
    purposes = {"visits": _("about her visits"), "reminders": _("reminders")}
    rows = []
    for pair in merging.PAIRS:
        one, other = (given.get(pair) for given in answers)
        after = False if pair in noes else True if True in (one, other) else None
        label = f"{channels[pair[0]]}: {purposes[pair[1]]}"
        rows.append(Row(label, words[one], words[other], words[after]))
    return rows


def _counts(kept: Client, gone: Client) -> list[Row]:
    return [
        Row(label, str(one), str(other), str(one + other))
        for label, one, other in (
            (_("Visits"), kept.visits.count(), gone.visits.count()),
            (_("Messages"), kept.messages.count(), gone.messages.count()),
            (_("Replies"), kept.replies.count(), gone.replies.count()),
            (_("References in the book"), kept.refs.count(), gone.refs.count()),
        )
    ]
