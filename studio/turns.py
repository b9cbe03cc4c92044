"""Taking turns at a database that lets one writer in at a time."""

from __future__ import annotations

import time

from django.db import connection

# SQLite's waiting writers look again every 100 ms; a shorter pause between two long writes would let none of them in.
PAUSE_SECONDS = 0.12


def let_others_in() -> None:
    """Give those who wait to write their turn, between two parts of long work. Of use on SQLite alone."""
    if connection.vendor == "sqlite" and not connection.in_atomic_block:
        time.sleep(PAUSE_SECONDS)
