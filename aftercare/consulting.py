"""Consulting: what a client answers before a visit is kept as she allows it, and her card follows.

The rows are only ever added. Her health answers are written only where she agreed, and go when she takes that back.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from functools import cache
from pathlib import Path

from django.core.exceptions import ValidationError
from django.db import IntegrityError, transaction
from django.db.models import Max
from django.utils.translation import gettext as _

from aftercare.core import consultation, say
from aftercare.core.consultation import LENSES, NO, YES, Answer
from aftercare.models import Consultation, QuestionForm
from studio import records
from studio.models import SETS, Client, Service, Staff, Studio, Visit

WAIVERS = Path(__file__).resolve().parent.parent / "templates" / "waiver"
ASKED_FOR = (*SETS, Service.TOUCH_UP, Service.LIFT, Service.CONSULTATION, Service.PATCH_TEST, Service.REMOVAL)
MOST_A_VISIT = 20  # whoever has a link could fill the table; nobody changes her mind more often
LONGEST_WAIVER = 6_000  # characters


@dataclass(frozen=True, slots=True, kw_only=True)
class Sent:
    """What she sent. ``answers`` are those to what she was asked, which is not all where nothing has changed."""

    once: str
    language: str
    agreed: bool
    agreed_words: str = ""
    answers: Mapping[str, Answer] = field(default_factory=dict)
    more: str = ""
    style: str = ""
    nothing_changed: bool = False
    signed_name: str = ""
    under_18: bool | None = None
    guardian_name: str = ""
    guardian_mobile: str = ""
    guardian_agreed: bool = False


def is_asked_for(visit: Visit, now: datetime) -> bool:
    """Whether the questions are asked before this visit: it is booked, ahead, and lash work."""
    return visit.status == Visit.Status.BOOKED and visit.starts_at > now and visit.service in ASKED_FOR


def form_of(studio: Studio) -> QuestionForm:
    """Return the form in force; version 0 is the first one, which is no row."""
    return studio.question_forms.order_by("-version").first() or QuestionForm(studio=studio, version=0)


def waiver_of(form: QuestionForm, language: str) -> str:
    """Return the waiver in force in a language: the owner's own text, else the first one."""
    spoken = say.language_of(language)
    own = form.waiver.get(spoken) if isinstance(form.waiver, dict) else ""
    return str(own or first_waiver(spoken))


@cache
def first_waiver(language: str) -> str:
    """Return the waiver that comes with the service."""
    return (WAIVERS / f"{language}.txt").read_text(encoding="utf-8").strip()


def save_form(
    *, studio: Studio, off: Collection[str], waiver: Mapping[str, str], by: Staff, now: datetime, seen: int
) -> QuestionForm:
    """Add a version of the form: which questions are not asked, and the waiver by language, blank for the first one.

    ``seen`` is the version on which it builds. Raises ValidationError for a question that must be asked, a text that
    is too long, and where someone saved another meanwhile.
    """
    for key in off:
        if key not in consultation.CAN_BE_OFF:
            raise ValidationError({"asked": _("A question on safety is always asked: “%(key)s”.") % {"key": key}})
    own = {language: text.strip() for language, text in waiver.items()}
    for language, text in own.items():
        if len(text) > LONGEST_WAIVER:
            problem = _("It has %(long)d characters: nobody reads so much. Keep it under %(most)d.")
            raise ValidationError({f"waiver_{language}": problem % {"long": len(text), "most": LONGEST_WAIVER}})
    # A text that is the first one word for word follows it when that is bettered.
    changed = {language: text for language, text in own.items() if text and text != first_waiver(language)}
    conflict = ValidationError(_("Someone saved the questions meanwhile: look at them again, then change them."))
    try:
        with transaction.atomic():
            last = studio.question_forms.aggregate(last=Max("version"))["last"] or 0
            if last != seen:
                raise conflict
            return QuestionForm.objects.create(
                studio=studio, version=last + 1, off=sorted(off), waiver=changed, at=now, by=by
            )
    except IntegrityError as error:
        raise conflict from error


def last_kept(client: Client) -> Consultation | None:
    """Return the newest answers of hers that are there to be read."""
    return client.consultations.filter(agreed=True, withdrawn_at=None).order_by("at", "pk").last()


def answers_of(row: Consultation | None) -> dict[str, Answer]:
    """Return what was answered; nothing for no row."""
    return consultation.read_kept(row.answers) if row is not None else {}


