"""Which side she names."""

from __future__ import annotations

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.values import Side


def side_of(page: Page, findings: list[Mark]) -> tuple[Side | None, Mark | None]:
    """Return the side of the signs found where one is named beside them, else the one that she names at all."""
    both = page.named("topic:both")
    left, right = page.named("topic:left"), page.named("topic:right")
    clauses = {page.clause[mark.start] for mark in findings}
    near_left = [mark for mark in left if page.clause[mark.start] in clauses]
    near_right = [mark for mark in right if page.clause[mark.start] in clauses]
    if both and not (near_left or near_right):
        return Side.BOTH, both[0]
    if near_left and not near_right:
        return Side.LEFT, near_left[0]
    if near_right and not near_left:
        return Side.RIGHT, near_right[0]
    if left and right:
        return Side.BOTH, left[0]
    if left or right:
        return (Side.LEFT, left[0]) if left else (Side.RIGHT, right[0])
    return (Side.BOTH, both[0]) if both else (None, None)
