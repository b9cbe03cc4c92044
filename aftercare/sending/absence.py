"""A database that is away for a moment must cost nothing that was heard or claimed."""

from __future__ import annotations

import logging
import time
from dataclasses import dataclass

from django.db import DatabaseError, connection

log = logging.getLogger(__name__)

LONGEST = 30.0  # seconds for which a database that is away is waited for
_PAUSE = 0.2  # seconds between two looks


@dataclass(slots=True)
class Absence:
    """How long the database has been away, as one thread finds it."""

    since: float | None = None

    def outlasted(self, error: DatabaseError, waiting: str) -> DatabaseError | None:
        """Wait a little after a failure; return it where they last for too long. ``waiting`` is for the log."""
        self.since = self.since or time.monotonic()
        if time.monotonic() - self.since > LONGEST:
            return error
        log.warning("the database is away; %s: %s", waiting, error)
        time.sleep(_PAUSE)
        connection.close_if_unusable_or_obsolete()
        return None

    def end(self) -> None:
        """Take note that it is back."""
        self.since = None
