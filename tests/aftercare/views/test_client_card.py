"""The client's card as each role sees it."""

from __future__ import annotations

from typing import Any

import pytest

from aftercare import receiving, stops, triage
from aftercare.lines import lines_of
from aftercare.models import Flag, Reply
from studio.models import Client, Visit
from tests.cast import Cast, full_morning
from tests.forecasts import forecast
from tests.pages import SignIn, words


def card(cast: Cast, name: str) -> str:
    return f"/clients/{cast.clients[name].pk}"


def test_the_card_says_what_goes_to_her_when_and_why(cast: Cast, as_: SignIn) -> None:
    her = cast.client("Mia")
    cast.visit(her, cast.at(12, 10))
    cast.plan()

    page = words(as_(cast.ada).get(card(cast, "Mia")))

    assert "Instructions before the visit, by text: planned" in page
    assert "10:00, 3 days before the visit" in page


def test_the_card_says_in_which_hours_she_wishes_to_be_written_to(cast: Cast, as_: SignIn) -> None:
    cast.client("Mia", wished_hours="evening")

    page = words(as_(cast.ada).get(card(cast, "Mia")))

    assert "Her hours in the evening, from 17:00" in page


def test_what_is_withheld_says_why(cast: Cast, as_: SignIn) -> None:
    her = cast.client("Mia", texts=False)
    cast.visit(her, cast.at(12, 10))
    cast.plan()

    page = words(as_(cast.ada).get(card(cast, "Mia")))

    assert "not at all: no way to reach her" in page
    assert "withheld No way to reach her" in page


def test_the_conversation_is_one_column_in_the_order_in_which_it_was_said(morning_cast: Cast, as_: SignIn) -> None:
    page = words(as_(morning_cast.ada).get(card(morning_cast, "Mia")))

    said = page[page.index("Conversation", page.index("Visits")) :]
    assert said.index("How are your eyes today?") < said.index("cant open my right eye")
    assert said.index("We wrote") < said.index("She wrote")
    assert "open on the morning list" in said


def test_a_hold_comes_first_with_its_words_and_its_way_out(morning_cast: Cast, as_: SignIn) -> None:
    response = as_(morning_cast.ada).get(card(morning_cast, "Wilhelmina Konstantinopolitana"))

    page = words(response)
    assert page.index("On hold Decide and call.") < page.index("Facts")
    assert "Left lid puffy and itchy since last night." in page
    assert "/release" in response.content.decode()


def test_a_patch_test_is_never_said_to_be_more_than_what_was_seen(morning_cast: Cast, as_: SignIn) -> None:
    nell = words(as_(morning_cast.ada).get(card(morning_cast, "Nell")))
    bea = words(as_(morning_cast.ada).get(card(morning_cast, "Bea")))

    assert "Not answered: not read" in nell
    assert "No sign reported" in bea
    assert "It does not show that a later reaction cannot come." in bea
    assert not any(word in (nell + bea).lower() for word in ("passed", "safe ", "negative"))


@pytest.mark.parametrize("who", ["noor", "dee"])
def test_others_see_neither_health_notes_nor_the_conversation(who: str, morning_cast: Cast, as_: SignIn) -> None:
    Client.objects.filter(pk=morning_cast.clients["Rosa"].pk).update(note="allergic to plasters")
    browser = as_(getattr(morning_cast, who))

    held = words(browser.get(card(morning_cast, "Wilhelmina Konstantinopolitana")))
    rosa = words(browser.get(card(morning_cast, "Rosa")))
    mia = words(browser.get(card(morning_cast, "Mia")))

    for page in (held, rosa, mia):
        assert "Conversation" not in page
        for word in ("Sensitive", "Contact lenses", "plasters", "puffy", "eye", "hold", "reaction", "patch test"):
            assert word not in page, word
    assert "A person decides first" in held


def test_consents_are_a_history_with_who_and_how(cast: Cast, as_: SignIn) -> None:
    cast.client("Mia")

    page = words(as_(cast.ada).get(card(cast, "Mia")))

    assert "Yes to messages about her visits, by text message on paper · Dee" in page


def test_a_stop_shows_and_ends_the_planning(cast: Cast, as_: SignIn) -> None:
    zoe = cast.client("Zoe")
    cast.visit(zoe, cast.at(12, 10))
    stops.stop(zoe, "sms", words="no more please", by=cast.dee, now=cast.now)
    cast.plan()

    page = words(as_(cast.olga).get(card(cast, "Zoe")))

    assert "She stopped texts to this number." in page
    assert "withheld No consent" in page


def test_a_number_s_zone_is_a_suggestion_and_a_stated_one_is_named(cast: Cast, as_: SignIn) -> None:
    cast.client("Mia", time_zone="")
    cast.client("Zoe", time_zone="Europe/Madrid")

    assert "Her number belongs to America/New_York." in words(as_(cast.olga).get(card(cast, "Mia")))
    assert "Europe/Madrid" in words(as_(cast.olga).get(card(cast, "Zoe")))


def test_what_came_from_a_shared_number_stands_on_every_card_until_someone_assigns_it(cast: Cast, as_: SignIn) -> None:
    mia, twin = cast.client("Mia"), cast.client("Twin")
    flag = cast.wrote(mia, "which of us?", cast.at(6))
    flag.clients.add(twin)
    Reply.objects.update(client=None)

    for name in ("Mia", "Twin"):
        page = words(as_(cast.olga).get(card(cast, name)))
        assert "which of us?" in page
        assert "from a number that others have too" in page


