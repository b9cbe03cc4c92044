"""What a book writes of clients and of what they agreed to."""

from __future__ import annotations

from datetime import timedelta
from itertools import product
from typing import Any

import pytest

from studio import records
from studio.models import Client, ClientRef, Consent, Studio, Visit
from tests.books import bring_in, row
from tests.people import NOW, make_studio

pytestmark = pytest.mark.django_db

LATER = NOW + timedelta(hours=5)


@pytest.fixture
def studio() -> Studio:
    return make_studio()


def newest(channel: str = "sms", purpose: str = "visits") -> bool | None:
    found = Consent.objects.filter(channel=channel, purpose=purpose).order_by("-at", "-pk").first()
    return found.given if found else None


def answer(given: bool, channel: str = "sms") -> None:
    """A person here writes down what she said by telephone."""
    records.give_consent(
        client=Client.objects.get(),
        channel=channel,
        purpose="visits",
        given=given,
        how="by telephone",
        by=None,
        now=NOW,
    )


def test_every_column_about_a_client_is_kept(studio: Studio) -> None:
    says: dict[str, Any] = {
        "first_name": "Mia",
        "last_name": "Ortega",
        "mobile": "+12125550123",
        "email": "mia@mail.example",
        "time_zone": "America/Chicago",
        "language": "es-MX",
        "sensitive": True,
        "under_18": False,
        "wears_lenses": True,
    }

    bring_in(studio, row(**says))

    assert Client.objects.values(*says).get() == says
    assert ClientRef.objects.get().said == says


def test_what_is_not_stated_is_not_known(studio: Studio) -> None:
    bring_in(studio, row())

    client = Client.objects.get()
    assert (client.mobile, client.email, client.time_zone, client.language) == ("", "", "", "")
    assert (client.sensitive, client.under_18, client.wears_lenses) == (None, None, None)


def test_only_the_fields_that_changed_are_written(studio: Studio) -> None:
    bring_in(studio, row(last_name="Ortega", email="mia@mail.example", mobile="+12125550123"))
    client = Client.objects.get()
    records.save_client(studio=studio, client=client, by=None, now=NOW, last_name="Halloran", email="own@mail.example")

    bring_in(studio, row(last_name="Ortega", email="mia@mail.example", mobile="+12125550124"))

    client.refresh_from_db()
    assert (client.last_name, client.email, client.mobile) == ("Halloran", "own@mail.example", "+12125550124")


def test_what_a_person_wrote_is_written_over_once_the_book_changes_that_very_field(studio: Studio) -> None:
    bring_in(studio, row(email="mia@mail.example"))
    records.save_client(studio=studio, client=Client.objects.get(), by=None, now=NOW, email="own@mail.example")

    bring_in(studio, row(email="new@mail.example"))

    assert Client.objects.get().email == "new@mail.example"


def test_blank_after_a_value_changes_nothing_and_the_same_value_after_blank_is_no_news(studio: Studio) -> None:
    bring_in(studio, row(email="mia@mail.example", sensitive=True))

    bring_in(studio, row())
    again = bring_in(studio, row(email="mia@mail.example", sensitive=True))

    client = Client.objects.get()
    assert (client.email, client.sensitive) == ("mia@mail.example", True)
    assert again.counts()["clients"] == {"new": 0, "changed": 0, "same": 1}


def test_clients_who_share_a_number_and_an_address_stay_two(studio: Studio) -> None:
    same: dict[str, Any] = {"mobile": "+12125550101", "email": "home@mail.example"}

    bring_in(studio, row(**same), row("V2", "C2", first_name="Zoe", **same))

    assert sorted(Client.objects.values_list("first_name", flat=True)) == ["Mia", "Zoe"]


def test_each_channel_and_purpose_has_an_answer_of_its_own(studio: Studio) -> None:
    bring_in(studio, row(sms_ok=True, email_ok=False, sms_reminders_ok=False, email_reminders_ok=True))

    rows = Consent.objects.values_list("channel", "purpose", "given", "how", "at")
    assert set(rows) == {
        ("sms", "visits", True, "appointment book", NOW),
        ("email", "visits", False, "appointment book", NOW),
        ("sms", "reminders", False, "appointment book", NOW),
        ("email", "reminders", True, "appointment book", NOW),
    }


