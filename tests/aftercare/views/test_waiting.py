"""How many open matters wait: in the menu of every page and on the day sheet."""

from __future__ import annotations

import re

import pytest

from aftercare.models import Flag
from tests.cast import Cast
from tests.pages import SignIn, words


def counted(page: str) -> str:
    found = re.search(r'<b class="count">(\d+)<', page)
    return found[1] if found else ""


@pytest.fixture
def two_of_adas_and_one_of_noors(cast: Cast) -> None:
    for name, artist in [("Mia", cast.ada), ("Zoe", cast.ada), ("Pia", cast.noor)]:
        her = cast.client(name)
        cast.done(her, cast.at(10, -2), artist=artist)
        cast.wrote(her, "it burns", cast.at(5), urgency="same_day")


@pytest.mark.parametrize("page", ["/today", "/clients"])
@pytest.mark.parametrize(("who", "shown"), [("olga", "3"), ("ada", "2"), ("noor", "1"), ("dee", "")])
def test_each_sees_at_once_how_many_wait_and_the_desk_nothing(
    who: str, shown: str, page: str, cast: Cast, as_: SignIn, two_of_adas_and_one_of_noors: None
) -> None:
    found = as_(getattr(cast, who)).get(page).content.decode()

    assert counted(found) == shown
    assert ("for a person now" in found) is bool(shown)  # it is said, too, not only drawn


def test_whatever_somebody_has_or_can_wait_is_not_counted(
    cast: Cast, as_: SignIn, two_of_adas_and_one_of_noors: None
) -> None:
    taken, later = Flag.objects.order_by("pk")[:2]
    Flag.objects.filter(pk=taken.pk).update(state="taken", taken_by=cast.ada, taken_at=cast.now)
    Flag.objects.filter(pk=later.pk).update(urgency="watch")

    assert counted(as_(cast.ada).get("/today").content.decode()) == ""
    assert "1 matter waits for a person now. See the morning list" in words(as_(cast.olga).get("/today"))


def test_one_to_be_tried_again_waits_from_its_moment_on(
    cast: Cast, as_: SignIn, two_of_adas_and_one_of_noors: None
) -> None:
    Flag.objects.update(state="taken", taken_by=cast.ada, taken_at=cast.now, try_again_at=cast.at(23, 1))
    assert counted(as_(cast.olga).get("/today").content.decode()) == ""

    Flag.objects.update(try_again_at=cast.at(6))
    assert counted(as_(cast.olga).get("/today").content.decode()) == "3"
