"""One word to those who are booked on a day: who is told, how, when; who is to be called; and what becomes of it."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any

import pytest
from django.core.exceptions import ValidationError

from aftercare import planning, stops, tasks, telling
from aftercare.core.delivery import State
from aftercare.core.occasions import Occasion
from aftercare.lines import lines_of
from aftercare.models import Message
from aftercare.telling import Look
from studio.models import Client, Consent, Staff, Studio, Visit
from tests.people import NOW, make_client, make_staff, make_studio, make_visit

pytestmark = pytest.mark.django_db

LATE = "All is an hour late today: please come an hour later."


@pytest.fixture
def studio() -> Studio:
    return make_studio(phone="+12125550199")


@pytest.fixture
def ada(studio: Studio) -> Staff:
    return make_staff(studio)


def client(studio: Studio, name: str = "Mia", **fields: Any) -> Client:
    fields.setdefault("mobile", f"+121255501{Client.objects.count():02}")
    fields.setdefault("time_zone", "America/New_York")
    her = make_client(studio, name, **fields)
    Consent.objects.create(client=her, channel="sms", purpose="visits", given=True, at=NOW, how="on paper")
    return her


def at(hour: int, days: int = 0) -> datetime:
    """An hour of 9 March, or later, on the studio's clock; it is ten in the morning there."""
    return NOW + timedelta(hours=hour - 10, days=days)


def look(studio: Studio, words: str = "", now: datetime = NOW, days: int = 0, **more: Any) -> Look:
    day = (NOW + timedelta(days=days)).date()
    return telling.look(studio, telling.booked(studio, day, now, **more), telling.source(words, studio), now)


def sent(studio: Studio, by: Staff, words: str = "", now: datetime = NOW, token: str = "t") -> int:
    return telling.tell(look(studio, words, now), telling.source(words, studio), token=token, by=by, now=now)


def test_those_still_booked_that_day_are_told_once_each(studio: Studio, ada: Staff) -> None:
    mia, zoe = client(studio), client(studio, "Zoe")
    make_visit(mia, starts_at=at(14), artist=ada)
    make_visit(mia, starts_at=at(16))
    make_visit(zoe, starts_at=at(12))
    for hour, status in ((9, "booked"), (11, "cancelled"), (13, "missed"), (8, "done")):  # the first has begun
        make_visit(client(studio, status), starts_at=at(hour), status=status)
    make_visit(client(studio, "Tomorrow"), starts_at=at(14, days=1))
    make_visit(client(make_studio("elm"), "Elsewhere"), starts_at=at(14))

    assert [(one.client.first_name, one.leaves) for one in look(studio).tell] == [("Zoe", NOW), ("Mia", NOW)]
    assert [one.client.first_name for one in look(studio, days=1).tell] == ["Tomorrow"]
    assert [one.client.first_name for one in look(studio, artists={ada.pk}).tell] == ["Mia"]
    assert [one.client.first_name for one in look(studio, artists=set()).tell] == []


def test_whom_a_message_cannot_reach_in_time_is_to_be_called(studio: Studio) -> None:
    lines_of(studio)
    stopped, refused, nowhere = client(studio, "Zoe"), client(studio, "Rae"), client(studio, "Nell", mobile="")
    stops.stop(stopped, "sms", words="STOP", by=None, now=NOW)
    Consent.objects.create(client=refused, channel="sms", purpose="visits", given=False, at=at(10), how="said so")
    early = client(studio, "Early")
    for her in (stopped, refused, nowhere, client(studio, "Late")):
        make_visit(her, starts_at=at(14))
    make_visit(early, starts_at=at(9))

    seen = look(studio, now=at(7))

    assert {one.client.first_name: one.why for one in seen.call} == {
        "Zoe": "no consent",
        "Rae": "no consent",
        "Nell": "no way to reach her",
    }
    assert {one.client.first_name: one.leaves for one in seen.tell} == {"Late": at(9), "Early": at(9)}
    earlier = Visit.objects.get(client=early)
    earlier.starts_at = at(8)
    earlier.save()
    assert {one.client.first_name: one.why for one in look(studio, now=at(7)).call}["Early"] == "too late"


def test_it_costs_what_it_says(studio: Studio) -> None:
    make_visit(client(studio), starts_at=at(14))
    make_visit(client(studio, "Ines", mobile="", email="ines@mail.example"), starts_at=at(15))

    seen = look(studio, LATE)
    assert (seen.texts, seen.charged, seen.mails) == (1, 1, 1)
    assert look(studio, LATE + " ✨").charged == 2  # 67 letters a segment with it


def test_the_owners_wording_names_the_studio_the_visit_and_the_way_to_stop(studio: Studio) -> None:
    make_visit(client(studio), starts_at=at(14))

    (one,) = look(studio).tell

    assert one.text.startswith(
        "Birch Lane: hi Mia, something has come up here, and your visit on Tuesday 9 March, 2:00 pm"
    )
    assert one.text.endswith("Reply STOP to end texts")


