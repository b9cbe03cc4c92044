"""Read, compare, write, plan: what an import says that it did, or would do, and what is then so."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from django.db.models import F

from aftercare import imports
from aftercare.models import Fit, Forecast, Message
from studio.book.importing import Overtaken
from studio.book.parts import PART
from studio.book.rows import BadRow, Row
from studio.models import Client, ServiceName, Studio, Visit
from tests.books import WHOLE_WEEK, book_of, bring_in, everything, row
from tests.people import NOW, make_studio

pytestmark = pytest.mark.django_db

HEADER = "visit,client,first_name,email,service,starts_at\n"


@pytest.fixture
def studio() -> Studio:
    return make_studio()


def run(studio: Studio, *rows: Row, now: datetime = NOW, bad: tuple[BadRow, ...] = (), **how: Any) -> imports.Result:
    return imports.run(studio, book_of(*rows, bad=bad), now, **how)


def lift(visit: str = "V1", client: str = "C1", **says: Any) -> Row:
    return row(visit, client, service="lift", email="mia@mail.example", **{"starts_at": "2027-03-18T15:00:00Z", **says})


def test_what_reading_needs_is_the_studios_own(studio: Studio) -> None:
    Studio.objects.update(date_order="dmy", calendar_pattern="SUMMARY: {name}")
    ServiceName.objects.create(studio=studio, name="two-week top-up", kind="fill")
    ServiceName.objects.create(studio=make_studio("elm"), name="brows", kind="other")
    studio.refresh_from_db()

    context = imports.context_of(studio)

    assert (context.zone, context.region, context.date_order) == (ZoneInfo("America/New_York"), "US", "dmy")
    assert (context.service_names, context.pattern) == ({"two-week top-up": "fill"}, "SUMMARY: {name}")


def test_a_file_is_read_by_its_format_and_says_how_far_it_is(studio: Studio) -> None:
    said: list[tuple[str, int, int]] = []
    text = HEADER + "V1,C1,Mia,mia@mail.example,lift,2027-03-18T11:00\n"

    book = imports.read(studio, text.encode(), "csv", NOW, lambda *step: said.append(step))

    assert [(one.visit, one.visit_says["starts_at"]) for one in book.rows] == [("V1", "2027-03-18T15:00:00Z")]
    assert said[-1] == ("reading", 1, 1)


def test_an_import_writes_and_plans_and_counts_both(studio: Studio) -> None:
    result = run(studio, lift(), lift("V2"))

    assert result.written
    assert result.contract() == {
        "visits": {"new": 2, "changed": 0, "same": 0, "gone": 0},
        "clients": {"new": 1, "changed": 0, "same": 0},
        "messages": {"planned": 1, "withheld": 0, "withdrawn": 0},  # two visits of one day: one message
        "bad_rows": [],
    }
    assert Message.objects.count() == 1


def test_messages_are_counted_by_how_they_came_to_stand(studio: Studio) -> None:
    run(studio, lift(), lift("V2", "C2"), row("V3", "C3", service="lift", starts_at="2027-03-18T15:00:00Z"))

    result = run(
        studio,
        lift(status="cancelled"),
        lift("V2", "C2", starts_at="2027-03-19T15:00:00Z"),
        row("V3", "C3", service="lift", starts_at="2027-03-19T15:00:00Z"),
    )

    assert result.messages == {"planned": 1, "withheld": 1, "withdrawn": 1}


def test_a_bad_row_stops_everything(studio: Studio) -> None:
    before = everything()

    result = run(studio, lift(), bad=(BadRow(3, "mobile", "12", "…"),))

    assert not result.written
    assert result.contract()["bad_rows"] == [{"row": 3, "field": "mobile", "problem": "…"}]
    assert everything() == before


def test_a_bad_row_that_is_skipped_stops_nothing_but_itself(studio: Studio) -> None:
    result = run(studio, lift(), bad=(BadRow(3, "mobile", "12", "…"),), skip_bad=True)

    assert (result.written, len(result.bad), Visit.objects.count()) == (True, 1, 1)


def test_a_dry_run_promises_what_the_import_then_does(studio: Studio) -> None:
    run(studio, lift(), lift("V2", "C2", starts_at="2027-03-20T15:00:00Z"))
    rows = (lift(minutes=90), lift("V2", "C2", status="cancelled"), lift("V3", "C3"), row("V4", "C4", service="lift"))
    before = everything()

    promised = run(studio, *rows, dry_run=True)
    assert everything() == before
    done = run(studio, *rows)

    assert promised.contract() == done.contract()
    assert (promised.written, done.written) == (False, True)


def test_a_dry_run_of_a_long_book_holds_the_database_a_part_at_a_time(studio: Studio) -> None:
    rows = [lift(f"V{number}", f"C{number}") for number in range(PART + 200)]
    held: list[int] = []

    def say(what: str, done: int, total: int) -> None:
        if what == "trying visits":
            held.append(Visit.objects.count())

    result = run(studio, *rows, dry_run=True, progress=say)

    assert held == [0, 0], "each part is taken back before the next"
    assert result.messages["planned"] == PART + 200
    assert not Visit.objects.exists()


def worn(client: str, *shares: int, last_on: date = date(2027, 3, 5), **says: Any) -> list[Row]:
    """A client's sets, every twenty days up to the last one, with what was left of the one before."""
    days = [last_on - timedelta(days=20 * ago) for ago in reversed(range(len(shares) + 1))]
    rows = []
    for number, (day, share) in enumerate(zip(days, (None, *shares), strict=True)):
        says |= {} if share is None else {"share_left": share}
        starts = {"service": "fill" if number else "full set", "starts_at": f"{day}T15:00:00Z", "status": "done"}
        rows.append(row(f"{client}-{number}", client, email=f"{client}@mail.example", **{**starts, **says}))
    return rows


