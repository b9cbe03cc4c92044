"""The morning list on its way: her hour, what waits, the message, and what it must not say."""

from __future__ import annotations

from datetime import timedelta

import pytest

from aftercare import planning, sending, tasks
from aftercare.lines import lines_of
from aftercare.models import Message, Stop
from aftercare.pages import morning
from aftercare.transports import memory
from studio.models import Staff, Studio
from tests.cast import Cast
from tests.letters import MEMORY
from tests.pages import cast, morning_cast, quick_sign_in

__all__ = ["cast", "morning_cast", "quick_sign_in"]


def live(cast: Cast) -> None:
    """Have the studio's messages leave for real, into this process's memory; nothing but lists is due."""
    Studio.objects.update(live_since=cast.now - timedelta(days=30))
    cast.studio.lines.update(transport=MEMORY)
    Message.objects.filter(state="planned").update(state="withdrawn")
    Staff.objects.filter(pk=cast.ada.pk).update(mobile="+12125550111")


def lists(cast: Cast, hour: float = 7.5) -> list[str]:
    """Send what is due at that hour; return the texts of the morning lists."""
    before = len(memory.taken)
    planning.plan_mornings(cast.at(hour), studio=cast.studio)
    tasks.send_due(studio_id=cast.studio.pk, now=cast.at(hour))
    found = Message.objects.filter(occasion="morning_list").values_list("text", flat=True)
    return [one.text for one in memory.taken[before:] if one.text in set(found)]


def test_it_counts_what_waits_and_names_nobody(morning_cast: Cast, settings: pytest.FixtureRequest) -> None:
    settings.PUBLIC_URL = "https://a.example"  # type: ignore[attr-defined]  # pytest-django's
    live(morning_cast)

    [text] = lists(morning_cast)

    assert text.startswith("Wrenfield Lash Room: open: 1, urgent: 0, other lines: ")
    assert text.endswith(" https://a.example/morning")
    assert not [her for her in morning_cast.clients if her in text]
    assert not [sign for sign in ("eye", "swollen", "itch", "puffy") if sign in text]


def test_it_goes_too_when_nothing_is_open_and_never_says_all_clear(cast: Cast) -> None:
    lines_of(cast.studio)
    live(cast)

    [text] = lists(cast)

    assert "nothing open" in text
    assert "clear" not in text


def test_an_owner_who_treats_nobody_is_told_of_all_that_is_open(morning_cast: Cast) -> None:
    live(morning_cast)
    Staff.objects.filter(pk=morning_cast.olga.pk).update(mobile="+12125550112")
    everything = morning.morning_list(morning_cast.studio, morning_cast.at(7.5))

    lists(morning_cast)

    olgas = Message.objects.get(staff=morning_cast.olga)
    assert f"open: {len(everything.matters)}, urgent: 0, other lines: {len(everything.unkept)}." in olgas.text


def test_what_is_urgent_is_counted_apart(cast: Cast) -> None:
    for name, urgency in (("Mia", "emergency"), ("Ida", "same_day"), ("Zoe", "unread")):
        her = cast.client(name)
        cast.done(her, cast.at(10, -1))
        cast.wrote(her, "…", cast.at(5), urgency=urgency)
    live(cast)

    [text] = lists(cast)

    assert "open: 3, urgent: 2, " in text


def test_it_goes_once_a_day(cast: Cast) -> None:
    lines_of(cast.studio)
    live(cast)

    assert [len(lists(cast, hour)) for hour in (7, 7.5, 7.6, 10)] == [0, 1, 0, 0]


def test_what_comes_four_hours_late_is_withheld(cast: Cast) -> None:
    lines_of(cast.studio)
    live(cast)
    planning.plan_mornings(cast.at(7.5))

    assert lists(cast, 12) == []
    assert Message.objects.get().reason == "too late"


@pytest.mark.parametrize(
    ("fields", "state"), [({"is_active": False}, "withdrawn"), ({"mobile": "", "email": ""}, "withheld")]
)
def test_it_is_judged_anew_before_it_leaves(cast: Cast, fields: dict[str, object], state: str) -> None:
    lines_of(cast.studio)
    live(cast)
    planning.plan_mornings(cast.at(7.5))
    Staff.objects.update(**fields)

    assert lists(cast) == []
    assert Message.objects.get().state == state


def test_a_stop_after_the_promise_holds_it(cast: Cast) -> None:
    lines_of(cast.studio)
    live(cast)
    planning.plan_mornings(cast.at(7.5))
    Stop.objects.create(line=lines_of(cast.studio)["sms"], address="+12125550111", at=cast.now)

    assert lists(cast) == []
    assert Message.objects.get().state == "withheld"


def test_in_rehearsal_it_reaches_the_pretend_phone_alone(cast: Cast) -> None:
    lines_of(cast.studio)
    live(cast)
    Studio.objects.update(live_since=None)

    assert lists(cast) == []
    assert (Message.objects.get().state, Message.objects.get().rehearsed) == ("handed_over", True)


def test_by_email_it_has_no_link_to_unsubscribe(cast: Cast) -> None:
    lines_of(cast.studio)
    live(cast)
    Staff.objects.update(mobile="", email="")
    Staff.objects.filter(pk=cast.olga.pk).update(email="olga@mail.example")

    lists(cast)

    [sent] = memory.taken
    assert (sent.address, sent.subject, dict(sent.headers)) == ("olga@mail.example", "Your morning list", {})


def test_who_sends_without_looking_says_nothing_rather_than_nothing_open(cast: Cast) -> None:
    lines_of(cast.studio)
    live(cast)
    planning.plan_mornings(cast.at(7.5))

    sending.sweep(cast.at(7.5))

    assert memory.taken == []
    assert "What waits for her is not known" in Message.objects.get().reason
