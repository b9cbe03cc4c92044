"""The pages of the owner's numbers: how they stand, a look before saving, history, putting back."""

from __future__ import annotations

import re
from datetime import timedelta
from typing import Any

import pytest
from django.test import Client as Browser

from aftercare import facts, numbers, planning, ruling, upkeep
from aftercare.core import limits
from aftercare.core.timing import Occasion
from aftercare.models import Message, RuleSet
from aftercare.numbers import GROUPS
from aftercare.pages import moves
from aftercare.planning.ahead import Kind, Move, Moves
from aftercare.views import timing
from studio.models import Service
from tests.cast import Cast
from tests.forecasts import forecast
from tests.pages import SignIn, words


def field_values(page: Any) -> dict[str, Any]:
    """Return what the page's form would post as it stands."""
    found: dict[str, Any] = {}
    for field in page.context["form"]:
        value = field.value()
        if value is None:
            continue
        if hasattr(value, "strftime"):
            value = value.strftime("%H:%M")
        found[field.html_name] = value
    return found


def posted(browser: Browser, slug: str, act: str = "look", **changes: Any) -> Any:
    """Change fields of a group's form and press a button."""
    path = f"/settings/timing/{slug}"
    return browser.post(path, {**field_values(browser.get(path)), **changes, act: "1"})


def saved(browser: Browser, slug: str, **changes: Any) -> Any:
    """Look at a change and save it."""
    look = posted(browser, slug, **changes)
    given = {**field_values(look), "previewed": look.context["digest"], "save": "1"}
    return browser.post(f"/settings/timing/{slug}", given)


@pytest.fixture
def browser(morning_cast: Cast, as_: SignIn) -> Browser:
    return as_(morning_cast.olga)


def test_every_number_of_the_rules_stands_in_one_group_with_a_sentence_and_limits() -> None:
    named = [name for group in GROUPS for name in group.names]

    assert sorted(named) == sorted(limits.NUMBERS)
    for name in named:
        sentence = str(numbers.BY_NAME[name].sentence)
        assert sentence.endswith("."), name
    own_limits = {"check_days", "fill_minutes", "test_everyone", *limits.HOURS}
    assert set(limits.LIMITS) == set(limits.NUMBERS) - own_limits


def test_the_page_says_how_every_number_stands_and_marks_those_changed(morning_cast: Cast, browser: Browser) -> None:
    assert "all as the service came" in words(browser.get("/settings/timing"))

    ruling.change(morning_cast.studio, by=morning_cast.olga, now=morning_cast.now, prepare_days=4)
    page = browser.get("/settings/timing")

    assert "4 days changed; usual: 3 days" in words(page)
    assert "1 number changed" in words(page)
    assert "/settings/timing/before?usual=prepare_days" in page.content.decode()
    assert "10:00 am to 7:00 pm, not on Sunday" in words(page)


@pytest.mark.parametrize("slug", [group.slug for group in GROUPS])
def test_each_group_can_be_posted_as_it_stands_and_changes_nothing(browser: Browser, slug: str) -> None:
    page = posted(browser, slug)

    assert page.status_code == 200
    assert "nothing would change" in words(page)
    assert not RuleSet.objects.exists()


def test_a_change_is_looked_at_and_nothing_is_written_until_it_is_saved(morning_cast: Cast, browser: Browser) -> None:
    her = morning_cast.client("Tomasina", "Vale")
    morning_cast.visit(her, morning_cast.at(14, 6), Service.FILL)
    morning_cast.plan()
    before = list(Message.objects.order_by("pk").values())

    page = posted(browser, "before", prepare_days="2")

    assert "First instructions 3 days becomes 2 days" in words(page)
    assert re.search(r"With this change, of the messages of the next 14 days .*\d+ moves?", words(page))
    assert "Tomasina Vale" in words(page)
    assert list(Message.objects.order_by("pk").values()) == before
    assert not RuleSet.objects.exists()

    done = saved(browser, "before", prepare_days="2")

    assert done["Location"] == "/settings/timing"
    row = RuleSet.objects.get()
    assert (row.values, row.by) == ({"prepare_days": 2}, morning_cast.olga)
    upkeep.catch_up(morning_cast.now, studio=morning_cast.studio)
    assert Message.objects.get(client=her, occasion="prepare", step=0).due_at == morning_cast.at(10, 4)


