"""The list of clients and its search."""

from __future__ import annotations

from typing import Any

import pytest

from studio.alike import plain
from studio.models import Client
from tests.cast import Cast
from tests.pages import SignIn, words


@pytest.mark.parametrize(
    ("asked", "found"),
    [
        ("mia", {"Mia Okafor"}),
        ("oka mi", {"Mia Okafor"}),
        ("0177", {"Zoe Abara"}),
        ("555-0177", {"Zoe Abara"}),
        ("+1 212 555 0177", {"Zoe Abara"}),
        ("mia@", {"Mia Okafor"}),
        ("77", set()),
        ("%", set()),
    ],
)
def test_clients_are_found_by_parts_of_the_name_or_the_last_digits(
    asked: str, found: set[str], cast: Cast, as_: SignIn
) -> None:
    cast.client("Mia", "Okafor", email="mia@example.com")
    cast.client("Zoe", "Abara", mobile="+12125550177")

    page = words(as_(cast.dee).get("/clients", {"q": asked}))

    assert {name for name in ("Mia Okafor", "Zoe Abara") if name in page} == found
    assert ("Nobody is found under this." in page) == (not found)


def test_one_who_was_merged_stands_no_more_in_the_list(cast: Cast, as_: SignIn) -> None:
    kept, gone = cast.client("Kept"), cast.client("Gone")
    Client.objects.filter(pk=gone.pk).update(merged_into=kept)

    page = words(as_(cast.dee).get("/clients"))

    assert "Kept" in page
    assert "Gone" not in page


def test_each_line_says_when_she_comes_and_when_she_was_here(cast: Cast, as_: SignIn) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -20))
    cast.visit(her, cast.at(9, 2))

    page = words(as_(cast.ada).get("/clients"))

    assert "next visit" in page
    assert "last here" in page
    assert "(212) 555-" in page


def test_a_studio_without_clients_is_told_how_to_begin(cast: Cast, as_: SignIn) -> None:
    assert "There are no clients yet. Bring your appointment book in" in words(as_(cast.olga).get("/clients"))


def test_a_long_list_comes_in_pages_at_the_same_cost(
    cast: Cast, as_: SignIn, django_assert_max_num_queries: Any
) -> None:
    for number in range(120):
        cast.client(f"Client {number:03}", texts=False)
    browser = as_(cast.ada)

    with django_assert_max_num_queries(7):
        first = words(browser.get("/clients"))
    last = words(browser.get("/clients?page=3"))

    assert "Page 1 of 3" in first
    assert "Client 049" in first
    assert "Client 050" not in first
    assert "Client 119" in last


@pytest.mark.parametrize(
    "asked", ["jose", "JOSÉ", "José", "nunez", "Núñez", "NUÑEZ", "jose nunez", "sode", "Søde", "o'n", "zoë", "(", "[a"]
)
def test_accents_and_capitals_make_no_difference_either_way(asked: str, cast: Cast, as_: SignIn) -> None:
    names = ("José Núñez", "JOSE NUNEZ", "Zoe\u0308 O'Neill", "Søde (")  # one accent a sign of its own
    for name in names:
        first, _, last = name.partition(" ")
        cast.client(first, last)

    page = words(as_(cast.dee).get("/clients", {"q": asked}))

    wanted = plain(asked)
    assert {name for name in names if name in page} == {
        name for name in names if all(word in plain(name) for word in wanted.split())
    }


def test_a_number_is_found_as_it_is_dialed_at_home(cast: Cast, as_: SignIn) -> None:
    cast.client("Mia", mobile="+447700900123")

    assert "Mia" in words(as_(cast.dee).get("/clients", {"q": "07700 900123"}))


@pytest.mark.parametrize("who", ["olga", "ada", "dee"])
def test_a_client_can_be_looked_for_from_every_page(who: str, cast: Cast, as_: SignIn) -> None:
    browser = as_(getattr(cast, who))

    for path in ("/today", "/morning", "/messages", "/password", "/look"):
        page = browser.get(path).content.decode()
        assert page.count('<form method="get" action="/clients" class="find') == 2, path  # in the bar, and under More
    assert 'class="find' not in browser.get("/clients").content.decode()  # it has the search itself


def test_a_nul_in_what_is_searched_for_is_passed_over(cast: Cast, as_: SignIn) -> None:
    """PostgreSQL refuses it, and the page with it."""
    mia, _zoe = cast.client("Mia"), cast.client("Zoe", "Quist")

    page = words(as_(cast.dee).get("/clients", {"q": "Zo\x00e"}))
    other = words(as_(cast.dee).get(f"/clients/{mia.pk}/merge", {"q": "Zo\x00e"}))

    assert "Zoe Quist" in page
    assert "Zoe Quist" in other
