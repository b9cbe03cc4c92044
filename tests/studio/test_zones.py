from __future__ import annotations

import pytest

from studio.zones import is_zone


@pytest.mark.parametrize("name", ["America/New_York", "US/Eastern", "UTC", "EST5EDT"])
def test_a_name_of_the_tz_database_is_a_zone(name: str) -> None:
    assert is_zone(name)


@pytest.mark.parametrize("name", ["", "america/new_york", "Mars/Base", "../etc/passwd", "localtime", "Factory"])
def test_what_is_no_place_or_differs_from_machine_to_machine_is_none(name: str) -> None:
    assert not is_zone(name)
