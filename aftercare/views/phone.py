"""The pretend phone: what each client's phone would show while a studio rehearses, and a way to answer from it."""

from __future__ import annotations

from django.core.paginator import Paginator
from django.db.models import Max, Q, QuerySet
from django.http import Http404, HttpResponse, HttpResponseBase
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils.translation import gettext_lazy as _
from django.views.decorators.http import require_http_methods

from aftercare import facts, receiving, tasks, triage, upkeep
from aftercare.forms.phone import AnswerForm
from aftercare.lines import lines_of
from aftercare.models import Message
from aftercare.pages import card, shown
from studio import access
from studio.access import StudioRequest, client_or_404, page
from studio.models import Client

PER_PAGE = 40


@page()
def phone(request: StudioRequest) -> HttpResponse:
    """List the clients who have something on the phone, the newest first."""
    _only_in_rehearsal(request)
    on_it = Q(messages__rehearsed=True, messages__handed_over_at__isnull=False)
    rows = _seen(request).filter(on_it).annotate(newest=Max("messages__handed_over_at", filter=on_it))
    shown_rows = Paginator(rows.order_by("-newest", "pk"), PER_PAGE).get_page(request.GET.get("page"))
    return render(request, "aftercare/phone.html", {"shown": shown_rows, "own": _has_own(request)})


@page()
def phone_own(request: StudioRequest) -> HttpResponse:
    """Show one's own phone: pages and lists to oneself, and wordings that one tried out."""
    _only_in_rehearsal(request)
    mine = Message.objects.filter(staff=request.staff, rehearsed=True, handed_over_at__isnull=False)
    newest = list(mine.order_by("-handed_over_at")[: card.LATEST])
    rules = facts.rules_of(request.studio)
    said = shown.show(newest, rules, set(), besides={message.pk for message in newest})
    return render(request, "aftercare/phone_own.html", {"said": said})


@require_http_methods(["GET", "POST"])
@page()
def phone_of(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Show one client's phone; what is sent from it comes in as a reply of hers."""
    _only_in_rehearsal(request)
    her = client_or_404(request, client_id)
    if not _seen(request).filter(pk=her.pk).exists():
        raise Http404
    gone = Message.objects.filter(client=her, rehearsed=True, handed_over_at__isnull=False).order_by("-handed_over_at")
    messages = list(gone[: card.LATEST])
    form = AnswerForm(request.POST or None, channels=_channels(her), newest=messages[0].channel if messages else "")
    if request.method == "POST" and form.is_valid():
        _come_in(request, her, form.cleaned_data["channel"], form.cleaned_data["text"])
        return redirect(f"{reverse('phone_of', args=[her.pk])}#answer")
    said = card.conversation(card.replies_of(her), shown.show(messages, facts.rules_of(request.studio), {her.pk}))
    return render(request, "aftercare/phone_of.html", {"client": her, "said": said, "form": form})


def _has_own(request: StudioRequest) -> bool:
    return Message.objects.filter(staff=request.staff, rehearsed=True, handed_over_at__isnull=False).exists()


def _only_in_rehearsal(request: StudioRequest) -> None:
    if not (request.studio.in_rehearsal or request.studio.is_demo):
        raise Http404


def _seen(request: StudioRequest) -> QuerySet[Client]:
    """Return the clients whose phone she may look at: what is written on it is a health note."""
    rows = access.clients(request)
    return rows if request.may.own else rows.filter(pk__in=request.may.treated())


def _channels(her: Client) -> list[tuple[str, str]]:
    roads = [("sms", her.mobile, _("by text")), ("email", her.email, _("by e-mail"))]
    return [(channel, str(words)) for channel, address, words in roads if address]


def _come_in(request: StudioRequest, her: Client, channel: str, text: str) -> None:
    """Take it in as a provider's callback would: stored first, then looked at."""
    line = lines_of(request.studio)[channel]
    address = her.mobile if channel == "sms" else her.email
    receiving.receive(line, address, text, received_at=request.now)
    triage.read_waiting(request.now, request.studio.pk)
    upkeep.catch_up(request.now, studio=request.studio)
    tasks.nudge()
