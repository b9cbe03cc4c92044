"""A text parted for a page."""

from __future__ import annotations

import pytest

from aftercare.pages.hers import Part, emergency, parts_of
from aftercare.wording import first_wording
from tests.people import make_client, make_studio


def test_lines_with_a_hyphen_are_the_points_of_a_list() -> None:
    parts = parts_of(["The first days:\n- dry\n- cool\nand so on", "", "Last - not a point"])

    assert parts == [
        Part(["The first days:"], is_list=False),
        Part(["dry", "cool"], is_list=True),
        Part(["and so on"], is_list=False),
        Part(["Last - not a point"], is_list=False),
    ]


@pytest.mark.django_db
@pytest.mark.parametrize(
    ("region", "number"), [("US", "911"), ("GB", "999"), ("ES", "112"), ("AU", "000"), ("NZ", "111"), ("BR", "")]
)
def test_the_emergency_names_the_number_of_the_country_or_none_rather_than_a_wrong_one(
    region: str, number: str
) -> None:
    # From memory: the emergency numbers of these countries.
    found = emergency(make_client(make_studio(region=region)), "en", first_wording)

    assert found.number == number
    assert "your local emergency number" in found.short
    (steps,) = found.parts
    assert len(steps.lines) == 4
    assert "rinse now" in steps.lines[1]
