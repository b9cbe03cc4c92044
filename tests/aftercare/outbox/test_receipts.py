"""Receipts come in any order, twice, before the provider's own answer, and about nothing that we know."""

from __future__ import annotations

from datetime import timedelta

import pytest

from aftercare import outbox
from aftercare.core.delivery import Event
from aftercare.models import Line, Message, Receipt
from aftercare.transports.base import ReceiptNote
from studio.models import Client
from tests.letters import begin, end, make_line, make_message
from tests.people import NOW, make_client, make_studio

pytestmark = pytest.mark.django_db
LATER = NOW + timedelta(minutes=1)
DELIVERED = ReceiptNote(provider_ref="their-7", word="delivered", event=Event.DELIVERED)
BOUNCED = ReceiptNote(provider_ref="their-7", word="bounced", event=Event.FAILED, problem="The mailbox is full.")


@pytest.fixture
def mia() -> Client:
    return make_client(make_studio(), mobile="+12125550101")


@pytest.fixture
def line(mia: Client) -> Line:
    return make_line(mia.studio)


@pytest.fixture
def message(mia: Client, line: Line) -> Message:
    """A message that is on its way to Mia."""
    made = make_message(mia)
    end(begin(line), Event.TAKEN, provider_ref="their-7")
    return made


def state(message: Message) -> str:
    message.refresh_from_db()
    return message.state


def test_a_receipt_delivers_the_message(message: Message, line: Line) -> None:
    receipt = outbox.note_receipt(line, DELIVERED, LATER)

    assert state(message) == "delivered"
    assert (message.handed_over_at, message.ended_at) == (NOW, LATER)
    assert receipt.attempt == message.attempts.get()


def test_a_second_receipt_changes_nothing(message: Message, line: Line) -> None:
    outbox.note_receipt(line, DELIVERED, LATER)
    before = Message.objects.values().get(pk=message.pk)

    outbox.note_receipt(line, DELIVERED, LATER + timedelta(hours=1))

    assert Receipt.objects.count() == 1
    assert Message.objects.values().get(pk=message.pk) == before


def test_bad_news_says_why(message: Message, line: Line) -> None:
    outbox.note_receipt(line, BOUNCED, LATER)

    assert state(message) == "undelivered"
    assert message.reason == "The mailbox is full."


def test_what_has_arrived_has_arrived_whatever_comes_after(message: Message, line: Line) -> None:
    outbox.note_receipt(line, DELIVERED, LATER)
    outbox.note_receipt(line, BOUNCED, LATER)

    assert state(message) == "delivered"
    assert Receipt.objects.count() == 2


def test_no_news_is_kept_and_changes_nothing(message: Message, line: Line) -> None:
    outbox.note_receipt(line, ReceiptNote(provider_ref="their-7", word="queued", event=None), LATER)

    assert state(message) == "handed_over"
    assert Receipt.objects.get().word == "queued"


def test_our_own_reference_is_enough(message: Message) -> None:
    reference = message.attempts.get().reference
    note = ReceiptNote(provider_ref="another", word="delivered", event=Event.DELIVERED, reference=reference)

    receipt = outbox.note_receipt(None, note, LATER)

    assert state(message) == "delivered"
    assert receipt.line == message.attempts.get().line


def test_a_receipt_before_the_providers_answer_is_matched_by_our_reference(mia: Client, line: Line) -> None:
    made = make_message(mia)
    [parcel] = begin(line)
    note = ReceiptNote(provider_ref="x", word="delivered", event=Event.DELIVERED, reference=parcel.reference)

    outbox.note_receipt(line, note, LATER)
    end([parcel], Event.TAKEN, provider_ref="x", now=LATER)

    assert state(made) == "delivered"
    assert made.handed_over_at == LATER


def test_a_receipt_before_the_providers_answer_is_matched_when_that_names_it(mia: Client, line: Line) -> None:
    made = make_message(mia)
    parcels = begin(line)

    outbox.note_receipt(line, DELIVERED, LATER)
    assert state(made) == "handing_over"
    end(parcels, Event.TAKEN, provider_ref="their-7", now=LATER)

    assert state(made) == "delivered"
    assert Receipt.objects.get().attempt == made.attempts.get()


def test_a_receipt_clears_up_what_was_unsure(mia: Client, line: Line) -> None:
    made = make_message(mia)
    [parcel] = begin(line, receipt_wait=300)
    end([parcel], Event.LOST)
    note = ReceiptNote(provider_ref="x", word="delivered", event=Event.DELIVERED, reference=parcel.reference)

    outbox.note_receipt(line, note, LATER)

    assert state(made) == "delivered"
    assert (made.reason, made.lease_until) == ("", None)


def test_a_receipt_of_the_first_try_stops_the_second(mia: Client, line: Line) -> None:
    made = make_message(mia)
    [parcel] = begin(line)
    end([parcel], Event.LOST)
    outbox.resolve_unsure(NOW)
    note = ReceiptNote(provider_ref="x", word="delivered", event=Event.DELIVERED, reference=parcel.reference)

    outbox.note_receipt(line, note, LATER)

    assert state(made) == "delivered"
    assert outbox.claim(LATER, 10) == []


def test_bad_news_of_the_first_try_does_not_end_the_second(mia: Client, line: Line) -> None:
    made = make_message(mia)
    [first] = begin(line)
    end([first], Event.LOST)
    outbox.resolve_unsure(NOW)
    begin(line)
    note = ReceiptNote(provider_ref="x", word="bounced", event=Event.FAILED, reference=first.reference)

    outbox.note_receipt(line, note, LATER)

    assert state(made) == "handing_over"


def test_a_receipt_of_another_studios_line_touches_nothing(message: Message) -> None:
    other = make_line(make_studio("alder"))
    reference = message.attempts.get().reference

    outbox.note_receipt(other, DELIVERED, LATER)
    outbox.note_receipt(
        other, ReceiptNote(provider_ref="z", word="bounced", event=Event.FAILED, reference=reference), LATER
    )

    assert state(message) == "handed_over"
    assert Receipt.objects.filter(attempt=None, line=other).count() == 2


def test_a_stray_receipt_is_kept_once() -> None:
    for _ in range(2):
        outbox.note_receipt(None, ReceiptNote(provider_ref="stray", word="delivered", event=Event.DELIVERED), LATER)

    assert Receipt.objects.get().line is None
