"""What stands around a sign: denial, time, condition, and whose it is.

After the ideas of NegEx (Chapman and others, J Biomed Inform 2001) and ConText (Harkema and others, 2009): a trigger
reaches forward until a word that ends it; phrases that only look like triggers are taken out first.
"""

from __future__ import annotations

from aftercare.core.reading import (
    denial,
    denied_after,
    imagined,
    long_ago,
    she_too,
    story,
    times,
    told_on,
    unmet,
    until_now,
    whose,
)
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.standing import Standing
from aftercare.core.reading.tokens import WORD, listed

__all__ = ["Standing", "standing_of"]


def standing_of(page: Page, sign: Mark, signs: list[Mark]) -> Standing:
    """Return how ``sign`` stands; ``signs`` are all of the page, in order."""
    not_hers = whose.is_another_persons(page, sign) or _is_of_a_story(page, sign)
    if not_hers and not she_too.has_it_too(page, sign):
        return Standing.DENIED if _but_not_hers(page, sign) else Standing.NOT_HERS
    if long_ago.is_long_ago(page, sign):
        return Standing.LONG_AGO
    if imagined.is_imagined(page, sign) and not unmet.goes_on(page, sign) and not she_too.has_it_too(page, sign):
        denied = unmet.did_not_come(page, sign) or denied_after.is_denied_after(page, sign)
        denied = denied or denial.asked_of_others(page, sign)
        return Standing.DENIED if denied else Standing.IMAGINED
    if unmet.was_only_said(page, sign) or unmet.is_spared(page, sign):
        return Standing.DENIED
    if denial.is_denied(page, sign):
        return Standing.DENIED_NOW if denial.no_longer(page, sign) else Standing.DENIED
    if until_now.is_turned_round(page, sign):
        return Standing.CURRENT
    standing = times.by_time(page, sign, signs)
    if standing is Standing.CURRENT and story.is_moved(page, sign, signs):
        return Standing.NOT_HERS
    return standing


_IF = listed("if si unless")


def _but_not_hers(page: Page, sign: Mark) -> bool:
    """My sister's went red, mine didn't."""
    where = page.sentence[sign.start]
    return any(
        mark.start >= sign.end
        and page.sentence[mark.start] in (where, where + 1)
        and where not in page.asked()
        and page.tokens[mark.start - 1].word not in _IF
        and (mark.end == len(page.tokens) or page.tokens[mark.end].kind != WORD)  # and not "yo no he visto"
        for mark in page.named("scope:minenot")
    )


def _is_of_a_story(page: Page, sign: Mark) -> bool:
    """Say whether it is told on of somebody else; what is denied after a story is denied of her."""
    told = told_on.is_told_on(page, sign) or story.in_story(page, sign)
    return told and not denial.is_denied(page, sign)
