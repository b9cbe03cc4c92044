"""A real browser on a real server: the system's own chromium, never a downloaded one."""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from django.test import override_settings
from playwright.sync_api import Browser, ConsoleMessage, Page, sync_playwright

from studio.models import Staff
from tests import cast as casting
from tests.cast import PASSWORD, Cast

CHROMIUM = shutil.which("chromium") or "/usr/bin/chromium"
ARGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-dev-shm-usage",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
# WCAG 2.2, levels A and AA, as axe-core names them.
STANDARD = {"runOnly": {"type": "tag", "values": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]}}
WIDTHS = (390, 1280)
SCHEMES = ("light", "dark")


@dataclass
class Visitor:
    """Someone at a browser, who notes what its console complains of."""

    page: Page
    address: str
    complaints: list[str] = field(default_factory=list)

    def open(self, path: str) -> Page:
        """Go to a page of the server and wait until it stands."""
        response = self.page.goto(f"{self.address}{path}")
        assert response is not None
        assert response.status == 200, f"{path}: {response.status}"
        return self.page

    def sign_in(self, staff: Staff) -> None:
        """Sign in by the form."""
        assert staff.user is not None
        self.open("/sign-in")
        self.page.get_by_label("E-mail").fill(staff.user.email)
        self.page.get_by_label("Password").fill(PASSWORD)
        self.page.get_by_role("button", name="Sign in").click()
        self.page.wait_for_url("**/today")

    def violations(self) -> list[str]:
        """Return what axe finds on the page as it stands: rule, how grave, and where."""
        found = Axe().run(self.page, options=STANDARD).response["violations"]
        return [f"{one['id']} ({one['impact']}): {node['html'][:160]}" for one in found for node in one["nodes"]]


@pytest.fixture(scope="session")
def chromium() -> Iterator[Browser]:
    """One browser for all tests."""
    if not Path(CHROMIUM).exists():
        pytest.skip("there is no chromium here: install it by apt-get install chromium")
    # The browser's own loop runs in this thread, and Django would take every query beside it for a mistake.
    os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "true"
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=ARGS)
        yield browser
        browser.close()
    del os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"]


@pytest.fixture(scope="session", autouse=True)
def quiet_static(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """Let the middleware find a folder of static files: nobody collected any for a test."""
    with override_settings(STATIC_ROOT=tmp_path_factory.mktemp("static")):
        yield


@pytest.fixture
def visit(chromium: Browser, live_server: Any) -> Iterator[Callable[..., Visitor]]:
    """Open a browser window: ``visit(width, scheme)``."""
    contexts = []

    def open_window(width: int = 390, scheme: str = "light") -> Visitor:
        height = 844 if width < 600 else 900
        context = chromium.new_context(viewport={"width": width, "height": height}, color_scheme=scheme)  # type: ignore[arg-type]  # one of SCHEMES
        contexts.append(context)
        visitor = Visitor(context.new_page(), live_server.url)
        visitor.page.set_default_timeout(10_000)

        def note(message: ConsoleMessage) -> None:
            if message.type in ("error", "warning"):
                visitor.complaints.append(message.text)

        visitor.page.on("console", note)
        return visitor

    yield open_window
    for context in contexts:
        context.close()


@pytest.fixture
def morning_cast(transactional_db: None) -> Cast:
    """A studio with one of everything."""
    return casting.full_morning(casting.make())


@pytest.fixture
def empty_cast(transactional_db: None) -> Cast:
    """A studio with its staff and nothing else."""
    return casting.make("empty", "A Studio With Nothing In It And A Rather Long Name")
