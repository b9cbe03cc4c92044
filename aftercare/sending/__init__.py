"""Sending: from what is due to what became of it."""

from aftercare.sending.health import note_away, note_back
from aftercare.sending.streaming import stream
from aftercare.sending.sweeping import sweep

__all__ = ["note_away", "note_back", "stream", "sweep"]
