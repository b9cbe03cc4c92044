"""Makes `words/lookalikes.py`: real words that the speller must leave alone. ``python tests/bench/lookalikes.py``.

Needs pyspellchecker (MIT), for this alone: its lists of English and Spanish words, with how often each is met in
subtitles. Words that are met less often than `RARE` times are more likely slips themselves ("swolen" is in the list).
"""

from __future__ import annotations

import sys
import textwrap
import unicodedata
from pathlib import Path

from rapidfuzz import process
from rapidfuzz.distance import OSA
from spellchecker import SpellChecker  # type: ignore[import-not-found]

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))  # run as a script from anywhere

from aftercare.core.reading import lexicon, spelling  # noqa: E402

RARE = 60
SLIPS = frozenset(["swolen"])
# Met in replies and missing from the lists.
MORE = """afebrile allergist andan eche chingonas llegara botado espero landline pegan cerraron cerrarlo papular
    penlight"""


def main() -> None:
    targets = sorted(word for word in lexicon.MENDED if len(word) >= spelling.SHORTEST)
    found = set(MORE.split())
    for language in ("en", "es"):
        frequencies = SpellChecker(language=language).word_frequency
        for written in frequencies.keys():  # noqa: SIM118  not a dict
            word = _folded(written)
            if _counts(word) and frequencies[written] >= RARE and word not in lexicon.WORDS:
                slips = 1 if len(word) < spelling.LONG else 2
                near = process.extractOne(word, targets, scorer=OSA.distance, score_cutoff=slips)
                if near or spelling.shuffled(word):
                    found.add(word)
    body = textwrap.fill(" ".join(sorted(found - SLIPS)), 112, initial_indent="    ", subsequent_indent="    ")
    file = ROOT / "aftercare" / "core" / "reading" / "words" / "lookalikes.py"
    head = file.read_text(encoding="utf-8").partition("LOOKALIKES = ")[0]
    file.write_text(f'{head}LOOKALIKES = listed("""\n{body}\n""")\n', encoding="utf-8")
    print(f"{len(found)} words")


def _counts(word: str) -> bool:
    return word.isascii() and word.isalpha() and spelling.SHORTEST <= len(word) <= spelling.LONGEST


def _folded(word: str) -> str:
    plain = unicodedata.normalize("NFKD", word.casefold())
    return "".join(letter for letter in plain if unicodedata.category(letter) != "Mn")


if __name__ == "__main__":
    main()
