"""An e-mail's text taken apart for its layout."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aftercare.core.letter import Block, Part, Run, parts

TEXT = """Hi Mia,

Thank you for coming.

The first days:
- Keep them dry.
- No steam.

Do not wait for us.

- Rinse first.

Ada
Wrenfield"""
CAUTION = "Do not wait for us.\n\n- Rinse first."


def shapes(part: Part) -> list[tuple[str, list[str]]]:
    return [(block.shape, ["".join(run.text for run in line) for line in block.lines]) for block in part.blocks]


def words(read: tuple[Part, ...]) -> list[str]:
    """Every word of what was read, in its order."""
    runs = (run.text for part in read for block in part.blocks for line in block.lines for run in line)
    return "".join(f"{text} " for text in runs).split()


def test_paragraphs_lists_headings_and_the_caution_are_told_apart() -> None:
    before, caution, after = parts(TEXT, CAUTION)

    assert shapes(before) == [
        ("paragraph", ["Hi Mia,"]),
        ("paragraph", ["Thank you for coming."]),
        ("heading", ["The first days:"]),
        ("list", ["Keep them dry.", "No steam."]),
    ]
    assert caution.is_caution
    assert shapes(caution) == [("paragraph", ["Do not wait for us."]), ("list", ["Rinse first."])]
    assert shapes(after) == [("paragraph", ["Ada", "Wrenfield"])]


def test_a_caution_that_is_not_in_one_piece_is_still_there() -> None:
    read = parts(TEXT, "Something else.")

    assert [part.is_caution for part in read] == [False]
    assert "Rinse" in words(read)


@pytest.mark.parametrize(
    ("text", "shape"),
    [
        ("Before you come:", "heading"),
        ("So:\nmore words", "paragraph"),
        ("x" * 90 + ":", "paragraph"),
        ("-no list", "paragraph"),
        ("- a list", "list"),
        ("# no markup", "paragraph"),
        ("<b>no markup</b>", "paragraph"),
    ],
)
def test_nothing_but_a_dash_and_a_colon_means_anything(text: str, shape: str) -> None:
    assert shapes(parts(text)[0])[0][0] == shape


def test_words_between_a_line_and_its_list_stay_in_their_order() -> None:
    assert shapes(parts("One.\nTwo.\nBring:\n- a bag\nThanks.")[0]) == [
        ("paragraph", ["One.", "Two."]),
        ("heading", ["Bring:"]),
        ("list", ["a bag"]),
        ("paragraph", ["Thanks."]),
    ]


def test_only_addresses_that_are_given_lead_on() -> None:
    """A name may look like an address, or like Markdown's link (CommonMark, 6.3): it stays what it is."""
    text = "[Mia](https://evil.example), see https://lashes.example/v/a and https://lashes.example/v/ab."

    (part,) = parts(text, links=["https://lashes.example/v/a", "https://lashes.example/v/ab"])

    assert part.blocks == (
        Block(
            "paragraph",
            (
                (
                    Run("[Mia](https://evil.example), see "),
                    Run("https://lashes.example/v/a", link=True),
                    Run(" and "),
                    Run("https://lashes.example/v/ab", link=True),
                    Run("."),
                ),
            ),
        ),
    )


@given(st.text(alphabet="ab-: \n", max_size=60))
def test_no_word_is_lost_and_none_is_added(text: str) -> None:
    bare = [word for line in text.split("\n") for word in line.strip().removeprefix("- ").split()]

    assert words(parts(text)) == bare
