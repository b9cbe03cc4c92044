"""The questions before a visit as a client sees them: what is kept, and a sign that comes in like a reply."""

from __future__ import annotations

import re
from typing import Any

import pytest
from django.test import Client as Browser

from aftercare import consulting, links
from aftercare.core.consultation import NO, NOW, QUESTIONS, YES, Answer
from aftercare.links import Purpose
from aftercare.models import Consultation, Flag, Message, Reply
from studio.models import Client, Service, Visit
from tests.cast import Cast
from tests.pages import words


@pytest.fixture
def visit(cast: Cast) -> Visit:
    her = cast.client("Mia", "Okafor", email="mia@mail.example")
    return cast.visit(her, cast.at(10, 3))


def link(visit: Visit) -> str:
    return f"/c/{links.token(Purpose.CONSULTATION, visit)}"


def filled(page: Any = None, **more: Any) -> dict[str, Any]:
    """Return the form as a browser would send it, no to every question."""
    once = re.search(r'name="once" value="(\w+)"', page.content.decode()) if page else None
    answers = {question.key: NO for question in QUESTIONS}
    return {"once": once[1] if once else "a" * 24, "all": "1", "agreed": YES, "under_18": NO, **answers, **more}


def test_she_answers_and_her_card_and_the_artist_have_it(visit: Visit) -> None:
    browser = Browser()
    page = browser.get(link(visit))
    done = browser.post(link(visit), filled(page, lenses=YES, style="natural", signed_name="Mia Okafor", read_it="on"))

    row = Consultation.objects.get()
    assert (done.status_code, row.agreed, row.style, row.client) == (200, True, "natural", visit.client)
    assert "has your answers" in words(done)
    assert "The waiver is signed with the name Mia Okafor" in words(done)
    visit.client.refresh_from_db()
    assert visit.client.wears_lenses is True
    assert visit.client.waiver_signed_on == row.signed_on
    assert visit.client.planned_revision == visit.client.revision  # the plan has followed


@pytest.mark.parametrize("method", ["get", "head"])
def test_whoever_only_looks_changes_nothing(visit: Visit, method: str) -> None:
    before = Client.objects.values().get(pk=visit.client_id)

    response = getattr(Browser(), method)(link(visit))

    assert response.status_code == 200
    assert not Consultation.objects.exists()
    assert Client.objects.values().get(pk=visit.client_id) == before
    assert not response.cookies


def test_no_page_of_hers_is_kept_named_or_found_by_others(visit: Visit) -> None:
    for response in (Browser().get(link(visit)), Browser().post(link(visit), {}), Browser().get("/c/nothing")):
        assert "no-store" in response.headers["Cache-Control"]
        assert response.headers["Referrer-Policy"] == "no-referrer"
        assert "noindex" in response.headers["X-Robots-Tag"]
        assert "default-src 'none'" in response.headers["Content-Security-Policy"]


def test_nothing_is_chosen_for_her(visit: Visit) -> None:
    assert b"checked" not in Browser().get(link(visit)).content


def test_what_she_typed_stands_when_something_is_to_be_mended(visit: Visit) -> None:
    response = Browser().post(link(visit), filled(latex="", tape=YES, tape_words="blue tape", style="cat eye"))

    assert not Consultation.objects.exists()
    assert "Choose yes, no or I don’t know." in words(response)
    page = response.content.decode()
    assert 'value="blue tape"' in page
    assert 'value="cat eye"' in page
    assert re.search(r'name="tape" value="yes"[^>]*checked', page)


def test_without_yes_or_no_to_keeping_nothing_is_sent(visit: Visit) -> None:
    response = Browser().post(link(visit), filled(agreed=""))

    assert "without your yes, nothing about your health is kept" in words(response)
    assert not Consultation.objects.exists()


def test_who_lets_nothing_be_kept_is_told_to_talk_with_the_studio(visit: Visit) -> None:
    done = Browser().post(link(visit), filled(agreed=NO, reactions=YES, reactions_words="lids swelled in 2019"))

    row = Consultation.objects.get()
    assert (row.agreed, row.answers) == (False, {})
    assert "Nothing about your health was kept" in words(done)
    assert "earlier reactions" in words(done)  # ask your doctor: said, not kept
    for table in (Consultation, Client, Reply):
        assert "2019" not in str(list(table.objects.values()))


