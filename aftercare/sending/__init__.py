"""Sending: from what is due to what became of it."""

from aftercare.sending.streaming import stream
from aftercare.sending.sweeping import sweep

__all__ = ["stream", "sweep"]
