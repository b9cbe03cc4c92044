"""What the forms of this product share: records refuse, forms show it beside the field."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import UTC, date, datetime, time
from functools import cache
from typing import Any, TypeVar
from zoneinfo import ZoneInfo, available_timezones

from babel import Locale
from django import forms
from django.core.exceptions import ValidationError
from django.db.models import Field, Model
from django.utils.translation import get_language
from django.utils.translation import gettext_lazy as _
from phonenumbers import SUPPORTED_REGIONS

Row = TypeVar("Row")


class RecordForm(forms.Form):
    """A form whose last word is the records': what they refuse stands beside its field, or above the form."""

    def written(self, write: Callable[[dict[str, Any]], Row]) -> Row | None:
        """Return what ``write`` made of the cleaned values; None where the form or the records refuse them."""
        if not self.is_valid():
            return None
        try:
            return write(self.cleaned_data)
        except ValidationError as error:
            self.refuse(error)
            return None

    def writes(self, write: Callable[[dict[str, Any]], object]) -> bool:
        """Whether ``write`` took the cleaned values; for who does not need what it made."""
        return self.written(write) is not None

    def refuse(self, error: ValidationError) -> None:
        """Show the error where it belongs."""
        if not hasattr(error, "error_dict"):
            self.add_error(None, error)
            return
        for name, errors in error.error_dict.items():
            self.add_error(name if name in self.fields else None, errors)

    def keep(self, names: Iterable[str]) -> None:
        """Leave out every field but these."""
        kept = set(names)
        self.fields = {name: field for name, field in self.fields.items() if name in kept}


def of_model(model: type[Model], *names: str) -> dict[str, forms.Field]:
    """The form fields of a model's columns, with the model's own labels and hints."""
    found: dict[str, forms.Field] = {}
    for name in names:
        column = model._meta.get_field(name)
        formed = column.formfield() if isinstance(column, Field) else None
        if formed is not None:
            found[name] = formed
    return found


class ThreeWay(forms.TypedChoiceField):
    """Yes, no or not known; nothing is chosen for the person who fills it in but what stands on record."""

    def __init__(self, **options: Any) -> None:
        options.setdefault("choices", [("", _("not known")), ("yes", _("yes")), ("no", _("no"))])
        super().__init__(
            coerce=lambda word: word == "yes", empty_value=None, required=False, widget=forms.RadioSelect, **options
        )

    def prepare_value(self, value: Any) -> Any:
        return {True: "yes", False: "no", None: ""}.get(value, value)


def yes_or_no(**options: Any) -> forms.TypedChoiceField:
    """A question that must be answered; no answer is chosen beforehand."""
    return forms.TypedChoiceField(
        coerce=lambda word: word == "yes",
        choices=[("yes", _("yes")), ("no", _("no"))],
        widget=forms.RadioSelect,
        **options,
    )


class Day(forms.DateField):
    """A day, by the browser's own calendar."""

    def __init__(self, **options: Any) -> None:
        super().__init__(widget=forms.DateInput(format="%Y-%m-%d", attrs={"type": "date"}), **options)


class Hour(forms.TimeField):
    """An hour on the studio's wall clock."""

    def __init__(self, **options: Any) -> None:
        super().__init__(widget=forms.TimeInput(format="%H:%M", attrs={"type": "time"}), **options)


def moment(day: date, hour: time, zone: ZoneInfo, *, field: str) -> datetime:
    """The moment, in UTC, of an hour on the wall clock; where it comes twice that day, the first (RFC 5545, 3.3.5).

    Raises ValidationError on ``field`` for an hour that the clocks skip: a person at a form can be asked.
    """
    naive = datetime.combine(day, hour)
    local = naive.replace(tzinfo=zone)
    if datetime.fromtimestamp(local.timestamp(), tz=zone).replace(tzinfo=None) != naive:
        raise ValidationError(
            {field: _("The clocks go forward over this hour, so it does not exist that day: write another.")}
        )
    return local.astimezone(UTC)  # two aware times of one zone would be compared by the clock's face


def zones(*, blank: str = "", also: str = "") -> list[tuple[str, Any]]:
    """IANA zones by area and city, for a list to choose from; ``also`` is one that stands on record already."""
    names = [(name, name.replace("_", " ")) for name in _zone_names()]
    if also and also not in dict(names):
        names.insert(0, (also, also))
    return [("", blank), *names] if blank else names


@cache
def _zone_names() -> tuple[str, ...]:
    areas = ("Africa", "America", "Antarctica", "Asia", "Atlantic", "Australia", "Europe", "Indian", "Pacific")
    return tuple(sorted(name for name in available_timezones() if name.partition("/")[0] in areas))


def regions() -> list[tuple[str, str]]:
    """Countries by their two letters and their names in the reader's language."""
    names = Locale.parse(get_language() or "en", sep="-").territories
    return sorted(((code, names.get(code, code)) for code in SUPPORTED_REGIONS), key=lambda region: region[1])
