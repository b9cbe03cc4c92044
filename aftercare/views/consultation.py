"""The questions before a visit: a client's own page, from a link; no sign-in, nothing kept but what she sends."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from django.contrib.auth.decorators import login_not_required
from django.core.exceptions import ValidationError
from django.db import transaction
from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.utils import timezone, translation
from django.views.decorators.cache import never_cache
from django.views.decorators.csrf import csrf_exempt
from django.views.decorators.http import require_http_methods

from aftercare import consulting, facts, links, receiving, tasks, triage, upkeep
from aftercare.core import consultation as questions
from aftercare.core import say
from aftercare.core.consultation import Question
from aftercare.forms.consultation import AnswersForm
from aftercare.lines import lines_of
from aftercare.links import Purpose
from aftercare.models import Consultation, Line, QuestionForm, Reply
from aftercare.pages import consultation as pages
from studio import clock
from studio.models import Client, Visit
from studio.models.people import LANGUAGES

PRIVATE = {
    "Referrer-Policy": "no-referrer",  # the address opens what she answered
    "X-Robots-Tag": "noindex, nofollow",
}


@dataclass(frozen=True, slots=True)
class Page:
    """Whose page it is, about which visit, in which language, at which moment."""

    client: Client
    visit: Visit
    language: str
    form: QuestionForm
    last: Consultation | None
    now: datetime

    @property
    def is_open(self) -> bool:
        return consulting.is_asked_for(self.visit, self.now)


@require_http_methods(["GET", "HEAD", "POST"])
@csrf_exempt  # only who has the link can do anything, and a page without a referrer has no origin to check
@never_cache
@login_not_required
def consultation(request: HttpRequest, token: str) -> HttpResponse:
    """GET shows the questions and changes nothing; POST keeps what she answers, or deletes what she takes back."""
    opened = links.opened(Purpose.CONSULTATION, token)
    if opened is None or opened.visit is None:
        return _private(render(request, "aftercare/hers/gone.html", status=404))
    client, visit, now = opened.client, opened.visit, clock.now()
    here = Page(
        client, visit, _language(request, client), consulting.form_of(client.studio), consulting.last_kept(client), now
    )
    with translation.override(here.language), timezone.override(client.studio.zone):
        if request.method == "POST" and "withdraw" in request.POST:
            return _withdraw(request, here)
        if not here.is_open:
            return _shown(request, here, "closed")
        return _answer(request, here)


def _language(request: HttpRequest, client: Client) -> str:
    asked = request.POST.get("language") or request.GET.get("language", "")
    return asked if asked in dict(LANGUAGES) else say.language_of(client.language, client.studio.language)


def _private(response: HttpResponse) -> HttpResponse:
    for name, value in PRIVATE.items():
        response[name] = value
    return response


def _shown(request: HttpRequest, here: Page, part: str, *, status: int = 200, **more: object) -> HttpResponse:
    """Show one part of the page: the form, that it is closed, or what follows on sending."""
    shown = {
        "part": part,
        "here": here,
        "studio": here.client.studio,
        "now": here.now,
        "studio_name": here.client.studio.name,
        "studio_phone": here.client.studio.phone,
        "languages": LANGUAGES,
        "may_withdraw": part != "withdrawn" and here.last is not None,
        **more,
    }
    return _private(render(request, "aftercare/consultation.html", shown, status=status))


def _answer(request: HttpRequest, here: Page) -> HttpResponse:
    """Show the form; on POST keep it, or show it again with all that she typed and what is to be mended."""
    short = here.last is not None and "change" not in request.GET and request.POST.get("all") != "1"
    form = _form(request, here, short=short)
    if request.method == "POST" and form.is_valid():
        sent = form.sent(here.language, nothing_changed=short)
        try:
            with transaction.atomic():
                row, is_new = consulting.submit(visit=here.visit, client=here.client, sent=sent, now=here.now)
                told = _tells(sent)
                replies = _come_in(row, told, here) if row.agreed and is_new else []
        except ValidationError as error:
            form.refuse(error)
        else:
            if is_new:
                _look_at(replies, here)
            return _done(request, here, row, told, sent)
    return _shown(
        request,
        here,
        "form",
        form=form,
        short=short,
        said=pages.in_short(here.last) if here.last is not None and short else [],
        answered=Consultation.objects.filter(visit=here.visit).order_by("at", "pk").last(),
        waiver=consulting.waiver_of(here.form, here.language),
    )


def _form(request: HttpRequest, here: Page, *, short: bool) -> AnswersForm:
    before = consulting.answers_of(here.last)
    client = here.client
    return AnswersForm(
        request.POST if request.method == "POST" else None,
        studio=client.studio,
        questions=_asked(here, short=short),
        before=before,
        to_sign=consulting.is_to_sign(client, here.form, here.language),
        age_known=client.under_18 is False or (client.under_18 is True and client.guardian_agreed_on is not None),
        style=here.last.style if here.last else "",
    )


def _asked(here: Page, *, short: bool) -> list[Question]:
    """Every question; where nothing has changed, how her eyes are now and what she was never asked."""
    off = here.form.off if isinstance(here.form.off, list) else []
    before = consulting.answers_of(here.last)
    return [one for one in questions.asked(off) if not short or one.now or one.key not in before]


def _tells(sent: consulting.Sent) -> list[str]:
    """Return what she told of her eyes as they are now, as replies of hers."""
    ticked = questions.tells(sent.answers, sent.language)
    return questions.replies(ticked, list(questions.own_words(sent.answers, sent.more)), sent.language)


def _come_in(row: Consultation, told: list[str], here: Page) -> list[Reply]:
    """A sign comes in by the road that a reply takes, so that her artist is told as of any other."""
    line, address = _road(here)
    return [
        receiving.receive(
            line,
            address,
            text,
            received_at=here.now,
            provider_ref=f"consultation:{row.pk}:{number}",
            client=here.client,
        )
        for number, text in enumerate(told)
    ]


def _road(here: Page) -> tuple[Line, str]:
    """The line and the address by which she is reached; of a client without either, the line for texts and ''."""
    client, lines = here.client, lines_of(here.client.studio)
    way = facts.load([client.pk], here.now)[client.pk].reach
    if way.channel in lines:
        return lines[way.channel], way.address
    if not client.mobile and client.email:
        return lines["email"], client.email
    return lines["sms"], client.mobile


def _look_at(replies: list[Reply], here: Page) -> None:
    """Have what came in read at once, and her plan follow."""
    if replies:
        triage.read_waiting(here.now, here.client.studio_id)
    upkeep.plan_clients([here.client.pk], here.now)
    tasks.nudge()


def _done(request: HttpRequest, here: Page, row: Consultation, told: list[str], sent: consulting.Sent) -> HttpResponse:
    """Say what was kept, what to do at once, what is worth a doctor's word. Sent twice, it says the same."""
    client = Client.objects.select_related("studio").get(pk=here.client.pk)
    reply = client.replies.filter(provider_ref__startswith=f"consultation:{row.pk}:").select_related("flag").first()
    answers = consulting.answers_of(row) if row.agreed else dict(sent.answers)
    return _shown(
        request,
        Page(client, here.visit, here.language, here.form, consulting.last_kept(client), here.now),
        "done",
        row=row,
        aid=pages.first_aid(
            told,
            client=client,
            language=here.language,
            flag=reply.flag if reply else None,
            reached=row.agreed,
            now=here.now,
        ),
        doctor=pages.asks_a_doctor(answers),
    )


def _withdraw(request: HttpRequest, here: Page) -> HttpResponse:
    """She takes back that her answers may be kept: they are deleted, at once."""
    times = consulting.withdraw(client=here.client, now=here.now)
    if times:
        upkeep.plan_clients([here.client.pk], here.now)
        tasks.nudge()
    return _shown(request, here, "withdrawn", may_ask=here.is_open)
