"""Lots of adhesive and the reactions on record after them: counted here, weighed in ``core.lots``.

Reads, never writes. A reaction belongs to the set that it names, else to the last set done before it, where that began
within FOLLOWED before it; one that names another kind of visit belongs to no set. A client counts once a lot, since
her second reaction says of her what the first one did. Sets whose lot nobody noted are no lot: they are of many, over
years, so that each counts that was followed. To count a client once in all of them would make them look the better the
longer they have been put on, and every lot beside them the worse. Every set counts from the day on which it was done:
what may still follow the newest ones can only lower their lot's rate until then.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from django.db.models import Count, QuerySet

from aftercare import facts
from aftercare.core import reading
from aftercare.core.lots import FEWEST_REACTIONS, FourFold, GammaPoisson, is_worse
from aftercare.core.rates import wilson
from aftercare.core.reading import Sign
from aftercare.core.shrinkage import FEWEST
from studio.models import SETS, Adhesive, Reaction, Studio, Visit

FOLLOWED = timedelta(days=14)  # from the beginning of a set
WORN = timedelta(days=30)


@dataclass(slots=True)
class Followed:
    """One client's set with a lot, and the reactions on record within FOLLOWED after it (the same lot's, all hers)."""

    visit: Visit
    reactions: list[Reaction] = field(default_factory=list)

    @property
    def days(self) -> int:
        """Whole days from the set to the first of them."""
        return (self.reactions[0].at - self.visit.starts_at).days

    @property
    def signs(self) -> list[Sign]:
        """Her signs, each once: those on record, else what the reader finds in what was written down.

        Never the words themselves: they may hold names.
        """
        found = [reaction.signs or reading.read(reaction.words).signs for reaction in self.reactions]
        return list(dict.fromkeys(Sign(sign) for signs in found for sign in signs))


@dataclass(frozen=True, slots=True)
class Drawn:
    """A ratio drawn towards all lots, with the 5 % and 95 % points of its law."""

    middle: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Lot:
    """One lot beside all other sets. Rates are 0 to 1."""

    adhesive: Adhesive
    sets: int
    recent: int  # of them begun within FOLLOWED: more may follow
    followed: int
    square: FourFold
    expected: float  # reactions, had this lot the rate of all sets together
    low: float  # of the rate's interval
    high: float
    drawn: Drawn | None  # None: too few to learn how much lots differ
    stands_out: bool

    @property
    def rate(self) -> float:
        return self.followed / self.sets


@dataclass(frozen=True, slots=True)
class Watch:
    """All lots of a studio, those to look at first; ``sets`` and ``followed`` are of all, lot known or not."""

    lots: Sequence[Lot]
    sets: int
    followed: int
    chance: float  # the owner's level

    @property
    def one_in(self) -> int:
        """Of so many lots like the rest one may ever be marked."""
        return round(1 / self.chance)


def watch(studio: Studio, now: datetime) -> Watch:
    """Count and weigh everything on record up to ``now``. Seven queries, however many sets there are."""
    sets = _per_adhesive(_sets(studio, now))
    recent = _per_adhesive(_sets(studio, now).filter(starts_at__gt=now - FOLLOWED))
    hits = Counter(one.visit.adhesive_id for one in followed(studio, now))
    chance = facts.rules_of(studio).lot_chance
    known = [adhesive for adhesive in studio.adhesives.select_related("set_aside_by", "looked_by") if adhesive.lot]
    worn = [adhesive for adhesive in known if sets[adhesive.pk]]
    all_sets, all_hits = sets.total(), hits.total()
    expected = {one.pk: sets[one.pk] * all_hits / all_sets for one in worn}
    law = _law([hits[one.pk] for one in worn], [expected[one.pk] for one in worn])
    lots = []
    for one in worn:
        own, found = sets[one.pk], hits[one.pk]
        rest, others = all_sets - own, all_hits - found
        low, high = wilson(found, own)
        lots.append(
            Lot(
                adhesive=one,
                sets=own,
                recent=recent[one.pk],
                followed=found,
                square=FourFold(found, own - found, others, rest - others),
                expected=expected[one.pk],
                low=low,
                high=high,
                drawn=_drawn(law, found, expected[one.pk]),
                stands_out=is_worse(found, own, others, rest, chance),
            )
        )
    lots.sort(key=lambda lot: (not lot.stands_out, -lot.followed, -lot.sets, lot.adhesive.pk))
    return Watch(lots, all_sets, all_hits, chance)


def followed(studio: Studio, until: datetime) -> list[Followed]:
    """Return the sets that a reaction on record followed, each client once a lot, in the order of the reactions."""
    found: dict[tuple[int, ...], Followed] = {}
    for visit, reaction in _pairs(studio, None, until):
        lot = visit.adhesive if visit.adhesive and visit.adhesive.lot else None
        own = found.setdefault((lot.pk, reaction.client_id) if lot else (visit.pk,), Followed(visit))
        own.reactions.append(reaction)
    return list(found.values())


def each_followed(studio: Studio, since: datetime, until: datetime) -> list[Followed]:
    """Return every set that a reaction on record from ``since`` on followed, however many of one client."""
    found: dict[int, Followed] = {}
    for visit, reaction in _pairs(studio, since, until):
        found.setdefault(visit.pk, Followed(visit)).reactions.append(reaction)
    return list(found.values())


def _pairs(studio: Studio, since: datetime | None, until: datetime) -> list[tuple[Visit, Reaction]]:
    """Return the reactions on record with the set that each followed, in their order. Two queries."""
    rows = Reaction.objects.filter(client__studio=studio, at__lte=until)
    if since is not None:
        rows = rows.filter(at__gte=since)
    reactions = list(rows.select_related("visit").order_by("at", "pk"))
    theirs = _sets(studio, until).filter(client__in={one.client_id for one in reactions})
    before = _by_client(theirs.select_related("adhesive"))
    sets = ((_set_of(reaction, before.get(reaction.client_id, [])), reaction) for reaction in reactions)
    return [(visit, reaction) for visit, reaction in sets if visit is not None]


def wearers(adhesive: Adhesive, now: datetime) -> list[Visit]:
    """Return the newest set with this lot of each client who had one within WORN, newest first."""
    rows = _sets(adhesive.studio, now).filter(adhesive=adhesive, starts_at__gt=now - WORN)
    newest: dict[int, Visit] = {}
    for visit in rows.select_related("client", "artist").order_by("-starts_at", "-pk"):
        newest.setdefault(visit.client_id, visit)
    return list(newest.values())


def _sets(studio: Studio, until: datetime) -> QuerySet[Visit]:
    return Visit.objects.filter(studio=studio, service__in=SETS, status=Visit.Status.DONE, starts_at__lte=until)


def _per_adhesive(rows: QuerySet[Visit]) -> Counter[int | None]:
    return Counter(dict(rows.order_by().values_list("adhesive").annotate(Count("pk"))))


def _by_client(rows: Iterable[Visit]) -> dict[int, list[Visit]]:
    found: dict[int, list[Visit]] = {}
    for visit in rows:
        found.setdefault(visit.client_id, []).append(visit)
    return found


def _set_of(reaction: Reaction, sets: Sequence[Visit]) -> Visit | None:
    """Return the set that a reaction belongs to. ``sets``: the client's, oldest first."""
    if reaction.visit_id is not None:
        near = [visit for visit in sets if visit.pk == reaction.visit_id]
    else:
        near = [visit for visit in sets if visit.starts_at <= reaction.at][-1:]
    return next((visit for visit in near if timedelta(0) <= reaction.at - visit.starts_at <= FOLLOWED), None)


def _law(hits: Sequence[int], expected: Sequence[float]) -> GammaPoisson | None:
    enough = len(hits) >= FEWEST and sum(hits) >= FEWEST_REACTIONS
    return GammaPoisson.fit(hits, expected) if enough else None


def _drawn(law: GammaPoisson | None, hits: int, expected: float) -> Drawn | None:
    if law is None:
        return None
    own = law.after(hits, expected)
    return Drawn(own.middle, own.quantile(0.05), own.quantile(0.95))
