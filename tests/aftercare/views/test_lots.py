"""The pages on lots of adhesive."""

from __future__ import annotations

import re

import pytest

from aftercare import facts, lotmarks, texts
from aftercare.models import Message, RuleSet
from aftercare.pages import morning
from studio.models import Adhesive, Reaction
from tests.cast import Cast
from tests.pages import SignIn, words

PAGE = "/settings/lots"


@pytest.fixture
def bad(cast: Cast) -> Adhesive:
    """Lot 0419, of 20 sets of which eight were followed by a reaction; 2 of 80 elsewhere."""
    glue = Adhesive.objects.create(studio=cast.studio, product="Birch 4", lot="0419")
    for number in range(100):
        her = cast.client(f"Person{number}", "Quist", texts=False)
        visit = cast.done(her, cast.at(9, -20), adhesive=glue if number < 20 else cast.glue)
        if number < 8 or number > 97:
            Reaction.objects.create(
                client=her, visit=visit, at=cast.at(9, -18), words=f"Person{number} Quist: both lids puffy and itchy"
            )
    return glue


def test_each_lot_stands_with_its_counts_and_the_one_to_look_at_first(cast: Cast, bad: Adhesive, as_: SignIn) -> None:
    page = words(as_(cast.ada).get(PAGE))

    assert "100 sets · 10 followed by a reaction" in page
    assert "8 of 20 sets followed by a reaction Birch 4, lot 0419 Look at this lot." in page
    assert "40.0 % of its sets (21.9 to 61.3) · 2.0 expected at the rate of all sets" in page  # Wilson's, 8 of 20
    assert "Too few lots or reactions to say how many times the usual" in page
    assert page.count("Look at this lot.") == 1
    assert "of 20 lots like all others, about one at most is ever marked" in page


@pytest.mark.parametrize("path", ["", "/{}/wearers", "/{}/report"])
def test_no_page_says_what_brought_it_about_or_that_all_is_well(
    path: str, cast: Cast, bad: Adhesive, as_: SignIn
) -> None:
    page = words(as_(cast.olga).get(f"{PAGE}{path.format(bad.pk)}"))

    assert re.findall(r"\bcaus|\ballerg|\bsafe\b|\bpassed\b|\bnormal\b", page, re.IGNORECASE) == []


def test_the_sheet_for_the_supplier_has_dates_and_signs_and_nobodys_name(
    cast: Cast, bad: Adhesive, as_: SignIn
) -> None:
    page = words(as_(cast.olga).get(f"{PAGE}/{bad.pk}/report"))

    assert "20, of which 8 were followed by a reaction on record within 14 days" in page
    assert "80, of which 2 followed by one" in page
    assert "Ratio of the rates 16.00" in page
    assert f"{cast.at(9, -20):%-d %b %Y} 2 swelling, itching" in page
    assert "Person" not in page
    assert "Quist" not in page


def test_the_sheet_tells_no_artist_of_which_day_a_colleague_s_client_told_a_sign(
    cast: Cast, bad: Adhesive, as_: SignIn
) -> None:
    """The day sheet and who wore it say who came that day."""
    day = f"{cast.at(9, -20):%-d %b %Y}"
    hers = words(as_(cast.ada).get(f"{PAGE}/{bad.pk}/report"))
    others = words(as_(cast.noor).get(f"{PAGE}/{bad.pk}/report"))

    assert f"{day} 2 swelling, itching" in hers
    assert day not in others
    assert others.count("– 2 swelling, itching") == 8


def test_a_lot_that_nobody_wore_has_nothing_to_tell(cast: Cast, as_: SignIn) -> None:
    page = words(as_(cast.olga).get(f"{PAGE}/{cast.glue.pk}/report", follow=True))

    assert "there is nothing to tell its supplier" in page
    assert "No lot has been worn yet. Name the adhesive and its lot" in page


def test_who_wore_it_is_a_list_that_leads_to_their_cards(cast: Cast, bad: Adhesive, as_: SignIn) -> None:
    response = as_(cast.ada).get(f"{PAGE}/{bad.pk}/wearers")

    assert "20 clients in 30 days" in words(response)
    assert "Person0 Quist" in words(response)
    assert "puffy" not in words(response)
    assert f'href="/clients/{cast.clients["Person0"].pk}"' in response.content.decode()


def test_a_lot_set_aside_is_marked_wherever_it_is_chosen(cast: Cast, bad: Adhesive, as_: SignIn) -> None:
    her = cast.clients["Person3"]
    due = cast.visit(her, cast.at(9))
    browser = as_(cast.ada)
    assert "lot set aside" not in words(browser.get("/today"))

    page = words(browser.post(f"{PAGE}/{bad.pk}/aside", follow=True))

    assert "Set aside: it is marked wherever it is chosen." in page
    assert "by Ada" in page
    assert "Birch 4, lot 0419 lot set aside" in words(browser.get("/today"))
    done = words(browser.get(f"/visits/{due.pk}/done"))
    assert "Birch 4, lot 0419: set aside, do not use" in done
    assert "Birch 4, lot 0226: set aside" not in done
    assert "lot 0419 · set aside" in words(browser.get("/settings/adhesives"))


def test_the_mark_can_be_taken_back(cast: Cast, bad: Adhesive, as_: SignIn) -> None:
    browser = as_(cast.olga)
    browser.post(f"{PAGE}/{bad.pk}/aside")

    page = words(browser.post(f"{PAGE}/{bad.pk}/aside", {"aside": "no"}, follow=True))

    assert "The mark is taken back." in page
    assert "Use it again" not in page