def test_ones_own_words_say_who_writes_and_how_to_stop_and_may_use_the_fields(studio: Studio) -> None:
    make_visit(client(studio), starts_at=at(14))

    (one,) = look(studio, "Hi {{ first_name }}, come at 3 pm instead of {{ hour }}.").tell
    assert one.text == "Birch Lane: Hi Mia, come at 3 pm instead of 2:00 pm. Reply STOP to end texts"
    (one,) = look(studio, f"Birch Lane: {LATE}").tell
    assert one.text == f"Birch Lane: {LATE} Reply STOP to end texts"


@pytest.mark.parametrize(
    "words",
    [
        "Ada has an eye infection and is not in.",
        "Your patch test moves to 3 pm.",
        "Ada tuvo una reacción; llámanos.",
        "Tell us of any itching or swollen lids.",
        "Come an hour later and get 10% off.",
        "Book now for tomorrow at $60.",
        "Nothing to worry about: come later.",
        "Details: bit.ly/abc",
        "Hi {{ first_name, come later.",
        "Hi {{ share_left }}, come later.",
        "x" * 590,
    ],
)
def test_words_on_health_offers_and_what_cannot_be_filled_in_are_refused(
    studio: Studio, ada: Staff, words: str
) -> None:
    make_visit(client(studio), starts_at=at(14))

    assert look(studio, words).is_blocked
    with pytest.raises(ValidationError, match="Mend what is wrong"):
        sent(studio, ada, words)
    assert not Message.objects.exists()


@pytest.mark.parametrize(
    "words",
    [LATE, "The water is off: we open at 2 pm. Your visit is moved to 4 pm, reply YES or call us.", "Ada is away."],
)
def test_plain_words_pass(studio: Studio, words: str) -> None:
    assert not look(studio, words).problems


def test_the_same_act_twice_tells_once_and_another_tells_again(studio: Studio, ada: Staff) -> None:
    make_visit(client(studio), starts_at=at(14))

    assert sent(studio, ada) == 1
    assert sent(studio, ada) == 0
    assert look(studio).tell[0].told is not None
    assert sent(studio, ada, LATE, token="another") == 1
    assert Message.objects.filter(occasion=Occasion.NOTICE).count() == 2


def test_it_leaves_by_the_engine_and_in_rehearsal_reaches_the_pretend_phone_only(studio: Studio, ada: Staff) -> None:
    mia = client(studio)
    make_visit(mia, starts_at=at(14))
    planning.plan_clients([mia.pk], NOW)
    sent(studio, ada, LATE)

    tasks.send_due(studio_id=studio.pk, now=NOW)

    notice = Message.objects.get(occasion=Occasion.NOTICE)
    assert notice.state == State.HANDED_OVER
    assert notice.rehearsed
    assert notice.text == f"Birch Lane: {LATE} Reply STOP to end texts"
    assert notice.written_by == ada
    assert Message.objects.filter(occasion=Occasion.OPT_IN, client=mia).exists()  # the first text to her number


def test_before_the_hours_open_it_waits_for_them(studio: Studio, ada: Staff) -> None:
    make_visit(client(studio), starts_at=at(14))
    early = at(7)
    sent(studio, ada, now=early)
    tasks.send_due(studio_id=studio.pk, now=early)
    assert Message.objects.get(occasion=Occasion.NOTICE).state == State.PLANNED

    tasks.send_due(studio_id=studio.pk, now=at(9))

    assert Message.objects.get(occasion=Occasion.NOTICE).state == State.HANDED_OVER


@pytest.mark.parametrize(
    ("changes", "state", "reason"),
    [
        ({"starts_at": at(16)}, State.WITHDRAWN, "the visit was moved"),
        ({"status": "cancelled"}, State.WITHDRAWN, "the visit was cancelled"),
        ({"status": "done"}, State.WITHDRAWN, "the visit is done"),
    ],
)
def test_a_visit_that_changed_since_is_no_longer_spoken_of(
    studio: Studio, ada: Staff, changes: dict[str, Any], state: State, reason: str
) -> None:
    mia = client(studio)
    visit = make_visit(mia, starts_at=at(14))
    sent(studio, ada, now=at(7))
    Visit.objects.filter(pk=visit.pk).update(**changes)

    tasks.send_due(studio_id=studio.pk, now=at(9))

    notice = Message.objects.get(occasion=Occasion.NOTICE)
    assert (notice.state, notice.reason) == (state, reason)


def test_whoever_says_stop_before_it_leaves_is_not_told(studio: Studio, ada: Staff) -> None:
    mia = client(studio)
    make_visit(mia, starts_at=at(14))
    sent(studio, ada, now=at(7))
    stops.stop(mia, "sms", words="STOP", by=None, now=at(8))

    tasks.send_due(studio_id=studio.pk, now=at(9))

    assert Message.objects.get(occasion=Occasion.NOTICE).state == State.WITHHELD


def test_planning_leaves_it_alone(studio: Studio, ada: Staff) -> None:
    mia = client(studio)
    make_visit(mia, starts_at=at(14))
    sent(studio, ada, now=at(7))
    before = Message.objects.filter(occasion=Occasion.NOTICE).values().get()

    planning.plan_studio(studio, at(7))

    assert Message.objects.filter(occasion=Occasion.NOTICE).values().get() == before
