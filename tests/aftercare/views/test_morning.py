"""The morning list as each role sees it."""

from __future__ import annotations

import re
from datetime import timedelta
from typing import Any

import pytest

from aftercare import stops
from aftercare.core.delivery import State
from aftercare.lines import lines_of
from aftercare.models import Flag, Heartbeat, Message, Reply
from studio.models import Absence, CalendarFeed, Reaction, Visit
from tests.cast import Cast, full_morning
from tests.forecasts import forecast
from tests.pages import SignIn, words


def test_her_words_stand_with_what_helps_to_decide(morning_cast: Cast, as_: SignIn) -> None:
    page = words(as_(morning_cast.ada).get("/morning"))

    mia = page[page.index("Not understood") :]
    assert "woke up and cant open my right eye, its swollen and theres gunk" in mia
    assert "18 h after: fill , Ada · Birch 4, lot 0226 · gel remover" in mia
    assert "no patch test on record" in mia
    assert "lenses" in mia
    assert "We had written to her" in mia
    assert "How are your eyes today?" in mia
    assert re.search(r"waiting [12] h", mia)  # it is between seven and eight, and she wrote at a quarter past five
    assert "Call Mia" in mia


def test_the_list_is_in_the_order_in_which_it_is_worked_through(cast: Cast, as_: SignIn) -> None:
    """Emergencies, same day, who comes in today, her tests, not reached, not understood, the rest."""
    said = [
        ("Thanks", "none", {}),
        ("Unread", "unread", {}),
        ("Tried", "unread", {"state": "taken", "taken_by": cast.ada, "try_again_at": cast.at(9)}),
        ("Today", "watch", {}),
        ("Itchy", "same_day", {}),
        ("Taken", "emergency", {"state": "taken", "taken_by": cast.ada}),
        ("Shut", "emergency", {}),
    ]
    for name, urgency, fields in said:
        her = cast.client(name, "Quist")
        cast.done(her, cast.at(9, -3))
        flag = cast.wrote(her, "words", cast.at(5), urgency=urgency)
        Flag.objects.filter(pk=flag.pk).update(**fields)
    cast.visit(cast.clients["Today"], cast.at(15))
    tested = cast.client("Tested", "Quist", sensitive=True)
    cast.visit(tested, cast.at(14), "full set")
    cast.visit(cast.client("Left", "Quist"), cast.at(9, -1))

    page = words(as_(cast.ada).get("/morning"))

    names = ["Shut", "Taken", "Itchy", "Today", "Tested", "Tried", "Unread", "Left", "Thanks"]
    places = [page.index(f"{name} Quist") for name in names]
    assert places == sorted(places)
    headings = [
        "Act now",
        "Act now: somebody has it",
        "See today",
        "Open, and she comes in today",
        "Patch tests of today",
    ]
    headings += ["Could not be reached: try again", "Not understood: read and decide", "Visits not marked", "Also open"]
    assert [page.index(one) for one in headings] == sorted(page.index(one) for one in headings)


def test_several_that_are_not_about_health_are_closed_at_once(cast: Cast, as_: SignIn) -> None:
    flags = []
    for name, about in (("Bea", ["fine"]), ("Cleo", ["question"]), ("Mia", ["irritation"])):
        cast.done(cast.client(name, "Quist"), cast.at(9, -3))
        flags.append(cast.wrote(cast.clients[name], "words", cast.at(6), urgency="none"))
        flags[-1].replies.update(reading={"about": about})
    browser = as_(cast.ada)
    assert browser.get("/morning").content.decode().count('form="several"') == 2

    refused = words(browser.post("/flags/close", {"flag": [f.pk for f in flags], "outcome": "noted"}, follow=True))
    assert "One of them is about health: close it by itself. Nothing was closed." in refused
    assert Flag.objects.filter(state="closed").count() == 0

    page = words(browser.post("/flags/close", {"flag": [f.pk for f in flags[:2]], "outcome": "noted"}, follow=True))
    assert "2 closed." in page
    assert "Choose at least one." in words(browser.post("/flags/close", {"outcome": "noted"}, follow=True))
    assert as_(cast.noor).post("/flags/close", {"flag": [flags[2].pk], "outcome": "noted"}).status_code == 404


