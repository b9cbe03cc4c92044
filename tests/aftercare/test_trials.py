"""Trying a wording out on oneself."""

from __future__ import annotations

from datetime import time, timedelta

import pytest
from django.core.exceptions import ValidationError

from aftercare import stops, tasks, trials
from aftercare.lines import lines_of
from aftercare.models import Message, Stop
from aftercare.transports import memory
from aftercare.wording import Words
from tests.cast import Cast, make

WORDS = Words("Your visit", "Hi Mia,\n\nRinse first.\n\nAda", "en", caution="Rinse first.")


@pytest.fixture
def cast(db: None, settings) -> Cast:  # type: ignore[no-untyped-def]
    settings.AFTERCARE = {
        **settings.AFTERCARE,
        **{name: {"TRANSPORT": "aftercare.transports.memory.Memory", "OPTIONS": {}} for name in ("SMS", "EMAIL")},
    }
    cast = make()
    cast.olga.mobile, cast.olga.email = "+12125550147", "olga@wrenfield.example"
    cast.olga.morning_at = time(23)  # no list of hers gets in between
    cast.olga.save()
    return cast


def live(cast: Cast) -> None:
    cast.studio.live_since = cast.now
    cast.studio.save()


def test_in_rehearsal_it_reaches_the_pretend_phone_alone(cast: Cast) -> None:
    trials.send(WORDS, "sms", to=cast.olga, token="1", now=cast.now)
    tasks.send_due(now=cast.now)

    assert memory.taken == []
    assert Message.objects.get().rehearsed


@pytest.mark.parametrize(
    ("channel", "address", "text"),
    [("sms", "+12125550147", "Test: Hi Mia,"), ("email", "olga@wrenfield.example", "Hi Mia,")],
)
def test_live_it_goes_to_her_own_number_or_address_and_says_that_it_is_a_test(
    channel: str, address: str, text: str, cast: Cast
) -> None:
    live(cast)

    trials.send(WORDS, channel, to=cast.olga, token="1", now=cast.now)
    tasks.send_due(now=cast.now)

    [sent] = memory.taken
    assert (sent.channel, sent.address) == (channel, address)
    assert sent.text.startswith(text)
    assert "\x1e" not in sent.text + sent.html
    assert Message.objects.get().text == sent.text
    if channel == "email":
        assert sent.subject == "Test: Your visit"
        assert '<div class="caution">\n<p>Rinse first.</p>' in sent.html


def test_the_same_button_pressed_twice_is_one_test(cast: Cast) -> None:
    assert trials.send(WORDS, "sms", to=cast.olga, token="1", now=cast.now)
    assert not trials.send(WORDS, "sms", to=cast.olga, token="1", now=cast.now)

    assert Message.objects.count() == 1


def test_after_so_many_within_an_hour_she_waits(cast: Cast) -> None:
    for number in range(trials.MOST):
        trials.send(WORDS, "sms", to=cast.olga, token=str(number), now=cast.now)

    with pytest.raises(ValidationError, match="wait a little"):
        trials.send(WORDS, "email", to=cast.olga, token="x", now=cast.now)

    assert trials.send(WORDS, "sms", to=cast.olga, token="y", now=cast.now + timedelta(minutes=61))
    trials.send(WORDS, "sms", to=cast.olga, token="z", now=cast.now + timedelta(minutes=61))
    assert Message.objects.count() == trials.MOST + 2


@pytest.mark.parametrize("channel", ["sms", "email"])
def test_without_a_number_or_address_of_her_own_there_is_no_test(channel: str, cast: Cast) -> None:
    with pytest.raises(ValidationError, match="on record"):
        trials.send(WORDS, channel, to=cast.ada, token="1", now=cast.now)

    assert not Message.objects.exists()


def test_it_follows_her_to_no_other_number_and_comes_not_late(cast: Cast) -> None:
    live(cast)
    trials.send(WORDS, "sms", to=cast.olga, token="1", now=cast.now)
    trials.send(WORDS, "email", to=cast.olga, token="2", now=cast.now - timedelta(hours=2))
    cast.olga.mobile = "+12125550148"
    cast.olga.save()

    tasks.send_due(now=cast.now)

    assert memory.taken == []
    assert set(Message.objects.values_list("state", flat=True)) == {"withheld"}


def test_it_never_passes_a_stop_of_her_own(cast: Cast) -> None:
    live(cast)
    Stop.objects.create(line=lines_of(cast.studio)["sms"], address="+12125550147", at=cast.now)
    stops.unsubscribe(lines_of(cast.studio)["email"], "olga@wrenfield.example", now=cast.now)
    for channel in ("sms", "email"):
        trials.send(WORDS, channel, to=cast.olga, token=channel, now=cast.now)

    tasks.send_due(now=cast.now)

    assert memory.taken == []
