"""One client and her visits as planning sees them, and what follows from them as things stand now."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import UTC, date, datetime
from zoneinfo import ZoneInfo

from aftercare.core.occasions import BOOKED, DONE, PATCH_TEST, REMOVAL, SETS, Reason
from aftercare.core.rules import Rules


def whole_seconds(at: datetime) -> datetime:
    """Return ``at`` in UTC without its fraction of a second."""
    return at.astimezone(UTC).replace(microsecond=0)


@dataclass(frozen=True, slots=True)
class Visit:
    """A visit as planning sees it. ``ref`` breaks ties, so that the order of imports cannot matter."""

    id: int
    ref: str
    service: str
    status: str
    start: datetime
    end: datetime  # booked end, or the later moment at which a visit known as booked was marked done
    heard_at: datetime
    adhesive: str = ""  # product; '' is unknown
    sign_on_test: bool = False  # a patch test with a sign on record

    def __post_init__(self) -> None:
        if self.start.microsecond or self.end.microsecond or self.heard_at.microsecond:  # rare
            for name in ("start", "end", "heard_at"):
                object.__setattr__(self, name, getattr(self, name).replace(microsecond=0))


@dataclass(frozen=True, slots=True)
class Client:
    """A client as planning sees her, at the present moment."""

    zone: ZoneInfo
    other_zone: ZoneInfo | None = None  # of her number, where she stated none and it differs
    wished: str = ""  # the hours in which she wishes to be written to, see hours.WISHES; '' for none
    sensitive: bool = False
    channel: str = ""  # how she is reached about her visits; '' for the reason beside it
    unreachable: Reason | None = Reason.NO_WAY
    reminder_channel: str = ""  # the same for reminders, which need a consent of their own
    reminder_unreachable: Reason | None = Reason.NO_WAY
    on_hold: bool = False
    paused: bool = False  # a person wants nothing sent but care and checks
    on_break: bool = False  # she wears no lashes for a while
    earlier_declined: int = 0  # how often she declined an earlier visit than she had booked
    held_visits: frozenset[int] = frozenset()  # visits whose checks stop: those a reaction followed
    reactions: tuple[datetime, ...] = ()
    asked: tuple[datetime, ...] = ()  # when a matter of hers was closed, to be asked once more the next day
    no_set_since: datetime | None = None  # when her lashes were taken off without a removal in the book
    test_first: bool = False  # released from hold with "test first"
    first_import_at: datetime | None = None  # of her studio's book; None: not yet

    @property
    def zones(self) -> tuple[ZoneInfo, ...]:
        """The clocks within whose sending hours a message must fall."""
        return (self.zone,) if self.other_zone is None else (self.zone, self.other_zone)


@dataclass(frozen=True, slots=True)
class SetForecast:
    """What is forecast of the set of one visit. Days count from the visit's local date, as fractions."""

    visit: int
    fill_day: float  # median day on which it falls to the fill level
    full_set_low: float  # 10 % day for the full-set level
    full_set_day: float  # median day for it
    id: int = 0  # names the forecast


@dataclass(slots=True)
class Calendar:
    """One client's visits, sorted, with what follows from them as things stand now."""

    client: Client
    rules: Rules
    now: datetime
    visits: list[Visit]
    dates: dict[int, date] = field(default_factory=dict)
    done_sets: list[Visit] = field(default_factory=list)
    tests: list[Visit] = field(default_factory=list)

    @classmethod
    def of(cls, client: Client, visits: Iterable[Visit], rules: Rules, now: datetime) -> Calendar:
        """Sort a client's visits by start, at one moment sets last, then by reference; dates are those of her own zone.

        Of a removal and a set that a book has at one moment, the set is what she leaves with.
        """
        ordered = sorted(visits, key=lambda visit: (visit.start, visit.service in SETS, visit.ref))
        calendar = cls(client, rules, now, ordered)
        for visit in ordered:
            calendar.dates[visit.id] = visit.start.astimezone(client.zone).date()
            if visit.service == PATCH_TEST:
                calendar.tests.append(visit)
            elif visit.status == DONE and visit.service in SETS:
                calendar.done_sets.append(visit)
        return calendar

    def is_booked(self, visit: Visit) -> bool:
        """Booked means: so marked, and its start still ahead."""
        return visit.status == BOOKED and visit.start > self.now

    @property
    def is_first_client(self) -> bool:
        """No set has been done here yet."""
        return not self.done_sets

    @property
    def booked_sets(self) -> list[Visit]:
        """The sets that are still ahead of her."""
        return [visit for visit in self.visits if visit.service in SETS and self.is_booked(visit)]

    def worn(self, at: datetime) -> Visit | None:
        """Return the set that she wore at ``at``, as far as is known."""
        worn = next((visit for visit in reversed(self.done_sets) if visit.start <= at), None)
        if worn is None or self.taken_off(worn, at):
            return None
        return worn

    def taken_off(self, worn: Visit, by: datetime | None = None) -> bool:
        """Whether a set was taken off (``by`` a moment): by a removal that is done, or without one in the book."""
        since = self.client.no_set_since
        if since is not None and worn.start <= since and (by is None or since <= by):
            return True
        later = self.visits[self.visits.index(worn) + 1 :]
        removals = (visit for visit in later if visit.service == REMOVAL and visit.status == DONE)
        return any(by is None or visit.start <= by for visit in removals)

    def watched(self) -> set[int]:
        """Return the visits that get every check there is."""
        found = {visit.id for visit in self.tests if visit.status == DONE}
        found.update(_first(self.done_sets, self.rules.sensitive_sets if self.client.sensitive else 1))
        for reaction in self.client.reactions:
            found.update(_first([visit for visit in self.done_sets if visit.start > reaction], 1))
        return found


def _first(sets: list[Visit], many: int) -> set[int]:
    """Return the first so many of some sets, and with the last of them whatever a book has at its very moment."""
    return {visit.id for visit in sets if visit.start <= sets[: max(many, 1)][-1].start}
