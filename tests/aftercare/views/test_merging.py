from __future__ import annotations

import pytest
from django.urls import reverse

from aftercare import links, stops
from aftercare.links import Purpose
from studio.models import Client, Merge, Visit
from tests.people import NOW, make_client, make_staff, make_studio, make_visit, sign_in

pytestmark = pytest.mark.django_db


def test_two_cards_become_one_and_two_again() -> None:
    studio = make_studio()
    mia, twin = make_client(studio, "Mia"), make_client(studio, "Mia", last_name="Marsh")
    make_visit(twin)
    browser = sign_in(make_staff(studio, "Dora", is_front_desk=True))

    browser.post(reverse("client_merge", args=[mia.pk]), {"other": twin.pk})
    merged = mia.visits.count()
    browser.post(reverse("merge_undo", args=[Merge.objects.get().pk]))

    assert (merged, mia.visits.count(), twin.visits.count()) == (1, 0, 1)
    assert list(Client.objects.standing().order_by("pk")) == [mia, twin]


def test_links_that_were_ended_while_two_were_one_stay_so_for_both() -> None:
    studio = make_studio()
    mia, twin = make_client(studio, "Mia"), make_client(studio, "Mia")
    links.revoke(twin, why="asked", now=NOW)
    hers, twins = make_visit(mia), make_visit(twin)
    sent = [links.token(Purpose.VISIT, visit) for visit in (hers, twins)]
    browser = sign_in(make_staff(studio, "Olive", is_owner=True))

    browser.post(reverse("client_merge", args=[mia.pk]), {"other": twin.pk})
    sent += [links.token(Purpose.VISIT, Visit.objects.get(pk=visit.pk)) for visit in (hers, twins)]
    browser.post(reverse("client_links", args=[mia.pk]))
    new = links.token(Purpose.VISIT, Visit.objects.get(pk=hers.pk))
    browser.post(reverse("merge_undo", args=[Merge.objects.get().pk]))

    assert [links.opened(Purpose.VISIT, token) for token in sent] == [None] * 4
    assert links.opened(Purpose.VISIT, new) is not None


def test_links_open_as_before_where_none_were_ended_meanwhile() -> None:
    studio = make_studio()
    mia, twin = make_client(studio, "Mia"), make_client(studio, "Mia")
    links.revoke(twin, why="asked", now=NOW)
    sent = [links.token(Purpose.VISIT, make_visit(one)) for one in (mia, twin)]
    browser = sign_in(make_staff(studio, "Olive", is_owner=True))

    browser.post(reverse("client_merge", args=[mia.pk]), {"other": twin.pk})
    browser.post(reverse("merge_undo", args=[Merge.objects.get().pk]))

    assert None not in [links.opened(Purpose.VISIT, token) for token in sent]


def test_the_preview_shows_both_and_what_wins_and_changes_nothing() -> None:
    studio = make_studio()
    mia = make_client(studio, "Mia", sensitive=False, mobile="+12125550101")
    twin = make_client(studio, "Mia", email="mia@mail.example", sensitive=True, mobile="+442079460101")
    browser = sign_in(make_staff(studio, "Olive", is_owner=True))

    answer = browser.get(reverse("client_merge", args=[mia.pk]), {"other": twin.pk})

    rows = {row.label: (row.kept, row.gone, row.after) for row in answer.context["rows"]}
    assert rows["Sensitive"] == ("no", "yes", "yes")
    assert rows["Mobile"] == ("(212) 555-0101", "+44 20 7946 0101", "(212) 555-0101")
    assert rows["E-mail"] == ("—", "mia@mail.example", "mia@mail.example")
    assert not Merge.objects.exists()


def test_the_front_desk_merges_without_a_word_on_health() -> None:
    studio = make_studio()
    mia = make_client(studio, "Mia", sensitive=True, note="allergic to latex")
    twin = make_client(studio, "Mia", wears_lenses=True)
    browser = sign_in(make_staff(studio, "Dora", is_front_desk=True))

    page = browser.get(reverse("client_merge", args=[mia.pk]), {"other": twin.pk}).content.decode()

    for word in ("ensitive", "latex", "lenses", "Oily"):
        assert word not in page


def test_a_stop_on_the_number_that_goes_holds_for_the_card_that_stays() -> None:
    studio = make_studio()
    mia = make_client(studio, "Zoe", mobile="+12125550101")
    twin = make_client(studio, "Zoe", mobile="+12125550102")
    stops.stop(twin, "sms", words="STOP", by=None, now=NOW)
    browser = sign_in(make_staff(studio, "Dora", is_front_desk=True))

    preview = browser.get(reverse("client_merge", args=[mia.pk]), {"other": twin.pk})
    browser.post(reverse("client_merge", args=[mia.pk]), {"other": twin.pk})

    after = {row.label: row.after for row in preview.context["rows"]}
    assert after["Texts: about her visits"] == "no"
    assert set(mia.consents.values_list("channel", "given")) == {("sms", False)}


def test_cards_are_found_by_name_or_number_within_the_studio_only() -> None:
    studio = make_studio()
    mia, twin = make_client(studio, "Mia", mobile="+12125550101"), make_client(studio, "M.", mobile="+12125550101")
    make_client(make_studio("elm"), "Mia", mobile="+12125550101")
    browser = sign_in(make_staff(studio, "Dora", is_front_desk=True))

    alike = browser.get(reverse("client_merge", args=[mia.pk])).context["found"]
    asked = browser.get(reverse("client_merge", args=[mia.pk]), {"q": "5550101"}).context["found"]

    assert (list(alike), list(asked)) == ([twin], [twin])


def test_a_card_is_not_merged_with_itself_or_with_another_studios() -> None:
    studio = make_studio()
    mia = make_client(studio)
    elsewhere = make_client(make_studio("elm"))
    browser = sign_in(make_staff(studio, "Dora", is_front_desk=True))

    itself = browser.post(reverse("client_merge", args=[mia.pk]), {"other": mia.pk})
    other = browser.post(reverse("client_merge", args=[mia.pk]), {"other": elsewhere.pk})

    assert b"one client already" in itself.content
    assert other.status_code == 404
    assert not Merge.objects.exists()