def is_to_sign(client: Client, form: QuestionForm, language: str) -> bool:
    """Whether the waiver is to be signed: not yet, or by this form in words that the owner has changed since."""
    if client.waiver_signed_on is None:
        return True
    signed = client.consultations.exclude(signed_name="").order_by("at", "pk").last()
    if signed is None or signed.signed_on != client.waiver_signed_on:  # on paper, later or alone
        return False
    return signed.form < form.version and signed.waiver != waiver_of(form, signed.language)


@transaction.atomic
def submit(*, visit: Visit, client: Client, sent: Sent, now: datetime) -> tuple[Consultation, bool]:
    """Keep what she sent, and have her card follow; return the row, and whether it is new.

    The same page sent twice is one. Raises ValidationError, and keeps nothing, where it was sent too often, and for
    what the records refuse.
    """
    Client.objects.select_for_update(of=("self",)).get(pk=client.pk)  # who sends twice at once waits here
    known = Consultation.objects.filter(visit=visit, once=sent.once).first()
    if known is not None:
        return known, False
    if Consultation.objects.filter(visit=visit).count() >= MOST_A_VISIT:
        raise ValidationError(_("This was filled in very often. Please tell the studio what has changed."))
    today = now.astimezone(client.studio.zone).date()
    form, before = form_of(client.studio), last_kept(client)
    row = Consultation(
        studio=client.studio,
        client=client,
        visit=visit,
        once=sent.once,
        at=now,
        language=sent.language,
        questions=consultation.VERSION,
        form=form.version,
        agreed=sent.agreed,
        agreed_words=sent.agreed_words if sent.agreed else "",
        style=sent.style,
        under_18=sent.under_18,
        guardian_name=sent.guardian_name,
        guardian_agreed=sent.guardian_agreed,
    )
    if sent.agreed:
        _write_answers(row, sent, before)
    if sent.signed_name:
        row.signed_name, row.signed_on, row.waiver = sent.signed_name, today, waiver_of(form, sent.language)
    facts = _facts(client, row, sent, today)
    if "wears_lenses" in facts:
        row.wore_lenses, row.set_lenses = client.wears_lenses, facts["wears_lenses"]
    row.full_clean(exclude=["studio", "client", "visit"])
    row.save()
    records.save_client(studio=client.studio, client=client, by=None, now=now, **facts)
    return row, True


def _write_answers(row: Consultation, sent: Sent, before: Consultation | None) -> None:
    earlier = answers_of(before)
    row.nothing_changed = sent.nothing_changed and before is not None
    answers = {**earlier, **sent.answers} if row.nothing_changed else dict(sent.answers)
    row.answers = consultation.kept(answers)
    row.more = sent.more
    row.to_look_at = len(consultation.to_look_at(answers)) + bool(sent.more)
    row.changes = len(consultation.changed(earlier, answers)) if before is not None else 0


def _facts(client: Client, row: Consultation, sent: Sent, today: date) -> records.ClientFields:
    """What her card says from now on. Whether she is sensitive is never among it: her artist decides that."""
    facts = records.ClientFields()
    lenses = sent.answers.get(LENSES, Answer()).said if sent.agreed else ""
    if lenses in (YES, NO) and client.wears_lenses is not (lenses == YES):
        facts["wears_lenses"] = lenses == YES
    if row.signed_on is not None:
        facts["waiver_signed_on"] = row.signed_on
    # That she is of age by now is for the studio to see: what protects her is never lifted by a tick.
    if sent.under_18 or (sent.under_18 is False and client.under_18 is None):
        facts["under_18"] = sent.under_18
    if sent.guardian_name:
        facts["guardian_name"], facts["guardian_mobile"] = sent.guardian_name, sent.guardian_mobile
        facts["guardian_agreed_on"] = today if sent.guardian_agreed else None
    return facts


@transaction.atomic
def withdraw(*, client: Client, now: datetime) -> int:
    """Delete her health answers, as she takes back that they may be kept; return how many times she had answered.

    The rows stay and say when. What they made her card say of lenses goes back to what it said before, unless a person
    has changed it since.
    """
    her = Client.objects.select_for_update(of=("self",)).get(pk=client.pk)
    rows = list(her.consultations.filter(agreed=True, withdrawn_at=None).order_by("-at", "-pk"))
    lenses = her.wears_lenses
    for row in rows:
        if row.set_lenses is not None and row.set_lenses is lenses:
            lenses = row.wore_lenses
    her.consultations.filter(pk__in=[row.pk for row in rows]).update(
        answers={},
        more="",
        nothing_changed=False,
        to_look_at=0,
        changes=0,
        wore_lenses=None,
        set_lenses=None,
        withdrawn_at=now,
    )
    if rows:
        records.save_client(studio=her.studio, client=her, by=None, now=now, wears_lenses=lenses)
    return len(rows)
