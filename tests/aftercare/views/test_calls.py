"""What a carrier called to say and nobody understood, on the page of the lines."""

from __future__ import annotations

import pytest

from aftercare import hearing, webhooks
from aftercare.models import Reply, StoredCallback
from tests import hooks
from tests.cast import Cast
from tests.pages import SignIn, words
from tests.people import NOW


@pytest.fixture(autouse=True)
def lines_anew() -> None:
    webhooks.forget()


def test_it_says_what_was_not_understood_without_a_word_of_it(cast: Cast, strangers: Cast, as_: SignIn) -> None:
    line = hooks.make_line(cast.studio)
    assert "not understood" not in words(as_(cast.olga).get("/settings/lines"))
    hooks.call(line.pk, {"balance": "my eye is red"})
    hearing.read_waiting(NOW)

    page = words(as_(cast.olga).get("/settings/lines"))

    assert "1 call of the carrier was not understood" in page
    assert "“state” of a receipt" in page
    assert "red" not in page
    assert "not understood" not in words(as_(strangers.olga).get("/settings/lines"))


def test_once_it_is_mended_the_owner_has_it_read_again(cast: Cast, strangers: Cast, as_: SignIn) -> None:
    line = hooks.make_line(cast.studio)
    hooks.call(line.pk, {"id": "MO1", "sender": hooks.MIA, "text": "it stings"})
    hearing.read_waiting(NOW)
    line.options["replies"]["from_address"] = "sender"
    line.save()

    as_(strangers.olga).post("/settings/lines/read-again")
    assert hearing.read_waiting(NOW) == 0
    as_(cast.olga).post("/settings/lines/read-again")
    assert hearing.read_waiting(NOW) == 1

    assert Reply.objects.filter(text="it stings").exists()
    assert not StoredCallback.objects.exists()
