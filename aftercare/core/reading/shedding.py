"""Falling lashes that a word for the eye stands beside: "bald bit over the right eye"."""

from __future__ import annotations

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark


def marks(page: Page) -> list[Mark]:
    """Return the words that tell of falling lashes and hold no sign; the second opinion would take them for one."""
    signs = [mark for name, marks in page.marks.items() if name.startswith("sign:") for mark in marks]
    return page.named("topic:bald") + [
        mark
        for mark in page.named("topic:shedding")
        if not any(sign.start < mark.end and mark.start < sign.end for sign in signs)
    ]
