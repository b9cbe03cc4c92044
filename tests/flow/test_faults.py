"""Each fault of a carrier's bind once and small; ``python tests/faults/all.py`` does them at full size."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests import servers
from tests.faults.all import REGISTRY

pytestmark = [
    pytest.mark.servers,
    pytest.mark.skipif(not servers.has_postgres(), reason="PostgreSQL is not installed"),
]
# Those that wait for leases take a minute and more: they are the command's alone.
QUICK = ("gone", "receipts", "throttled")


@pytest.mark.parametrize("name", QUICK)
def test_what_is_due_arrives_once_and_comes_to_rest(name: str, tmp_path: Path) -> None:
    assert REGISTRY[name](tmp_path, True).faults == []
