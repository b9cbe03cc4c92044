"""Reading clients' replies: text in, a `Reading` out; no database, no clock, no network."""

from __future__ import annotations

from aftercare.core.reading.reader import read
from aftercare.core.reading.values import Finding, Reading, Side, Sign, Topic, Urgency

__all__ = ["Finding", "Reading", "Side", "Sign", "Topic", "Urgency", "read"]
