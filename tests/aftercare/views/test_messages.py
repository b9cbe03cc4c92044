"""Messages going out and gone."""

from __future__ import annotations

from typing import Any

import pytest

from aftercare import links, receiving, tasks, triage, trials
from aftercare.lines import lines_of
from aftercare.links import Purpose
from aftercare.models import Message
from aftercare.wording import Words
from studio.models import Staff
from tests.cast import Cast, full_morning
from tests.pages import SignIn, words


def test_what_goes_out_stands_soonest_first_with_its_reason(morning_cast: Cast, as_: SignIn) -> None:
    page = words(as_(morning_cast.olga).get("/messages"))

    assert "Aftercare, by text: planned" in page
    assert "30 minutes after the visit" in page


def test_what_failed_says_why_in_the_carrier_s_words(morning_cast: Cast, as_: SignIn) -> None:
    page = words(as_(morning_cast.olga).get("/messages?group=trouble"))

    assert "Grace Adeyemi" in page
    assert "not delivered" in page
    assert "The number does not take texts." in page
    assert "Mia" not in page


@pytest.mark.parametrize("group", ["going", "gone", "trouble", "withheld", "withdrawn", "nonsense"])
@pytest.mark.parametrize("page", ["", "2", "0", "-3", "x", "99999999999999999999"])
def test_any_group_and_page_can_be_asked_for(group: str, page: str, morning_cast: Cast, as_: SignIn) -> None:
    assert as_(morning_cast.olga).get("/messages", {"group": group, "page": page}).status_code == 200


def test_messages_can_be_narrowed_to_one_occasion(morning_cast: Cast, as_: SignIn) -> None:
    page = words(as_(morning_cast.olga).get("/messages?occasion=care"))

    assert "Aftercare, by text" in page
    assert "How are your eyes, by text" not in page


def test_the_front_desk_learns_from_no_line_how_anyone_s_eyes_are(morning_cast: Cast, as_: SignIn) -> None:
    browser = as_(morning_cast.dee)

    for group in ("going", "gone", "trouble", "withheld"):
        page = words(browser.get("/messages", {"group": group}))
        assert "eyes" not in page
        assert "On hold" not in page
        assert "atch test" not in page


def test_a_filter_tells_an_artist_nothing_of_a_colleague_s_clients(morning_cast: Cast, as_: SignIn) -> None:
    page = words(as_(morning_cast.noor).get("/messages?occasion=check"))

    assert "Thi Lan Pham" in page
    assert "Mia Okafor" not in page
    assert "Grace" not in page


def test_an_answer_to_a_number_that_two_share_is_read_by_those_alone_who_treat_one_of_them(
    cast: Cast, as_: SignIn
) -> None:
    for name in ("Mia", "Ana"):
        cast.done(cast.client(name, mobile="+12125550177"), cast.at(10, -1))
    receiving.receive(lines_of(cast.studio)["sms"], "+12125550177", "cant open my eye", received_at=cast.now)
    triage.read_waiting(cast.now, cast.studio.pk)
    tasks.send_due(now=cast.now)
    assert "Do not force the eye open" in Message.objects.get(occasion="answer", handed_over_at__isnull=False).text

    seen = {who: words(as_(getattr(cast, who)).get("/messages?group=gone")) for who in ("olga", "ada", "noor", "dee")}

    assert [who for who, page in seen.items() if "Do not force the eye open" in page] == ["olga", "ada"]
    assert [who for who, page in seen.items() if "Answer, by text" in page] == ["olga", "ada"]
    assert "Message, by text" in seen["dee"]


def test_a_wording_tried_out_is_read_by_who_tried_it_and_the_owner_alone(cast: Cast, as_: SignIn) -> None:
    """It may be filled in for a client, and have the way to her page in it."""
    Staff.objects.filter(pk=cast.ada.pk).update(mobile="+12125550111")
    cast.ada.refresh_from_db()
    way = links.address(Purpose.VISIT, cast.done(cast.client("Mia"), cast.at(10, -1)))
    trials.send(Words("", f"Mia, how are your eyes? {way}", "en"), "sms", to=cast.ada, token="1", now=cast.now)
    tasks.send_due(now=cast.now)

    seen = {who: words(as_(getattr(cast, who)).get("/messages?group=gone")) for who in ("olga", "ada", "noor", "dee")}

    assert all("Test of a wording, by text" in page for page in seen.values())
    assert [who for who, page in seen.items() if "Mia" in page or way in page] == ["olga", "ada"]


def test_a_long_list_costs_no_more_queries(cast: Cast, as_: SignIn, django_assert_max_num_queries: Any) -> None:
    full_morning(cast)
    for number in range(60):
        cast.visit(cast.client(f"Client{number}"), cast.at(12, 5))
    cast.plan()
    browser = as_(cast.ada)

    with django_assert_max_num_queries(12):
        page = words(browser.get("/messages"))

    assert "Next page" in page


def test_an_empty_list_says_when_something_will_stand_there(cast: Cast, as_: SignIn) -> None:
    assert "Messages are planned as soon as a visit is booked" in words(as_(cast.olga).get("/messages"))
