"""Every kind of message by every road, from visits to a receipt, and what is answered to each: see every_road.py."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from typing import Any

import pytest

from aftercare.core.occasions import Occasion
from tests import kannel
from tests.services import ROOT

pytestmark = pytest.mark.servers
TEXT_ROADS, MAIL_ROADS = {"http", "smpp"}, {"smtp", "anymail"}


@pytest.fixture(scope="module")
def found() -> dict[str, Any]:
    """What the walk tells; it has a process and a database of its own."""
    kept = {name: value for name, value in os.environ.items() if name in ("PATH", "HOME", "LANG", "TMPDIR")}
    command = [sys.executable, "tests/flow/every_road.py", "--json"]
    done = subprocess.run(command, cwd=ROOT, env=kept, capture_output=True, text=True, timeout=100, check=False)
    assert done.stdout, done.stderr[-3000:]
    told: dict[str, Any] = json.loads(done.stdout.splitlines()[-1])
    return told


def cells(found: dict[str, Any], key: str) -> dict[tuple[str, str], int]:
    return {(cell["road"], cell["kind"]): cell[key] for cell in found["cells"] if cell[key] is not None}


def test_every_kind_is_walked_by_every_road(found: dict[str, Any]) -> None:
    texts = TEXT_ROADS | ({"kannel"} if kannel.is_there() else set())
    kinds = {occasion.value for occasion in Occasion}

    # Introductions go ahead of texts alone.
    everything = {(road, kind) for road in texts | MAIL_ROADS for kind in kinds}
    assert set(cells(found, "wanted")) == everything - {(road, "opt_in") for road in MAIL_ROADS}


def test_each_is_handed_over_once_and_delivered_where_the_road_gives_receipts(found: dict[str, Any]) -> None:
    wanted = cells(found, "wanted")

    assert all(wanted.values())
    assert cells(found, "handed_over") == wanted
    assert cells(found, "delivered") == {key: number for key, number in wanted.items() if key[0] != "smtp"}
    for taken, tried in found["also"]["taken, tried"].values():
        assert taken == tried > 0


def test_what_she_answers_stands_on_the_list_of_the_studio_that_she_wrote_to_and_on_no_other(
    found: dict[str, Any],
) -> None:
    heard = cells(found, "heard")

    assert len(heard) == 7 * len({road for road, _ in heard})
    assert set(heard.values()) == {2}  # she is a client of both studios of a road, and has written to each


def test_what_comes_in_to_a_second_line_on_another_road_is_answered_by_that_line(found: dict[str, Any]) -> None:
    assert found["also"]["second line"] == {"http-a by smpp": "delivered", "smpp-a by http": "delivered"}


def test_a_text_to_a_number_that_is_no_lines_is_kept_and_goes_to_the_line_that_has_it_later(
    found: dict[str, Any],
) -> None:
    assert found["also"]["nobody's number"] == {"smpp": "taken up", "http": "taken up"}
