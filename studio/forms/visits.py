"""Forms about a visit: when and what, and the result of a patch test."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.forms.models import model_to_dict
from django.utils.translation import gettext_lazy as _

from studio.forms.fields import Day, Hour, RecordForm, moment, of_model
from studio.models import Service, Staff, Studio, Visit
from studio.records import VisitFields

BOOKED = ("service", "service_name", "artist", "day", "hour", "minutes", "room", "style")
AT_ONCE = [(Visit.Status.BOOKED, _("booked")), (Visit.Status.DONE, _("done already"))]


class VisitForm(RecordForm):
    """When she comes, for what and to whom."""

    day = Day(label=_("day"))
    hour = Hour(label=_("starts at"))

    def __init__(self, data: Any = None, *, studio: Studio, visit: Visit | None, artist: int | None = None) -> None:
        super().__init__(data, initial=_initial(visit) or {"artist": artist})
        self.studio = studio
        own = of_model(Visit, "service", "service_name", "minutes", "room", "style")
        own["service"] = forms.ChoiceField(label=own["service"].label, choices=[("", _("choose…")), *Service.choices])
        own["minutes"].required = False
        own["minutes"].help_text = _("Blank: the usual length of this service.")
        own["artist"] = forms.ModelChoiceField(
            queryset=studio.staff.filter(is_artist=True, is_active=True) | _artist_of(visit),
            label=_("artist"),
            required=False,
            empty_label=_("nobody yet"),
        )
        self.fields.update(own)
        names: tuple[str, ...] = BOOKED
        if visit is None:
            self.fields["status"] = forms.ChoiceField(label=_("status"), choices=AT_ONCE, initial=AT_ONCE[0][0])
            names = (*BOOKED, "status")
        self.fields = {name: self.fields[name] for name in names}

    def clean(self) -> dict[str, Any]:
        cleaned = super().clean() or self.cleaned_data
        if cleaned.get("day") and cleaned.get("hour"):
            try:
                cleaned["starts_at"] = moment(cleaned["day"], cleaned["hour"], self.studio.zone, field="hour")
            except ValidationError as error:
                self.refuse(error)
        return cleaned

    def visit_fields(self) -> VisitFields:
        """The cleaned values as the records take them."""
        clean = self.cleaned_data
        return {
            "service": clean["service"],
            "service_name": clean["service_name"],
            "artist": clean["artist"],
            "starts_at": clean["starts_at"],
            "minutes": clean["minutes"],
            "room": clean["room"],
            "style": clean["style"],
        }


class TestResultForm(RecordForm):
    """What was reported and seen after a patch test: no result here says that all is well."""

    __test__ = False  # pytest takes the name for a test

    result = forms.ChoiceField(label=_("result"), choices=Visit.TestResult.choices, widget=forms.RadioSelect)


def _initial(visit: Visit | None) -> dict[str, Any]:
    if visit is None:
        return {}
    local: datetime = visit.starts_at.astimezone(visit.studio.zone)
    known = model_to_dict(visit, fields=["service", "service_name", "artist", "minutes", "room", "style"])
    return {**known, "day": local.date(), "hour": local.time()}


def _artist_of(visit: Visit | None) -> Any:
    # She may have left since: the visit keeps her until someone chooses another.
    return Staff.objects.filter(pk__in=[visit.artist_id] if visit and visit.artist_id else [])
