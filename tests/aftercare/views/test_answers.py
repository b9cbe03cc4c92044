"""A person answers: what she sees of both sides, what goes, and what is not sent."""

from __future__ import annotations

import html
import re
from datetime import datetime, timedelta
from typing import Any

import pytest
from django.test import Client as Browser

from aftercare import answers, facts, receiving, tasks, triage
from aftercare.core import paging, say
from aftercare.lines import lines_of
from aftercare.models import Flag, Message, Stop
from aftercare.transports import memory
from studio import clock
from studio.models import Client, Studio
from tests.cast import Cast
from tests.letters import MEMORY
from tests.pages import SignIn, words
from tests.people import NOW


def wrote(cast: Cast, text: str, channel: str = "sms", **fields: Any) -> tuple[Client, Flag]:
    """Mia, whose artist is Ada, writes at six in the morning; it is read."""
    mia = cast.client("Mia", "Quist", email="mia@mail.example", **fields)
    cast.done(mia, cast.at(9, -2))
    line = lines_of(cast.studio)[channel]
    address = mia.mobile if channel == "sms" else mia.email
    reply = receiving.receive(
        line, address, text, received_at=cast.at(6), provider_ref="<hers.1@mail.example>" if channel == "email" else ""
    )
    triage.read(reply.pk, cast.at(6))
    reply.refresh_from_db()
    assert reply.flag is not None
    Message.objects.all().update(state="withdrawn")
    return mia, reply.flag


def form(page: str, text: str, channel: str = "sms", **more: str) -> dict[str, str]:
    """The form as it stands on the page, filled in."""
    token = re.search(r'name="token" value="([^"]+)"', page)
    confirmed = re.search(r'name="confirmed" value="([^"]+)"', page)
    assert token is not None
    found = {"token": token[1], "text": text, "channel": channel, "send": "1", **more}
    return found | ({"confirmed": confirmed[1]} if confirmed else {})


def own() -> list[Message]:
    return list(Message.objects.filter(occasion="answer", kind__startswith="own").order_by("pk"))


def test_it_goes_as_written_to_where_she_wrote_from_and_whoever_answers_has_the_matter(cast: Cast, as_: SignIn) -> None:
    mia, flag = wrote(cast, "can I wear mascara?")
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"
    page = browser.get(path).content.decode()
    assert "can I wear mascara?" in page

    said = words(browser.post(path, form(page, "Please leave mascara off the lashes."), follow=True))

    assert "It goes at once. The matter stays on the list until you close it." in said
    [message] = own()
    assert message.own_words == "Wrenfield Lash Room: Please leave mascara off the lashes."
    assert (message.address, message.channel, message.client, message.flag) == (mia.mobile, "sms", mia, flag)
    assert (message.written_by, message.kind) == (cast.ada, "own")
    flag.refresh_from_db()
    assert (flag.state, flag.taken_by) == ("taken", cast.ada)


def test_a_picture_in_the_studio_s_name_makes_no_text_dear(cast: Cast) -> None:
    cast.studio.name = "Wrenfield \u2728 Lash Room"
    road = answers.Road("sms", "+12125550101", None)

    said = [answers.look(text, road, cast.studio, NOW).text for text in ("Leave it off.", "Wrenfield Lash Room: off.")]

    assert said == ["Wrenfield Lash Room: Leave it off.", "Wrenfield Lash Room: off."]


def test_her_line_shows_the_answer_before_it_has_left(cast: Cast, as_: SignIn) -> None:
    _mia, flag = wrote(cast, "can I wear mascara?")
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"
    page = browser.get(path).content.decode()

    said = words(browser.post(path, form(page, "Please leave mascara off the lashes."), follow=True))

    assert "Your answer is on its way: “Wrenfield Lash Room: Please leave mascara off the lashes.”" in said
    assert "Nothing has been answered yet." not in said


def test_it_leaves_in_the_next_round_at_any_hour(cast: Cast, as_: SignIn) -> None:
    _mia, flag = wrote(cast, "can I wear mascara?")
    Studio.objects.update(live_since=cast.at(0, -9))
    cast.studio.lines.update(transport=MEMORY)
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"
    browser.post(path, form(browser.get(path).content.decode(), "Leave it off. Wrenfield Lash Room"))
    before = len(memory.taken)

    tasks.send_due(studio_id=cast.studio.pk, now=cast.at(23))

    texts = [one.text for one in memory.taken[before:]]
    assert "Leave it off. Wrenfield Lash Room" in texts  # her studio's name is in it: none is put in front


def test_the_same_form_sent_twice_is_one_message(cast: Cast, as_: SignIn) -> None:
    _mia, flag = wrote(cast, "can I wear mascara?")
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"
    sent = form(browser.get(path).content.decode(), "Please leave it off.")

    browser.post(path, sent)
    browser.post(path, sent)

    assert len(own()) == 1


