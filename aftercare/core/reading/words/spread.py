"""Classes of words that are written out where they stand, and are no features of the second opinion."""

from __future__ import annotations

import re
from collections.abc import Mapping

_CLASS = re.compile(r"<(\w+)>")


def spread(phrases: Mapping[str, str], words: Mapping[str, str]) -> dict[str, str]:
    """Return the phrases with each class of ``words`` written out as alternatives; other classes stay."""
    ways = {name: "|".join(text.split()) for name, text in words.items()}
    return {sign: _CLASS.sub(lambda one: ways.get(one[1], one[0]), text) for sign, text in phrases.items()}
