"""Pictures that clients sent: who sees them, and how they are given."""

from __future__ import annotations

import pytest

from aftercare import receiving, triage
from aftercare.lines import lines_of
from aftercare.models import Attachment
from tests.aftercare.test_pictures import photo
from tests.cast import Cast
from tests.pages import SignIn, words


@pytest.fixture
def picture(cast: Cast) -> Attachment:
    """Mia, Ada's client, sent a photo without a word."""
    mia = cast.client("Mia", "Quist")
    cast.done(mia, cast.at(9, -2))
    line = lines_of(cast.studio)["sms"]
    files = [("a.jpg", photo()), ("b.pdf", b"%PDF-1.7")]
    reply = receiving.receive(line, mia.mobile, "", received_at=cast.at(6), files=files)
    triage.read(reply.pk, cast.at(6))
    return reply.attachments.get(name="a.jpg")


def test_her_artist_sees_it_and_nobody_runs_it(picture: Attachment, cast: Cast, as_: SignIn) -> None:
    response = as_(cast.ada).get(f"/attachments/{picture.pk}")

    assert response["Content-Type"] == "image/jpeg"
    assert bytes(response.content) == bytes(picture.content or b"")
    assert response["Content-Security-Policy"] == "default-src 'none'; sandbox"
    assert response["X-Content-Type-Options"] == "nosniff"
    assert "no-store" in response["Cache-Control"]


def test_nobody_else_does(picture: Attachment, cast: Cast, as_: SignIn, strangers: Cast) -> None:
    path = f"/attachments/{picture.pk}"

    assert as_(cast.noor).get(path).status_code == 404
    assert as_(cast.dee).get(path).status_code == 403
    assert as_(strangers.olga).get(path).status_code == 404
    assert as_(cast.olga).get(path).status_code == 200


def test_what_was_not_kept_is_not_found(picture: Attachment, cast: Cast, as_: SignIn) -> None:
    lost = Attachment.objects.get(name="b.pdf")

    assert as_(cast.ada).get(f"/attachments/{lost.pk}").status_code == 404


def test_it_stands_with_her_words_on_the_list_and_in_the_conversation(
    picture: Attachment, cast: Cast, as_: SignIn
) -> None:
    page = as_(cast.ada).get("/morning")
    assert f'src="/attachments/{picture.pk}"' in page.content.decode()
    assert "Not understood: read and decide" in words(page)
    assert "1 file could not be kept" in words(page)

    said = as_(cast.ada).get(f"/clients/{cast.clients['Mia'].pk}/conversation")
    assert f'src="/attachments/{picture.pk}"' in said.content.decode()
    assert "1 file could not be kept" in words(said)


def test_a_picture_from_a_number_that_nobody_knows_is_the_owners_to_see(cast: Cast, as_: SignIn) -> None:
    line = lines_of(cast.studio)["sms"]
    reply = receiving.receive(line, "+12125550177", "", received_at=cast.at(6), files=[("a.jpg", photo())])
    triage.read(reply.pk, cast.at(6))
    path = f"/attachments/{reply.attachments.get().pk}"

    assert as_(cast.ada).get(path).status_code == 404
    assert as_(cast.dee).get(path).status_code == 403
    assert as_(cast.olga).get(path).status_code == 200
