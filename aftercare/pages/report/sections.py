"""The sections of the page of figures, in their order."""

from __future__ import annotations

from collections.abc import Callable

from aftercare.pages.report import sets, talk
from aftercare.pages.report.report import Report, Section

SECTIONS: dict[str, Callable[[Report], Section]] = {
    "fills": sets.fills,
    "share": sets.share,
    "reactions": sets.reactions,
    "answers": talk.answers,
    "messages": talk.messages,
    "forecasts": sets.forecasts,
}


def every(report: Report) -> list[Section]:
    """Count everything that the page shows."""
    return [build(report) for build in SECTIONS.values()]
