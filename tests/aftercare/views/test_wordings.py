"""The owner's wordings on their pages."""

from __future__ import annotations

import pytest

from aftercare import versions
from aftercare.models import Wording
from tests.cast import Cast
from tests.pages import SignIn, words

CARE = "/wordings/care/any/sms/en"
GOOD = "{{ studio }}: {{ first_name }}, no rubbing please. {{ caution }} {{ how_to_stop }}"


def test_every_wording_is_listed_with_what_is_in_force(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.olga)
    browser.post(CARE, {"body": GOOD, "seen": 0, "save": 1})

    page = browser.get("/wordings?language=en")

    assert "version 1" in words(page)
    assert "Olga" in words(page)
    for slot in versions.slots():
        address = f"/wordings/{slot.occasion}/{slot.variant}/{slot.channel}/{slot.language}"
        assert (address in page.content.decode()) == (slot.language == "en")


def test_each_wording_s_page_opens_with_its_preview(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.olga)

    for slot in versions.slots():
        page = browser.get(f"/wordings/{slot.occasion}/{slot.variant}/{slot.channel}/{slot.language}")
        assert page.status_code == 200, slot
        assert "It can be shown once it can be read." not in words(page), slot


def test_the_preview_is_in_the_studio_s_own_name_and_says_what_it_costs(cast: Cast, as_: SignIn) -> None:
    page = words(as_(cast.olga).get(CARE))

    assert "Wrenfield Lash Room: Wilhelmina" in page
    assert "Charged as 2 texts" in page


def test_a_preview_saves_nothing(cast: Cast, as_: SignIn) -> None:
    page = words(as_(cast.olga).post(CARE, {"body": GOOD.replace("no rubbing", "no picking"), "seen": 0, "look": 1}))

    assert "Wilhelmina, no picking please." in page
    assert not Wording.objects.exists()


@pytest.mark.parametrize(
    ("body", "said"),
    [
        ("{{ studio }} {{ caution }} {{ how_to_stop }} {{ horoscope }}", "horoscope"),
        ("{{ studio }} {{ how_to_stop }}", "The caution is missing"),
        ("{{ studio }} {{ caution }}", "how to stop"),
        (GOOD + " It is perfectly safe.", "never said"),
        (GOOD + " {% if first %}", "line 1, column"),
        ("", "The text is empty."),
    ],
)
def test_what_is_wrong_is_said_with_its_place_and_changes_nothing(
    body: str, said: str, cast: Cast, as_: SignIn
) -> None:
    page = words(as_(cast.olga).post(CARE, {"body": body, "seen": 0, "save": 1}))

    assert "Not saved yet. To mend:" in page
    assert said in page
    assert not Wording.objects.exists()


def test_a_dear_character_is_pointed_out_with_a_cheaper_spelling(cast: Cast, as_: SignIn) -> None:
    body = GOOD.replace("no rubbing", "no rubbing 🌿")

    page = words(as_(cast.olga).post(CARE, {"body": body, "seen": 0, "look": 1}))

    assert "fewer than half as many as usual" in page
    assert "It costs more because of: “🌿”" in page


def test_an_earlier_version_and_the_first_wording_can_be_put_back(cast: Cast, as_: SignIn) -> None:
    def find() -> str:
        return versions.finder(cast.studio)("care", "fill", 0, "sms", "en").body

    browser, first = as_(cast.olga), find()
    browser.post(CARE, {"body": GOOD, "seen": 0, "save": 1})
    browser.post(CARE, {"body": GOOD.replace("rubbing", "picking"), "seen": 1, "save": 1})
    assert "picking" in find()

    browser.post(CARE, {"restore": "1"})
    assert find() == GOOD
    browser.post(CARE, {"restore": "first"})
    assert find() == first

    assert [row.version for row in Wording.objects.order_by("version")] == [1, 2, 3, 4]


def test_two_who_change_the_same_wording_do_not_write_over_each_other(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.olga)
    browser.post(CARE, {"body": GOOD, "seen": 0, "save": 1})

    page = words(browser.post(CARE, {"body": GOOD.replace("rubbing", "picking"), "seen": 0, "save": 1}))

    assert "Someone saved this wording meanwhile" in page
    assert Wording.objects.count() == 1


@pytest.mark.parametrize("block", ["caution", "how_to_stop"])
def test_what_is_fixed_is_shown_and_cannot_be_changed(block: str, cast: Cast, as_: SignIn) -> None:
    browser, address = as_(cast.olga), f"/wordings/{block}/any/sms/en"

    assert "It is fixed" in words(browser.get(address))
    browser.post(address, {"body": "All is well. {{ emergency_call }}", "seen": 0, "save": 1})

    assert not Wording.objects.exists()


@pytest.mark.parametrize(
    "path", ["/wordings/care/any/sms/fr", "/wordings/care/any/pigeon/en", "/wordings/care/nothing.0/sms/en", CARE + "x"]
)
def test_a_wording_that_is_none_is_not_found(path: str, cast: Cast, as_: SignIn) -> None:
    assert as_(cast.olga).get(path).status_code == 404


def test_a_version_that_is_none_cannot_be_put_back(cast: Cast, as_: SignIn) -> None:
    assert as_(cast.olga).post(CARE, {"restore": "7"}).status_code == 404
    assert not Wording.objects.exists()
