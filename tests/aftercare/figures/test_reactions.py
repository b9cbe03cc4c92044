"""Sets that a reaction on record followed, of all sets done."""

from __future__ import annotations

from dataclasses import replace

from aftercare import lotwatch
from aftercare.figures import Span, reactions
from studio.models import Reaction
from tests.cast import Cast


def followed(cast: Cast, span: Span) -> set[int]:
    return {one.visit.pk for one in lotwatch.each_followed(cast.studio, span.since, cast.now)}


def test_each_set_counts_by_itself_however_many_of_one_client(cast: Cast, span: Span) -> None:
    her = cast.client("Mia")
    for days in (60, 40, 20):
        visit = cast.done(her, cast.at(9, -days))
        if days != 20:
            Reaction.objects.create(client=her, visit=visit, at=cast.at(9, 2 - days), words="itchy")
            Reaction.objects.create(client=her, at=cast.at(9, 3 - days), words="itchy still")
    cast.done(cast.client("Zoe"), cast.at(9, -20), artist=cast.noor)

    groups = reactions(span, followed(cast, span))

    [whole] = groups["all"].values()
    assert (whole.sums.cases, whole.sums.total, whole.sums.groups) == (4, 2, 2)
    assert {key: one.sums.total for key, one in groups["artist"].items()} == {
        (str(cast.ada.pk),): 2,
        (str(cast.noor.pk),): 0,
    }
    [lot] = groups["adhesive"].values()
    assert lot.sums.cases == 4


def test_an_artist_has_her_own_sets_alone(cast: Cast, span: Span) -> None:
    cast.done(cast.client("Mia"), cast.at(9, -20))

    assert reactions(replace(span, artist=cast.noor.pk), [])["all"] == {}


def test_the_sets_of_a_span_are_followed_by_what_came_after_it_too(cast: Cast) -> None:
    span = Span(cast.studio, cast.at(0, -50), cast.at(0, -19))
    her = cast.client("Mia")
    visit = cast.done(her, cast.at(9, -20))
    Reaction.objects.create(client=her, visit=visit, at=cast.at(9, -10), words="itchy")

    [found] = reactions(span, followed(cast, span))["all"].values()

    assert (found.sums.cases, found.sums.total) == (1, 1)
