"""What is kept about a client: all of it, hers alone, to read and to take along; and her wish to be forgotten."""

from __future__ import annotations

import base64
import json
from datetime import timedelta
from typing import Any

import pytest
from django.test import Client as Browser

from aftercare import links, receiving, triage
from aftercare.lines import lines_of
from aftercare.links import Purpose
from aftercare.models import Attachment, Flag, Message, Wish
from aftercare.pages.kept import OF_HER
from studio import clock, records
from studio.models import Client, Consent, Visit
from tests.aftercare.test_pictures import photo
from tests.cast import Cast
from tests.letters import make_message
from tests.pages import words
from tests.people import make_client, make_studio, make_visit

pytestmark = pytest.mark.django_db


@pytest.fixture
def mia() -> Client:
    her = make_client(
        make_studio(), last_name="Okafor", mobile="+12125550101", wears_lenses=True, sensitive=False, note="likes tea"
    )
    now = clock.now()
    Consent.objects.create(client=her, channel="sms", purpose="visits", given=True, at=now, how="on paper")
    visit = make_visit(her, status="done", starts_at=now - timedelta(days=3), note="inner corners shorter")
    message = make_message(her, visit=visit)
    Message.objects.filter(pk=message.pk).update(state="delivered", handed_over_at=now, text="Keep them dry.")
    reply = receiving.receive(
        lines_of(her.studio)["sms"], her.mobile, "my left lid is puffy", received_at=now, files=[("eye.jpg", photo())]
    )
    triage.read(reply.pk, now)
    records.record_reaction(client=her, visit=visit, words="left lid puffy", by=None, now=now)
    return her


def way(client: Client) -> str:
    return f"/d/{links.token(Purpose.DATA, client)}"


def test_all_that_is_kept_is_shown(client: Browser, mia: Client) -> None:
    said = words(client.get(way(mia)))

    for kept in (
        *("Okafor", "+12125550101", "likes tea", "inner corners shorter", "Keep them dry.", "my left lid is puffy"),
        *("left lid puffy", "on paper", "Wears contact lenses yes", "Noted as sensitive no"),
    ):
        assert kept in said, kept


def test_what_is_kept_by_short_names_is_shown_in_her_words_and_a_machine_gets_the_names(
    client: Browser, mia: Client
) -> None:
    Visit.objects.filter(client=mia).update(share_left="55.0")
    Client.objects.filter(pk=mia.pk).update(language="en", channel="sms", wished_hours="evening")

    said = words(client.get(f"{way(mia)}?lang=es"))
    machine = json.loads(client.get(f"{way(mia)}/record.json?lang=es").content)

    for shown in (
        "Idioma inglés",
        "Por SMS",
        "al final del día",
        "hinchazón",
        "algo en los ojos o párpados",
        ", % 55 ",
    ):
        assert shown in said, shown
    assert (machine["you"]["language"], machine["you"]["channel"]) == ("en", "sms")
    assert machine["you"]["wished_hours"] == "evening"
    assert machine["replies"][0]["read_in_it"] == ["irritation", "swelling"]


def test_every_field_of_hers_is_shown_or_left_out_on_purpose() -> None:
    """A field that is added later must be shown to her, too."""
    ours = {"id", "studio", "created_at", "revision", "planned_revision", "forecast_revision", "merged_into"}
    ours |= {"erased_at", "erased_by", "paused_until", "earlier_declined", "no_set_since"}
    assert {field.name for field in Client._meta.concrete_fields} == ours | set(OF_HER)


def test_it_is_taken_along_for_a_machine_with_the_photos(client: Browser, mia: Client) -> None:
    answer = client.get(f"{way(mia)}/record.json")

    found = json.loads(answer.content)
    assert answer.headers["Content-Disposition"] == 'attachment; filename="kept-about-me.json"'
    assert found["you"]["last_name"] == "Okafor"
    assert found["you"]["wears_lenses"] is True
    assert found["replies"][0]["words"] == "my left lid is puffy"
    picture = base64.b64decode(found["replies"][0]["photos"][0])
    assert picture == bytes(Attachment.objects.get().content or b"")
    assert [one["given"] for one in found["consents"]] == [True]


def test_it_is_taken_along_as_a_text(client: Browser, mia: Client) -> None:
    answer = client.get(f"{way(mia)}/record.txt")

    assert answer.headers["Content-Type"].startswith("text/plain")
    assert "my left lid is puffy" in answer.content.decode()


def test_her_photo_is_hers_alone(client: Browser, mia: Client) -> None:
    picture = Attachment.objects.get()
    zoe = make_client(mia.studio, "Zoe")

    shown = client.get(f"{way(mia)}/photos/{picture.pk}")

    assert shown.headers["Content-Type"] == picture.kind
    assert client.get(f"{way(zoe)}/photos/{picture.pk}").status_code == 404


def test_nothing_of_another_client_stands_there(client: Browser, mia: Client, strangers: Cast) -> None:
    zoe = make_client(mia.studio, "Zoe", mobile=mia.mobile)
    make_visit(zoe, note="zoes note")

    page = client.get(way(mia)).content.decode()

    assert "zoes note" not in page
    assert "Larkhill" not in page


def test_a_matter_of_a_number_that_she_shares_is_not_shown_as_hers(client: Browser, mia: Client) -> None:
    other = make_client(mia.studio, "Lena", mobile=mia.mobile)
    shared = Flag.objects.create(
        studio=mia.studio,
        urgency="none",
        opened_at=clock.now(),
        urgent_since=clock.now(),
        words="Lena moves to Tuesday",
    )
    shared.clients.set([mia, other])

    assert "Lena" not in words(client.get(way(mia)))


@pytest.mark.parametrize("path", ["", "/record.json", "/record.txt", "/photos/1"])
def test_a_wrong_or_revoked_link_opens_nothing(path: str, client: Browser, mia: Client) -> None:
    old = way(mia)
    links.revoke(mia, why="asked", now=clock.now())

    answer = client.get(old + path)

    assert answer.status_code == 404
    assert b"Okafor" not in answer.content


def test_names_and_words_that_look_like_markup_are_shown_as_they_are(client: Browser, mia: Client) -> None:
    Client.objects.update(last_name="<script>x</script>", note="<img src=x>")
    Visit.objects.update(note="</dd><script>y</script>")

    page = client.get(way(mia)).content.decode()

    assert "<script>" not in page
    assert "<img src=x" not in page


def test_being_forgotten_is_asked_by_a_button_and_done_by_the_owner(client: Browser, mia: Client, as_: Any) -> None:
    assert not Wish.objects.filter(kind="forget").exists()
    client.get(f"{way(mia)}?do=forget")
    assert not Wish.objects.filter(kind="forget").exists()

    said = words(client.post(way(mia), {"do": "forget"}))
    client.post(way(mia), {"do": "forget"})

    assert "You asked to be forgotten" in said
    assert Wish.objects.get(kind="forget").reply.client == mia
    assert Client.objects.get(pk=mia.pk).first_name == "Mia"


def test_it_takes_as_many_queries_however_much_is_kept(
    client: Browser, mia: Client, django_assert_max_num_queries: Any
) -> None:
    for number in range(30):
        make_visit(mia, starts_at=clock.now() - timedelta(days=number + 5), status="done")

    with django_assert_max_num_queries(18):
        client.get(way(mia))
