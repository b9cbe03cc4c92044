"""Forms of who is told, and who is away."""

from __future__ import annotations

from typing import Any

from django import forms
from django.utils.translation import gettext_lazy as _

from studio.forms.fields import Day, RecordForm
from studio.models import Staff, Studio

LONGEST = 14 * 24


class DutyForm(RecordForm):
    """Who is told beside the artist and the owners; when an unmarked visit counts as done."""

    def __init__(self, data: Any = None, *, studio: Studio) -> None:
        initial = {
            "on_duty": studio.on_duty_id,
            "third_contact": studio.third_contact_id,
            "done_after_hours": studio.done_after_hours,
        }
        super().__init__(data, initial=initial)
        people = studio.staff.filter(is_active=True)
        self.fields["on_duty"] = forms.ModelChoiceField(
            people,
            label=_("On duty"),
            required=False,
            empty_label=_("nobody beside the artist"),
            help_text=_("Told, with the artist, of a client who needs a call the same day."),
        )
        self.fields["third_contact"] = forms.ModelChoiceField(
            people,
            label=_("Third contact"),
            required=False,
            empty_label=_("nobody"),
            help_text=_("Told of an emergency that neither the artist nor the owner has taken within half an hour."),
        )
        self.fields["done_after_hours"] = forms.IntegerField(
            label=_("Count an unmarked visit as done after, hours"),
            required=False,
            min_value=1,
            max_value=LONGEST,
            help_text=_(
                "Empty: never by itself. Its artist is asked half an hour after its end, and again next morning."
            ),
        )


class AbsenceForm(RecordForm):
    """Somebody is away."""

    def __init__(self, data: Any = None, *, studio: Studio) -> None:
        super().__init__(data)
        people = studio.staff.filter(is_active=True)
        self.fields["staff"] = forms.ModelChoiceField(people, label=_("Who is away"), empty_label=_("choose…"))
        self.fields["first_day"] = Day(label=_("first day away"))
        self.fields["last_day"] = Day(label=_("last day away"))
        self.fields["cover"] = forms.ModelChoiceField(
            Staff.objects.filter(pk__in=people.values("pk")),
            label=_("Who covers"),
            required=False,
            empty_label=_("the owners"),
            help_text=_("She gets her list, her pages and her notes, and reads what she needs of her clients’ health."),
        )
