"""A wish for an end of messages: where it stands, and what it is not."""

from __future__ import annotations

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import LINE, STOP, WORD, listed


def wishes(page: Page) -> list[Mark]:
    """Return the words that wish for an end of messages."""
    marks = page.named("topic:stop")
    unwanted = [mark for mark in marks if _is_unwanted(page, mark)]
    told = [mark for mark in marks if not any(one.start <= mark.start < one.end for one in unwanted)]
    return told or _opens_with_stop(page) or _bare_stop(page) or _bare_end(page)


_TAKING = listed("take remove drop delete unsubscribe opt cut kick cancel stop quit end quite quiten saquen borren")
_DO_NOT, _SHE_IS_BLAMED = listed("dont never not"), listed("you u ye yous they why could if")


def _is_unwanted(page: Page, mark: Mark) -> bool:
    """Please don't take me off the list. -- Why don't you take me off it?"""
    before = [token.word for token in page.tokens[max(0, mark.start - 2) : mark.start]]
    if not before or before[-1] not in _DO_NOT or page.tokens[mark.start].word not in _TAKING:
        return False
    return not _SHE_IS_BLAMED & set(before[:-1])


_MESSAGES = listed(
    "text texts texting message messages messaging msg msgs email emails sms spam reminders mensajes textos"
)
_STOP_CLAUSE = listed("stop it this them these please now already pls ok and just thanks alto paren ya")


def _opens_with_stop(page: Page) -> list[Mark]:
    """STOP. And fyi they still burn. -- The standard word is a sentence of its own; "STOP. I'm obsessed" is praise."""
    tokens = page.tokens
    if len(tokens) < 2 or tokens[0].word not in _STANDARD or (tokens[1].word, tokens[1].kind) not in _ENDS:
        return []
    return [] if page.named("topic:fine", "topic:plain") else [Mark("topic:stop", 0, 1)]


_STANDARD, _ENDS = listed("stop unsubscribe stopall end quit"), {(".", STOP), ("\n", LINE)}


def _bare_stop(page: Page) -> list[Mark]:
    """You text too much, stop it."""
    tokens = page.tokens
    if not any(token.word in _MESSAGES for token in tokens):
        return []
    for place, token in enumerate(tokens):
        if token.word == "stop" and token.kind == WORD:
            clause = [
                tokens[index].word
                for index in range(len(tokens))
                if page.clause[index] == page.clause[place] and tokens[index].kind == WORD
            ]
            if all(word in _STOP_CLAUSE for word in clause):
                return [Mark("topic:stop", place, place + 1)]
    return []


_POLITE = listed("please pls plz so just and ta thanks thx cheers now then ya por favor porfa gracias this is kindly")
_ENDINGS = frozenset(
    {
        *(
            "enough",
            "no more",
            "remove",
            "remove me",
            "end it",
            "leave off",
            "take it off",
            "take it down",
            "take me off",
        ),
        *(
            "reverse it",
            "undo it",
            "drop it",
            "stop",
            "stop it",
            "quit it",
            "cut it out",
            "pack it in",
            "delete",
            "delete it",
        ),
        *("knock it off", "never again", "get rid", "leave me be", "shut it down"),
        *("quitenme", "quiteme", "saquenme", "borrenme", "no mas", "basta", "paren", "parenle"),
    }
)
_ALONE = frozenset({"last one", "final one", "last time"})
_OF_MESSAGES = _MESSAGES | listed("""
    correspondence machine phone number # landline cell pestering pestered hassling harassing annoying spamming
    signed subscribed agreed
    consent updates bot automated buzzing daily start unsolicited cel celular telefono numero suena avisos
""")


def _bare_end(page: Page) -> list[Mark]:
    """Pestering me every day. Enough. -- Where messages are spoken of and no sign is, a clause may say it all."""
    if any(name.startswith("sign:") for name in page.marks):
        return []
    clauses: dict[int, list[int]] = {}
    for place, token in enumerate(page.tokens):
        if token.kind == WORD and token.word not in _POLITE:
            clauses.setdefault(page.clause[place], []).append(place)
    speaks = bool(page.marks.get("topic:wrong_person")) or any(token.word in _OF_MESSAGES for token in page.tokens)
    for places in clauses.values():
        said = " ".join(page.tokens[place].word for place in places)
        if said in _ENDINGS and speaks and len(clauses) > 1 or said in _ALONE and len(clauses) == 1:
            return [Mark("topic:stop", places[0], places[-1] + 1)]
    return []


_HOURS = listed("""
    5am 6am 7am 8am early late night before after midnight noon temprano tarde madrugada antes despues
""")


def is_about_the_hour(page: Page, stop: list[Mark]) -> bool:
    """Say whether she asks for another hour, not for an end: "can you stop sending these at 6am?".

    What comes after a complaint about the hour is an end: "they go off at 6am, kindly cease".
    """
    wished = {page.sentence[mark.start] for mark in stop}
    first = min(page.clause[mark.start] for mark in stop)
    words = [token.word for token in page.tokens if token.kind == WORD]
    if words[-1:] == ["ever"] or words[-2:] == ["ever", "again"]:
        return False  # "don't text me at 6am. Or ever"
    return any(
        _HOURS & {token.word for token in page.tokens[mark.start : mark.end]}
        for mark in page.named("topic:notstop")
        if page.sentence[mark.start] in wished and page.clause[mark.start] >= first
    )


_CHANGES = listed("cancel cancelling cancelo cancela cancelen cancelar move rebook reschedule postpone")
_MINE = listed("my mine our her mi la el")
_NO_VISIT = listed("subscription suscripcion alerts updates avisos recordatorios") | _MESSAGES
_CLOSE = 3  # tokens


def visit_beside(page: Page, stop: list[Mark]) -> Mark | None:
    """Return the words that change a visit beside those for an end: "cancel my 4pm, and stop with the texts"."""
    for mark in page.named("topic:booking"):
        following = [token.word for token in page.tokens[mark.start + 1 : mark.end + _CLOSE]]
        if page.tokens[mark.start].word not in _CHANGES or not _MINE & set(following[:1]):
            continue
        apart = any(mark.end <= one.start or one.end <= mark.start for one in stop)
        if apart and not _NO_VISIT & set(following):
            return mark
    return None
