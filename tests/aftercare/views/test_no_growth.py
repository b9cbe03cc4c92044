"""Pages ask as many things of the database with thirty clients as with three."""

from __future__ import annotations

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from studio.models import Service
from tests.cast import Cast
from tests.forecasts import forecast
from tests.pages import SignIn

PAGES = {
    "morning": "/morning?artist=all",
    "day sheet": "/today?artist=all",
    "card": "/clients/{client}",
    "messages going": "/messages",
    "messages gone": "/messages?group=gone",
    "clients": "/clients",
    "figures": "/figures?period=year",
}
MOST = 15


def add(cast: Cast, clients: int) -> None:
    """Add clients who have had a set, wrote, have something that did not arrive, and come in today."""
    for _number in range(clients):
        her = cast.client(f"Person{len(cast.clients)}", "Quist", sensitive=True)
        done = cast.done(her, cast.at(9, -20), Service.FULL_SET, share_left=60)
        forecast(done, cast.at(10, -20))
        cast.visit(her, cast.at(12))
        cast.gone(her, done, "care", cast.at(12, -1), state="undelivered", reason="No such number.")
        cast.gone(her, done, "check", cast.at(12, -2))
        cast.wrote(her, "one of them pokes me", cast.at(6), urgency="watch")
    cast.plan()


@pytest.mark.parametrize("who", ["olga", "ada"])
@pytest.mark.parametrize("page", PAGES)
def test_thirty_clients_cost_no_more_queries_than_three(page: str, who: str, cast: Cast, as_: SignIn) -> None:
    add(cast, 3)
    browser = as_(getattr(cast, who))
    address = PAGES[page].format(client=cast.clients["Person0"].pk)
    few = queries(browser, address)

    add(cast, 27)

    assert queries(browser, address) == few
    assert few <= MOST


def queries(browser: object, address: str) -> int:
    with CaptureQueriesContext(connection) as seen:
        answer = browser.get(address)  # type: ignore[attr-defined]  # a test's browser
    assert answer.status_code == 200
    return len(seen)
