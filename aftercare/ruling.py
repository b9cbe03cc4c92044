"""The owner's numbers change here alone: a version is added, and whoever is planned from them is planned anew."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime

from django.core.exceptions import ValidationError
from django.db import IntegrityError, transaction
from django.db.models import F
from django.utils.translation import gettext as _

from aftercare import facts
from aftercare.core.timing import Rules
from aftercare.models import RuleSet
from studio.models import Client, Staff, Studio

# Numbers that no message's moment follows from: pages, paging and lots go by them as they stand.
PLANS_NOTHING = frozenset(
    {
        *("lot_chance", "go_a_day", "fill_minutes", "longest_fill_days"),
        *("page_next_minutes", "nobody_after_minutes", "page_again_minutes", "page_again_times"),
        *("same_day_owner_minutes", "call_within_minutes"),
    }
)


def version_of(studio: Studio) -> int:
    """Return the version in force; 0: the owner has changed nothing yet."""
    newest = RuleSet.objects.filter(studio=studio).order_by("-version").values_list("version", flat=True).first()
    return newest or 0


def values_of(studio: Studio) -> dict[str, object]:
    """Return the owner's own numbers that are in force, as they are stored: those that differ from the defaults."""
    newest = RuleSet.objects.filter(studio=studio).order_by("-version").first()
    return dict(newest.values) if newest else {}


def changed(values: Mapping[str, object], region: str, numbers: Mapping[str, object]) -> dict[str, object]:
    """Return ``values`` with ``numbers`` in their place; what is as the default says is left out."""
    usual = facts.defaults(region)
    return {name: value for name, value in {**values, **numbers}.items() if name not in usual or value != usual[name]}


def read(values: Mapping[str, object], studio: Studio, now: datetime) -> Rules:
    """Return the rules as they would be in force from ``now`` on with these values.

    Raises BadRule for numbers that cannot be rules, with a cure for each.
    """
    facts.rules_from(values, studio.region)
    return facts.in_force(values, studio.region, studio.closing_days.values_list("date", flat=True), now)


def change(studio: Studio, *, by: Staff | None, now: datetime, seen: int | None = None, **numbers: object) -> RuleSet:
    """Put ``numbers`` (names of `core.rules.Rules`) in force, the others as they are; return the new version.

    Whoever calls plans what follows. ``seen`` is the version that she changed; None: whichever is in force. Raises
    ValidationError for a number that cannot be a rule, or where somebody else was quicker.
    """
    return put(studio, changed(values_of(studio), studio.region, numbers), by=by, now=now, seen=seen)


@transaction.atomic
def put(
    studio: Studio, values: Mapping[str, object], *, by: Staff | None, now: datetime, seen: int | None = None
) -> RuleSet:
    """Put ``values`` in force, all others as their defaults; the rest as ``change``."""
    try:
        read(values, studio, now)
    except facts.BadRule as error:
        raise ValidationError(str(error)) from error
    newest = RuleSet.objects.filter(studio=studio).order_by("-version").first()
    version, before = (newest.version, newest.values) if newest else (0, {})
    conflict = ValidationError(_("Somebody changed the rules meanwhile: look at them again, then change them."))
    if seen is not None and seen != version:
        raise conflict
    try:
        with transaction.atomic():
            made = RuleSet.objects.create(studio=studio, version=version + 1, values=dict(values), at=now, by=by)
    except IntegrityError as error:
        raise conflict from error
    usual = facts.defaults(studio.region)
    differ = {name for name in usual if before.get(name, usual[name]) != values.get(name, usual[name])}
    if differ - PLANS_NOTHING:
        Client.objects.filter(studio=studio).update(revision=F("revision") + 1)
    return made