def test_the_settings_and_the_adhesives_lead_to_it(cast: Cast, as_: SignIn) -> None:
    for path in ("/settings", "/settings/adhesives"):
        assert f'href="{PAGE}"' in as_(cast.olga).get(path).content.decode(), path


def test_the_owner_sets_how_readily_a_lot_is_marked(cast: Cast, bad: Adhesive, as_: SignIn) -> None:
    browser = as_(cast.olga)

    page = words(browser.post(PAGE, {"one_in": "100"}, follow=True))

    assert "of 100 lots like all others, about one at most is ever marked" in page
    assert facts.rules_of(cast.studio).lot_chance == 0.01
    assert RuleSet.objects.get().by == cast.olga


def test_an_artist_does_not_set_it(cast: Cast, bad: Adhesive, as_: SignIn) -> None:
    browser = as_(cast.ada)

    assert "Keep this level" not in browser.get(PAGE).content.decode()
    assert browser.post(PAGE, {"one_in": "100"}).status_code == 403
    assert not RuleSet.objects.exists()


def test_a_level_that_is_none_is_refused(cast: Cast, as_: SignIn) -> None:
    assert "Select a valid choice" in words(as_(cast.olga).post(PAGE, {"one_in": "0"}))
    assert not RuleSet.objects.exists()


def test_the_owner_has_those_who_wore_it_asked_once_each_in_their_own_hours(
    cast: Cast, bad: Adhesive, as_: SignIn
) -> None:
    mia = cast.client("Mia", "Quist")
    cast.done(mia, cast.at(9, -2), adhesive=bad)
    browser = as_(cast.olga)
    assert "Ask 21 clients" in words(browser.get(f"{PAGE}/{bad.pk}/wearers"))

    page = words(browser.post(f"{PAGE}/{bad.pk}/ask", follow=True))

    assert "21 clients are asked." in page
    assert page.count("asked about this lot") == 21
    assert "Ask" not in page.partition("Lots of adhesive")[0].rpartition("asked about this lot")[2]
    assert "0 clients are asked." in words(browser.post(f"{PAGE}/{bad.pk}/ask", follow=True))
    message = Message.objects.get(client=mia, kind="lot")
    message.channel = "sms"  # as its sender sets it once it is judged
    night, morning = cast.at(23), cast.at(9.5, 1)
    book = facts.load([mia.pk], night)[mia.pk]
    assert facts.judge(message, book, night).due_at == cast.at(9, 1)  # no question at night
    assert facts.judge(message, book, morning).event == "journal"
    text = texts.for_message(message, book, morning).body
    assert "We set aside the adhesive of your last set and ask its maker about it. How are your eyes?" in text
    assert not re.search(r"allerg|caus|faulty|bad lot|0419", text)
    without = facts.load([cast.clients["Person1"].pk], night)[cast.clients["Person1"].pk]
    assert facts.judge(message, without, night).event == "withhold"  # she has said yes to nothing


def test_an_artist_does_not_write_to_them(cast: Cast, bad: Adhesive, as_: SignIn) -> None:
    assert as_(cast.ada).post(f"{PAGE}/{bad.pk}/ask").status_code == 403
    assert "Write to them" not in words(as_(cast.ada).get(f"{PAGE}/{bad.pk}/wearers"))


def test_a_lot_that_passes_the_level_comes_to_the_morning_list_by_itself(
    cast: Cast, bad: Adhesive, as_: SignIn
) -> None:
    assert "Look at this lot" not in words(as_(cast.olga).get("/morning"))

    assert lotmarks.mark_due(cast.now, seconds=60) == 1
    assert lotmarks.mark_due(cast.now, seconds=60) == 0  # weighed today

    for person in (cast.olga, cast.ada):
        assert "Look at this lot: Birch 4, lot 0419." in words(as_(person).get("/morning"))
    assert "Look at this lot" not in words(as_(cast.dee).get("/morning"))
    assert morning.count(cast.olga, cast.now).promises == 1


def test_a_lot_that_is_set_aside_or_looked_at_leaves_the_morning_list(cast: Cast, bad: Adhesive, as_: SignIn) -> None:
    lotmarks.mark(cast.studio, cast.now)
    owner = as_(cast.olga)

    assert as_(cast.ada).post(f"{PAGE}/{bad.pk}/looked").status_code == 403
    page = words(owner.post(f"{PAGE}/{bad.pk}/looked", follow=True))
    assert "Looked at: it stays in use, and leaves the morning list. Undo" in page
    assert "by Olga, and left in use" in page
    assert "Look at this lot" not in words(owner.get("/morning"))

    owner.post(f"{PAGE}/{bad.pk}/looked", {"undo": "1"})
    assert "Look at this lot" in words(owner.get("/morning"))

    owner.post(f"{PAGE}/{bad.pk}/aside", {"aside": "yes"})
    assert "Look at this lot" not in words(owner.get("/morning"))
    assert lotmarks.mark(cast.studio, cast.now) == 0


def test_a_lot_that_was_left_in_use_comes_back_with_one_more_reaction(cast: Cast, bad: Adhesive, as_: SignIn) -> None:
    lotmarks.mark(cast.studio, cast.now)
    as_(cast.olga).post(f"{PAGE}/{bad.pk}/looked")
    Adhesive.objects.update(looked_at=cast.at(9, -17))
    lotmarks.mark(cast.studio, cast.now)
    assert not lotmarks.to_look_at(cast.studio).exists()  # nothing came since

    hers = cast.studio.clients.get(first_name="Person12")
    Reaction.objects.create(client=hers, visit=hers.visits.get(), at=cast.at(9, -16), words="itchy")
    lotmarks.mark(cast.studio, cast.now)

    assert list(lotmarks.to_look_at(cast.studio)) == [bad]
