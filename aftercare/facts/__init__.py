"""From rows to the values that ``core`` computes with: one client's book, as things stand now.

Read by every stage. Nothing here writes.
"""

from aftercare.facts.books import LOOK_BACK, ClientBook, load, load_as_if, standing_of
from aftercare.facts.feeds import book_is_old
from aftercare.facts.judging import Verdict, judge, why_gone
from aftercare.facts.rules import BadRule, defaults, in_force, rules_from, rules_of, to_values
from aftercare.facts.staffing import Team, gets_a_list, responsible, team, ways

__all__ = [
    "LOOK_BACK",
    "BadRule",
    "ClientBook",
    "Team",
    "Verdict",
    "book_is_old",
    "defaults",
    "gets_a_list",
    "in_force",
    "judge",
    "load",
    "load_as_if",
    "responsible",
    "rules_from",
    "rules_of",
    "standing_of",
    "team",
    "to_values",
    "ways",
    "why_gone",
]
