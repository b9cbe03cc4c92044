"""The owner's numbers as a form: one group of them, each with its sentence, its limits and its usual value."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import time
from typing import Any

from django import forms
from django.forms.boundfield import BoundField
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from aftercare import facts, numbers
from aftercare.core import limits
from aftercare.core.limits import Unit
from aftercare.numbers import Group, Number
from studio.forms.fields import Hour, RecordForm

TIERS = limits.MOST_TIERS
CHOICES = {"everyone": True, "sensitive": False}


@dataclass(frozen=True, slots=True)
class Part:
    """One number with its fields on the page."""

    number: Number
    fields: list[BoundField]
    usual: str
    is_changed: bool
    span: str

    @property
    def name(self) -> str:
        return self.number.name

    @property
    def errors(self) -> list[str]:
        return [str(error) for field in self.fields for error in field.errors]


class NumbersForm(RecordForm):
    """One group of numbers. ``values`` are the owner's as they are stored; ``shown`` is what stands in the fields."""

    seen = forms.IntegerField(widget=forms.HiddenInput)
    previewed = forms.CharField(widget=forms.HiddenInput, required=False, max_length=64)

    def __init__(
        self,
        data: Any = None,
        *,
        group: Group,
        values: Mapping[str, object],
        shown: Mapping[str, object],
        region: str,
        version: int,
    ) -> None:
        self.group, self.values, self.region = group, values, region
        usual = facts.defaults(region)
        initial: dict[str, Any] = {"seen": version}
        for number in group.numbers:
            initial.update(_initial(number.name, shown.get(number.name, usual[number.name])))
        super().__init__(data, initial=initial)
        for number in group.numbers:
            own = _fields(number, region)
            if len(own) == 1:  # of several the fieldset has it
                own[number.name].widget.attrs["aria-describedby"] = f"{number.name}-hint"
            self.fields.update(own)

    def clean(self) -> dict[str, Any]:
        """What a number's own fields must keep to among themselves; all else is for the rules to say."""
        clean = super().clean() or self.cleaned_data
        for name in self.group.names:
            if wrong := _wrong_together(name, clean):
                self.add_error(*wrong)
        return clean

    def parts(self) -> Iterator[Part]:
        """Give the numbers of the group with their fields."""
        for standing in numbers.standing(self.group, self.values, self.region):
            name = standing.number.name
            fields = [self[field] for field in self.fields if _number_of(field) == name]
            span = numbers.span(name, self.region)
            yield Part(standing.number, fields, standing.usual, standing.is_changed, span)

    def numbers(self) -> dict[str, object]:
        """Return the numbers as they are stored. Only of a form without errors."""
        return {name: _value(name, self.cleaned_data) for name in self.group.names}

    def blame(self, cures: Mapping[str, str]) -> None:
        """Show what is wrong beside its number; what is wrong with one of another group above the form."""
        for name, cure in cures.items():
            fields = [field for field in self.fields if _number_of(field) == name]
            if fields:
                self.add_error(fields[0], cure[:1].upper() + cure[1:])
            else:
                self.add_error(None, f"{numbers.BY_NAME[name].label}: {cure}")


def _wrong_together(name: str, clean: Mapping[str, Any]) -> tuple[str, str] | None:
    """Return the field and what is wrong where the fields of one number do not go together."""
    if name in limits.HOURS:
        opens, closes = clean.get(f"{name}-opens"), clean.get(f"{name}-closes")
        if opens and closes and closes <= opens:
            return f"{name}-closes", _("Close later than you open.")
    if name == "check_days":
        days: list[Any] = [clean.get(f"{name}-{place}") for place in range(3)]
        if None not in days and days != sorted(set(days)):
            return f"{name}-1", _("Write each day later than the one before.")
    if name == "fill_minutes":
        return _wrong_tiers(clean)
    return None


def _wrong_tiers(clean: Mapping[str, Any]) -> tuple[str, str] | None:
    shares: list[int] = []
    for place in range(TIERS - 1):
        share, minutes = clean.get(f"fill_minutes-share{place}"), clean.get(f"fill_minutes-long{place}")
        if (share is None) != (minutes is None):
            missing = "share" if share is None else "long"
            return f"fill_minutes-{missing}{place}", _("Fill in both the share and its minutes, or neither.")
        if share is not None:
            if shares and share >= shares[-1]:
                return f"fill_minutes-share{place}", _("Write less than in the step before.")
            shares.append(share)
    return None


def _number_of(field: str) -> str:
    return field.partition("-")[0]


