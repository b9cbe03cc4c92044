"""Each fault once and small; ``python tests/faults/all.py`` does them at full size, and those that take a minute."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.faults.all import FAULTS

pytestmark = pytest.mark.servers
# Those of one that is here, and those that wait for leases or for Redis to come back: they are the command's alone.
ELSEWHERE = {"webhook_sqlite", "http_sms_keys", "postmark"}
SLOW = {
    *("killed", "killed_sqlite", "dropped", "mute", "database"),
    *("workers", "workers_database", "redis_killed", "redis_frozen"),
}


@pytest.mark.parametrize("name", [name for name in FAULTS if name not in ELSEWHERE | SLOW])
def test_nothing_is_lost_and_nothing_comes_twice_but_by_policy(name: str, tmp_path: Path) -> None:
    happen, why_not = FAULTS[name]
    if reason := why_not():
        pytest.skip(reason)

    _figures, faults = happen(tmp_path, True)

    assert faults == []