def test_the_card_of_one_who_was_merged_leads_to_the_one_who_was_kept(cast: Cast, as_: SignIn) -> None:
    kept, gone = cast.client("Mia"), cast.client("Mia two")
    Client.objects.filter(pk=gone.pk).update(merged_into=kept)

    assert as_(cast.olga).get(card(cast, "Mia two")).headers["Location"] == card(cast, "Mia")


def test_an_empty_card_says_what_to_do_next(cast: Cast, as_: SignIn) -> None:
    cast.client("Mia", texts=False)

    page = words(as_(cast.olga).get(card(cast, "Mia")))

    assert "No visits yet. Add her first visit" in page
    assert "No consent is on record." in page
    assert "Nothing has been written yet" in page


def test_many_visits_are_shown_a_dozen_at_first(cast: Cast, as_: SignIn) -> None:
    her = cast.client("Mia")
    for week in range(1, 21):
        cast.done(her, cast.at(9, -7 * week), lash_map=f"map {week:02}")

    browser = as_(cast.ada)
    first, every = words(browser.get(card(cast, "Mia"))), words(browser.get(card(cast, "Mia") + "?visits=all"))

    assert "8 earlier visits" in first
    assert "map 20" not in first
    assert "map 20" in every


def test_a_long_history_costs_no_more_queries(cast: Cast, as_: SignIn, django_assert_max_num_queries: Any) -> None:
    full_morning(cast)
    her = cast.clients["Mia"]
    for week in range(2, 30):
        visit = cast.done(her, cast.at(9, -7 * week))
        cast.gone(her, visit, "care", cast.at(12, -7 * week))
        cast.wrote(her, f"words {week}", cast.at(13, -7 * week))
    Flag.objects.update(state="closed")
    browser = as_(cast.ada)

    with django_assert_max_num_queries(15):
        page = browser.get(card(cast, "Mia"))

    assert Visit.objects.filter(client=her).count() > 25
    assert "words 2" in words(page)


@pytest.fixture
def worn(cast: Cast) -> Visit:
    """A set of Mia's that is nine days old, and likely to need a fill on the eighteenth."""
    visit = cast.done(cast.client("Mia"), cast.at(9, -9))
    forecast(visit, cast.at(10, -9))
    return visit


def test_the_card_says_how_her_set_stands(cast: Cast, as_: SignIn, worn: Visit) -> None:
    response = as_(cast.ada).get(card(cast, "Mia"))

    page = words(response)
    assert "About half-way to a fill : about 77 % left today (73 to 82)." in page
    assert "Ready for a fill about " in page
    assert "a new set may be needed from about " in page
    assert "Rests on 3 readings of hers and on what is usual here." in page
    assert "about 25 go with their natural lash (20 to 31) and about 15 come loose (9 to 20)." in page


def test_the_picture_has_a_name_words_and_its_numbers_beside_it(cast: Cast, as_: SignIn, worn: Visit) -> None:
    page = as_(cast.ada).get(card(cast, "Mia")).content.decode()

    assert '<svg viewBox="0 0 360 ' in page
    assert 'role="img" aria-labelledby="curve-name curve-words"' in page
    assert "A line that falls from 100 % to 60 % about " in page
    assert page.count('<th scope="row">') == 15  # weeks
    assert "style=" not in page[page.index('id="set"') : page.index('id="going"')]


def test_without_a_reading_of_hers_the_card_says_so(cast: Cast, as_: SignIn) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -20))
    told = {"day": 18, "shed": [0, 0.2, 0.4], "bonds": [0, 0.2, 0.4], "told_apart": False}
    forecast(visit, cast.at(10, -20), readings=0, loss=told)

    page = words(as_(cast.ada).get(card(cast, "Mia")))

    assert "Ready for a fill : about 57 % left today" in page
    assert "The fill level was reached about " in page
    assert "No reading of hers yet: this is the studio’s usual." in page
    assert "The readings cannot tell shedding from bonds that failed." in page
    assert "come loose" not in page


def test_a_set_that_was_just_marked_waits_for_its_forecast(cast: Cast, as_: SignIn) -> None:
    cast.done(cast.client("Mia"), cast.at(9, -1))

    assert "Nothing is forecast of it yet" in words(as_(cast.ada).get(card(cast, "Mia")))


def test_where_no_set_is_on_the_card_has_no_such_part(cast: Cast, as_: SignIn) -> None:
    cast.client("Mia")

    assert "Her set" not in words(as_(cast.ada).get(card(cast, "Mia")))


@pytest.mark.parametrize(("who", "sees"), [("olga", True), ("ada", True), ("noor", True), ("dee", False)])
def test_what_is_forecast_is_for_artists_and_the_owner(
    who: str, sees: bool, cast: Cast, as_: SignIn, worn: Visit
) -> None:
    assert ("half-way to a fill" in words(as_(getattr(cast, who)).get(card(cast, "Mia")))) is sees


def test_a_number_that_is_somebody_elses_is_shown_as_resting(cast: Cast, as_: SignIn) -> None:
    her = cast.client("Mia")
    line = lines_of(cast.studio)["sms"]
    reply = receiving.receive(line, her.mobile, "wrong number, sorry", received_at=cast.now)
    triage.read(reply.pk, cast.now)

    page = words(as_(cast.dee).get(card(cast, "Mia")))

    assert "says she is not the person meant: it rests. Ask her for the right one." in page


def test_a_number_that_no_key_can_be_is_not_found(cast: Cast, as_: SignIn) -> None:
    assert as_(cast.ada).get(f"/clients/{2**63}").status_code == 404
    assert as_(cast.ada).get(f"/clients/{2**63 - 1}").status_code == 404
