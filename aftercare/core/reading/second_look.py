"""What the second opinion changes in a reading: more urgent, or to a person; less urgent only to a person's eyes."""

from __future__ import annotations

from dataclasses import replace

from aftercare.core.reading import blinking, second
from aftercare.core.reading.page import EYES, Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import WORD, listed
from aftercare.core.reading.values import Reading, Sign, Topic, Urgency

_SAID_LITTLE = 3  # tokens: "lol", "brb in 5"
_OTHERWISE = ("topic:auto", "topic:spam", "topic:start")

_BODY = EYES | listed("""
    lash lashes eyelash eyelashes lashline face lip lips tongue throat chest mouth nose cheek cheeks skin head neck
    breath breathe breathing swallow ambulance hospital doctor gp nurse clinic emergency cara labio labios lengua
    garganta pecho boca piel cabeza pestana pestanas respirar hospital medico doctora
    it they theyre them one this that side left right
""")
_SMALL_TALK = 16  # tokens

_ON = listed("start restart resume again back reactivate volver vuelvan otra nuevo")
# Nobody praises by the words for these, as by "stinging", "swollen" or "on fire".
_NEVER_PRAISE = {Sign.DISCHARGE, Sign.GRITTY, Sign.POKING}
_NO_STOP = {Topic.STOP, Topic.BOOKING, Topic.START}  # it is one already, or a wish for something else


def look_again(
    reading: Reading, opinion: second.Opinion, page: Page, explained: list[Mark], *, of_others: bool = False
) -> Reading:
    """Hand a reply to a person where the second opinion sees danger, or an end of messages, that the rules do not.

    Where it is sure of a sign, an emergency or a wish to stop, that is acted on; and where it is sure of mere praise.
    What is told ``of_others`` is understood, and needs no person for itself.
    """
    if reading.unread:
        return reading
    calm = reading.urgency is Urgency.NONE
    otherwise = any(page.marks.get(name) for name in _OTHERWISE)
    chat = _is_small_talk(reading, page)
    lost = reading.about == (Topic.OTHER,) and not (
        chat or explained or of_others or otherwise or page.marks.get("scope:history")
    )
    # "stop by", "don't stop": the word for something else. "start again", "back on": a wish for the contrary.
    other_stop = bool(page.named("topic:notstop")) or bool(_ON & {token.word for token in page.tokens})
    # Of "no me arde" it sees "no me", as in "no me escriban": of what is left of a denial it says nothing.
    ends = opinion.stop if not explained and not otherwise and calm else 0.0
    if Topic.WRONG_PERSON in reading.about and ends < second.CERTAIN_STOP:
        ends = 0.0  # "you have the wrong number" sounds like one
    if _is_mere_praise(reading, opinion, page):
        kept = tuple(topic for topic in reading.about if topic is not Topic.IRRITATION)
        return replace(reading, urgency=Urgency.NONE, about=_joined(kept, Topic.FINE), signs=(), side=None, unread=True)
    if ends > second.SURE_STOP and not other_stop and not _NO_STOP & set(reading.about):
        return replace(reading, about=_joined(reading.about, Topic.STOP), unread=ends < second.CERTAIN_STOP)
    if reading.urgency is Urgency.EMERGENCY:
        return reading
    sure = chat or of_others or bool(explained) or not {Topic.OTHER, Topic.QUESTION} & set(reading.about)
    if not otherwise and (urgency := _more_urgent(reading, opinion, page, sure=sure)) is not None:
        about = _joined(reading.about, Topic.IRRITATION)
        return replace(reading, urgency=urgency, about=about)  # whatever is urgent is read by a person anyway
    if lost and opinion.topic is not None and opinion.sign < second.SIGN_UNEXPLAINED:
        return replace(reading, about=(opinion.topic,))
    doubtful = (
        _doubts_calm(opinion, sure=sure, spanish=reading.language == "es" and bool(explained))
        if calm
        else _doubts(opinion, reading)
    )
    unknown = lost and (
        opinion.sign > second.SIGN_UNEXPLAINED or len(page.tokens) > _SAID_LITTLE and opinion.sign > second.NO_SIGN
    )
    lookalike = bool(page.named("topic:notstop")) and reading.about != (Topic.OTHER,)
    unwanted = ends > (second.CERTAIN_STOP if lookalike else second.STOP) and Topic.STOP not in reading.about
    return replace(reading, unread=True) if doubtful or unknown or unwanted else reading


def _is_small_talk(reading: Reading, page: Page) -> bool:
    """Say whether a short reply is plainly of the weather, a meal or a parcel, and of nothing that may be her eye."""
    words = {token.word for token in page.tokens}
    talk = bool(page.named("topic:chat")) and len(page.tokens) <= _SMALL_TALK
    return talk and reading.urgency is Urgency.NONE and not words & _BODY


