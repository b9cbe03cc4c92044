"""The questions before a visit as a client answers them, and as the owner sets them."""

from __future__ import annotations

import secrets
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.forms import BoundField
from django.utils.functional import Promise
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from aftercare.consulting import LONGEST_WAIVER, Sent
from aftercare.core import consultation
from aftercare.core.consultation import CAN_BE_OFF, NO, NOW, QUESTIONS, SIGNS, UNKNOWN, YES, Answer, Question
from aftercare.core.ticks import Ticked
from aftercare.forms.hers import Told
from studio.forms.fields import RecordForm
from studio.models import Studio
from studio.models.people import LANGUAGES
from studio.records.numbers import number

CHOICES = [(YES, _("yes")), (NO, _("no")), (UNKNOWN, _("I don’t know"))]
SAID: dict[str, Promise] = {YES: _("yes"), NO: _("no"), UNKNOWN: _("does not know"), "": _("not answered")}
SIGN_NAMES: dict[str, Promise] = {
    "redness": _("red"),
    "swelling": _("swollen lid"),
    "pain": _("it hurts"),
    "discharge": _("discharge or crusts"),
    "light": _("light hurts"),
    "vision": _("sight has changed"),
    "itching": _("itching"),
    "watering": _("watering"),
}


@dataclass(frozen=True, slots=True)
class Asked:
    """How a question is put: in short for lists, as it is asked, and why. Common practice of the trade, no source."""

    short: Promise
    words: Promise
    why: Promise


ASKED: dict[str, Asked] = {
    NOW: Asked(
        _("eyes now"),
        _("Is anything wrong with your eyes today?"),
        _("Lash services have to wait until an eye that is not well has been looked at."),
    ),
    consultation.INFECTION: Asked(
        _("eye infection or stye"),
        _("Do you have an eye infection or a stye now?"),
        _("It can get worse, and be passed on."),
    ),
    "surgery": Asked(
        _("eye or lid surgery, laser"),
        _("Have you had eye or eyelid surgery, or laser on your eyes?"),
        _("Healing takes time. Tell us what it was and when."),
    ),
    "glaucoma": Asked(
        _("glaucoma, eye drops"),
        _("Do you have glaucoma or dry eyes, or use eye drops?"),
        _("Drops can loosen the adhesive, and eyes under treatment need your doctor’s word."),
    ),
    consultation.LENSES: Asked(
        _("contact lenses"),
        _("Do you wear contact lenses?"),
        _("They come out before the service: bring their case or your glasses."),
    ),
    "reactions": Asked(
        _("earlier reactions"),
        _("Have you ever reacted to lash extensions, lash glue, tint or hair dye?"),
        _("A second reaction can be stronger. Tell us to what, when and how."),
    ),
    "acrylate": Asked(
        _("acrylate allergy"),
        _("Are you allergic to acrylates: gel nails, dental or medical glue, a glucose sensor?"),
        _("Lash adhesive is of the same family."),
    ),
    "latex": Asked(_("latex allergy"), _("Are you allergic to latex?"), _("Some adhesives and gloves contain it.")),
    "tape": Asked(
        _("tape or plaster allergy"),
        _("Are you allergic to tape or plasters?"),
        _("Tape and pads lie on the skin under your eyes."),
    ),
    "asthma": Asked(
        _("asthma, eczema, hay fever"),
        _("Do you have asthma, eczema or hay fever?"),
        _("Adhesive gives off vapor, and sensitive skin or airways react sooner."),
    ),
    "fits": Asked(
        _("fits (seizures)"),
        _("Do you have fits (seizures), or have you had one?"),
        _("You lie with your eyes closed and tools near them."),
    ),
    "chemotherapy": Asked(
        _("chemotherapy"),
        _("Are you having chemotherapy, or had it in the last year?"),
        _("Lashes and skin need time to recover."),
    ),
    "lash_loss": Asked(
        _("lash loss"),
        _("Do you lose lashes (alopecia), or pull at them?"),
        _("Weak lashes may not bear extensions."),
    ),
    "pregnancy": Asked(
        _("pregnant or nursing"),
        _("Are you pregnant or nursing?"),
        _("Skin may react in another way, and lying long may be hard."),
    ),
    "retinoids": Asked(
        _("retinoids"),
        _("Do you take or use retinoids (for acne or wrinkles)?"),
        _("They make the skin of the lids thin and dry."),
    ),
    "serum": Asked(
        _("lash serum"),
        _("Do you use a lash serum?"),
        _("It changes how your lashes grow, and some loosen the adhesive."),
    ),
    "lie_flat": Asked(
        _("cannot lie flat"),
        _("Is it hard for you to lie flat for two hours?"),
        _("We can prop you up, or take breaks."),
    ),
}

AGREEMENT = _(
    "%(studio)s may keep my answers about my health, so that my artist can prepare my visits. I can take this back at "
    "any time on this page; the answers are then deleted."
)


