"""The links to a client's own pages: short, of one purpose each, revocable, and nobody else's."""

from __future__ import annotations

import string
from typing import Any

import pytest
from django.test import override_settings

from aftercare import facts, links
from aftercare.links import Purpose
from studio import records
from tests.people import NOW, make_client, make_studio, make_visit

pytestmark = pytest.mark.django_db


def test_a_link_opens_her_visit() -> None:
    visit = make_visit(make_client(make_studio()))

    opened = links.opened(Purpose.VISIT, links.token(Purpose.VISIT, visit))

    assert opened is not None
    assert (opened.client, opened.visit) == (visit.client, visit)


def test_a_link_is_short_enough_for_a_text(settings: Any) -> None:
    settings.PUBLIC_URL = "https://care.birchlane.example"
    visit = make_visit(make_client(make_studio()))
    visit.pk = 100_000_000

    address = links.address(Purpose.VISIT, visit)

    assert len(address) - len(settings.PUBLIC_URL) <= 21
    assert set(address.rpartition("/")[2]) <= set(string.ascii_letters + string.digits)  # no phone breaks it


def test_a_link_of_one_purpose_opens_no_other() -> None:
    visit = make_visit(make_client(make_studio()))
    token = links.token(Purpose.VISIT, visit)

    assert links.opened(Purpose.CONSULTATION, token) is None
    assert links.opened(Purpose.DATA, token) is None


def test_a_link_to_the_visit_of_another_is_not_made_by_changing_a_letter() -> None:
    client = make_client(make_studio())
    one, other = make_visit(client), make_visit(client)
    token = links.token(Purpose.VISIT, one)
    forged = links.token(Purpose.VISIT, other)[:-12] + token[-12:]

    assert links.opened(Purpose.VISIT, forged) is None
    assert links.opened(Purpose.VISIT, token[:-1] + ("a" if token[-1] != "a" else "b")) is None


@pytest.mark.parametrize("given", ["", "x", "é" * 20, "0" * 13, "z" * 40, "z" * 200, "1/../2" * 3, "1\x00" + "a" * 12])
def test_what_is_not_a_link_opens_nothing(given: str) -> None:
    assert links.opened(Purpose.VISIT, given) is None


def test_another_secret_key_opens_nothing() -> None:
    visit = make_visit(make_client(make_studio()))
    with override_settings(SECRET_KEY="another one"):
        token = links.token(Purpose.VISIT, visit)

    assert links.opened(Purpose.VISIT, token) is None


def test_a_revoked_link_opens_nothing_and_a_new_one_does() -> None:
    visit = make_visit(make_client(make_studio()))
    old, data = links.token(Purpose.VISIT, visit), links.token(Purpose.DATA, visit.client)

    links.revoke(visit.client, why="asked", now=NOW)

    assert links.opened(Purpose.VISIT, old) is None
    assert links.opened(Purpose.DATA, data) is None
    assert links.opened(Purpose.VISIT, links.token(Purpose.VISIT, visit)) is not None


def test_of_two_that_were_merged_the_links_open_the_one_that_was_kept_until_hers_are_revoked() -> None:
    studio = make_studio()
    kept, merged = make_client(studio), make_client(studio)
    token = links.token(Purpose.DATA, merged)
    merged.merged_into = kept
    merged.save()

    opened = links.opened(Purpose.DATA, token)

    assert opened is not None
    assert opened.client == kept
    links.revoke(kept, why="asked", now=NOW)
    assert links.opened(Purpose.DATA, token) is None


@pytest.mark.parametrize("purpose", [Purpose.VISIT, Purpose.CONSULTATION])
def test_a_visit_that_the_book_gives_to_another_client_is_closed_to_the_first(purpose: Purpose) -> None:
    studio = make_studio()
    mia, zoe = make_client(studio), make_client(studio, "Zoe")
    visit = make_visit(mia)
    token = links.token(purpose, visit)

    visit.client = zoe
    visit.save()

    assert links.opened(purpose, token) is None
    opened = links.opened(purpose, links.token(purpose, visit))
    assert opened is not None
    assert opened.client == zoe


def test_a_visit_of_hers_who_was_merged_is_opened_by_the_link_that_she_was_sent() -> None:
    studio = make_studio()
    kept, merged = make_client(studio), make_client(studio)
    visit = make_visit(merged)
    token = links.token(Purpose.VISIT, visit)

    records.merge(kept=kept, gone=merged, by=None, now=NOW)

    opened = links.opened(Purpose.VISIT, token)
    assert opened is not None
    assert opened.client == kept


def test_a_link_about_a_visit_is_not_made_of_a_client() -> None:
    with pytest.raises(TypeError):
        links.token(Purpose.VISIT, make_client(make_studio()))


def test_how_often_they_were_revoked_is_read_with_her_book_whoever_was_merged_into_her() -> None:
    studio = make_studio()
    kept, merged, other = make_client(studio), make_client(studio), make_client(studio)
    merged.merged_into = kept
    merged.save()
    for client in (kept, merged, merged):
        links.revoke(client, why="asked", now=NOW)

    books = facts.load([kept.pk, other.pk], NOW)

    assert (books[kept.pk].revoked, books[other.pk].revoked) == (3, 0)
    assert links.revocations(kept.pk) == 3
