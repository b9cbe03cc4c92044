"""Plain words of the parts below the pages, in the reader's language.

Core, the stages and the transports write English: it is computed without Django, and kept on rows that people of any
language read later. What a page shows of it is found again here by its form. What stands in no form (a mail server's
own answer) stays as it was written.
"""

from __future__ import annotations

import re
from functools import cache, lru_cache

from django.utils.translation import get_language, gettext
from django.utils.translation import gettext_noop as form

from aftercare.pages import checked

FORMS = (
    *checked.FORMS,
    # aftercare.core.occasions.Reason
    form("too late"),
    form("on hold"),
    form("no way to reach her"),
    form("no consent"),
    form("paused"),
    form("already booked"),
    form("no set on"),
    form("waiting for the owner's go"),
    form("another check that day"),
    # aftercare.core.patchtests
    form("sensitive, first visit"),
    form("first visit"),
    form("last set over {days} days before"),
    form("another adhesive than last time"),
    form("released with “test first”"),
    # How a consent was given: studio.forms.clients, studio.book.clients
    form("in person"),
    form("on paper"),
    form("by telephone"),
    form("in a message of hers"),
    form("appointment book"),
    # aftercare.facts.books
    form("a reaction is on record"),
    form("an open flag"),
    # aftercare.facts.judging
    form("somebody has this by now"),
    form("she gets no list any more"),
    form("she does not work here any more"),
    form("the visit is marked"),
    form("the visit is no longer hers"),
    form("the visit has begun"),
    form("no longer due for this visit"),
    form("the visit was cancelled"),
    form("the visit was missed"),
    form("the visit is done"),
    form("a newer set is on"),
    form("this set fails early: her artist is told"),
    form("no longer due for this set"),
    form("the book has not been read for two days"),
    # aftercare.core.timing.explain and aftercare.planning.explaining
    form("{hour}, 1 day before the visit"),
    form("{hour}, {days} days before the visit"),
    form("{minutes} minutes after the visit's end"),
    form("{hour}, the day after a matter of hers was closed"),
    form("{hour}, 1 day after the visit"),
    form("{hour}, {days} days after the visit"),
    form("{hour}, 1 day before her set is forecast to need a fill"),
    form("{hour}, {days} days before her set is forecast to need a fill"),
    form("{hour} on the day on which her set is forecast to be down to {share}"),
    form("at once"),
    form("the visit moved after she had been told"),
    form("the visit was moved"),
    form("moved to the next moment that is open for it"),
    # aftercare.outbox
    form("The service stopped before the answer was heard: nobody knows whether the message left."),
    form("It is not sent again, so that it does not come twice."),
    form("It was lost {times} times: please ask her."),
    form("It is too late to send it again."),
    form("given up after {tries} tries: {problem}"),
    form("It could not be written: {error}"),
    # aftercare.sending and aftercare.transports
    form("The day's limit of texts is reached."),
    form("What keeps the carrier's connection open is not at work: whoever runs the service has to start it."),
    form("The road that it was to take has been away for long: it goes by the other channel."),
    form("The service failed while it handed this over: nobody knows whether it left."),
    form("The provider reports: {word}."),
    form("The mail provider reports: {word}."),
    form("The mail provider reports: {word}. {answer}"),
    form("A mail server reports: {answer}"),
    form("The provider is busy and did not take the message to {address} yet."),
    form("The provider refused {address} for good."),
    form("The line dropped before the provider answered: nobody knows whether it left."),
    form("“{address}” is not an e-mail address."),
    form("“{address}” is not an e-mail address that the mail server can take."),
    form("The mail server could not be reached ({answer})."),
    form("The mail server hung up before the message began ({answer})."),
    form("The mail server does not take mail from {address} ({answer})."),
    form("The mail server refused {address} ({answer})."),
    form("The mail server refused the message ({answer})."),
    form("The line dropped before the mail server answered ({answer})"),
    form("The mail server's answer could not be read ({answer})"),
    form("The mail provider refused {address} ({answer})."),
    form("The mail provider refused the message to {address} ({answer})."),
    form("The message could not be given to the mail provider ({answer})."),
    form("The mail provider could not be reached ({answer})."),
    form("The mail provider did not answer ({answer})"),
    form("The mail provider did not take the message ({answer})."),
    form("{problem}: nobody knows whether the message left."),
    form("Correct it on the client's card."),
)
_FIELD = re.compile(r"\{(\w+)\}")


def spoken(words: str) -> str:
    """Return the words in the language in force; those that are in no form, as they are."""
    return _spoken(str(words), get_language() or "en") if words else ""


@lru_cache(maxsize=4096)
def _spoken(words: str, language: str) -> str:
    if language.startswith("en"):
        return words
    for english, pattern in _patterns():
        if found := pattern.fullmatch(words):
            values = {name: spoken(value) for name, value in found.groupdict().items()}
            return _filled(gettext(english), values)
    for mark in ("; ", ". "):
        first, joined, rest = words.partition(mark)
        if joined:
            return spoken(f"{first}{mark.rstrip('; ')}") + (" " if mark == ". " else mark) + spoken(rest)
    return words


def _filled(words: str, values: dict[str, str]) -> str:
    """Fill in the fields alone: other braces are those of a wording that is spoken of."""
    return _FIELD.sub(lambda field: values[field[1]], words)


@cache
def _patterns() -> list[tuple[str, re.Pattern[str]]]:
    """Each form with its pattern; first those of most words, as what is filled in could be words of another."""
    longest_first = sorted(FORMS, key=lambda english: -len(_FIELD.sub("", english)))
    return [(english, re.compile(_pattern(english), re.DOTALL)) for english in longest_first]


def _pattern(english: str) -> str:
    parts = _FIELD.split(english)  # words, field, words, field, … words
    return "".join(f"(?P<{part}>.+?)" if place % 2 else re.escape(part) for place, part in enumerate(parts))
