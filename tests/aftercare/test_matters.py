"""What people do about open matters."""

from __future__ import annotations

import pytest
from django.core.exceptions import ValidationError

from aftercare import facts, matters, planning, texts
from aftercare.core.delivery import State
from aftercare.core.outcomes import Outcome
from aftercare.core.reading import Side
from aftercare.core.ticks import Tick, Ticked
from aftercare.models import Flag, Forecast, Message
from studio.models import Client, Service
from tests.cast import Cast, make
from tests.forecasts import forecast


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


@pytest.fixture
def flag(cast: Cast) -> Flag:
    return cast.wrote(cast.client("Mia"), "it burns", cast.at(6))


def test_who_takes_it_last_has_it(cast: Cast, flag: Flag) -> None:
    matters.take(flag, by=cast.ada, now=cast.now)
    matters.take(flag, by=cast.olga, now=cast.now)

    assert (flag.state, flag.taken_by, flag.taken_at) == ("taken", cast.olga, cast.now)


def test_of_two_who_close_it_the_first_is_kept(cast: Cast, flag: Flag) -> None:
    same = Flag.objects.get(pk=flag.pk)
    matters.close(flag, outcome=Outcome.ANSWERED, on_record=False, words="Called her.", by=cast.ada, now=cast.now)

    with pytest.raises(ValidationError, match="Someone was quicker"):
        matters.close(same, outcome=Outcome.ANSWERED, on_record=False, words="Me too.", by=cast.olga, now=cast.now)

    same.refresh_from_db()
    assert (same.words, same.closed_by) == ("Called her.", cast.ada)


def test_a_closed_one_cannot_be_taken_and_can_be_opened_again(cast: Cast, flag: Flag) -> None:
    matters.close(flag, outcome=Outcome.ANSWERED, on_record=False, words="Called her.", by=cast.ada, now=cast.now)
    with pytest.raises(ValidationError):
        matters.take(flag, by=cast.ada, now=cast.now)

    matters.reopen(flag, now=cast.now)

    assert (flag.state, flag.taken_by, flag.closed_by, flag.words) == ("open", None, None, "Called her.")


def test_closing_without_words_changes_nothing(cast: Cast, flag: Flag) -> None:
    with pytest.raises(ValidationError):
        matters.close(flag, outcome=Outcome.ANSWERED, on_record=False, words=" \n", by=cast.ada, now=cast.now)

    flag.refresh_from_db()
    assert flag.state == "open"


def test_praise_is_closed_without_a_word(cast: Cast) -> None:
    praise = cast.wrote(cast.client("Noa"), "love them", cast.at(6), urgency="none")
    praise.replies.update(reading={"about": ["praise"]})

    matters.close(praise, outcome=Outcome.NOTED, on_record=False, words="", by=cast.ada, now=cast.now)

    assert (praise.state, praise.outcome) == ("closed", "noted")


def itchy(cast: Cast, urgency: str = "same_day") -> Flag:
    """A matter of Zoe's, who wears a set done two days before."""
    zoe = cast.client("Zoe", "Quist")
    cast.done(zoe, cast.at(9, -2))
    flag = cast.wrote(zoe, "left lid itchy", cast.at(6), urgency=urgency)
    flag.replies.update(reading={"signs": ["itching"], "side": "left", "about": ["irritation"]})
    return flag


def close(cast: Cast, flag: Flag, outcome: Outcome, *, on_record: bool = True) -> Client:
    matters.close(flag, outcome=outcome, words="We spoke.", on_record=on_record, by=cast.ada, now=cast.at(8))
    return flag.clients.get()


@pytest.mark.parametrize("outcome", ["over", "told_doctor", "saw_doctor", "coming_in", "removed"])
def test_what_came_of_an_eye_stands_on_her_record_and_holds_her(cast: Cast, outcome: str) -> None:
    her = close(cast, itchy(cast), Outcome(outcome))

    reaction = her.reactions.get()
    assert (reaction.signs, reaction.side, reaction.outcome) == (["itching"], "left", outcome)
    assert reaction.words == "left lid itchy\nWe spoke."
    assert (reaction.visit, reaction.by, reaction.at) == (her.visits.get(), cast.ada, cast.at(6))
    assert facts.load([her.pk], cast.now)[her.pk].hold_why == "a reaction is on record"
    assert (her.no_set_since == cast.at(8)) is (outcome == "removed")


