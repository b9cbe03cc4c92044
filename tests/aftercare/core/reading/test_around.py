"""What goes with explained words: the place, the clause of another, what was feared."""

from __future__ import annotations

import pytest

from aftercare.core.reading.findings import sort_out
from aftercare.core.reading.page import lay_out
from aftercare.core.reading.spelling import known
from aftercare.core.reading.tokens import tokenize


def around(text: str) -> list[str]:
    page = lay_out(tokenize(text, known), english=True, spanish=False)
    return [" ".join(token.word for token in page.tokens[one.start : one.end]) for one in sort_out(page).around]


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("no bumps along the lash line", "bumps along the lash line"),
        ("eyes not red, love them", "eyes not red"),
        ("our pug has one red weepy eye", "pug has one red weepy eye"),
        ("i have a gap in the middle of my left eye", "in the middle of my left eye"),
        ("thought i'd wake up looking like a boxer, love them", "thought id wake up looking like a boxer"),
        ("lids look normal", "lids look normal"),
    ],
)
def test_the_words_beside_are_explained_too(text: str, words: str) -> None:
    assert words in around(text)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("lids aren't swollen, one of them feels like a coal", "lids"),
        ("my sister only had puffy eyes, with me it is something else", "sister"),
        ("some lashes came off in my eye", "eye"),
        ("does the burning end eventually", "burning"),
    ],
)
def test_not_where_they_may_tell_of_her_own_eye(text: str, words: str) -> None:
    assert not any(words in told.split() and told != words for told in around(text))
