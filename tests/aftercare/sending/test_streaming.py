"""A road that stays open: its texts are its own process's, the window is kept full, and nothing is lost on the way."""

from __future__ import annotations

import time
from collections.abc import Sequence
from datetime import timedelta
from typing import Any

import pytest
from django.db import DatabaseError, connection

from aftercare import heartbeats, lines, outbox, planning, sending
from aftercare.core.delivery import Event
from aftercare.core.pace import Pace
from aftercare.models import Attempt, Line, Message, RoadHealth
from aftercare.sending import judging, streaming, windows
from aftercare.transports.base import Outcome, Outgoing
from studio import clock
from studio.models import Client, Consent, Studio
from tests.letters import MEMORY
from tests.people import make_client, make_studio, make_visit
from tests.streams import PATH, Pipe

pytestmark = pytest.mark.django_db(transaction=True)
ANSWERED = "+12125551999"


@pytest.fixture
def studio() -> Studio:
    """A live studio whose texts go by the bind "main"; its sending hours are those of the day, whatever the hour."""
    return make_bound()


def make_bound(slug: str = "birch", bind: str = "main") -> Studio:
    now = clock.now()
    hour = now.hour
    # A zone in which it is late morning: messages may leave.
    zone = f"Etc/GMT{'+' if hour >= 11 else '-'}{abs(hour - 11)}" if hour != 11 else "UTC"
    studio = make_studio(slug, live_since=now - timedelta(days=30), time_zone=zone)
    line = lines.lines_of(studio)["sms"]
    line.transport, line.options, line.address = PATH, {"bind": bind}, f"+1212555{studio.pk % 10000:04}"
    line.save()
    return studio


def due(studio: Studio, number: int, **visit: Any) -> list[Client]:
    """Have ``number`` clients whose aftercare, or what else goes with such a visit, is due now."""
    now = clock.now()
    found = []
    done = {"status": "done", "starts_at": now - timedelta(minutes=110)}
    already = Client.objects.filter(studio=studio).count()
    for index in range(already, already + number):
        # Her zone is stated: else her number's, in which it may be night, would count beside the studio's.
        here = {"mobile": f"+1212555{1000 + index}", "time_zone": studio.time_zone}
        client = make_client(studio, f"Mia {index}", **here)
        Consent.objects.create(client=client, channel="sms", purpose="visits", given=True, at=now, how="on paper")
        make_visit(client, heard_at=now - timedelta(days=3), **{**done, **visit})
        found.append(client)
    planning.plan_studio(studio, now)
    return found


@pytest.fixture(autouse=True)
def introduced(monkeypatch: pytest.MonkeyPatch) -> None:
    """Nobody waits for an introduction, but where a test asks for it."""
    monkeypatch.setattr("aftercare.sending.introductions.owed", lambda *_: {})


def states() -> dict[str, int]:
    found: dict[str, int] = {}
    for state in Message.objects.filter(occasion="care").values_list("state", flat=True):
        found[state] = found.get(state, 0) + 1
    return found


def test_what_is_due_leaves_once_and_the_window_is_never_overrun(studio: Studio) -> None:
    due(studio, 10)
    road = Pipe(window=3)

    counts = sending.stream(road, "main")

    assert counts == {"handed_over": 10}
    assert states() == {"handed_over": 10}
    assert len({one.reference for one in road.taken}) == 10
    assert road.most_in_flight <= 3
    assert set(Attempt.objects.values_list("provider", flat=True)) == {"pipe:main"}


def test_everybody_else_leaves_its_texts_alone_and_takes_all_others(studio: Studio) -> None:
    due(studio, 1)
    other = make_studio("alder", live_since=clock.now(), time_zone=studio.time_zone)
    due(other, 1)

    sending.sweep(clock.now())

    assert Message.objects.get(studio=studio, occasion="care").state == "planned"
    assert Message.objects.get(studio=other, occasion="care").state == "handed_over"


def test_one_bind_does_not_take_what_is_anothers_nor_what_is_rehearsed(studio: Studio) -> None:
    due(make_bound("alder", "second"), 1)
    due(studio, 1)
    Studio.objects.filter(pk=studio.pk).update(live_since=None)
    road = Pipe()

    assert sending.stream(road, "main") == {}

    assert road.taken == []
    sending.sweep(clock.now())
    assert Message.objects.get(studio=studio, occasion="care").rehearsed