def test_what_is_never_said_is_pointed_out_and_goes_only_if_she_means_it(cast: Cast, as_: SignIn) -> None:
    _mia, flag = wrote(cast, "my lid is itchy")
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"
    bad = "That is normal, nothing to worry about. Take an antihistamine."

    warned = browser.post(path, form(browser.get(path).content.decode(), bad))
    assert "Never said to a client:" in words(warned)
    assert "“antihistamine”" in words(warned)
    assert own() == []

    other = browser.post(path, form(warned.content.decode(), f"{bad} All is fine."))
    assert "Never said to a client:" in words(other)  # other words are warned of anew
    assert own() == []

    browser.post(path, form(other.content.decode(), f"{bad} All is fine."))
    assert [message.kind for message in own()] == ["own_warned"]  # that she was told is kept


def test_it_is_shown_first_with_what_it_costs(cast: Cast, as_: SignIn) -> None:
    _mia, flag = wrote(cast, "can I wear mascara?")
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"
    asked = form(browser.get(path).content.decode(), "Please — leave it off.")
    del asked["send"]

    page = words(browser.post(path, {**asked, "look": "1"}))

    assert "As it arrives Wrenfield Lash Room: Please — leave it off." in page
    assert "Charged as 1 text , 43 letters." in page
    assert "It costs more" not in page
    assert own() == []
    longer = words(browser.post(path, {**asked, "text": "Please — leave it off. " * 3, "look": "1"}))
    assert "Charged as 2 texts , 89 letters. It costs more because of: “—”" in longer

    cheaper = browser.post(path, {**asked, "cheaper": "1"})
    assert "As it arrives Wrenfield Lash Room: Please - leave it off." in words(cheaper)
    assert "Please - leave it off.</textarea>" in cheaper.content.decode()


def test_after_a_stop_no_text_goes_and_e_mail_is_offered(cast: Cast, as_: SignIn) -> None:
    mia, flag = wrote(cast, "my lid is itchy, can I wear mascara?")
    Stop.objects.create(line=lines_of(cast.studio)["sms"], address=mia.mobile, at=cast.at(6))
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"
    page = browser.get(path).content.decode()
    assert "She wants no texts: call her." in page

    browser.post(path, form(page, "Please call us.", channel="sms"))
    assert own() == []
    browser.post(path, form(page, "Please call us.", channel="email"))
    assert [message.address for message in own()] == ["mia@mail.example"]


def test_a_wording_of_the_owners_is_where_she_starts_in_her_clients_language(cast: Cast, as_: SignIn) -> None:
    _mia, flag = wrote(cast, "¿puedo usar rímel?", language="es")

    page = words(as_(cast.ada).post(f"/flags/{flag.pk}/answer", {"from": "ask_more"}))

    assert "gracias por contarnos. Que ojo es, desde cuando" in page
    assert "112" in page or "911" in page  # the caution is in it


@pytest.mark.parametrize("kind", ["nothing", "stopped", "../care"])
def test_nothing_else_is_started_from(cast: Cast, as_: SignIn, kind: str) -> None:
    _mia, flag = wrote(cast, "can I wear mascara?")

    assert "opted out" not in words(as_(cast.ada).post(f"/flags/{flag.pk}/answer", {"from": kind}))


def test_a_wording_is_put_below_what_was_typed_for_the_way_that_was_chosen(cast: Cast, as_: SignIn) -> None:
    _mia, flag = wrote(cast, "can I wear mascara?")
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"

    once = browser.post(path, {"from": "will_call", "text": "Dear Mia, sorry to hear it.", "channel": "email"})
    [text] = re.findall(r"<textarea[^>]*>\n?(.*?)</textarea>", once.content.decode(), re.DOTALL)
    assert text.startswith("Dear Mia, sorry to hear it.\n\nThank you for writing. One of us calls you by ")
    assert re.search(r'value="email"[^>]*checked', once.content.decode())

    again = browser.post(path, {"from": "will_call", "text": html.unescape(text), "channel": "email"})
    assert again.content.decode().count("Thank you for writing. One of us") == 1  # the second tap adds nothing
    assert own() == []


def started(browser: Browser, path: str) -> str:
    page = browser.post(path, {"from": "will_call", "channel": "sms"}).content.decode()
    text = re.search(r"<textarea[^>]*>\n?(.*?)</textarea>", page, re.DOTALL)
    assert text is not None
    return html.unescape(text[1])


def test_a_promised_call_lies_ahead_and_is_kept_once_she_is_told(cast: Cast, as_: SignIn) -> None:
    _mia, flag = wrote(cast, "my lid is itchy")
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"
    ahead, past = cast.now + timedelta(days=1), cast.now - timedelta(hours=3)
    Flag.objects.update(call_by=ahead)
    assert f"calls you by {said(cast, ahead)}." in started(browser, path)  # what she was told stands
    Flag.objects.update(call_by=past)

    text = started(browser, path)

    anew = paging.call_by(clock.now(), facts.rules_of(cast.studio), cast.studio.zone)
    assert f"calls you by {said(cast, anew)}." in text
    flag.refresh_from_db()
    assert flag.call_by == past  # nobody told her yet
    browser.post(path, form(browser.get(path).content.decode(), text))
    flag.refresh_from_db()
    assert flag.call_by is not None
    assert said(cast, flag.call_by) == said(cast, anew)


