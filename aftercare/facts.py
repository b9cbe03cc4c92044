"""From rows to the values that ``core`` computes with: one client's book, as things stand now.

Read by every stage. Nothing here writes.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, fields, replace
from datetime import datetime
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from aftercare.core import timing
from aftercare.core.delivery import GONE, Event, State
from aftercare.core.hours import Hours, next_open
from aftercare.core.reach import Contact, Purpose, Reach, only_zone, reach
from aftercare.core.timing import Occasion, Reason, Rules, Standing
from aftercare.models import Flag, Message, RuleSet, Stop
from studio.models import Client, Consent, Reaction, Studio, Visit, VisitRef

HELD_BY = ("emergency", "same_day")  # urgencies of a flag that put her on hold


@dataclass(frozen=True, slots=True)
class Verdict:
    """What the judgement of a claimed message says: JOURNAL goes now, PLAN at ``due_at``, the others not."""

    event: Event
    reason: str = ""
    due_at: datetime | None = None
    channel: str = ""
    address: str = ""


@dataclass(slots=True)
class ClientBook:
    """One client with all that planning, judging and wording need to know of her."""

    client: Client
    studio: Studio
    rules: Rules
    contact: Contact
    facts: timing.Client
    visits: dict[int, Visit]
    planned_visits: tuple[timing.Visit, ...]
    standing: dict[timing.Slot, Standing]
    messages: dict[int, Message]  # those about her visits, without their texts
    hold_why: str
    now: datetime

    @property
    def on_hold(self) -> bool:
        return self.facts.on_hold

    @property
    def reach(self) -> Reach:
        """How she is reached about her visits."""
        return reach(self.contact, Purpose.VISITS)

    @property
    def calendar(self) -> timing.Calendar:
        return timing.Calendar.of(self.facts, self.planned_visits, self.rules, self.now)

    @property
    def tests_due(self) -> dict[int, str]:
        """Booked sets for which a patch test is due, and why."""
        calendar = self.calendar
        found = ((visit.id, timing.test_due(visit, calendar)) for visit in self.planned_visits)
        return {visit: why for visit, why in found if why}

    @property
    def suggested_zone(self) -> str:
        """The zone of her number where she stated none and it differs from the studio's, else ''."""
        return self.facts.other_zone.key if self.facts.other_zone else ""

    def plan(self, now: datetime) -> list[timing.Planned]:
        """Every message that should stand for her at ``now`` and has not gone yet."""
        return timing.plan(self.facts, self.planned_visits, self.rules, now, self.standing)


def load(client_ids: Iterable[int], now: datetime) -> dict[int, ClientBook]:
    """Return the books of these clients, in a fixed number of queries."""
    ids = list(client_ids)
    clients = list(Client.objects.filter(pk__in=ids).select_related("studio"))
    rules = {studio.pk: rules_of(studio) for studio in {client.studio for client in clients}}
    visits = _visits(ids)
    refs = _tie_breaks(ids)
    consents = _consents(ids)
    stops = _stops(clients)
    reactions = _reactions(ids)
    held = _held_by_flags(ids)
    messages = _messages(ids)
    return {
        client.pk: _book(
            client,
            rules[client.studio_id],
            visits[client.pk],
            refs,
            consents[client.pk],
            stops,
            reactions[client.pk],
            client.pk in held,
            messages[client.pk],
            now,
        )
        for client in clients
    }


def _book(
    client: Client,
    rules: Rules,
    visits: list[Visit],
    refs: dict[int, str],
    consents: dict[tuple[str, str], bool],
    stops: set[tuple[int, str, str]],
    reactions: list[Reaction],
    flagged: bool,
    messages: list[Message],
    now: datetime,
) -> ClientBook:
    contact = Contact(
        mobile=client.mobile,
        email=client.email,
        choice=client.channel,
        consents=consents,
        stopped=frozenset(
            channel
            for channel, address in (("sms", client.mobile), ("email", client.email.lower()))
            if (client.studio_id, channel, address) in stops
        ),
    )
    standing_reaction = next((reaction for reaction in reactions if reaction.released_at is None), None)
    return ClientBook(
        client=client,
        studio=client.studio,
        rules=rules,
        contact=contact,
        facts=_client(client, contact, visits, reactions, flagged or standing_reaction is not None, now),
        visits={visit.pk: visit for visit in visits},
        planned_visits=tuple(_visit(visit, refs) for visit in visits),
        standing=standing_of(messages),
        messages={message.pk: message for message in messages},
        hold_why="a reaction is on record" if standing_reaction else "an open flag" if flagged else "",
        now=now,
    )