_OF_A_TIME = ("scope:over", "scope:near", "scope:past")


def _is_mere_praise(reading: Reading, opinion: second.Opinion, page: Page) -> bool:
    """Say whether words that the rules take for a sign are a figure of speech that they do not know."""
    if any(page.marks.get(name) for name in _OF_A_TIME):
        return False  # what it is no more is no figure either: "was puffy like you said, 90% down. LOVE the set"
    if reading.negated or _is_set_against(page) or _thanks_for_a_sign(page):
        return False  # who denies one sign means the other: "a bit teary, no sting"
    if opinion.topics.get(Topic.FINE, 0.0) < second.PRAISE or len(page.tokens) > second.FEW_WORDS:
        return False
    if reading.urgency is Urgency.EMERGENCY:
        return max(opinion.sign, opinion.emergency) < second.NO_EMERGENCY_IN_PRAISE
    if _NEVER_PRAISE & set(reading.signs):
        return False
    return reading.urgency is Urgency.SAME_DAY and opinion.sign < second.NO_SIGN_IN_PRAISE


_FELT = listed("sign:burning sign:itching sign:pain sign:watering sign:redness")
_CONTRAST = listed("but only except just though pero solo")


def _is_set_against(page: Page) -> bool:
    """They are lovely, only one hair pricks me: what is set against the praise is none."""
    signs = [mark for name, marks in page.marks.items() if name.startswith("sign:") for mark in marks]
    said_of_hers = {mark.end for mark in page.named("scope:self") if page.tokens[mark.start].word == "mine"}
    if any(sign.start in said_of_hers and sign.name in _FELT for sign in signs):
        return True  # "mine are burning"
    praised = [mark.start for mark in page.named("topic:fine", "topic:plain")]
    opens = {where: place for place, where in reversed(list(enumerate(page.clause)))}
    return any(
        page.tokens[opens[page.clause[sign.start]]].word in _CONTRAST and min(praised, default=sign.start) < sign.start
        for sign in signs
    )


_THANKS = listed("thank thanks cheers ta if")


def _thanks_for_a_sign(page: Page) -> bool:
    """Thank you so much for the complimentary redness; would love them more if they didn't sting."""
    signs = [mark.start for name, marks in page.marks.items() if name.startswith("sign:") for mark in marks]
    ironic = (
        mark
        for mark in page.named("scope:nonneg")
        if _THANKS & {token.word for token in page.tokens[mark.start : mark.end]}
    )
    return any(mark.end <= start <= mark.end + 1 for mark in ironic for start in signs)


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


def sees_denials_alone(answer: str, page: Page, explained: list[Mark], denied: list[Mark]) -> bool:
    """Say whether what looks like a sign to the model are the clauses that deny one: "no lash digging in"."""
    clauses = {page.clause[mark.start] for mark in denied}
    told = [Mark("scope:no", place, place + 1) for place, where in enumerate(page.clause) if where in clauses]
    left = opinion_of(answer, page, [*explained, *told])
    return left.sign < second.SIGN_BESIDE_DENIAL and left.emergency < second.EMERGENCY_AGAINST_RULES


def without(answer: str, page: Page, marks: list[Mark]) -> tuple[str, list[str]]:
    """Return the answer without the words of some marks, and its words without them."""
    taken = {place for mark in marks for place in range(mark.start, mark.end)}
    words = [token.word for place, token in enumerate(page.tokens) if place not in taken]
    for mark in sorted(marks, key=lambda one: -one.start):
        start, end = page.tokens[mark.start].start, page.tokens[mark.end - 1].end
        answer = answer[:start] + answer[max(start, end) :]
    return answer, words


def _doubts_calm(opinion: second.Opinion, *, sure: bool, spanish: bool) -> bool:
    """Say whether there may be a sign; ``spanish``: in it the rules, which know fewer words, explained one."""
    if sure:
        against = second.SIGN_AGAINST_SPANISH_RULES if spanish else second.SIGN_AGAINST_RULES
        return opinion.sign > against or opinion.emergency > second.EMERGENCY_AGAINST_RULES
    return opinion.sign > second.SIGN or opinion.emergency > second.EMERGENCY


def _doubts(opinion: second.Opinion, reading: Reading) -> bool:
    """Say whether what is nearly over may be an emergency; a current sign reaches a person as it is."""
    return opinion.emergency > second.EMERGENCY_AGAINST_RULES and reading.urgency is Urgency.WATCH


def _joined(about: tuple[Topic, ...], topic: Topic) -> tuple[Topic, ...]:
    return tuple(one for one in Topic if one is topic or one in about and one is not Topic.OTHER)
