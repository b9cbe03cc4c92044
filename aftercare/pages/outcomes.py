"""What came of a matter, in words. The software never decides which: a person chooses."""

from __future__ import annotations

from django.utils.functional import Promise
from django.utils.translation import gettext_lazy as _

from aftercare.core.outcomes import Outcome

OUTCOMES: dict[str, Promise] = {
    Outcome.MISREAD: _("misread by the software: there is no sign in it"),
    Outcome.OVER: _("she says it is over"),
    Outcome.TOLD_DOCTOR: _("advised to see a doctor or an eye doctor"),
    Outcome.SAW_DOCTOR: _("says a doctor saw her (her words below)"),
    Outcome.COMING_IN: _("coming in to be looked at"),
    Outcome.REMOVED: _("lashes removed"),
    Outcome.NOT_REACHED: _("could not reach her: stays open, try again"),
    Outcome.ANSWERED: _("answered"),
    Outcome.BOOKED: _("booked, moved or cancelled"),
    Outcome.NOTED: _("noted: nothing to do"),
}
# The same where it stands on record, beside the words.
ON_RECORD: dict[str, Promise] = {
    **OUTCOMES,
    Outcome.MISREAD: _("misread by the software"),
    Outcome.SAW_DOCTOR: _("says a doctor saw her"),
    Outcome.NOT_REACHED: _("could not reach her"),
}
