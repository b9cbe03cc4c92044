"""IANA time zones by name."""

from __future__ import annotations

from functools import cache
from zoneinfo import available_timezones


@cache
def names() -> frozenset[str]:
    """The names of the zones that this machine knows."""
    return frozenset(available_timezones() - {"localtime", "Factory"})  # files of the machine, not places


def is_zone(name: str) -> bool:
    """Whether ``name`` is an IANA time zone that this machine knows."""
    return name in names()