def test_other_numbers_than_those_looked_at_are_looked_at_anew(browser: Browser) -> None:
    look = posted(browser, "before", prepare_days="2")
    given = {**field_values(look), "previewed": look.context["digest"], "prepare_days": "5", "save": "1"}

    page = browser.post("/settings/timing/before", given)

    assert "3 days becomes 5 days" in words(page)
    assert not RuleSet.objects.exists()


@pytest.mark.parametrize(
    ("slug", "changes", "said"),
    [
        ("before", {"prepare_days": "15"}, "Write a number from 1 to 14 days."),
        ("before", {"prepare_days": ""}, "This field is required."),
        ("before", {"evening_days": "3"}, "Write 2 days or fewer"),
        ("before", {"evening_at": "20:30"}, "Sending hours close at 8:00 pm"),
        ("hours", {"hours-opens": "07:30"}, "Open at 8:00 am or later and close at 9:00 pm or earlier"),
        ("hours", {"care_hours-closes": "21:30"}, "Open at 8:00 am or later"),
        ("hours", {"hours-opens": "18:00"}, "Leave at least 4 hours open"),
        ("hours", {"hours-opens": "20:00", "hours-closes": "09:00"}, "Close later than you open."),
        ("hours", {"hours-closes": "16:00"}, "Hour of the second instructions: sending hours close at 4:00 pm"),
        ("checks", {"check_days-2": "15"}, "the first from 1 to 4"),
        ("checks", {"check_days-1": "2"}, "Write each day later than the one before."),
        ("reminders", {"fill_level": "40"}, "Write more than 40 %"),
        ("fills", {"fill_minutes-long0": ""}, "Fill in both the share and its minutes, or neither."),
        ("fills", {"fill_minutes-long0": "10"}, "15 to 300 minutes"),
        ("fills", {"fill_minutes-share1": "70"}, "Write less than in the step before."),
        ("fills", {"fill_minutes-rest": "60"}, "the less is left, the longer a fill takes"),
        ("paging", {"nobody_after_minutes": "15"}, "Write 16 minutes or more"),
    ],
)
def test_what_cannot_be_is_said_beside_its_number_with_the_cure(
    browser: Browser, slug: str, changes: dict[str, str], said: str
) -> None:
    page = posted(browser, slug, **changes)

    assert said in words(page)
    assert "Not saved yet" in words(page)
    assert not RuleSet.objects.exists()


def test_of_two_owners_the_slower_one_is_told_and_saves_nothing(morning_cast: Cast, browser: Browser) -> None:
    look = posted(browser, "before", prepare_days="2")
    ruling.change(morning_cast.studio, by=morning_cast.olga, now=morning_cast.now, lead_days=9)

    given = {**field_values(look), "previewed": look.context["digest"], "save": "1"}
    page = browser.post("/settings/timing/before", given)

    assert "Somebody changed the rules meanwhile" in words(page)
    assert RuleSet.objects.get().values == {"lead_days": 9}


def test_back_to_the_usual_opens_the_form_with_it_and_shows_what_moves(morning_cast: Cast, browser: Browser) -> None:
    ruling.change(morning_cast.studio, by=morning_cast.olga, now=morning_cast.now, prepare_days=5, lead_days=9)

    page = browser.get("/settings/timing/before?usual=prepare_days")

    assert "5 days becomes 3 days" in words(page)
    assert page.context["form"]["prepare_days"].value() == 3
    browser.post("/settings/timing/before", {**field_values(page), "previewed": page.context["digest"], "save": "1"})
    assert ruling.values_of(morning_cast.studio) == {"lead_days": 9}


