"""How a sign stands in a reply."""

from __future__ import annotations

from enum import StrEnum


class Standing(StrEnum):
    """How a sign stands in the reply."""

    CURRENT = "current"
    NEARLY_OVER = "nearly over"
    OVER = "over"
    DENIED = "denied"
    DENIED_NOW = "denied now"  # there before, denied of today: "doesn't burn any more"
    NOT_HERS = "not hers"
    LONG_AGO = "long ago"
    IMAGINED = "imagined"
