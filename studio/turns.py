"""Taking turns at a database that lets one writer in at a time."""

from __future__ import annotations

import time
from collections.abc import Iterable, Iterator
from itertools import islice
from typing import TypeVar

from django.db import connection

Anything = TypeVar("Anything")

# SQLite's waiting writers look again every 100 ms; a shorter pause between two long writes would let none of them in.
PAUSE_SECONDS = 0.12


def let_others_in() -> None:
    """Give those who wait to write their turn, between two parts of long work. Of use on SQLite alone."""
    if connection.vendor == "sqlite" and not connection.in_atomic_block:
        time.sleep(PAUSE_SECONDS)


def in_turns(rows: Iterable[Anything], size: int) -> Iterator[list[Anything]]:
    """Give the rows in lists of at most ``size``, and let others in between two of them."""
    rest = iter(rows)
    batch = list(islice(rest, size))
    while batch:
        yield batch
        if batch := list(islice(rest, size)):
            let_others_in()