def test_a_wrong_outcome_is_put_right_by_opening_and_closing_again(cast: Cast) -> None:
    flag = itchy(cast)
    her = close(cast, flag, Outcome.OVER)
    matters.reopen(flag, now=cast.at(8))

    matters.close(
        flag, outcome=Outcome.TOLD_DOCTOR, words="To her doctor.", on_record=True, by=cast.olga, now=cast.at(9)
    )

    reaction = her.reactions.get()
    assert (reaction.outcome, reaction.by) == ("told_doctor", cast.olga)
    assert reaction.words.endswith("We spoke.\nTo her doctor.")


@pytest.mark.parametrize(("outcome", "on_record"), [("misread", True), ("over", False)])
def test_where_it_was_misread_or_a_person_says_so_nothing_is_put_on_record(
    cast: Cast, outcome: str, on_record: bool
) -> None:
    her = close(cast, itchy(cast), Outcome(outcome), on_record=on_record)

    assert not her.reactions.exists()
    assert not facts.load([her.pk], cast.now)[her.pk].on_hold


@pytest.mark.parametrize("urgency", ["emergency", "same_day"])
def test_what_is_urgent_is_closed_with_what_came_of_her_eyes_alone(cast: Cast, urgency: str) -> None:
    flag = itchy(cast, urgency)

    with pytest.raises(ValidationError, match="Say what came of her eyes"):
        close(cast, flag, Outcome.NOTED)

    flag.refresh_from_db()
    assert flag.state == "open"


def test_of_several_with_one_number_nothing_is_written_until_a_person_says_whose_it_is(cast: Cast) -> None:
    flag = itchy(cast)
    nina = cast.client("Nina", "Quist")
    flag.clients.add(nina)

    with pytest.raises(ValidationError, match="Say first whose it is"):
        matters.close(flag, outcome=Outcome.OVER, words="We spoke.", on_record=True, by=cast.ada, now=cast.at(8))
    assert Flag.objects.get(pk=flag.pk).state == "open"

    matters.say_whose(flag, nina)
    her = close(cast, flag, Outcome.OVER)
    assert (her, her.reactions.count(), flag.replies.get().client) == (nina, 1, nina)
    with pytest.raises(ValidationError, match="one of those"):
        matters.say_whose(flag, cast.clients["Zoe"])


def test_she_who_could_not_be_reached_stays_on_the_list(cast: Cast) -> None:
    flag = itchy(cast)

    matters.try_again(flag, at=cast.at(9), words="No answer.", by=cast.ada, now=cast.at(8))

    assert (flag.state, flag.taken_by, flag.try_again_at) == ("taken", cast.ada, cast.at(9))
    assert facts.load([flag.clients.get().pk], cast.now).popitem()[1].on_hold
    with pytest.raises(ValidationError, match="choose one ahead"):
        matters.try_again(flag, at=cast.at(8), words="", by=cast.ada, now=cast.at(8))
    matters.take(flag, by=cast.olga, now=cast.at(8.5))
    assert flag.try_again_at is None


def test_several_are_closed_at_once_only_where_none_is_about_health(cast: Cast) -> None:
    thanks = [cast.wrote(cast.client(name), "thank you!", cast.at(6), urgency="none") for name in ("Bea", "Cleo")]
    for one in thanks:
        one.replies.update(reading={"about": ["fine"]})
    eye = itchy(cast, "none")

    with pytest.raises(ValidationError, match="Nothing was closed"):
        matters.close_several([*thanks, eye], outcome=Outcome.NOTED, by=cast.ada, now=cast.now)
    with pytest.raises(ValidationError, match="each by itself"):
        matters.close_several(thanks, outcome=Outcome.OVER, by=cast.ada, now=cast.now)
    assert Flag.objects.filter(state="closed").count() == 0

    assert matters.close_several(thanks, outcome=Outcome.NOTED, by=cast.ada, now=cast.now) == 2
    assert set(Flag.objects.filter(state="closed")) == set(thanks)


def test_what_is_urgent_pages_anew_once_it_is_opened_again(cast: Cast) -> None:
    flag = itchy(cast)
    close(cast, flag, Outcome.MISREAD)

    matters.reopen(flag, now=cast.at(9))

    assert (flag.state, flag.urgent_since) == ("open", cast.at(9))


