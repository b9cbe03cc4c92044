"""A reply laid out for reading: its tokens, its sentences and clauses, and the phrases found in it."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections import defaultdict
from dataclasses import dataclass, field

from aftercare.core.reading import lexicon
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import ASK, COMMA, LINE, PICTURE, STOP, WORD, Token, listed

_CLAUSE_WORDS = listed("""
    but and because cause though although however except when while then unless so if pero y aunque porque pues
    entonces cuando sino
""")
_AFTER_SO = listed("i im ive my we they it its you he she the theyre can could please ill")

# What a longer phrase takes away from what lies within it, or under it.
_OVERRULED = {
    "topic:figure": ("sign:",),
    "topic:bald": ("sign:",),
    "scope:nonneg": ("scope:no", "scope:not", "scope:over", "scope:near", "scope:good_kind", "scope:will", "scope:if"),
    "scope:near": ("topic:retention", "scope:no", "scope:not"),
    "scope:turned": ("scope:nonneg", "scope:over", "scope:near", "scope:not"),
    "scope:notif": ("scope:if",),
    "scope:notwill": ("scope:will",),
    "scope:notpast": ("scope:past",),
    "scope:self": ("scope:other",),
    "topic:slight": ("sign:faint!",),
    "topic:vocative": ("topic:fine", "topic:plain", "topic:thanks"),
    "topic:notstop": ("topic:stop",),
    "topic:stop": ("scope:over", "scope:near"),
    "topic:astray": ("topic:wrong_person",),
    "topic:notbooking": ("topic:booking", "topic:booking_weak"),
    "topic:notquestion": ("topic:question",),
    "topic:notlost": ("topic:retention",),
    "topic:notside": ("topic:left", "topic:right", "topic:both"),
    "topic:retention": ("scope:over",),
}
_CONTAINED = {
    "sign:light": {"poking", "pain", "burning", "pain!", "watering", "sealed_eye!", "vision!", "agony"},
    "sign:pain!": {"watering", "poking", "redness", "burning"},
    "sign:swelling": {"rash", "watering", "vision"},
    "sign:hot_lid": {"burning"},
    "sign:vision!": {"watering", "vision", "swelling", "rash", "light"},
    "sign:itching": {"poking", "pain"},
    "sign:breathing!": {"itching", "swelling", "swelling!", "pain", "pain!", "poking", "gritty", "burning", "vision"},
    "sign:gritty": {"burning", "poking"},
    "sign:hives!": {"rash", "itching", "burning", "swelling"},
    "sign:hives": {"rash"},
    "sign:sealed_eye!": {"poking", "discharge", "rash", "light"},
    "sign:discharge": {"sealed_eye!", "watering", "glue_in_eye!", "vision!", "vision", "rash"},
    "sign:burning": {"itching"},
    "sign:redness": {"watering", "vision!"},
    "sign:redness!": {"vision!"},
    "sign:faint!": {"vision!", "poking"},
    "sign:injury!": {"poking", "glue_in_eye!", "pain!", "agony"},
    "sign:swelling!": {"itching", "burning", "watering"},
    "sign:bulging!": {"swelling", "swelling!", "poking"},
    "sign:fever": {"burning"},
    "sign:headache": {"pain"},
    "sign:rash": {"gritty", "discharge"},
    "sign:poking": {"pain", "itching", "agony", "gritty"},
    "sign:watering": {"glue_in_eye!"},
    "sign:glue_in_eye!": {"poking", "watering", "discharge"},
}

_WHOLE = {"topic:figure", "topic:bald"}  # these rule only what lies within them
# These rule what is as long as they are, too.
_AS_LONG = {"sign:hot_lid", "sign:bulging!", "sign:injury!", "sign:itching"}

_NOTHING: frozenset[str] = frozenset()


@dataclass(slots=True)
class Page:
    """Tokens, where each stands, and the marks of either language by name."""

    tokens: list[Token]
    sentence: list[int]
    clause: list[int]
    marks: dict[str, list[Mark]] = field(default_factory=lambda: defaultdict(list))
    known: dict[str, bool] = field(default_factory=dict)  # what was asked of the whole page once
    # Each sign asks for these: told anew each time, the reading of a long page took time by the square of its length.
    _said: dict[int, frozenset[str]] = field(default_factory=dict)
    _asked: frozenset[int] | None = None

    def named(self, *names: str) -> list[Mark]:
        """Return the marks of these names in the order of the text."""
        found = [mark for name in names if name in self.marks for mark in self.marks[name]]
        return sorted(found, key=lambda mark: (mark.start, mark.end)) if len(found) > 1 else found

    def said(self, sentence: int) -> frozenset[str]:
        """Return the words and marks of a sentence."""
        if not self._said:
            said: dict[int, set[str]] = defaultdict(set)
            for token, where in zip(self.tokens, self.sentence, strict=True):
                said[where].add(token.word)
            self._said = {where: frozenset(words) for where, words in said.items()}
        return self._said.get(sentence, _NOTHING)

    def asked(self) -> frozenset[int]:
        """Return the sentences that have a question mark, or one that opens it before them."""
        if self._asked is None:
            placed = zip(self.tokens, self.sentence, strict=True)
            self._asked = frozenset(
                one for token, where in placed if token.kind == ASK for one in (where, where + (token.word == "¿"))
            )
        return self._asked

    def opened(self) -> set[int]:
        """Return the sentences that a question mark opens, as in Spanish."""
        return {where + 1 for token, where in zip(self.tokens, self.sentence, strict=True) if token.word == "¿"}

    def span(self, sentence: int) -> range:
        """Return the places of a sentence: it stands in one piece."""
        return range(bisect_left(self.sentence, sentence), bisect_right(self.sentence, sentence))

    def covers(self, name: str, place: int) -> bool:
        """Say whether a mark of this name lies over a token."""
        return any(mark.start <= place < mark.end for mark in self.marks.get(name, ()))


def lay_out(tokens: list[Token], *, english: bool, spanish: bool) -> Page:
    """Return the page of a reply; scope words count only in the languages that it is written in, signs in both."""
    sentence, clause = _parts(tokens)
    page = Page(tokens, sentence, clause)
    found: list[Mark] = []
    for tree, counts, own in (
        (lexicon.ENGLISH, english, lexicon.ENGLISH_ALONE),
        (lexicon.SPANISH, spanish, lexicon.SPANISH_ALONE),
    ):
        if not counts and not any(token.word in own for token in tokens):
            continue
        found += [mark for mark in tree.find(tokens) if counts or mark.name.startswith("sign:")]
    seen: set[tuple[str, int, int]] = set()
    for mark in _kept(found):
        if mark.name == "sign:swelling!" and (_is_of_eyes(tokens, mark) or _is_faced(tokens, mark)):
            continue
        key = (mark.name, mark.start, mark.end)
        if key not in seen:
            seen.add(key)
            page.marks[mark.name].append(mark)
    return page


EYES = listed("eye eyes lid lids eyelid eyelids ojo ojos parpado parpados")
_FACE = listed("""
    face lips lip tongue throat mouth neck cheeks cara rostro labio labios lengua boca garganta cachetes
