"""Which set a reaction belongs to, and what is counted of each lot."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from aftercare import lotwatch
from aftercare.lotwatch import Lot
from aftercare.models import RuleSet
from studio.models import Adhesive, Client, Reaction, Service, Visit
from tests.cast import Cast, make


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


def lot(cast: Cast, number: str) -> Adhesive:
    return Adhesive.objects.create(studio=cast.studio, product="Birch 4", lot=number)


def react(her: Client, at: Any, visit: Visit | None = None, words: str = "itchy lids") -> Reaction:
    return Reaction.objects.create(client=her, visit=visit, at=at, words=words)


def worn(cast: Cast, glue: Adhesive, sets: int, reactions: int, days: int = 40) -> None:
    """Have so many clients wear a lot, the first of whom have a reaction on the second day."""
    for number in range(sets):
        her = cast.client(f"{glue.lot}-{number}", texts=False)
        visit = cast.done(her, cast.at(9, -days), adhesive=glue)
        if number < reactions:
            react(her, cast.at(9, 2 - days), visit)


def lots(cast: Cast) -> dict[str, Lot]:
    return {one.adhesive.lot: one for one in lotwatch.watch(cast.studio, cast.now).lots}


def test_a_reaction_belongs_to_the_set_that_it_names(cast: Cast) -> None:
    mia = cast.client("Mia")
    named = cast.done(mia, cast.at(9, -12), adhesive=lot(cast, "77"))
    cast.done(mia, cast.at(9, -3))
    react(mia, cast.at(9, -1), named)

    [found] = lotwatch.followed(cast.studio, cast.now)

    assert (found.visit, found.days) == (named, 11)


def test_one_that_names_none_belongs_to_the_last_set_done_before_it(cast: Cast) -> None:
    mia = cast.client("Mia")
    cast.done(mia, cast.at(9, -12), adhesive=lot(cast, "77"))
    last = cast.done(mia, cast.at(9, -3))
    cast.visit(mia, cast.at(8, -2))  # was never done
    cast.done(mia, cast.at(9, -2), Service.LIFT)
    react(mia, cast.at(10, -1))
    cast.done(mia, cast.at(11, -1))

    assert [found.visit for found in lotwatch.followed(cast.studio, cast.now)] == [last]


@pytest.mark.parametrize(("after", "counts"), [(timedelta(days=14), 1), (timedelta(days=14, minutes=1), 0)])
@pytest.mark.parametrize("names_it", [True, False])
def test_fourteen_days_is_the_last_moment(after: timedelta, counts: int, names_it: bool, cast: Cast) -> None:
    mia = cast.client("Mia")
    visit = cast.done(mia, cast.at(9, -30))
    react(mia, visit.starts_at + after, visit if names_it else None)

    assert len(lotwatch.followed(cast.studio, cast.now)) == counts


def test_one_that_names_a_patch_test_belongs_to_no_set(cast: Cast) -> None:
    mia = cast.client("Mia")
    cast.done(mia, cast.at(9, -4))
    test = cast.done(mia, cast.at(9, -3), Service.PATCH_TEST)
    react(mia, cast.at(9, -2), test)

    assert lotwatch.followed(cast.studio, cast.now) == []


def test_a_client_counts_once_a_lot_and_her_signs_are_kept_together(cast: Cast) -> None:
    mia = cast.client("Mia")
    first = cast.done(mia, cast.at(9, -20))
    second = cast.done(mia, cast.at(9, -5))
    react(mia, cast.at(9, -19), first, "Mia's left lid is puffy")
    react(mia, cast.at(9, -4), second, "puffy and itchy, says Ada")

    [found] = lotwatch.followed(cast.studio, cast.now)

    assert (found.visit, found.days, found.signs) == (first, 1, ["swelling", "itching"])
    assert (lots(cast)["0226"].sets, lots(cast)["0226"].followed) == (2, 1)


@pytest.mark.parametrize("product", [None, "Alder"])
def test_sets_of_no_noted_lot_are_no_lot_in_which_a_client_counts_once(product: str | None, cast: Cast) -> None:
    mia = cast.client("Mia")
    glue = Adhesive.objects.create(studio=cast.studio, product=product) if product else None
    for days in (90, 60, 30):
        visit = cast.done(mia, cast.at(9, -days), adhesive=glue)
        Visit.objects.filter(pk=visit.pk).update(adhesive=glue)
        react(mia, cast.at(9, 1 - days), visit)
        react(mia, cast.at(9, 2 - days), visit, "and puffy")

    found = lotwatch.watch(cast.studio, cast.now)

    assert (found.sets, found.followed) == (3, 3)


def test_years_of_sets_without_a_lot_make_no_lot_look_worse(cast: Cast) -> None:
    """By hand: before lots were noted 4 of 200 sets were followed, all one client's; of the lot 3 of its 150."""
    mia = cast.client("Mia")
    for number in range(200):
        visit = cast.done(mia, cast.at(9, -1000 + 4 * number))
        Visit.objects.filter(pk=visit.pk).update(adhesive=None)
        if number % 50 == 0:
            react(mia, cast.at(10, -1000 + 4 * number), visit)
    worn(cast, cast.glue, 150, 3)

    own = lots(cast)["0226"]

    assert (own.square.a, own.square.b, own.square.c, own.square.d) == (3, 147, 4, 196)
    assert own.square.rate_ratio == pytest.approx(1)
    assert not own.stands_out


