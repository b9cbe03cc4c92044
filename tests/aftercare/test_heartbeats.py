from __future__ import annotations

from datetime import timedelta

import pytest

from aftercare import heartbeats
from aftercare.heartbeats import EVERY
from tests.people import NOW

pytestmark = pytest.mark.django_db


def test_a_round_is_noted_but_not_each_second() -> None:
    heartbeats.finished("sweep", now=NOW)
    heartbeats.finished("sweep", now=NOW + EVERY / 2)
    assert heartbeats.last("sweep") == {"sweep": NOW}

    heartbeats.finished("sweep", now=NOW + EVERY)

    assert heartbeats.last("sweep") == {"sweep": NOW + EVERY}


def test_those_whose_name_begins_alike_are_told_together() -> None:
    for name in ("refit:1", "refit:22", "sweep"):
        heartbeats.finished(name, now=NOW)

    assert heartbeats.last("refit:") == {"refit:1": NOW, "refit:22": NOW}


def test_a_clock_that_was_set_back_is_believed() -> None:
    heartbeats.finished("sweep", now=NOW)

    heartbeats.finished("sweep", now=NOW - timedelta(hours=1))

    assert heartbeats.last("sweep") == {"sweep": NOW - timedelta(hours=1)}


def test_a_part_is_late_once_its_last_round_is_too_long_ago_or_where_it_had_none() -> None:
    late = timedelta(seconds=20)
    assert heartbeats.is_late("sweep", late, now=NOW)

    heartbeats.finished("sweep", now=NOW)

    assert not heartbeats.is_late("sweep", late, now=NOW + timedelta(seconds=19))
    assert heartbeats.is_late("sweep", late, now=NOW + timedelta(seconds=20))
    assert heartbeats.is_late("sweep", late, now=NOW - timedelta(hours=1)), "a clock that was set back is believed"
