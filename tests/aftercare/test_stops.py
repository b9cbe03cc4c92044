from __future__ import annotations

from datetime import timedelta

import pytest
from django.core.exceptions import ValidationError

from aftercare import facts, stops
from aftercare.core.timing import Reason
from aftercare.lines import lines_of
from aftercare.models import Line, Stop
from studio.models import Client
from tests.letters import make_line
from tests.people import NOW, make_client, make_staff, make_studio

pytestmark = pytest.mark.django_db


def test_a_stop_holds_for_everyone_who_shares_the_number() -> None:
    studio = make_studio()
    ada = make_staff(studio)
    zoe, sister = (make_client(studio, name, mobile="+12125550101") for name in ("Zoe", "Ida"))
    other = make_client(studio, "Mia", mobile="+12125550102")

    stops.stop(zoe, "sms", words="by telephone: no more texts", by=ada, now=NOW)

    assert list(stops.standing(sister)) == ["sms"]
    assert stops.standing(other) == {}
    assert set(Client.objects.values_list("first_name", "revision")) == {("Zoe", 2), ("Ida", 2), ("Mia", 1)}


def test_the_same_number_in_another_studio_is_not_stopped() -> None:
    zoe = make_client(make_studio(), "Zoe", mobile="+12125550101")
    elsewhere = make_client(make_studio("elm"), "Zoe", mobile="+12125550101")

    stops.stop(zoe, "sms", words="no more", by=None, now=NOW)

    assert stops.standing(elsewhere) == {}


def test_a_stop_of_an_address_does_not_ask_for_capitals() -> None:
    zoe = make_client(make_studio(), "Zoe", email="Zoe@Mail.example")

    stops.stop(zoe, "email", words="no more", by=None, now=NOW)

    assert Stop.objects.get().address == "zoe@mail.example"
    assert stops.stopped_channels([zoe]) == {"email"}


def test_a_second_stop_keeps_the_first_ones_words() -> None:
    zoe = make_client(make_studio(), "Zoe", mobile="+12125550101")

    for words in ("please stop", "I said stop"):
        stops.stop(zoe, "sms", words=words, by=None, now=NOW)

    assert Stop.objects.get().words == "please stop"


def test_without_a_number_there_is_nothing_to_stop() -> None:
    with pytest.raises(ValidationError, match="card"):
        stops.stop(make_client(make_studio()), "sms", words="no more", by=None, now=NOW)


def test_lifting_says_by_whom_and_how_and_keeps_the_stop_as_history() -> None:
    studio = make_studio()
    ada, zoe = make_staff(studio), make_client(studio, "Zoe", mobile="+12125550101")
    stops.stop(zoe, "sms", words="no more", by=ada, now=NOW)

    lifted = stops.lift(zoe, "sms", how="in person", by=ada, now=NOW)
    again = stops.lift(zoe, "sms", how="in person", by=ada, now=NOW)

    row = Stop.objects.get()
    assert (lifted, again) == (True, False)
    assert (row.lifted_at, row.lifted_how, row.lifted_by, row.words) == (NOW, "in person", ada, "no more")
    assert stops.standing(zoe) == {}


def test_unsubscribing_ends_all_email_to_an_address_whoever_has_it() -> None:
    studio = make_studio()
    zoe, sister = (
        make_client(studio, name, email=email) for name, email in (("Zoe", "Z@m.example"), ("Ida", "z@m.example"))
    )
    other = make_client(studio, "Mia", email="mia@m.example", mobile="+12125550102")
    line = lines_of(studio)["email"]

    news = stops.unsubscribe(line, "Z@M.example", now=NOW)

    assert news
    assert stops.is_unsubscribed(line, "z@m.EXAMPLE")
    assert list(stops.standing(zoe)) == list(stops.standing(sister)) == ["email"]
    assert stops.standing(other) == {}
    assert set(Client.objects.values_list("first_name", "revision")) == {("Zoe", 2), ("Ida", 2), ("Mia", 1)}


def test_unsubscribing_again_changes_nothing() -> None:
    zoe = make_client(make_studio(), "Zoe", email="zoe@m.example")
    line = lines_of(zoe.studio)["email"]
    stops.unsubscribe(line, "zoe@m.example", now=NOW)

    news = stops.unsubscribe(line, "zoe@m.example", now=NOW + timedelta(days=1))

    assert not news
    assert Stop.objects.get().at == NOW
    assert Client.objects.get().revision == 2


def test_unsubscribing_holds_for_the_line_in_use_and_for_the_one_that_wrote_once() -> None:
    studio = make_studio()
    old = make_line(studio, "email")
    Line.objects.filter(pk=old.pk).update(is_active=False)
    new = make_line(studio, "email")
    elsewhere = make_line(make_studio("elm"), "email")

    stops.unsubscribe(old, "nobody@known.example", now=NOW)

    assert set(Stop.objects.values_list("line", flat=True)) == {old.pk, new.pk}
    assert not stops.is_unsubscribed(elsewhere, "nobody@known.example")


def test_an_old_link_ends_what_she_had_asked_for_again() -> None:
    zoe = make_client(make_studio(), "Zoe", email="zoe@m.example")
    line = lines_of(zoe.studio)["email"]
    stops.unsubscribe(line, zoe.email, now=NOW)
    stops.lift(zoe, "email", how="in person", by=None, now=NOW)

    assert not stops.is_unsubscribed(line, zoe.email)
    assert stops.unsubscribe(line, zoe.email, now=NOW)
    assert stops.is_unsubscribed(line, zoe.email)


def test_nobody_lifts_a_stop_without_saying_how_she_asked() -> None:
    zoe = make_client(make_studio(), "Zoe", mobile="+12125550101")
    stops.stop(zoe, "sms", words="no more", by=None, now=NOW)

    with pytest.raises(ValidationError):
        stops.lift(zoe, "sms", how=" ", by=None, now=NOW)

    assert list(stops.standing(zoe)) == ["sms"]


def test_an_address_that_nobody_has_is_as_good_as_none_and_a_new_one_is_free_at_once() -> None:
    her = make_client(make_studio(), email="Mia@mail.example")
    line = lines_of(her.studio)["email"]

    assert stops.rest(line, "mia@mail.example", now=NOW, words="550 5.1.1")
    assert not stops.rest(line, "mia@mail.example", now=NOW)

    book = facts.load([her.pk], NOW)[her.pk]
    assert (book.reach.reason, book.resting) == (Reason.NO_WAY, {"email": "bounced"})
    her.refresh_from_db()
    assert her.revision > her.planned_revision  # she is planned anew
    Client.objects.filter(pk=her.pk).update(email="mia@new.example")
    assert facts.load([her.pk], NOW)[her.pk].reach.address == "mia@new.example"


def test_an_address_rests_in_its_own_studio_alone() -> None:
    her, other = (
        make_client(make_studio(), email="mia@mail.example"),
        make_client(make_studio("other"), email="mia@mail.example"),
    )

    stops.rest(lines_of(other.studio)["email"], "mia@mail.example", now=NOW)

    assert facts.load([her.pk], NOW)[her.pk].reach.channel == "email"


def test_what_she_says_outlasts_what_a_server_said() -> None:
    her = make_client(make_studio(), email="mia@mail.example")
    line = lines_of(her.studio)["email"]
    stops.rest(line, her.email, now=NOW)

    stops.unsubscribe(line, her.email, now=NOW)
    stops.wake(line, her.email, now=NOW)

    stop = Stop.objects.get()
    assert (stop.why, stop.words, stop.lifted_at) == ("said", stops.UNSUBSCRIBED, None)
