"""The owner's numbers change here alone: a version is added, and whoever is planned from them is planned anew."""

from __future__ import annotations

from datetime import datetime

from django.core.exceptions import ValidationError
from django.db import IntegrityError, transaction
from django.db.models import F
from django.utils.translation import gettext as _

from aftercare import facts
from aftercare.models import RuleSet
from studio.models import Client, Staff, Studio

PLANS_NOTHING = frozenset({"lot_chance"})  # numbers that no message's moment follows from


@transaction.atomic
def change(studio: Studio, *, by: Staff, now: datetime, **numbers: object) -> RuleSet:
    """Put ``numbers`` (names of `core.rules.Rules`) in force, the others as they are; return the new version.

    Whoever calls plans what follows. Raises ValidationError for a number that cannot be a rule, or where somebody else
    was quicker.
    """
    newest = RuleSet.objects.filter(studio=studio).order_by("-version").first()
    before = newest.values if newest else {}
    values = {**before, **numbers}
    try:
        facts.rules_from(values, studio.region)
    except facts.BadRule as error:
        raise ValidationError(str(error)) from error
    version = newest.version + 1 if newest else 1
    try:
        with transaction.atomic():
            made = RuleSet.objects.create(studio=studio, version=version, values=values, at=now, by=by)
    except IntegrityError as error:
        raise ValidationError(_("Somebody changed the rules at the same moment: look at them again.")) from error
    changed = {name for name, value in numbers.items() if before.get(name) != value}
    if changed - PLANS_NOTHING:
        Client.objects.filter(studio=studio).update(revision=F("revision") + 1)
    return made
