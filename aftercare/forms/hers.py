"""What a client sends from her own page, read from its forms. Nothing of it is refused for its shape.

What is not on the page (a tick that there is not, a file that is no photo) is left out or told of; her words are kept
whatever else came with them.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import Self, TypeVar

from django.core.files.uploadedfile import UploadedFile
from django.http import HttpRequest, QueryDict
from django.utils.crypto import get_random_string

from aftercare import pictures
from aftercare.core.reading import Side
from aftercare.core.ticks import Asks, Since, Suits, Tick, Ticked, known

MOST_PHOTOS = 3
LONGEST_WORDS = 4_000  # what the field takes; more than that is kept all the same
_FORM = re.compile(r"[A-Za-z0-9]{12,32}")
Word = TypeVar("Word", bound=StrEnum)
Files = list[tuple[str, bytes]]


@dataclass(frozen=True, slots=True)
class Told:
    """What she told: ticks, words, photos. ``form`` names the form as it was shown to her."""

    ticked: Ticked
    words: str = ""
    files: Sequence[tuple[str, bytes]] = ()
    form: str = ""

    @property
    def is_empty(self) -> bool:
        return not (self.ticked.ticks or self.words.strip() or self.files)

    @classmethod
    def eyes(cls, request: HttpRequest, visit: int, language: str) -> Self:
        """Read the question about her eyes."""
        sent = request.POST
        ticked = Ticked(
            ticks=frozenset(known(Tick, sent.getlist("tick"))),
            side=_one(Side, sent),
            since=_one(Since, sent),
            lenses="lenses" in sent,
            language=language,
            visit=visit,
        )
        return cls(ticked, _words(sent), _files(request), _form(sent))

    @classmethod
    def asking(cls, request: HttpRequest, asks: Asks, visit: int | None, language: str) -> Self:
        """Read what she asks for by a button."""
        sent = request.POST
        suits = frozenset(known(Suits, sent.getlist("suits"))) if asks is Asks.MOVE else frozenset[Suits]()
        words = _words(sent) if asks is Asks.MOVE else ""
        return cls(Ticked(language=language, asks=asks, suits=suits, visit=visit), words, (), _form(sent))

    def in_words_alone(self) -> Self:
        """Return what she wrote without what she asked for: it is read as anything that she writes."""
        return replace(self, ticked=replace(self.ticked, asks=None, suits=frozenset()))

    def without_files(self) -> Self:
        return replace(self, files=())

    def reference(self, subject: str) -> str:
        """Name this telling: the same form sent twice is one, and one with another tick or word is another."""
        content = hashlib.sha256(repr((self.ticked.to_keep(), self.words)).encode("utf-8", "surrogatepass"))
        for name, data in self.files:
            content.update(repr((name, len(data))).encode("utf-8", "surrogatepass") + data)
        return f"page:{subject}:{self.form}:{content.hexdigest()[:32]}"


def new_form() -> str:
    """Return a name for a form that is shown."""
    return get_random_string(16)


def _form(sent: QueryDict) -> str:
    given = sent.get("form", "")
    return given if _FORM.fullmatch(given) else new_form()


def _words(sent: QueryDict) -> str:
    return sent.get("words", "").replace("\r\n", "\n").strip()


def _files(request: HttpRequest) -> Files:
    """Return name and content of each; of very many, the names alone of those that would not be kept anyhow."""
    files = request.FILES.getlist("photo")
    read = [(file.name or "", _content(file)) for file in files[: pictures.MOST_FILES]]
    return read + [(file.name or "", b"") for file in files[pictures.MOST_FILES :]]


def _content(file: UploadedFile) -> bytes:
    """Read a file, but no more of one that is too large than shows that it is."""
    return bytes(file.read(pictures.LARGEST_FILE + 1))


def _one(kind: type[Word], sent: QueryDict) -> Word | None:
    return next(iter(known(kind, [sent.get(kind.__name__.lower(), "")])), None)
