"""Questions known by how their sentence begins, where chat leaves the mark out: "do fills cost more past 3 weeks"."""

from __future__ import annotations

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import WORD, Token, listed

NAME = "topic:opening"  # weaker than a question with its mark
_HELLO = listed(
    "hi hiya hello hey hola oye oiga ok okay so and but also um sorry quick just please pls thanks love hun"
)
# A sentence may drop "they" or "it" -- "are itchy", "does hurt", "can see fine" -- so what follows must be a subject.
_SUBJECT = listed("""
    i you u ye they it we he she this that these those there the my your ur me our people anyone someone anybody person
    lashes extensions
""")
_ASKING: dict[str, frozenset[str]] = {
    **dict.fromkeys(("is", "are"), _SUBJECT - listed("i me people")),
    **dict.fromkeys(("can", "could", "will", "would", "should", "shall", "may", "might"), _SUBJECT | listed("a an")),
    "do": listed("i you u ye they we lashes extensions people fills infills ya yous"),
    "does": _SUBJECT | listed("a an your anything anyone"),
    "did": listed("you u ye they it he she we"),
    "has": listed("anyone anybody it she he"),
    "have": listed("you u ye they i we"),
    "whats": frozenset(),
    "wheres": frozenset(),
    "whens": frozenset(),
    "puedo": frozenset(),
    "podria": frozenset(),
}
_ANY_NOUN = listed("does")
_VERBS = listed("""
    not hurt itch sting burn look feel seem have need get water stream run bother make work ache irritate come go swell
    still really also actually well in tend help nothing what when the a
""")
_MODAL = listed("can could will would should")
# "can see fine", "will ring", "would love": a verb, so that "I" has been left out.
_DOINGS = _VERBS | listed("""
    be do see take let send love like try keep call ring text txt message book pay wear use leave bring stop swim wash
    open move pop only just never always definitely def deffo barely hardly probably say tell recommend wait read drop
    stay give put find confirm cancel reschedule happily gladly pass drive walk sleep blink breathe eat drink pick post
    review check reply sort explain miss skip show hear hold want return cry sit lie stand laugh stick swallow smell
    then now pls please totally easily honestly literally certainly absolutely forever again too
    grab rebook update look start finish change swap nt no also soon later tomorrow today depend mean change buy order
    me us them him your ill anyway focus cope touch write press catch manage close shut turn live meet
    """)
_WH = listed("how what when where why which who")
_OF_WH = listed("""
    much many long soon often far time times day days kind type sort length curl size brand number age shall
""")
_AUX = listed("is are was do does did can could should will would may shall come must has have")
_TOLD = listed("i it they we he she you theyre ive im its")  # "how they are holding": told, not asked
_TURNS = {
    ("what", "can", "i"),
    ("do", "you", "know"),
    ("is", "anyone", "there"),
    ("is", "anybody", "there"),
    ("what", "have", "you"),
}
_YOURS = listed("your the yer ur")  # small talk: "how did your exam go"
_NO_QUESTION = listed("love more wrong not happened left her his")


def opening(page: Page, wishes: set[int]) -> Mark | None:
    """Return the words that begin a question without a mark, in a sentence that is no wish for something else.

    Only greetings stand before them in their clause.
    """
    tokens = page.tokens
    sentence = clause = -1
    heads = fresh = True  # at the head of the sentence, and of the clause
    for place, token in enumerate(tokens):
        if page.clause[place] != clause:
            clause, fresh = page.clause[place], True
            heads = page.sentence[place] != sentence
            sentence = page.sentence[place]
        if token.kind != WORD:
            continue
        if fresh and page.sentence[place] not in wishes:
            following = [one for one in tokens[place + 1 : place + 4] if one.kind == WORD]
            if len(following) >= 2 and _asks(token, following, heads=heads) or _is_what(token, following):
                return Mark(NAME, place, place + 2)
        fresh = fresh and token.word in _HELLO
    return None


def _is_what(token: Token, following: list[Token]) -> bool:
    """Whats cyanoacrylate; where's nearest the train."""
    return token.word in ("whats", "wheres", "whens") and bool(following) and following[0].word not in _NO_QUESTION


def _asks(token: Token, following: list[Token], *, heads: bool) -> bool:
    first, second = following[0].word, following[1].word
    if (token.word, first, second) in _TURNS or {first, second} & _YOURS and token.word == "how":
        return False
    if not heads:  # "the face, which is twice its size"
        return token.word not in _WH and first in _ASKING.get(token.word, ())
    if token.word in _WH:
        if first in _AUX:
            return True
        return first in _OF_WH and (second in _AUX or second not in _TOLD and token.word == "how")
    if token.word in _ANY_NOUN and first not in _VERBS or token.word in _MODAL and first not in _DOINGS:
        return True
    return first in _ASKING.get(token.word, ())
