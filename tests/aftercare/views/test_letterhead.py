"""The page of the letters' head."""

from __future__ import annotations

from io import BytesIO

import pytest

from aftercare.models import Letterhead
from tests.aftercare.test_letterhead import picture
from tests.cast import Cast
from tests.pages import SignIn, words

PAGE = "/settings/letterhead"


def upload(data: bytes, name: str = "logo.png") -> BytesIO:
    file = BytesIO(data)
    file.name = name
    return file


def test_a_logo_is_put_above_the_letters_and_taken_away(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.olga)

    page = browser.post(PAGE, {"logo": upload(picture("PNG", (400, 100)))}, follow=True)

    assert "Saved." in words(page)
    assert "data:image/png;base64," in page.content.decode()
    browser.post(PAGE, {"remove": 1})
    assert not Letterhead.objects.exists()


@pytest.mark.parametrize(("data", "said"), [(b"<svg/>", "no PNG or JPEG"), (b"", "empty")])
def test_what_is_no_logo_is_refused_beside_its_field(data: bytes, said: str, cast: Cast, as_: SignIn) -> None:
    page = words(as_(cast.olga).post(PAGE, {"logo": upload(data)}))

    assert "Not saved yet. To mend:" in page
    assert said in page
    assert not Letterhead.objects.exists()


def test_it_is_the_owner_s_alone(cast: Cast, as_: SignIn) -> None:
    assert as_(cast.ada).get(PAGE).status_code == 403
    assert as_(cast.dee).post(PAGE, {"logo": upload(picture("PNG", (40, 10)))}).status_code == 403