def test_she_who_could_not_be_reached_stays_with_the_moment_to_try_again(cast: Cast, as_: SignIn) -> None:
    her = cast.client("Mia", "Quist")
    cast.done(her, cast.at(9, -3))
    flag = cast.wrote(her, "red and sore", cast.at(6), urgency="same_day")
    browser = as_(cast.ada)

    refused = browser.post(
        f"/flags/{flag.pk}/close", {"outcome": "not_reached", "words": "No answer.", "try_again": ""}
    )
    assert "Say when to try again." in words(refused)
    page = words(
        browser.post(
            f"/flags/{flag.pk}/close", {"outcome": "not_reached", "words": "No answer.", "try_again": "30"}, follow=True
        )
    )

    assert "It stays on the list" in page
    assert "Could not be reached: try again" in page
    assert "Not reached. Try again" in page


def test_whose_it_is_is_said_first_where_several_have_the_number(cast: Cast, as_: SignIn) -> None:
    mia, nina = cast.client("Mia", "Quist"), cast.client("Nina", "Quist")
    for her in (mia, nina):
        cast.done(her, cast.at(9, -3))
    flag = cast.wrote(mia, "red and sore", cast.at(6), urgency="same_day")
    flag.clients.add(nina)
    browser = as_(cast.ada)
    form = {"outcome": "told_doctor", "words": "Sent to her eye doctor.", "on_record": "on"}

    assert "Say first whose it is" in words(browser.post(f"/flags/{flag.pk}/close", form))
    browser.post(f"/flags/{flag.pk}/close", {**form, "client": nina.pk})

    assert [reaction.client for reaction in Reaction.objects.all()] == [nina]


def test_a_number_of_several_is_called_as_it_is(cast: Cast, as_: SignIn) -> None:
    mia, nina = cast.client("Mia", "Quist", mobile="+12125550142"), cast.client("Nina", "Quist", mobile="+12125550142")
    cast.done(mia, cast.at(9, -3))
    cast.wrote(mia, "one lash pokes me", cast.at(6), urgency="same_day").clients.add(nina)
    page = as_(cast.ada).get("/morning").content.decode()

    assert '<a class="main" href="tel:+12125550142">Call (212) 555-0142</a>' in page


def test_she_who_left_unhappy_stays_on_the_list_until_somebody_has_seen_to_it(cast: Cast, as_: SignIn) -> None:
    pia = cast.client("Pia", "Lund")
    visit = cast.done(pia, cast.at(13, -30), mirror_check="unhappy")
    browser = as_(cast.ada)
    assert "Left unhappy after: fill." in words(browser.get("/morning"))

    page = words(browser.post(f"/visits/{visit.pk}/unhappy/seen-to", follow=True))

    assert "Seen to: Pia Lund." in page
    assert "Left unhappy" not in page
    assert "It stands there no more" in words(browser.post(f"/visits/{visit.pk}/unhappy/seen-to", follow=True))


@pytest.mark.parametrize("what", ["unhappy", "early"])
def test_a_colleague_sees_to_no_line_of_another_s_list_unless_she_covers(what: str, cast: Cast, as_: SignIn) -> None:
    visit = cast.done(cast.client("Pia", "Lund"), cast.at(13, -30), mirror_check="unhappy")
    noor, olga, path = as_(cast.noor), as_(cast.olga), f"/visits/{visit.pk}/{what}/seen-to"

    refused = noor.post(path)

    assert refused.status_code == 403
    assert "This is on the list of Ada: she sees to it" in words(refused)
    assert noor.post(path, {"undo": "1"}).status_code == 403
    visit.refresh_from_db()
    assert visit.unhappy_seen_to_at is None
    assert olga.post(path).status_code == 302
    today = cast.now.astimezone(cast.studio.zone).date()
    Absence.objects.create(staff=cast.ada, cover=cast.noor, first_day=today, last_day=today)
    assert noor.post(path).status_code == 302


