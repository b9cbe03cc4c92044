"""The rules in force for a studio: the defaults, and the owner's numbers."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import fields

from aftercare.core import timing
from aftercare.core.hours import Hours
from aftercare.core.timing import Rules
from aftercare.models import RuleSet
from studio.models import Studio


def rules_of(studio: Studio) -> Rules:
    """Return the rules in force for a studio: the defaults, and the owner's numbers where she set any."""
    newest = RuleSet.objects.filter(studio=studio).order_by("-version").first()
    return rules_from(newest.values if newest else {}, studio.region)


def rules_from(values: dict[str, object], region: str) -> Rules:
    """Return the rules that stored ``values`` stand for; hours are pairs of minutes since midnight."""
    known = {one.name for one in fields(Rules)}
    given: dict[str, object] = {"test_everyone": region in timing.EVERYONE_TESTED_IN}
    for name, value in values.items():
        if name in known:
            given[name] = _rule(name, value)
    return Rules(**given)  # type: ignore[arg-type]  # the names were checked above, the values before they were stored


def _rule(name: str, value: object) -> object:
    if name in ("hours", "care_hours") and isinstance(value, Sequence):
        return Hours(value[0], value[1])
    return tuple(value) if isinstance(value, list) else value
