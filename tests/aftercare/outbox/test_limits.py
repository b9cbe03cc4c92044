"""The owner's limit a day: counted in segments on her own calendar, and never in the way of what safety hangs on."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from aftercare import outbox
from aftercare.core.delivery import Event
from aftercare.models import Line, Spending
from aftercare.outbox import Answered, Parcel, limits
from aftercare.transports.base import Outcome
from studio import clock
from studio.models import Client
from tests.letters import make_line, make_message, parcel_of
from tests.people import make_client, make_studio

pytestmark = pytest.mark.django_db
EVENING = datetime(2027, 3, 10, 3, tzinfo=UTC)  # 10 pm on the 9th in New York
MIDNIGHT = datetime(2027, 3, 10, 5, tzinfo=UTC)


@pytest.fixture
def mia() -> Client:
    return make_client(make_studio(time_zone="America/New_York", live_since=EVENING), mobile="+12125550101")


def parcels(mia: Client, line: Line, *occasions: str, **fields: Any) -> list[Parcel]:
    for occasion in occasions:
        make_message(mia, occasion=occasion, due_at=EVENING - timedelta(days=9))
    found = [parcel_of(message, line, **fields) for message in outbox.claim(EVENING, 50)]
    return sorted(found, key=lambda parcel: parcel.message.pk)


def limited(mia: Client, most_a_day: int | None) -> Line:
    line = make_line(mia.studio)
    line.most_a_day = most_a_day
    line.save()
    return line


def test_what_is_beyond_it_waits_for_the_next_day_of_the_studio(mia: Client) -> None:
    line = limited(mia, 2)
    found = parcels(mia, line, "prepare", "prepare", "prepare")

    assert limits.spend(found, EVENING) == {found[2].message.pk: MIDNIGHT}
    assert Spending.objects.get().segments == 2
    assert limits.spend(found[2:], MIDNIGHT) == {}


def test_a_long_text_costs_what_it_is_billed(mia: Client) -> None:
    line = limited(mia, 3)
    found = parcels(mia, line, "prepare", "prepare", text="x" * 161)

    assert list(limits.spend(found, EVENING)) == [found[1].message.pk]


@pytest.mark.parametrize("occasion", ["care", "check", "answer", "alert", "patch_test", "opt_in"])
def test_what_safety_hangs_on_is_counted_and_never_held(mia: Client, occasion: str) -> None:
    line = limited(mia, 1)

    assert limits.spend(parcels(mia, line, occasion, occasion), EVENING) == {}
    assert Spending.objects.get().segments == 2


def test_without_a_limit_by_mail_and_in_rehearsal_nothing_is_counted(mia: Client) -> None:
    free = limited(mia, None)
    assert limits.spend(parcels(mia, free, "prepare"), EVENING) == {}
    free.most_a_day = 1
    assert limits.spend(parcels(mia, free, "prepare", rehearsed=True), EVENING) == {}
    assert not Spending.objects.exists()


def test_what_was_not_taken_is_given_back_once_and_only_if_it_was_counted(mia: Client) -> None:
    line = limited(mia, 9)
    going, staying = parcels(mia, line, "prepare", "prepare")
    assert limits.spend([going, going], EVENING) == {}
    assert outbox.depart([going], EVENING, clock.now(), 60) == {going.message.pk}
    staying.message.handing_over_at = EVENING  # as the line to the database broke before it was written down

    for _ in range(2):  # the second time as nobody was told that the first was written down
        limits.give_back([going, staying])
        outbox.settle(
            [Answered(one, Outcome(reference=one.reference, event=Event.NOT_TAKEN)) for one in (going, staying)],
            EVENING,
        )

    assert Spending.objects.get().segments == 1
