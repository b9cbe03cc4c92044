"""Both full lexicons as trees of phrases, built once."""

from __future__ import annotations

from aftercare.core.reading.phrases import Phrases
from aftercare.core.reading.words import (
    ailments,
    english_alarms,
    english_commands,
    english_doings,
    english_figures,
    english_frames,
    english_moods,
    english_praise,
    english_scope,
    english_shedding,
    english_signs,
    english_topics,
    small_talk,
    spanish_doings,
    spanish_frames,
    spanish_moods,
    spanish_scope,
    spanish_signs,
    spanish_topics,
)

SIGN_PREFIX, SCOPE_PREFIX, TOPIC_PREFIX = "sign:", "scope:", "topic:"


def _tree(classes: dict[str, str], signs: dict[str, str], scope: dict[str, str], topics: dict[str, str]) -> Phrases:
    tree = Phrases(classes)
    for prefix, phrases in ((SIGN_PREFIX, signs), (SCOPE_PREFIX, scope), (TOPIC_PREFIX, topics)):
        for name, text in phrases.items():
            tree.add(prefix + name, text)
    return tree


def _together(*lexicons: dict[str, str]) -> dict[str, str]:
    """Return the phrases of several lists under their names."""
    found: dict[str, str] = {}
    for lexicon in lexicons:
        for name, text in lexicon.items():
            found[name] = f"{found[name]},{text}" if name in found else text
    return found


ENGLISH_SIGNS = _together(english_signs.SIGNS, english_alarms.ALARMS, english_frames.FRAMES, english_doings.DOINGS)
ENGLISH_TOPICS = _together(
    english_figures.FIGURES,
    english_commands.COMMANDS,
    english_praise.PRAISE,
    english_topics.TOPICS,
    ailments.ENGLISH,
    english_shedding.TOPICS,
    english_moods.TOPICS,
    small_talk.TOPICS_ENGLISH,
)
ENGLISH_CLASSES = {
    **english_signs.CLASSES,
    **english_frames.CLASSES,
    **english_commands.CLASSES,
    **english_shedding.CLASSES,
}
ENGLISH = _tree(ENGLISH_CLASSES, ENGLISH_SIGNS, english_scope.SCOPE, ENGLISH_TOPICS)
SPANISH_SIGNS = _together(spanish_signs.SIGNS, spanish_frames.FRAMES, spanish_doings.DOINGS)
SPANISH_TOPICS = _together(spanish_topics.TOPICS, spanish_moods.TOPICS, small_talk.TOPICS_SPANISH, ailments.SPANISH)
SPANISH_CLASSES = {
    **spanish_signs.CLASSES,
    **spanish_frames.CLASSES,
    **spanish_topics.CLASSES,
    **spanish_moods.CLASSES,
}
SPANISH = _tree(SPANISH_CLASSES, SPANISH_SIGNS, spanish_scope.SCOPE, SPANISH_TOPICS)
# Signs, topics and classes as they are written: the second opinion learns from them too.
SOURCES = (
    (ENGLISH_SIGNS, ENGLISH_TOPICS, ENGLISH_CLASSES),
    (SPANISH_SIGNS, SPANISH_TOPICS, SPANISH_CLASSES),
)
WORDS = frozenset(ENGLISH.words | SPANISH.words)
ENGLISH_ALONE, SPANISH_ALONE = ENGLISH.words - SPANISH.words, SPANISH.words - ENGLISH.words


_WORTH_MENDING = """
    swallow swallowing throat unsubscribe appointment vision sight eyesight unable cannot severe unbearable excruciating
    tongue chest tight wheezing dizzy fainted double blurry removed remover texting messages respirar garganta tragar
    insoportable abrir pegado pegados cerrado cerrados mensajes hinchados izquierdo derecho sensitive swollen
"""


def _mended_words() -> frozenset[str]:
    """Return the words worth mending: those that name a sign by themselves, or a part of her."""
    found = set(_WORTH_MENDING.split())
    for classes, signs in ((english_signs.CLASSES, ENGLISH_SIGNS), (spanish_signs.CLASSES, SPANISH_SIGNS)):
        single = Phrases({name: classes[name] for name in _MENDED_CLASSES & classes.keys()})
        found |= single.words
        for name, text in signs.items():
            single.add(name, ",".join(phrase for phrase in text.split(",") if len(phrase.split()) == 1))
        found |= single.words
    return frozenset(found)


_MENDED_CLASSES = {"eye", "glue", "face", "breathe", "swell", "sore", "ojo", "goma", "cara", "hinch"}
MENDED = _mended_words()
HEARD = MENDED & SPANISH.words - ENGLISH.words  # found by their sound
__all__ = ["ENGLISH", "ENGLISH_ALONE", "HEARD", "MENDED", "SOURCES", "SPANISH", "SPANISH_ALONE", "WORDS"]