def test_what_has_no_artist_is_the_owners_to_see_to(cast: Cast, as_: SignIn) -> None:
    visit = cast.done(cast.client("Pia", "Lund"), cast.at(13, -30), mirror_check="unhappy", artist=None)

    assert "on the owners’ list" in words(as_(cast.noor).post(f"/visits/{visit.pk}/unhappy/seen-to"))
    assert as_(cast.olga).post(f"/visits/{visit.pk}/unhappy/seen-to").status_code == 302


def test_a_later_visit_makes_it_a_thing_of_the_past(cast: Cast, as_: SignIn) -> None:
    pia = cast.client("Pia", "Lund")
    cast.done(pia, cast.at(13, -30), mirror_check="unhappy")
    cast.done(pia, cast.at(13, -9))

    assert "Left unhappy" not in words(as_(cast.ada).get("/morning"))


def test_a_visit_that_nobody_marked_stays_however_old_but_history_heard_of_later_does_not(
    cast: Cast, as_: SignIn
) -> None:
    old = cast.visit(cast.client("Left", "Quist"), cast.at(9, -60))
    assert "Not marked: fill." in words(as_(cast.ada).get("/morning"))

    Visit.objects.filter(pk=old.pk).update(heard_at=cast.at(9, -1))
    assert "Not marked" not in words(as_(cast.ada).get("/morning"))


def test_promises_not_kept_come_worst_first(morning_cast: Cast, as_: SignIn) -> None:
    page = words(as_(morning_cast.ada).get("/morning"))

    said = [
        "Rosa Lindqvist No patch test in time. Full set: sensitive, first visit.",
        "was not answered.",
        "Aftercare not delivered. The number does not take texts.",
        "Tova Berg Not marked: fill.",
        "Pia Lund Left unhappy after: fill.",
    ]
    places = [page.index(words) for words in said]
    assert places == sorted(places)


def test_an_artist_sees_her_own_lines_and_the_owner_all(morning_cast: Cast, as_: SignIn) -> None:
    noor = words(as_(morning_cast.noor).get("/morning"))
    olga = words(as_(morning_cast.olga).get("/morning"))
    asked = words(as_(morning_cast.noor).get("/morning?artist=all"))

    assert "Thi Lan Pham" in noor
    assert "Mia Okafor" not in noor
    assert "Mia Okafor" not in asked
    assert "Thi Lan Pham" in olga
    assert "Mia Okafor" in olga


def test_the_owner_can_look_at_one_artist_s_list(morning_cast: Cast, as_: SignIn) -> None:
    page = words(as_(morning_cast.olga).get(f"/morning?artist={morning_cast.noor.pk}"))

    assert "Thi Lan Pham" in page
    assert "Mia Okafor" not in page
    assert "lines stand on other lists" in page


def test_an_owner_who_treats_sees_her_own_and_what_is_nobody_s(cast: Cast, as_: SignIn) -> None:
    cast.olga.is_artist = True
    cast.olga.save()
    cast.done(cast.client("Hers"), cast.at(9, -1), artist=cast.olga)
    cast.done(cast.client("Adas"), cast.at(9, -1))
    for name in ("Hers", "Adas"):
        cast.wrote(cast.clients[name], f"words of {name}", cast.at(6))
    Flag.objects.create(studio=cast.studio, opened_at=cast.at(6.5), urgent_since=cast.at(6.5))

    page = words(as_(cast.olga).get("/morning"))

    assert "words of Hers" in page
    assert "From an unknown number" in page
    assert "words of Adas" not in page


