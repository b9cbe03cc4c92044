"""A studio, and a span of it."""

from __future__ import annotations

import pytest

from aftercare.figures import Span
from tests import cast as casting
from tests.cast import Cast


@pytest.fixture
def cast(db: None) -> Cast:
    return casting.make()


@pytest.fixture
def span(cast: Cast) -> Span:
    """The last hundred days."""
    return Span(cast.studio, cast.at(0, -100), cast.now, "month")
