"""A road by which nothing leaves: its studios' owners are told once, by another road, and see it on their pages."""

from __future__ import annotations

from datetime import timedelta

import pytest

from aftercare import facts, heartbeats, roadwatch
from aftercare.core.delivery import Event
from aftercare.facts import judge
from aftercare.models import Heartbeat, Message, RoadHealth
from studio import clock
from studio.models import Staff, Studio
from tests.letters import make_line
from tests.pages import quiet_static
from tests.people import NOW, make_staff, make_studio, sign_in
from tests.streams import PATH

__all__ = ["quiet_static"]
pytestmark = pytest.mark.django_db
PROBLEM = "The carrier does not answer."


@pytest.fixture
def studio() -> Studio:
    studio = make_studio(live_since=NOW)
    make_line(studio)
    return studio


@pytest.fixture
def owner(studio: Studio) -> Staff:
    person = make_staff(studio, "Ines", is_owner=True)
    person.mobile, person.email = "+12125550111", "ines@birch.example"
    person.save()
    return person


def away(minutes: int = 15, account: str = "memory") -> None:
    now = clock.now()
    RoadHealth.objects.update_or_create(
        account=account,
        defaults={
            "failed": 9,
            "failing_since": now - timedelta(minutes=minutes),
            "rests_until": now,
            "problem": PROBLEM,
        },
    )


def test_the_owner_is_told_once_by_the_other_way(studio: Studio, owner: Staff) -> None:
    away()

    assert [roadwatch.look(NOW), roadwatch.look(NOW)] == [1, 0]

    page = Message.objects.get(kind="road_away")
    assert (page.staff, page.channel, page.address) == (owner, "email", "ines@birch.example")
    verdict = judge(page, None, NOW)
    assert (verdict.event, verdict.channel) == (Event.JOURNAL, "email")


def test_when_it_fails_anew_she_is_told_anew(studio: Studio, owner: Staff) -> None:
    away(60)
    roadwatch.look(NOW)
    away(15)

    assert roadwatch.look(NOW) == 1


def test_a_short_fault_a_road_of_others_and_a_rehearsal_are_nobodys_alarm(studio: Studio, owner: Staff) -> None:
    away(5)
    away(60, "other")
    assert roadwatch.look(NOW) == 0

    away(60)
    Studio.objects.update(live_since=None)
    assert roadwatch.look(NOW) == 0


def test_she_sees_it_on_her_list_and_with_her_lines(studio: Studio, owner: Staff) -> None:
    browser = sign_in(owner)
    for page in ("/morning", "/settings/lines"):
        assert PROBLEM not in browser.get(page).content.decode()

    away()

    for page in ("/morning", "/settings/lines"):
        shown = browser.get(page).content.decode()
        assert "Text messages do not leave." in shown
        assert PROBLEM in shown


def test_she_is_told_where_the_process_that_holds_an_open_road_is_gone(studio: Studio, owner: Staff) -> None:
    """It cannot say so itself; its texts are left to it by everybody else."""
    studio.lines.update(transport=PATH, options={"bind": "main"})
    heartbeats.finished("pipe:main", now=clock.now() - timedelta(minutes=5))
    assert roadwatch.look(NOW) == 0

    Heartbeat.objects.update(at=clock.now() - timedelta(minutes=15))

    assert [roadwatch.look(NOW), roadwatch.look(NOW)] == [1, 0]
    assert [one.problem for one in roadwatch.away_in(studio, clock.now())] == [roadwatch.NOBODY]


def test_an_owner_who_said_stop_to_mail_is_told_by_text(studio: Studio, owner: Staff) -> None:
    owner.email = ""

    assert facts.ways([owner], first="email")[owner.pk].channel == "sms"
