"""From a message to the fields of a request: templates with {to} {from} {text} {reference} {callback} in them."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

from aftercare.transports.base import Outgoing

KNOWN = frozenset({"to", "to_digits", "from", "from_digits", "text", "reference", "callback"})
_PLACE = re.compile(r"\{(\w+)\}")


def check(template: Any, name: str = "fields") -> None:
    """Raise ValueError where a template names a value that there is not."""
    if isinstance(template, Mapping):
        for key, one in template.items():
            check(one, f"{name}.{key}")
    elif isinstance(template, list):
        for number, one in enumerate(template):
            check(one, f"{name}.{number}")
    elif isinstance(template, str):
        for unknown in {*_PLACE.findall(template)} - KNOWN:
            raise ValueError(f"{name} has {{{unknown}}}: there are {', '.join(f'{{{one}}}' for one in sorted(KNOWN))}.")


def values(outgoing: Outgoing, callback: str) -> dict[str, str]:
    """Return what the places stand for; some providers want numbers without their +."""
    return {
        "to": outgoing.address,
        "to_digits": outgoing.address.removeprefix("+"),
        "from": outgoing.sender,
        "from_digits": outgoing.sender.removeprefix("+"),
        "text": outgoing.text,
        "reference": outgoing.reference,
        "callback": callback,
    }


def fill(template: Any, found: Mapping[str, str]) -> Any:
    """Fill a template, however nested; a field is left out where a place in it stands for nothing.

    >>> fill({"to": "{to}", "from": "{from}", "flash": False}, {"to": "+447700900001", "from": ""})
    {'to': '+447700900001', 'flash': False}
    """
    if isinstance(template, Mapping):
        filled = {key: fill(one, found) for key, one in template.items()}
        return {key: one for key, one in filled.items() if one is not None}
    if isinstance(template, list):
        return [one for one in (fill(part, found) for part in template) if one is not None]
    if not isinstance(template, str):
        return template
    if not all(found[place] for place in _PLACE.findall(template)):
        return None
    return _PLACE.sub(lambda place: found[place[1]], template)
