"""The owner's wordings on their pages."""

from __future__ import annotations

import html
import re

import pytest
from django.test import Client as Browser

from aftercare import letterhead, tasks, versions
from aftercare.lines import lines_of
from aftercare.models import Message, Wording
from aftercare.versions import Slot
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
        (GOOD + " {% if first %}", "This {% if %} is never closed."),
        ("", "The text is empty."),
    ],
)
def test_what_is_wrong_is_said_with_its_place_and_changes_nothing(
    body: str, said: str, cast: Cast, as_: SignIn
) -> None:
    page = words(as_(cast.olga).post(CARE, {"body": body, "seen": 0, "save": 1}))

    assert re.search(r"Not saved: \d things? to mend", page)
    assert said in page
    assert "column" not in page
    assert not Wording.objects.exists()


def test_a_refused_save_says_so_on_top_and_leads_to_each_place(cast: Cast, as_: SignIn) -> None:
    """WCAG 2.2, 3.3.1: what is in error is identified and described in text."""
    body = "{{ studio }}: {{ first_nam }}, {{ caution }}\n{{ how_to_stop } {{ artist }}"

    page = as_(cast.olga).post(CARE, {"body": body, "seen": 0, "save": 1}).content.decode()

    top = page[page.index('id="refused"') : page.index('id="editor"')]
    assert 'tabindex="-1" autofocus' in page[: page.index('id="editor"')]
    said = html.unescape(" ".join(re.sub(r"<[^>]+>", "", top).split()))
    assert "Not saved: 2 things to mend" in said
    assert "Did you mean first_name?" in said
    assert (
        "line 2: {{ how_to_stop } {{ artist }} A brace is missing in “{{ how_to_stop }”. Write {{ how_to_stop }}."
        in said
    )
    assert top.count('href="#id_body"') == 2
    assert "<mark>{{ first_nam }}</mark>" in top


def test_what_is_wrong_stands_once_on_the_page(cast: Cast, as_: SignIn) -> None:
    page = words(as_(cast.olga).post(CARE, {"body": GOOD + " {{ horoscope }}", "seen": 0, "save": 1}))

    assert page.count("There is no field") == 1


def test_saving_keeps_the_client_that_it_is_shown_for(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia", "Okafor")
    cast.done(mia, cast.at(10, -1))
    given = {"body": GOOD, "seen": 0, "save": 1, "who": str(mia.pk)}

    page = as_(cast.olga).post(CARE, given, follow=True)

    assert page.redirect_chain[-1][0] == f"{CARE}?who={mia.pk}"
    assert "Shown for Mia Okafor." in words(page)


def test_above_the_text_it_stands_as_one_client_reads_it(cast: Cast, as_: SignIn) -> None:
    cast.done(cast.client("Mia", "Okafor"), cast.at(10, -1))

    page = words(as_(cast.olga).get(CARE))

    assert "As it goes now, to Mia Okafor Ada of Wrenfield Lash Room: Mia, " in page.split("What stands in braces")[0]


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


def test_what_is_fixed_is_shown_and_cannot_be_changed(cast: Cast, as_: SignIn) -> None:
    browser, address = as_(cast.olga), "/wordings/how_to_stop/any/sms/en"

    page = words(browser.get(address))
    assert "It is fixed" in page
    assert "Reply STOP to end texts" in page
    browser.post(address, {"body": "Reply STOP, or do not.", "seen": 0, "save": 1})

    assert not Wording.objects.exists()


CAUTION = "/wordings/caution/any/sms/en"
OURS = Slot("caution", "", 0, "sms", "en").first().body
OTHER = "Burning: rinse 20 min. Doctor today. Call {{ emergency_call }}. Urgent eye care."


def test_a_caution_is_added_to_and_its_own_words_stay(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.olga)

    browser.post(CAUTION, {"added": "Clinic at night: 12 Alder Row.", "body": OURS, "seen": 0, "save": 1})

    row = Wording.objects.get()
    assert (row.body, row.added) == ("", "Clinic at night: 12 Alder Row.")
    assert "Clinic at night" in words(browser.get(CARE))


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ({"body": OTHER}, "Other words for the caution need a clinician"),
        ({"body": OTHER, "confirmed": "on"}, "Name the clinician"),
        ({"body": OTHER, "confirmed": "on", "seen_by": "Dr Adisa"}, "Write the day"),
        ({"body": OTHER, "confirmed": "on", "seen_by": "Dr Adisa", "seen_on": "2199-01-01"}, "still to come"),
        ({"body": OTHER, "seen_by": "Dr Adisa", "seen_on": "2026-01-05"}, "need a clinician"),
        ({"body": OTHER + " All is normal.", "confirmed": "on", "seen_by": "D", "seen_on": "2026-01-05"}, "never said"),
        (
            {"body": "Rinse. See a doctor.", "confirmed": "on", "seen_by": "D", "seen_on": "2026-01-05"},
            "emergency_call",
        ),
        ({"body": OURS, "added": "It will settle."}, "Added: It will settle . “will settle” is never said"),
        ({"body": OURS, "added": "x {{ horoscope }}"}, "Added: x {{ horoscope }} There is no field"),
    ],
)
def test_a_caution_in_other_words_or_with_wrong_ones_is_refused_and_changes_nothing(
    given: dict[str, str], said: str, cast: Cast, as_: SignIn
) -> None:
    page = words(as_(cast.olga).post(CAUTION, {"seen": 0, "save": 1, "added": "", **given}))

    assert said in page
    assert "Not saved" in page
    assert not Wording.objects.exists()