def test_who_let_it_be_kept_before_and_not_now_is_told_that_the_earlier_answers_are_still_there(visit: Visit) -> None:
    browser = Browser()
    browser.post(link(visit), filled())

    done = browser.post(link(visit), filled(once="b" * 24, agreed=NO))

    assert "What you answered at another time is still kept" in words(done)
    assert b'name="withdraw"' in done.content
    assert Consultation.objects.earliest("pk").answers


def test_a_sign_of_now_comes_in_like_a_text_and_she_reads_what_to_do_at_once(visit: Visit) -> None:
    more = {"eye_now": YES, "signs": ["redness", "pain"], "eye_now_words": "since Monday"}
    done = Browser().post(link(visit), filled(**more))

    reply, flag = Reply.objects.get(), Flag.objects.get()
    assert (reply.text, reply.ticked["ticks"]) == ("since Monday", ["pain", "red"])
    assert (flag.urgency, list(flag.clients.all()), reply.flag) == ("same_day", [visit.client], flag)
    assert flag.call_by is not None
    answer = Message.objects.get(occasion="answer")
    assert (answer.kind, answer.address) == ("seen_today", visit.client.mobile)
    assert "see a doctor or an eye doctor today" in words(done)
    assert "Please do not come to your visit before" in words(done)


def test_no_word_of_hers_takes_back_what_she_ticked(visit: Visit) -> None:
    Browser().post(link(visit), filled(eye_now=YES, signs=["itching"], eye_now_words="it's gone now, all good"))

    assert Flag.objects.get().urgency == "same_day"
    assert Reply.objects.get().text == "it's gone now, all good"


def test_an_emergency_is_answered_at_once_though_something_else_is_to_be_mended(visit: Visit) -> None:
    page = Browser().post(link(visit), filled(eye_now=YES, signs=["vision"], latex=""))

    assert "emergency eye care" in words(page)
    assert "your answers are not sent yet" in words(page)
    assert not Reply.objects.exists()  # she is asked to send it again


@pytest.mark.parametrize("status", [Visit.Status.CANCELLED, Visit.Status.DONE, Visit.Status.MISSED])
def test_a_sign_that_she_sends_when_nothing_is_asked_any_more_is_heard_and_answered(visit: Visit, status: str) -> None:
    Visit.objects.update(status=status)

    page = Browser().post(link(visit), filled(eye_now=YES, signs=["vision"], eye_now_words="since this morning"))

    assert "emergency eye care" in words(page)
    assert Flag.objects.get().urgency == "emergency"
    assert Reply.objects.get().text == "since this morning"
    assert not Consultation.objects.exists()


