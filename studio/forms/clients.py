"""Forms about a client: her card, what she agreed to, a reaction and its release."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime, time
from typing import Any
from zoneinfo import ZoneInfo

from django import forms
from django.core.exceptions import ValidationError
from django.forms.models import model_to_dict
from django.utils.formats import date_format
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from studio.forms.fields import Day, Hour, RecordForm, ThreeWay, moment, of_model, yes_or_no, zones
from studio.models import Client, Consent, Reaction, Studio, Visit
from studio.models.people import LANGUAGES
from studio.records import Answer

CONTACT = ("first_name", "last_name", "mobile", "email", "channel", "language", "time_zone", "wished_hours")
AGREED = ("under_18", "guardian_name", "guardian_mobile", "guardian_agreed_on", "waiver_signed_on", "on_break")
HEALTH = ("sensitive", "wears_lenses", "oily_lids", "note")  # for those alone who may read health notes

ASKED = tuple((channel, purpose) for channel in ("sms", "email") for purpose in Consent.Purpose.values)
HOW = [
    ("", "—"),
    ("in person", _("in person")),
    ("on paper", _("on paper, signed")),
    ("by telephone", _("by telephone")),
    ("in a message of hers", _("in a message of hers")),
]


class ClientForm(RecordForm):
    """A client's card, as far as the person at the form may see it."""

    def __init__(
        self, data: Any = None, *, studio: Studio, client: Client | None, health: bool, prefix: str | None = None
    ) -> None:
        initial = model_to_dict(client, fields=[*CONTACT, *AGREED, *HEALTH]) if client else {}
        super().__init__(data, initial=initial, prefix=prefix)
        own = of_model(Client, *CONTACT, *AGREED, *HEALTH)
        own["mobile"] = forms.CharField(
            label=own["mobile"].label,
            required=False,
            max_length=40,
            widget=forms.TextInput(attrs={"type": "tel", "autocomplete": "off"}),
            help_text=_("As you would dial it from here, or with its country code."),
        )
        own["guardian_mobile"] = forms.CharField(
            label=own["guardian_mobile"].label, required=False, max_length=40, widget=forms.TextInput({"type": "tel"})
        )
        own["language"] = forms.ChoiceField(
            label=own["language"].label, required=False, choices=_languages(studio, initial.get("language", ""))
        )
        own["time_zone"] = forms.ChoiceField(
            label=own["time_zone"].label,
            required=False,
            choices=zones(blank=_("the studio’s: %s") % studio.time_zone, also=initial.get("time_zone", "")),
            help_text=_("Only where she says that she lives in another."),
        )
        for name in ("under_18", "sensitive", "wears_lenses", "oily_lids"):
            own[name] = ThreeWay(label=own[name].label)
        for name in ("guardian_agreed_on", "waiver_signed_on"):
            own[name] = Day(label=own[name].label, required=False)
        own["note"].widget.attrs["rows"] = 3
        self.fields.update(own)
        self.keep((*CONTACT, *AGREED, *HEALTH) if health else (*CONTACT, *AGREED))

    def sections(self) -> list[tuple[Any, list[forms.BoundField]]]:
        """The fields in groups, each with its heading; a group without fields is left out."""
        groups = ((_("How she is reached"), CONTACT), (_("For her visits"), HEALTH), (_("Papers"), AGREED))
        found = [(title, [self[name] for name in names if name in self.fields]) for title, names in groups]
        return [(title, fields) for title, fields in found if fields]


def _languages(studio: Studio, stated: str) -> list[tuple[str, Any]]:
    known = [("", _("the studio’s: %s") % studio.get_language_display()), *LANGUAGES]
    return known if stated in dict(known) else [*known, (stated, stated)]


