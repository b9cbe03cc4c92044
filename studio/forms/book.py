"""Forms of the appointment book coming in: a file, what its names mean, and the go for writing it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from studio.forms.fields import Day, RecordForm
from studio.forms.settings import KindField

LARGEST = 20 * 1024 * 1024  # bytes: some 100,000 rows


class BookFileForm(RecordForm):
    """A CSV or iCalendar file of the appointment book."""

    file = forms.FileField(
        label=_("file of the appointment book"),
        help_text=_("CSV or iCalendar (.ics), up to 20 MB. Nothing changes before you have seen what would."),
        widget=forms.ClearableFileInput(attrs={"accept": ".csv,.tsv,.txt,.ics,text/csv,text/calendar"}),
    )

    def clean_file(self) -> Any:
        file = self.cleaned_data["file"]
        if file.size > LARGEST:
            size = file.size / 1024 / 1024
            raise ValidationError(
                gettext("This file has %(size).1f MB, more than 20: export fewer months at once.") % {"size": size}
            )
        return file

    def __init__(self, data: Any = None, files: Any = None) -> None:
        super().__init__(data, files)

    @property
    def format(self) -> str:
        """``ics`` for a calendar, by what it holds or its name; else ``csv``, whose reader says what is wrong."""
        file = self.cleaned_data["file"]
        head = file.read(64)
        file.seek(0)
        calendar = b"BEGIN:VCALENDAR" in head.upper() or file.name.lower().endswith(".ics")
        return "ics" if calendar else "csv"


class NamesForm(RecordForm):
    """What each service name that nobody has explained yet stands for."""

    def __init__(self, data: Any = None, *, names: Sequence[str]) -> None:
        super().__init__(data)
        for number, name in enumerate(names):
            self.fields[f"kind_{number}"] = KindField(label=f"“{name}”", required=False)
        self.names = names

    def kinds(self) -> dict[str, str]:
        """The names that were explained, each with its choice."""
        chosen = {name: self.cleaned_data[f"kind_{number}"] for number, name in enumerate(self.names)}
        return {name: choice for name, choice in chosen.items() if choice}


class WholeForm(RecordForm):
    """“This file is the whole book from … to …”: booked visits of these days that it lacks would be cancelled."""

    whole_from = Day(label=_("from"))
    whole_to = Day(label=_("to"))

    def clean(self) -> dict[str, Any]:
        cleaned = super().clean() or self.cleaned_data
        first, last = cleaned.get("whole_from"), cleaned.get("whole_to")
        if first and last and last < first:
            self.add_error("whole_to", gettext("The last day is before the first: write the later one here."))
        return cleaned


class ConfirmForm(RecordForm):
    """The go for writing."""

    skip_bad = forms.BooleanField(label=_("leave the bad rows out and write the others"), required=False)

    def __init__(self, data: Any = None, *, bad: int) -> None:
        super().__init__(data)
        self.bad = bad
        if not bad:
            del self.fields["skip_bad"]

    def clean(self) -> dict[str, Any]:
        cleaned = super().clean() or self.cleaned_data
        if self.bad and not cleaned.get("skip_bad"):
            self.add_error("skip_bad", gettext("Tick this, or mend the rows in the file and choose it again."))
        return cleaned
