"""Why messages exist and why they are withheld; the kinds of service that call for them."""

from __future__ import annotations

from enum import StrEnum


class Occasion(StrEnum):
    """Why a message exists."""

    PREPARE = "prepare"
    PATCH_TEST = "patch_test"
    CARE = "care"
    CHECK = "check"
    FILL_DUE = "fill_due"
    FULL_SET_DUE = "full_set_due"
    OPT_IN = "opt_in"
    NOTICE = "notice"
    ANSWER = "answer"
    ALERT = "alert"
    MORNING_LIST = "morning_list"


class Reason(StrEnum):
    """Why a message is withheld, in the order in which the reasons are asked."""

    TOO_LATE = "too late"
    ON_HOLD = "on hold"
    NO_WAY = "no way to reach her"
    NO_CONSENT = "no consent"
    PAUSED = "paused"
    ALREADY_BOOKED = "already booked"
    NO_SET_ON = "no set on"
    WAITS_FOR_GO = "waiting for the owner's go"
    ANOTHER_CHECK = "another check that day"


FULL_SET, FILL, REMOVAL, PATCH_TEST = "full set", "fill", "removal", "patch test"
TOUCH_UP, LIFT, CONSULTATION = "touch-up", "lift", "consultation"
BOOKED, DONE, CANCELLED, MISSED = "booked", "done", "cancelled", "missed"

SETS = frozenset({FULL_SET, FILL})
PREPARED = SETS | {REMOVAL, PATCH_TEST, TOUCH_UP, LIFT, CONSULTATION}
CARED_FOR = SETS | {REMOVAL, PATCH_TEST, TOUCH_UP, LIFT}
CHECKED = SETS | {REMOVAL, PATCH_TEST, LIFT}
MOVES_ANEW = frozenset(
    {Occasion.PREPARE, Occasion.PATCH_TEST}
)  # one more edition when the visit moves after it had gone
REMINDERS = frozenset({Occasion.FILL_DUE, Occasion.FULL_SET_DUE})  # promotional: they need a consent of their own
LEADS_ON = MOVES_ANEW | REMINDERS  # leads to the next visit: stops while she is on hold, or a person paused her
# What keeps to the hours that a client wishes. Not care, which says what to do in the first hours after a visit; nor
# what a person or she herself has just called for.
WISHED = LEADS_ON | {Occasion.CHECK}
KEEPS_ITS_LINE = frozenset(
    {Occasion.OPT_IN, Occasion.ANSWER}
)  # leaves by the line that it was promised for, and no other of its studio
UNPLANNED = frozenset({Occasion.OPT_IN, Occasion.NOTICE})  # promised by an act, apart from the plan of a visit
NEEDS_THE_BOOK = REMINDERS | {Occasion.PREPARE}  # waits while the book that it speaks from is old
SAFETY = frozenset({Occasion.CARE, Occasion.CHECK, Occasion.PATCH_TEST, Occasion.ANSWER, Occasion.ALERT})
EVERYONE_TESTED_IN = frozenset({"GB", "IE"})  # regions where every first client is patch-tested by default

TEST = "test"  # kind of a page to staff: a wording that somebody tries out on herself
ROAD_AWAY = "road_away"  # kind of a page to owners: nothing leaves by a line of theirs
LOT = "lot"  # kind of a check that a person has asked of those who wore a lot of adhesive, apart from the table