class ConsentForm(RecordForm):
    """What she agreed to, question by question; what was not asked is left alone."""

    how = forms.ChoiceField(label=_("how she answered"), required=False, choices=HOW)
    words_shown = forms.CharField(
        label=_("the words shown or read to her"), required=False, widget=forms.Textarea(attrs={"rows": 3})
    )

    def __init__(self, data: Any = None, *, prefix: str | None = None) -> None:
        super().__init__(data, prefix=prefix)
        channels = {"sms": gettext("Texts"), "email": gettext("E-mails")}
        purposes = {"visits": gettext("about her visits"), "reminders": gettext("reminders")}
        asked = {
            _name(channel, purpose): ThreeWay(
                label=f"{channels[channel]}: {purposes[purpose]}",
                choices=[("", _("not asked")), ("yes", _("yes")), ("no", _("no"))],
            )
            for channel, purpose in ASKED
        }
        self.fields = {**asked, **self.fields}

    def clean(self) -> dict[str, Any]:
        cleaned = super().clean() or self.cleaned_data
        if self.answers() and not cleaned.get("how"):
            self.add_error("how", _("Say how she answered, so that it can be shown later."))
        return cleaned

    def answers(self) -> list[Answer]:
        """The questions that have an answer."""
        given = [(pair, self.cleaned_data.get(_name(*pair))) for pair in ASKED]
        how, words = self.cleaned_data.get("how", ""), self.cleaned_data.get("words_shown", "")
        return [Answer(*pair, answer, how, words) for pair, answer in given if answer is not None]


def _name(channel: str, purpose: str) -> str:
    return f"{channel}_{purpose}"


class PauseForm(RecordForm):
    """Send her nothing until a day."""

    until = Day(
        label=_("send nothing until"),
        help_text=_("That day is free again. Aftercare and checks are for her safety and still go."),
    )


class StopForm(RecordForm):
    """She told someone here that she wants nothing more on a channel."""

    channel = forms.ChoiceField(
        label=_("What is to stop?"),
        choices=[("sms", _("texts")), ("email", _("e-mails"))],
        widget=forms.RadioSelect,
        error_messages={"required": _("Choose what is to stop: texts or e-mails.")},
    )
    words = forms.CharField(
        label=_("How and in which words she said it"),
        max_length=400,
        error_messages={"required": _("Write how and in which words she said it.")},
    )


class ReactionForm(RecordForm):
    """A reaction, in the words of who saw or heard it. No form here asks for, or makes, a diagnosis."""

    words = forms.CharField(
        label=_("what was seen or said"),
        widget=forms.Textarea(attrs={"rows": 4}),
        help_text=_("Which eye, which signs, since when; in her own words where you have them. No diagnosis."),
    )
    visit = forms.TypedChoiceField(label=_("after which visit"), required=False, coerce=int, empty_value=None)
    day = Day(label=_("seen or said on"), required=False, help_text=_("Blank: now."))
    hour = Hour(label=_("at"), required=False)

    def __init__(self, data: Any = None, *, visits: Iterable[Visit], zone: ZoneInfo, now: datetime) -> None:
        super().__init__(data)
        self.zone, self.now, self.visits = zone, now, {visit.pk: visit for visit in visits}
        choice = self.fields["visit"]
        assert isinstance(choice, forms.TypedChoiceField)
        choice.choices = [("", _("not known, or none")), *((pk, self._words(one)) for pk, one in self.visits.items())]

    def _words(self, visit: Visit) -> str:
        return f"{date_format(visit.starts_at.astimezone(self.zone), 'j F Y')}, {visit.get_service_display()}"

    def clean(self) -> dict[str, Any]:
        cleaned = super().clean() or self.cleaned_data
        day, hour = cleaned.get("day"), cleaned.get("hour")
        if hour and not day and "day" not in self.errors:
            self.add_error("day", gettext("Write the day too."))
        if day:
            try:
                at = moment(day, hour or time(12), self.zone, field="hour")
                cleaned["at"] = at if hour else min(at, self.now)
            except ValidationError as error:
                self.refuse(error)
        return cleaned


class ReleaseForm(RecordForm):
    """Both questions must be answered by a person; nothing is chosen beforehand."""

    clinician_consulted = forms.ChoiceField(
        label=_("Was a clinician consulted?"),
        choices=Reaction.Consulted.choices,
        widget=forms.RadioSelect,
        error_messages={"required": _("Say yes, no or not known.")},
    )
    test_first = yes_or_no(
        label=_("A patch test before her next set?"), error_messages={"required": _("Say yes or no.")}
    )
