"""The journal: written before the first byte leaves, and only for what may still go."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import nullcontext
from datetime import timedelta
from typing import Any

import pytest
from django.db import IntegrityError, connection, transaction
from django.utils.safestring import mark_safe

from aftercare import outbox
from aftercare.models import Attempt, Line, Message, Stop
from aftercare.outbox import Parcel
from aftercare.transports.smpp.session import has_come
from studio import clock
from studio.models import Client, Studio
from tests.letters import begin, make_line, make_message, parcel_of
from tests.people import NOW, make_client

ON_POSTGRES = connection.vendor == "postgresql"
# What is asked beside other work is asked on another connection, which sees only what is committed.
pytestmark = pytest.mark.django_db(transaction=ON_POSTGRES)

Depart = Callable[..., set[int]]


@pytest.fixture(params=["at once", "beside other work"] if ON_POSTGRES else ["at once"])
def depart(request: pytest.FixtureRequest) -> Iterator[Depart]:
    """Both ways to write down that parcels leave."""
    if request.param == "at once":
        yield lambda *parcels: outbox.depart(parcels, NOW, clock.now(), 60)
        return
    departures = outbox.Departures()

    def beside(*parcels: Parcel) -> set[int]:
        departures.begin(parcels, NOW, clock.now(), 60)
        return departures.end()

    yield beside
    departures.close()


def test_it_is_written_down_before_the_first_byte_leaves(mia: Client, line: Line) -> None:
    make_message(mia)

    [parcel] = begin(line, patience=60)

    message, attempt = Message.objects.get(), Attempt.objects.get()
    assert (message.state, message.handing_over_at) == ("handing_over", NOW)
    assert (message.line, message.address, message.text) == (line, "+12125550101", "Hello Mia")
    assert message.lease_until is not None
    assert message.lease_until > clock.now()
    assert (attempt.message, attempt.number, attempt.line, attempt.provider) == (message, 1, line, "memory")
    assert (attempt.reference, attempt.started_at, attempt.ended_at) == (parcel.reference, NOW, None)


@pytest.mark.parametrize(("text", "segments"), [("a" * 160, 1), ("a" * 161, 2), ("ł" * 71, 2)])
def test_what_a_text_costs_is_kept_with_it(text: str, segments: int, mia: Client, line: Line, depart: Depart) -> None:
    """Source: 3GPP TS 23.038 and 23.040: 160 septets or 70 UTF-16 units in one segment."""
    make_message(mia)
    [message] = outbox.claim(NOW, 10)

    depart(parcel_of(message, line, text=text))

    assert Message.objects.get().segments == segments


def test_an_e_mail_has_no_segments_but_keeps_those_of_the_text_before_it(
    mia: Client, line: Line, depart: Depart
) -> None:
    make_message(mia, segments=2)
    make_message(mia)
    email = make_line(mia.studio, "email")

    depart(*[parcel_of(message, email) for message in outbox.claim(NOW, 10)])

    assert list(Message.objects.order_by("pk").values_list("segments", flat=True)) == [2, None]


@pytest.mark.parametrize("ahead", [True, False], ids=["ahead", "as it leaves"])
def test_it_is_written_down_as_it_was_judged_whenever_that_was_worked_out(
    mia: Client, line: Line, depart: Depart, *, ahead: bool
) -> None:
    texts = ("", "NULL", 'a "b", {c}', "tab\tand\nline", "back\\slash 100 %s", mark_safe("Zoë 👁"))
    for _ in texts:
        make_message(mia)
    parcels = [parcel_of(one, line, text=text) for one, text in zip(outbox.claim(NOW, 10), texts, strict=True)]
    for place, parcel in enumerate(parcels):
        parcel.subject, parcel.worded, parcel.as_of = f"{parcel.text[:3]}…", f"care@{place}", [1, None][place % 2]
        if ahead:
            outbox.ready(parcel)

    assert len(depart(*parcels)) == len(texts)

    for parcel in parcels:
        message, attempt = Message.objects.get(pk=parcel.message.pk), Attempt.objects.get(message=parcel.message.pk)
        assert (message.text, message.subject, message.worded) == (parcel.text, parcel.subject, parcel.worded)
        assert (message.address, message.line_id, message.rehearsed) == (parcel.address, line.pk, parcel.rehearsed)
        assert (attempt.reference, attempt.provider) == (parcel.reference, parcel.provider)
        assert {name: getattr(message, name) for name in ("text", "state", "segments", "lease_until")} == {
            name: getattr(parcel.message, name) for name in ("text", "state", "segments", "lease_until")
        }


def test_only_what_is_still_the_senders_own_may_go(mia: Client, line: Line, depart: Depart) -> None:
    mine, planned_anew, claimed_again = make_message(mia), make_message(mia), make_message(mia)
    parcels = [parcel_of(message, line) for message in outbox.claim(NOW, 10)]
    outbox.replan([planned_anew])
    hers = Message.objects.filter(pk=claimed_again.pk)
    hers.update(lease_until=clock.now() + timedelta(seconds=999))  # it had expired

    assert depart(*parcels) == {mine.pk}
    assert outbox.depart([], NOW, clock.now(), 60) == set()

    assert Attempt.objects.get().message == mine
    assert list(Message.objects.order_by("pk").values_list("state", flat=True)) == [
        "handing_over",
        "planned",
        "claimed",
    ]


def _stop(client: Client, line: Line) -> None:
    Stop.objects.create(line=line, address=client.mobile, at=NOW)


def _lifted(client: Client, line: Line) -> None:
    Stop.objects.create(line=line, address=client.mobile, at=NOW, lifted_at=NOW)


def _by_another_line(client: Client, line: Line) -> None:
    Stop.objects.create(line=make_line(client.studio, "email"), address=client.mobile, at=NOW)


def _changed(client: Client, line: Line) -> None:
    Client.objects.update(revision=client.revision + 1, planned_revision=client.revision + 1)


def _not_planned_yet(client: Client, line: Line) -> None:
    Client.objects.update(revision=client.revision, planned_revision=client.revision - 1)


def _gone_live(client: Client, line: Line) -> None:
    Studio.objects.update(live_since=NOW)


@pytest.mark.parametrize(
    ("happens", "fields", "goes"),
    [
        (_stop, {}, False),
        (_stop, {"heeds_stops": False}, True),
        (_lifted, {}, True),
        (_by_another_line, {}, True),
        (_changed, {}, False),
        (_changed, {"as_of": None}, True),
        (_not_planned_yet, {}, False),
        (_not_planned_yet, {"as_of": None}, True),
        (_gone_live, {}, False),
    ],
)
def test_what_happened_since_it_was_judged_keeps_it_from_leaving(
    happens: Callable[[Client, Line], None], fields: dict[str, Any], goes: bool, mia: Client, line: Line, depart: Depart
) -> None:
    other = make_message(make_client(mia.studio, "Noor", mobile="+12125550102"))
    message = make_message(mia)
    Client.objects.update(revision=5, planned_revision=5)
    mia.refresh_from_db()
    noor, hers = [
        parcel_of(one, line, **({"as_of": 5, **fields} if one == message else {"address": "+12125550102"}))
        for one in sorted(outbox.claim(NOW, 10), key=lambda one: one.pk)
    ]
    happens(mia, line)

    gone = depart(noor, hers)

    assert (message.pk in gone) is goes
    assert (other.pk in gone) is (happens is not _gone_live)
    assert set(Attempt.objects.values_list("message", flat=True)) == gone
    assert set(Message.objects.filter(state="handing_over").values_list("pk", flat=True)) == gone
    assert hers.message.state == ("handing_over" if goes else "claimed")


def test_an_attempt_that_stands_already_keeps_all_from_leaving(mia: Client, line: Line, depart: Depart) -> None:
    make_message(mia)
    make_message(mia)
    one, other = (parcel_of(message, line) for message in outbox.claim(NOW, 10))
    other.reference = one.reference

    with pytest.raises(IntegrityError), nullcontext() if ON_POSTGRES else transaction.atomic():
        depart(one, other)

    assert not Attempt.objects.exists()
    assert set(Message.objects.values_list("state", flat=True)) == {"claimed"}


@pytest.mark.skipif(not ON_POSTGRES, reason="SQLite has one writer: there is nothing beside it")
def test_other_work_goes_on_until_it_is_written_down(mia: Client, line: Line) -> None:
    """Somebody else has the client's row: what is asked waits for them, and its sender does not."""
    make_message(mia)
    parcels = [parcel_of(message, line) for message in outbox.claim(NOW, 10)]
    departures = outbox.Departures()
    with transaction.atomic():
        held = Message.objects.select_for_update().get()

        departures.begin(parcels, NOW, clock.now(), 60)

        assert not has_come(departures.fileno(), seconds=0.2)
        assert not departures.are_written()
    assert has_come(departures.fileno(), seconds=5.0)
    assert departures.end() == {held.pk}
    departures.close()