def test_other_words_that_a_clinician_has_seen_are_kept_with_her_name_and_shown_in_the_history(
    cast: Cast, as_: SignIn
) -> None:
    browser = as_(cast.olga)
    given = {"body": OTHER, "added": "", "confirmed": "on", "seen_by": "Dr Adisa", "seen_on": "2026-01-05"}

    browser.post(CAUTION, {**given, "seen": 0, "save": 1})

    assert "Seen by Dr Adisa on 5 Jan" in words(browser.get(CAUTION))
    assert "Doctor today. Call 911" in words(browser.get(CARE))
    browser.post(CAUTION, {"restore": "first"})
    browser.post(CAUTION, {"restore": "1"})
    assert Wording.objects.get(version=3).seen_by == "Dr Adisa"


def test_what_a_changed_caution_leaves_out_is_said(cast: Cast, as_: SignIn) -> None:
    page = words(
        as_(cast.olga).post(CAUTION, {"body": "Call {{ emergency_call }}.", "added": "", "seen": 0, "look": 1})
    )

    assert "The caution no longer says:" in page
    assert "rinsing first" in page


def test_the_preview_as_she_types_is_that_of_the_button_and_saves_nothing(cast: Cast, as_: SignIn) -> None:
    browser, body = as_(cast.olga), GOOD.replace("no rubbing", "no picking")

    part = browser.post(f"{CARE}/preview", {"body": body, "seen": 0}).content.decode()

    assert "Wilhelmina, no picking please." in part
    assert "<html" not in part
    assert browser.get(f"{CARE}/preview").status_code == 405
    assert not Wording.objects.exists()


def test_each_part_of_a_text_ends_with_a_mark(cast: Cast, as_: SignIn) -> None:
    body = GOOD + " x" * 60

    page = words(as_(cast.olga).post(CARE, {"body": body, "seen": 0, "look": 1}))

    assert "end of text 1 of 3" in page
    assert "end of text 3 of 3" in page


