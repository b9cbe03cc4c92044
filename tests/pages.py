"""Fixtures for tests of pages: a studio, another one, and ways in. A folder's conftest names those that it uses."""

from __future__ import annotations

import html
import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from django.core.cache import cache
from django.test import Client as Browser

from studio.models import Staff
from tests import cast as casting
from tests.cast import Cast

SignIn = Callable[[Staff], Browser]


def words(response: Any) -> str:
    """Return what a page says: its main part without tags, on one line."""
    page = response.content.decode()
    main = page[page.index("<main") :]
    return " ".join(html.unescape(re.sub(r"<[^>]+>", " ", main)).split())


@pytest.fixture(autouse=True)
def quiet_static(settings: Any, tmp_path: Path) -> None:
    """Let the middleware find a folder of static files: nobody collected any for a test."""
    settings.STATIC_ROOT = tmp_path


@pytest.fixture(autouse=True)
def quick_sign_in(settings: Any) -> None:
    """Hash passwords cheaply, and forget who failed to sign in during the test before."""
    settings.PASSWORD_HASHERS = ["django.contrib.auth.hashers.MD5PasswordHasher"]
    cache.clear()


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
def as_(db: None) -> SignIn:
    """Sign someone in."""

    def sign_in(staff: Staff) -> Browser:
        assert staff.user is not None
        browser = Browser()
        browser.force_login(staff.user)
        return browser

    return sign_in