@dataclass(frozen=True, slots=True)
class Group:
    """One question on the page, with its fields."""

    asked: Asked
    question: Question
    said: BoundField
    words: BoundField
    signs: BoundField | None


class AnswersForm(RecordForm):
    """What she answers. Nothing is chosen for her but what she said before, and never an agreement or a signature."""

    once = forms.CharField(widget=forms.HiddenInput, min_length=16, max_length=32)
    agreed = forms.ChoiceField(
        label=_("May we keep your answers about your health?"),
        choices=[
            (YES, _("yes, keep them for my visits")),
            (NO, _("no, keep none: I talk with my artist")),
        ],
        widget=forms.RadioSelect,
        error_messages={"required": _("Choose yes or no: without your yes, nothing about your health is kept.")},
    )
    more = forms.CharField(
        label=_("Anything else that your artist should know about your health"),
        max_length=consultation.LONGEST,
        required=False,
        widget=forms.Textarea(attrs={"rows": 3}),
    )
    not_now = forms.BooleanField(label=_("What I wrote is not about today"), required=False)
    style = forms.CharField(
        label=_("The look you wish"),
        help_text=_("For example: natural, a little longer outside, like last time."),
        max_length=200,
        required=False,
    )
    under_18 = forms.ChoiceField(
        label=_("Are you under 18?"),
        choices=[(YES, _("yes")), (NO, _("no"))],
        widget=forms.RadioSelect,
        error_messages={"required": _("Choose yes or no: under 18 a parent or guardian has to agree.")},
    )
    guardian_name = forms.CharField(label=_("Parent’s or guardian’s name"), max_length=120, required=False)
    guardian_mobile = forms.CharField(label=_("Parent’s or guardian’s telephone number"), max_length=40, required=False)
    guardian_agreed = forms.BooleanField(
        label=_("I am her parent or guardian, and I agree to the visit and to what is answered here"), required=False
    )
    signed_name = forms.CharField(
        label=_("Your name, as your signature"),
        help_text=_("Under 18, a parent or guardian signs. You can also leave it empty and sign at the studio."),
        max_length=120,
        required=False,
    )
    read_it = forms.BooleanField(label=_("I have read this and agree to it"), required=False)

    def __init__(
        self,
        data: Mapping[str, Any] | None,
        *,
        studio: Studio,
        questions: Collection[Question],
        before: Mapping[str, Answer],
        to_sign: bool,
        age_known: bool,
        style: str = "",
    ) -> None:
        super().__init__(data)
        self.studio = studio
        self.questions = tuple(questions)
        for question in self.questions:
            # How her eyes are now is asked anew each time.
            self._add(question, Answer() if question.now else before.get(question.key, Answer()))
        self.fields["once"].initial = secrets.token_hex(12)
        self.fields["style"].initial = style
        left_out = set() if to_sign else {"signed_name", "read_it"}
        left_out |= {"under_18", "guardian_name", "guardian_mobile", "guardian_agreed"} if age_known else set()
        self.keep(name for name in list(self.fields) if name not in left_out)

    def _add(self, question: Question, before: Answer) -> None:
        asked, key = ASKED[question.key], question.key
        self.fields[key] = forms.ChoiceField(
            label=str(asked.words), choices=CHOICES, widget=forms.RadioSelect, required=False, initial=before.said
        )
        self.fields[f"{key}_words"] = forms.CharField(
            label=_("In your words"), max_length=consultation.LONGEST, required=False, initial=before.words
        )
        if key == NOW:
            self.fields["signs"] = forms.MultipleChoiceField(
                label=_("What is it? Tick all that is so."),
                choices=[(sign, SIGN_NAMES[sign]) for sign in SIGNS],
                widget=forms.CheckboxSelectMultiple,
                required=False,
            )

    def groups(self) -> Iterator[Group]:
        """Give the questions in their order, each with its fields."""
        for question in self.questions:
            key = question.key
            signs = self["signs"] if key == NOW else None
            yield Group(ASKED[key], question, self[key], self[f"{key}_words"], signs)

    def clean(self) -> dict[str, Any]:
        """Ask for every answer unless she lets none be kept, and for what belongs together."""
        clean = super().clean() or self.cleaned_data
        if clean.get("agreed") != NO:
            self._ask_for_answers(clean)
        self._ask_whether_now(clean)
        if clean.get("under_18") == YES:
            self._ask_for_guardian(clean)
        if "signed_name" in self.fields and bool(clean.get("signed_name")) != bool(clean.get("read_it")):
            name = "read_it" if clean.get("signed_name") else "signed_name"
            self.add_error(
                name, gettext("To sign, tick that you have read it and write your name; or leave both empty.")
            )
        return clean

    def _ask_for_answers(self, clean: dict[str, Any]) -> None:
        if clean.get(NOW) == NO and clean.get("signs"):
            self.add_error(NOW, gettext("You ticked what is wrong and said no: choose yes, or take the ticks out."))
        for question in self.questions:
            if not clean.get(question.key) and question.key not in self.errors:
                self.add_error(question.key, gettext("Choose yes, no or I don’t know."))

    def _ask_whether_now(self, clean: dict[str, Any]) -> None:
        """Where she says that her eyes are well and her words read otherwise, it is for her to say which is so."""
        if any(clean.get(key) != NO for key in (NOW, consultation.INFECTION)) or clean.get("not_now"):
            return
        names = (f"{NOW}_words", f"{consultation.INFECTION}_words", f"{consultation.LENSES}_words", "more")
        found = consultation.reads_urgent(str(clean.get(name) or "") for name in names)
        if found:
            problem = gettext(
                "You wrote “%(words)s”. If that is so today, choose yes at the first question. If it was at another "
                "time, tick this."
            )
            self.add_error("not_now", problem % {"words": found[0]})

    def _ask_for_guardian(self, clean: dict[str, Any]) -> None:
        for name in ("guardian_name", "guardian_mobile"):
            if not clean.get(name) and name not in self.errors:
                self.add_error(name, gettext("Under 18 we need to reach a parent or guardian: write it here."))
        try:
            mobile = str(clean.get("guardian_mobile") or "")
            clean["guardian_mobile"] = number(mobile, region=self.studio.region, field="guardian_mobile")
        except ValidationError as error:
            self.add_error(None, error)

    def agreement(self) -> str:
        """Return the words that she agrees to."""
        return AGREEMENT % {"studio": self.studio.name}

    def sent(self, language: str, *, nothing_changed: bool) -> Sent:
        """Return what she sent, once it is valid; her health answers too, whoever keeps them asks ``agreed``."""
        clean = self.cleaned_data
        minor = clean.get("under_18", "") == YES
        return Sent(
            once=clean["once"],
            language=language,
            agreed=clean["agreed"] == YES,
            agreed_words=self.agreement(),
            answers={question.key: self._answer(question.key) for question in self.questions},
            more=clean["more"],
            style=clean["style"],
            nothing_changed=nothing_changed,
            signed_name=clean.get("signed_name", ""),
            under_18=minor if clean.get("under_18") else None,
            guardian_name=clean.get("guardian_name", "") if minor else "",
            guardian_mobile=clean.get("guardian_mobile", "") if minor else "",
            guardian_agreed=minor and bool(clean.get("guardian_agreed")),
        )

    def told(self, visit: int, language: str) -> Told:
        """Return what she tells of her eyes as they are now, as from her page; of a form to be mended, too."""
        answers = {question.key: self._answer(question.key) for question in self.questions}
        words = consultation.own_words(answers, self.cleaned_data.get("more", ""))
        ticked = Ticked(
            ticks=consultation.ticks(answers),
            lenses=answers.get(consultation.LENSES, Answer()).said == YES,
            language=language,
            visit=visit,
        )
        return Told(ticked, "\n".join(words), form=self.cleaned_data.get("once", ""))

    def _answer(self, key: str) -> Answer:
        clean = self.cleaned_data
        signs = tuple(clean.get("signs", ())) if key == NOW else ()
        return Answer(clean.get(key, ""), clean.get(f"{key}_words", ""), signs)