def test_what_is_ahead_or_another_studios_is_not_counted(cast: Cast) -> None:
    other = make("elm", "Elm Lash Room")
    zoe = other.client("Zoe")
    react(zoe, other.at(9, -2), other.done(zoe, other.at(9, -3)))
    mia = cast.client("Mia")
    react(mia, cast.now + timedelta(days=1), cast.done(mia, cast.at(3)))

    found = lotwatch.watch(cast.studio, cast.now)

    assert (found.sets, found.followed) == (1, 0)


def test_a_lot_stands_beside_all_other_sets_lot_known_or_not(cast: Cast) -> None:
    worn(cast, cast.glue, 10, 2)
    worn(cast, lot(cast, "77"), 20, 1)
    worn(cast, Adhesive.objects.create(studio=cast.studio, product="Alder"), 5, 1)
    cast.done(cast.client("Mia"), cast.at(9, -1), adhesive=None)
    cast.done(cast.client("Bea"), cast.at(9, -1))

    found = lots(cast)

    assert set(found) == {"0226", "77"}  # a product without its lot is not one lot
    own = found["0226"]
    assert (own.sets, own.recent, own.followed, own.rate) == (11, 1, 2, 2 / 11)
    assert (own.square.a, own.square.b, own.square.c, own.square.d) == (2, 9, 2, 24)
    assert own.expected == pytest.approx(11 * 4 / 37)
    assert own.drawn is None  # two lots say nothing of how much lots differ
    assert not own.stands_out


def test_a_bad_lot_comes_first_and_is_drawn_towards_the_others(cast: Cast) -> None:
    for number in ("1", "2", "3"):
        worn(cast, lot(cast, number), 40, 1)
    worn(cast, cast.glue, 20, 8)

    watched = lotwatch.watch(cast.studio, cast.now)

    bad = watched.lots[0]
    assert (bad.adhesive, bad.stands_out) == (cast.glue, True)
    assert [one.stands_out for one in watched.lots[1:]] == [False] * 3
    assert bad.drawn is not None
    assert 1 < bad.drawn.low < bad.drawn.middle < bad.followed / bad.expected
    assert bad.drawn.middle < bad.drawn.high


def test_the_owners_level_decides(cast: Cast) -> None:
    worn(cast, lot(cast, "1"), 100, 2)
    worn(cast, cast.glue, 20, 5)
    assert lots(cast)["0226"].stands_out

    RuleSet.objects.create(studio=cast.studio, version=1, values={"lot_chance": 0.001}, at=cast.now)

    watched = lotwatch.watch(cast.studio, cast.now)
    assert watched.one_in == 1_000
    assert not any(one.stands_out for one in watched.lots)


def test_who_wore_a_lot_in_thirty_days_stands_once_with_her_newest_set(cast: Cast) -> None:
    mia, bea = cast.client("Mia"), cast.client("Bea")
    cast.done(mia, cast.at(9, -20))
    newest = cast.done(mia, cast.at(9, -2))
    cast.done(bea, cast.at(9, -31))
    cast.done(bea, cast.at(9, -3), adhesive=lot(cast, "77"))
    cast.visit(bea, cast.at(9, 1), adhesive=cast.glue)

    assert lotwatch.wearers(cast.glue, cast.now) == [newest]


def test_many_sets_cost_no_more_queries(cast: Cast, django_assert_num_queries: Any) -> None:
    for number in ("1", "2", "3", "4", "5"):
        worn(cast, lot(cast, number), 12, 2)

    with django_assert_num_queries(7):
        lotwatch.watch(cast.studio, cast.now)
