"""What came back goes by the other channel, once."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from aftercare.models import Message
from aftercare.outbox import falling_back
from studio.models import Client, Consent
from tests.letters import make_message
from tests.people import NOW, make_client, make_studio

pytestmark = pytest.mark.django_db


def reachable(*, texts: bool = True) -> Client:
    her = make_client(make_studio(), email="mia@mail.example", mobile="+12125550101")
    if texts:
        Consent.objects.create(client=her, channel="sms", purpose="visits", given=True, at=NOW, how="on paper")
    return her


def came_back(her: Client, **fields: Any) -> Message:
    message = make_message(her, **{"channel": "email", **fields})
    Message.objects.filter(pk=message.pk).update(state="undelivered", reason="550 5.1.1", ended_at=NOW)
    return message


def falls_back(message: Message) -> bool:
    """Whether it is set to go by the other channel."""
    message.refresh_from_db()
    falling_back.fall_back([message], NOW)
    changed = message.state == "planned"
    message.save(update_fields=falling_back.CHANGED)
    return changed


@pytest.mark.parametrize("occasion", ["care", "check", "patch_test", "notice"])
def test_what_her_eyes_hang_on_goes_by_the_other_channel(occasion: str) -> None:
    message = came_back(reachable(), occasion=occasion)

    assert falls_back(message)
    assert (message.state, message.channel, message.fell_back, message.due_at) == ("planned", "sms", True, NOW)


def test_it_goes_once_only() -> None:
    message = came_back(reachable())
    Message.objects.filter(pk=message.pk).update(fell_back=True)

    assert not falls_back(message)
    assert message.state == "undelivered"


@pytest.mark.parametrize(
    "fields", [{"occasion": "fill_due"}, {"occasion": "prepare"}, {"no_later_than": NOW - timedelta(minutes=1)}]
)
def test_what_may_be_missed_and_what_is_too_late_stays_undelivered(fields: dict[str, Any]) -> None:
    message = came_back(reachable(), **fields)

    assert not falls_back(message)
    assert message.reason == "550 5.1.1"


def test_without_another_way_to_her_it_stays_undelivered_and_is_told() -> None:
    assert not falls_back(came_back(reachable(texts=False)))


def test_what_arrived_after_all_stays() -> None:
    message = came_back(reachable())
    Message.objects.filter(pk=message.pk).update(state="delivered")

    assert not falls_back(message)
    assert message.state == "delivered"