class QuestionsForm(RecordForm):
    """What the owner asks beside what is always asked, and the waiver in each language."""

    asked = forms.MultipleChoiceField(
        label=_("Asked beside the questions on safety"),
        choices=[(key, ASKED[key].words) for key in CAN_BE_OFF],
        widget=forms.CheckboxSelectMultiple,
        required=False,
    )
    seen = forms.IntegerField(widget=forms.HiddenInput, min_value=0)

    def __init__(self, data: Mapping[str, Any] | None, *, initial: Mapping[str, Any]) -> None:
        super().__init__(data, initial=dict(initial))
        for language, name in LANGUAGES:
            self.fields[f"waiver_{language}"] = forms.CharField(
                label=gettext("Waiver in %(language)s") % {"language": name},
                help_text=_("Left empty, the first text stands in again."),
                max_length=LONGEST_WAIVER * 2,  # what is refused is said better by the records
                required=False,
                widget=forms.Textarea(attrs={"rows": 14}),
            )

    @property
    def off(self) -> list[str]:
        return [key for key in CAN_BE_OFF if key not in self.cleaned_data["asked"]]

    @property
    def waiver(self) -> dict[str, str]:
        """The texts with plain line ends: a browser sends its own."""
        return {one: self.cleaned_data[f"waiver_{one}"].replace("\r\n", "\n") for one, _name in LANGUAGES}


ALWAYS = tuple(question.key for question in QUESTIONS if question.safety)
