"""What a denial leaves standing: who will not drive "with these blurry eyes" has them."""

from __future__ import annotations

from aftercare.core.reading.page import EYES, Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import WORD, listed

_THIS = listed("these this my mi mis este estos esta estas")
_WITH = listed("with con")
_ONE = listed("a an one such un una el los la las")
# Whoever has, feels or sees none says so of the sign; whatever else she will not do, she would do with it.
_HAVING = listed("""
    have having has had got get getting gotten feel feeling feels felt see seeing find finding notice noticing suffer
    suffering need needed is are am was were been be being woke wake ended end left bothered troubled
    tengo tiene tener he han ha siento sentir veo ver noto notar hay traigo ando estoy amaneci desperte quede acabe
    termine
""")
_LEADS = 4  # words between "these" and the sign: "these poor old itchy eyes"
_REACH = 9


def is_carried(page: Page, denial: Mark, sign: Mark) -> bool:
    """I'm not bringing these itchy eyes anywhere; can't drive with a blurry eye -- but not: I don't have red eyes."""
    tokens = page.tokens
    between = tokens[denial.end : sign.start]
    words = [token.word for token in between]
    if (
        denial.name == "scope:no"
        or not words
        or len(words) > _REACH
        or any(token.kind != WORD for token in between)
        or _HAVING & set(words)
    ):
        return False
    lead = words[-_LEADS:]
    with_it = any(word in _WITH for word in words[-_LEADS - 1 :])
    named = bool(_THIS & set(lead)) or with_it and bool(_ONE & set(lead)) or with_it and words[-1] in _WITH
    moves = words[0] not in _THIS  # "not my sore eye but the other"
    return named and moves and _is_of_an_eye(page, sign)


def _is_of_an_eye(page: Page, sign: Mark) -> bool:
    """These itchy eyes; mis ojos hinchados: the eye belongs to the same words."""
    last = min(len(page.tokens), sign.end + 2)
    return any(token.word in EYES for token in page.tokens[max(0, sign.start - 2) : last])