def test_what_must_go_by_mail_by_now_is_left_to_the_sweep(studio: Studio) -> None:
    [mia] = due(studio, 1)
    Client.objects.filter(pk=mia.pk).update(email="mia@mail.example", mobile="")
    Message.objects.update(channel="sms")
    road = Pipe()

    assert sending.stream(road, "main") == {"planned": 1}

    assert Message.objects.get(occasion="care").channel == "email"
    assert road.taken == []


def test_refused_lost_and_not_taken_come_to_stand_as_they_should(studio: Studio) -> None:
    due(studio, 4)
    fate: dict[str, Event | None] = {
        "+12125551000": Event.REFUSED,
        "+12125551001": Event.LOST,
        "+12125551002": Event.NOT_TAKEN,
    }
    road = Pipe(fate=fate)

    assert sending.stream(road, "main") == {"undelivered": 1, "unsure": 1, "planned": 1, "handed_over": 1}


def test_what_is_never_answered_is_unsure_at_the_end_and_nothing_else_is(
    studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(streaming, "GRACE", 0.1)
    due(studio, 6)
    road = Pipe(window=2, fate=dict.fromkeys(["+12125551000", "+12125551003"]))
    rounds = iter(range(10_000))

    sending.stream(road, "main", stop=lambda: next(rounds) > 40)

    found = states()
    assert found["unsure"] == 2
    # As often as it was handed over, and no more often.
    assert found.get("handed_over", 0) + 2 == len(road.taken)


def test_a_stop_at_the_last_moment_is_heard(studio: Studio) -> None:
    [mia] = due(studio, 1)
    judged = judging.Judge.judge

    def and_then_she_moves(self: Any, batch: Sequence[Message]) -> Any:
        found = judged(self, batch)
        Client.objects.filter(pk=mia.pk).update(revision=99)
        return found

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(judging.Judge, "judge", and_then_she_moves)
        patch.setattr(streaming, "LEAST", 1)
        rounds = iter(range(10_000))
        sending.stream(road := Pipe(), "main", stop=lambda: next(rounds) > 30)

    assert road.taken == []
    assert states() == {"planned": 1}


def test_a_database_that_is_away_for_a_moment_loses_no_answer(studio: Studio, monkeypatch: pytest.MonkeyPatch) -> None:
    due(studio, 5)
    settle, failures = outbox.settle, iter([False, True, True])

    def failing(*given: Any) -> Any:
        if next(failures, False):
            raise DatabaseError("away")
        return settle(*given)

    monkeypatch.setattr(outbox, "settle", failing)
    road = Pipe(window=2)

    sending.stream(road, "main")

    # A window that was to leave when the database failed is still claimed: its lease frees it.
    found = states()
    assert found.get("claimed", 0) + found["handed_over"] == 5
    assert found["handed_over"] == len(road.taken)


def test_a_window_that_nobody_answers_for_costs_one_rest_however_many_pieces_it_left_in(studio: Studio) -> None:
    due(studio, 24)
    fate: dict[str, Event | None] = {f"+1212555{1000 + number}": Event.LOST for number in range(24)}
    # The next leave only once none of the twelve is out any more, as where all of them run out at one moment.
    road = Pipe(window=12, fate=fate, slow=0.05, one_by_one=True)

    sending.stream(road, "main")

    health = RoadHealth.objects.get()
    assert health.rests_until is not None
    assert health.rests_until - clock.now() < timedelta(seconds=40)


def test_a_database_that_is_away_as_a_road_rests_is_waited_for(studio: Studio, monkeypatch: pytest.MonkeyPatch) -> None:
    due(studio, 3)
    now, failures = clock.now, iter([True, True])
    RoadHealth.objects.create(
        account="pipe:main", failed=9, failing_since=now(), rests_until=now() + timedelta(hours=1), problem="away"
    )
    leave_resting, met = windows.leave_resting, []

    def failing(*given: Any) -> Any:
        if next(failures, False):
            met.append(given)
            raise DatabaseError("away")
        return leave_resting(*given)

    monkeypatch.setattr(streaming, "leave_resting", failing)
    road = Pipe(window=1)

    sending.stream(road, "main")

    assert len(met) == 2
    assert road.taken == []
    # Those with which the database failed are still claimed: their lease frees them. The third is due after the rest.
    assert states() == {"claimed": 2, "planned": 1}


def test_a_fault_of_the_road_ends_the_round_and_what_was_claimed_is_due_again(studio: Studio) -> None:
    due(studio, 5)
    road = Pipe(window=2)

    def fail(batch: Sequence[Outgoing]) -> None:
        if len(road.taken) >= 2:
            raise RuntimeError("a defect")

    road.on_submit.append(fail)

    with pytest.raises(RuntimeError):
        sending.stream(road, "main")

    found = states()
    assert found["handed_over"] == 2
    assert found["handing_over"] == 2  # nobody knows: the lease makes them unsure
    assert found["planned"] == 1


def test_a_road_that_takes_nothing_rests(studio: Studio) -> None:
    due(studio, 8)
    road = Pipe(window=1, fate={f"+1212555{1000 + index}": Event.NOT_TAKEN for index in range(8)})

    assert sending.stream(road, "main") == {"planned": 8}

    assert Message.objects.filter(tries=1).count() == 5
    health = RoadHealth.objects.get(account="pipe:main")
    assert health.failed == 5
    assert health.rests_until is not None


def answer(studio: Studio, line: Line) -> Message:
    """Promise an answer to somebody who wrote to a line."""
    facts: dict[str, Any] = {"kind": "help", "channel": "sms", "address": ANSWERED, "due_at": clock.now()}
    key = f"reply:{line.pk}:answer"
    outbox.promise([Message(studio=studio, key=key, occasion="answer", line=line, planned_from=clock.now(), **facts)])
    return Message.objects.get(key=key)


def test_what_is_bound_to_another_line_goes_by_the_road_of_that_line(studio: Studio) -> None:
    """A studio whose first line is on the bind, and a second on none; and one the other way round."""
    other = make_studio("alder", live_since=clock.now(), time_zone=studio.time_zone)
    facts = {"channel": "sms", "transport": MEMORY}
    Line.objects.create(studio=other, address="+12125559000", **facts)
    second = Line.objects.create(studio=studio, address="+12125559001", **facts)
    bound = Line.objects.create(
        studio=other, channel="sms", address="+12125559002", transport=PATH, options={"bind": "main"}, is_active=False
    )
    by_call, by_bind = answer(studio, second), answer(other, bound)

    sending.sweep(clock.now())
    sending.stream(road := Pipe(), "main")

    by_call.refresh_from_db()
    by_bind.refresh_from_db()
    assert (by_call.state, by_bind.state) == ("handed_over", "handed_over")
    assert [one.sender for one in road.taken] == ["+12125559002"]


class Slow(Pipe):
    """Takes twenty a second."""

    def __init__(self, **options: Any) -> None:
        super().__init__(**options)
        self.pace = Pace(20.0)

    def room(self) -> int:
        return min(super().room(), self.pace.room(time.monotonic()))

    def submit(self, batch: Sequence[Outgoing]) -> list[Outcome]:
        self.pace.spend(len(batch), time.monotonic())
        return super().submit(batch)


def test_an_answer_waits_behind_nothing_that_a_slow_road_has_not_taken_yet(
    studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(streaming, "LEAST", 60)  # are judged ahead: three seconds' worth
    due(studio, 85)
    road = Slow(window=50)
    before: list[int] = []

    def she_writes(_batch: Sequence[Outgoing]) -> None:
        if len(road.taken) >= 25 and not before:
            before.append(len(road.taken))
            answer(studio, lines.lines_of(studio)["sms"])

    road.on_submit.append(she_writes)

    sending.stream(road, "main")

    [place] = [place for place, one in enumerate(road.taken) if one.address == ANSWERED]
    assert place - before[0] < 35


def test_the_end_of_a_round_gives_up_nothing_that_is_still_in_flight(
    studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A carrier that takes longer than a moment to answer: what would be lost here would be sent twice."""
    monkeypatch.setattr(streaming, "GRACE", 0.1)
    due(studio, 6)
    road = Pipe(window=2, slow=0.3)

    counts = sending.stream(road, "main", pause=lambda: bool(road.taken))

    assert counts["handed_over"] == len(road.taken) >= 2
    assert set(states()) <= {"handed_over", "planned"}


@pytest.mark.skipif(connection.vendor != "postgresql", reason="SQLite has one writer: there is nothing beside it")
def test_what_is_being_journaled_as_the_end_is_asked_for_still_leaves(
    studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    due(studio, 6)
    asked: list[int] = []
    begin = outbox.Departures.begin

    def and_then_the_end(self: outbox.Departures, parcels: Sequence[outbox.Parcel], *more: Any) -> None:
        begin(self, parcels, *more)
        asked.append(len(parcels))

    monkeypatch.setattr(outbox.Departures, "begin", and_then_the_end)
    road = Pipe(window=2)

    sending.stream(road, "main", stop=lambda: bool(asked))

    assert asked == [2]  # all places at once, as there are so few
    assert len(road.taken) == 2
    assert states() == {"handed_over": 2, "planned": 4}


@pytest.mark.skipif(connection.vendor != "postgresql", reason="SQLite has one writer: there is nothing beside it")
def test_what_was_journaled_without_our_being_told_goes_again_as_it_has_not_left(
    studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    due(studio, 6)
    end, failures = outbox.Departures.end, iter([True])

    def and_the_line_is_lost(self: outbox.Departures) -> set[int]:
        gone = end(self)
        if next(failures, False):
            raise DatabaseError("the line was lost after the commit")
        return gone

    monkeypatch.setattr(outbox.Departures, "end", and_the_line_is_lost)
    road = Pipe(window=2)

    sending.stream(road, "main")

    assert len(road.taken) == 4
    assert states() == {"handed_over": 4, "planned": 2}
    waiting = Message.objects.filter(occasion="care", state="planned")
    assert [(one.tries, one.lease_until) for one in waiting] == [(1, None)] * 2
    assert set(Attempt.objects.filter(message__in=waiting).values_list("outcome", flat=True)) == {"planned"}


@pytest.mark.skipif(connection.vendor != "postgresql", reason="SQLite has one writer: there is nothing beside it")
def test_what_is_journaled_as_a_defect_ends_the_round_goes_again_as_it_has_not_left(
    studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    due(studio, 6)
    window = streaming._Wire._window

    def fail(self: Any, leaving: int) -> Any:
        if leaving:
            raise RuntimeError("a defect")
        return window(self, leaving)

    monkeypatch.setattr(streaming._Wire, "_window", fail)
    road = Pipe(window=4)

    with pytest.raises(RuntimeError):
        sending.stream(road, "main")

    assert road.taken == []
    assert states().get("handing_over", 0) == 0
    assert Message.objects.filter(state="planned", tries=1).exists()


@pytest.mark.parametrize("how", ["down", "gone"])
def test_what_safety_hangs_on_takes_the_other_channel_where_an_open_road_is_away_for_long(
    studio: Studio, how: str
) -> None:
    mia, zoe, ines = due(studio, 3)
    Client.objects.filter(pk=mia.pk).update(email="mia@mail.example")
    Client.objects.filter(pk=ines.pk).update(email="ines@mail.example", mobile="")
    Message.objects.filter(client=ines).update(channel="sms")  # as it was planned before she gave her number up
    Line.objects.create(studio=studio, channel="email", address="hello@birch.example", transport=MEMORY)
    now = clock.now()
    if how == "down":
        ago, ahead = now - timedelta(hours=1), now + timedelta(minutes=1)
        RoadHealth.objects.create(account="pipe:main", failed=9, failing_since=ago, rests_until=ahead)
    else:
        heartbeats.finished("pipe:main", now=now - timedelta(hours=1))

    sending.sweep(now)
    sending.sweep(now + timedelta(seconds=2))

    told, waits, moved = (Message.objects.get(client=one, occasion="care") for one in (mia, zoe, ines))
    assert (told.state, told.channel, told.fell_back) == ("handed_over", "email", True)
    assert (waits.state, waits.channel) == ("planned", "sms")
    assert (moved.state, moved.channel, moved.fell_back) == ("handed_over", "email", False)
    assert sending.stream(Pipe(), "main") == {}  # it is due again in a moment
    sending.note_back(Pipe())
    Message.objects.filter(pk=waits.pk).update(due_at=now)
    assert sending.stream(Pipe(), "main") == {"handed_over": 1}


def test_the_owners_limit_a_second_holds_instructions_and_never_aftercare(
    studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    due(studio, 6)
    due(studio, 6, service="removal", status="booked", starts_at=clock.now() + timedelta(days=2))
    studio.lines.update(most_a_second=4)
    monkeypatch.setattr(streaming, "LISTEN", 0.01)
    road = Pipe(window=50)
    left: list[tuple[float, int]] = []
    road.on_submit.append(lambda batch: left.append((time.monotonic(), len(batch))))

    assert sending.stream(road, "main") == {"handed_over": 12}

    # Six of aftercare and the one that may leave with them at once; the others follow at four a second.
    assert left[0][1] <= 7
    assert left[-1][0] - left[0][0] >= 1.0
    assert max(number for _at, number in left[1:]) == 1
