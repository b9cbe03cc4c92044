"""Outside source of the words of STOP: 47 CFR 64.1200(a)(10) as of 2024 (stop, quit, end, revoke, opt out, cancel,
unsubscribe). STOPALL, START, UNSTOP, HELP, INFO and the Spanish words: common practice, no source.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aftercare.core import commands
from aftercare.core.commands import Command

BY_LAW = ["stop", "quit", "end", "revoke", "opt out", "cancel", "unsubscribe"]


@pytest.mark.parametrize(
    "word", [*BY_LAW, "stopall", "STOP ALL", "opt-out", "Please opt me out.", "alto", "PARAR", "baja"]
)
def test_each_word_of_stop_is_one(word: str) -> None:
    assert commands.read(word) is Command.STOP


@pytest.mark.parametrize(
    "text", ["STOP", "stop", " Stop. ", "S T O P", "*stop*", "“STOP!!”", "stop\n", "ＳＴＯＰ", "Stop 🙏"]
)
def test_case_spaces_and_punctuation_do_not_matter(text: str) -> None:
    assert commands.read(text) is Command.STOP


@pytest.mark.parametrize(
    ("text", "command"),
    [("START", Command.START), ("unstop", Command.START), ("Help?", Command.HELP), ("info", Command.HELP)],
)
def test_start_and_help_are_known(text: str, command: Command) -> None:
    assert commands.read(text) is command


@pytest.mark.parametrize(
    "text",
    [
        *("", "?", "🙏", "yes", "ok", "no", "fine", "1"),
        *("stop by at 3?", "can you stop the burning", "please help my eye burns", "the end of the tape", "stopp"),
        *("I want to cancel my visit", "start of the week?", "help" * 200),
    ],
)
def test_a_word_in_a_sentence_is_left_to_a_person(text: str) -> None:
    assert commands.read(text) is None


def test_cancel_may_mean_the_visit() -> None:
    assert commands.may_mean_the_visit("Cancel.")
    assert commands.may_mean_the_visit("CANCELAR")
    assert not commands.may_mean_the_visit("stop")
    assert commands.read("cancelar") is Command.STOP


@given(st.text())
def test_any_text_can_be_asked_about(text: str) -> None:
    assert commands.read(text) in (None, *Command)


@given(st.sampled_from(BY_LAW), st.text(st.sampled_from(" .!,*-_~'\"\t\n"), max_size=20))
def test_what_is_put_around_a_word_is_nothing(word: str, around: str) -> None:
    assert commands.read(f"{around}{word}{around}") is Command.STOP
