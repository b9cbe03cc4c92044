"""Receipts come in any order, twice, before the provider's own answer, and about nothing that we know."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest

from aftercare import outbox
from aftercare.core.delivery import Event
from aftercare.models import Line, Message, Receipt
from aftercare.transports.base import ReceiptNote
from studio.models import Client
from tests.letters import begin, end, make_message
from tests.people import NOW, make_client

pytestmark = pytest.mark.django_db
LATER = NOW + timedelta(minutes=1)
DELIVERED = ReceiptNote(provider_ref="their-7", word="delivered", event=Event.DELIVERED)
BOUNCED = ReceiptNote(provider_ref="their-7", word="bounced", event=Event.FAILED, problem="The mailbox is full.")


@pytest.fixture
def message(mia: Client, line: Line) -> Message:
    """A message that is on its way to Mia."""
    made = make_message(mia)
    end(begin(line), Event.TAKEN, provider_ref="their-7")
    return made


def keep(note: ReceiptNote, now: datetime = LATER) -> int | None:
    [attempt] = outbox.note_receipts("memory", [note], now)
    return attempt


def state(message: Message) -> str:
    message.refresh_from_db()
    return message.state


def test_a_receipt_delivers_the_message(message: Message, line: Line) -> None:
    attempt = keep(DELIVERED)

    assert state(message) == "delivered"
    assert (message.handed_over_at, message.ended_at) == (NOW, LATER)
    assert attempt == message.attempts.get().pk


def test_a_second_receipt_changes_nothing(message: Message, line: Line) -> None:
    keep(DELIVERED)
    before = Message.objects.values().get(pk=message.pk)

    keep(DELIVERED, LATER + timedelta(hours=1))

    assert Receipt.objects.count() == 1
    assert Message.objects.values().get(pk=message.pk) == before


def test_bad_news_says_why(message: Message, line: Line) -> None:
    keep(BOUNCED)

    assert state(message) == "undelivered"
    assert message.reason == "The mailbox is full."


def test_what_has_arrived_has_arrived_whatever_comes_after(message: Message, line: Line) -> None:
    keep(DELIVERED)
    keep(BOUNCED)

    assert state(message) == "delivered"
    assert Receipt.objects.count() == 2


def test_no_news_is_kept_and_changes_nothing(message: Message, line: Line) -> None:
    keep(ReceiptNote(provider_ref="their-7", word="queued", event=None))

    assert state(message) == "handed_over"
    assert Receipt.objects.get().word == "queued"


def test_our_own_reference_is_enough(message: Message) -> None:
    reference = message.attempts.get().reference
    note = ReceiptNote(provider_ref="another", word="delivered", event=Event.DELIVERED, reference=reference)

    attempt = keep(note)

    assert state(message) == "delivered"
    assert attempt == message.attempts.get().pk


def test_a_receipt_before_the_providers_answer_is_matched_by_our_reference(mia: Client, line: Line) -> None:
    made = make_message(mia)
    [parcel] = begin(line)
    note = ReceiptNote(provider_ref="x", word="delivered", event=Event.DELIVERED, reference=parcel.reference)

    keep(note)
    end([parcel], Event.TAKEN, provider_ref="x", now=LATER)

    assert state(made) == "delivered"
    assert made.handed_over_at == LATER


def test_a_receipt_before_the_providers_answer_is_matched_when_that_names_it(mia: Client, line: Line) -> None:
    made = make_message(mia)
    parcels = begin(line)

    keep(DELIVERED)
    assert state(made) == "handing_over"
    end(parcels, Event.TAKEN, provider_ref="their-7", now=LATER)

    assert state(made) == "delivered"
    assert Receipt.objects.get().attempt == made.attempts.get()


def test_a_receipt_clears_up_what_was_unsure(mia: Client, line: Line) -> None:
    made = make_message(mia)
    [parcel] = begin(line, receipt_wait=300)
    end([parcel], Event.LOST)
    note = ReceiptNote(provider_ref="x", word="delivered", event=Event.DELIVERED, reference=parcel.reference)

    keep(note)

    assert state(made) == "delivered"
    assert (made.reason, made.lease_until) == ("", None)


def test_a_receipt_of_the_first_try_stops_the_second(mia: Client, line: Line) -> None:
    made = make_message(mia)
    [parcel] = begin(line)
    end([parcel], Event.LOST)
    outbox.resolve_unsure(NOW)
    note = ReceiptNote(provider_ref="x", word="delivered", event=Event.DELIVERED, reference=parcel.reference)

    keep(note)

    assert state(made) == "delivered"
    assert outbox.claim(LATER, 10) == []


def test_bad_news_of_the_first_try_does_not_end_the_second(mia: Client, line: Line) -> None:
    made = make_message(mia)
    [first] = begin(line)
    end([first], Event.LOST)
    outbox.resolve_unsure(NOW)
    begin(line)
    note = ReceiptNote(provider_ref="x", word="bounced", event=Event.FAILED, reference=first.reference)

    keep(note)

    assert state(made) == "handing_over"


def test_a_receipt_of_another_account_touches_nothing(message: Message) -> None:
    reference = message.attempts.get().reference
    failed = ReceiptNote(provider_ref="z", word="bounced", event=Event.FAILED, reference=reference)

    assert outbox.note_receipts("other", [DELIVERED, failed], LATER) == [None, None]

    assert state(message) == "handed_over"
    assert Receipt.objects.filter(attempt=None, account="other").count() == 2


def test_a_stray_receipt_is_kept_once() -> None:
    for _ in range(2):
        keep(ReceiptNote(provider_ref="stray", word="delivered", event=Event.DELIVERED))

    assert Receipt.objects.get().attempt is None


def test_many_at_once_are_kept_all_or_none(mia: Client, line: Line, monkeypatch: pytest.MonkeyPatch) -> None:
    made = [make_message(mia) for _ in range(3)]
    for number, parcel in enumerate(begin(line)):
        end([parcel], Event.TAKEN, provider_ref=f"their-{number}")
    notes = [ReceiptNote(provider_ref=f"their-{n}", word="delivered", event=Event.DELIVERED) for n in (0, 1, 0, 9)]

    assert [attempt is not None for attempt in outbox.note_receipts("memory", notes, LATER)] == [
        True,
        True,
        True,
        False,
    ]
    assert [state(message) for message in made] == ["delivered", "delivered", "handed_over"]
    assert Receipt.objects.count() == 3

    monkeypatch.setattr(outbox.receipts, "_follow", lambda *_: 1 / 0)
    with pytest.raises(ZeroDivisionError):
        keep(ReceiptNote(provider_ref="their-2", word="delivered", event=Event.DELIVERED))
    assert Receipt.objects.count() == 3


def test_a_receipt_stored_while_the_answer_was_being_written_is_matched_by_the_next_round(
    message: Message, line: Line
) -> None:
    keep(DELIVERED)
    # As another process sees it that looked before the answer was committed.
    Receipt.objects.update(attempt=None)
    Message.objects.update(state="handed_over")

    outbox.match_strays(LATER + timedelta(hours=2))
    assert state(message) == "handed_over"
    outbox.match_strays(LATER + timedelta(minutes=1))
    assert state(message) == "delivered"


@pytest.mark.parametrize(("occasion", "after"), [("care", "planned"), ("prepare", "undelivered")])
def test_what_did_not_arrive_goes_by_the_other_channel_where_safety_hangs_on_it(
    line: Line, occasion: str, after: str
) -> None:
    zoe = make_client(line.studio, mobile="+12125550102", email="zoe@mail.example")
    made = make_message(zoe, occasion=occasion)
    end(begin(line), Event.TAKEN, provider_ref="their-7")

    keep(BOUNCED)

    assert state(made) == after


def test_a_receipt_of_long_ago_says_nothing_of_a_message_that_got_the_same_number(mia: Client, line: Line) -> None:
    """A carrier's numbers begin anew: what it said of a text that was none of ours is not said of this one."""
    keep(DELIVERED, NOW - timedelta(days=90))
    made = make_message(mia)

    end(begin(line), Event.TAKEN, provider_ref="their-7")

    assert state(made) == "handed_over"


def test_bad_news_before_the_providers_answer_is_not_taken_back_by_it(line: Line) -> None:
    zoe = make_client(line.studio, mobile="+12125550102", email="zoe@mail.example")
    made = make_message(zoe)
    [parcel] = begin(line)
    keep(ReceiptNote(provider_ref="x", word="bounced", event=Event.FAILED, reference=parcel.reference))
    assert (state(made), made.channel) == ("planned", "email")

    end([parcel], Event.TAKEN, provider_ref="x", now=LATER)

    assert (state(made), made.channel) == ("planned", "email")
    assert [message.pk for message in outbox.claim(LATER, 10)] == [made.pk]


def test_what_no_database_keeps_is_written_out(mia: Client, line: Line) -> None:
    made = make_message(mia)
    end(begin(line), Event.TAKEN, provider_ref="7\0")

    keep(ReceiptNote(provider_ref="7\0", word="delivered", event=Event.DELIVERED, raw="id:7 stat:DELIVRD\0\ud83d"))

    assert state(made) == "delivered"
    assert Receipt.objects.get().raw == "id:7 stat:DELIVRD\\x00\\ud83d"
