"""What another process does, or a kill, in the middle of ours: at a moment that the database's statements tell."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any

from django.db import connection


@contextmanager
def when(statement: str, do: Callable[[], object], *, time: int = 1) -> Iterator[None]:
    """Do something just before the database runs, for the first ``time``, a statement that begins so."""
    waiting = [do]
    seen = 0

    def look(execute: Any, sql: str, *rest: Any) -> Any:
        nonlocal seen
        seen += sql.startswith(statement)
        if waiting and seen == time:
            waiting.pop()()
        return execute(sql, *rest)

    with connection.execute_wrapper(look):
        yield
    assert not waiting, f"no statement began with {statement}"
