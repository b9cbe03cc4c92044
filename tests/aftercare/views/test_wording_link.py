"""Whether the link to her page fits into a text, said before a wording is saved."""

from __future__ import annotations

import re

from aftercare import texts
from aftercare.facts import load
from aftercare.models import Message, Wording
from tests.cast import Cast
from tests.pages import SignIn, words

CARE = "/wordings/care/any/sms/en"
WITH_LINK = "{{ studio }}: {{ first_name }}, FILL{% if page %} {{ page }}{% endif %} {{ caution }} {{ how_to_stop }}"


def body(letters: int) -> str:
    return WITH_LINK.replace("FILL", "x" * letters)


def test_one_letter_too_many_is_said_with_how_many_clients_lose_the_link(cast: Cast, as_: SignIn) -> None:
    mia, ann = cast.client("Mia"), cast.client("Annabelle")
    visit = cast.done(mia, cast.at(10, -1))
    cast.done(ann, cast.at(10, -1))
    browser = as_(cast.olga)

    def look(letters: int) -> str:
        return words(browser.post(CARE, {"body": body(letters), "seen": 0, "look": 1, "who": mia.pk}))

    def goes(letters: int) -> str:
        Wording.objects.all().delete()
        browser.post(CARE, {"body": body(letters), "seen": 0, "save": 1})
        message = Message(client=mia, visit=visit, occasion="care", channel="sms")
        return texts.for_message(message, load([mia.pk], cast.now)[mia.pk], cast.now).body

    found = re.search(r"The link to her page fits, with (\d+) letters left", look(1))
    assert found is not None
    most = 1 + int(found[1])
    assert "with 0 letters left" in look(most)
    assert "/v/" in goes(most)
    assert "1 of 2 clients of late gets this text without it, as it is 6 letters too long" in look(most)

    over = look(most + 1)

    assert "Shown without the link to her page: with it the text is one letter too long for two texts." in over
    assert "2 of 2 clients of late get this text without it, as it is up to 7 letters too long" in over
    assert "/v/" not in goes(most + 1)


def test_it_is_a_warning_that_does_not_stop_a_save_and_stands_in_the_preview_as_she_types(
    cast: Cast, as_: SignIn
) -> None:
    cast.done(cast.client("Mia"), cast.at(10, -1))
    browser, given = as_(cast.olga), {"body": body(90), "seen": 0}

    part = browser.post(f"{CARE}/preview", given).content.decode()
    browser.post(CARE, {**given, "save": 1})

    assert "It can be saved. Worth a look:" in part
    assert "1 of 1 clients of late gets this text without it" in " ".join(part.split())
    assert Wording.objects.count() == 1


def test_who_gets_it_by_mail_or_in_other_words_is_not_counted(cast: Cast, as_: SignIn) -> None:
    cast.done(cast.client("Mia"), cast.at(10, -1))
    cast.done(cast.client("Zoe", texts=False, email="zoe@clients.example"), cast.at(10, -1))
    cast.done(cast.client("Ines", language="es"), cast.at(10, -1))
    cast.done(cast.client("Bea"), cast.at(10, -1), "removal")

    page = words(as_(cast.olga).post(CARE, {"body": body(90), "seen": 0, "look": 1}))

    assert "1 of 1 clients of late" in page


def test_where_nothing_is_left_out_nothing_is_said_of_it(cast: Cast, as_: SignIn) -> None:
    cast.done(cast.client("Mia"), cast.at(10, -1))
    always = body(90).replace("{% if page %} {{ page }}{% endif %}", " {{ page }}")

    for text in (always, body(90).replace("{% if page %} {{ page }}{% endif %}", "")):
        page = words(as_(cast.olga).post(CARE, {"body": text, "seen": 0, "look": 1}))
        assert not re.search(r"link to her page (fits|does)", page)
        assert "Shown without" not in page


def test_at_the_brim_it_says_how_many_letters_are_left_before_another_text(cast: Cast, as_: SignIn) -> None:
    browser, text = as_(cast.olga), "{{ studio }}: FILL {{ caution }} {{ how_to_stop }}"

    def look(letters: int) -> str:
        return words(browser.post(CARE, {"body": text.replace("FILL", "x" * letters), "seen": 0, "look": 1}))

    found = re.search(r"Charged as 2 texts : .* (\d+) letters more fit before it costs another text", look(1))
    assert found is not None
    assert "Charged as 2 texts" in look(1 + int(found[1]))
    assert "Charged as 3 texts" in look(2 + int(found[1]))
