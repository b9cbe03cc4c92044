"""In which language a page speaks: hers, else the studio's; before the sign-in, the browser's."""

from __future__ import annotations

import re
from typing import Any

import pytest
from django.test import Client as Browser

from aftercare import bookwork
from studio import records
from studio.models import BookFile, Staff, Studio
from tests.browser.test_pages import pages
from tests.cast import Cast
from tests.pages import SignIn, words

SPANISH = {"HTTP_ACCEPT_LANGUAGE": "es-MX,es;q=0.9"}


def lang(response: Any) -> str:
    page: str = response.content.decode()
    return page.partition('<html lang="')[2][:2]


@pytest.mark.parametrize(
    ("hers", "the_studio_s", "spoken"), [("es", "en", "es"), ("", "es", "es"), ("en", "es", "en"), ("", "en", "en")]
)
def test_a_page_speaks_her_language_else_the_studio_s(
    hers: str, the_studio_s: str, spoken: str, cast: Cast, as_: SignIn
) -> None:
    Studio.objects.update(language=the_studio_s)
    cast.ada.language = hers
    cast.ada.save()

    response = as_(cast.ada).get("/today", **SPANISH)  # type: ignore[arg-type]

    assert lang(response) == spoken
    assert response.headers["Content-Language"] == spoken
    assert ("Hoja del día" in response.content.decode()) == (spoken == "es")


def test_the_sign_in_page_speaks_the_browser_s() -> None:
    assert "Entrar" in words(Browser().get("/sign-in", **SPANISH))  # type: ignore[arg-type]
    assert "Sign in" in words(Browser().get("/sign-in"))


def test_the_page_of_her_password_and_a_refusal_speak_hers_too(cast: Cast, as_: SignIn) -> None:
    cast.ada.language = "es"
    cast.ada.save()
    browser = as_(cast.ada)

    assert "Cambiar la contraseña" in words(browser.get("/password"))
    assert "No es para este acceso" in words(browser.get("/settings"))


ENGLISH = re.compile(r"\b(the|and|of|is|are|not|her|she|with|this|that|before|after|done|booked|lot)\b", re.IGNORECASE)
WRITTEN = re.compile(r"<(blockquote|textarea|code|svg|script)\b.*?</\1>|<p class=\"text\">.*?</p>|“[^”]*”", re.DOTALL)
ZONES = re.compile(r"(America|Europe)/(Port of Spain|Isle of Man)")  # IANA's names
SAID_BY_A_CARRIER = "The number does not take texts."


@pytest.mark.parametrize("who", ["olga", "ada", "dee"])
def test_nothing_of_a_page_is_left_in_english(who: str, morning_cast: Cast, as_: SignIn) -> None:
    """What people wrote, in whichever language, is theirs; the rest of each page is ours."""
    Staff.objects.update(language="es")
    Studio.objects.update(language="es")
    morning_cast.studio.refresh_from_db()
    browser = as_(getattr(morning_cast, who))
    left: set[str] = set()

    for path in [*pages(morning_cast), "/today", "/morning", "/nowhere", "/clients/99999"]:
        if path.startswith(("/wordings", "/unsubscribe")):
            continue  # these show texts to clients, and speak the client's own language
        page = WRITTEN.sub(" ", browser.get(path).content.decode()).replace(SAID_BY_A_CARRIER, "")
        said = re.findall(r'(?:aria-label|placeholder|title|alt)="([^"]*)"', page)
        lines = [*said, *re.sub(r"<[^>]+>", "\n", page).split("\n")]
        left |= {f"{path}: {line.strip()}" for line in lines if ENGLISH.search(ZONES.sub("", line))}

    assert left == set()


def test_a_drawing_keeps_its_points_whatever_the_language(morning_cast: Cast, as_: SignIn) -> None:
    """Numbers of SVG have a point (SVG 2, 4.3); a comma would part them in two."""
    morning_cast.olga.language = "es"
    morning_cast.olga.save()

    card = as_(morning_cast.olga).get(f"/clients/{morning_cast.clients['Bea'].pk}").content.decode()

    assert "<polyline" in card
    assert re.findall(r' (?:c?[xyr][12]?|dy|width|height)="[^"]*,[^"]*"', card) == []


def test_she_chooses_it_in_one_tap_and_stays_where_she_was(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.ada)
    assert 'name="language" value="es" lang="es">Español</button>' in browser.get("/clients?q=mia").content.decode()

    response = browser.post("/choose-language", {"language": "es", "next": "/clients?q=mia"}, follow=True)

    assert response.redirect_chain == [("/clients?q=mia", 302)]
    assert "Las páginas, y los mensajes para ti, están ahora en español." in words(response)
    cast.ada.refresh_from_db()
    assert cast.ada.language == "es"
    cast.noor.refresh_from_db()
    assert cast.noor.language == ""


def test_it_is_the_same_in_each_of_her_studios(cast: Cast, strangers: Cast, as_: SignIn) -> None:
    strangers.noor.user = cast.ada.user
    strangers.noor.save()

    as_(cast.ada).post("/choose-language", {"language": "es"})

    strangers.noor.refresh_from_db()
    assert strangers.noor.language == "es"


@pytest.mark.parametrize("language", ["de", "", "es-ES"])
def test_a_language_that_there_is_not_is_refused_and_changes_nothing(language: str, cast: Cast, as_: SignIn) -> None:
    assert as_(cast.ada).post("/choose-language", {"language": language}).status_code == 400
    cast.ada.refresh_from_db()
    assert cast.ada.language == ""


@pytest.mark.parametrize("away", ["https://elsewhere.example/", "//elsewhere.example", "javascript:alert(1)"])
def test_it_leads_nowhere_else(away: str, cast: Cast, as_: SignIn) -> None:
    response = as_(cast.ada).post("/choose-language", {"language": "es", "next": away})

    assert response.headers["Location"] == "/"


def test_what_is_wrong_with_a_file_is_said_in_the_language_of_whoever_brought_it(cast: Cast) -> None:
    cast.dee.language = "es"
    cast.dee.save()
    data = b"visit,client,first_name,service,starts_at,sms_ok\n1,1,Mia,fill,2027-03-09 14:30,perhaps\n"
    file = BookFile.objects.create(
        studio=cast.studio, name="b.csv", format="csv", data=data, by=cast.dee, uploaded_at=cast.now
    )

    bookwork.run_waiting(cast.now)

    file.refresh_from_db()
    assert file.result["bad_rows"][0]["problem"] == (
        '"perhaps" no es ni sí ni no: escribe yes o no, o deja la celda vacía.'
    )


def test_dates_and_hours_are_said_as_people_say_them(cast: Cast, as_: SignIn) -> None:
    cast.ada.language = "es"
    cast.ada.save()
    records.save_closing_day(
        studio=cast.studio, day=None, date=cast.at(12, 40).date(), name="", by=cast.olga, now=cast.now
    )
    cast.visit(cast.client("Mia"), cast.at(14.5))

    page = words(as_(cast.ada).get("/today"))

    assert " de " in page.partition("Hoja")[0] or " de " in page[:60]
    assert "2:30 pm" in page  # CLDR: speakers of Spanish in the United States count twelve hours
