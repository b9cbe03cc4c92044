from __future__ import annotations

import time

import pytest

from studio.turns import PAUSE_SECONDS, in_turns


def test_rows_come_in_lists_of_at_most_so_many_and_none_is_lost() -> None:
    assert list(in_turns(iter(range(5)), 5)) == [[0, 1, 2, 3, 4]]
    assert list(in_turns([], 5)) == []


@pytest.mark.django_db(transaction=True)
def test_others_are_let_in_between_two_lists_alone() -> None:
    began = time.monotonic()
    found = []
    for batch in in_turns(range(5), 2):
        found.append((batch, time.monotonic() - began))

    assert [batch for batch, _at in found] == [[0, 1], [2, 3], [4]]
    assert found[2][1] >= 2 * PAUSE_SECONDS