def _fields(number: Number, region: str) -> dict[str, forms.Field]:
    name = number.name
    if name in limits.HOURS:
        found: dict[str, forms.Field] = {
            f"{name}-opens": Hour(label=gettext_lazy("from")),
            f"{name}-closes": Hour(label=gettext_lazy("until")),
        }
        if name == "reminder_hours":
            days = [(str(day), numbers.weekday(day)) for day in range(7)]
            found[f"{name}-off"] = forms.MultipleChoiceField(
                label=gettext_lazy("not on"), choices=days, required=False, widget=forms.CheckboxSelectMultiple
            )
        return found
    if name == "check_days":
        labels = (gettext_lazy("first"), gettext_lazy("second"), gettext_lazy("third"))
        return {f"{name}-{place}": _whole(label) for place, label in enumerate(labels)}
    if name == "fill_minutes":
        return _tier_fields()
    if name == "test_everyone":
        words = [("everyone", _("every client")), ("sensitive", _("sensitive clients"))]
        return {name: _choice(number.label, words)}
    limit = limits.LIMITS[name]
    if limit.unit is Unit.CLOCK:
        return {name: Hour(label=number.label)}
    if limit.unit is Unit.CHECKS:
        return {name: _choice(number.label, [(str(n), str(n)) for n in range(int(limit.least), int(limit.most) + 1)])}
    if limit.unit is Unit.CHANCE:
        return {name: _choice(number.label, [(str(n), _("1 of %(n)s") % {"n": n}) for n in numbers.ONE_IN])}
    return {name: _whole(number.label, percent=limit.unit is Unit.SHARE)}


def _whole(label: Any, *, percent: bool = False, required: bool = True) -> forms.IntegerField:
    field = forms.IntegerField(label=label, required=required, min_value=0, max_value=100 if percent else 9999)
    field.widget.attrs["inputmode"] = "numeric"
    return field


def _choice(label: Any, choices: list[tuple[str, str]]) -> forms.ChoiceField:
    return forms.ChoiceField(label=label, choices=choices, widget=forms.RadioSelect)


def _tier_fields() -> dict[str, forms.Field]:
    found: dict[str, forms.Field] = {}
    for place in range(TIERS - 1):
        found[f"fill_minutes-share{place}"] = _whole(
            _("%(n)s. from %% left") % {"n": place + 1}, percent=True, required=False
        )
        found[f"fill_minutes-long{place}"] = _whole(_("%(n)s. minutes") % {"n": place + 1}, required=False)
    found["fill_minutes-rest"] = _whole(gettext_lazy("Less left: minutes"))
    return found


def _initial(name: str, value: Any) -> dict[str, Any]:
    """What stands in a number's fields for its value as it is stored."""
    if name in limits.HOURS:
        opens, closes, *off = value
        days = [str(day) for day in (off[0] if off else ())]
        return {f"{name}-opens": _time(opens), f"{name}-closes": _time(closes), f"{name}-off": days}
    if name == "check_days":
        return {f"{name}-{place}": day for place, day in enumerate(value)}
    if name == "fill_minutes":
        return _initial_tiers(value)
    if name == "test_everyone":
        return {name: "everyone" if value else "sensitive"}
    unit = limits.LIMITS[name].unit
    if unit is Unit.CLOCK:
        return {name: _time(value)}
    if unit is Unit.SHARE:
        return {name: round(100 * value)}
    return {name: str(round(1 / value)) if unit is Unit.CHANCE else value}


def _initial_tiers(value: Any) -> dict[str, Any]:
    found: dict[str, Any] = {"fill_minutes-rest": value[-1][1]}
    for place, (share, minutes) in enumerate(value[:-1]):
        found[f"fill_minutes-share{place}"], found[f"fill_minutes-long{place}"] = round(100 * share), minutes
    return found


def _value(name: str, clean: Mapping[str, Any]) -> object:
    """The value as it is stored of a number's cleaned fields."""
    if name in limits.HOURS:
        opens, closes = _minutes(clean[f"{name}-opens"]), _minutes(clean[f"{name}-closes"])
        return [opens, closes, sorted(int(day) for day in clean.get(f"{name}-off", ()))]
    if name == "check_days":
        return [clean[f"{name}-{place}"] for place in range(3)]
    if name == "fill_minutes":
        return _tiers(clean)
    if name == "test_everyone":
        return CHOICES[clean[name]]
    unit = limits.LIMITS[name].unit
    if unit is Unit.CLOCK:
        return _minutes(clean[name])
    if unit is Unit.SHARE:
        return clean[name] / 100
    return 1 / int(clean[name]) if unit is Unit.CHANCE else int(clean[name])


def _tiers(clean: Mapping[str, Any]) -> list[list[float]]:
    """The steps that are filled in, and the minutes for less than the last of them."""
    found: list[list[float]] = []
    for place in range(TIERS - 1):
        share = clean.get(f"fill_minutes-share{place}")
        if share is not None:
            found.append([share / 100, clean[f"fill_minutes-long{place}"]])
    return [*found, [0.0, clean["fill_minutes-rest"]]]


def _time(minutes: int) -> time:
    return time(minutes // 60 % 24, minutes % 60)


def _minutes(at: time) -> int:
    return at.hour * 60 + at.minute
