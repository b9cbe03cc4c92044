from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from aftercare.core.reading import read
from tests.aftercare.core.reading.labelled import score, seen

# The labels are the guide's; the shares are those that the reader must not fall below on the replies it was made with.


def test_it_reads_the_replies_it_was_made_with() -> None:
    scores = score(seen(), read)

    assert scores.emergencies >= 0.98
    assert scores.current >= 0.97
    assert scores.reached >= 0.995
    assert scores.wolf <= 0.03
    assert scores.stops >= 0.94
    assert scores.false_stops < 0.01
    assert scores.signs >= 0.93
    assert scores.topics >= 0.9


@settings(max_examples=60, deadline=None)
@given(st.text(max_size=300))
def test_whatever_is_written_is_read(text: str) -> None:
    found = read(text)

    assert found.about
    assert all(text[one.start : one.end] == one.text for one in found.why)


@pytest.mark.parametrize(
    "text",
    ["", "\x00", "\u202e\u202d left", "👁️🔥" * 2_000, "no " * 30_000, "a" * 100_000, "\ud800", "١٢٣", "é" * 9_999],
)
def test_storms_and_controls_are_read_too(text: str) -> None:
    assert read(text).about


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        # Negation as the published NegEx triggers have it ("no", "denies", "without", "no sign of"; Chapman and others,
        # J Biomed Inform 2001;34:301, from memory), in a client's words.
        ("no sign of redness", ()),
        ("without any swelling", ()),
        ("she denies pain", ()),
        ("not itchy but burning", ("burning",)),
        # "no increase", "not only": triggers that only look like denial, from the same list.
        ("not only red but swollen", ("redness", "swelling")),
        ("hasnt stopped itching", ("itching",)),
    ],
)
def test_denial_reaches_as_far_as_it_does_and_no_further(text: str, signs: tuple[str, ...]) -> None:
    assert tuple(str(one) for one in read(text).signs) == signs
