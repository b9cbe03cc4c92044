"""What carriers of texts block."""

from __future__ import annotations

import pytest

from aftercare.core.carriers import find_blocked
from aftercare.core.wordcheck import Draft, blocks_saving, check

STOP = "{{ how_to_stop }}"


@pytest.mark.parametrize(
    ("text", "words", "surely"),
    [  # CTIA's classes from memory; the others are common practice, no source
        ("Ask about our CBD line", "CBD", True),
        ("Win at our casino night", "casino", True),
        ("Need a payday loan?", "payday loan", True),
        ("See http://192.0.2.7/fill", "http://192.0.2.7/fill", True),
        ("Click here to see", "Click here", False),
        ("Time for a fill!!!", "!!!", False),
        ("¡Haz clic aquí!", "Haz clic aquí", False),
        ("No steam and no vaping for 24 h", "vaping", False),  # an owner may well want to say it
        ("Free gift with each fill", "Free gift", False),
        ("TIME FOR YOUR FILL COME AND SEE US", "TIME FOR YOUR FILL C", False),
    ],
)
def test_it_is_found_with_why_and_the_cure(text: str, words: str, surely: bool) -> None:
    (found,) = find_blocked(text)

    assert (found.words, found.surely) == (words, surely)
    assert text[found.start :].startswith(words)
    assert found.why
    assert found.cure


@pytest.mark.parametrize(
    "text",
    [
        "RINSE NOW with clean lukewarm water, for at least 20 minutes.",
        "Reply STOP to end texts",
        "Oil-free, alcohol-free cleanser. Do not tug!",
        "Avapes the word only in part",
        "Wow!!",
    ],
)
def test_the_trade_s_own_words_and_an_urgent_one_arrive(text: str) -> None:
    assert list(find_blocked(text)) == []


def test_what_is_refused_outright_stops_a_save_and_what_is_filtered_warns() -> None:
    refused = check(Draft("fill_due", "", "sms", "", f"{{{{ studio }}}} {{{{ window }}}}\n  CBD {STOP}"))
    filtered = check(Draft("fill_due", "", "sms", "", f"{{{{ studio }}}} {{{{ window }}}} act now {STOP}"))

    assert blocks_saving(refused)
    assert (refused[0].line, refused[0].column) == (2, 3)
    assert [problem.warning for problem in filtered] == [True]


def test_an_email_passes_no_carrier() -> None:
    assert check(Draft("fill_due", "", "email", "Fill", f"{{{{ studio }}}} {{{{ window }}}} act now {STOP}")) == ()
