"""From the owner's editor to what leaves: whose words go, in which form, and what goes with them."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC
from email import message_from_bytes, policy
from email.message import EmailMessage
from pathlib import Path
from typing import Any

import icalendar
import pytest

from aftercare import letterhead, tasks, versions
from aftercare.models import Message
from aftercare.transports import memory
from aftercare.versions import Slot
from aftercare.wording import Words
from studio.models import Service
from tests import servers
from tests.aftercare.test_letterhead import picture
from tests.cast import Cast, make
from tests.servers import MailServer

CHECK = "{{ studio }}: {{ first_name }}, VERSION. {{ caution }} {{ how_to_stop }}"


@pytest.fixture
def cast(db: None, settings: Any) -> Cast:
    settings.PUBLIC_URL = "https://lashes.example"
    options = {"TRANSPORT": "aftercare.transports.memory.Memory", "OPTIONS": {}}
    settings.AFTERCARE = {**settings.AFTERCARE, "SMS": options, "EMAIL": options}
    cast = make()
    cast.studio.live_since = cast.at(0, -90)
    cast.studio.address = "12 Alder Row, Wrenfield"
    cast.studio.save()
    return cast


@pytest.fixture(scope="module")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[MailServer]:
    with servers.smtp(tmp_path_factory.mktemp("mail")) as running:
        yield running


def write(cast: Cast, slot: Slot, body: str, seen: int, subject: str = "") -> None:
    versions.save(cast.studio, slot, Words(subject, body), by=cast.olga, now=cast.now, seen=seen)


def care_due(cast: Cast, first: str) -> Message:
    """Return her aftercare by e-mail, due at eight this morning: her visit ended this very night."""
    her = cast.client(first, texts=False, mobile="", email=f"{first.lower()}@mail.example")
    visit = cast.done(her, cast.at(22, -1))
    cast.plan()
    return Message.objects.get(visit=visit, occasion="care")


def test_a_wording_takes_effect_for_what_has_not_left_yet(cast: Cast) -> None:
    slot = Slot("check", "", 0, "email", "en")
    write(cast, slot, CHECK.replace("VERSION", "one"), 0, "How are you")
    her = cast.client("Mia", texts=False, mobile="", email="mia@mail.example")
    other = cast.client("Bea", texts=False, mobile="", email="bea@mail.example")
    for one, days in ((her, -2), (other, -1)):
        cast.done(one, cast.at(9, days))
    cast.plan()
    tasks.send_due(now=cast.at(10.5))

    write(cast, slot, CHECK.replace("VERSION", "two"), 1, "How are you")
    tasks.send_due(now=cast.at(10.5, 1))

    checks = {sent.address: sent.text for sent in memory.taken if sent.subject == "How are you"}
    assert "Mia, one." in checks["mia@mail.example"]
    assert "Bea, two." in checks["bea@mail.example"]
    gone = Message.objects.filter(occasion="check", handed_over_at__isnull=False)
    assert dict(gone.values_list("client__first_name", "worded")) == {
        "Mia": "check/any/email/en@1",
        "Bea": "check/any/email/en@2",
    }


def test_she_who_speaks_a_further_language_gets_it_with_its_days_and_else_the_studio_s_first(cast: Cast) -> None:
    slot = Slot("prepare", "fill", 0, "email", "fr")
    write(cast, slot, "{{ studio }}: {{ day }} à {{ hour }}. STOP {{ how_to_stop }}", 0, "Votre visite")
    her = cast.client("Manon", texts=False, mobile="", email="manon@mail.example", language="fr")
    visit = cast.visit(her, cast.at(14, 4))
    cast.visit(her, cast.at(9, 24), Service.REMOVAL)
    cast.plan()
    tasks.send_due(now=cast.at(10.5, 1))
    tasks.send_due(now=cast.at(10.5, 21))

    french, *_others, english = [sent for sent in memory.taken if sent.address == "manon@mail.example"]

    day = visit.starts_at.astimezone(cast.studio.zone)
    weekdays = ["lundi", "mardi", "mercredi", "jeudi", "vendredi", "samedi", "dimanche"]
    assert f"{weekdays[day.weekday()]} {day.day}" in french.text
    assert "à 14:00." in french.text
    assert '<html lang="fr"' in french.html
    assert english.subject.startswith("Your removal: ")
    assert '<html lang="en"' in english.html


def test_instructions_arrive_as_a_letter_with_logo_and_calendar_file(
    cast: Cast, server: MailServer, settings: Any, tmp_path: Path
) -> None:
    settings.AFTERCARE["EMAIL"] = {
        "TRANSPORT": "aftercare.transports.email.Email",
        "OPTIONS": {
            "backend": "django.core.mail.backends.smtp.EmailBackend",
            "host": "127.0.0.1",
            "port": server.port,
            "from_address": "studio@wrenfield.example",
        },
    }
    letterhead.save_logo(cast.studio, picture("PNG", (400, 100)), by=cast.olga, now=cast.now)
    her = cast.client("<b>Mia</b>", texts=False, mobile="", email="mia@mail.example")
    visit = cast.visit(her, cast.at(14, 4), Service.CONSULTATION)
    cast.plan()

    tasks.send_due(now=cast.at(10.5, 1))

    message = Message.objects.get(visit=visit)
    assert message.state == "handed_over"
    mail = message_from_bytes(server.newest, policy=policy.default)
    assert isinstance(mail, EmailMessage)
    html, plain = mail.get_body(("html",)), mail.get_body(("plain",))
    assert html is not None
    assert plain is not None
    assert "&lt;b&gt;Mia&lt;/b&gt;" in html.get_content()
    assert "<b>Mia</b>" in plain.get_content()
    assert "12 Alder Row, Wrenfield" in html.get_content()
    assert "12 Alder Row, Wrenfield" in plain.get_content()
    assert 'src="cid:logo"' in html.get_content()
    assert [part["Content-ID"] for part in mail.walk() if part.get_content_maintype() == "image"] == ["<logo>"]
    [calendar] = mail.iter_attachments()
    (event,) = icalendar.Calendar.from_ical(calendar.get_payload(decode=True)).walk("VEVENT")
    assert event.start.astimezone(UTC) == visit.starts_at.astimezone(UTC)
    assert event["UID"] == f"visit-{visit.pk}@lashes.example"
    assert mail["Auto-Submitted"] == "auto-generated"
    assert mail["List-Unsubscribe-Post"] == "List-Unsubscribe=One-Click"


def test_a_letter_that_cannot_be_laid_out_holds_up_no_other(cast: Cast, monkeypatch: pytest.MonkeyPatch) -> None:
    one, other = care_due(cast, "Mia"), care_due(cast, "Bea")
    usual = letterhead.lay_out

    def torn(words: Words, *rest: Any, **more: Any) -> letterhead.Letter:
        if "Mia" in words.body:
            raise ValueError("torn")
        return usual(words, *rest, **more)

    monkeypatch.setattr(letterhead, "lay_out", torn)
    tasks.send_due(now=cast.at(8.5))

    one.refresh_from_db()
    other.refresh_from_db()
    assert (one.state, one.tries) == ("planned", 1)
    assert other.state == "handed_over"


def test_aftercare_carries_what_was_added_to_its_caution_set_apart(cast: Cast) -> None:
    caution = Slot("caution", "", 0, "email", "en")
    versions.save(
        cast.studio, caution, Words("", ""), by=cast.olga, now=cast.now, seen=0, addition="The clinic: 12 Alder Row."
    )
    care_due(cast, "Mia")

    tasks.send_due(now=cast.at(8.5))

    [sent] = memory.taken
    apart = sent.html.split('<div class="caution">')[1].split("</div>")[0]
    assert "The clinic: 12 Alder Row." in apart
    assert "911" in apart
    assert not sent.enclosures
