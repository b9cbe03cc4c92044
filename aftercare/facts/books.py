"""One client's book: her rows as the values that ``core`` computes with."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from aftercare.core import timing
from aftercare.core.consultation import Filled
from aftercare.core.delivery import GONE, State
from aftercare.core.reach import Contact, Purpose, Reach, only_zone, reach
from aftercare.core.reminders import Away
from aftercare.core.shedding import LONGEST_WORN
from aftercare.core.timing import Occasion, Reason, Rules, SetForecast, Standing
from aftercare.facts import rows
from aftercare.facts.rules import in_force
from aftercare.models import Message, Stop
from studio.book.text import fold
from studio.covering import Span
from studio.models import SETS, Client, Reaction, Studio, Visit

RESTS = (Stop.Why.WRONG_PERSON, Stop.Why.BOUNCED)
LOOK_BACK = timedelta(days=LONGEST_WORN + 1)  # from a visit longer ago nothing follows any more


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
    messages: dict[int, Message]  # those about her visits, to whomever they went, without their texts
    forecasts: list[SetForecast]  # of the set that she wears, the one in force last
    reactions: list[Reaction]
    filled: tuple[Filled, ...]  # each time that she answered the questions before a visit, in order
    revoked: int  # how often her links were
    resting: dict[str, str]  # channels whose number or address is somebody else's or nobody's, and why: Stop.Why
    hold_why: str
    absences: tuple[Span, ...]  # of the staff, those that are not over
    now: datetime

    def away(self, staff_id: int | None) -> list[Away]:
        """When somebody of the staff is away from now on, and whether anybody covers for her."""
        mine = [one for one in self.absences if one.staff == staff_id]
        return [Away(one.first, one.last, covered=one.cover is not None) for one in mine]

    @property
    def forecast(self) -> SetForecast | None:
        """The one in force for the set that she wears."""
        return self.forecasts[-1] if self.forecasts else None

    @property
    def on_hold(self) -> bool:
        return self.facts.on_hold

    @property
    def reach(self) -> Reach:
        """How she is reached about her visits."""
        return reach(self.contact, Purpose.VISITS)

    def channel_for(self, occasion: Occasion) -> str:
        """The channel by which she is told of ``occasion``; '' for none."""
        reminds = Purpose.of(occasion) is Purpose.REMINDERS
        return self.facts.reminder_channel if reminds else self.facts.channel

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

    def by(self, rules: Rules) -> ClientBook:
        """Return the same by other rules, and by the forecasts on record."""
        return replace(self, rules=rules, forecasts=[forecast for forecast in self.forecasts if forecast.id])

    def plan(self, now: datetime) -> list[timing.Planned]:
        """Every message that should stand for her at ``now`` and has not gone yet."""
        return timing.plan(self.facts, self.planned_visits, self.rules, now, self.standing, self.forecast)


def load(
    client_ids: Iterable[int], now: datetime, studios: Mapping[int, Studio] | None = None
) -> dict[int, ClientBook]:
    """Return the books of these clients, in a fixed number of queries.

    ``studios``: theirs, with their calendar feeds, where they are at hand: hundreds of clients then share them.
    """
    ids = list(client_ids)
    people = rows.clients(ids, now, studios)
    of_studio = {person.client.studio: person for person in people}
    rules = {
        one.pk: in_force(person.own_rules, one.region, person.closed, person.rules_since)
        for one, person in of_studio.items()
    }
    return _books(people, rules, {}, now, plan_only=False, many=studios is not None)


def load_as_if(
    client_ids: Iterable[int],
    now: datetime,
    studio: Studio,
    rules: Rules,
    forecasts: Mapping[int, SetForecast] | None = None,
) -> dict[int, ClientBook]:
    """Return the same of one studio's clients as if ``rules`` were in force, for a plan and nothing else.

    ``forecasts`` are newer than those on record, by the visit of the set.
    """
    people = rows.clients_to_plan(list(client_ids), studio)
    return _books(people, {studio.pk: rules}, forecasts or {}, now, plan_only=True)


def _books(
    people: Sequence[rows.Person],
    rules: Mapping[int, Rules],
    forecasts: Mapping[int, SetForecast],
    now: datetime,
    *,
    plan_only: bool,
    many: bool = False,
) -> dict[int, ClientBook]:
    ids = [person.client.pk for person in people]
    visits, refs = rows.visits(ids, plan_only=plan_only, many=many)
    made = rows.forecasts([pk for hers in visits.values() for pk in _worn(hers)])
    for visit, forecast in forecasts.items():
        made[visit].append(forecast)
    consents = rows.consents(ids)
    stops = rows.stops([person.client for person in people])
    reactions = rows.reactions(ids)
    messages = rows.messages(visits, now if plan_only else None, many=many)
    return {
        person.client.pk: _book(
            person.client,
            rules[person.client.studio_id],
            visits[person.client.pk],
            refs,
            consents[person.client.pk],
            stops,
            reactions[person.client.pk],
            person.asked,
            person.flagged,
            person.absences,
            messages[person.client.pk],
            made,
            person.filled,
            person.revoked,
            now,
        )
        for person in people
    }


def _worn(visits: list[Visit]) -> list[int]:
    """Her last done set; where several begin at one moment, all of them."""
    done = [visit for visit in visits if visit.is_set and visit.status == Visit.Status.DONE]
    return [visit.pk for visit in done if visit.starts_at == done[-1].starts_at]


def _book(
    client: Client,
    rules: Rules,
    visits: list[Visit],
    refs: dict[int, str],
    consents: dict[tuple[str, str], bool],
    stops: dict[tuple[int, str, str], str],
    reactions: list[Reaction],
    asked: tuple[datetime, ...],
    flagged: bool,
    absences: tuple[Span, ...],
    messages: list[Message],
    forecasts: dict[int, list[SetForecast]],
    filled: tuple[Filled, ...],
    revoked: int,
    now: datetime,
) -> ClientBook:
    addresses = (("sms", client.mobile), ("email", client.email.lower()))
    own = {channel: stops.get((client.studio_id, channel, address)) for channel, address in addresses}
    stopped = {channel for channel, why in own.items() if why is not None}
    resting = {channel: why for channel, why in own.items() if why in RESTS}
    contact = Contact(
        mobile=client.mobile,
        email=client.email,
        choice=client.channel,
        consents=consents,
        stopped=frozenset(stopped),
        resting=frozenset(resting),
    )
    standing_reaction = next((reaction for reaction in reactions if reaction.released_at is None), None)
    planned_visits = tuple(_visit(visit, refs) for visit in visits)
    made = _of_worn(planned_visits, forecasts)
    return ClientBook(
        client=client,
        studio=client.studio,
        rules=rules,
        contact=contact,
        facts=_client(client, contact, visits, reactions, asked, flagged, now),
        visits={visit.pk: visit for visit in visits},
        planned_visits=planned_visits,
        standing=standing_of(messages, client.pk, made),
        messages={message.pk: message for message in messages},
        forecasts=made,
        reactions=reactions,
        filled=filled,
        resting=resting,
        hold_why="a reaction is on record" if standing_reaction else "an open flag" if flagged else "",
        revoked=revoked,
        absences=absences,
        now=now,
    )


def _of_worn(visits: Sequence[timing.Visit], forecasts: dict[int, list[SetForecast]]) -> list[SetForecast]:
    """What was forecast of the set that she wears, the one in force last.

    Where a book has two sets at one moment, only one of them is forecast, and what is said of it holds for the other.
    """
    done = [visit for visit in visits if visit.service in SETS and visit.status == Visit.Status.DONE]
    worn = max(done, key=lambda visit: (visit.start, visit.ref), default=None)
    if worn is None:
        return []
    if made := forecasts.get(worn.id):
        return made
    twins = (forecasts.get(visit.id) for visit in done if visit.start == worn.start)
    return [replace(forecast, visit=worn.id) for forecast in next(filter(None, twins), [])]


def _client(
    client: Client,
    contact: Contact,
    visits: list[Visit],
    reactions: list[Reaction],
    asked: tuple[datetime, ...],
    flagged: bool,
    now: datetime,
) -> timing.Client:
    zone = ZoneInfo(client.time_zone) if client.time_zone else client.studio.zone
    about_visits, reminded = reach(contact, Purpose.VISITS), reach(contact, Purpose.REMINDERS)
    released = [reaction for reaction in reactions if reaction.released_at]
    return timing.Client(
        zone=zone,
        other_zone=None if client.time_zone else _zone_of_number(client),
        wished=client.wished_hours,
        sensitive=bool(client.sensitive),
        channel=about_visits.channel,
        unreachable=about_visits.reason,
        reminder_channel=reminded.channel,
        reminder_unreachable=reminded.reason,
        on_hold=flagged or len(released) < len(reactions),
        paused=client.paused_until is not None and now.astimezone(zone).date() < client.paused_until,
        on_break=client.on_break,
        earlier_declined=client.earlier_declined,
        first_import_at=client.studio.first_import_at,
        held_visits=_held(visits, reactions, flagged),
        reactions=tuple(reaction.at for reaction in reactions),
        asked=asked,
        no_set_since=client.no_set_since,
        test_first=bool(released and max(released, key=lambda reaction: reaction.at).test_first),
    )


def _held(visits: list[Visit], reactions: list[Reaction], flagged: bool) -> frozenset[int]:
    """The visits whose checks stop: those that a reaction followed; the last, while a person looks into a sign."""
    held = {_visit_of(reaction, visits) for reaction in reactions}
    if flagged:
        done = [visit for visit in visits if visit.status == Visit.Status.DONE]
        held |= {max(done, key=lambda visit: visit.starts_at).pk} if done else set()
    return frozenset(held)


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
        # Two spellings of one product are no other product: a lot can have been written down with either.
        adhesive=fold(visit.adhesive.product) if visit.adhesive else "",
        sign_on_test=visit.test_result == Visit.TestResult.SIGN,
    )


def standing_of(
    messages: Iterable[Message], client_id: int, forecasts: Iterable[SetForecast] = ()
) -> dict[timing.Slot, Standing]:
    """Return what is on record for each visit, occasion and step of this client, by what was forecast of her set.

    A visit may have been another client's when a message about it left: that is marked as gone elsewhere.
    """
    found: dict[timing.Slot, Standing] = {}
    by_id = {forecast.id: forecast for forecast in forecasts}
    for message in sorted(messages, key=lambda message: message.edition):
        if message.visit_id is None or message.occasion in timing.UNPLANNED:
            continue
        slot = (message.visit_id, Occasion(message.occasion), message.step)
        before = found.get(slot)
        write = Standing if before is None else before._replace
        if message.state in GONE:
            elsewhere = message.client_id != client_id
            found[slot] = write(
                gone_edition=message.edition,
                gone_start=message.about_start,
                gone_due=None if elsewhere else message.due_at,
                gone_at=None if elsewhere else message.handed_over_at or message.handing_over_at,
                gone_elsewhere=elsewhere,
                open_edition=0,
            )
        else:
            found[slot] = write(
                open_edition=message.edition,
                open_planned=message.state in (State.PLANNED, State.CLAIMED),
                open_gave_way=message.reason == Reason.ANOTHER_CHECK,
                open_aim=message.aim_at,
                open_from=message.planned_from,
                open_forecast=by_id.get(message.forecast_id or 0),
                go_from=message.go_from,
            )
    return found
