"""How soon someone must act, from the signs that are current (after NHS red-eye advice, reviewed 2022-03-21)."""

from __future__ import annotations

from aftercare.core.reading import blinking
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import listed
from aftercare.core.reading.values import Sign

# What a mark of the lexicon names, where that is not the sign of the same word.
NAMED = {
    "swollen_shut!": (Sign.SWELLING, Sign.SEALED_EYE),
    "injury!": (),
    "pupil!": (),
    "bulging!": (),
    "hospital!": (),
    "irritated": (),
    "unwell": (),
    "blood": (),
    "agony": (),
    "in_eye": (),
    "fever": (),
    "headache": (),
    "sickly": (),
    "hot_lid": (),
}
_BODY = listed("""
    arms arm legs leg belly stomach chest back torso body everywhere neck trunk tummy brazos piernas panza pecho
    espalda cuerpo cuello barriga guata
""")


def _is_all_over(page: Page, current: list[Mark]) -> bool:
    sentences = {page.sentence[mark.start] for mark in current if mark.name == "sign:hives"}
    return any(
        token.word in _BODY and where in sentences for token, where in zip(page.tokens, page.sentence, strict=True)
    )


EYES = listed("""
    eye eyes eyeball eyeballs lid lids eyelid eyelids cornea ojo ojos parpado parpados
""")
_STUFF = listed("""
    glue adhesive remover acetone primer bonder cyanoacrylate superglue solvent chemical chemicals drip dripped
    stuff liquid product droplet drop fumes pegamento pegante goma adhesivo removedor acetona quimico tinte tint
    gotita gota
""")


def with_glue(page: Page, found: list[Mark]) -> list[Mark]:
    """Take "in my eye" for glue in it where glue is spoken of, in whatever order: "nail glue. its in my eye"."""
    speaks = any(token.word in _STUFF for token in page.tokens)
    known = any(mark.name == "sign:glue_in_eye!" for mark in found)
    taken = []
    for mark in found:
        if mark.name == "sign:in_eye":
            is_another_sign = any(
                other.name != mark.name and other.start < mark.end and mark.start < other.end for other in found
            )
            on_a_lid = any(other.end == mark.start and other.name in _ON_A_LID for other in found)
            no_eye = _is_sweat(page, mark) or _is_an_ingredient(page, mark)
            if speaks and not known and not is_another_sign and not on_a_lid and not no_eye:
                taken.append(Mark("sign:glue_in_eye!", mark.start, mark.end))
        else:
            taken.append(mark)
    if not any(mark.name == "sign:glue_in_eye!" for mark in taken) and _took_the_wrong_bottle(page, found):
        where = next(place for place, token in enumerate(page.tokens) if token.word in _CHEMICAL)
        taken.append(Mark("sign:glue_in_eye!", where, where + 1))
    return sorted(taken, key=lambda mark: (mark.start, -mark.end))


_SWEAT = listed("sweat sweating sweats sudor sudo rain lluvia")


def _is_sweat(page: Page, mark: Mark) -> bool:
    """Would sauna melt the glue? I sweat straight into my eyes."""
    said = page.said(page.sentence[mark.start])
    return bool(said & _SWEAT) and not said & _STUFF


_CONTAINS = listed("have has contain contains got is are use put any")


def _is_an_ingredient(page: Page, mark: Mark) -> bool:
    """Does your adhesive have latex in it?"""
    where = page.sentence[mark.start]
    named = page.tokens[mark.end - 1].word == "it" and not page.said(where) & EYES
    return named and where in page.asked() and bool(page.said(where) & _CONTAINS)


_ON_A_LID = listed("sign:rash sign:swelling sign:redness sign:discharge")  # "granitos en el párpado"
_CHEMICAL = listed("acetone remover glue adhesive primer bonder superglue solvent acetona removedor pegamento")
_BY_MISTAKE = listed(
    "mixed grabbed instead mistook mistaken confused swapped wrong mistake accident thought confundi equivoque"
)
_RINSING = listed(
    "rinsing rinse rinsed flushing flush flushed tap washing washed sink shower water enjuagando enjuague lavando"
)


def _took_the_wrong_bottle(page: Page, found: list[Mark]) -> bool:
    """Mixed up the acetone with my saline, eye stings; grabbed the remover and got it in my eye, rinsing now."""
    words = {token.word for token in page.tokens}
    if not (_CHEMICAL & words and EYES & words and _BY_MISTAKE & words):
        return False
    return bool(_RINSING & words) or any(mark.name in ("sign:burning", "sign:in_eye") for mark in found)


def named(mark: Mark) -> tuple[Sign, ...]:
    """Return the signs that a mark stands for."""
    name = mark.name.removeprefix("sign:")
    return NAMED[name] if name in NAMED else (Sign(name.removesuffix("!")),)


def is_emergency(page: Page, current: list[Mark]) -> bool:
    """Say whether someone must act now."""
    if blinking.clears_on_blinking(page):
        current = [mark for mark in current if not blinking.is_mere_blur(page, mark)]
    names = {mark.name.removeprefix("sign:") for mark in current}
    if "hospital!" in names and len(names) == 1:
        return False
    if any(name.endswith("!") for name in names):
        return True
    if "hives" in names and _is_all_over(page, current):
        return True
    if "blood" in names and any(token.word in EYES for token in page.tokens):
        return True
    if "glue_in_eye" in names:
        return True
    if "vision" in names:
        return True
    if "pain" in names and "agony" in names:
        return True
    if "redness" in names and ("light" in names or {"headache", "sickly"} <= names):
        return True
    return "fever" in names and bool(names & {"swelling", "hot_lid"})
