"""From rows to the values that ``core`` computes with: one client's book, as things stand now.

Read by every stage. Nothing here writes.
"""

from aftercare.facts.books import ClientBook, load, standing_of
from aftercare.facts.judging import Verdict, judge, why_gone
from aftercare.facts.rules import rules_from, rules_of

__all__ = ["ClientBook", "Verdict", "judge", "load", "rules_from", "rules_of", "standing_of", "why_gone"]
