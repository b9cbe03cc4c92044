"""One kill -9 of the embedded service while it sends; ``tests/faults/kill_embedded.py`` does it again and again."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from tests.faults.kill_embedded import run

pytestmark = [
    pytest.mark.servers,
    pytest.mark.skipif(not sys.platform.startswith("linux"), reason="looks at processes through /proc"),
]


def test_killed_at_once_while_it_sends_it_loses_nothing_and_sends_nothing_twice_but_by_policy(tmp_path: Path) -> None:
    result = run(tmp_path, kills=1, messages=100, seed=1, pause=0.02, patience=10)

    assert result.judge() == []
