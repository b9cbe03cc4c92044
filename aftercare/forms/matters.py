"""Closing an open matter."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from django import forms
from django.core.exceptions import ValidationError
from django.utils.translation import gettext_lazy as _

from aftercare.core.hours import moment
from aftercare.core.outcomes import NOT_ABOUT_HEALTH, Outcome, goes_on_record, offered
from aftercare.pages.outcomes import OUTCOMES
from studio.forms.fields import RecordForm
from studio.models import Client

NINE = 9 * 60
SOON = {"30": _("in half an hour"), "120": _("in two hours"), "morning": _("tomorrow at nine")}


class CloseForm(RecordForm):
    """What came of it; of one whom nobody could reach, when to try again."""

    client = forms.ModelChoiceField(
        label=_("Whose is it?"),
        queryset=Client.objects.none(),
        widget=forms.RadioSelect,
        required=False,
        empty_label=None,
        help_text=_("Several clients have this number. Nothing is written on a record until you say whose it is."),
    )
    outcome = forms.ChoiceField(
        label=_("What came of it?"),
        widget=forms.RadioSelect,
        error_messages={"required": _("Choose what came of it.")},
    )
    try_again = forms.ChoiceField(
        label=_("Try again"), choices=list(SOON.items()), required=False, help_text=_("If you could not reach her.")
    )
    words = forms.CharField(
        label=_("In your own words, or hers"),
        widget=forms.Textarea(attrs={"rows": 3}),
        required=False,
        help_text=_(
            "What she said, what you said, what happens next. No diagnosis. Needed where it is about her eyes."
        ),
    )
    on_record = forms.BooleanField(
        label=_("Put it on her record as a reaction"),
        required=False,
        help_text=_("She is then on hold until someone releases her. Not for “misread” or “could not reach her”."),
    )

    def __init__(self, *given: Any, urgency: str, tells_a_sign: bool, clients: list[Client], **more: Any) -> None:
        super().__init__(*given, **more)
        found = offered(urgency, tells_a_sign=tells_a_sign)
        self.fields["outcome"].choices = [(one.value, OUTCOMES[one]) for one in found]  # type: ignore[attr-defined]
        self.fields["on_record"].initial = goes_on_record(urgency, Outcome.TOLD_DOCTOR, tells_a_sign=tells_a_sign)
        if len(clients) > 1:
            rows = Client.objects.filter(pk__in=[one.pk for one in clients])
            self.fields["client"].queryset = rows.order_by("pk")  # type: ignore[attr-defined]
        else:
            del self.fields["client"]

    def clean(self) -> dict[str, Any]:
        clean: dict[str, Any] = super().clean() or {}
        if clean.get("outcome") == Outcome.NOT_REACHED and not clean.get("try_again"):
            raise ValidationError({"try_again": _("Say when to try again.")})
        return clean


class SeveralForm(RecordForm):
    """Closing several at once, none of which is about health."""

    outcome = forms.ChoiceField(
        label=_("What came of them?"), choices=[(one.value, OUTCOMES[one]) for one in NOT_ABOUT_HEALTH]
    )


def when(choice: str, now: datetime, zone: ZoneInfo) -> datetime:
    """Return the moment at which to try again."""
    if choice == "morning":
        return moment(now.astimezone(zone).date() + timedelta(days=1), NINE, zone)
    return now + timedelta(minutes=int(choice))