def test_blank_says_nothing_about_consent(studio: Studio) -> None:
    bring_in(studio, row(sms_ok=True))

    bring_in(studio, row())

    assert list(Consent.objects.values_list("channel", "given")) == [("sms", True)]


@pytest.mark.parametrize("said", list(product([True, False], repeat=4)))
def test_after_the_first_no_a_book_never_says_yes_again(studio: Studio, said: tuple[bool, ...]) -> None:
    for number, yes in enumerate(said):
        bring_in(studio, row(sms_ok=yes), now=NOW + timedelta(hours=number))

    assert newest() is all(said)


def test_no_after_yes_withdraws_and_both_answers_are_kept(studio: Studio) -> None:
    bring_in(studio, row(sms_ok=True))

    bring_in(studio, row(sms_ok=False), now=LATER)

    assert list(Consent.objects.values_list("given", "at")) == [(True, NOW), (False, LATER)]


def test_a_no_counts_even_where_it_is_imported_with_an_earlier_now(studio: Studio) -> None:
    bring_in(studio, row(sms_ok=True), now=LATER)

    bring_in(studio, row(sms_ok=False), now=NOW)

    assert newest() is False


def test_yes_never_undoes_an_opt_out_that_was_heard_here(studio: Studio) -> None:
    bring_in(studio, row(sms_ok=True))
    answer(False)

    bring_in(studio, row(sms_ok=False), now=LATER)
    bring_in(studio, row(sms_ok=True), now=LATER + timedelta(days=1))

    assert newest() is False


def test_a_consent_heard_here_after_the_books_no_stands_until_the_book_says_no_anew(studio: Studio) -> None:
    bring_in(studio, row(sms_ok=False))
    answer(True)

    bring_in(studio, row(sms_ok=False), now=LATER)

    assert newest() is True


def test_a_first_yes_for_a_client_who_was_asked_here_before_changes_nothing(studio: Studio) -> None:
    bring_in(studio, row())
    answer(False)

    bring_in(studio, row(sms_ok=True), now=LATER)

    assert newest() is False


def test_of_two_references_of_one_client_the_no_wins(studio: Studio) -> None:
    bring_in(studio, row(), row("V2", "C2"))
    kept, gone = Client.objects.order_by("pk")
    records.merge(kept=kept, gone=gone, by=None, now=NOW)

    bring_in(studio, row(sms_ok=False), row("V2", "C2", sms_ok=True), now=LATER)

    assert newest() is False


def test_the_same_book_after_a_merge_brings_nobody_back(studio: Studio) -> None:
    rows = (row(email="a@mail.example"), row("V2", "C2", email="b@mail.example"))
    bring_in(studio, *rows)
    kept, gone = Client.objects.order_by("pk")
    records.merge(kept=kept, gone=gone, by=None, now=NOW)

    found = bring_in(studio, *rows, row("V3", "C2", email="b@mail.example"))

    assert found.counts() == {
        "visits": {"new": 1, "changed": 0, "same": 2, "gone": 0},
        "clients": {"new": 0, "changed": 0, "same": 2},
    }
    assert set(Visit.objects.values_list("client", flat=True)) == {kept.pk}


def test_a_calendars_new_reference_stands_beside_the_one_she_is_known_by(studio: Studio) -> None:
    bring_in(studio, row(client="mia"), source="ics")
    now_with_address = row(client="mia@mail.example", email="mia@mail.example")

    bring_in(studio, now_with_address, source="ics")
    again = bring_in(studio, now_with_address, row("V2", "mia"), source="ics")

    assert set(ClientRef.objects.values_list("reference", flat=True)) == {"mia", "mia@mail.example"}
    assert again.counts()["clients"] == {"new": 0, "changed": 0, "same": 2}
    assert Client.objects.get().visits.count() == 2
