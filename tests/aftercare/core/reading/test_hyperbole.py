"""A figure of speech over a stop, and the sign that only resembles one."""

from __future__ import annotations

import pytest

from aftercare.core.reading import Urgency, read


@pytest.mark.parametrize(
    "text",
    [
        "in pain. emotionally. they are so cute",
        "swollen. with pride. thats the text",
        "tears (happy). no notes",
        "it hurts... to think I lived without them",
        "£20 more than the website said. that stung",
        "Swell, see you Thursday at noon then.",
        "breathless. speechless. lashful.",
        "what does 'gritty' mean",
    ],
)
def test_the_next_words_make_a_figure_of_speech(text: str) -> None:
    assert read(text).urgency is Urgency.NONE


@pytest.mark.parametrize(
    "text",
    [
        "in pain. with the left eye mostly",
        "swollen. both of them. like eggs",
        "tears. they wont stop running",
        "it hurts... to blink",
        "remover on my lid. that stung",
        "breathless. chest is tight",
        "what does it mean if my eye is red",
    ],
)
def test_it_stays_a_sign_where_they_do_not(text: str) -> None:
    assert read(text).urgency in (Urgency.SAME_DAY, Urgency.EMERGENCY)
