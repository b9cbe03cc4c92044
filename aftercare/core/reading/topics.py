"""What a reply is about, beside its signs."""

from __future__ import annotations

from collections.abc import Sequence

from aftercare.core.reading import asking, hours, openings, second, shedding, stopping
from aftercare.core.reading.doubt import Doubt
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.second import Opinion
from aftercare.core.reading.tokens import ASK, PICTURE, WORD, listed
from aftercare.core.reading.values import Topic
from aftercare.core.reading.words.pictures import PRAISE

_OWN = (
    "no",
    "not",
    "cant",
    "couldnt",
    "nothing",
    "zero",
    "never",
    "sin",
    "ningun",
    "ninguna",
    "cero",
    "0",
    "nada",
    "ni",
    "hardly",
    "barely",
    "dont",
)


_SHORT = 6  # tokens
_UNHAPPY = {Topic.RETENTION, Topic.COMPLAINT}


def topics_of(
    page: Page, answer: str, opinion: Opinion, of_others: list[Mark], *, irritation: bool, denied: bool
) -> dict[Topic, Mark | None]:
    """Return the topics, each with the phrase behind it where there is one.

    Lashes that fell in what is told ``of_others`` are not hers: "my bestie's fell out".
    """
    doubt = Doubt(page, answer, opinion)
    found: dict[Topic, Mark | None] = {}
    is_long = len(page.tokens) > _SHORT  # of a few words the rules know more
    stop = stopping.wishes(page)
    if stop and not stopping.is_about_the_hour(page, stop):
        found[Topic.STOP] = stop[0]
    start = [mark for mark in page.named("topic:start") if not _is_denied(page, mark)]
    if start and not stop:  # "do not text me again" holds both
        found[Topic.START] = start[0]
    no_more = ("topic:deceased",) if Topic.STOP in found else ()  # by itself it is only news
    wrong = [
        mark
        for mark in page.named("topic:wrong_person", *no_more)
        if not _holds_a_sign(page, mark) and not _is_a_manner(page, mark) and not _holds_calm(page, mark)
    ]
    if wrong and not irritation:  # "and no, that's not me being funny"
        found[Topic.WRONG_PERSON] = wrong[0]
    if irritation:
        found[Topic.IRRITATION] = None
    if Topic.WRONG_PERSON in found:
        return found
    doubted: dict[Topic, Mark | None] = {}  # better than nothing, and no more
    for topic, may_be_weak in (
        (Topic.RETENTION, True),
        (Topic.BOOKING, not irritation),
        (Topic.COMPLAINT, not irritation),
    ):
        if topic is Topic.BOOKING and Topic.STOP in found:
            if (visit := stopping.visit_beside(page, stop)) is not None:
                found[topic] = visit
            continue
        mark = _first(page, str(topic), may_be_weak=may_be_weak, but=of_others if topic is Topic.RETENTION else ())
        sure = mark is not None and (_is_unseen(page, mark) or not (irritation or stop) and _is_plain(page, mark))
        if mark is not None and (sure or _is_wished(page, mark) or not (is_long and doubt.doubts(topic, mark))):
            found[topic] = mark
        elif mark is not None and (_is_said_twice(page, mark) or not _is_vague(mark)):
            doubted = {topic: mark}
    if found.keys().isdisjoint({Topic.BOOKING, Topic.STOP, Topic.START}):
        visit = hours.alone(page, asked_only=irritation)
        if visit is not None:
            found[Topic.BOOKING] = visit
    question = asking.question(page)
    if question is not None and Topic.STOP in found and page.sentence[question.start] not in page.opened():
        question = None  # only what is plainly marked asks beside a stop
    if question is not None and question.name == openings.NAME and opinion.wishes:
        question = None
    if question is not None and not (is_long and doubt.doubts(Topic.QUESTION, question)):
        found[Topic.QUESTION] = question
    only_told = bool(page.named("scope:history")) and not (denied or irritation or page.named("topic:plain"))
    no_praise = only_told or (
        opinion.doubts_fine_beside_sign() if irritation else is_long and not denied and opinion.doubts(Topic.FINE)
    )
    if not no_praise and (fine := _fine(page, found, irritation=irritation, denied=denied)) is not None:
        found[Topic.FINE] = fine if fine.start >= 0 else None
    visit = found.get(Topic.BOOKING)
    mentioned = Topic.QUESTION in found and visit is not None and _is_mentioned(page, visit)
    if mentioned:
        del found[Topic.BOOKING]
    if Topic.STOP not in found:
        for topic in opinion.believed(beside_sign=irritation):
            if topic is Topic.FINE and only_told or topic is Topic.BOOKING and mentioned:
                continue
            if topic is Topic.FINE and _UNHAPPY & found.keys() and opinion.topics[topic] < second.BELIEVED_BESIDE_LOSS:
                continue  # of praise beside them the rules know more
            if topic is Topic.QUESTION and asking.is_rhetorical(page):
                continue
            if topic is not Topic.QUESTION or Topic.BOOKING not in found:  # a wish to book is none, even put as one
                found.setdefault(topic, None)
    if found:
        return found
    if doubted:
        return doubted
    marked = not page.named("topic:photo") and any(token.kind == ASK for token in page.tokens)  # laughed at "How …?"
    if question is not None and (marked or not _is_vague(question)) or marked and _asks_at_length(page):
        return {Topic.QUESTION: question}
    praise = None if only_told else _fine(page, found, irritation=irritation, denied=denied)
    return {Topic.OTHER: None} if praise is None or _is_vague(praise) else {Topic.FINE: praise}


