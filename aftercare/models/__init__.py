"""What happens because a visit happened: one table a stage, each pointing back along the arrow."""

from aftercare.models.callback import StoredCallback
from aftercare.models.consultation import Consultation, QuestionForm
from aftercare.models.forecast import Fit, Forecast
from aftercare.models.line import Line, RoadHealth, Spending, Stop
from aftercare.models.link import Revocation
from aftercare.models.message import Attempt, Heartbeat, Message, Receipt
from aftercare.models.reply import HELD_BY, URGENCIES, Attachment, Flag, Reply, Stray, Wish
from aftercare.models.rules import RuleSet
from aftercare.models.wording import Letterhead, Wording

__all__ = [
    "HELD_BY",
    "URGENCIES",
    "Attachment",
    "Attempt",
    "Consultation",
    "Fit",
    "Flag",
    "Forecast",
    "Heartbeat",
    "Letterhead",
    "Line",
    "Message",
    "QuestionForm",
    "Receipt",
    "Reply",
    "Revocation",
    "RoadHealth",
    "RuleSet",
    "Spending",
    "Stop",
    "StoredCallback",
    "Stray",
    "Wish",
    "Wording",
]
