"""What the second opinion changes in a reading.

It may raise the urgency where it is sure, hand a reply to a person where it is not, and name what the reply is about.
An emergency that the rules see stays one; a lesser sign that it does not believe in is none, but a person reads it.
"""

from __future__ import annotations

from dataclasses import replace

from aftercare.core.reading.page import Page
from aftercare.core.reading.second import Opinion
from aftercare.core.reading.tokens import listed
from aftercare.core.reading.values import Reading, Topic, Urgency

# Above these chances she is read as having a sign now, or an emergency, or a person reads it. Chosen with hands that
# the weights had not seen: see `tests/bench/train_reader.py`.
CURRENT, EMERGENCY = 0.35, 0.2
# Where the rules saw a sign and know why it is none now; how bad a sign is that they found is theirs to say.
CURRENT_EXPLAINED, EMERGENCY_KNOWN = 0.6, 0.5
PERHAPS, PERHAPS_SURE, PERHAPS_EXPLAINED = 0.05, 0.2, 0.3  # they know nothing of it; something; why it is none
UNBELIEVED = 0.05  # a sign that the rules see is not believed below it
STOP, PERHAPS_STOP = 0.15, 0.1
# A topic that the rules see is left out below the first; one that they do not is named above the second.
DOUBTED, BELIEVED = 0.15, 0.45

_OTHERWISE = ("topic:auto", "topic:spam", "topic:start")
_ON = listed("start restart resume again back reactivate volver vuelvan otra nuevo")
_NO_STOP = {Topic.STOP, Topic.BOOKING, Topic.START}  # it is one already, or a wish for something else
_URGENT = (Urgency.EMERGENCY, Urgency.SAME_DAY)


def look_again(reading: Reading, opinion: Opinion, page: Page, *, explained: bool) -> Reading:
    """Return the reading by the rules with what the second opinion changes.

    ``explained``: they saw what looks like a sign, and know why it is none now.
    """
    urgency = _urgency(reading.urgency, opinion, explained=explained)
    about = _about(reading, opinion, urgency)
    ends = _ends(reading, opinion, page)
    if ends > STOP:
        about |= {Topic.STOP}
    unbelieved = reading.urgency in _URGENT and urgency not in _URGENT
    sure = bool(set(reading.about) - {Topic.OTHER, Topic.QUESTION})
    least = PERHAPS_EXPLAINED if explained else PERHAPS_SURE if sure else PERHAPS
    perhaps = urgency not in _URGENT and opinion.current > least
    return replace(
        reading,
        urgency=urgency,
        about=tuple(topic for topic in Topic if topic in (about or {Topic.OTHER})),
        unread=perhaps or unbelieved or ends > PERHAPS_STOP,
    )


def _urgency(by_rules: Urgency, opinion: Opinion, *, explained: bool) -> Urgency:
    known = explained or by_rules is Urgency.SAME_DAY
    if by_rules is Urgency.EMERGENCY or opinion.emergency > (EMERGENCY_KNOWN if known else EMERGENCY):
        return Urgency.EMERGENCY
    if opinion.current > (CURRENT_EXPLAINED if explained else CURRENT):
        return Urgency.SAME_DAY
    if by_rules is Urgency.SAME_DAY:
        return Urgency.SAME_DAY if opinion.current > UNBELIEVED else Urgency.NONE
    return by_rules


def _about(reading: Reading, opinion: Opinion, urgency: Urgency) -> set[Topic]:
    about = set(reading.about) - {Topic.OTHER}
    if Topic.WRONG_PERSON in about:
        return about
    if urgency is not Urgency.NONE:
        about.add(Topic.IRRITATION)
    for topic, chance in opinion.topics.items():
        if topic is Topic.STOP:
            continue
        if chance > BELIEVED and Topic.STOP not in about:
            about.add(topic)
        elif chance < DOUBTED:
            about.discard(topic)
    return about


def _ends(reading: Reading, opinion: Opinion, page: Page) -> float:
    """Return the chance of a wish for no more messages that the rules do not see; 0 where they know it is none."""
    # "stop by", "don't stop": the word for something else. "start again", "back on": a wish for the contrary.
    other = page.named("topic:notstop", *_OTHERWISE) or _ON & {token.word for token in page.tokens}
    if other or _NO_STOP & set(reading.about):
        return 0.0
    return opinion.topics[Topic.STOP]
