"""Acts that can be taken back: the words that say what was done carry the way back.

It travels with the words, signed as they are, and is shown with them once: a button that posts what the reverse act
needs. The reverse act checks anew, as things stand when it is tapped.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from urllib.parse import parse_qsl, urlencode

from django.contrib import messages
from django.contrib.messages.storage.base import Message
from django.http import HttpRequest

_MARK = "undo:"


@dataclass(frozen=True, slots=True)
class WayBack:
    """Where to post what, so that an act is undone."""

    path: str
    fields: tuple[tuple[str, str], ...] = ()


def said(request: HttpRequest, words: str, path: str, fields: Iterable[tuple[str, object]] = ()) -> None:
    """Say what was done, with a button that undoes it by posting ``fields`` to ``path``."""
    messages.success(request, words, extra_tags=f"{_MARK}{path}?{urlencode(list(fields))}")


def way_back(message: Message) -> WayBack | None:
    """Return the way back that a message carries, or None."""
    if not (message.extra_tags or "").startswith(_MARK):
        return None
    path, _, query = message.extra_tags.removeprefix(_MARK).partition("?")
    return WayBack(path, tuple(parse_qsl(query, keep_blank_values=True)))