def test_the_history_says_who_changed_what_and_puts_a_version_back(morning_cast: Cast, browser: Browser) -> None:
    studio = morning_cast.studio
    for days in (5, 6):
        ruling.change(studio, by=morning_cast.olga, now=morning_cast.now, prepare_days=days)

    history = words(browser.get("/settings/timing/history"))
    page = browser.get("/settings/timing/history/1")

    assert "First instructions: 5 days became 6 days" in history
    assert "First instructions: 3 days became 5 days" in history
    assert history.count("Olga") == 2
    assert "Back to: First instructions 5 days (now 6 days) Undo this change" in history
    assert "Back to: First instructions 5 days (now 6 days) Put version 1 back" in history
    assert "Back to: First instructions 3 days (now 6 days) Put all back to the usual" in history
    assert 'href="/settings/timing/history/1">Undo' in browser.get("/settings/timing/history").content.decode()
    assert "6 days becomes 5 days" in words(page)
    browser.post("/settings/timing/history/1", {"seen": page.context["seen"], "save": "1"})
    assert ruling.values_of(studio) == {"prepare_days": 5}
    assert RuleSet.objects.count() == 3
    browser.post("/settings/timing/history/0", {"seen": "3", "save": "1"})
    assert ruling.values_of(studio) == {}


def test_without_a_change_the_history_says_that_all_is_as_the_service_came(browser: Browser) -> None:
    assert "As the service came In force" in words(browser.get("/settings/timing/history"))


def test_putting_back_what_somebody_changed_meanwhile_is_refused(morning_cast: Cast, browser: Browser) -> None:
    ruling.change(morning_cast.studio, by=morning_cast.olga, now=morning_cast.now, prepare_days=5)
    ruling.change(morning_cast.studio, by=morning_cast.olga, now=morning_cast.now, prepare_days=6)

    for seen in ("1", "", "x"):
        browser.post("/settings/timing/history/1", {"seen": seen, "save": "1"})

    assert facts.rules_of(morning_cast.studio).prepare_days == 6


def test_numbers_that_no_message_follows_from_are_saved_without_a_plan(morning_cast: Cast, browser: Browser) -> None:
    page = posted(browser, "paging", page_next_minutes="10")

    assert "no message of the next 14 days moves" in words(page)
    saved(browser, "paging", page_next_minutes="10")
    assert facts.rules_of(morning_cast.studio).page_next_minutes == 10
    assert not planning.catch_up(morning_cast.now, studio=morning_cast.studio)


