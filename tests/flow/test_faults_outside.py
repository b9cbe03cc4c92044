"""Each fault of what lies outside the service, small; ``tests/faults/outside.py`` has them in full."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.faults.outside import FAULTS

pytestmark = pytest.mark.servers
VARIANTS = {"webhook_sqlite", "http_sms_keys", "postmark"}  # of one that is here: they are the command's alone


@pytest.mark.parametrize("name", [name for name in FAULTS if name not in VARIANTS])
def test_nothing_is_lost_and_nothing_comes_twice_but_by_policy(name: str, tmp_path: Path) -> None:
    happen, why_not = FAULTS[name]
    if reason := why_not():
        pytest.skip(reason)

    _figures, faults = happen(tmp_path, True)

    assert faults == []
