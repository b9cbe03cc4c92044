"""A sign that the words behind it, or before it, turn into a figure of speech, over a stop: "in pain. emotionally."."""

from __future__ import annotations

from aftercare.core.reading.page import EYES, Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import WORD, listed


def is_hyperbole(page: Page, mark: Mark, found: list[Mark]) -> bool:
    """Say whether a sign is none by what stands around it; ``found`` are all signs of the page."""
    return (
        _is_felt_otherwise(page, mark)
        or _is_of_a_thought(page, mark)
        or _is_of_a_price(page, mark)
        or _is_a_greeting(page, mark)
        or _is_a_word(page, mark)
        or _is_awe(page, mark, found)
    )


_MINDS = listed("emotionally financially spiritually mentally metaphorically figuratively economically")
_LEADS = listed("with from of out pure purely only just de por")
_FEELINGS = listed("""
    pride envy jealousy joy happiness laughter laughing excitement delight vanity gratitude orgullo envidia alegria
    felicidad risa emocion
""")
_GLAD = _FEELINGS | listed("happy good proud jealous envious")


def _is_felt_otherwise(page: Page, mark: Mark) -> bool:
    """In pain. Emotionally. -- Swollen. With pride. -- Tears (happy)."""
    tokens = page.tokens
    place = mark.end
    while place < len(tokens) and tokens[place].kind != WORD:
        place += 1
    if place == len(tokens) or place == mark.end or tokens[place - 1].word == "\n":
        return False
    words = [token.word for token in tokens[place : place + 2]]
    if words[0] in _MINDS or words[0] in _LEADS and words[1:] and words[1] in _FEELINGS:
        return True
    closes = place + 1 == len(tokens) or tokens[place + 1].kind != WORD
    return tokens[place - 1].word == "(" and closes and words[0] in _GLAD


_HURTS = listed("sign:pain sign:burning")
_THINKS = listed("think say admit know imagine realise realize pensar decir saber")


def _is_of_a_thought(page: Page, mark: Mark) -> bool:
    """It hurts... to think that I lived without them; it hurts... to blink is another matter."""
    tokens = page.tokens
    place = mark.end
    while place < len(tokens) and tokens[place].word in (".", "…"):
        place += 1
    if mark.name not in _HURTS or place == mark.end:
        return False
    words = [token.word for token in tokens[place : place + 2]]
    return len(words) > 1 and words[0] in ("to", "de") and words[1] in _THINKS


_MONEY = listed("""
    £ $ € quid price prices charge charges charged bill deposit fee fees pounds dollars euros cost costs precio cuenta
    cobraron cobraste
""")
_STUFF = listed("glue adhesive remover drops solvent acetone tint pegamento removedor")
_BARELY = listed("that this it which ouch oof really did has and proper actually well eso me si duele")


def _is_of_a_price(page: Page, mark: Mark) -> bool:
    """£20 more than the website said. That stung."""
    where = page.sentence[mark.start]
    if mark.name not in _HURTS or not where:
        return False
    own = {token.word for token in page.tokens[mark.start : mark.end]}
    words = {
        token.word for token, at in zip(page.tokens, page.sentence, strict=True) if at == where and token.kind == WORD
    }
    before = page.said(where - 1)
    return words <= own | _BARELY and bool(before & _MONEY) and not before & (EYES | _STUFF)


def _is_a_greeting(page: Page, mark: Mark) -> bool:
    """Swell, see you Thursday."""
    alone = mark.end == 1 < len(page.tokens) and page.tokens[1].kind != WORD
    greets = bool(page.named("topic:booking", "topic:fine", "topic:thanks"))
    return alone and greets and page.tokens[0].word == "swell" and page.tokens[1].word in (",", ".", "!")


_ASKED, _MEANT = listed("what whats define que"), listed("mean means meaning significa")
_HERS = listed("my i im ive me mi me")


def _is_a_word(page: Page, mark: Mark) -> bool:
    """What does 'gritty' mean?"""
    before = {token.word for token in page.tokens[max(0, mark.start - 4) : mark.start]}
    after = {token.word for token in page.tokens[mark.end : mark.end + 3]}
    return bool(before & _ASKED and after & _MEANT) and not before & (_HERS | EYES)


_OVERCOME = listed("sign:breathing! sign:faint! sign:vision!")
_AWE = listed("speechless stunned gobsmacked floored shook swooning lashful")
_AT_HERSELF = listed("breath mirror reflection selfie selfies")
_FEW = 2  # words


def _is_awe(page: Page, mark: Mark, found: list[Mark]) -> bool:
    """Breathless. Speechless. -- Nearly fainted, took my breath away: no eye is spoken of, and no other sign."""
    if mark.name not in _OVERCOME or any(other.name not in _OVERCOME for other in found):
        return False
    words = {token.word for token in page.tokens}
    clause = page.clause[mark.start]
    own = sum(token.kind == WORD for token, at in zip(page.tokens, page.clause, strict=True) if at == clause)
    figures = {token.word for one in page.named("topic:figure") for token in page.tokens[one.start : one.end]}
    return own <= _FEW and not words & EYES and bool(words & _AWE or figures & _AT_HERSELF)
