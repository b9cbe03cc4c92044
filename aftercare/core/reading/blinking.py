"""Sight that clears on blinking: a sign of today, neither over nor an emergency."""

from __future__ import annotations

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import listed

_BLINKS = listed("""
    blink blinks blinked blinking flutter flutters fluttered fluttering parpadear parpadeo parpadeando
    pestanear pestaneo pestaneando
""")
_CLEARS = listed("""
    clears clear cleared clearing sorts sorted fixes fix goes gone better helps away back quita aclara pasa
    normal limpia mejora shifts shift brings refocuses okay crisp clearly sharp sharpens focus ok fine until
    clean till off proper becomes wiped works vanishes vanish disappears lifts wipes va desaparece arregla compone
    bien limpia limpio nitido nitida claro quito quitan aclaran
""")
_FAILS = listed("""
    nothing doesnt wont isnt not no nada odds difference didnt never cant still
    sigue siguen igual tampoco mas
""")
_BLUR = listed("""
    vaseline grease condensation fingerprints fingerprint breath breathes empanado esmerilado picture
    blurring unclear soft smear smears bleary bleared blurs jelly petroleum cloud haze fog mist read see focus
    screen text register reading foggy hazy fuzzy cloudy milky film smudgy blury nubladito nubladita lechosa
    misty off blurry blurred blur weird bad filmy smeary window glass greasy
    empana empano neblina niebla humo nube nata velo borroso borrosa nublado
    nublada nubla nublo empanada empanado smeared smearing smudges smudge mists fogs steamy steamed sharp clear
    filmed gunky bleary bleariness swimmy swim swims swimming blurriness mistiness
""")
_GOES_ON = [["still", word] for word in ("doing", "does", "happening", "happens", "going", "at", "there", "here")]
_ENDED = listed("finished stopped over packed gone settled vanished quit")
_NEAR, _FAR = 8, 14  # tokens
_BEFORE = (["before"], ["until"], ["till"])  # "four blinks before the number on the front of the bus goes sharp"
_SEES_AGAIN = (["can", "see"], ["comes", "right"], ["comes", "good"])
_OF_WHAT = 2  # tokens: "like looking through a smear"


def is_mere_blur(page: Page, mark: Mark) -> bool:
    """Say whether a sign of sight is a blur, which blinking may clear."""
    return mark.name.startswith("sign:vision") and any(
        token.word in _BLUR for token in page.tokens[mark.start : mark.end + _OF_WHAT]
    )


def clears_on_blinking(page: Page) -> bool:
    """Say whether she says so: "blurry, a blink or two sorts it"."""
    words = [token.word for token in page.tokens]
    for place, word in enumerate(words):
        if word in _BLINKS:
            ahead = _FAR if words[place + 1 : place + 2] in _BEFORE else _NEAR
            near = range(max(0, place - _NEAR), min(len(words), place + ahead + 1))
            fails = (at for at in near if words[at] in _FAILS and page.sentence[at] == page.sentence[place])
            clears = any(words[at] in _CLEARS or words[at - 1 : at + 1] in _SEES_AGAIN for at in near)
            if clears and all(_denies_another_sign(page, at) for at in fails):
                return True
    return False


def _denies_another_sign(page: Page, place: int) -> bool:
    """Blurry, no pain, blinking fixes it: the "no" is not of the blinking; nor is the "still" of "still doing it"."""
    words = [token.word for token in page.tokens[place : place + 2]]
    return words in _GOES_ON or any(
        name.startswith("sign:") and not name.startswith("sign:vision") and mark.start == place + 1
        for name, marks in page.marks.items()
        for mark in marks
    )


def is_by_blinking(page: Page, mark: Mark) -> bool:
    """Clearing as soon as I blink; cleared with blinking -- and not "the blink-it-away thing packed in"."""
    before = {token.word for token in page.tokens[max(0, mark.start - 2) : mark.start]}
    if _ENDED & {token.word for token in page.tokens[mark.start : mark.end]} and not before & _BLINKS:
        return False  # but "blink blink, gone"
    near = range(max(0, mark.start - _NEAR), min(len(page.tokens), mark.end + _NEAR))
    sentence = page.sentence[mark.start]
    return any(page.tokens[place].word in _BLINKS and page.sentence[place] == sentence for place in near)
