"""The sections about sets: fills within their window, shares left, reactions on record, how good the forecasts were."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from django.urls import reverse
from django.utils.functional import Promise
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy, ngettext

from aftercare import figures, lotwatch
from aftercare.core.rates import mean_of, rate_of
from aftercare.figures import Group, Groups
from aftercare.figures.fills import BOOKED, NOT_REMINDED, REMINDED
from aftercare.pages.report.pictures import Picture, over_time, side_by_side
from aftercare.pages.report.report import Parts, Report, Section, is_few, most_first
from aftercare.pages.report.table import COUNT, DAYS, PER_HUNDRED, PERCENT, POINTS, RATE, WORDS, Row, Table
from studio.models import Service

DRAWN = 6  # small pictures of one kind: those with the most behind them
SCORED = 500  # the newest visits that the forecasts are held against
WAYS: dict[str, Promise] = {
    REMINDED: gettext_lazy("after a reminder"),
    NOT_REMINDED: gettext_lazy("no reminder, nothing booked"),
    BOOKED: gettext_lazy("no reminder, already booked"),
}
# How shares and reactions are told apart: what a row is, and the tables' titles.
BY: dict[str, tuple[Promise, Promise, Promise]] = {
    "artist": (gettext_lazy("Artist"), gettext_lazy("By who put the set on"), gettext_lazy("Over time, by artist")),
    "adhesive": (
        gettext_lazy("Adhesive and lot"),
        gettext_lazy("By adhesive and lot"),
        gettext_lazy("Over time, by adhesive and lot"),
    ),
    "service": (gettext_lazy("Service"), gettext_lazy("By service"), gettext_lazy("Over time, by service")),
}


def fills(report: Report) -> Section:
    """Fills that came within their window, after a reminder and without."""
    groups = figures.fills(report.span)
    ways = [(str(words), groups["way"][(way,)]) for way, words in WAYS.items() if (way,) in groups["way"]]
    rows = [
        Row(words, [one.sums.cases, one.sums.groups, rate_of(one.sums)], few=is_few(one), detail=_of_sets(one))
        for words, one in ways
    ]
    heads = [(_("Sets"), COUNT), (_("Clients"), COUNT), (_("Came, or is booked, within the window"), RATE)]
    drawn = [(row.name, row.values[2], row.detail) for row in rows]
    pictures = [side_by_side("fills", _("Came, or is booked, within the window, %"), drawn, 1.0)] if drawn else []
    tables = [Table("ways", _("Fills within the window"), _("Reminder"), heads, rows, pictures)]
    if report.artist is None:
        tables.append(_fills_by_artist(report, groups))
    about = [
        _(
            "Sets put on in this period whose window is over by its end: the days in which the set was forecast, "
            "8 times in 10, to come down to the level for a fill (of ten such sets two do so earlier or later). "
            "Counted is whether her next set stands on one of those days: she came for it, or it is booked "
            "and not marked yet. "
            "“Nothing booked”, “already booked”: when a reminder would have gone. "
            "Where one left only when those days were over, the set is left out."
        ),
        _(
            "Nobody drew lots here. Who is reminded depends on what she agreed to and on what she had booked, so these "
            "rows differ in more than the reminder: the difference between them does not say what reminders do."
        ),
    ]
    if report.studio.is_demo:
        about.append(_("In this demo studio reminders on the pretend phone count as sent."))
    elif report.studio.in_rehearsal:
        about.append(_("What is rehearsed reaches nobody, so it does not count as a reminder."))
    return Section(
        "fills",
        _("Fills booked within the forecast window, after a reminder and without"),
        about,
        tables,
        _("A set is counted here once it has a forecast and the days forecast for its fill are over."),
    )


def _fills_by_artist(report: Report, groups: Groups) -> Table:
    heads = [
        (_("Sets after a reminder"), COUNT),
        (_("Of them within the window"), RATE),
        (_("Sets not reminded, nothing booked"), COUNT),
        (_("Of these within the window"), RATE),
    ]
    rows = []
    for artist in report.artists_in_order(key[0] for key in groups["artist"]):
        own = [groups["artist"].get((artist, way)) for way in (REMINDED, NOT_REMINDED)]
        values = [value for one in own for value in ((one.sums.cases, rate_of(one.sums)) if one else (0, None))]
        if any(own):
            rows.append(Row(report.artist_name(artist), values, few=any(is_few(one) for one in own if one)))
    return Table("artists", str(BY["artist"][1]), str(BY["artist"][0]), heads, rows)


def share(report: Report) -> Section:
    """Shares left at the next visit."""
    groups = figures.shares(report.span)
    heads = [
        (_("Visits"), COUNT),
        (_("Clients"), COUNT),
        (_("Share left"), PERCENT),
        (_("Days worn, on average"), DAYS),
    ]
    drawn = [_line("share", _("All sets"), groups["bucket"], (), report)] if groups["bucket"] else []
    steps = _steps(report, groups["bucket"], _share)
    tables = [Table("steps", _("Over time"), report.by_step, heads, steps, drawn, folded=True)]
    for kind, name in _kinds(report).items():
        first, title, stepped_title = (str(words) for words in BY[kind])
        keys, stepped = most_first(groups[kind]), groups[f"{kind} by bucket"]
        rows = [Row(name(key[0]), _share(groups[kind][key]), few=is_few(groups[kind][key])) for key in keys]
        tables.append(Table(kind, title, first, heads, rows))
        some = keys[:DRAWN] if len(keys) > 1 else []
        drawn = [_line(f"{kind}-{at}", name(key[0]), stepped, key, report) for at, key in enumerate(some)]
        lines = [
            Row(name(key[0]), [long, *_share(group)], few=is_few(group))
            for key in keys
            for long, _short, group in report.over_time(stepped, key)
            if group
        ]
        columns = [(report.by_step, WORDS), *heads]
        tables.append(Table(f"{kind}-steps", stepped_title, first, columns, lines, drawn, folded=True))
    about = [
        _(
            "How much of a set was still on when she came for the next one. A set belongs to whoever put it on, and to "
            "what it was put on with, whoever read the share."
        ),
        _("Sets worn longer have lost more, and clients differ: look at the days worn before comparing rows."),
        _("In the drawings: shares in %, upright lines for the range, hollow marks for few; below, the visits."),
    ]
    empty = _("Write down the share left each time you mark a set done.")
    return Section("share", _("Share left at the next visit"), about, tables, empty)


def reactions(report: Report) -> Section:
    """Reactions on record per 100 sets."""
    followed = {one.visit.pk for one in lotwatch.each_followed(report.studio, report.period.since, report.now)}
    groups = figures.reactions(report.span, followed)
    heads = [(_("Sets"), COUNT), (_("Followed by a reaction"), COUNT), (_("Per 100 sets"), PER_HUNDRED)]
    every = [Row(_("all"), _rate(one), few=is_few(one)) for one in groups["all"].values()]
    tables = [
        Table("all", _("All together"), _("Which"), heads, every),
        Table("steps", _("Over time"), report.by_step, heads, _steps(report, groups["bucket"], _rate), folded=True),
    ]
    for kind, name in _kinds(report).items():
        first, title, _stepped = (str(words) for words in BY[kind])
        parts = groups[kind]
        rows = [
            Row(name(key[0]), _rate(parts[key]), few=is_few(parts[key]), detail=_of_sets(parts[key]))
            for key in most_first(parts)
        ]
        some = [(row.name, row.values[2], row.detail) for row in rows[:DRAWN]] if kind == "adhesive" else []
        drawn = [side_by_side("reactions", _("Reactions per 100 sets"), some, 0.04)] if len(some) > 1 else []
        tables.append(Table(kind, title, first, heads, rows, drawn))
    about = [
        _("Sets done in this period that a reaction on record followed within %(days)s days.")
        % {"days": lotwatch.FOLLOWED.days},
        _(
            "That one followed the other says nothing of why: chance does it, and so do who the clients were and who "
            "wrote down what. What follows the newest sets may still be to come."
        ),
    ]
    links = [(reverse("lots"), _("Lots of adhesive: which to look at"))]
    empty = _("Sets are counted here once they are marked done.")
    return Section("reactions", _("Reactions on record"), about, tables, empty, links)


def forecasts(report: Report) -> Section:
    """How near the forecasts were, in brief."""
    since, until = report.period.since, report.period.until
    cases, _seen = figures.cases(report.studio, since, until, reader=report.artist, newest=SCORED)
    score = figures.score(cases)
    heads = [
        (_("Visits"), COUNT),
        (_("Clients"), COUNT),
        (_("Off by, points"), POINTS),
        (_("One calendar for all: off by, points"), POINTS),
        (_("In the 80 % band"), RATE),
    ]
    rows = []
    if score:
        values = [score.visits, score.clients, score.error, score.usual_error, score.covered]
        rows.append(Row(_("shares seen"), values, few=not score.says_something))
    about = [
        _(
            "The share seen at a visit beside what had been forecast of that set just before, by who read it; of the "
            "newest %(n)s visits of this period at most."
        )
        % {"n": SCORED},
    ]
    return Section(
        "forecasts",
        _("How good the forecasts were"),
        about,
        [Table("scores", _("Forecast and seen"), _("Held against"), heads, rows)],
        empty=_("From a client’s second set on there is a forecast to hold the share against."),
        links=[(reverse("forecasts"), _("All of it"))] if report.is_owners else [],
    )


def _kinds(report: Report) -> dict[str, Callable[[str], str]]:
    """Return how sets are told apart, each with how a key is named; one artist's sets are all hers."""
    artists = {"artist": report.artist_name} if report.artist is None else {}
    return {**artists, "adhesive": report.adhesive_name, "service": lambda key: str(Service(key).label)}


def _steps(report: Report, parts: Parts, values: Callable[[Group], list[Any]]) -> list[Row]:
    stepped = report.over_time(parts)
    return [Row(long, values(group), few=is_few(group)) for long, _short, group in stepped if group]


def _line(key: str, title: str, parts: Parts, own: tuple[str, ...], report: Report) -> Picture:
    stepped = report.over_time(parts, own)
    return over_time(
        key,
        title,
        [(short, mean_of(one.sums) if one else None, one.sums.cases if one else 0) for _long, short, one in stepped],
    )


def _share(group: Group) -> list[Any]:
    return [group.sums.cases, group.sums.groups, mean_of(group.sums), group.beside]


def _rate(group: Group) -> list[Any]:
    return [group.sums.cases, round(group.sums.total), rate_of(group.sums)]


def _of_sets(group: Group) -> str:
    count = group.sums.cases
    return ngettext("%(n)s set", "%(n)s sets", count) % {"n": count}