_SAYS_MUCH = 3  # words


def _is_vague(mark: Mark) -> bool:
    """Say whether so few words may well be of another matter: "late", "gap"; "hardly any left" may not."""
    return mark.end - mark.start < _SAYS_MUCH


def is_praised(page: Page) -> bool:
    """Say whether she says that all is well, and not only thanks."""
    return any(not page.covers("topic:thanks", mark.start) for mark in page.named("topic:fine", "topic:plain"))


_MAY = {("can", "i"), ("could", "i"), ("may", "i"), ("can", "we"), ("could", "we"), ("like", "to"), ("love", "to")}
_VISITS = listed("book rebook reschedule reservar agendar reagendar")


def _is_wished(page: Page, mark: Mark) -> bool:
    """Could I book a patch test: whatever the second opinion thinks of it."""
    words = [token.word for token in page.tokens[max(0, mark.start - 2) : mark.start + 1]]
    return words[-1] in _VISITS and tuple(words[:-1]) in _MAY


_A_QUESTION = 4  # words: "hello?" asks nothing, nor does "you there?"


def _asks_at_length(page: Page) -> bool:
    """Say whether a sentence with a question mark has words enough to ask something: "¿el cupón vence este mes?"."""
    if page.named("topic:smalltalk", "topic:booking", "topic:spam", "topic:auto") or asking.is_rhetorical(page):
        return False
    asked = page.asked()
    words = [where for token, where in zip(page.tokens, page.sentence, strict=True) if token.kind == WORD]
    return any(words.count(where) >= _A_QUESTION for where in asked)


def _is_unseen(page: Page, mark: Mark) -> bool:
    """Say whether the second opinion has not seen these words: "my lid is bald"."""
    return mark.name == "topic:retention" and any(
        one.start < mark.end and mark.start < one.end for one in shedding.marks(page)
    )


_PLAIN, _BY_RULE = 2, ("topic:retention", "topic:complaint")


def _is_plain(page: Page, mark: Mark) -> bool:
    """Say whether the rules know more than the second opinion: two phrases of a complaint or a loss, and no praise."""
    if mark.name not in _BY_RULE or page.named("topic:fine", "topic:figure"):
        return False
    return any(
        other.start >= mark.end and other.end - other.start >= _PLAIN
        for other in page.named(mark.name)
        if mark.end - mark.start >= _PLAIN
    )


def _is_said_twice(page: Page, mark: Mark) -> bool:
    return any(other.start >= mark.end for other in page.named(mark.name))


_VISIT = listed("appt appts appointment appointments appointment's appt's booked cita")


def _is_mentioned(page: Page, visit: Mark) -> bool:
    """Say whether she only mentions a visit beside her question: "first appt is the 3rd, are goggles ok?"."""
    asked = page.asked()
    return page.sentence[visit.start] not in asked and all(
        page.tokens[mark.start].word in _VISIT and mark.end == mark.start + 1 for mark in page.named("topic:booking")
    )


def _first(page: Page, name: str, *, may_be_weak: bool, but: Sequence[Mark] = ()) -> Mark | None:
    weak = {(mark.start, mark.end) for mark in page.named(f"topic:{name}_weak")}
    for mark in page.named(f"topic:{name}"):
        if any(one.start <= mark.start < one.end for one in but):
            continue
        if (may_be_weak or (mark.start, mark.end) not in weak) and (name == "booking" or not _is_denied(page, mark)):
            return mark
    return None


