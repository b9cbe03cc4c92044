"""From a population and one client's readings to what is left of the very set that she wears."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from functools import cached_property

import numpy as np

from aftercare.core.shedding import numbers as made
from aftercare.core.shedding.fitting import ready
from aftercare.core.shedding.lattice import Lattice
from aftercare.core.shedding.likelihood import chances, emissions, forward, kernels_of
from aftercare.core.shedding.population import Population
from aftercare.core.shedding.records import Ints, kind_of, kinds_of, pack
from aftercare.core.shedding.renewal import Floats
from aftercare.core.shedding.values import Curve, Forecast, History, LashSet, Loss, Quantiles

LEVELS = (0.6, 0.4)
DAYS = tuple(range(0, 100, 2))
SHAPE = (14, 44)
AT_ONCE = 1000  # clients
QUANTILES = (0.1, 0.5, 0.9)
# Of the clients with a tenth of their set left half call it worn, of those with next to nothing hardly any; but now and
# then nobody knows what became of a set. Common practice, no source.
BARELY, NOT_KNOWN = 0.1, 0.02
TOLD_APART = 0.75  # of the population's band: one that is no narrower tells nothing of her own
Z80 = 1.2816  # half the 80 % band of a normal law, in standard deviations


@dataclass(frozen=True)
class Forecaster:
    """What is the same in all forecasts from one population, reckoned once."""

    population: Population

    @cached_property
    def lattice(self) -> Lattice:
        """A lattice that holds nearly all clients of this population."""
        return made.lattice_around(self.population.numbers, SHAPE, self.population.covariance)

    @cached_property
    def start(self) -> Floats:
        """The share of clients at each node of whom nothing is known yet: (cycles, hazards), sum 1."""
        return made.clients(self.lattice, self.population.numbers, self.population.covariance)

    @cached_property
    def move(self) -> Floats:
        """The chance of each log hazard at her next set, given that at this one: (hazards, hazards)."""
        return made.turns(self.lattice, self.population.numbers)

    @cached_property
    def spread(self) -> float:
        """The coefficient of variation of one client's cycles."""
        return made.spread(self.population.numbers)

    @cached_property
    def left(self) -> Floats:
        """What is left after each of DAYS at each node: (days, nodes)."""
        return self.lattice.left(DAYS, self.spread).reshape(len(DAYS), -1)

    @cached_property
    def left_order(self) -> tuple[Ints, Floats]:
        """For each of DAYS the nodes in the order of what is left, and what is left in that order."""
        order = np.argsort(self.left, axis=1)
        return order, np.take_along_axis(self.left, order, axis=1)

    @cached_property
    def shed(self) -> Floats:
        """Of what is lost by each of DAYS, how much went with its natural lash: (days, nodes), shares of the set.

        Both causes act on what is left: the part of shedding is the integral of -A'(t) exp(-hazard t).
        """
        days = np.arange(0, DAYS[-1] + 0.25, 0.25)
        kept, held = self.lattice.kept(days, self.spread), self.lattice.held(days)
        middle = (held[1:] + held[:-1]) / 2
        lost = np.cumsum(-np.diff(kept, axis=0)[:, :, None] * middle[:, None, :], axis=0)
        lost = np.concatenate([np.zeros((1, *self.lattice.shape)), lost])
        return np.asarray(lost[:: 4 * (DAYS[1] - DAYS[0])].reshape(len(DAYS), -1))

    @cached_property
    def usual_split(self) -> tuple[Floats, Floats]:
        """For each of DAYS how wide the band of shedding's part in the loss is where nothing is known of a client."""
        weights = (self.start @ made.luck(self.lattice, self.population.luck)).reshape(1, -1)
        bands = [_quantiles(self._part(number), weights)[0] for number in range(len(DAYS))]
        return np.array([band[2] - band[0] for band in bands]), weights

    def _part(self, number: int) -> Floats:
        """Shedding's part in the loss by one of DAYS, at each node."""
        return np.asarray(self.shed[number] / np.maximum(1 - self.left[number], 1e-9))

    @cached_property
    def _to_levels(self) -> dict[float, Floats]:
        return {}

    def days_to(self, level: float) -> Floats:
        """Return the days until what is left falls to ``level`` at each node: (nodes,); reckoned once a level."""
        if level not in self._to_levels:
            self._to_levels[level] = self.lattice.days_to(level, self.spread).reshape(-1)
        return self._to_levels[level]

    def weights(self, histories: Sequence[History], today: date | None) -> Floats:
        """Return how likely each node is for the set that each client wears: (clients, nodes), sums 1."""
        past = [tuple(one for one in history.past if one.seen) for history in histories]
        records = pack(past, self.population.steps)
        material = ready(records, self.population, self.lattice)
        found = emissions(
            material, chances(material, self.population.numbers), kernels_of(material, self.population.numbers)
        )
        known = np.empty((len(histories), *self.lattice.shape))
        known[records.order] = forward(material, found, self.start, self.move).after
        self._lots(known, histories)
        self._worn(known, histories, today)
        weights = known.reshape(len(histories), -1)
        return np.asarray(weights / weights.sum(axis=1, keepdims=True))

    def _lots(self, known: Floats, histories: Sequence[History]) -> None:
        """Give each set its luck, and what is known of its lot."""
        lots = [history.worn.lot if history.worn is not None else "" for history in histories]
        for lot in sorted(set(lots)):
            mine = np.array([one == lot for one in lots])
            effect = self.population.lot(lot)
            known[mine] = known[mine] @ made.luck(self.lattice, self.population.luck, effect.mean, effect.sd)

    def _worn(self, known: Floats, histories: Sequence[History], today: date | None) -> None:
        """Take into account what was seen of each worn set itself, and that it is still worn."""
        of_age: dict[int, list[int]] = defaultdict(list)
        for index, history in enumerate(histories):
            worn = history.worn
            if worn is not None and worn.seen:
                known[index] *= self._seen(worn)
            if worn is not None and today is not None and worn.on < today:
                of_age[(today - worn.on).days].append(index)
        for age, alike in of_age.items():
            left = self.lattice.left([age], self.spread)[0]
            known[alike] *= NOT_KNOWN + (1 - NOT_KNOWN) * left**2 / (left**2 + BARELY**2)
        cannot_be = np.flatnonzero(~(known.sum(axis=(1, 2)) > 0))
        for worn in (histories[int(index)].worn for index in cannot_be):
            if worn is not None:
                raise ValueError(f"the readings of the set of {worn.on} cannot be: check their days and shares")

    def _seen(self, worn: LashSet) -> Floats:
        """How likely each node makes what was seen of this set."""
        kinds = kinds_of([kind_of(worn, which, self.population.steps) for which in range(len(worn.seen))])
        bias = np.array([self.population.bias(artist) for artist in kinds.artist])
        left = self.lattice.left(kinds.day, self.spread)
        return np.asarray(made.eye(self.population.numbers).chance(left, kinds.share, kinds.step, bias).prod(axis=0))

    def days(self, weights: Floats, level: float) -> Floats:
        """Return the quantiles of the days until what is left falls to ``level``: (clients, 3)."""
        return _quantiles(self.days_to(level), weights)

    def curve(self, weights: Floats) -> Curve:
        """Return the curve of one client, from her weights (nodes,)."""
        order, values = self.left_order
        low, middle, high = _of_sorted(values, weights[order]).T
        numbers = self.population.numbers
        error = np.hypot(np.exp(numbers.eye), self.population.steps.studio / np.sqrt(12))
        # So many of the readings that are not plainly wrong must lie within for 80 % of all to do so.
        reach = Z80 * float(error) / (1 - made.logistic(numbers.wrong))
        return Curve(
            days=DAYS,
            low=_shares(low),
            middle=_shares(middle),
            high=_shares(high),
            read_low=_shares(middle - np.hypot(middle - low, reach)),
            read_high=_shares(middle + np.hypot(high - middle, reach)),
        )

    def loss(self, weights: Floats, day: float) -> Loss:
        """Return what is lost of one client's set by ``day``, by cause; days past the last of DAYS stand for it."""
        number = min(range(len(DAYS)), key=lambda index: abs(DAYS[index] - day))
        lost = 1 - self.left[number]
        shed = _quantiles(self.shed[number], weights[None])[0]
        bonds = _quantiles(lost - self.shed[number], weights[None])[0]
        part = _quantiles(self._part(number), weights[None])[0]
        told = bool(part[2] - part[0] <= TOLD_APART * self.usual_split[0][number])
        return Loss(float(DAYS[number]), Quantiles(*shed.tolist()), Quantiles(*bonds.tolist()), told)


