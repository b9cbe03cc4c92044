"""The sections about what was said: replies and how soon a person had them, and the messages."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import replace

from django.utils.functional import Promise
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from aftercare import figures
from aftercare.core.delivery import State
from aftercare.core.rates import rate_of
from aftercare.figures.heard import URGENCIES, Matter, wait
from aftercare.figures.traffic import FAILED, total
from aftercare.figures.traffic import Row as Counted
from aftercare.models import Line
from aftercare.pages.report.pictures import FEW
from aftercare.pages.report.report import Report, Section, is_few
from aftercare.pages.report.table import COUNT, RATE, WAIT, Row, Table, cost
from aftercare.pages.shown import CHANNELS, OCCASIONS, STATES

URGENT: dict[str, Promise] = {
    "emergency": gettext_lazy("emergencies"),
    "same_day": gettext_lazy("to be seen the same day"),
    "other": gettext_lazy("all others"),
}
LEFT = (State.HANDED_OVER, State.DELIVERED)
REASONS = 60  # rows; what is rarer stands in one
SECRET = re.compile(r"\S+@\S+|\+?\d{4,}")  # the address or number that a reason speaks of


def answers(report: Report) -> Section:
    """Replies, and the hours until a person had them."""
    found = figures.heard(report.span)
    urgent = [(str(URGENT[name]), [one for one in found.matters if one.urgency == name]) for name in URGENCIES]
    heads = [
        (_("Matters"), COUNT),
        (_("Nobody has it yet"), COUNT),
        (_("Half of them within"), WAIT),
        (_("9 in 10 within"), WAIT),
    ]
    tables = [Table("waits", _("Until a person had it"), _("What it was"), heads, _waits(urgent, report))]
    if report.artist is None:
        whose = [(str(one.artist or ""), one) for one in found.matters]
        hers = [
            (report.artist_name(key), [matter for own, matter in whose if own == key])
            for key in report.artists_in_order(key for key, _matter in whose)
        ]
        tables.append(Table("artists", _("By whose client it was"), _("Artist"), heads, _waits(hers, report)))
    channels = [Row(_channel(channel), [count]) for channel, count in found.replies.most_common()]
    tables.append(Table("channels", _("Replies"), _("Channel"), [(_("Replies"), COUNT)], channels))
    about = [
        _(
            "From the reply, or from when it became urgent, until a person took the matter, answered or closed it. "
            "Automatic answers do not count. What still waits counts for as long as it has waited."
        ),
        _("A client belongs to the artist of her last visit before she wrote. Each matter counts by itself."),
    ]
    title, empty = _("Replies, and how soon a person had them"), _("Nobody wrote.")
    return Section("answers", title, about, tables, empty=empty)


def _waits(kinds: Iterable[tuple[str, list[Matter]]], report: Report) -> list[Row]:
    rows = []
    for name, some in kinds:
        if some:
            standing = sum(one.had_at is None for one in some)
            waits = [wait(some, part, report.now) for part in (0.5, 0.9)]
            rows.append(Row(name, [len(some), standing, *waits], few=len(some) < FEW))
    return rows


def messages(report: Report) -> Section:
    """Messages by where they stand, what they cost, and why some did not arrive."""
    rows = figures.traffic(report.span)
    line = Line.objects.filter(studio=report.studio, channel="sms", is_active=True).order_by("-pk").first()
    told = figures.failures(report.span)["road"]
    sure = [(_("With a receipt"), COUNT), (_("Clients"), COUNT), (_("Not delivered"), RATE)]
    roads = [
        Row(_channel(road), [one.sums.cases, one.sums.groups, rate_of(one.sums)], few=is_few(one))
        for (road,), one in sorted(told.items())
    ]
    tables = [
        _with_cost(_by_state(rows), line),
        _with_cost(_by_occasion(rows), line),
        Table("failed", _("Not delivered, of those that the carrier told of"), _("Channel"), sure, roads),
        _by_reason("reasons", _("Why not delivered, or not known"), rows, FAILED),
        _by_reason("withheld", _("Why withheld"), rows, (State.WITHHELD,)),
    ]
    about = [
        _(
            "Messages to clients whose moment lies in this period, by where they stand now. A long text is "
            "charged as two or more; one that had to be tried again may have been charged twice."
        )
    ]
    if report.artist is not None:
        about.append(_("Counted are those about visits to this artist."))
    return Section("messages", _("Messages"), about, tables, empty=_("No message had its moment in these days."))


def _with_cost(table: Table, line: Line | None) -> Table:
    """Add what the segments of its last column cost, where the owner has stated a price."""
    if line is None or line.price is None:
        return table
    rows = [replace(row, values=[*row.values, row.values[-1] * line.price]) for row in table.rows]
    return replace(table, columns=[*table.columns, (_("At today’s price"), cost(line.currency))], rows=rows)


def _by_state(rows: Sequence[Counted]) -> Table:
    roads = (("sms", _("By text")), ("email", _("By e-mail")), ("", _("By neither")))
    named: dict[str, list[Counted]] = {}
    for row in rows:
        pretended = row.rehearsed and row.state in LEFT
        named.setdefault(_("on the pretend phone") if pretended else str(STATES[row.state]), []).append(row)
    heads = [*((words, COUNT) for _road, words in roads), (_("All"), COUNT), (_("Charged as texts"), COUNT)]
    found = []
    for words, some in sorted(named.items(), key=lambda pair: -total(pair[1])[0]):
        by_road = [total(one for one in some if one.channel == road)[0] for road, _words in roads]
        found.append(Row(words, [*by_road, *total(some)]))
    return Table("states", _("Where they stand"), _("State"), heads, found)


def _by_occasion(rows: Sequence[Counted]) -> Table:
    kinds = (
        (_("Delivered, or handed over"), LEFT),
        (_("Not delivered, or not known"), FAILED),
        (_("Withheld or withdrawn"), (State.WITHHELD, State.WITHDRAWN)),
        (_("Still to go"), (State.PLANNED, State.CLAIMED, State.HANDING_OVER)),
    )
    heads = [*((words, COUNT) for words, _states in kinds), (_("All"), COUNT), (_("Charged as texts"), COUNT)]
    found = []
    for occasion, words in OCCASIONS.items():
        own = [row for row in rows if row.occasion == occasion]
        if own:
            counts = [total(row for row in own if row.state in states)[0] for _words, states in kinds]
            found.append(Row(str(words), [*counts, *total(own)]))
    return Table("occasions", _("What they were about"), _("About"), heads, found)


def _by_reason(key: str, title: str, rows: Sequence[Counted], states: Sequence[State]) -> Table:
    found: Counter[str] = Counter()
    for row in rows:
        if row.state in states:
            found[_reason(row.why)] += row.messages
    listed = found.most_common()
    most = [Row(why, [count]) for why, count in listed[:REASONS]]
    if rest := sum(count for _why, count in listed[REASONS:]):
        most.append(Row(_("other reasons"), [rest]))
    return Table(key, title, _("Reason"), [(_("Messages"), COUNT)], most)


def _reason(why: str) -> str:
    """Return a reason without the number or the address that it speaks of, so that alike ones are one."""
    return SECRET.sub("…", _(why)) if why else _("no reason is known")


def _channel(channel: str) -> str:
    return str(CHANNELS.get(channel, channel))
