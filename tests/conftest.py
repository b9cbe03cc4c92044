"""What every test starts from."""

from __future__ import annotations

import pytest
from django.utils import translation

from aftercare.transports import memory


@pytest.fixture(autouse=True)
def plain_english() -> None:
    """Begin in English: a page that was fetched in this process leaves the language of whoever saw it behind."""
    translation.deactivate()


@pytest.fixture(autouse=True)
def nothing_sent() -> None:
    """Empty what the memory transport was given by the test before."""
    memory.taken.clear()