def said(cast: Cast, at: datetime) -> str:
    return say.moment(at.astimezone(cast.studio.zone), "en", "US")


def test_a_promised_hour_that_is_past_is_warned_of(cast: Cast, as_: SignIn) -> None:
    _mia, flag = wrote(cast, "my lid is itchy")
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"
    late = f"We call you by {said(cast, cast.now - timedelta(hours=2))}."

    warned = browser.post(path, form(browser.get(path).content.decode(), late))

    assert "It promises an hour that is past:" in words(warned)
    assert own() == []
    browser.post(path, form(warned.content.decode(), late))
    assert [message.kind for message in own()] == ["own_warned"]


def test_the_way_it_goes_is_named_also_where_only_one_is_left(cast: Cast, as_: SignIn) -> None:
    mia, flag = wrote(cast, "my lid is itchy")
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"
    both = words(browser.get(path))
    assert f"by text to {mia.mobile}" in both
    assert "by e-mail to mia@mail.example, subject “Your message to Wrenfield Lash Room”" in both
    Stop.objects.create(line=lines_of(cast.studio)["sms"], address=mia.mobile, at=cast.at(6))

    assert "It goes by e-mail to mia@mail.example, subject “Your message to Wrenfield Lash Room”." in words(
        browser.get(path)
    )


def test_an_e_mail_stands_below_what_it_answers_and_says_nothing_on_the_outside(cast: Cast, as_: SignIn) -> None:
    """RFC 5322, 3.6.4: In-Reply-To and References name the message that is answered."""
    _mia, flag = wrote(cast, "can I wear mascara?", channel="email")
    Studio.objects.update(live_since=cast.at(0, -9))
    cast.studio.lines.update(transport=MEMORY)
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"
    browser.post(path, form(browser.get(path).content.decode(), "Please leave it off.", channel="email"))
    before = len(memory.taken)

    tasks.send_due(studio_id=cast.studio.pk, now=cast.at(23))

    [letter] = [one for one in memory.taken[before:] if one.text == "Please leave it off."]
    assert letter.subject == "Your message to Wrenfield Lash Room"
    assert letter.headers["In-Reply-To"] == letter.headers["References"] == "<hers.1@mail.example>"
    assert "Auto-Submitted" not in letter.headers


def test_the_conversation_has_both_sides_and_a_box(cast: Cast, as_: SignIn) -> None:
    mia, flag = wrote(cast, "can I wear mascara?")
    browser, path = as_(cast.ada), f"/clients/{mia.pk}/conversation"
    page = browser.get(path).content.decode()
    assert "She wrote" in page
    assert "can I wear mascara?" in page

    browser.post(path, form(page, "Please leave it off."))

    assert [message.flag for message in own()] == [flag]  # it answers what is open
    assert f'href="{path}#answer"' in browser.get(f"/clients/{mia.pk}").content.decode()


def test_from_an_unknown_number_the_owner_answers(cast: Cast, as_: SignIn) -> None:
    reply = receiving.receive(
        lines_of(cast.studio)["sms"], "+12125550177", "can I wear mascara?", received_at=cast.at(6)
    )
    triage.read(reply.pk, cast.at(6))
    flag = Flag.objects.get()
    browser, path = as_(cast.olga), f"/flags/{flag.pk}/answer"

    browser.post(path, form(browser.get(path).content.decode(), "Who is this, please?"))

    assert [(message.address, message.client) for message in own()] == [("+12125550177", None)]
    assert as_(cast.ada).get(path).status_code == 404


def test_it_is_nobody_elses_to_answer(cast: Cast, as_: SignIn) -> None:
    mia, flag = wrote(cast, "can I wear mascara?")

    assert as_(cast.noor).get(f"/flags/{flag.pk}/answer").status_code == 404
    assert as_(cast.noor).get(f"/clients/{mia.pk}/conversation").status_code == 403
    assert as_(cast.dee).get(f"/flags/{flag.pk}/answer").status_code == 403


@pytest.mark.parametrize(("text", "said"), [("", "Write what is to be sent."), ("a" * 1600, "too long for a message")])
def test_no_words_and_too_many_are_refused(cast: Cast, as_: SignIn, text: str, said: str) -> None:
    _mia, flag = wrote(cast, "can I wear mascara?")
    browser, path = as_(cast.ada), f"/flags/{flag.pk}/answer"

    assert said in words(browser.post(path, form(browser.get(path).content.decode(), text)))
    assert own() == []
