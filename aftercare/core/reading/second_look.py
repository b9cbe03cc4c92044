"""What the second opinion changes in a reading: more urgent, or to a person; less urgent only to a person's eyes."""

from __future__ import annotations

from dataclasses import replace

from aftercare.core.reading import blinking, second
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import WORD, listed
from aftercare.core.reading.values import Reading, Sign, Topic, Urgency

_SAID_LITTLE = 3  # tokens: "lol", "brb in 5"
_OTHERWISE = ("topic:auto", "topic:spam", "topic:start")

_ON = listed("start restart resume again back reactivate volver vuelvan otra nuevo")
# Nobody praises by the words for these, as by "stinging", "swollen" or "on fire".
_NEVER_PRAISE = {Sign.DISCHARGE, Sign.GRITTY}
_NO_STOP = {Topic.STOP, Topic.BOOKING, Topic.START}  # it is one already, or a wish for something else


def look_again(reading: Reading, opinion: second.Opinion, page: Page, explained: list[Mark]) -> Reading:
    """Hand a reply to a person where the second opinion sees danger, or an end of messages, that the rules do not.

    Where it is sure of a sign, an emergency or a wish to stop, that is acted on; and where it is sure of mere praise.
    """
    if reading.unread:
        return reading
    calm = reading.urgency is Urgency.NONE
    otherwise = any(page.marks.get(name) for name in _OTHERWISE)
    lost = reading.about == (Topic.OTHER,) and not explained and not otherwise and not page.marks.get("scope:history")
    # "stop by", "don't stop": the word for something else. "start again", "back on": a wish for the contrary.
    other_stop = bool(page.named("topic:notstop")) or bool(_ON & {token.word for token in page.tokens})
    # Of "no me arde" it sees "no me", as in "no me escriban": of what is left of a denial it says nothing.
    ends = opinion.stop if not explained and not otherwise and calm else 0.0
    if _is_mere_praise(reading, opinion, page):
        kept = tuple(topic for topic in reading.about if topic is not Topic.IRRITATION)
        return replace(reading, urgency=Urgency.NONE, about=_joined(kept, Topic.FINE), signs=(), side=None, unread=True)
    if ends > second.SURE_STOP and not other_stop and not _NO_STOP & set(reading.about):
        return replace(reading, about=_joined(reading.about, Topic.STOP), unread=ends < second.CERTAIN_STOP)
    if reading.urgency is Urgency.EMERGENCY:
        return reading
    sure = bool(explained) or not {Topic.OTHER, Topic.QUESTION} & set(reading.about)
    if not otherwise and (urgency := _more_urgent(reading, opinion, page, sure=sure)) is not None:
        about = _joined(reading.about, Topic.IRRITATION)
        return replace(reading, urgency=urgency, about=about)  # whatever is urgent is read by a person anyway
    if lost and opinion.topic is not None and opinion.sign < second.SIGN_UNEXPLAINED:
        return replace(reading, about=(opinion.topic,))
    doubtful = _doubts_calm(opinion, sure=sure) if calm else _doubts(opinion, reading)
    unknown = lost and (
        opinion.sign > second.SIGN_UNEXPLAINED or len(page.tokens) > _SAID_LITTLE and opinion.sign > second.NO_SIGN
    )
    lookalike = bool(page.named("topic:notstop")) and reading.about != (Topic.OTHER,)
    unwanted = ends > (second.CERTAIN_STOP if lookalike else second.STOP) and Topic.STOP not in reading.about
    return replace(reading, unread=True) if doubtful or unknown or unwanted else reading


def _is_mere_praise(reading: Reading, opinion: second.Opinion, page: Page) -> bool:
    """Say whether words that the rules take for a sign are a figure of speech that they do not know."""
    if reading.negated:
        return False  # who denies one sign means the other: "a bit teary, no sting"
    if opinion.topics.get(Topic.FINE, 0.0) < second.PRAISE or len(page.tokens) > second.FEW_WORDS:
        return False
    if reading.urgency is Urgency.EMERGENCY:
        return max(opinion.sign, opinion.emergency) < second.NO_EMERGENCY_IN_PRAISE
    if _NEVER_PRAISE & set(reading.signs):
        return False
    return reading.urgency is Urgency.SAME_DAY and opinion.sign < second.NO_SIGN_IN_PRAISE


def _more_urgent(reading: Reading, opinion: second.Opinion, page: Page, *, sure: bool) -> Urgency | None:
    """Return how urgent a reply is by the model where that is more than by the rules, which are ``sure`` or not.

    How bad a sign of few words is that the rules found is theirs to say: "red and it hurts" is for today, not for
    the night.
    """
    words = sum(token.kind == WORD for token in page.tokens)
    least = second.SURE_OF_MANY if words >= second.MANY_WORDS else 0.0
    if reading.urgency is Urgency.SAME_DAY:
        if Sign.VISION in reading.signs and blinking.clears_on_blinking(page):
            return None  # the model does not see what blinking does to a blur
        worse = words >= second.SOME_WORDS and opinion.emergency > max(second.WORSE, least)
        return Urgency.EMERGENCY if worse else None
    if reading.urgency is Urgency.WATCH and not reading.signs:
        return Urgency.SAME_DAY if opinion.sign > second.SIGN_COMES_BACK else None
    if reading.urgency is not Urgency.NONE:
        return None
    if opinion.emergency > max(least, second.SURE_EMERGENCY_AGAINST_RULES if sure else second.SURE_EMERGENCY):
        return Urgency.EMERGENCY
    if opinion.sign > (second.SURE_SIGN_AGAINST_RULES if sure else second.SURE_SIGN):
        return Urgency.SAME_DAY
    return None


def opinion_of(answer: str, page: Page, explained: list[Mark]) -> second.Opinion:
    """Return what the model makes of what no rule explains: of "no redness, love them" it sees "no, love them"."""
    return second.opinion(*without(answer, page, explained))


def without(answer: str, page: Page, marks: list[Mark]) -> tuple[str, list[str]]:
    """Return the answer without the words of some marks, and its words without them."""
    taken = {place for mark in marks for place in range(mark.start, mark.end)}
    words = [token.word for place, token in enumerate(page.tokens) if place not in taken]
    for mark in sorted(marks, key=lambda one: -one.start):
        start, end = page.tokens[mark.start].start, page.tokens[mark.end - 1].end
        answer = answer[:start] + answer[max(start, end) :]
    return answer, words


def _doubts_calm(opinion: second.Opinion, *, sure: bool) -> bool:
    if sure:
        return opinion.sign > second.SIGN_AGAINST_RULES or opinion.emergency > second.EMERGENCY_AGAINST_RULES
    return opinion.sign > second.SIGN or opinion.emergency > second.EMERGENCY


def _doubts(opinion: second.Opinion, reading: Reading) -> bool:
    """Say whether what is nearly over may be an emergency; a current sign reaches a person as it is."""
    return opinion.emergency > second.EMERGENCY_AGAINST_RULES and reading.urgency is Urgency.WATCH


def _joined(about: tuple[Topic, ...], topic: Topic) -> tuple[Topic, ...]:
    return tuple(one for one in Topic if one is topic or one in about and one is not Topic.OTHER)