""")


def _is_of_eyes(tokens: list[Token], mark: Mark) -> bool:
    """My lips are fine and my eyes are swollen -- but not: my lips and my eyes are swollen."""
    words = [token.word for token in tokens[mark.start : mark.end]]
    if words[1:2] in (["and"], ["y"]) and EYES & set(words[2:4]):
        return False
    eyes = [place for place, word in enumerate(words) if word in EYES]
    faces = [place for place, word in enumerate(words) if word in _FACE]
    return bool(eyes and faces) and eyes[-1] > faces[-1] == 0


_BEFORE_FACE = listed("cant cannot couldnt wont wouldnt dont didnt to could can not i")


def _is_faced(tokens: list[Token], mark: Mark) -> bool:
    """It is fat, so I can't face lashes tomorrow: no face is meant."""
    last = mark.end - 1
    return tokens[last].word in ("face", "facing") and tokens[last - 1].word in _BEFORE_FACE


def _parts(tokens: list[Token]) -> tuple[list[int], list[int]]:
    sentences: list[int] = []
    clauses: list[int] = []
    sentence = clause = 0
    fresh = True
    for place, token in enumerate(tokens):
        if token.kind == WORD and not fresh and token.word in _CLAUSE_WORDS and _opens(tokens, place):
            clause += 1
        sentences.append(sentence)
        clauses.append(clause)
        fresh = token.kind != WORD
        if token.kind in (STOP, ASK) or token.kind == LINE and place and tokens[place - 1].kind == LINE:
            sentence += 1
            clause += 1
        elif token.kind in (COMMA, LINE, PICTURE):
            clause += 1
    return sentences, clauses


def _opens(tokens: list[Token], place: int) -> bool:
    if tokens[place].word != "so":
        return True
    return place + 1 < len(tokens) and tokens[place + 1].word in _AFTER_SO


_WITHIN_SIGNS = listed("topic:retention topic:complaint topic:booking topic:fine")


def _kept(found: list[Mark]) -> list[Mark]:
    signs = [mark for mark in found if mark.name.startswith("sign:")]
    found = [mark for mark in found if mark.name not in _WITHIN_SIGNS or not any(_holds(sign, mark) for sign in signs)]
    found = [mark for mark in found if mark.name != "topic:retention" or not _is_of_a_sign(mark, signs)]
    rulers = [mark for mark in found if mark.name in _OVERRULED or mark.name in _CONTAINED]
    kept = []
    for mark in found:
        for ruler in rulers:
            if ruler is not mark and _overrules(ruler, mark):
                break
        else:
            kept.append(mark)
    return kept


def _holds(sign: Mark, mark: Mark) -> bool:
    """Say whether the words of a topic are part of a sign: "look like i lost a boxing match"."""
    return sign.start <= mark.start and mark.end <= sign.end and sign.end - sign.start > mark.end - mark.start


_NOT_LOST = listed("sign:redness sign:swelling sign:itching sign:burning sign:pain sign:watering sign:discharge")


def _is_of_a_sign(mark: Mark, signs: list[Mark]) -> bool:
    """Nearly all the puffiness has gone: no lash did."""
    return any(sign.name in _NOT_LOST and mark.start < sign.start and sign.end < mark.end for sign in signs)


def _overrules(ruler: Mark, mark: Mark) -> bool:
    if mark.start >= ruler.end or ruler.start >= mark.end:
        return False
    size, other = ruler.end - ruler.start, mark.end - mark.start
    overruled = _OVERRULED.get(ruler.name, ())
    if ruler.name in _WHOLE and (mark.start < ruler.start or mark.end > ruler.end):
        return False
    if mark.name in overruled or "sign:" in overruled and mark.name.startswith("sign:"):
        return size >= other
    contained = _CONTAINED.get(ruler.name)
    if contained and mark.name[5:] in contained:
        return mark.start >= ruler.start and mark.end <= ruler.end and (size > other or ruler.name in _AS_LONG)
    return False
