"""Whether the second opinion doubts what a word tells of a reply's topics."""

from __future__ import annotations

from aftercare.core.reading import second
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.second import Opinion
from aftercare.core.reading.values import Topic

_SURE = {Topic.BOOKING: 0.65, Topic.QUESTION: 0.7}  # of one sentence by itself
_QUOTES = ('"', "“", "«")
_SENTENCES, _WORDS = 3, 3  # a reply of so many sentences; of fewer words in one the model knows little


class Doubt:
    """What the second opinion thinks of a topic: of the whole reply, and where that is long, of the one sentence too.

    Of "Put me in for the 3rd. Everything out of my left eye is double." the whole is of an eye alone.
    """

    def __init__(self, page: Page, answer: str, opinion: Opinion) -> None:
        self._page = page
        self._answer = answer
        self._whole = opinion
        self._long = bool(page.sentence) and len(set(page.sentence)) >= _SENTENCES
        self._of: dict[int, Opinion] = {}

    def doubts(self, topic: Topic, mark: Mark) -> bool:
        """Whether a word of this topic is likelier of another matter."""
        if not self._whole.doubts(topic) or topic not in _SURE:
            return self._whole.doubts(topic)
        own = self._own(mark)
        return own is None or own.topics.get(topic, 0.0) <= _SURE[topic]

    def _own(self, mark: Mark) -> Opinion | None:
        """Return what the model makes of the sentence of a mark, None where that holds a sign or is all she says."""
        page, where = self._page, self._page.sentence[mark.start]
        if not self._long:
            return None
        if where not in self._of:
            tokens = [token for token, at in zip(page.tokens, page.sentence, strict=True) if at == where]
            signs = (one for name, marks in page.marks.items() if name.startswith("sign:") for one in marks)
            if len(tokens) < _WORDS or any(page.sentence[one.start] == where for one in signs):
                return None
            said = self._answer[tokens[0].start : tokens[-1].end]
            if said.startswith(_QUOTES):
                return None  # what she was asked, and no question of hers
            self._of[where] = second.opinion(said, [token.word for token in tokens])
        return self._of[where]
