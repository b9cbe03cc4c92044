"""The service that writes a book: in parts, each of them whole, never over what another import wrote meanwhile."""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta

import pytest

from studio import records
from studio.book import compare, importing
from studio.book.compare import Comparison
from studio.book.importing import Overtaken
from studio.book.parts import PART
from studio.book.rows import Row
from studio.models import Client, ClientRef, Studio, Visit, VisitRef
from tests.books import WHOLE_WEEK, book_of, bring_in, everything, row
from tests.people import NOW, make_studio

pytestmark = pytest.mark.django_db


@pytest.fixture
def studio() -> Studio:
    return make_studio()


def look(studio: Studio, *rows: Row) -> Comparison:
    return compare.compare(book_of(*rows), studio)


def test_a_long_book_is_written_in_parts_and_says_how_far_it_is(studio: Studio) -> None:
    said: list[str] = []
    rows = [row(f"V{number}", f"C{number % 300}") for number in range(PART + 500)]

    concerned = importing.write(look(studio, *rows), studio, NOW, said.append)

    assert (Visit.objects.count(), len(concerned), Client.objects.count()) == (PART + 500, 300, 300)
    assert said == ["writing visits 1 to 1,000 of 1,500", "writing visits 1,001 to 1,500 of 1,500"]
    whose = VisitRef.objects.values_list("reference", "visit__client__refs__reference")
    assert all(client == f"C{int(visit[1:]) % 300}" for visit, client in whose)


def test_the_same_book_again_writes_nothing_at_all(studio: Studio) -> None:
    rows = [row(f"V{number}", f"C{number % 3}", minutes=75, sms_ok=True) for number in range(9)]
    bring_in(studio, *rows)
    before = everything()
    said: list[str] = []

    assert importing.write(look(studio, *rows), studio, NOW + timedelta(days=1), said.append) == set()

    assert everything() == before
    assert said == []


def test_the_rows_in_another_order_write_nothing_either(studio: Studio) -> None:
    rows = [row(f"V{number}", f"C{number % 3}", artist="Ada") for number in range(9)]
    bring_in(studio, *rows)
    before = everything()

    bring_in(studio, *reversed(rows))

    assert everything() == before


def test_those_concerned_are_left_ahead_of_their_plan_and_nobody_else(studio: Studio) -> None:
    bring_in(studio, row(), row("V2", "C2", first_name="Zoe"))
    Client.objects.update(planned_revision=1)

    concerned = importing.write(look(studio, row(), row("V2", "C2", first_name="Zoe", minutes=90)), studio, NOW)

    assert concerned == {Client.objects.get(first_name="Zoe").pk}
    revisions = {client.first_name: (client.revision, client.planned_revision) for client in Client.objects.all()}
    assert revisions == {"Mia": (1, 1), "Zoe": (2, 1)}


def test_a_new_visit_of_a_known_client_leaves_her_ahead(studio: Studio) -> None:
    bring_in(studio, row())
    Client.objects.update(planned_revision=1)

    bring_in(studio, row(), row("V2"))

    assert Client.objects.get().revision == 2


def test_a_visit_that_is_called_off_leaves_its_client_ahead(studio: Studio) -> None:
    bring_in(studio, row(), row("V2", "C2", first_name="Zoe"))

    bring_in(studio, row(), whole=WHOLE_WEEK)

    assert Client.objects.get(first_name="Zoe").revision == 2


def test_each_write_raises_the_visits_revision(studio: Studio) -> None:
    bring_in(studio, row())

    bring_in(studio, row(minutes=90))
    bring_in(studio, row(minutes=90))

    assert Visit.objects.get().revision == 2


OVERTAKERS: dict[str, Callable[[Studio], object]] = {
    "the same new visit": lambda studio: bring_in(studio, row("V2", "C2")),
    "the same new client": lambda studio: bring_in(studio, row("V9", "C3")),
    "the same known visit": lambda studio: bring_in(studio, row(minutes=20)),
    "the same known client": lambda studio: bring_in(studio, row(email="other@mail.example")),
    "a merge of the known client": lambda studio: records.merge(
        kept=Client.objects.create(studio=studio, first_name="Mia"),
        gone=Client.objects.get(refs__reference="C1"),
        by=None,
        now=NOW,
    ),
}


@pytest.mark.parametrize("overtaker", OVERTAKERS)
def test_what_was_written_since_the_comparison_is_never_written_over(studio: Studio, overtaker: str) -> None:
    bring_in(studio, row(minutes=75))
    ours = look(
        studio, row(minutes=90, last_name="Ortega"), row("V2", "C2", first_name="Zoe"), row("V3", "C3", minutes=30)
    )
    OVERTAKERS[overtaker](studio)
    before = everything()

    with pytest.raises(Overtaken, match="import the file again"):
        importing.write(ours, studio, NOW)

    assert everything() == before


def test_what_others_wrote_to_other_visits_is_no_hindrance(studio: Studio) -> None:
    bring_in(studio, row())
    ours = look(studio, row(minutes=90))
    bring_in(studio, row("V7", "C7", first_name="Zoe"))
    records.save_visit(studio=studio, visit=Visit.objects.get(refs__reference="V1"), by=None, now=NOW, room="2")

    importing.write(ours, studio, NOW)

    visit = Visit.objects.get(refs__reference="V1")
    assert (visit.minutes, visit.room) == (90, "2")


def test_what_a_person_marked_done_since_the_comparison_stays_done(studio: Studio) -> None:
    bring_in(studio, row(starts_at="2027-03-09T12:00:00Z"))
    ours = look(studio, row(starts_at="2027-03-09T12:00:00Z", status="missed"))
    records.mark_done(visit=Visit.objects.get(), by=None, now=NOW)

    importing.write(ours, studio, NOW)

    assert Visit.objects.get().status == "done"


def test_an_import_broken_off_between_two_parts_is_finished_by_the_next(studio: Studio) -> None:
    rows = [row(f"V{number}", f"C{number}", minutes=75) for number in range(PART + 10)]

    def break_off(said: str) -> None:
        if said.startswith("writing visits 1,001"):
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        importing.write(look(studio, *rows), studio, NOW, break_off)
    assert Visit.objects.count() == PART

    found = bring_in(studio, *rows)

    assert found.counts()["visits"] == {"new": 10, "changed": 0, "same": PART, "gone": 0}
    assert Visit.objects.count() == ClientRef.objects.count() == PART + 10
