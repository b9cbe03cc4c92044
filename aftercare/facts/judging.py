"""Judging a claimed message anew: everything that could hold it is asked again before it goes."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from aftercare.core import answering, reminders, timing
from aftercare.core.delivery import Event
from aftercare.core.hours import Hours, closing, next_open
from aftercare.core.occasions import LOT, ROAD_AWAY, TEST
from aftercare.core.reach import Purpose, Reach, reach
from aftercare.core.timing import NEEDS_THE_BOOK, REMINDERS, Occasion, Reason
from aftercare.facts import staffing
from aftercare.facts.books import ClientBook
from aftercare.facts.feeds import book_is_old
from aftercare.models import Flag, Message
from studio.models import Visit

OLD_BOOK = "the book has not been read for two days"
NO_LONGER_DUE = "no longer due for this visit"
TAKEN = "somebody has this by now"
LOOK_AGAIN = timedelta(hours=1)  # at a message that waits for the book


@dataclass(frozen=True, slots=True)
class Verdict:
    """What the judgement of a claimed message says: JOURNAL goes now, PLAN at ``due_at``, the others not.

    One that goes must be judged anew from ``until`` on; None: it goes at any hour.
    """

    event: Event
    reason: str = ""
    due_at: datetime | None = None
    channel: str = ""
    address: str = ""
    until: datetime | None = None


def judge(message: Message, book: ClientBook | None, now: datetime) -> Verdict:
    """Judge a claimed message anew at ``now``: everything that could hold it is asked again.

    ``book`` is None for a message to staff, which goes at any hour, and for one to a number that is nobody's.
    """
    if message.occasion == Occasion.MORNING_LIST:
        return _judge_list(message, now)
    if message.occasion == Occasion.ALERT:
        return _judge_test(message, now) if message.kind == TEST else _judge_alert(message)
    if message.kind == answering.NOBODY_YET and message.flag is not None and message.flag.state != Flag.State.OPEN:
        return Verdict(Event.WITHDRAW, reason=TAKEN)
    if book is None:
        return Verdict(Event.JOURNAL, channel=message.channel, address=message.address)
    if message.occasion == Occasion.ANSWER:
        return _judge_answer(message, book)
    if message.occasion == Occasion.OPT_IN:
        return _judge_opt_in(message, book, now)
    if message.occasion == Occasion.NOTICE:
        return _judge_notice(message, book, now)
    if message.kind == LOT:
        return _judge_asked(message, book, now)
    return _judge_visit(message, book, now)


def _judge_visit(message: Message, book: ClientBook, now: datetime) -> Verdict:
    planned = next((one for one in book.plan(now) if one.key == message.key), None)
    if planned is None:
        return Verdict(Event.WITHDRAW, reason=why_gone(message, book, now))
    purpose = Purpose.of(planned.occasion)
    way = reach(book.contact, purpose, avoid=_other(message.channel) if message.fell_back else "")
    if planned.reason is None and way.reason is not None:
        return Verdict(Event.WITHHOLD, reason=way.reason)
    answer = timing.may_go(planned, book.facts, book.rules, now)
    if isinstance(answer, Reason):
        return Verdict(Event.WITHHOLD, reason=answer)
    if answer > now:
        return Verdict(Event.PLAN, due_at=answer, channel=way.channel)
    if planned.occasion in NEEDS_THE_BOOK and book_is_old(book.studio, now):
        return Verdict(Event.PLAN, OLD_BOOK, now + LOOK_AGAIN, way.channel)
    return _goes(way, book, book.rules.hours_of(planned.occasion), planned.no_later_than, now)


def _judge_answer(message: Message, book: ClientBook) -> Verdict:
    """An answer goes to where she wrote from, at any hour.

    After a stop only its one confirmation does, and what to do at once in an emergency that she herself then tells of.
    """
    stopped = message.channel in book.contact.stopped
    if stopped and message.kind not in answering.AFTER_A_STOP:
        return Verdict(Event.WITHHOLD, reason=Reason.NO_CONSENT)
    return Verdict(Event.JOURNAL, channel=message.channel, address=message.address)


def _judge_opt_in(message: Message, book: ClientBook, now: datetime) -> Verdict:
    """It goes ahead of a text to where she is texted, be it about her visits or a reminder."""
    ways = [reach(book.contact, purpose) for purpose in (Purpose.VISITS, Purpose.REMINDERS)]
    way = next((way for way in ways if (way.channel, way.address) == (message.channel, message.address)), None)
    if way is None:
        return Verdict(Event.WITHHOLD, reason=ways[0].reason or Reason.NO_CONSENT)
    return _in_hours(message, way, book, now)


def _judge_asked(message: Message, book: ClientBook, now: datetime) -> Verdict:
    """A question that a person has her asked, whatever is booked and whether or not she is on hold."""
    way = reach(book.contact, Purpose.VISITS, avoid=_other(message.channel) if message.fell_back else "")
    if way.reason is not None:
        return Verdict(Event.WITHHOLD, reason=way.reason)
    return _in_hours(message, way, book, now)


def _judge_notice(message: Message, book: ClientBook, now: datetime) -> Verdict:
    """What a person has those told who are booked: as long as the visit stands where it stood, in spite of a hold."""
    visit = book.visits.get(message.visit_id or 0)
    if visit is None or visit.status != Visit.Status.BOOKED:
        return Verdict(Event.WITHDRAW, reason=why_gone(message, book, now))
    if visit.starts_at != message.about_start:
        return Verdict(Event.WITHDRAW, reason="the visit was moved")
    return _judge_asked(message, book, now)


def _in_hours(message: Message, way: Reach, book: ClientBook, now: datetime) -> Verdict:
    limit = message.no_later_than or now
    opens = next_open(timing.whole_seconds(now), book.rules.hours, book.facts.zones, limit)
    if opens is None:
        return Verdict(Event.WITHHOLD, reason=Reason.TOO_LATE)
    if opens > now:
        return Verdict(Event.PLAN, due_at=opens, channel=way.channel)
    return _goes(way, book, book.rules.hours, message.no_later_than, now)


def _goes(way: Reach, book: ClientBook, hours: Hours, no_later_than: datetime | None, now: datetime) -> Verdict:
    until = closing(now, hours, book.facts.zones)
    if no_later_than is not None:
        until = min(until, no_later_than + timedelta(seconds=1))  # that second included
    return Verdict(Event.JOURNAL, channel=way.channel, address=way.address, until=until)


def _judge_list(message: Message, now: datetime) -> Verdict:
    """Since it was promised she may have left, or lost her number, or said stop."""
    person = message.staff
    if person is None or not staffing.gets_a_list(person):
        return Verdict(Event.WITHDRAW, reason="she gets no list any more")
    if message.no_later_than is not None and now >= message.no_later_than:
        return Verdict(Event.WITHHOLD, reason=Reason.TOO_LATE)
    way = staffing.ways([person]).get(person.pk)
    if way is None:
        return Verdict(Event.WITHHOLD, reason=Reason.NO_WAY)
    return Verdict(Event.JOURNAL, channel=way.channel, address=way.address)


def _judge_alert(message: Message) -> Verdict:
    """A page goes at any hour, by whatever road is open to her, unless somebody has the client by now."""
    person, flag, visit = message.staff, message.flag, message.visit
    if person is None or not person.is_active:
        return Verdict(Event.WITHDRAW, reason="she does not work here any more")
    waits = Flag.State.TAKEN if message.kind == "try_again" else Flag.State.OPEN
    if flag is not None and flag.state != waits:
        return Verdict(Event.WITHDRAW, reason=TAKEN)
    if visit is not None and visit.status != Visit.Status.BOOKED:
        return Verdict(Event.WITHDRAW, reason="the visit is marked")
    first = message.channel if message.kind == ROAD_AWAY else "sms"  # the road that it tells of is the other one
    way = staffing.ways([person], first=first).get(person.pk)
    if way is None:
        return Verdict(Event.WITHHOLD, reason=Reason.NO_WAY)
    return Verdict(Event.JOURNAL, channel=way.channel, address=way.address)


def _judge_test(message: Message, now: datetime) -> Verdict:
    """A wording that she tries out goes to her own number or address, as it still is, and at once or not at all."""
    person = message.staff
    if person is None or not person.is_active:
        return Verdict(Event.WITHDRAW, reason="she does not work here any more")
    if message.no_later_than is not None and now >= message.no_later_than:
        return Verdict(Event.WITHHOLD, reason=Reason.TOO_LATE)
    if message.address not in {"sms": {person.mobile}, "email": {person.email}}[message.channel] - {""}:
        return Verdict(Event.WITHHOLD, reason=Reason.NO_WAY)
    return Verdict(Event.JOURNAL, channel=message.channel, address=message.address)


def _other(channel: str) -> str:
    return "email" if channel == "sms" else "sms"


def why_gone(message: Message, book: ClientBook, now: datetime) -> str:
    """Return in words why a message is no longer due."""
    visit = book.visits.get(message.visit_id or 0)
    if visit is None:
        return "the visit is no longer hers"
    if visit.status == Visit.Status.BOOKED:
        return "the visit has begun" if visit.starts_at <= now else NO_LONGER_DUE
    if visit.status != Visit.Status.DONE:
        return f"the visit was {visit.status}"
    if message.occasion in REMINDERS:
        return _why_not_reminded(visit, book)
    return NO_LONGER_DUE if message.occasion in (Occasion.CARE, Occasion.CHECK) else "the visit is done"


def _why_not_reminded(visit: Visit, book: ClientBook) -> str:
    sets = book.calendar.done_sets
    if not sets or sets[-1].id != visit.pk:
        return "a newer set is on"
    if book.forecast is not None and reminders.fails_early(book.forecast, book.rules):
        return "this set fails early: her artist is told"
    return "no longer due for this set"