def test_the_front_desk_sees_that_someone_waits_and_not_why(morning_cast: Cast, as_: SignIn) -> None:
    page = words(as_(morning_cast.dee).get("/morning"))

    assert "2 clients wait for an artist or the owner." in page
    assert "If one calls, put her through at once." in page
    assert "Tova Berg" in page
    assert "The number does not take texts." in page
    for word in ("eye", "Mia", "patch test", "swollen", "Rosa", "unhappy", "sensitive"):
        assert not re.search(rf"\b{word}\b", page)


@pytest.mark.parametrize(
    ("worse", "better"),
    [("emergency", "same_day"), ("same_day", "unread"), ("unread", "watch"), ("unheard of", "watch")],
)
def test_the_worst_stands_first_whoever_wrote_first(worse: str, better: str, cast: Cast, as_: SignIn) -> None:
    for name, urgency, hour in (("First", better, 4), ("Second", worse, 5)):
        cast.done(cast.client(name), cast.at(9, -1))
        cast.wrote(cast.clients[name], "words", cast.at(hour), urgency=urgency)

    page = words(as_(cast.ada).get("/morning"))

    assert page.index("Second") < page.index("First")


def test_nothing_open_is_said_with_its_hour_and_never_as_all_clear(cast: Cast, as_: SignIn) -> None:
    Heartbeat.objects.create(name="sweep", at=cast.now)

    page = words(as_(cast.ada).get("/morning"))

    assert "Nothing open. As of 7:" in page
    assert "That nobody wrote does not mean that nothing is wrong." in page
    assert "clear" not in page.lower()
    assert "no reply yet" in page


@pytest.mark.parametrize(
    ("age", "is_said"), [(timedelta(minutes=1), False), (timedelta(minutes=6), True), (None, True)]
)
def test_a_service_that_stands_still_is_said_on_the_list(
    age: timedelta | None, is_said: bool, cast: Cast, as_: SignIn
) -> None:
    if age is not None:
        Heartbeat.objects.create(name="sweep", at=cast.now - age)

    assert ("Messages are not going out." in words(as_(cast.ada).get("/morning"))) is is_said


def test_i_have_this_puts_her_name_on_the_line(morning_cast: Cast, as_: SignIn) -> None:
    flag = Flag.objects.get(clients=morning_cast.clients["Mia"])

    page = words(as_(morning_cast.ada).post(f"/flags/{flag.pk}/take", follow=True))

    assert "Ada has this since" in page
    flag.refresh_from_db()
    assert (flag.state, flag.taken_by) == ("taken", morning_cast.ada)


def test_nothing_leaves_the_list_without_an_outcome_in_words(morning_cast: Cast, as_: SignIn) -> None:
    flag = Flag.objects.get(clients=morning_cast.clients["Mia"])
    browser = as_(morning_cast.ada)

    refused = words(browser.post(f"/flags/{flag.pk}/close", {"outcome": "answered", "words": "  "}))
    assert "Write a few words" in refused
    flag.refresh_from_db()
    assert flag.state == "open"

    page = words(
        browser.post(
            f"/flags/{flag.pk}/close",
            {"outcome": "told_doctor", "words": "On her way to A&E.", "on_record": "on"},
            follow=True,
        )
    )
    flag.refresh_from_db()
    assert (flag.state, flag.outcome, flag.words, flag.closed_by) == (
        "closed",
        "told_doctor",
        "On her way to A&E.",
        morning_cast.ada,
    )
    assert "she is on hold until someone releases her" in page
    assert "Mia Okafor" not in words(browser.get("/morning"))