def forecast(
    population: Population,
    histories: Sequence[History],
    *,
    levels: Sequence[float] = LEVELS,
    today: date | None = None,
    curves: bool = True,
    forecaster: Forecaster | None = None,
) -> list[Forecast]:
    """Return a forecast for each client, in the order given.

    ``today`` is the day on which her set is known to be worn still; None says nothing of that. A client without a worn
    set gets the forecast of her next one. ``curves`` also asks for the curve and the loss by cause, which take longer.
    Raises ValueError where readings cannot be.
    """
    made_once = forecaster or Forecaster(population)
    found: list[Forecast] = []
    for start in range(0, len(histories), AT_ONCE):
        some = histories[start : start + AT_ONCE]
        weights = made_once.weights(some, today)
        days = {level: made_once.days(weights, level) for level in levels}
        for index, history in enumerate(some):
            found.append(
                Forecast(
                    client=history.client,
                    days={level: Quantiles(*days[level][index].tolist()) for level in levels},
                    curve=made_once.curve(weights[index]) if curves else None,
                    loss=made_once.loss(weights[index], float(days[levels[0]][index, 1])) if curves else None,
                    readings=sum(len(one.seen) for one in history.past)
                    + (len(history.worn.seen) if history.worn is not None else 0),
                )
            )
    return found


def _quantiles(values: Floats, weights: Floats) -> Floats:
    """Return QUANTILES of ``values`` (nodes,) under each row of ``weights``: (rows, 3)."""
    order = np.argsort(values)
    return _of_sorted(np.broadcast_to(values[order], weights.shape), weights[:, order])


def _of_sorted(values: Floats, weights: Floats) -> Floats:
    """Return QUANTILES of each row of sorted values; between two nodes half of each one's weight is passed evenly."""
    total = np.cumsum(weights, axis=1)
    passed = (total - weights / 2) / total[:, -1:]
    found = np.empty((len(passed), len(QUANTILES)))
    rows, last = np.arange(len(passed)), passed.shape[1] - 1
    for number, quantile in enumerate(QUANTILES):
        above = np.clip((passed < quantile).sum(axis=1), 1, last)
        below_at, above_at = passed[rows, above - 1], passed[rows, above]
        part = np.clip((quantile - below_at) / np.maximum(above_at - below_at, 1e-12), 0, 1)
        found[:, number] = values[rows, above - 1] * (1 - part) + values[rows, above] * part
    return found


def _shares(values: Floats) -> tuple[float, ...]:
    return tuple(np.round(np.clip(values, 0, 1), 4).tolist())
