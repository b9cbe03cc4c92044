"""Clients' readings as arrays."""

from __future__ import annotations

from datetime import date, timedelta

import numpy as np
import pytest

from aftercare.core.shedding import History, LashSet, Seen
from aftercare.core.shedding.eye import FINEST
from aftercare.core.shedding.records import MOST_SETS, Steps, kind_of, kinds_of, pack, seen_sets

DAY = date(2027, 1, 4)


def lash_set(*read: tuple[int, float, str], on: date = DAY, lot: str = "") -> LashSet:
    return LashSet(on, lot, tuple(Seen(on + timedelta(days), share, artist) for days, share, artist in read))


def test_only_sets_of_which_something_was_seen_count_with_the_worn_one_last() -> None:
    first, unseen, worn = lash_set((20, 0.5, "Ada")), lash_set(), lash_set((7, 0.9, "Ada"), on=DAY + timedelta(40))

    assert seen_sets(History("Mia", (first, unseen), worn)) == (first, worn)
    assert seen_sets(History("Mia", (unseen,), lash_set())) == ()
    assert seen_sets(History("Mia", (first,))) == (first,)


def test_clients_stand_by_how_many_sets_they_have_and_equal_readings_are_stored_once() -> None:
    twice = (lash_set((21, 0.5, "Ada")), lash_set((18, 0.6, "Ada"), lot="7"))
    once = (lash_set((21, 0.5, "Ada")),)

    records = pack([once, (), twice], Steps(0.05, {}))

    assert records.order.tolist() == [2, 0, 1]
    assert records.count.tolist() == [2, 1, 0]
    assert records.kinds.day.tolist() == [21, 18]
    assert records.kinds.share == pytest.approx([0.5, 0.6])
    assert records.kind.tolist() == [[0, 1], [0, -1], [-1, -1]]
    assert [records.lots[lot] for lot in records.lot[0]] == ["", "7"]


def test_the_last_reading_of_a_set_counts() -> None:
    records = pack([(lash_set((7, 0.9, "Noor"), (21, 0.5, "Ada")),)], Steps(0.05, {}))

    assert (records.kinds.day.tolist(), records.kinds.artist) == ([21], ("Ada",))


def test_of_very_many_sets_the_newest_count() -> None:
    hers = tuple(lash_set((day, 0.5, "Ada")) for day in range(1, MOST_SETS + 6))

    records = pack([hers], Steps(0.05, {}))

    assert records.kinds.day.tolist() == list(range(6, MOST_SETS + 6))


def test_nobody_at_all_is_packed_as_nothing() -> None:
    records = pack([], Steps(0.05, {}))

    assert (records.order.size, records.kinds.day.size, records.lots) == (0, 0, ("",))
    assert kinds_of([]).artist == ()


def test_a_reading_is_written_in_the_step_of_whoever_made_it() -> None:
    steps = Steps(0.05, {"Noor": 0.25})
    one = lash_set((20, 0.62, "Ada"), (21, 0.62, "Noor"))

    assert kind_of(one, 0, steps) == (20, 0.6, 0.05, "Ada")
    assert kind_of(one, 1, steps) == (21, 0.5, 0.25, "Noor")
    assert kind_of(lash_set((20, 0.613, "")), 0, Steps(0.0, {}))[1:3] == (0.625, FINEST)


def test_each_artist_s_step_is_told_and_who_read_little_takes_the_studio_s() -> None:
    chance = np.random.default_rng(3)
    coarse = [(lash_set((20, round(float(share) * 4) / 4, "Noor")),) for share in chance.uniform(0.1, 0.9, 40)]
    usual = [(lash_set((20, round(float(share) * 10) / 10, "Ada")),) for share in chance.uniform(0.1, 0.9, 60)]

    steps = Steps.of([*coarse, *usual, (lash_set((20, 0.5, "Ben")),)])

    assert steps.artists["Noor"] == 0.25
    assert steps.artists["Ada"] == 0.1
    assert steps.at("Ben") == steps.at("somebody new") == steps.studio