@pytest.mark.parametrize(
    ("outcome", "asked"), [("over", True), ("coming_in", True), ("misread", False), ("removed", False)]
)
def test_she_who_still_wears_the_set_is_asked_once_more_the_next_day_in_spite_of_the_hold(
    cast: Cast, outcome: str, asked: bool
) -> None:
    her = close(cast, itchy(cast), Outcome(outcome))
    planning.plan_clients([her.pk], cast.at(8))

    checks = her.messages.filter(occasion="check", step__gte=10, state="planned")
    assert [one.aim_at for one in checks] == ([cast.at(10, 1)] if asked else [])
    if asked:
        assert not her.messages.filter(occasion="check", step__lt=10, state="planned").exists()
        message = checks.get()
        book = facts.load([her.pk], cast.at(10, 1))[her.pk]
        assert facts.judge(message, book, cast.at(10, 1)).event == "journal"
        assert "how are your eyes" in texts.for_message(message, book, cast.at(10, 1)).body


def test_closing_and_opening_have_her_planned_anew(cast: Cast, flag: Flag) -> None:
    before = Client.objects.get(first_name="Mia").revision

    matters.close(flag, outcome=Outcome.ANSWERED, on_record=False, words="Called her.", by=cast.ada, now=cast.now)
    matters.reopen(flag, now=cast.now)

    assert Client.objects.get(first_name="Mia").revision == before + 2


@pytest.mark.parametrize("state", [State.UNDELIVERED, State.UNSURE])
def test_who_sees_to_a_message_that_was_lost_is_kept(state: State, cast: Cast) -> None:
    lost = cast.gone(cast.client("Mia"), None, "answer", cast.at(5), state=state)

    matters.see_to(lost, by=cast.dee, now=cast.now)

    lost.refresh_from_db()
    assert (lost.seen_to_by, lost.seen_to_at, lost.state) == (cast.dee, cast.now, state)


def test_a_message_that_arrived_after_all_cannot_be_seen_to(cast: Cast) -> None:
    arrived = cast.gone(cast.client("Mia"), None, "answer", cast.at(5), state=State.DELIVERED)

    with pytest.raises(ValidationError, match="look at the list again"):
        matters.see_to(arrived, by=cast.dee, now=cast.now)

    arrived.refresh_from_db()
    assert arrived.seen_to_at is None


def test_who_looks_into_an_early_set_is_kept_with_the_forecast_that_said_so(cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -2))
    old, newest = (forecast(visit, cast.at(10, day), fill_day=8) for day in (-2, -1))

    matters.see_to_early(visit, by=cast.ada, now=cast.now)

    newest.refresh_from_db()
    old.refresh_from_db()
    assert (newest.seen_to_by, newest.seen_to_at, old.seen_to_at) == (cast.ada, cast.now, None)


def test_a_set_of_which_nothing_is_forecast_cannot_be_seen_to(cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -2))

    with pytest.raises(ValidationError, match="look at the list again"):
        matters.see_to_early(visit, by=cast.ada, now=cast.now)

    assert not Forecast.objects.exists()


def test_what_she_ticked_goes_on_record_as_her_words_do(cast: Cast, flag: Flag) -> None:
    ticked = Ticked(frozenset({Tick.SWOLLEN}), side=Side.LEFT)
    flag.replies.update(text="", ticked=ticked.to_keep())

    assert matters.told(flag).words == "My lid is swollen. Eye: left."


def test_checks_of_that_visit_stop_while_a_person_looks_into_it_and_go_on_where_it_was_misread(cast: Cast) -> None:
    her = cast.client("Zoe")
    cast.done(her, cast.at(9, -3), Service.FULL_SET)
    planning.plan_clients([her.pk], cast.now)
    flag = cast.wrote(her, "they burn every other set in town", cast.at(6), urgency="same_day")

    planning.plan_clients([her.pk], cast.now)
    later = Message.objects.filter(client=her, occasion="check", step__in=(2, 3))
    assert {(one.state, one.reason) for one in later.all()} == {("withheld", "on hold")}

    matters.close(flag, outcome=Outcome.MISREAD, on_record=False, words="Praise.", by=cast.ada, now=cast.now)
    planning.plan_clients([her.pk], cast.now)
    assert {(one.state, one.reason) for one in later.all()} == {("planned", "")}
