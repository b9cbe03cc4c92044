from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Urgency, read


@pytest.mark.parametrize(
    ("text", "sign"),
    [
        ("I'm not bringing these itchy eyes anywhere today", Sign.ITCHING),
        ("I'm not going out with my red eyes", Sign.REDNESS),
        ("won't be coming in with a swollen eye", Sign.SWELLING),
        ("no voy a salir con estos ojos hinchados", Sign.SWELLING),
    ],
)
def test_what_she_will_not_do_with_her_eyes_denies_no_sign(text: str, sign: Sign) -> None:
    found = read(text)

    assert found.urgency is not Urgency.NONE
    assert sign in found.signs


@pytest.mark.parametrize(
    "text", ["I don't have red eyes", "haven't got my usual itchy eyes", "Aquí no hay ninguna con los ojos rojos"]
)
def test_what_she_does_not_have_is_denied(text: str) -> None:
    assert not read(text).signs
