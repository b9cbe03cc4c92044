"""What is known of a studio's clients as a whole: the start of every forecast."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

import numpy as np

from aftercare.core.shedding.numbers import BEFORE, BEFORE_SD, Numbers
from aftercare.core.shedding.records import Steps
from aftercare.core.shedding.renewal import Floats

LOTS_DIFFER = 0.06  # in log hazard, as a standard deviation: what a lot of which nothing is known may do


@dataclass(frozen=True, slots=True)
class Effect:
    """What a lot of adhesive does to the log hazard of its bonds, or an artist's eye to a share: mean and sd."""

    mean: float
    sd: float


@dataclass(frozen=True)
class Population:
    """The numbers of a studio's clients, how sure they are, and what is known of lots and eyes."""

    numbers: Numbers
    unsure: tuple[tuple[float, float], tuple[float, float]]  # covariance of the log medians of cycle and hazard
    luck_unsure: float = BEFORE_SD.luck  # standard deviation of the log of the spread of luck
    lots: Mapping[str, Effect] = field(default_factory=dict)
    artists: Mapping[str, Effect] = field(default_factory=dict)
    steps: Steps = field(default_factory=lambda: Steps(0.05, {}))
    clients: int = 0  # with a reading
    readings: int = 0

    @classmethod
    def prior(cls) -> Population:
        """Return what is believed of a studio that has shown nothing yet."""
        return cls(BEFORE, ((BEFORE_SD.cycle**2, 0.0), (0.0, BEFORE_SD.hazard**2)))

    @property
    def covariance(self) -> Floats:
        """``unsure`` as an array: (2, 2), of the log medians of cycle and hazard."""
        return np.array(self.unsure)

    @property
    def luck(self) -> Numbers:
        """The numbers with the spread of luck as it is on average, over how unsure it is: squares count."""
        return self.numbers._replace(luck=self.numbers.luck + self.luck_unsure**2)

    def lot(self, name: str) -> Effect:
        """Return what is known of a lot; '' is a set whose lot was not noted: then it is part of the set's luck."""
        return self.lots.get(name, Effect(0.0, LOTS_DIFFER if name else 0.0))

    def bias(self, artist: str) -> float:
        """Return by how much an artist reads above the others, as a share."""
        return self.artists[artist].mean if artist in self.artists else 0.0

    def to_dict(self) -> dict[str, Any]:
        """Return it as what JSON can hold."""
        return {
            "numbers": self.numbers._asdict(),
            "unsure": [list(row) for row in self.unsure],
            "luck_unsure": self.luck_unsure,
            "lots": {name: [one.mean, one.sd] for name, one in self.lots.items()},
            "artists": {name: [one.mean, one.sd] for name, one in self.artists.items()},
            "steps": {"studio": self.steps.studio, "artists": self.steps.artists},
            "clients": self.clients,
            "readings": self.readings,
        }

    @classmethod
    def from_dict(cls, given: Mapping[str, Any]) -> Population:
        """Return what ``to_dict`` wrote. Raises KeyError or TypeError where it did not."""
        (a, b), (c, d) = given["unsure"]
        return cls(
            numbers=Numbers(**given["numbers"]),
            unsure=((a, b), (c, d)),
            luck_unsure=given["luck_unsure"],
            lots={name: Effect(*pair) for name, pair in given["lots"].items()},
            artists={name: Effect(*pair) for name, pair in given["artists"].items()},
            steps=Steps(given["steps"]["studio"], dict(given["steps"]["artists"])),
            clients=given["clients"],
            readings=given["readings"],
        )