def test_a_closed_matter_can_be_read_and_not_closed_again(morning_cast: Cast, as_: SignIn) -> None:
    flag = Flag.objects.get(clients=morning_cast.clients["Mia"])
    browser = as_(morning_cast.ada)
    browser.post(f"/flags/{flag.pk}/close", {"outcome": "answered", "words": "Called her."})

    page = words(browser.post(f"/flags/{flag.pk}/close", {"outcome": "answered", "words": "Again."}))

    assert "Called her." in page
    flag.refresh_from_db()
    assert flag.words == "Called her."


def test_a_closed_matter_stands_on_her_card_and_can_be_opened_again(morning_cast: Cast, as_: SignIn) -> None:
    her, browser = morning_cast.clients["Mia"], as_(morning_cast.ada)
    flag = Flag.objects.get(clients=her)
    browser.post(f"/flags/{flag.pk}/close", {"outcome": "answered", "words": "Called her at nine."})
    assert "by Ada: Answered: Called her at nine." in words(browser.get(f"/clients/{her.pk}"))

    page = words(browser.post(f"/flags/{flag.pk}/reopen", follow=True))

    assert "Open again." in page
    assert "Mia Okafor" in page


def test_a_colleague_s_client_is_not_hers_to_take_or_to_close(morning_cast: Cast, as_: SignIn) -> None:
    flag = Flag.objects.get(clients=morning_cast.clients["Mia"])
    browser = as_(morning_cast.noor)

    assert browser.get(f"/flags/{flag.pk}/close").status_code == 404
    assert browser.post(f"/flags/{flag.pk}/take").status_code == 404
    assert browser.post(f"/flags/{flag.pk}/reopen").status_code == 404


def test_whoever_was_paged_sees_that_one_matter_and_may_take_it(cast: Cast, as_: SignIn) -> None:
    """On duty, or as the third contact: she is called out of her sleep, and must see what for."""
    mia = cast.client("Mia")
    visit = cast.done(mia, cast.at(16, -1))
    Flag.objects.filter(pk=cast.wrote(mia, "a rash last year", cast.at(9, -300)).pk).update(state="closed")
    cast.gone(mia, visit, "care", cast.at(17, -1), text="Keep them dry.")
    flag = cast.wrote(mia, "i cant see out of my right eye", cast.at(2), urgency="emergency")
    told = cast.gone(mia, None, "answer", cast.at(2.1), text="Rinse first.")
    Message.objects.filter(pk=told.pk).update(flag=flag)
    noor = as_(cast.noor)
    assert noor.get(f"/flags/{flag.pk}/close").status_code == 404

    page = Message(studio=cast.studio, staff=cast.noor, flag=flag, occasion="alert", key="page", planned_from=cast.now)
    page.state, page.handed_over_at = State.DELIVERED, cast.now
    page.save()

    assert "i cant see out of my right eye" in words(noor.get("/morning"))
    assert "1 matter waits for a person now." in words(noor.get("/today"))
    assert "Noor has this since" in words(noor.post(f"/flags/{flag.pk}/take", follow=True))
    assert noor.get(f"/flags/{flag.pk}/close").status_code == 200
    answering = words(noor.get(f"/flags/{flag.pk}/answer"))
    assert "i cant see out of my right eye" in answering
    assert "Rinse first." in answering
    assert "a rash last year" not in answering  # the rest of her card stays her artist's
    assert "Keep them dry." not in answering
    assert noor.get(f"/clients/{mia.pk}/conversation").status_code == 403


@pytest.mark.parametrize("gone", [True, False])
def test_a_page_gives_the_front_desk_nothing_to_read_nor_one_that_never_left_anybody(
    gone: bool, cast: Cast, as_: SignIn
) -> None:
    mia = cast.client("Mia")
    cast.done(mia, cast.at(16, -1))
    flag = cast.wrote(mia, "i cant see out of my right eye", cast.at(2), urgency="emergency")
    person = cast.dee if gone else cast.noor
    page = Message(studio=cast.studio, staff=person, flag=flag, occasion="alert", key="page", planned_from=cast.now)
    page.handed_over_at = cast.now if gone else None
    page.save()

    assert "cant see" not in words(as_(person).get("/morning"))
    assert as_(person).get(f"/flags/{flag.pk}/close").status_code == (403 if gone else 404)


