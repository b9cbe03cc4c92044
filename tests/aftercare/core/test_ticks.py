"""What she ticks is what she would have said: side by side with the reader of replies."""

from __future__ import annotations

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aftercare.core import reading
from aftercare.core.reading import Side, Sign, Topic, Urgency
from aftercare.core.ticks import EMERGENCIES, OTHERS, SENTENCES, SIGNS, Asks, Since, Suits, Tick, Ticked, together

WORST_FIRST = list(Urgency)
UNREAD_ALONE = (Tick.FEVER, Tick.SICK)  # in words alone a person has to read what is meant; a tick is clear


@pytest.mark.parametrize("tick", [tick for tick in Tick if tick not in UNREAD_ALONE])
def test_a_tick_means_what_its_sentence_means(tick: Tick) -> None:
    said = reading.read(SENTENCES[tick])

    found = together(Ticked(frozenset({tick})), None)

    assert (found.urgency, found.signs, found.about) == (said.urgency, said.signs, said.about)


@pytest.mark.parametrize("tick", UNREAD_ALONE)
def test_a_fever_or_feeling_sick_alone_is_seen_to_the_same_day(tick: Tick) -> None:
    assert together(Ticked(frozenset({tick})), None).urgency is Urgency.SAME_DAY


@pytest.mark.parametrize("pair", list(combinations([*EMERGENCIES, *OTHERS], 2)), ids=str)
def test_two_ticks_are_never_less_urgent_than_both_sentences_together(pair: tuple[Tick, Tick]) -> None:
    said = reading.read(" ".join(SENTENCES[tick] for tick in pair))

    found = together(Ticked(frozenset(pair)), None)

    assert WORST_FIRST.index(found.urgency) <= WORST_FIRST.index(said.urgency)
    assert {*said.signs} <= {*found.signs}


@pytest.mark.parametrize(
    "ticks",
    [(Tick.RED, Tick.LIGHT), (Tick.RED, Tick.SICK), (Tick.PAIN, Tick.SICK), (Tick.SWOLLEN, Tick.FEVER)],
    ids=str,
)
def test_what_is_an_emergency_only_together_is_one_when_ticked_together(ticks: tuple[Tick, ...]) -> None:
    # NHS, "Red eye", reviewed 21 March 2022: a red eye with light that hurts, or with a headache and feeling sick.
    assert together(Ticked(frozenset(ticks)), None).urgency is Urgency.EMERGENCY


def test_a_tick_and_a_word_make_an_emergency_together() -> None:
    found = together(Ticked(frozenset({Tick.RED})), reading.read("the light hurts"))

    assert found.urgency is Urgency.EMERGENCY


@pytest.mark.parametrize("words", ["all good, thank you!", "no pain, not red, not swollen", "I am fine", "BIEN"])
def test_reassuring_words_take_nothing_from_a_tick(words: str) -> None:
    found = together(Ticked(frozenset({Tick.SWOLLEN})), reading.read(words))

    assert found.urgency is Urgency.SAME_DAY
    assert Sign.SWELLING in found.signs
    assert Sign.SWELLING not in found.negated
    assert Topic.FINE not in found.about


def test_worse_words_count_beside_a_mild_tick() -> None:
    found = together(Ticked(frozenset({Tick.ITCHING})), reading.read("and I can't see out of my left eye"))

    assert found.urgency is Urgency.EMERGENCY


def test_that_she_notices_nothing_is_no_sign_and_takes_none_away() -> None:
    assert together(Ticked(frozenset({Tick.NOTHING})), None).about == (Topic.FINE,)
    both = together(Ticked(frozenset({Tick.NOTHING, Tick.PAIN})), None)
    assert (both.urgency, both.about) == (Urgency.SAME_DAY, (Topic.IRRITATION,))


def test_words_that_were_not_understood_still_need_a_person() -> None:
    assert together(Ticked(frozenset({Tick.RED})), reading.read("mắt tôi hơi lạ")).unread


@pytest.mark.parametrize(
    ("ticked", "words", "side"),
    [
        (Side.LEFT, "", Side.LEFT),
        (Side.LEFT, "my right eye too", Side.BOTH),
        (None, "my right eye is red", Side.RIGHT),
        (Side.RIGHT, "my right eye is red", Side.RIGHT),
    ],
)
def test_no_eye_is_overlooked_where_tick_and_words_name_different_ones(
    ticked: Side | None, words: str, side: Side
) -> None:
    written = reading.read(words) if words else None

    assert together(Ticked(frozenset({Tick.RED}), side=ticked), written).side is side


@given(st.frozensets(st.sampled_from(Tick)), st.sampled_from(["", "all good", "my eye is red", "cant breathe", "yes"]))
def test_more_is_never_less_urgent(ticks: frozenset[Tick], words: str) -> None:
    written = reading.read(words) if words else None
    found = WORST_FIRST.index(together(Ticked(ticks), written).urgency)

    assert all(found <= WORST_FIRST.index(together(Ticked(ticks - {tick}), written).urgency) for tick in ticks)
    if written is not None:
        assert found <= WORST_FIRST.index(written.urgency)


@given(
    st.builds(
        Ticked,
        ticks=st.frozensets(st.sampled_from(Tick)),
        side=st.none() | st.sampled_from(Side),
        since=st.none() | st.sampled_from(Since),
        lenses=st.booleans(),
        language=st.sampled_from(["en", "es"]),
        asks=st.none() | st.sampled_from(Asks),
        suits=st.frozensets(st.sampled_from(Suits)),
        visit=st.none() | st.integers(1, 9),
    )
)
def test_what_is_kept_is_read_again_as_it_was(ticked: Ticked) -> None:
    assert ticked.to_keep()
    assert Ticked.kept(ticked.to_keep()) == ticked


def test_what_is_kept_and_unknown_by_now_is_left_out() -> None:
    assert Ticked.kept({"ticks": ["red", "gone"], "side": "middle", "asks": None}).ticks == {Tick.RED}


def test_every_sign_can_be_ticked() -> None:
    assert set(SIGNS.values()) == set(Sign)
