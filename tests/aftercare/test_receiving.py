from __future__ import annotations

from datetime import timedelta

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from aftercare import lines, receiving
from aftercare.models import Line, Reply, Stray
from tests.letters import make_line
from tests.people import NOW, make_studio

pytestmark = pytest.mark.django_db


@pytest.fixture
def sms() -> Line:
    return make_line(make_studio())


@pytest.fixture
def email() -> Line:
    return make_line(make_studio("alder"), "email")


def test_what_she_writes_is_stored_as_it_came(sms: Line) -> None:
    reply = receiving.receive(sms, "+12125550101", " my left eye is red :( \n", provider_ref="7", received_at=NOW)

    found = Reply.objects.get()
    assert found == reply
    assert (found.studio, found.line, found.from_address) == (sms.studio, sms, "+12125550101")
    assert (found.text, found.received_at, found.read_at) == (" my left eye is red :( \n", NOW, None)


def test_the_same_reply_twice_is_one(sms: Line) -> None:
    first = receiving.receive(sms, "+12125550101", "red", provider_ref="7", received_at=NOW)
    again = receiving.receive(sms, "+12125550101", "red", provider_ref="7", received_at=NOW + timedelta(hours=1))

    assert first == again
    assert Reply.objects.get().received_at == NOW


def test_two_lines_of_two_providers_may_use_the_same_reference(sms: Line, email: Line) -> None:
    receiving.receive(sms, "+12125550101", "a", provider_ref="7", received_at=NOW)
    receiving.receive(email, "mia@mail.example", "b", provider_ref="7", received_at=NOW)

    assert Reply.objects.count() == 2


def test_without_a_reference_every_reply_is_its_own(sms: Line) -> None:
    for _ in range(2):
        receiving.receive(sms, "+12125550101", "yes", received_at=NOW)

    assert Reply.objects.count() == 2


def test_long_references_that_begin_alike_are_told_apart(sms: Line) -> None:
    for ending in ("a", "b", "a"):
        receiving.receive(sms, "+12125550101", "yes", provider_ref="x" * 300 + ending, received_at=NOW)

    assert Reply.objects.count() == 2


@pytest.mark.parametrize(
    ("given_as", "kept_as"),
    [
        ("+1 (212) 555-0101", "+12125550101"),
        ("212-555-0101", "+12125550101"),
        ("72345", "72345"),  # a short code
        ("BANK", "BANK"),  # a sender name in letters
        ("", ""),
    ],
)
def test_numbers_are_kept_as_clients_are(sms: Line, given_as: str, kept_as: str) -> None:
    assert receiving.receive(sms, given_as, "hi", received_at=NOW).from_address == kept_as


def test_addresses_are_kept_as_clients_are(email: Line) -> None:
    reply = receiving.receive(email, "Mia Ortega <Mia@Mail.Example>", "hi", received_at=NOW)

    assert reply.from_address == "mia@mail.example"


def test_what_a_database_cannot_keep_is_written_out(sms: Line) -> None:
    receiving.receive(sms, "+12125550101", "a\x00b\ud83d", subject="\x00", raw="\udcff", received_at=NOW)

    reply = Reply.objects.get()
    assert (reply.text, reply.subject, reply.raw) == ("a\\x00b\\ud83d", "\\x00", "\\udcff")


def test_a_text_of_any_length_is_kept_whole(sms: Line) -> None:
    receiving.receive(sms, "+12125550101", "red eye " * 50_000, received_at=NOW)

    assert len(Reply.objects.get().text) == 400_000


def test_what_is_cut_stands_whole_in_the_raw_reply(email: Line) -> None:
    address = "m" * 400 + "@mail.example"

    receiving.receive(email, address, "hi", subject="s" * 1000, received_at=NOW)

    reply = Reply.objects.get()
    assert len(reply.from_address) == 254
    assert address in reply.raw
    assert "s" * 1000 in reply.raw


ANYTHING = st.text(st.characters(exclude_categories=()), max_size=200)  # halves of surrogate pairs too


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=60, deadline=None)
@given(ANYTHING, ANYTHING, ANYTHING, ANYTHING)
def test_nothing_that_comes_in_is_refused(sms: Line, address: str, text: str, reference: str, raw: str) -> None:
    reply = receiving.receive(sms, address, text, provider_ref=reference, raw=raw, received_at=NOW)

    assert "\x00" not in Reply.objects.get(pk=reply.pk).text


def test_texts_to_numbers_that_stay_nobodys_hold_up_no_other(sms: Line) -> None:
    account = lines.account_of(sms)
    for number in range(120):
        facts = {"from_address": "+12125550101", "text": "red", "received_at": NOW, "raw": ""}
        to = sms.address if number == 119 else f"+1212555{9000 + number}"
        Stray.objects.create(account=account, provider_ref=str(number), to_address=to, **facts)

    assert receiving.take_up_strays() == 1

    assert Reply.objects.get().line == sms
    assert Stray.objects.count() == 119
