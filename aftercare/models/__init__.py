"""What happens because a visit happened: one table a stage, each pointing back along the arrow."""

from aftercare.models.line import Line, Stop
from aftercare.models.message import Attempt, Heartbeat, Message, Receipt
from aftercare.models.reply import Flag, Reply
from aftercare.models.rules import RuleSet
from aftercare.models.wording import Wording

__all__ = [
    "Attempt",
    "Flag",
    "Heartbeat",
    "Line",
    "Message",
    "Receipt",
    "Reply",
    "RuleSet",
    "Stop",
    "Wording",
]
