"""The questions before a visit: a client's own page, from a link; no sign-in, nothing kept but what she sends."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime

from django.contrib.auth.decorators import login_not_required
from django.core.exceptions import ValidationError
from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.utils import timezone, translation
from django.views.decorators.cache import never_cache
from django.views.decorators.csrf import csrf_exempt
from django.views.decorators.http import require_http_methods

from aftercare import consulting, links, tasks, texts, triage, upkeep
from aftercare.core import consultation as questions
from aftercare.core import say
from aftercare.core.consultation import Question
from aftercare.forms.consultation import AnswersForm
from aftercare.forms.hers import Told
from aftercare.links import Opened, Purpose
from aftercare.models import Consultation, QuestionForm, Reply
from aftercare.pages import consultation as pages
from aftercare.pages.consultation import FirstAid
from aftercare.views.her_words import receive, too_many
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

    opened: Opened
    visit: Visit
    language: str
    form: QuestionForm
    last: Consultation | None
    now: datetime

    @property
    def client(self) -> Client:
        return self.opened.client

    @property
    def shows_before(self) -> bool:
        """Whether what she answered before is shown: not to whom her page about the visit was forwarded."""
        return self.opened.purpose is Purpose.CONSULTATION

    @property
    def is_open(self) -> bool:
        return consulting.is_asked_for(self.visit, self.now)


@require_http_methods(["GET", "HEAD", "POST"])
@csrf_exempt  # only who has the link can do anything, and a page without a referrer has no origin to check
@never_cache
@login_not_required
def consultation(request: HttpRequest, token: str, purpose: Purpose = Purpose.CONSULTATION) -> HttpResponse:
    """GET shows the questions and changes nothing; POST keeps what she answers, or deletes what she takes back."""
    opened = links.opened(purpose, token)
    if opened is None or opened.visit is None:
        return _private(render(request, "aftercare/hers/gone.html", status=404))
    client, visit, now = opened.client, opened.visit, clock.now()
    here = Page(
        opened, visit, _language(request, client), consulting.form_of(client.studio), consulting.last_kept(client), now
    )
    with translation.override(here.language), timezone.override(client.studio.zone):
        if request.method == "POST" and "withdraw" in request.POST and here.shows_before:
            return _withdraw(request, here)
        return _answer(request, here) if here.is_open else _closed(request, here)


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
        "emergency_number": texts.emergency_number(here.client),
        "languages": LANGUAGES,
        "may_withdraw": part != "withdrawn" and here.last is not None and here.shows_before,
        **more,
    }
    return _private(render(request, "aftercare/consultation.html", shown, status=status))


def _answer(request: HttpRequest, here: Page) -> HttpResponse:
    """Show the form; on POST keep it, or show it again with all that she typed and what is to be mended.

    Whatever becomes of it, what she tells of an eye that is not well now is answered at once.
    """
    short = here.last is not None and "change" not in request.GET and request.POST.get("all") != "1"
    form = _form(request, here, short=short)
    aid = None
    if request.method == "POST":
        is_whole, told = form.is_valid(), form.told(here.visit.pk, here.language)
        if is_whole:  # what cannot be kept, as it was filled in too often, tells of her eyes all the same
            sent = form.sent(here.language, nothing_changed=short)
            try:
                row, _is_new = consulting.submit(visit=here.visit, client=here.client, sent=sent, now=here.now)
            except ValidationError as error:
                form.refuse(error)
            else:
                upkeep.plan_clients([here.client.pk], here.now)
                return _done(request, here, row, sent, _hear(here, told, is_agreed=row.agreed))
        aid = _hear(here, told, is_agreed=is_whole and form.cleaned_data["agreed"] == questions.YES)
    return _shown(
        request,
        here,
        "form",
        form=form,
        short=short,
        aid=aid,
        said=pages.in_short(here.last) if here.last is not None and short and here.shows_before else [],
        answered=Consultation.objects.filter(visit=here.visit).order_by("at", "pk").last(),
        waiver=consulting.waiver_of(here.form, here.language),
    )


def _closed(request: HttpRequest, here: Page) -> HttpResponse:
    """Say that there is nothing to answer. Of what she had begun to answer, what she tells of an eye is heard."""
    aid = None
    if request.method == "POST":
        form = _form(request, here, short=False)
        form.is_valid()
        told = form.told(here.visit.pk, here.language)
        aid = _hear(here, told, is_agreed=form.cleaned_data.get("agreed") == questions.YES)
    return _shown(request, here, "closed", aid=aid)


def _form(request: HttpRequest, here: Page, *, short: bool) -> AnswersForm:
    before = consulting.answers_of(here.last) if here.shows_before else {}
    client = here.client
    return AnswersForm(
        request.POST if request.method == "POST" else None,
        studio=client.studio,
        questions=_asked(here, short=short),
        before=before,
        to_sign=consulting.is_to_sign(client, here.form, here.language),
        age_known=client.under_18 is False or (client.under_18 is True and client.guardian_agreed_on is not None),
        style=here.last.style if here.last and here.shows_before else "",
    )


def _asked(here: Page, *, short: bool) -> list[Question]:
    """Every question; where nothing has changed, how her eyes are now and what she was never asked."""
    off = here.form.off if isinstance(here.form.off, list) else []
    before = consulting.answers_of(here.last)
    return [one for one in questions.asked(off) if not short or one.now or one.key not in before]


def _hear(here: Page, told: Told, *, is_agreed: bool) -> FirstAid | None:
    """Have what she tells of her eyes now come in as from her page, where she agreed; return what to do at once.

    None where she tells of nothing.
    """
    if told.is_empty:
        return None
    draft = Reply(studio=here.client.studio, client=here.client, ticked=told.ticked.to_keep(), text=told.words)
    found = triage.reading_of(draft)
    kind = triage.kind_for(draft, [here.client], found)
    may_come_in = is_agreed and not too_many(here.opened, found, here.now)
    reply = receive(here.opened, told, here.now) if may_come_in else None
    return pages.first_aid(
        found,
        kind,
        client=here.client,
        language=here.language,
        flag=reply.flag if reply else None,
        reached=reply is not None,
        now=here.now,
    )


def _done(
    request: HttpRequest, here: Page, row: Consultation, sent: consulting.Sent, aid: FirstAid | None
) -> HttpResponse:
    """Say what was kept, what to do at once, what is worth a doctor's word. Sent twice, it says the same."""
    answers = consulting.answers_of(row) if row.agreed and here.shows_before else dict(sent.answers)
    here = replace(here, last=consulting.last_kept(here.client))
    return _shown(request, here, "done", row=row, aid=aid, doctor=pages.asks_a_doctor(answers))


def _withdraw(request: HttpRequest, here: Page) -> HttpResponse:
    """She takes back that her answers may be kept: they are deleted, at once."""
    times = consulting.withdraw(client=here.client, now=here.now)
    if times:
        upkeep.plan_clients([here.client.pk], here.now)
        tasks.nudge()
    return _shown(request, here, "withdrawn", may_ask=here.is_open)
