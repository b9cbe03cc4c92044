"""What every test starts from."""

from __future__ import annotations

import pytest

from aftercare.transports import memory


@pytest.fixture(autouse=True)
def nothing_sent() -> None:
    """Empty what the memory transport was given by the test before."""
    memory.taken.clear()
