"""What leaves for real: the reminders that were overdue at the first import, and the owner's go for them."""

from __future__ import annotations

from datetime import timedelta

import pytest
from django.utils import timezone

from aftercare import planning
from aftercare.models import Message, RuleSet
from studio.models import Client, Consent, Studio, Visit
from tests.forecasts import forecast
from tests.people import NOW, make_studio

pytestmark = pytest.mark.django_db


def overdue(studio: Studio, number: int, *, days: int = 20) -> Client:
    """A client whose fill was to be asked for some days ago, as the first import told."""
    her = Client.objects.create(studio=studio, first_name=f"Mia {number}", email=f"mia{number}@mail.example")
    Consent.objects.create(client=her, channel="email", purpose="reminders", given=True, at=NOW, how="on paper")
    done = Visit.objects.create(
        studio=studio,
        client=her,
        service="fill",
        status="done",
        starts_at=NOW - timedelta(days=days, minutes=number),
        minutes=75,
        heard_at=NOW,
    )
    forecast(done, NOW, fill_day=19, full_set_low=30, full_set_day=40)
    return her


@pytest.fixture
def birch() -> Studio:
    studio = make_studio(first_import_at=NOW)
    for number in range(23):
        overdue(studio, number)
    planning.catch_up(NOW)
    return studio


def by_day(occasion: str = "fill_due", **which: object) -> dict[str, int]:
    found: dict[str, int] = {}
    for due in Message.objects.filter(occasion=occasion, state="planned", **which).values_list("due_at", flat=True):
        assert due is not None
        day = f"{timezone.localtime(due, Studio.objects.get(slug='birch').zone):%a %d %H:%M}"
        found[day] = found.get(day, 0) + 1
    return dict(sorted(found.items(), key=lambda item: item[0].split()[1]))


def test_what_was_overdue_waits_and_what_is_ahead_does_not(birch: Studio) -> None:
    assert planning.first_reminders(birch) == planning.FirstReminders(waiting=23, let_go=0, last_from=None)
    assert by_day() == {}
    assert sum(by_day("full_set_due").values()) == 23


def test_the_go_lets_ten_a_day_leave_those_longest_overdue_first(birch: Studio) -> None:
    assert planning.give_go(birch, NOW) == 23
    planning.catch_up(NOW)

    assert by_day() == {"Tue 09 10:00": 10, "Wed 10 10:00": 10, "Thu 11 10:00": 3}
    now, later = planning.first_reminders(birch), NOW + timedelta(days=2)
    assert (now.waiting, now.let_go, now.last_from) == (0, 23, later)


def test_those_longest_overdue_go_first() -> None:
    studio = make_studio(first_import_at=NOW)
    for number, days in enumerate((14, 25, 18)):
        overdue(studio, number, days=days)
    RuleSet.objects.create(studio=studio, version=1, values={"go_a_day": 1}, at=NOW)
    planning.catch_up(NOW)

    planning.give_go(studio, NOW)
    planning.catch_up(NOW)

    found = Message.objects.filter(occasion="fill_due").order_by("due_at")
    assert list(found.values_list("client__first_name", flat=True)) == ["Mia 1", "Mia 2", "Mia 0"]


def test_after_hours_the_first_ten_leave_the_next_morning(birch: Studio) -> None:
    evening = NOW + timedelta(hours=11)
    planning.give_go(birch, evening)
    planning.catch_up(evening)

    assert list(by_day()) == ["Wed 10 10:00", "Thu 11 10:00", "Fri 12 10:00"]


def test_no_turn_falls_on_a_sunday(birch: Studio) -> None:
    friday = NOW + timedelta(days=3)
    planning.give_go(birch, friday)
    planning.catch_up(friday)

    assert by_day() == {"Fri 12 10:00": 10, "Sat 13 10:00": 10, "Mon 15 10:00": 3}


def test_the_go_given_twice_lets_nothing_go_twice(birch: Studio) -> None:
    planning.give_go(birch, NOW)
    assert planning.give_go(birch, NOW) == 0
    planning.catch_up(NOW)
    before = by_day()

    assert planning.give_go(birch, NOW + timedelta(days=1)) == 0
    planning.catch_up(NOW + timedelta(days=1))
    assert by_day() == before


def test_those_that_come_to_wait_later_fill_the_days_up(birch: Studio) -> None:
    planning.give_go(birch, NOW)
    for number in range(30, 40):
        overdue(birch, number)
    planning.catch_up(NOW)

    assert planning.give_go(birch, NOW) == 10
    planning.catch_up(NOW)

    assert by_day() == {"Tue 09 10:00": 10, "Wed 10 10:00": 10, "Thu 11 10:00": 10, "Fri 12 10:00": 3}


def test_one_that_cannot_go_any_more_takes_nobody_elses_turn(birch: Studio) -> None:
    late = Message.objects.filter(occasion="fill_due").order_by("aim_at").first()
    assert late is not None
    Message.objects.filter(pk=late.pk).update(no_later_than=NOW - timedelta(minutes=1))

    assert planning.give_go(birch, NOW) == 22
    assert Message.objects.filter(go_from=NOW).count() == 11


def test_what_has_not_left_can_be_held_again(birch: Studio) -> None:
    planning.give_go(birch, NOW)
    planning.catch_up(NOW)
    left = Message.objects.filter(state="planned", occasion="fill_due", due_at=NOW)
    Message.objects.filter(pk__in=list(left.values_list("pk", flat=True))).update(state="delivered")

    assert planning.take_back_go(birch) == 13
    planning.catch_up(NOW)

    assert planning.first_reminders(birch) == planning.FirstReminders(waiting=13, let_go=0, last_from=None)
    assert Message.objects.filter(occasion="fill_due", state="delivered").count() == 10


def test_a_second_go_counts_what_left_today(birch: Studio) -> None:
    planning.give_go(birch, NOW)
    planning.catch_up(NOW)
    Message.objects.filter(state="planned", occasion="fill_due", due_at=NOW).update(state="delivered")
    planning.take_back_go(birch)
    planning.catch_up(NOW)

    assert planning.give_go(birch, NOW + timedelta(hours=1)) == 13
    planning.catch_up(NOW + timedelta(hours=1))

    assert by_day() == {"Wed 10 10:00": 10, "Thu 11 10:00": 3}


def test_another_studios_reminders_wait_for_their_own_owner(birch: Studio) -> None:
    elm = make_studio("elm", first_import_at=NOW)
    overdue(elm, 1)
    planning.catch_up(NOW)

    planning.give_go(birch, NOW)

    assert planning.first_reminders(elm).waiting == 1
