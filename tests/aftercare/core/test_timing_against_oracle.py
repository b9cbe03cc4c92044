"""timing.plan against a second reading of the same table (oracle.py), and what must hold whatever is planned.

``TIMING_EXAMPLES=20000`` makes it a long run.
"""

from __future__ import annotations

import dataclasses
import os
import random
from collections.abc import Iterable, Mapping
from datetime import date, datetime, timedelta
from itertools import combinations
from zoneinfo import ZoneInfo

from hypothesis import HealthCheck, assume, event, given, settings
from hypothesis import strategies as st

from aftercare.core import timing
from aftercare.core.hours import Hours
from aftercare.core.rules import OF_REMINDERS, Rules
from aftercare.core.timing import REMINDERS, Client, Occasion, Planned, Reason, Slot, Standing
from tests.aftercare.core import oracle
from tests.aftercare.core.cases import Case, cases, changes, replaced, rules_of, wearing

EXAMPLES = int(os.environ.get("TIMING_EXAMPLES", "150"))
# Drawing a whole client is slow, and that is fine.
SLOW = (HealthCheck.too_slow, HealthCheck.data_too_large, HealthCheck.filter_too_much)
bounded = settings(max_examples=EXAMPLES, deadline=None, suppress_health_check=SLOW)


def as_told(message: Planned | oracle.Expected) -> tuple[object, ...]:
    due = None if message.reason else message.due  # of a withheld message the moment may be anything
    return (message.edition, message.aim, message.no_later_than, due, str(message.reason or ""))


def told(messages: Mapping[Slot, Planned] | Mapping[oracle.Slot, oracle.Expected]) -> dict[tuple[object, ...], object]:
    return {tuple(map(str, slot)): as_told(message) for slot, message in messages.items()}


def is_open(at: datetime, hours: Hours, zone: ZoneInfo) -> bool:
    shown = at.astimezone(zone)
    opens, closes = divmod(hours.opens, 60), divmod(hours.closes, 60)
    return hours.open_on(shown.date()) and opens <= (shown.hour, shown.minute) < closes


class Messages:
    """The messages of one client as rows would keep them between one planning and the next."""

    def __init__(self) -> None:
        self.open: dict[Slot, Planned] = {}  # planned, withheld or withdrawn
        self.withdrawn: set[Slot] = set()
        self.gone: dict[Slot, Planned] = {}
        self.keys: list[str] = []  # of all that ever went
        self.go_from: dict[Slot, datetime] = {}

    def take(self, plan: Mapping[Slot, Planned]) -> None:
        self.open.update(plan)
        self.withdrawn = set(self.open) - set(plan)

    def go(self, slots: Iterable[Slot]) -> None:
        for slot in slots:
            self.gone[slot] = self.open.pop(slot)
            self.keys.append(self.gone[slot].key)

    def due_by(self, now: datetime) -> list[Slot]:
        planned = {slot: m for slot, m in self.open.items() if slot not in self.withdrawn and m.reason is None}
        return [slot for slot, message in planned.items() if message.due is not None and message.due <= now]

    def standing(self) -> dict[Slot, Standing]:
        return {slot: self._standing(slot) for slot in {**self.gone, **self.open}}

    def _standing(self, slot: Slot) -> Standing:
        record = Standing()
        if gone := self.gone.get(slot):
            record = Standing(gone_edition=gone.edition, gone_start=gone.visit.start, gone_due=gone.due)
        if (waiting := self.open.get(slot)) is None:
            return record
        stands = slot not in self.withdrawn
        return record._replace(
            open_edition=waiting.edition,
            open_planned=stands and waiting.reason is None,
            open_gave_way=stands and waiting.reason is Reason.ANOTHER_CHECK,
            open_aim=waiting.aim,
            open_from=waiting.planned_from,
            open_forecast=waiting.forecast,
            go_from=self.go_from.get(slot),
        )


@bounded
@given(cases() | wearing())
def test_a_first_plan_is_what_the_second_reading_says(case: Case) -> None:
    found = case.plan()

    assert told(found) == told(oracle.plan(*case))
    assert {message.edition for message in found.values()} <= {1}
    for message in found.values():
        event(f"{message.occasion} {message.step}: {message.reason or 'planned'}")


@bounded
@given(st.data(), cases() | wearing())
def test_plans_that_follow_what_changes_are_what_the_second_reading_says(data: st.DataObject, case: Case) -> None:
    messages = Messages()
    messages.take(case.plan())
    for _ in range(3):
        case = data.draw(changes(case))
        messages.go(slot for slot in messages.due_by(case.now) if data.draw(st.booleans()))
        for slot, message in messages.open.items():
            if message.reason is Reason.WAITS_FOR_GO and data.draw(st.booleans()):
                messages.go_from[slot] = case.now + timedelta(hours=data.draw(st.integers(0, 100)))

        found = case.plan(messages.standing())

        assert told(found) == told(oracle.plan(*case, messages.standing()))
        for message in found.values():
            event(f"{message.occasion} {message.step}: {message.reason or 'planned'}")
        messages.take(found)
        assert len(messages.keys) == len(set(messages.keys))


@bounded
@given(st.data(), cases() | wearing())
def test_no_message_is_due_outside_the_sending_hours_or_after_its_last_moment(data: st.DataObject, case: Case) -> None:
    messages = Messages()
    messages.take(case.plan())
    case = data.draw(changes(case))

    for message in case.plan(messages.standing()).values():
        if message.reason is None:
            assert message.due is not None
            hours = case.rules.hours_of(message.occasion)
            assert all(is_open(message.due, hours, zone) for zone in case.client.zones)
            assert max(message.aim, message.planned_from) <= message.due <= message.no_later_than
            assert message.due.microsecond == 0


