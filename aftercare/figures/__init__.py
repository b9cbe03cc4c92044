"""What happened, counted over a period: shares left, fills, reactions, answers, messages; how good the forecasts were.

Each figure comes with what stands behind it. Reads, never writes; and nothing here says what brought anything about.
"""

from aftercare.figures.fills import fills
from aftercare.figures.grouped import Group, Groups, Span
from aftercare.figures.heard import Heard, heard
from aftercare.figures.reactions import reactions
from aftercare.figures.scoring import Case, Score, by, cases, score
from aftercare.figures.shares import shares
from aftercare.figures.traffic import failures, traffic

__all__ = [
    "Case",
    "Group",
    "Groups",
    "Heard",
    "Score",
    "Span",
    "by",
    "cases",
    "failures",
    "fills",
    "heard",
    "reactions",
    "score",
    "shares",
    "traffic",
]