def _client(
    client: Client, contact: Contact, visits: list[Visit], reactions: list[Reaction], on_hold: bool, now: datetime
) -> timing.Client:
    zone = ZoneInfo(client.time_zone) if client.time_zone else client.studio.zone
    about_visits = reach(contact, Purpose.VISITS)
    released = [reaction for reaction in reactions if reaction.released_at]
    return timing.Client(
        zone=zone,
        other_zone=None if client.time_zone else _zone_of_number(client),
        sensitive=bool(client.sensitive),
        channel=about_visits.channel,
        unreachable=about_visits.reason,
        on_hold=on_hold,
        paused=client.paused_until is not None and now.astimezone(zone).date() < client.paused_until,
        held_visits=frozenset(_visit_of(reaction, visits) for reaction in reactions),
        reactions=tuple(reaction.at for reaction in reactions),
        test_first=bool(released and max(released, key=lambda reaction: reaction.at).test_first),
    )


def _visit_of(reaction: Reaction, visits: list[Visit]) -> int:
    """The visit that a reaction followed: the one named, else the last done before it (0: none)."""
    if reaction.visit_id is not None:
        return reaction.visit_id
    before = [visit for visit in visits if visit.status == Visit.Status.DONE and visit.starts_at <= reaction.at]
    return max(before, key=lambda visit: visit.starts_at).pk if before else 0


def _zone_of_number(client: Client) -> ZoneInfo | None:
    name = only_zone(client.mobile)
    if not name or name == client.studio.time_zone:
        return None
    try:
        return ZoneInfo(name)
    except ZoneInfoNotFoundError:  # the number plan's data can name a zone that this machine's does not
        return None


def _visit(visit: Visit, refs: dict[int, str]) -> timing.Visit:
    return timing.Visit(
        id=visit.pk,
        ref=refs.get(visit.pk, f"~{visit.pk:012}"),  # by hand: after those of a book, in the order of making
        service=visit.service,
        status=visit.status,
        start=visit.starts_at,
        end=visit.end,
        heard_at=visit.heard_at,
        adhesive=visit.adhesive.product if visit.adhesive else "",
        sign_on_test=visit.test_result == Visit.TestResult.SIGN,
    )


def standing_of(messages: Iterable[Message]) -> dict[timing.Slot, Standing]:
    """Return what is on record for each visit, occasion and step."""
    found: dict[timing.Slot, Standing] = {}
    for message in sorted(messages, key=lambda message: message.edition):
        if message.visit_id is None or message.occasion == Occasion.OPT_IN:
            continue
        slot = (message.visit_id, Occasion(message.occasion), message.step)
        before = found.get(slot, timing.NOTHING)
        if State(message.state) in GONE:
            found[slot] = replace(
                before,
                gone_edition=message.edition,
                gone_start=message.about_start,
                gone_due=message.due_at,
                open_edition=0,
            )
        else:
            found[slot] = replace(
                before,
                open_edition=message.edition,
                open_planned=message.state in (State.PLANNED, State.CLAIMED),
                open_gave_way=message.reason == Reason.ANOTHER_CHECK,
                open_aim=message.aim_at,
                open_from=message.planned_from,
            )
    return found


def judge(message: Message, book: ClientBook | None, now: datetime) -> Verdict:
    """Judge a claimed message anew at ``now``: everything that could hold it is asked again.

    ``book`` is None for a message to staff, which goes at any hour.
    """
    if book is None:
        return Verdict(Event.JOURNAL, channel=message.channel, address=message.address)
    if message.occasion == Occasion.ANSWER:
        return _judge_answer(message, book)
    if message.occasion == Occasion.OPT_IN:
        return _judge_opt_in(message, book, now)
    return _judge_visit(message, book, now)


def _judge_visit(message: Message, book: ClientBook, now: datetime) -> Verdict:
    planned = next((one for one in book.plan(now) if one.key == message.key), None)
    if planned is None:
        return Verdict(Event.WITHDRAW, reason=why_gone(book.visits.get(message.visit_id or 0), now))
    way = reach(book.contact, Purpose.VISITS, avoid=_other(message.channel) if message.fell_back else "")
    if planned.reason is None and way.reason is not None:
        return Verdict(Event.WITHHOLD, reason=way.reason)
    answer = timing.may_go(planned, book.facts, book.rules, now)
    if isinstance(answer, Reason):
        return Verdict(Event.WITHHOLD, reason=answer)
    if answer > now:
        return Verdict(Event.PLAN, due_at=answer, channel=way.channel)
    return Verdict(Event.JOURNAL, channel=way.channel, address=way.address)


