from __future__ import annotations

from aftercare.core.reading import Urgency, features, read, second


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


def test_the_second_opinion_never_makes_a_reply_less_urgent() -> None:
    found = read("so the thing is my lids have a fat swollen itch burn look to them, i reckon")

    assert found.unread or found.urgency is not Urgency.NONE
