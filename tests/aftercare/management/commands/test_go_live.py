"""`go_live`: what it prints is what would leave, and it changes the studio named and no other."""

from __future__ import annotations

import json
from datetime import datetime, timedelta
from io import StringIO

import pytest
from django.core.management import CommandError, call_command

from aftercare import planning
from aftercare.models import Message
from studio import clock
from studio.models import Client, Consent, Studio, Visit
from tests.people import make_client, make_studio, make_visit

pytestmark = pytest.mark.django_db


def go_live(*args: str, studio: str = "birch") -> tuple[str, str]:
    """Return what it printed to standard output and to standard error."""
    out, err = StringIO(), StringIO()
    call_command("go_live", f"--studio={studio}", *args, stdout=out, stderr=err)
    return out.getvalue(), err.getvalue()


def ready(studio: Studio, now: datetime) -> Client:
    her = make_client(studio, mobile="+12125550101", time_zone="America/New_York")
    agreed = now - timedelta(days=30)
    Consent.objects.create(client=her, channel="sms", purpose="visits", given=True, at=agreed, how="on paper")
    return her


def lift(her: Client, now: datetime, days: int) -> Visit:
    """Book a lift, known long before: its `prepare` is due at 10:00, three days before it."""
    return make_visit(her, service="lift", starts_at=now + timedelta(days=days), heard_at=now - timedelta(days=9))


def test_it_prints_one_object_of_what_leaves_in_48_hours_by_occasion() -> None:
    studio, now = make_studio(), clock.now()
    her = ready(studio, now)
    lift(her, now, days=4)
    lift(her, now, days=30)  # its message is due in 27 days

    out, err = go_live()

    assert [json.loads(line) for line in out.splitlines()] == [{"prepare": 1}]
    assert "live" in err


def test_where_nothing_leaves_the_object_is_empty() -> None:
    make_studio()

    assert json.loads(go_live()[0]) == {}


def test_a_message_withheld_leaves_no_more_than_one_of_another_studio() -> None:
    studio, other, now = make_studio(), make_studio("elm"), clock.now()
    lift(make_client(studio), now, days=4)  # no way to reach her
    lift(ready(other, now), now, days=4)

    assert json.loads(go_live()[0]) == {}


def test_what_was_written_but_not_planned_yet_is_counted() -> None:
    studio, now = make_studio(), clock.now()
    visit = lift(ready(studio, now), now, days=4)
    planning.catch_up(now)
    Visit.objects.filter(pk=visit.pk).update(status="cancelled")
    Client.objects.update(revision=99)

    assert json.loads(go_live()[0]) == {}
    assert Message.objects.get().state == "withdrawn"


def test_the_studio_named_goes_live_and_no_other() -> None:
    make_studio()
    make_studio("elm")

    go_live()

    assert dict(Studio.objects.values_list("slug", "live_since").filter(live_since=None)) == {"elm": None}


def test_going_live_again_keeps_the_first_moment() -> None:
    studio = make_studio()
    since = clock.now() - timedelta(days=3)
    Studio.objects.update(live_since=since)

    go_live()

    studio.refresh_from_db()
    assert studio.live_since == since


def test_going_back_resumes_the_rehearsal_and_says_what_it_holds_back() -> None:
    studio, now = make_studio(), clock.now()
    lift(ready(studio, now), now, days=4)
    go_live()

    out, err = go_live("--back")

    studio.refresh_from_db()
    assert studio.in_rehearsal
    assert json.loads(out) == {"prepare": 1}
    assert "rehearsal" in err


def test_it_hands_nothing_over_itself() -> None:
    studio, now = make_studio(), clock.now()
    lift(ready(studio, now), now, days=4)

    go_live()

    assert set(Message.objects.values_list("state", flat=True)) == {"planned"}


def test_an_unknown_studio_changes_nothing_and_names_those_there_are() -> None:
    make_studio()

    with pytest.raises(CommandError, match="no studio “brich”. Known here: birch"):
        go_live(studio="brich")

    assert Studio.objects.get().in_rehearsal
