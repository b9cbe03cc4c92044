"""What was feared and did not come: "figured I'd be bloodshot, turns out nope" denies the redness."""

from __future__ import annotations

from aftercare.core.reading.ends import words_of
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import WORD, listed

_FEARED = listed("""
    thought expected expecting expectin figured reckoned convinced sure certain swore sworn dreaded dreading bracing
    braced scared afraid worried nervous terrified feared waiting ready armed prepared assumed guessed warned told
    imagined presumed positive betting banking heard horror pense crei pensaba temia miedo
""")
_NEXT = 2  # sentences


def did_not_come(page: Page, sign: Mark) -> bool:
    """Say whether an imagined sign was feared, and the same sentence or one soon after says that it did not come."""
    where = page.sentence[sign.start]
    feared = any(
        page.sentence[mark.start] == where
        and mark.start <= sign.start
        and _FEARED & {token.word for token in page.tokens[mark.start : mark.end]}
        for mark in page.named("scope:will")
    )
    if not (feared or _is_asked_by_others(page, where)) or where in page.asked():
        return False
    later = ((page.sentence[mark.start], mark) for mark in page.named("scope:unmet") if mark.start >= sign.end)
    return any(
        sentence - where <= _NEXT and sentence not in page.asked() and (feared or _ends_there(page, mark))
        for sentence, mark in later
    )


_ASKED = listed("asked asks ask asking wondered pregunto pregunta preguntaron")


def _is_asked_by_others(page: Page, sentence: int) -> bool:
    """Mum rang to ask whether they were swollen yet. They're not."""
    return any(
        page.sentence[mark.start] == sentence and _ASKED & words_of(page, mark) for mark in page.named("scope:report")
    )


_PERSISTS = listed("stopped stop gone eased settled calmed quit let cleared faded shifted")


_CALM = listed("fine ok okay grand not normal perfect good great clear calm nothing totally absolutely all lovely bien")


def _came(page: Page, sign: Mark) -> bool:
    """You said they would be puffy but not like this; she said it might sting and it does."""
    where = page.sentence[sign.start]
    if where in page.asked() or any(page.sentence[mark.start] == where for mark in page.named("scope:if")):
        return False
    return any(
        mark.start >= sign.end
        and page.sentence[mark.start] == where
        and not (mark.end < len(page.tokens) and page.tokens[mark.end].word in _CALM)
        for mark in page.named("scope:came")
    )


def goes_on(page: Page, sign: Mark) -> bool:
    """They told me it would sting. It hasn't stopped: what was foretold came."""
    where = page.sentence[sign.start]
    if _came(page, sign):
        return True
    if any(mark.start >= sign.end and page.sentence[mark.start] == where for mark in page.named("scope:toolong")):
        return True  # "I know you said it might sting but three days?"
    return any(
        mark.start >= sign.end
        and page.sentence[mark.start] - where <= 1
        and _PERSISTS & words_of(page, mark)
        and _DID_NOT & words_of(page, mark)
        for mark in page.named("scope:nonneg")
    )


_SAYING = listed("told said say says saying warned swore swears reckoned reckons dijo dijeron dicen dice dicho")
_DID_NOT = listed("didnt doesnt dont hasnt havent isnt arent wasnt werent")
_AND_NO = listed("y pero no nada")
_AFTER_IT = listed("though tho at one either yet")


def was_only_said(page: Page, sign: Mark) -> bool:
    """People told me it burns, it didn't; it burns, they said. It hasn't."""
    where = page.sentence[sign.start]
    if where in page.asked():
        return False
    said = any(
        page.sentence[mark.start] == where and _SAYING & words_of(page, mark) for mark in page.named("scope:report")
    )
    later = [
        mark
        for mark in page.named("scope:unmet")
        if mark.start >= sign.end and (_DID_NOT & words_of(page, mark) or words_of(page, mark) <= _AND_NO)
    ]
    later += [mark for mark in page.named("scope:minenot") if mark.start >= sign.end]
    return said and any(page.sentence[mark.start] - where <= 1 and _ends_there(page, mark) for mark in later)


_HABIT = listed("always usually normally often generally siempre normalmente generalmente suelen suele")
_NOT = _DID_NOT | listed("not no")


def is_spared(page: Page, sign: Mark) -> bool:
    """Normally my eyes stream, and this time they haven't; siempre me pican y esta vez no."""
    where = page.sentence[sign.start]
    if where in page.asked():
        return False
    first = page.sentence.index(where)
    habit = _HABIT & {token.word for token in page.tokens[first : sign.end + 1]}
    return bool(habit) and any(
        mark.start >= sign.end
        and page.sentence[mark.start] - where <= 1
        and page.sentence[mark.start] not in page.asked()
        and _NOT & words_of(page, mark)
        and _ends_there(page, mark)
        for mark in page.named("scope:unmet")
    )


def _ends_there(page: Page, mark: Mark) -> bool:
    """It hasn't; it didn't though -- but not: it hasn't stopped."""
    following = page.tokens[mark.end] if mark.end < len(page.tokens) else None
    return following is None or following.kind != WORD or following.word in _AFTER_IT
