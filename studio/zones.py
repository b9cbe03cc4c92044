"""IANA time zones by name."""

from __future__ import annotations

from functools import cache
from zoneinfo import available_timezones


@cache
def _names() -> frozenset[str]:
    return frozenset(available_timezones())


def is_zone(name: str) -> bool:
    """Whether ``name`` is an IANA time zone that this machine knows."""
    return name in _names()