def test_a_sign_sent_after_very_many_forms_is_answered_all_the_same(
    visit: Visit, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(consulting, "MOST_A_VISIT", 0)

    page = Browser().post(link(visit), filled(eye_now=YES, signs=["vision"]))

    assert "emergency eye care" in words(page)
    assert Flag.objects.get().urgency == "emergency"
    assert not Consultation.objects.exists()


def test_whoever_reads_what_to_do_with_an_eye_can_call_at_one_touch(visit: Visit) -> None:
    asked = Browser().get(link(visit))
    done = Browser().post(link(visit), filled())
    Visit.objects.filter(pk=visit.pk).update(status=Visit.Status.CANCELLED)
    closed = Browser().get(link(visit))

    for page in (asked, done, closed):
        assert "An eye is not well now?" in words(page)
        assert 'href="tel:911"' in page.text
        assert f'href="tel:{visit.studio.phone}"' in page.text


def test_an_emergency_of_now_is_answered_by_its_kind(visit: Visit) -> None:
    done = Browser().post(link(visit), filled(eye_now=YES, signs=["vision"]))

    assert Flag.objects.get().urgency == "emergency"
    assert "emergency eye care" in words(done)
    assert "Do not wait for us." in words(done)
    assert 'class="main" href="tel:911"' in done.text


def test_a_sign_by_her_own_page_is_hers_though_another_has_her_number(cast: Cast, visit: Visit) -> None:
    cast.client("Lena", mobile=visit.client.mobile)

    Browser().post(link(visit), filled(eye_infection=YES))

    assert list(Flag.objects.get().clients.all()) == [visit.client]
    assert Reply.objects.get().client == visit.client


def test_a_sign_of_someone_without_a_number_reaches_her_artist_all_the_same(cast: Cast) -> None:
    visit = cast.visit(cast.client("Nell", mobile="", texts=False), cast.at(10, 3))

    done = Browser().post(link(visit), filled(eye_now=YES, signs=["swelling"]))

    flag = Flag.objects.get()
    assert (flag.urgency, list(flag.clients.all())) == ("same_day", [visit.client])
    assert not Message.objects.filter(occasion="answer").exists()  # there is nowhere to send it
    assert "A person will call you by" in words(done)


def test_a_sign_that_may_not_be_kept_tells_nobody_says_so_and_still_says_what_to_do(visit: Visit) -> None:
    done = Browser().post(link(visit), filled(agreed=NO, eye_now=YES, signs=["redness", "pain"]))

    assert not Reply.objects.exists()
    assert not Flag.objects.exists()
    assert "was told about your eyes" in words(done)
    assert "See a doctor or an eye doctor today" in words(done)
    assert "will call you" not in words(done)  # nobody knows that she should be
    assert "+12125550199" in words(done)


def test_what_once_was_is_no_sign_of_now(visit: Visit) -> None:
    Browser().post(link(visit), filled(reactions=YES, reactions_words="my eyes were swollen shut for two days in 2019"))

    assert not Reply.objects.exists()
    assert Consultation.objects.get().to_look_at == 1


def test_words_that_read_as_if_an_eye_were_not_well_are_asked_about_and_she_says_which_it_is(visit: Visit) -> None:
    browser, form = Browser(), filled(more="my left eye is red and hurts")

    asked = browser.post(link(visit), form)
    assert "You wrote “my left eye is red and hurts”. If that is so today, choose yes" in words(asked)
    assert not Consultation.objects.exists()

    browser.post(link(visit), {**form, "not_now": "on"})
    assert not Reply.objects.exists()
    assert Consultation.objects.get().to_look_at == 1  # her artist reads it all the same

    browser.post(link(visit), {**form, "once": "b" * 24, "eye_now": YES})
    assert "my left eye is red and hurts" in Reply.objects.get().text


def test_a_page_sent_twice_is_one_and_says_the_same(visit: Visit) -> None:
    browser, form = Browser(), filled(eye_now=YES, signs=["itching"])

    first, second = browser.post(link(visit), form), browser.post(link(visit), form)

    assert words(first) == words(second)
    assert (Consultation.objects.count(), Reply.objects.count(), Flag.objects.count()) == (1, 1, 1)


def test_later_she_sees_what_she_said_and_only_says_how_her_eyes_are(cast: Cast, visit: Visit) -> None:
    browser = Browser()
    browser.post(link(visit), filled(tape=YES, tape_words="blue tape", eye_infection=NO))
    next_time = cast.visit(visit.client, cast.at(10, 20))

    page = browser.get(link(next_time))
    assert "What you told us last time" in words(page)
    assert "“blue tape”" in words(page)
    assert b"checked" not in page.content
    assert b'name="tape"' not in page.content
    form = {key: value for key, value in filled(page).items() if key in ("once", "agreed", "eye_now", "eye_infection")}
    browser.post(link(next_time), form)

    row = Consultation.objects.latest("pk")
    assert (row.visit, row.nothing_changed, row.changes) == (next_time, True, 0)
    assert consulting.answers_of(row)["tape"] == Answer(YES, "blue tape")


def test_later_what_has_changed_is_changed_in_what_she_said_before(cast: Cast, visit: Visit) -> None:
    browser = Browser()
    browser.post(link(visit), filled(tape=YES, tape_words="blue tape", eye_now=YES))
    next_time = cast.visit(visit.client, cast.at(10, 20))

    page = browser.get(f"{link(next_time)}?change=1")
    content = page.content.decode()
    assert re.search(r'name="tape" value="yes"[^>]*checked', content)
    assert not re.search(rf'name="({NOW}|agreed)" value="\w+"[^>]*checked', content)
    browser.post(link(next_time), filled(page, tape=YES, tape_words="blue tape", latex=YES))

    assert Consultation.objects.latest("pk").changes == 1


def test_a_question_that_she_was_never_asked_is_asked_though_nothing_has_changed(cast: Cast, visit: Visit) -> None:
    consulting.save_form(studio=cast.studio, off=["serum"], waiver={}, by=cast.olga, now=cast.now, seen=0)
    browser = Browser()
    browser.post(link(visit), filled())
    assert "serum" not in Consultation.objects.get().answers
    consulting.save_form(studio=cast.studio, off=[], waiver={}, by=cast.olga, now=cast.now, seen=1)

    assert b'name="serum"' in browser.get(link(visit)).content
    assert b'name="latex"' not in browser.get(link(visit)).content


def test_under_18_a_guardian_is_named_and_reached(visit: Visit) -> None:
    browser = Browser()

    refused = browser.post(link(visit), filled(under_18=YES, guardian_mobile="12"))
    assert "Under 18 we need to reach a parent or guardian" in words(refused)
    assert "is not a telephone number" in words(refused)
    assert not Consultation.objects.exists()

    guardian = {"guardian_name": "Paloma Weiss", "guardian_mobile": "(212) 555-0119", "guardian_agreed": "on"}
    browser.post(link(visit), filled(under_18=YES, **guardian))
    visit.client.refresh_from_db()
    assert (visit.client.under_18, visit.client.guardian_mobile) == (True, "+12125550119")
    assert visit.client.guardian_agreed_on is not None


@pytest.mark.parametrize("half", [{"signed_name": "Mia"}, {"read_it": "on"}])
def test_half_a_signature_is_none(visit: Visit, half: dict[str, str]) -> None:
    response = Browser().post(link(visit), filled(**half))

    assert "To sign, tick that you have read it and write your name" in words(response)
    assert not Consultation.objects.exists()


def test_she_takes_her_yes_back_on_the_same_page(visit: Visit) -> None:
    browser = Browser()
    browser.post(link(visit), filled(tape=YES, tape_words="blue tape"))
    assert b'name="withdraw"' in browser.get(link(visit)).content

    done = browser.post(link(visit), {"withdraw": "1"})

    row = Consultation.objects.get()
    assert (row.answers, row.withdrawn_at is not None) == ({}, True)
    assert "no longer has your answers" in words(done)
    assert "blue tape" not in words(browser.get(link(visit)))
    assert b'name="withdraw"' not in browser.get(link(visit)).content


@pytest.mark.parametrize("status", [Visit.Status.CANCELLED, Visit.Status.DONE, Visit.Status.MISSED])
def test_a_visit_that_is_over_or_cancelled_has_no_form_and_takes_none(visit: Visit, status: str) -> None:
    browser = Browser()
    browser.post(link(visit), filled())
    Visit.objects.update(status=status)

    page = browser.get(link(visit))
    assert b'name="once"' not in page.content
    assert ("was cancelled" in words(page)) is (status == Visit.Status.CANCELLED)
    assert b'name="withdraw"' in page.content  # what she agreed to she can take back at any time
    browser.post(link(visit), filled(once="b" * 24))
    assert Consultation.objects.count() == 1


def test_a_visit_that_has_begun_takes_nothing_more(cast: Cast, visit: Visit) -> None:
    Visit.objects.update(starts_at=cast.at(6))

    assert "nothing to answer" in words(Browser().post(link(visit), filled()))
    assert not Consultation.objects.exists()


@pytest.mark.parametrize("method", ["get", "post"])
def test_a_link_that_is_revoked_or_wrong_says_nothing_of_her_or_the_studio(
    cast: Cast, visit: Visit, method: str
) -> None:
    old = link(visit)
    other_purpose = f"/c/{links.token(Purpose.VISIT, visit)}"
    links.revoke(visit.client, why="asked", now=cast.now)

    for address in (old, other_purpose, old[:-1], "/c/x"):
        response = getattr(Browser(), method)(address)
        assert response.status_code == 404
        assert cast.studio.name not in response.content.decode()
        assert "Mia" not in response.content.decode()
        assert "call your local emergency number" in words(response)
    assert not Consultation.objects.exists()


def test_what_is_typed_is_shown_as_text_wherever_it_is_shown(visit: Visit, as_: Any, cast: Cast) -> None:
    attack = "<script>alert(1)</script>"
    Client.objects.filter(pk=visit.client_id).update(first_name=attack)
    browser = Browser()
    form = filled(tape=YES, tape_words=attack, style=attack, more=attack, signed_name=attack, read_it="on")
    pages = [
        browser.post(link(visit), {**form, "latex": ""}),
        browser.post(link(visit), form),
        browser.get(link(visit)),
        browser.get(f"{link(visit)}?change=1&language={attack}"),
        as_(cast.ada).get(f"/clients/{visit.client_id}/answers"),
        as_(cast.ada).get(f"/clients/{visit.client_id}"),
    ]

    for page in pages:
        assert page.status_code == 200
        assert attack not in page.content.decode()
    assert "&lt;script&gt;" in pages[4].content.decode()


@pytest.mark.parametrize("field", ["style", "more", "tape_words", "signed_name"])
def test_endless_words_are_refused(visit: Visit, field: str) -> None:
    Browser().post(link(visit), filled(**{"read_it": "on", "signed_name": "Mia", field: "x" * 3000}))

    assert not Consultation.objects.exists()


def test_it_speaks_her_language_and_switches(visit: Visit) -> None:
    Client.objects.update(language="es")
    browser = Browser()

    assert b'<html lang="es">' in browser.get(link(visit)).content
    assert "Los servicios de pestañas" in words(browser.get(link(visit)))  # the waiver
    assert b'<html lang="en">' in browser.get(f"{link(visit)}?language=en").content
    browser.post(link(visit), filled(language="es", eye_now=YES, signs=["redness"]))
    assert Consultation.objects.get().language == "es"
    assert Reply.objects.get().ticked["language"] == "es"


def test_the_page_is_small_on_a_phone(visit: Visit, settings: Any) -> None:
    page = len(Browser().get(link(visit)).content)
    look = (settings.BASE_DIR / "studio" / "static" / "look.css").stat().st_size

    print(f"first load: {page} bytes of page, {look} of style")
    assert page + look < 60_000  # and nothing else is loaded but an icon


def test_it_is_used_without_a_cookie_a_sign_in_or_an_origin(visit: Visit) -> None:
    # Fetch Standard, "append a request Origin header": under no-referrer a form is posted with Origin: null.
    response = Browser(enforce_csrf_checks=True).post(link(visit), filled(), headers={"Origin": "null"})

    assert response.status_code == 200
    assert Consultation.objects.count() == 1


def test_other_methods_are_refused(visit: Visit) -> None:
    assert Browser().delete(link(visit)).status_code == 405


def test_her_page_about_a_visit_leads_to_questions_that_show_nothing_of_what_she_answered_before(
    visit: Visit, cast: Cast
) -> None:
    """She may forward it. Only the link in her own message shows what is kept."""
    Browser().post(link(visit), filled(latex=YES, latex_words="hives at the dentist", more="on chemo", style="foxy"))
    later = cast.visit(visit.client, cast.at(10, 30), Service.FULL_SET)
    page = Browser().get(f"/v/{links.token(Purpose.VISIT, later)}").content.decode()
    anew = re.search(r"/q/\w+", page)
    assert anew is not None
    assert "/c/" not in page

    told = ("hives", "on chemo", "foxy", "Delete my health answers")
    for address in (anew[0], f"{anew[0]}?change=1", f"{anew[0]}?language=es&change=1"):
        shown = Browser().get(address).content.decode()
        assert not [word for word in told if word in shown]
        assert not re.search(r'name="latex"[^>]*checked', shown)
    assert all(word in Browser().get(link(later)).content.decode() for word in told[:2])
    unseen, seen = words(Browser().get(anew[0])), words(Browser().get(link(later)))
    assert "What you answered is not shown here" in unseen  # she is not asked whether what she cannot see is so
    assert "Is all of this still so?" not in unseen
    assert "Is all of this still so?" in seen
    assert "is not shown here" not in seen

    Browser().post(anew[0], {"withdraw": "1"})
    assert Consultation.objects.get().is_kept
    short = {"once": "b" * 24, "agreed": YES, **{question.key: NO for question in QUESTIONS if question.now}}
    done = words(Browser().post(anew[0], short))
    assert "has your answers" in done
    assert not [word for word in (*told, "Latex", "Chemotherapy") if word in done]
    newest = Consultation.objects.latest("pk")
    assert (newest.nothing_changed, newest.answers["latex"]["said"]) == (True, YES)  # that nothing has changed is heard
