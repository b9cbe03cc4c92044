from __future__ import annotations

import pytest

from aftercare.core.reading import Topic, Urgency, features
from aftercare.core.reading.reader import by_rules
from aftercare.core.reading.second import Opinion


def opinion(text: str) -> Opinion:
    laid = by_rules(text)
    assert laid is not None
    return laid.opinion()


def test_the_model_tells_signs_and_stops_from_praise() -> None:
    sore, praise, end = (
        opinion(text) for text in ("my eye is swollen and sore", "love them thanks", "you can stop texting me now")
    )

    assert sore.current > 0.8 > 0.1 > praise.current
    assert end.topics[Topic.STOP] > 0.5 > praise.topics[Topic.STOP]


def test_the_chances_of_the_urgencies_add_up() -> None:
    assert sum(opinion("my eye is swollen and sore").urgency.values()) == pytest.approx(1)


def test_an_emergency_is_likelier_where_she_cannot_see() -> None:
    assert opinion("cant see a thing out of my right eye").urgency[Urgency.EMERGENCY] > 0.5


def test_the_features_of_words_do_not_hang_on_how_they_are_typed() -> None:
    numbers = features.of_words("Ｉtchy eyes")

    assert numbers == features.of_words("itchy EYES")
    assert all(0 <= number < features.SIZE for number in numbers)
    assert features.of_words("") == []


def test_what_is_learned_around_a_sign_holds_for_each_sign() -> None:
    found = []
    for text in ("i have no itching today", "i have no swelling today"):
        laid = by_rules(text)
        assert laid is not None
        found.append(set(features.of_rules(laid.page, laid.found, laid.reading)))

    assert len(found[0] & found[1]) > len(found[0] ^ found[1])


def test_it_guesses_what_a_reply_is_about() -> None:
    topics = opinion("can you fit me in on saturday for a fill?").topics

    assert max(topics, key=lambda topic: topics[topic]) is Topic.BOOKING
