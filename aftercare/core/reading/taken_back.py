"""What takes a denial back, or leaves it nothing to deny: said twice, on a condition, of what stands before it."""

from __future__ import annotations

from aftercare.core.reading import until_now
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import COMMA, STOP, listed

_BEHIND = listed("cero 0 zero none nil ninguna ninguno")


def denies_backwards(page: Page, mark: Mark) -> bool:
    """Itching zero, burning zero, tears plenty: each denies what stands before it, and not the next."""
    tokens = page.tokens
    if mark.end >= len(tokens) or tokens[mark.end].kind not in (COMMA, STOP) or tokens[mark.start].word not in _BEHIND:
        return False
    return any(
        name.startswith("sign:") and other.end == mark.start for name, marks in page.marks.items() for other in marks
    )


_BUT, _THE = listed("but pero"), listed("the my el la los las lo mi")
_SHORT = 4  # words: "but not the itch"


def denies_an_end(page: Page, mark: Mark, sign: Mark) -> bool:
    """The redness is gone but not the itch: what is denied is that it went."""
    words = [token.word for token in page.tokens[mark.start - 1 : sign.start]] if mark.start else []
    if len(words) < 2 or words[0] not in _BUT or not set(words[-1:]) & _THE or len(words) > _SHORT:
        return False
    return any(
        page.sentence[over.start] == page.sentence[mark.start] and over.end < mark.start
        for over in page.named("scope:over")
    )


_SAYING = listed("say claim pretend swear promise argue think reckon suppose decir digo diria diga creo")
_UNSAID = listed("wouldnt couldnt cant wont dont not never no")
_SAYS = 9  # tokens from a denial of saying to what is not said


def is_unsaid(page: Page, mark: Mark) -> bool:
    """I wouldn't go so far as to say they haven't been burning; can't claim there's no itch: two denials are none."""
    first = max(0, mark.start - _SAYS)
    same = [place for place in range(first, mark.start) if page.clause[place] == page.clause[mark.start]]
    words = [page.tokens[place].word for place in same]
    said = next((place for place, word in enumerate(words) if word in _SAYING), 0)
    return bool(said) and bool(_UNSAID & set(words[:said]))


def has_condition(page: Page, sign: Mark) -> bool:
    """It doesn't hurt unless I touch it."""
    return until_now.began_lately(page, sign) or any(
        0 <= mark.start - sign.end <= 3
        and page.sentence[mark.start] == page.sentence[sign.end - 1]
        and not _is_a_joke(page, mark)
        for mark in page.named("scope:unless")
    )


_COUNTS = listed("count counting counts cuentas contamos cuenta")


def _is_a_joke(page: Page, unless: Mark) -> bool:
    """Not fainted, unless you count swooning at myself."""
    return any(token.word in _COUNTS for token in page.tokens[unless.end : unless.end + 2])
