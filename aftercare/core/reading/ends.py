"""What the end of a sign that somebody tells of can be the end of."""

from __future__ import annotations

from aftercare.core.reading import blinking
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import listed

_OPENED = listed("sign:sealed_eye! sign:swollen_shut!")
_OPENING = listed("opened abrir abre abrio")
_RETURNED = listed("back returned reappeared")
_OF_COLOUR = listed("sign:redness sign:redness! sign:irritated sign:blood")
_DRY, _WET = listed("dry"), listed("sign:watering sign:discharge sign:unwell")
_WHITE = listed("white whiter blanco blancos blanquitos")


_HOW, _CANNOT = listed("good well fine properly right"), listed("cant couldnt cannot cyaan barely hardly dont not no")


def words_of(page: Page, mark: Mark) -> set[str]:
    """Return the words that a mark covers."""
    return {token.word for token in page.tokens[mark.start : mark.end]}


def may_end(page: Page, mark: Mark, sign: Mark) -> bool:
    """Say whether the words at ``mark`` can tell of the end of ``sign``."""
    words = words_of(page, mark)
    if words & _OPENING and sign.name not in _OPENED:
        return False  # it opened again: that ends the sticking, not what stuck
    if mark.start == sign.end and page.tokens[mark.start].word in _HOW and words_of(page, sign) & _CANNOT:
        return False  # "can't draw breath good since"
    if words & _DRY and "bone" not in words and sign.name not in _WET:
        return False  # "my eyes are dry now" tells of a sign; that they weep no more is the end of weeping
    if words & _WHITE and sign.name not in _OF_COLOUR:
        return False  # "light hurts, sclera white as snow": white is the end of red alone
    if sign.name.startswith("sign:vision") and (words & _RETURNED or blinking.is_by_blinking(page, mark)):
        return False  # her sight hasn't come back; "blurry, clears when I blink" is not over
    return not (sign.name.endswith("!") and _is_said_by_others(page, mark))


_NEVER = listed("never not isnt arent hasnt havent wasnt werent hardly nowhere nunca tampoco")
_ONTO, _MOVES = listed("to into onto past below"), listed("down now")


def is_no_end(page: Page, mark: Mark) -> bool:
    """Never fine since; it has come down now to my cheek."""
    before = page.tokens[mark.start - 1].word if mark.start else ""
    after = page.tokens[mark.end].word if mark.end < len(page.tokens) else ""
    return before in _NEVER or after in _ONTO and page.tokens[mark.end - 1].word in _MOVES


def _is_said_by_others(page: Page, mark: Mark) -> bool:
    """She told me it was fine."""
    return any(
        0 <= mark.start - other.end <= 4 and page.sentence[other.start] == page.sentence[mark.start]
        for other in page.named("scope:report")
    )
