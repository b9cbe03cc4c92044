"""Each fault of what lies outside the service, small; ``tests/faults/outside.py`` has them in full."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.faults.outside import FAULTS

pytestmark = pytest.mark.servers


@pytest.mark.parametrize("name", FAULTS)
def test_nothing_is_lost_and_nothing_comes_twice_but_by_policy(name: str, tmp_path: Path) -> None:
    happen, why_not = FAULTS[name]
    if reason := why_not():
        pytest.skip(reason)

    _figures, faults = happen(tmp_path, True)

    assert faults == []
