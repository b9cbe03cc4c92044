"""Answering a client in one's own words, with both sides of what was said in view."""

from __future__ import annotations

import hashlib

from django.contrib import messages
from django.db.models import Q
from django.http import HttpResponse, HttpResponseBase
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy
from django.views.decorators.http import require_http_methods

from aftercare import answers, facts, tasks
from aftercare.answers import Look, Road
from aftercare.forms.answers import AnswerForm, way
from aftercare.models import Flag, Message, Reply
from aftercare.pages import card, shown
from aftercare.pages.files import brought, with_files
from aftercare.views.flags import flag_or_404
from studio.access import StudioRequest, client_or_404, health_or_403, page
from studio.models import Client

STARTS = {
    "ask_more": gettext_lazy("ask more"),
    "will_call": gettext_lazy("we call you"),
    "come_in": gettext_lazy("come in to be looked at"),
    "same_day": gettext_lazy("the signs not to wait with; we call"),
    "seen_today": gettext_lazy("see someone today"),
    "breathing": gettext_lazy("emergency: breathing, face, throat"),
    "chemical": gettext_lazy("emergency: adhesive or remover in the eye"),
    "sealed": gettext_lazy("emergency: an eye that will not open"),
    "sight": gettext_lazy("emergency: sight, severe pain"),
}


@require_http_methods(["GET", "POST"])
@page("artist")
def flag_answer(request: StudioRequest, flag_id: int) -> HttpResponseBase:
    """Answer an open matter."""
    flag = flag_or_404(request, flag_id)
    clients = list(flag.clients.all())
    reply = flag.replies.select_related("line").order_by("received_at", "pk").last()
    return _answer(request, clients[0] if len(clients) == 1 else None, flag, reply)


@require_http_methods(["GET", "POST"])
@page("artist")
def conversation(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Both sides of what was said with a client, and a box to write to her."""
    client = client_or_404(request, client_id)
    health_or_403(request, client)
    reply = client.replies.select_related("line").order_by("received_at", "pk").last()
    standing = Flag.objects.exclude(state=Flag.State.CLOSED).filter(clients=client).order_by("-opened_at").first()
    return _answer(request, client, standing, reply)


def _answer(request: StudioRequest, client: Client | None, flag: Flag | None, reply: Reply | None) -> HttpResponseBase:
    roads = answers.roads(request.studio, client, reply, request.now)
    open_roads = [road for road in roads if not road.closed]
    look: Look | None = None
    start = request.POST.get("from", "")
    if open_roads and start in answers.STARTS:
        return _shown(request, _started(request, start, open_roads, client, flag), None, roads, client, flag)
    form = AnswerForm(request.POST or None, roads=open_roads)
    if request.method == "POST" and form.is_valid():
        road = next(one for one in open_roads if one.channel == form.cleaned_data["channel"])
        look = answers.look(form.cleaned_data["text"], road, request.studio, request.now)
        if "cheaper" in request.POST:
            look = answers.look(look.cheaper or look.text, road, request.studio, request.now)
            form = AnswerForm(None, roads=open_roads, text=look.text, channel=road.channel)
        elif "send" in request.POST and _sent(request, form, look, road, client, flag):
            return _after_sending(request, client, flag)
    return _shown(request, form, look, roads, client, flag)


def _started(
    request: StudioRequest, start: str, roads: list[Road], client: Client | None, flag: Flag | None
) -> AnswerForm:
    """The form with a wording in it, below what was typed already."""
    road = next((one for one in roads if one.channel == request.POST.get("channel")), roads[0])
    wording = answers.start_from(start, road, request.studio, client, flag, request.now)
    typed = request.POST.get("text", "").replace("\r\n", "\n").strip()
    text = typed if typed.endswith(wording) else "\n\n".join(filter(None, [typed, wording]))
    return AnswerForm(None, roads=roads, text=text, channel=road.channel)


def _after_sending(request: StudioRequest, client: Client | None, flag: Flag | None) -> HttpResponseBase:
    if flag is not None or client is None:
        messages.success(request, _("It goes at once. The matter stays on the list until you close it."))
        return redirect(reverse("morning") + (f"#flag-{flag.pk}" if flag is not None else ""))
    messages.success(request, _("It goes at once."))
    return redirect("conversation", client.pk)


def _sent(
    request: StudioRequest, form: AnswerForm, look: Look, road: Road, client: Client | None, flag: Flag | None
) -> bool:
    """Promise it; False where it is shown again, with what is wrong or what is never said."""
    if look.is_warned_of and request.POST.get("confirmed") != _digest(look):
        return False
    sent = form.written(
        lambda clean: answers.send(
            clean["text"],
            road,
            studio=request.studio,
            client=client,
            flag=flag,
            token=clean["token"],
            warned=look.is_warned_of,
            by=request.staff,
            now=request.now,
        )
    )
    if sent is not None:
        tasks.nudge()
    return sent is not None


def _digest(look: Look) -> str:
    """Stands for the very words that were warned of: others are warned of anew."""
    return hashlib.sha256(look.text.encode()).hexdigest()


def _shown(
    request: StudioRequest,
    form: AnswerForm,
    look: Look | None,
    roads: list[Road],
    client: Client | None,
    flag: Flag | None,
) -> HttpResponse:
    said = _said(request, client, flag)
    context = {
        "form": form,
        "look": look,
        "digest": _digest(look) if look else "",
        "closed": [road for road in roads if road.closed],
        "ways": [way(road) for road in roads if not road.closed],
        "starts": STARTS.items(),
        "said": said[-card.LATEST :],
        "client": client,
        "flag": flag,
    }
    return render(request, "aftercare/answer.html", context)


def _said(request: StudioRequest, client: Client | None, flag: Flag | None) -> list[card.Said]:
    """Both sides with a client; to whoever was paged, and of nobody known, those of the one matter."""
    if client is not None and request.may.read_health(client):
        book = facts.load([client.pk], request.now)[client.pk]
        gone, _still = card.messages_of(book)
        return card.conversation(card.replies_of(client), shown.show(gone, book.rules, {client.pk}))
    replies = brought(with_files(flag.replies.select_related("line", "flag__closed_by"))) if flag else []
    numbers = {reply.from_address for reply in replies}
    about = Q(client=None, address__in=numbers) | Q(flag=flag) if flag else Q(pk__in=[])
    told = Message.objects.filter(about, studio=request.studio, staff=None)
    gone = list(told.exclude(handed_over_at=None).select_related("seen_to_by").order_by("handed_over_at"))
    rules, hers = facts.rules_of(request.studio), {message.pk for message in gone}  # who opened the matter reads them
    known = {message.client_id for message in gone if message.client_id}
    return card.conversation(replies, shown.show(gone, rules, known, besides=hers))
