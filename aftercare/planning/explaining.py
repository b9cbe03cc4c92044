"""Why a message goes when it goes, or not at all, in words."""

from __future__ import annotations

from aftercare.core import timing
from aftercare.core.delivery import State
from aftercare.core.timing import Occasion, Rules
from aftercare.models import Message


def explain(message: Message, rules: Rules) -> str:
    """Return in words when and why this message goes, or why it does not."""
    when = timing.explain(Occasion(message.occasion), message.step, rules)
    if message.state == State.WITHHELD:
        return f"withheld: {message.reason}"
    if message.state == State.WITHDRAWN:
        return f"withdrawn: {message.reason}"
    if message.edition > 1:
        when = f"{when}; the visit moved after she had been told"
    moved = message.due_at is not None and message.aim_at is not None and message.due_at > message.aim_at
    if message.state == State.PLANNED and moved:
        when = f"{when}; moved to the next moment that is open for it"
    return f"{when}; {message.reason}" if message.reason else when