def _judge_answer(message: Message, book: ClientBook) -> Verdict:
    """An answer goes to where she wrote from, at any hour; after a stop only its one confirmation does."""
    stopped = message.channel in book.contact.stopped
    if stopped and message.kind != "stopped":
        return Verdict(Event.WITHHOLD, reason=Reason.NO_CONSENT)
    return Verdict(Event.JOURNAL, channel=message.channel, address=message.address)


def _judge_opt_in(message: Message, book: ClientBook, now: datetime) -> Verdict:
    way = reach(book.contact, Purpose.VISITS)
    if way.channel != message.channel or way.address != message.address:
        return Verdict(Event.WITHHOLD, reason=way.reason or Reason.NO_CONSENT)
    limit = message.no_later_than or now
    opens = next_open(timing.whole_seconds(now), book.rules.hours, book.facts.zones, limit)
    if opens is None:
        return Verdict(Event.WITHHOLD, reason=Reason.TOO_LATE)
    if opens > now:
        return Verdict(Event.PLAN, due_at=opens, channel=way.channel)
    return Verdict(Event.JOURNAL, channel=way.channel, address=way.address)


def _other(channel: str) -> str:
    return "email" if channel == "sms" else "sms"


def why_gone(visit: Visit | None, now: datetime) -> str:
    """Return in words why nothing is due for this visit any more."""
    if visit is None:
        return "the visit is no longer hers"
    if visit.status == Visit.Status.BOOKED:
        return "the visit has begun" if visit.starts_at <= now else "no longer due for this visit"
    if visit.status == Visit.Status.DONE:
        return "the visit is done"
    return f"the visit was {visit.status}"


def rules_of(studio: Studio) -> Rules:
    """Return the rules in force for a studio: the defaults, and the owner's numbers where she set any."""
    newest = RuleSet.objects.filter(studio=studio).order_by("-version").first()
    return rules_from(newest.values if newest else {}, studio.region)


def rules_from(values: dict[str, object], region: str) -> Rules:
    """Return the rules that stored ``values`` stand for; hours are pairs of minutes since midnight."""
    known = {one.name for one in fields(Rules)}
    given: dict[str, object] = {"test_everyone": region in timing.EVERYONE_TESTED_IN}
    for name, value in values.items():
        if name in known:
            given[name] = _rule(name, value)
    return Rules(**given)  # type: ignore[arg-type]  # the names were checked above, the values before they were stored


def _rule(name: str, value: object) -> object:
    if name in ("hours", "care_hours") and isinstance(value, Sequence):
        return Hours(value[0], value[1])
    return tuple(value) if isinstance(value, list) else value


def _visits(ids: list[int]) -> dict[int, list[Visit]]:
    found: dict[int, list[Visit]] = defaultdict(list)
    for visit in Visit.objects.filter(client__in=ids).select_related("artist", "adhesive").order_by("starts_at", "pk"):
        found[visit.client_id].append(visit)
    return found


def _tie_breaks(ids: list[int]) -> dict[int, str]:
    rows = VisitRef.objects.filter(visit__client__in=ids).values_list("visit_id", "source", "reference")
    return {visit: f"{source} {reference}" for visit, source, reference in rows}


def _consents(ids: list[int]) -> dict[int, dict[tuple[str, str], bool]]:
    found: dict[int, dict[tuple[str, str], bool]] = defaultdict(dict)
    rows = Consent.objects.filter(client__in=ids).order_by("at", "pk")
    for client, channel, purpose, given in rows.values_list("client_id", "channel", "purpose", "given"):
        found[client][(channel, purpose)] = given  # the newest answer counts
    return found


def _stops(clients: list[Client]) -> set[tuple[int, str, str]]:
    addresses = {client.mobile for client in clients} | {client.email.lower() for client in clients}
    rows = Stop.objects.filter(lifted_at=None, address__in=addresses - {""})
    return set(rows.values_list("line__studio_id", "line__channel", "address"))


def _reactions(ids: list[int]) -> dict[int, list[Reaction]]:
    found: dict[int, list[Reaction]] = defaultdict(list)
    for reaction in Reaction.objects.filter(client__in=ids).order_by("at", "pk"):
        found[reaction.client_id].append(reaction)
    return found


def _held_by_flags(ids: list[int]) -> set[int]:
    standing = Flag.objects.filter(clients__in=ids, urgency__in=HELD_BY).exclude(state=Flag.State.CLOSED)
    return set(standing.values_list("clients", flat=True))


def _messages(ids: list[int]) -> dict[int, list[Message]]:
    found: dict[int, list[Message]] = defaultdict(list)
    for message in Message.objects.filter(client__in=ids, visit__isnull=False).defer("text", "subject"):
        if message.client_id is not None:
            found[message.client_id].append(message)
    return found