def test_a_long_list_is_cut_and_counted(morning_cast: Cast, browser: Browser, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(moves, "LISTED", 20)
    for number in range(40):
        her = morning_cast.client(f"Number {number}")
        worn = morning_cast.done(her, morning_cast.at(10, -12), Service.FILL)
        forecast(worn, morning_cast.at(11, -12), fill_day=18)
        morning_cast.visit(her, morning_cast.at(14, 6), Service.FILL)
    morning_cast.plan()

    page = words(posted(browser, "before", at="11:00"))

    assert "12 more" in page
    assert page.count("Save it") == 2  # on top too, of a long list
    assert re.search(r"and \d+ that are not listed", page)
    assert page.count("Number ") < 120


def test_a_look_that_takes_too_long_says_how_far_it_got_and_offers_the_rest(
    browser: Browser, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(timing, "SECONDS", -1)

    page = posted(browser, "before", prepare_days="2")
    assert "Not everybody was looked at yet." in words(page)
    assert re.search(r"So far 0 of \d+ clients", words(page))
    whole = browser.post("/settings/timing/before", {**field_values(page), "whole": "1"})

    assert "Not everybody" not in words(whole)
    assert "Look at everybody" not in words(whole)


@pytest.mark.parametrize("path", ["", "/before", "/history", "/history/0"])
def test_only_the_owner_comes_here(morning_cast: Cast, as_: SignIn, path: str) -> None:
    for who in (morning_cast.ada, morning_cast.dee):
        assert as_(who).get(f"/settings/timing{path}").status_code == 403


def test_another_studios_version_is_not_found(morning_cast: Cast, browser: Browser, strangers: Cast) -> None:
    ruling.change(strangers.studio, by=strangers.olga, now=strangers.now, prepare_days=5)

    assert browser.get("/settings/timing/history/1").status_code == 404
    assert browser.get("/settings/timing/elsewhere").status_code == 404


@pytest.mark.parametrize("values", [{"care_minutes": 10**9}, {"hours": [0, 1]}, {"evening_days": 10**6}], ids=str)
def test_the_pages_open_with_what_was_stored_past_its_limits_and_the_number_can_be_put_right(
    morning_cast: Cast, browser: Browser, values: dict[str, Any]
) -> None:
    RuleSet.objects.create(studio=morning_cast.studio, version=1, values=values, at=morning_cast.now)
    (name,) = values
    slug = next(group.slug for group in GROUPS if name in group.names)

    for path in ("/settings/timing", f"/settings/timing/{slug}", "/settings/timing/history"):
        assert browser.get(path).status_code == 200, path
    ruling.change(morning_cast.studio, by=None, now=morning_cast.now, **{name: facts.defaults("US")[name]})  # type: ignore[arg-type]  # a number's name
    assert name not in ruling.values_of(morning_cast.studio)


def test_right_after_a_save_the_look_is_at_the_plan_that_the_save_made(morning_cast: Cast, browser: Browser) -> None:
    her = morning_cast.client("Tomasina", "Vale")
    morning_cast.visit(her, morning_cast.at(14, 6), Service.FILL)
    morning_cast.plan()
    saved(browser, "before", prepare_days="2")

    page = posted(browser, "before", prepare_days="3")  # back to what the plan still says

    assert "2 days becomes 3 days" in words(page)
    assert "Tomasina Vale" in words(page)
    assert "no message of the next" not in words(page)


def test_while_the_last_change_is_planned_nothing_is_said_and_nothing_can_be_saved(
    morning_cast: Cast, browser: Browser, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(upkeep, "AT_ONCE", 0)
    morning_cast.visit(morning_cast.client("Tomasina"), morning_cast.at(14, 6), Service.FILL)

    page = posted(browser, "before", prepare_days="2")

    assert "The last change is still being planned: 1 client waits for it" in words(page)
    assert 'name="save"' not in page.content.decode()
    upkeep.catch_up(morning_cast.now, studio=morning_cast.studio)
    assert 'name="save"' in posted(browser, "before", prepare_days="2").content.decode()


@pytest.fixture
def leaving_at_once(morning_cast: Cast) -> str:
    """Her visit is six days ahead: with as many days of notice, her instructions are due today."""
    her = morning_cast.client("Tomasina", "Vale")
    morning_cast.visit(her, morning_cast.at(14, 6), Service.FILL)
    morning_cast.plan()
    return "6"


def test_what_leaves_at_once_is_listed_first_and_saved_only_once_it_is_ticked(
    morning_cast: Cast, browser: Browser, leaving_at_once: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(moves, "SOON", timedelta(hours=4))  # it is seven; instructions go from ten on

    look = posted(browser, "before", prepare_days=leaving_at_once)

    said = words(look)
    assert "1 leaves at once and cannot be taken back" in said
    assert said.count("Tomasina Vale") == 1
    given = {**field_values(look), "previewed": look.context["digest"], "save": "1", "at_once": "1"}
    refused = browser.post("/settings/timing/before", given)
    assert "Not saved yet: tick that they may leave." in words(refused)
    assert not RuleSet.objects.exists()
    browser.post("/settings/timing/before", {**given, "confirmed": "1"})
    assert RuleSet.objects.get().values == {"prepare_days": 6}


def test_what_would_have_left_within_the_hour_anyway_needs_no_tick(morning_cast: Cast) -> None:
    her, now = morning_cast.client("Mia"), morning_cast.now
    soon, later = now + timedelta(minutes=10), now + timedelta(days=2)
    found = Moves(1)
    for key, before, after in [("a", soon, soon), ("b", later, soon), ("c", None, soon), ("d", soon, None)]:
        found.found.append(Move(Kind.MOVES, her, Occasion.PREPARE, 0, key, before, after))

    assert [move.key for move in moves.at_once(found, now)] == ["b", "c"]
