"""A studio, another one, and ways in."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from django.test import Client as Browser

from studio.models import Staff
from tests.aftercare.views import cast as casting
from tests.aftercare.views.cast import Cast


@pytest.fixture
def cast(db: None) -> Cast:
    """A studio with its staff and no clients."""
    return casting.make()


@pytest.fixture
def morning_cast(cast: Cast) -> Cast:
    """The same with one of everything."""
    return casting.full_morning(cast)


@pytest.fixture
def strangers(db: None) -> Cast:
    """Another studio, just as full."""
    return casting.full_morning(casting.make("larkhill", "Larkhill Lashes"))


@pytest.fixture
def as_(db: None) -> Callable[[Staff], Browser]:
    """Sign someone in."""

    def sign_in(staff: Staff) -> Browser:
        assert staff.user is not None
        browser = Browser()
        browser.force_login(staff.user)
        return browser

    return sign_in
