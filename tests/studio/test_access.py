"""Who may see and do what, through the pages themselves: isolation by studio, roles, health notes."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from django.test import Client as Browser
from django.urls import URLPattern, URLResolver, get_resolver, reverse

from aftercare.models import Flag
from studio.access import May
from studio.models import Reaction, Staff, Visit
from tests.cast import Cast
from tests.pages import SignIn, words

# A client needs no sign-in for what is hers: the link is all.
OPEN_TO_ALL = {
    "sign_in",
    "healthz",
    "unsubscribe",
    "hook",
    "consultation",
    "consultation_anew",
    "her_visit",
    "her_calendar",
    "her_record",
    "her_record_file",
    "her_photo",
}


def routes(patterns: list[URLPattern | URLResolver] | None = None) -> Iterator[URLPattern]:
    for pattern in get_resolver().url_patterns if patterns is None else patterns:
        if isinstance(pattern, URLResolver):
            yield from routes(pattern.url_patterns)
        else:
            yield pattern


NAMES = sorted({str(route.name) for route in routes() if route.name})
OBJECTS = {"client_id", "visit_id", "flag_id", "reaction_id", "staff_id", "adhesive_id"}
WITH_OBJECT = sorted(str(route.name) for route in routes() if route.name and OBJECTS & set(route.pattern.converters))


def address(name: str, cast: Cast) -> str:
    """Return a route's address, filled with what belongs to this studio."""
    route = next(route for route in routes() if route.name == name)
    her = cast.clients["Mia"]
    known = {
        "client_id": her.pk,
        "visit_id": her.visits.first().pk,  # type: ignore[union-attr]  # she has one
        "flag_id": Flag.objects.filter(clients=her).first().pk,  # type: ignore[union-attr]  # and one of these
        "reaction_id": Reaction.objects.filter(client__studio=cast.studio).first().pk,  # type: ignore[union-attr]
        "occasion": "care",
        "variant": "any",
        "channel": "sms",
        "language": "en",
        "staff_id": cast.ada.pk,
        "adhesive_id": cast.glue.pk,
    }
    return reverse(name, kwargs={argument: known.get(argument, 1) for argument in route.pattern.converters})


def test_nobody_sees_a_page_without_signing_in(morning_cast: Cast) -> None:
    for name in set(NAMES) - OPEN_TO_ALL:
        response = Browser().get(address(name, morning_cast))

        assert response.status_code == 302, name
        assert response.headers["Location"].startswith("/sign-in"), name


def test_no_page_for_staff_is_kept_by_a_browser(morning_cast: Cast, as_: SignIn) -> None:
    """As OWASP's "Session Management Cheat Sheet" (web content caching) asks where somebody's health is shown."""
    browser = as_(morning_cast.olga)
    shown = 0
    for name in sorted(set(NAMES) - OPEN_TO_ALL - {"password"}):  # which says nothing of anybody
        response = browser.get(address(name, morning_cast))
        if response.status_code == 200:
            shown += 1
            assert "no-store" in response.headers.get("Cache-Control", ""), name

    assert shown > 40


@pytest.mark.parametrize("who", ["olga", "ada", "dee"])
def test_what_belongs_to_another_studio_is_never_found(who: str, cast: Cast, strangers: Cast, as_: SignIn) -> None:
    browser = as_(getattr(cast, who))
    # 405: that method is not served at all; 403: the page is not for that role, whoever's it is.
    refusals = {404, 405} if who == "olga" else {403, 404, 405}

    for name in WITH_OBJECT:
        for ask in (browser.get, browser.post):
            response = ask(address(name, strangers))
            assert response.status_code in refusals, name
            assert not any(her.name in response.content.decode() for her in strangers.clients.values()), name


def test_lists_hold_nobody_of_another_studio(cast: Cast, strangers: Cast, as_: SignIn) -> None:
    for path in ("/today?artist=all", "/clients", "/messages", "/morning?artist=all", "/phone", "/book"):
        page = as_(cast.olga).get(path)

        assert page.status_code == 200
        assert not any(her.name in page.content.decode() for her in strangers.clients.values()), path


@pytest.mark.parametrize("who", ["ada", "dee"])
def test_pages_of_the_owner_say_to_others_whom_to_ask(who: str, morning_cast: Cast, as_: SignIn) -> None:
    for name in ("wordings", "wording", "going_live", "staff"):
        response = as_(getattr(morning_cast, who)).get(address(name, morning_cast))

        assert response.status_code == 403, name
        assert "The owner can change what your sign-in may do." in words(response)


def test_the_front_desk_marks_nothing_done(morning_cast: Cast, as_: SignIn) -> None:
    assert as_(morning_cast.dee).get(address("visit_done", morning_cast)).status_code == 403


def test_a_sign_in_without_a_studio_is_told_whom_to_ask_and_can_leave(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.ada)
    Staff.objects.filter(pk=cast.ada.pk).update(is_active=False)

    response = browser.get("/today")

    assert response.status_code == 403
    assert "Ask the studio’s owner to add you" in words(response)
    assert 'action="/sign-out"' in response.content.decode()


def test_someone_with_a_one_time_password_chooses_her_own_first(cast: Cast, as_: SignIn) -> None:
    browser, user = as_(cast.ada), cast.ada.user
    assert user is not None
    user.one_time_password = True
    user.save()

    assert browser.get("/today").headers["Location"] == "/password"


def test_someone_with_two_studios_works_in_the_one_that_she_chose(cast: Cast, strangers: Cast, as_: SignIn) -> None:
    Staff.objects.create(studio=strangers.studio, name="Ada too", user=cast.ada.user, is_artist=True)
    browser = as_(cast.ada)
    browser.post("/choose-studio", {"studio": cast.studio.pk})
    here = browser.get("/clients").content.decode()
    browser.post("/choose-studio", {"studio": strangers.studio.pk})
    there = browser.get("/clients").content.decode()

    assert f"<title>Clients · {cast.studio.name}</title>" in here.replace("\n", "")
    assert f"<title>Clients · {strangers.studio.name}</title>" in there.replace("\n", "")


def test_nobody_chooses_a_studio_where_she_does_not_work(cast: Cast, strangers: Cast, as_: SignIn) -> None:
    assert as_(cast.ada).post("/choose-studio", {"studio": strangers.studio.pk}).status_code == 404
    assert as_(cast.ada).post("/choose-studio", {"studio": "larkhill"}).status_code == 400


def test_an_artist_reads_the_health_notes_of_those_whom_she_has_had_or_has_booked(cast: Cast) -> None:
    had, booked, missed = cast.client("Had"), cast.client("Booked"), cast.client("Missed")
    cast.done(had, cast.at(9, -300))
    cast.visit(booked, cast.at(9, 3))
    cast.visit(missed, cast.at(9, -3), status=Visit.Status.MISSED)
    everyone = [had.pk, booked.pk, missed.pk]

    assert May(cast.ada).read_health_of(everyone) == {had.pk, booked.pk}
    assert May(cast.noor).read_health_of(everyone) == frozenset()
    assert May(cast.olga).read_health_of(everyone) == set(everyone)


def test_the_front_desk_reads_no_health_note_whomever_it_booked(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.visit(her, cast.at(9, 3), artist=cast.dee)

    assert not May(cast.dee).read_health(her)
    assert May(cast.dee).book
    assert not May(cast.dee).treat