def test_a_first_book_is_learned_from_before_it_is_planned(studio: Studio) -> None:
    run(studio, *worn("C1", 80, 80, 80, email_reminders_ok=True), *worn("C2", 70, 75))

    fit = Fit.objects.get()
    assert (fit.clients, fit.readings, fit.made_at) == (2, 5, NOW)
    assert set(Forecast.objects.values_list("fit", "visit__refs__reference")) == {(fit.pk, "C1-3"), (fit.pk, "C2-2")}
    reminder = Message.objects.get(occasion="fill_due", client__refs__reference="C1")
    assert (reminder.visit, reminder.state) == (Visit.objects.get(refs__reference="C1-3"), "planned")


def test_a_later_book_is_learned_from_where_a_tenth_more_was_read(studio: Studio) -> None:
    run(studio, *worn("C1", *[70] * 11))
    run(studio, *worn("C1", *[70] * 11), *worn("C2", 70))
    assert Fit.objects.count() == 1

    run(studio, *worn("C3", 70, 70))

    assert [fit.readings for fit in Fit.objects.all()] == [14, 11]
    assert not Client.objects.exclude(revision=F("forecast_revision")).exists()


def test_when_the_first_book_came_in_is_noted_once(studio: Studio) -> None:
    run(studio, lift(), bad=(BadRow(3, "mobile", "12", "…"),))
    run(studio, lift(), dry_run=True)
    studio.refresh_from_db()
    assert studio.first_import_at is None

    run(studio, lift())
    run(studio, lift(minutes=90), now=NOW + timedelta(days=1))

    studio.refresh_from_db()
    assert studio.first_import_at == NOW


def test_a_book_that_brings_no_visit_is_not_the_first(studio: Studio) -> None:
    run(studio)
    run(studio, bad=(BadRow(3, "mobile", "12", "…"),), skip_bad=True)

    studio.refresh_from_db()
    assert studio.first_import_at is None


def test_a_dry_run_of_a_first_book_learns_from_it_and_forgets_it(studio: Studio) -> None:
    rows = [
        *worn("C1", 80, 80, email_reminders_ok=True),
        *worn("C2", 70, last_on=date(2027, 2, 12), email_reminders_ok=True),
    ]
    before = everything()

    promised = run(studio, *rows, dry_run=True)

    assert everything() == before
    assert promised.contract() == run(studio, *rows).contract()
    assert promised.messages["withheld"] > 0, "what was due by then waits for a person"


def test_planning_that_an_earlier_import_left_undone_is_done(studio: Studio) -> None:
    bring_in(studio, lift())  # written, and then the process died

    result = run(studio, lift())

    assert result.visits["same"] == 1
    assert result.messages["planned"] == 1


def test_the_days_of_a_whole_book_are_looked_at_before_and_cancelled_after(studio: Studio) -> None:
    run(studio, row(), row("V2", email="mia@mail.example"))
    shown = imports.preview(studio, book_of(row()), WHOLE_WEEK)
    assert shown.to_cancel == [
        {"visit": "V2", "client": "Mia", "service": "fill", "starts_at": "2027-03-12 14:30", "status": "booked"}
    ]
    run(studio, row(), seen=set(), whole=WHOLE_WEEK)
    assert set(Visit.objects.values_list("status", flat=True)) == {"booked"}
    run(studio, row(), seen={"V2"}, whole=WHOLE_WEEK)
    assert set(Visit.objects.values_list("refs__reference", "status")) == {("V1", "booked"), ("V2", "cancelled")}


def test_a_preview_writes_nothing_and_shows_the_first_changes_in_both(studio: Studio) -> None:
    run(studio, row(minutes=75))
    before = everything()

    page = imports.preview(studio, book_of(row(minutes=90, last_name="Ortega"))).page()

    assert everything() == before
    assert page["changes"] == [
        {"of": "client", "reference": "C1", "field": "last_name", "before": None, "after": "Ortega"},
        {"of": "visit", "reference": "V1", "field": "minutes", "before": 75, "after": 90},
    ]


def test_what_is_gone_is_shown_the_latest_first_and_not_without_end(studio: Studio) -> None:
    first = datetime(2027, 3, 10, 15, tzinfo=UTC)
    rows = [
        row(f"V{number:02}", starts_at=f"{first + timedelta(days=number):%Y-%m-%dT%H:%M:%SZ}") for number in range(60)
    ]
    run(studio, *rows)

    result = run(studio)

    assert result.visits["gone"] == 60
    assert [one["visit"] for one in result.gone[:2]] == ["V59", "V58"]
    assert len(result.gone) == imports.SHOWN_CHANGES


def test_an_import_that_is_overtaken_compares_anew_and_ends_well(studio: Studio) -> None:
    run(studio, row(minutes=75))
    overtaken = 0

    def meanwhile(what: str, done: int, total: int) -> None:
        nonlocal overtaken
        if what.startswith("writing") and overtaken < 2:
            overtaken += 1
            bring_in(studio, row(minutes=100 + overtaken))

    result = run(studio, row(minutes=90), progress=meanwhile)

    assert overtaken == 2
    assert result.written
    assert Visit.objects.get().minutes == 90


def test_an_import_that_is_overtaken_again_and_again_gives_up_and_says_so(studio: Studio) -> None:
    run(studio, row(minutes=75))
    others = iter(range(100, 200))

    def meanwhile(what: str, done: int, total: int) -> None:
        if what.startswith("writing"):
            bring_in(studio, row(minutes=next(others)))

    with pytest.raises(Overtaken, match="import the file again"):
        run(studio, row(minutes=90), progress=meanwhile)

    assert Visit.objects.get().minutes != 90