def test_it_is_shown_for_a_client_of_hers_with_what_each_field_says_of_her(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia", "Okafor", wears_lenses=True)
    cast.done(mia, cast.at(10, -1))
    browser = as_(cast.olga)
    assert "Mia Okafor" in words(browser.get(CARE))

    page = words(browser.get(f"{CARE}?who={mia.pk}"))

    assert "Mia, " in page.split("As it arrives")[1]
    assert "Here: Mia" in page
    assert "she wears contact lenses. Here: yes" in page


def test_every_wording_can_be_shown_for_a_client_of_hers(morning_cast: Cast, as_: SignIn) -> None:
    browser, bea = as_(morning_cast.olga), morning_cast.clients["Bea"]

    for slot in versions.slots():
        page = words(browser.get(f"/wordings/{slot.path}?who={bea.pk}"))
        assert "It can be shown once it can be read." not in page, slot
        if slot.occasion in ("prepare", "care", "check") and slot.kind != "caution":
            assert "Bea" in page.split("As it arrives")[1] or slot.channel == "email", slot


def test_a_client_is_found_by_name_and_never_one_of_another_studio(cast: Cast, strangers: Cast, as_: SignIn) -> None:
    cast.client("Odile", "Quist")
    stranger = strangers.clients["Mia"]
    browser = as_(cast.olga)

    assert "Odile, no rubbing" in words(browser.post(CARE, {"body": GOOD, "seen": 0, "look": 1, "find": "odi qui"}))
    page = words(browser.post(CARE, {"body": GOOD, "seen": 0, "look": 1, "who": str(stranger.pk)}))
    assert "Wilhelmina, no rubbing" in page


def test_one_click_spells_it_the_cheapest_way_and_saves_nothing(cast: Cast, as_: SignIn) -> None:
    body = GOOD.replace("no rubbing", "“no rubbing” 🌿")

    page = as_(cast.olga).post(CARE, {"body": body, "seen": 0, "cheaper": 1}).content.decode()

    assert "&quot;no rubbing&quot; please." in page.split("</textarea>")[0]
    assert "Charged as 2 texts" in words_of(page)
    assert not Wording.objects.exists()


def words_of(page: str) -> str:
    return " ".join(re.sub(r"<[^>]+>", " ", page).split())


def test_the_cost_of_a_month_like_the_last_is_that_of_what_was_sent(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia")
    for days in (1, 9, 29, 31):
        visit = cast.done(mia, cast.at(10, -days))
        cast.gone(mia, visit, "care", cast.at(12, -days), worded="care/any/sms/en@0")
    browser = as_(cast.olga)
    assert "would be 6 texts." in words(browser.get(CARE))

    browser.post("/settings/lines", {"price": "0.0079", "currency": "usd"})

    page = words(browser.get(CARE))
    assert "Sent 3 times in the last 30 days." in page
    assert "6 texts, $0.0474 at $0.0079 each" in page


def test_a_wording_of_a_service_s_own_costs_what_went_in_its_place_to_these_clients(cast: Cast, as_: SignIn) -> None:
    mia, ines = cast.client("Mia"), cast.client("Ines", language="es")
    for days, her, service, spoken in ((2, mia, "full set", "en"), (3, mia, "fill", "en"), (4, ines, "full set", "es")):
        visit = cast.done(her, cast.at(10, -days), service)
        cast.gone(her, visit, "care", cast.at(12, -days), worded=f"care/any/sms/{spoken}@0")
    browser = as_(cast.olga)

    page = words(browser.get("/wordings/care/full_set.0/sms/en"))

    assert "Sent 0 times in the last 30 days. What it takes the place of went to these clients once." in page
    assert "would be 2 texts." in page
    french = words(browser.get("/wordings/care/any/sms/fr"))
    assert "What it takes the place of" not in french


@pytest.mark.parametrize(("price", "currency"), [("-1", "USD"), ("x", "USD"), ("0.01", ""), ("0.01", "dollar")])
def test_a_price_that_is_none_is_refused(price: str, currency: str, cast: Cast, as_: SignIn) -> None:
    page = words(as_(cast.olga).post("/settings/lines", {"price": price, "currency": currency}))

    assert "Not saved yet. To mend:" in page
    assert lines_of(cast.studio)["sms"].price is None


def test_an_email_is_shown_as_a_letter_in_light_and_dark_and_as_plain_text(cast: Cast, as_: SignIn) -> None:
    response = as_(cast.olga).get("/wordings/care/any/email/en")

    page = response.content.decode()
    letters = [html.unescape(one) for one in re.findall(r'srcdoc="([^"]+)"', page)]
    assert len(letters) == 2
    assert all("Wrenfield Lash Room" in letter and '<div class="caution">' in letter for letter in letters)
    assert page.count('sandbox=""') == 2
    assert all(hash_ in response["Content-Security-Policy"] for hash_ in letterhead.STYLE_HASHES)
    assert "unsafe" not in response["Content-Security-Policy"]


def test_a_name_breaks_out_of_no_preview(cast: Cast, as_: SignIn) -> None:
    hostile = '"><script>alert(1)</script>'
    her = cast.client(hostile, "Quist")
    cast.done(her, cast.at(10, -1))
    browser = as_(cast.olga)

    for path in (CARE, "/wordings/care/any/email/en"):
        page = browser.get(f"{path}?who={her.pk}").content.decode()
        assert "<script>alert" not in page
        for letter in re.findall(r'srcdoc="([^"]+)"', page):
            assert "<script>" not in html.unescape(letter)


def test_a_wording_of_a_service_s_own_is_added_and_ended(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.olga)
    asked = {"occasion": "care", "kind": "fill", "step": "0", "channel": "sms", "language": "en"}

    page = browser.get("/wordings/new", asked, follow=True)

    assert page.redirect_chain[-1][0] == "/wordings/care/fill.0/sms/en"
    assert "you begin with what goes in its place today" in words(page)
    browser.post("/wordings/care/fill.0/sms/en", {"body": GOOD, "seen": 0, "save": 1})
    assert listed(browser, "/wordings/care/fill.0/sms/en").startswith("version 1 ")
    browser.post("/wordings/care/fill.0/sms/en", {"restore": "first"})
    seen = words(browser.get("/wordings/care/fill.0/sms/en"))
    assert "Ended: this gets the words for “any other service”." in seen
    assert "first wording again" not in seen
    assert (
        listed(browser, "/wordings/care/fill.0/sms/en")
        == "gets the words for “any other service” write words of its own"
    )


def test_the_first_version_of_one_s_own_is_compared_with_what_went_before_it(cast: Cast, as_: SignIn) -> None:
    browser, own = as_(cast.olga), "/wordings/care/fill.0/sms/en"
    browser.post(CARE, {"body": GOOD, "seen": 0, "save": 1})
    browser.post(own, {"body": GOOD.replace("rubbing", "picking"), "seen": 0, "save": 1})

    page = browser.get(f"{own}/versions")

    assert "Before it: the words for “any other service”" in words(page)
    assert re.search(r"<del>.*rubbing</del><ins>.*picking</ins>", page.content.decode())


def listed(browser: Browser, address: str, language: str = "en") -> str:
    """What the list says of one wording."""
    page = browser.get(f"/wordings?language={language}").content.decode()
    cells = [cell for cell in re.findall(r"<td>(.*?)</td>", page, re.DOTALL) if f'"{address}"' in cell]
    assert len(cells) == 1
    said = re.sub(r'<span class="unseen">.*?</span>', "", cells[0], flags=re.DOTALL)
    return html.unescape(" ".join(re.sub(r"<[^>]+>", "", said).split()))


def test_where_only_a_translation_is_of_the_service_s_own_the_others_go_as_for_any_other(
    cast: Cast, as_: SignIn
) -> None:
    browser = as_(cast.olga)
    spanish = "{{ studio }}: {{ caution }} {{ how_to_stop }}"
    browser.post("/wordings/care/fill.0/sms/es", {"body": spanish, "seen": 0, "save": 1})

    assert (
        listed(browser, "/wordings/care/fill.0/sms/en")
        == "gets the words for “any other service” write words of its own"
    )
    assert listed(browser, "/wordings/care/fill.0/sms/es", "es").startswith("version 1 ")


def test_a_wording_for_what_is_never_sent_is_refused(cast: Cast, as_: SignIn) -> None:
    asked = {"occasion": "care", "kind": "consultation", "step": "0", "channel": "sms", "language": "en"}

    assert "No such message is ever sent" in words(as_(cast.olga).get("/wordings/new", asked, follow=True))


def test_a_further_language_shows_what_is_missing_and_in_which_it_goes_instead(cast: Cast, as_: SignIn) -> None:
    browser, french = as_(cast.olga), "/wordings/care/any/sms/fr"
    assert "gets the words in English write words of its own" in words(browser.get("/wordings?language=fr"))
    assert "these messages go in English" in words(browser.get(french))

    body = "{{ studio }}: bonjour {{ first_name }} {{ caution }} STOP {{ how_to_stop }}"
    page = browser.post(french, {"body": body, "seen": 0, "save": 1}, follow=True)

    assert "Saved." in words(page)
    assert "cannot be looked for in this language" in words(page)
    assert "French" in words(browser.get("/wordings"))
    assert versions.finder(cast.studio)("care", "fill", 0, "sms", "fr").body == body


def test_only_the_message_asked_for_is_listed(cast: Cast, as_: SignIn) -> None:
    page = as_(cast.olga).get("/wordings?occasion=care").content.decode()

    assert "/wordings/care/any/sms/en" in page
    assert "/wordings/check/any/sms/en" not in page


def test_two_versions_are_compared_word_by_word(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.olga)
    browser.post(CARE, {"body": GOOD, "seen": 0, "save": 1})
    browser.post(CARE, {"body": GOOD.replace("rubbing", "picking"), "seen": 1, "save": 1})

    page = browser.get(f"{CARE}/versions").content.decode()

    assert re.search(r"<del>.*rubbing</del><ins>.*picking</ins>", page)
    assert "These are the same version." in words(browser.get(f"{CARE}/versions?earlier=2&later=2"))


def test_who_received_which_version_is_shown(cast: Cast, as_: SignIn) -> None:
    mia, zoe = cast.client("Mia", "Okafor"), cast.client("Zoe", "Abara")
    browser = as_(cast.olga)
    browser.post(CARE, {"body": GOOD, "seen": 0, "save": 1})
    for her, version in ((mia, 0), (zoe, 1)):
        cast.gone(her, cast.done(her, cast.at(10, -1)), "care", cast.at(12, -1), worded=f"care/any/sms/en@{version}")

    page = words(browser.get(f"{CARE}/versions"))

    received = page.split("Who received which")[1]
    first, second = received.split("First wording")
    assert "Sent to one" in first
    assert "Zoe Abara" in first
    assert "Mia Okafor" in second
    assert as_(cast.ada).get(f"{CARE}/versions").status_code == 403


def test_of_a_caution_nobody_is_told_that_it_was_sent_to_nobody(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.olga)
    browser.post(CAUTION, {"added": "Clinic at night.", "body": OURS, "seen": 0, "save": 1})

    page = words(browser.get(f"{CAUTION}/versions"))

    assert "Sent to" not in page
    assert "It goes within other messages" in page


def test_she_tries_a_draft_out_on_her_own_pretend_phone(cast: Cast, as_: SignIn) -> None:
    cast.olga.mobile = "+12125550147"
    cast.olga.save()
    browser = as_(cast.olga)
    given = {"body": GOOD.replace("no rubbing", "no picking"), "seen": 0, "test": 1, "token": "a1"}

    page = words(browser.post(CARE, given))
    browser.post(CARE, given)
    tasks.send_due()  # the page is later than the cast

    assert "goes to the pretend phone" in page
    [sent] = Message.objects.filter(staff=cast.olga, kind="test")
    assert (sent.state, sent.rehearsed, sent.address) == ("handed_over", True, "+12125550147")
    assert sent.text.startswith("Test: Wrenfield Lash Room: Wilhelmina, no picking please.")
    assert "Test: Wrenfield Lash Room" in words(browser.get("/phone/own"))
    assert "test of a wording" in words(browser.get("/messages?group=gone")).lower()
    assert not Wording.objects.exists()


def test_a_draft_that_is_wrong_is_not_sent_as_a_test(cast: Cast, as_: SignIn) -> None:
    cast.olga.mobile = "+12125550147"
    cast.olga.save()

    page = words(as_(cast.olga).post(CARE, {"body": "All is normal", "seen": 0, "test": 1, "token": "a1"}))

    assert "mend the text first" in page
    assert not Message.objects.exists()


@pytest.mark.parametrize("path", ["", "/preview", "/versions"])
def test_wordings_are_the_owner_s_alone(path: str, cast: Cast, as_: SignIn) -> None:
    for staff in (cast.ada, cast.dee):
        browser = as_(staff)
        send = browser.post if path == "/preview" else browser.get
        assert send(f"{CARE}{path}", {"body": GOOD, "seen": "0"}).status_code == 403


@pytest.mark.parametrize(
    "path", ["/wordings/care/any/sms/xx", "/wordings/care/any/pigeon/en", "/wordings/care/nothing.0/sms/en", CARE + "x"]
)
def test_a_wording_that_is_none_is_not_found(path: str, cast: Cast, as_: SignIn) -> None:
    assert as_(cast.olga).get(path).status_code == 404


def test_a_version_that_is_none_cannot_be_put_back(cast: Cast, as_: SignIn) -> None:
    assert as_(cast.olga).post(CARE, {"restore": "7"}).status_code == 404
    assert not Wording.objects.exists()
