from __future__ import annotations

from aftercare.core.reading import Topic, features, second


def test_the_model_tells_signs_and_stops_from_praise() -> None:
    sore, praise, end = (
        second.opinion(text) for text in ("my eye is swollen and sore", "love them thanks", "stop texting me")
    )

    assert sore.sign > 0.8 > 0.3 > praise.sign
    assert end.stop > praise.stop


def test_the_weights_fit_the_features() -> None:
    numbers = features.of("Ｉtchy eyes")

    assert numbers == features.of("itchy EYES")
    assert all(0 <= number < features.SIZE for number in numbers)


def test_it_guesses_what_a_reply_is_about() -> None:
    assert second.opinion("can you fit me in on saturday for a fill?").topic is Topic.BOOKING
    assert second.opinion("").topic is None
