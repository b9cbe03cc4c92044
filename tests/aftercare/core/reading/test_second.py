from __future__ import annotations

from aftercare.core.reading import Topic, features, second


def test_the_model_tells_signs_and_stops_from_praise() -> None:
    sore, praise, end = (
        second.opinion(text, text.split())
        for text in ("my eye is swollen and sore", "love them thanks", "stop texting me")
    )

    assert sore.sign > 0.8 > 0.3 > praise.sign
    assert end.stop > praise.stop


def test_the_weights_fit_the_features() -> None:
    pieces, kinds = features.of("Ｉtchy eyes", ["itchy", "eyes"])

    assert (pieces, kinds) == features.of("itchy EYES", ["itchy", "eyes"])
    assert all(0 <= number < features.SIZE for number in pieces + kinds)


def test_words_of_one_class_count_as_one() -> None:
    assert features.of("", ["some", "cyanoacrylate"]) == features.of("", ["some", "superglue"])
    assert features.of("", ["some", "cyanoacrylate"]) != features.of("", ["some", "elbow"])


def test_it_guesses_what_a_reply_is_about() -> None:
    words = "can you fit me in on saturday for a fill ?"

    assert second.opinion(words, words.split()).topic is Topic.BOOKING
    assert second.opinion("", ()).topic is None
