"""From rows to the values that core computes with."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from aftercare import facts
from aftercare.core.timing import Occasion, Reason, SetForecast
from aftercare.lines import lines_of
from aftercare.models import Flag, Message, Stop
from studio import records
from studio.models import Adhesive, Client, ClosingDay, Consent, VisitRef
from tests.forecasts import forecast
from tests.people import NOW, make_client, make_studio, make_visit

pytestmark = pytest.mark.django_db


def book(client: Client) -> facts.ClientBook:
    return facts.load([client.pk], NOW)[client.pk]


def client(**fields: Any) -> Client:
    return make_client(make_studio(), **{"mobile": "+12125550101", **fields})


def agree(her: Client, given: bool = True, *, days: int = 0, channel: str = "sms", purpose: str = "visits") -> None:
    at = NOW + timedelta(days=days)
    Consent.objects.create(client=her, channel=channel, purpose=purpose, given=given, at=at, how="on paper")


def test_the_newest_answer_counts_whenever_it_was_written_down() -> None:
    her = client()
    agree(her, True, days=-1)
    agree(her, False, days=-2)

    assert book(her).reach.channel == "sms"


def test_a_stop_of_her_number_counts_and_a_lifted_one_does_not() -> None:
    her = client()
    agree(her)
    stop = Stop.objects.create(line=lines_of(her.studio)["sms"], address=her.mobile, at=NOW)
    assert book(her).reach.reason is Reason.NO_CONSENT

    Stop.objects.filter(pk=stop.pk).update(lifted_at=NOW)
    assert book(her).reach.channel == "sms"


def test_another_studios_stop_is_not_ours() -> None:
    her = client()
    agree(her)
    Stop.objects.create(line=lines_of(make_studio("other"))["sms"], address=her.mobile, at=NOW)

    assert book(her).reach.channel == "sms"


@pytest.mark.parametrize(
    ("mobile", "stated", "zone"),
    [
        ("+12125550101", "", ""),  # New York, as the studio
        ("+14155550101", "", "America/Los_Angeles"),
        ("+14155550101", "America/Chicago", ""),  # what she states holds
        ("+18005550101", "", ""),  # can be anywhere
        ("", "", ""),
    ],
)
def test_the_zone_of_her_number_counts_where_it_is_one_and_she_stated_none(mobile: str, stated: str, zone: str) -> None:
    her = client(mobile=mobile, time_zone=stated)

    assert book(her).suggested_zone == zone
    assert book(her).facts.zone.key == (stated or "America/New_York")


def test_a_reaction_holds_until_a_person_releases_it() -> None:
    her = client()
    visit = make_visit(her, status="done", starts_at=NOW - timedelta(days=2))
    reaction = records.record_reaction(client=her, visit=None, words="red lids", by=None, now=NOW)
    held = book(her)
    assert held.on_hold
    assert held.facts.held_visits == {visit.pk}

    records.release_reaction(reaction=reaction, clinician_consulted="yes", test_first=True, by=None, now=NOW)
    released = book(her)
    assert not released.on_hold
    assert released.facts.test_first
    assert released.facts.reactions == (NOW,)


@pytest.mark.parametrize(
    ("urgency", "state", "held"),
    [
        ("emergency", "open", True),
        ("same_day", "taken", True),
        ("same_day", "closed", False),
        ("unread", "open", False),
    ],
)
def test_an_open_urgent_flag_holds(urgency: str, state: str, held: bool) -> None:
    her = client()
    Flag.objects.create(studio=her.studio, urgency=urgency, state=state, opened_at=NOW, urgent_since=NOW).clients.add(
        her
    )

    assert book(her).on_hold is held


def test_a_pause_lasts_until_its_day_in_her_zone() -> None:
    her = client(paused_until=NOW.date() + timedelta(days=1))
    assert book(her).facts.paused

    Client.objects.update(paused_until=NOW.date())
    assert not book(her).facts.paused


def test_why_a_patch_test_is_due_is_said() -> None:
    her = client(sensitive=True)
    old = Adhesive.objects.create(studio=her.studio, product="Birch 4", lot="0226")
    new = Adhesive.objects.create(studio=her.studio, product="Alder Mild", lot="A-77")
    make_visit(her, status="done", starts_at=NOW - timedelta(days=20), adhesive=old)
    ahead = make_visit(her, adhesive=new)

    assert book(her).tests_due == {ahead.pk: "another adhesive than last time"}


@pytest.mark.parametrize("services", [("removal", "full set"), ("full set", "removal")])
def test_at_one_moment_a_set_is_the_last_whatever_was_written_first(services: tuple[str, str]) -> None:
    her = client()
    for service in services:
        make_visit(her, service=service)

    assert [visit.service for visit in book(her).visits.values()] == ["removal", "full set"]


def test_a_product_in_other_capitals_or_spaces_is_no_other_product() -> None:
    her = client(sensitive=True)
    old = Adhesive.objects.create(studio=her.studio, product="Birch 4", lot="0226")
    new = Adhesive.objects.create(studio=her.studio, product="BIRCH  4", lot="0326")
    make_visit(her, status="done", starts_at=NOW - timedelta(days=20), adhesive=old)
    make_visit(her, adhesive=new)

    assert book(her).tests_due == {}


def test_a_books_own_references_break_ties_before_rows_by_hand() -> None:
    her = client()
    visit = make_visit(her)

    assert book(her).planned_visits[0].ref == f"~{visit.pk:012}"


def test_a_books_own_reference_comes_with_its_source() -> None:
    her = client()
    visit = make_visit(her)
    VisitRef.objects.create(studio=her.studio, source="csv", reference="V1", visit=visit)

    assert book(her).planned_visits[0].ref == "csv V1"


def test_a_reaction_without_a_visit_belongs_to_the_last_one_done_before_it() -> None:
    her = client()
    make_visit(her, status="done", starts_at=NOW - timedelta(days=9))
    last = make_visit(her, status="done", starts_at=NOW - timedelta(days=2))
    make_visit(her, status="missed", starts_at=NOW - timedelta(days=1))
    make_visit(her, status="done", starts_at=NOW + timedelta(hours=1))
    records.record_reaction(client=her, visit=None, words="red lids", by=None, now=NOW)

    assert book(her).facts.held_visits == {last.pk}


def test_of_two_released_reactions_the_newer_decides_on_the_test() -> None:
    her = client()
    for test_first, days in ((False, 1), (True, 3)):
        seen = NOW - timedelta(days=days)
        reaction = records.record_reaction(client=her, visit=None, words="red lids", by=None, now=NOW, at=seen)
        records.release_reaction(reaction=reaction, clinician_consulted="no", test_first=test_first, by=None, now=NOW)

    assert not book(her).facts.test_first


def test_a_stop_of_her_address_counts_in_any_capitals() -> None:
    her = client(mobile="", email="Mia@mail.example")
    Stop.objects.create(line=lines_of(her.studio)["email"], address="mia@mail.example", at=NOW)

    assert book(her).reach.reason is Reason.NO_CONSENT


def test_a_stop_of_the_number_she_had_before_is_not_one_of_her_new_number() -> None:
    her = client()
    agree(her)
    Stop.objects.create(line=lines_of(her.studio)["sms"], address="+12125550199", at=NOW)

    assert book(her).reach.channel == "sms"


def test_what_has_gone_and_what_is_open_stand_by_visit_occasion_and_step() -> None:
    her = client()
    visit = make_visit(her)
    about = {"studio": her.studio, "client": her, "visit": visit, "occasion": "prepare", "planned_from": NOW}
    Message.objects.create(key="1", edition=1, state="delivered", about_start=NOW, due_at=NOW, **about)
    Message.objects.create(key="2", edition=2, state="planned", aim_at=NOW, **about)

    standing = book(her).standing[visit.pk, Occasion.PREPARE, 0]

    assert (standing.gone_edition, standing.gone_start, standing.open_edition) == (1, NOW, 2)
    assert (standing.open_planned, standing.gone_elsewhere) == (True, False)


def test_what_went_to_another_client_is_marked_as_gone_elsewhere() -> None:
    her = client()
    visit = make_visit(her)
    Message.objects.create(
        studio=her.studio,
        client=make_client(her.studio, "Zoe"),
        visit=visit,
        occasion="check",
        step=1,
        key="1",
        state="delivered",
        planned_from=NOW,
        due_at=NOW,
    )

    standing = book(her).standing[visit.pk, Occasion.CHECK, 1]

    assert (standing.gone_elsewhere, standing.gone_due) == (True, None)


def test_the_rules_of_her_book_know_her_studios_closing_days() -> None:
    her = client()
    other = make_client(make_studio("elm"))
    for days in (1, 2):
        ClosingDay.objects.create(studio=her.studio, date=NOW.date() + timedelta(days=days))

    books = facts.load([her.pk, other.pk], NOW)

    assert books[her.pk].rules == facts.rules_of(her.studio)
    assert len(books[her.pk].rules.reminder_hours.days_off) == 2
    assert not books[other.pk].rules.reminder_hours.days_off


def test_consent_to_reminders_is_apart_and_each_channel_by_itself() -> None:
    her = client(email="mia@mail.example")
    agree(her)
    assert book(her).facts.reminder_unreachable is Reason.NO_CONSENT

    agree(her, channel="email", purpose="reminders")
    found = book(her)
    assert (found.channel_for(Occasion.FILL_DUE), found.channel_for(Occasion.CHECK)) == ("email", "sms")


def test_the_newest_forecast_of_the_set_that_she_wears_is_in_force() -> None:
    her = client()
    before = make_visit(her, status="done", starts_at=NOW - timedelta(days=30))
    worn = make_visit(her, status="done", starts_at=NOW - timedelta(days=5))
    make_visit(her)
    assert book(her).forecast is None

    newest = forecast(worn, NOW, fill_day=17)
    forecast(worn, NOW - timedelta(days=1), fill_day=15)
    forecast(before, NOW, fill_day=12)

    days = (newest.fill_day, newest.full_set_low, newest.full_set_day)
    assert book(her).forecast == SetForecast(worn.pk, *days, newest.pk)


def test_of_two_sets_at_one_moment_what_was_forecast_of_one_holds_for_both() -> None:
    her = client()
    one, other = (make_visit(her, status="done", starts_at=NOW - timedelta(days=5)) for _ in range(2))
    for visit, reference in ((one, "V2"), (other, "V1")):
        VisitRef.objects.create(studio=her.studio, source="csv", reference=reference, visit=visit)
    made = forecast(other, NOW, fill_day=17)

    assert book(her).forecast == SetForecast(one.pk, made.fill_day, made.full_set_low, made.full_set_day, made.pk)


def test_a_reminder_remembers_the_forecast_that_it_was_planned_from_and_its_go() -> None:
    her = client()
    worn = make_visit(her, status="done", starts_at=NOW - timedelta(days=5))
    kept, _newest = forecast(worn, NOW - timedelta(days=1), fill_day=15), forecast(worn, NOW, fill_day=17)
    about = {"studio": her.studio, "client": her, "visit": worn, "occasion": "fill_due", "planned_from": NOW}
    Message.objects.create(key="1", state="planned", forecast=kept, go_from=NOW, **about)

    standing = book(her).standing[worn.pk, Occasion.FILL_DUE, 0]

    assert standing.open_forecast is not None
    assert (standing.open_forecast.id, standing.go_from) == (kept.pk, NOW)


def test_when_a_message_left_counts_beside_when_it_was_due() -> None:
    her = client()
    visit = make_visit(her)
    left = NOW + timedelta(hours=5)
    about = {"studio": her.studio, "client": her, "visit": visit, "occasion": "check", "planned_from": NOW}
    Message.objects.create(key="1", state="delivered", due_at=NOW, handed_over_at=left, **about)

    standing = book(her).standing[visit.pk, Occasion.CHECK, 0]

    assert (standing.gone_due, standing.gone_at) == (NOW, left)


def test_many_clients_are_read_in_as_many_queries_as_one() -> None:
    studio = make_studio()
    clients = [make_client(studio, f"Mia {number}", email="mia@mail.example") for number in range(20)]
    for her in clients:
        make_visit(her)
        agree(her)

    def queries(some: list[Client]) -> int:
        with CaptureQueriesContext(connection) as seen:
            assert len(facts.load([her.pk for her in some], NOW)) == len(some)
        return len(seen)

    assert queries(clients) == queries(clients[:1])


def test_nobody_is_no_query_too_many() -> None:
    assert facts.load([], NOW) == {}