def test_closing_what_held_her_lets_her_messages_go_again(cast: Cast, as_: SignIn) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -10))
    cast.visit(her, cast.at(12, 6))
    flag = cast.wrote(her, "red and sore", cast.at(6), urgency="same_day")
    cast.plan()
    assert her.messages.filter(occasion="prepare", state="withheld", reason="on hold").exists()

    as_(cast.ada).post(f"/flags/{flag.pk}/close", {"outcome": "misread", "words": "She was quoting us."})

    assert her.messages.filter(occasion="prepare", state="planned").exists()


def test_a_long_list_costs_no_more_queries(cast: Cast, as_: SignIn, django_assert_max_num_queries: Any) -> None:
    full_morning(cast)
    for number in range(12):
        her = cast.client(f"Client{number}", sensitive=True)
        cast.done(her, cast.at(9, -2), artist=cast.noor if number % 2 else cast.ada)
        cast.wrote(her, "words", cast.at(5 + number / 10))
        cast.visit(cast.client(f"New{number}", sensitive=True), cast.at(12, 1))
    browser = as_(cast.olga)

    with django_assert_max_num_queries(15):
        page = words(browser.get("/morning"))

    assert "Client11" in page
    assert "New11" in page


@pytest.fixture
def lost(cast: Cast) -> Message:
    """Aftercare of Ada's client that did not arrive."""
    her = cast.client("Mia")
    done = cast.done(her, cast.at(9, -1))
    return cast.gone(her, done, "care", cast.at(12, -1), state=State.UNDELIVERED, reason="No such number.")


@pytest.mark.parametrize("who", ["ada", "dee", "olga"])
def test_a_lost_message_leaves_the_list_by_the_hand_of_whoever_may_change_her_card(
    who: str, lost: Message, cast: Cast, as_: SignIn
) -> None:
    browser = as_(getattr(cast, who))
    assert "Seen to : Mia" in words(browser.get("/morning"))

    page = words(browser.post(f"/messages/{lost.pk}/seen-to", follow=True))

    lost.refresh_from_db()
    assert lost.seen_to_by == getattr(cast, who)
    assert "Seen to: Mia. It stays among her messages." in page
    assert "Aftercare not delivered" not in page
    assert f"Seen to by {who.capitalize()}" in words(browser.get("/messages?group=trouble"))


def test_an_artist_who_never_saw_her_cannot_see_to_it(lost: Message, cast: Cast, as_: SignIn) -> None:
    assert as_(cast.noor).post(f"/messages/{lost.pk}/seen-to").status_code == 403
    lost.refresh_from_db()
    assert lost.seen_to_at is None


def test_another_studio_s_message_is_not_found(lost: Message, strangers: Cast, as_: SignIn) -> None:
    assert as_(strangers.olga).post(f"/messages/{lost.pk}/seen-to").status_code == 404


def test_one_that_moved_on_meanwhile_says_so(lost: Message, cast: Cast, as_: SignIn) -> None:
    Message.objects.filter(pk=lost.pk).update(state=State.DELIVERED)

    page = words(as_(cast.dee).post(f"/messages/{lost.pk}/seen-to", follow=True))

    assert "It has moved on by itself" in page


@pytest.fixture
def early(cast: Cast) -> Visit:
    """A set of Ada's client that is likely to need a fill on its ninth day."""
    visit = cast.done(cast.client("Mia"), cast.at(9, -2))
    forecast(visit, cast.at(10, -2), fill_day=9)
    return visit


