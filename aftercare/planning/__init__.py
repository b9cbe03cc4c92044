"""Planning: what should be sent to whom and when, as rows; and what of it leaves for real."""

from aftercare.planning.clients import BATCH, behind, catch_up, plan_clients, plan_studio
from aftercare.planning.explaining import explain
from aftercare.planning.live import (
    FirstReminders,
    first_reminders,
    give_go,
    go_back,
    go_live,
    leaving,
    leaving_within,
    take_back_go,
)
from aftercare.planning.staff import plan_mornings, plan_nudges

__all__ = [
    "BATCH",
    "FirstReminders",
    "behind",
    "catch_up",
    "explain",
    "first_reminders",
    "give_go",
    "go_back",
    "go_live",
    "leaving",
    "leaving_within",
    "plan_clients",
    "plan_mornings",
    "plan_nudges",
    "plan_studio",
    "take_back_go",
]