def _holds_a_sign(page: Page, mark: Mark) -> bool:
    """Say whether nobody of that name is meant, or nothing of that kind: "no swelling round here"."""
    signs = (one for name, marks in page.marks.items() if name.startswith("sign:") for one in marks)
    return any(mark.start < sign.start and sign.end < mark.end for sign in signs)


def _holds_calm(page: Page, mark: Mark) -> bool:
    """No issues here: nobody of that name is looked for."""
    return any(mark.start <= one.start and one.end <= mark.end for one in page.named("topic:fine", "topic:plain"))


def _is_a_manner(page: Page, mark: Mark) -> bool:
    """Not me fluttering at the pharmacist: it is her."""
    words = [token.word for token in page.tokens[mark.start : mark.end + 1]]
    return words[:-1] == ["not", "me"] and words[-1].endswith("ing")


def _is_denied(page: Page, mark: Mark) -> bool:
    """No gaps; not disappointed; haven't lost a single one; don't stop sending them."""
    if mark.name == "topic:stop" and any(one.start < mark.start < one.end for one in page.named("scope:nonneg")):
        return True
    first = page.tokens[mark.start].word
    if first in _OWN or first.endswith("nt"):
        return False
    for neg in page.named("scope:no", "scope:not"):
        if neg.end <= mark.start <= neg.end + 4 and page.sentence[neg.start] == page.sentence[mark.start]:
            between = page.tokens[neg.end : mark.start]
            if all(token.kind == WORD and not page.covers("scope:but", neg.end + k) for k, token in enumerate(between)):
                return True
    return False


_FAREWELL, _OF_HERS = listed("love best good well kind nice great"), listed("lash lashes them set these they")


def _is_farewell(page: Page, mark: Mark) -> bool:
    """You can stop the texts now love ta; take my number off and all the best."""
    said = page.said(page.sentence[mark.start])
    return page.tokens[mark.end - 1].word in _FAREWELL and mark.end - mark.start <= 2 and not said & _OF_HERS


def _is_how_much(page: Page, mark: Mark) -> bool:
    """They're pretty bloodshot."""
    return page.tokens[mark.end - 1].word == "pretty" and any(
        name.startswith("sign:") and other.start == mark.end for name, marks in page.marks.items() for other in marks
    )


_VERBS = listed("is are can could do does did may would will should has have am how what when where which")


def _asked_by_a_verb(page: Page, question: Mark | None) -> set[int]:
    """Return the sentences that ask by a verb at their head: of "is it fine to wet them, love?" nothing is praise."""
    first: dict[int, str] = {}
    for token, where in zip(page.tokens, page.sentence, strict=True):
        if token.kind == WORD:
            first.setdefault(where, token.word)
    asked = page.asked() | ({page.sentence[question.start]} if question is not None else set())
    return {where for where in asked if first.get(where) in _VERBS}


_BESIDE_DENIAL = {Topic.BOOKING, Topic.QUESTION}  # "not itchy; see you Thursday at 11"


def _fine(page: Page, found: dict[Topic, Mark | None], *, irritation: bool, denied: bool) -> Mark | None:
    if Topic.COMPLAINT in found and not page.named("topic:plain"):
        return None
    asked = _asked_by_a_verb(page, found.get(Topic.QUESTION))
    plain = [mark for mark in page.named("topic:plain") if not _is_denied(page, mark)]
    marks = [mark for mark in page.named("topic:fine") if not _is_denied(page, mark)]
    plain, marks = ([mark for mark in of if page.sentence[mark.start] not in asked] for of in (plain, marks))
    weak = {(mark.start, end) for mark in page.named("topic:thanks") for end in range(mark.start + 1, mark.end + 1)}
    plain = [mark for mark in plain if not _is_how_much(page, mark)]
    strong = [
        mark
        for mark in marks
        if (mark.start, mark.end) not in weak
        and not page.covers("scope:over", mark.start)
        and not _is_how_much(page, mark)
    ]
    if Topic.STOP in found:
        strong = [mark for mark in strong if not _is_farewell(page, mark)]
    if irritation or found.keys() - {Topic.RETENTION, Topic.COMPLAINT} or Topic.RETENTION in found:
        beside = denied and not irritation and found.keys() <= _BESIDE_DENIAL and bool({*page.sentence} - page.asked())
        return next(iter(plain or strong), Mark("topic:fine", -1, -1) if beside else None)
    if plain or marks:
        return (plain or marks)[0]
    if denied:
        return Mark("topic:fine", -1, -1)
    for place, token in enumerate(page.tokens):
        if token.kind == PICTURE and token.word in PRAISE:
            return Mark("topic:fine", place, place + 1)
    return None