def test_a_set_that_may_fail_early_stands_apart_with_what_to_look_at(cast: Cast, as_: SignIn, early: Visit) -> None:
    page = words(as_(cast.ada).get("/morning"))

    assert "Sets that may fail early" in page
    assert "9 days after it was put on." in page
    assert "Worth a look: the adhesive and its lot, how she cares for them, her natural lashes." in page
    assert "Birch 4, lot 0226" in page
    assert "Promises not kept" not in page
    assert "Nothing open" not in page


def test_other_artists_and_the_front_desk_do_not_see_it(cast: Cast, as_: SignIn, early: Visit) -> None:
    for staff in (cast.noor, cast.dee):
        assert "fail early" not in words(as_(staff).get("/morning"))


def test_it_leaves_the_list_when_somebody_has_looked_into_it(cast: Cast, as_: SignIn, early: Visit) -> None:
    page = words(as_(cast.ada).post(f"/visits/{early.pk}/early/seen-to", follow=True))

    assert "Seen to: Mia." in page
    assert "fail early" not in page


def test_what_is_no_longer_forecast_cannot_be_seen_to(cast: Cast, as_: SignIn, early: Visit) -> None:
    early.forecasts.all().delete()

    assert "look at the list again" in words(as_(cast.ada).post(f"/visits/{early.pk}/early/seen-to", follow=True))


@pytest.mark.parametrize(("who", "hours", "told"), [("olga", 49, True), ("olga", 47, False), ("ada", 49, False)])
@pytest.mark.parametrize("page", ["/morning", "/today"])
def test_the_owner_is_told_that_the_calendar_was_not_read_for_two_days(
    page: str, who: str, hours: int, told: bool, cast: Cast, as_: SignIn
) -> None:
    CalendarFeed.objects.create(
        studio=cast.studio, address="https://cal.example/a.ics", read_at=cast.now - timedelta(hours=hours)
    )

    said = words(as_(getattr(cast, who)).get(page))

    assert ("The appointment book is over two days old." in said) is told


def test_the_list_that_was_chosen_is_come_back_to(morning_cast: Cast, as_: SignIn) -> None:
    browser = as_(morning_cast.olga)
    every = words(browser.get("/morning?artist=all"))

    assert words(browser.get("/morning")) == every


def test_a_worse_reply_stands_first_with_its_own_hour(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia")
    cast.done(mia, cast.at(9, -2))
    flag = cast.wrote(mia, "GOOD", cast.at(10, -1), urgency="none")
    Reply.objects.create(
        studio=cast.studio,
        line=flag.replies.get().line,
        from_address=mia.mobile,
        provider_ref="worse",
        received_at=cast.at(6),
        read_at=cast.at(6),
        text="my lid is swollen now",
        client=mia,
        flag=flag,
    )
    Flag.objects.filter(pk=flag.pk).update(urgency="same_day", urgent_since=cast.at(6))

    page = words(as_(cast.ada).get("/morning"))

    assert page.index("my lid is swollen now") < page.index("GOOD")
    assert "43 h after: fill" in page  # it was over at a quarter past ten, two days before


@pytest.mark.parametrize("who", ["ada", "dee", "olga"])
def test_an_address_that_nobody_has_is_told_until_somebody_has_seen_to_it(who: str, cast: Cast, as_: SignIn) -> None:
    her = cast.client("Mia", email="mia@mail.example")
    cast.done(her, cast.at(9, -1))
    stops.rest(lines_of(cast.studio)["email"], her.email, now=cast.now)
    browser = as_(getattr(cast, who))
    assert "nobody has the address on her card. Ask her for another address." in words(browser.get("/morning"))

    page = words(browser.post(f"/clients/{her.pk}/address/seen-to", follow=True))

    assert "Seen to: Mia. No e-mail goes to that address." in page
    assert "nobody has the address" not in page
    assert "nobody has it, and it rests" in words(browser.get(f"/clients/{her.pk}"))
    browser.post(f"/clients/{her.pk}/address/seen-to", {"undo": "1"})
    assert "nobody has the address" in words(browser.get("/morning"))