@bounded
@given(cases() | wearing())
def test_planning_again_changes_nothing(case: Case) -> None:
    messages = Messages()
    first = case.plan()
    messages.take(first)

    assert told(case.plan(messages.standing())) == told(first)


@bounded
@given(cases(), st.integers(1, 20 * 24 * 60))
def test_planning_again_later_changes_no_message_that_still_stands(case: Case, minutes: int) -> None:
    messages = Messages()
    first = case.plan()
    messages.take(first)
    later = case._replace(now=case.now + timedelta(minutes=minutes))

    second = later.plan(messages.standing())

    anew = oracle.plan(*later)
    assert {tuple(map(str, slot)) for slot in second} == {tuple(map(str, slot)) for slot in anew}
    for slot, message in second.items():
        if message.occasion not in REMINDERS:  # what is booked, and what they keep clear of, passes with the time
            assert as_told(message) == as_told(first[slot] if slot in first else anew[slot])


@bounded
@given(cases(), st.integers(0, 2**32))
def test_the_order_of_the_visits_does_not_matter(case: Case, seed: int) -> None:
    shuffled = list(case.visits)
    random.Random(seed).shuffle(shuffled)

    assert told(case._replace(visits=shuffled).plan()) == told(case.plan())


@bounded
@given(cases())
def test_there_is_at_most_one_message_a_slot(case: Case) -> None:
    found = case.messages()

    assert len({message.slot for message in found}) == len(found)
    assert len({message.key for message in found}) == len(found)
    checks = [
        m.due.astimezone(case.client.zone).date()
        for m in found
        if m.step and m.occasion is Occasion.CHECK and m.reason is None and m.due
    ]
    assert len(checks) == len(set(checks))


@bounded
@given(wearing())
def test_reminders_keep_away_from_one_another_from_checks_and_from_visits_that_fell_through(case: Case) -> None:
    rules = case.rules
    going = [m for m in case.messages() if m.reason is None and m.due is not None]
    near = [max(m.due, case.now) for m in going if m.occasion is Occasion.CHECK and m.due]
    near += [visit.start for visit in case.visits if visit.status in ("missed", "cancelled")]
    dues = [m.due for m in going if m.occasion in REMINDERS and m.due]

    days = [due.astimezone(case.client.zone).date() for due in dues]
    assert all(abs((day - other).days) >= rules.reminder_gap_days for day, other in combinations(days, 2))
    assert all(abs(due - at) >= timedelta(hours=rules.reminder_clear_hours) for due in dues for at in near)


def booked_ahead(case: Case) -> Case:
    """Leave only what a plain client has booked: nothing stands in the way of a message but the hour."""
    booked = [dataclasses.replace(visit, status="booked") for visit in case.visits if visit.start > case.now]
    assume(booked)
    return case._replace(
        client=dataclasses.replace(case.client, channel="sms", on_hold=False, paused=False), visits=booked
    )


@bounded
@given(cases().map(booked_ahead), st.sampled_from((-1500, -60, 60, 1440, 4320, 20000)), st.booleans())
def test_a_moved_visit_is_told_of_once_more_only_where_its_message_had_gone(
    case: Case, minutes: int, has_gone: bool
) -> None:
    messages = Messages()
    messages.take(case.plan())
    visit = case.visits[0]
    slots = [slot for slot, m in messages.open.items() if m.visit.id == visit.id and m.reason is None]
    assume(slots)
    if has_gone:
        messages.go(slots)
    shift = timedelta(minutes=minutes)
    moved = replaced(case, visit, start=visit.start + shift, end=visit.end + shift)

    after = moved.plan(messages.standing())

    for slot in slots:
        if slot in after:
            assert after[slot].edition == (2 if has_gone else 1)
            assert after[slot].visit.start == (visit.start + shift).replace(microsecond=0)
    assert told(after).keys() == told(oracle.plan(*moved)).keys()
    messages.take(after)
    back = case.plan(messages.standing())
    assert not has_gone or not set(slots) & set(back)


def reached(client: Client, channel: str, why_not: Reason | None) -> Client:
    return dataclasses.replace(
        client, channel=channel, unreachable=why_not, reminder_channel=channel, reminder_unreachable=why_not
    )


@bounded
@given(cases(), st.integers(0, 5 * 24 * 60))
def test_what_was_withheld_and_may_go_again_is_planned_from_now(case: Case, minutes: int) -> None:
    held = case._replace(client=reached(case.client, "", Reason.NO_CONSENT))
    messages = Messages()
    messages.take(held.plan())
    reachable = reached(case.client, "email", None)
    later = case._replace(client=reachable, now=case.now + timedelta(minutes=minutes))

    after = later.plan(messages.standing())

    for message in after.values():
        if message.reason is None:
            assert message.due is not None
            assert message.due >= timing.whole_seconds(later.now)


@bounded
@given(wearing(), rules_of(date(2027, 6, 10)))
def test_numbers_of_reminders_move_nothing_else(case: Case, other: Rules) -> None:
    of_reminders = {name: getattr(other, name) for name in OF_REMINDERS}
    changed = case._replace(rules=dataclasses.replace(case.rules, **of_reminders))
    assert changed.rules.moves_reminders_alone(case.rules)

    before, after = (told(one.plan()) for one in (case, changed))
    event(f"moves: {before != after}")
    kept = [{slot: one for slot, one in plan.items() if slot[1] not in REMINDERS} for plan in (before, after)]
    assert kept[0] == kept[1]
