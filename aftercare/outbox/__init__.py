"""The outbox: it alone promises messages and changes their state.

A message row is the only promise to send. Every change here is guarded by the state that it starts from, so that two
senders, a planner and a receipt can work on the same rows: who comes late changes nothing. Leases are by the database's
clock, all else by the ``now`` that is given. Whoever locks several messages does so in the order of their keys.
"""

from aftercare.outbox.claiming import ALL, Lane, claim, claim_these, let_go, put_back
from aftercare.outbox.departing import Departures, depart, ready
from aftercare.outbox.handing import Answered, Parcel, key_of, new_reference, settle
from aftercare.outbox.promising import promise, replan
from aftercare.outbox.receipts import match_strays, note_receipts
from aftercare.outbox.rows import lock
from aftercare.outbox.unsure import expire_leases, free_claimed, resolve_unsure

__all__ = [
    "ALL",
    "Answered",
    "Departures",
    "Lane",
    "Parcel",
    "claim",
    "claim_these",
    "depart",
    "expire_leases",
    "free_claimed",
    "key_of",
    "let_go",
    "lock",
    "match_strays",
    "new_reference",
    "note_receipts",
    "promise",
    "put_back",
    "ready",
    "replan",
    "resolve_unsure",
    "settle",
]
