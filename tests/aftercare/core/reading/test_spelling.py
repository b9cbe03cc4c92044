from __future__ import annotations

import pytest

from aftercare.core.reading.spelling import known


@pytest.mark.parametrize(
    ("written", "word"),
    [
        ("inchados", "hinchados"),
        ("yorando", "llorando"),
        ("garjanta", "garganta"),
        ("pikan", "pican"),
        ("hinchao", "hinchado"),
        ("irritadisimo", "irritado"),
        ("rojillos", "rojos"),
        ("meduelen", "duelen"),
    ],
)
def test_spanish_is_known_by_its_sound_and_its_endings(written: str, word: str) -> None:
    assert known(written) == word


@pytest.mark.parametrize("written", ["mesilla", "carrillo", "cacao", "merecen", "diciendo", "abrieron", "valley"])
def test_another_word_stays_what_it_is(written: str) -> None:
    assert known(written) == written
