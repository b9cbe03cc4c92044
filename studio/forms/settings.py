"""Forms of the settings: the studio's facts, closing days, adhesives, names of services, the calendar, staff."""

from __future__ import annotations

from datetime import time
from typing import Any

from django import forms
from django.forms.models import model_to_dict
from django.utils.translation import gettext_lazy as _

from studio.forms.fields import Day, Hour, RecordForm, of_model, regions, zones
from studio.models import Adhesive, CalendarFeed, ClosingDay, Service, ServiceName, Staff, Studio
from studio.models.people import LANGUAGES, MORNING

FACTS = ("name", "phone", "address", "time_zone", "region", "language", "date_order")
PERSON = ("name", "is_owner", "is_artist", "is_front_desk", "mobile", "email", "language", "morning_at", "is_active")
NEWCOMER = {"is_active": True, "is_artist": True, "morning_at": MORNING}
NO_VISIT = "-"
KINDS = {**dict(Service.choices), NO_VISIT: _("no visit at all (a break, a course, a holiday)")}


class StudioForm(RecordForm):
    """The studio's facts."""

    def __init__(self, data: Any = None, *, studio: Studio, prefix: str | None = None) -> None:
        super().__init__(data, initial=model_to_dict(studio, fields=FACTS), prefix=prefix)
        own = of_model(Studio, *FACTS)
        own["time_zone"] = forms.ChoiceField(
            label=own["time_zone"].label,
            choices=zones(also=studio.time_zone),
            help_text=_("The wall clock: visits are shown by it, and the sending hours go by it."),
        )
        own["region"] = forms.ChoiceField(
            label=own["region"].label,
            choices=regions,
            help_text=_("Numbers without a country code are read as of here."),
        )
        self.fields.update(own)


class ClosingDayForm(RecordForm):
    """One day on which the studio is closed."""

    date = Day(label=_("day"))

    def __init__(self, data: Any = None, *, prefix: str | None = None) -> None:
        super().__init__(data, prefix=prefix)
        self.fields.update(of_model(ClosingDay, "name"))


class AdhesiveForm(RecordForm):
    """A product, its lot, and how long to keep it dry."""

    def __init__(self, data: Any = None, *, adhesive: Adhesive | None = None, prefix: str | None = None) -> None:
        initial = model_to_dict(adhesive, fields=["product", "lot", "dry_hours"]) if adhesive else {}
        super().__init__(data, initial=initial, prefix=prefix)
        self.fields.update(of_model(Adhesive, "product", "lot", "dry_hours"))
        self.fields["dry_hours"].help_text = _(
            "As its maker says, 0 to 72. It never keeps anyone from rinsing an eye. Blank: not stated."
        )


class KindField(forms.ChoiceField):
    """A kind of service; one choice is “no visit at all”. ``""`` is no answer yet."""

    def __init__(self, **options: Any) -> None:
        super().__init__(choices=[("", _("choose…")), *KINDS.items()], **options)


def kind_of(choice: str) -> str:
    """The kind that the records keep for a choice of KindField."""
    return "" if choice == NO_VISIT else choice


class ServiceNameForm(RecordForm):
    """What the studio's own name for a service stands for."""

    kind = KindField(label=_("is a"))

    def __init__(self, data: Any = None, *, prefix: str | None = None) -> None:
        super().__init__(data, prefix=prefix)
        self.fields = {**of_model(ServiceName, "name"), "kind": self.fields["kind"]}


class FeedForm(RecordForm):
    """A calendar that is polled."""

    def __init__(self, data: Any = None, *, feed: CalendarFeed | None, prefix: str | None = None) -> None:
        initial = model_to_dict(feed, fields=["address", "every_minutes"]) if feed else {}
        super().__init__(data, initial=initial, prefix=prefix)
        self.fields["address"] = forms.CharField(
            label=_("calendar address"),
            max_length=500,
            widget=forms.TextInput(attrs={"inputmode": "url", "autocomplete": "off", "spellcheck": "false"}),
            help_text=_("The secret address in iCal format that your calendar offers. Who has it can read your book."),
        )
        self.fields["every_minutes"] = forms.IntegerField(
            label=_("look every … minutes"), min_value=5, max_value=1440, initial=15
        )


class PatternForm(RecordForm):
    """How calendar entries are read."""

    calendar_pattern = forms.CharField(
        label=_("pattern"),
        required=False,
        widget=forms.Textarea(attrs={"rows": 4, "spellcheck": "false", "autocapitalize": "off"}),
    )


class StaffForm(RecordForm):
    """A person who works here, her roles, and where she is told."""

    def __init__(self, data: Any = None, *, studio: Studio, staff: Staff | None, prefix: str | None = None) -> None:
        initial = model_to_dict(staff, fields=PERSON) if staff else NEWCOMER
        super().__init__(data, initial=initial, prefix=prefix)
        own = of_model(Staff, *PERSON)
        own["mobile"] = forms.CharField(
            label=own["mobile"].label,
            required=False,
            max_length=40,
            widget=forms.TextInput(attrs={"type": "tel"}),
            help_text=_("Where she is told of an urgent reply. Such a message carries no name and no sign."),
        )
        own["language"] = forms.ChoiceField(
            label=own["language"].label,
            required=False,
            choices=[("", _("the studio’s: %s") % studio.get_language_display()), *LANGUAGES],
        )
        own["morning_at"] = Hour(
            label=own["morning_at"].label,
            required=False,
            help_text=_("Artists and owners get one message a day: how much is open, and where. Empty: 7:30."),
        )
        self.fields.update(own)

    def clean_morning_at(self) -> time:
        """An hour that was left empty is the usual one."""
        stated: time | None = self.cleaned_data["morning_at"]
        return MORNING if stated is None else stated


class GiveSignInForm(RecordForm):
    """The address that she will sign in with."""

    email = forms.EmailField(label=_("e-mail to sign in with"))
