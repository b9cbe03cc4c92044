from __future__ import annotations

import re
from datetime import time

import pytest
from django.test import Client as Browser
from django.urls import reverse

from studio.models import Staff, User
from tests.people import make_staff, make_studio, sign_in

pytestmark = pytest.mark.django_db


@pytest.fixture
def owner() -> Browser:
    return sign_in(make_staff(make_studio(), "Olive", is_owner=True))


def test_a_person_is_added_with_her_roles(owner: Browser) -> None:
    form = {"name": "Ada", "is_artist": "on", "is_front_desk": "on", "mobile": "212 555 0101", "is_active": "on"}

    owner.post(reverse("staff_new"), form)

    ada = Staff.objects.get(name="Ada")
    assert (ada.is_owner, ada.is_artist, ada.is_front_desk, ada.user) == (False, True, True, None)
    assert ada.mobile == "+12125550101"


@pytest.mark.parametrize(("stated", "hour"), [("06:45", time(6, 45)), ("", time(7, 30)), ("00:00", time(0, 0))])
def test_each_has_an_hour_for_her_morning_list_half_past_seven_where_none_is_said(
    owner: Browser, stated: str, hour: time
) -> None:
    owner.post(reverse("staff_new"), {"name": "Ada", "is_artist": "on", "is_active": "on", "morning_at": stated})

    assert Staff.objects.get(name="Ada").morning_at == hour


def test_what_is_no_hour_changes_nothing(owner: Browser) -> None:
    form = {"name": "Ada", "is_artist": "on", "is_active": "on", "morning_at": "half past"}

    answer = owner.post(reverse("staff_new"), form)

    assert b"Enter a valid time" in answer.content
    assert not Staff.objects.filter(name="Ada").exists()


def test_a_person_without_a_role_is_asked_for_one(owner: Browser) -> None:
    answer = owner.post(reverse("staff_new"), {"name": "Ada", "is_active": "on"})

    assert b"at least one role" in answer.content
    assert not Staff.objects.filter(name="Ada").exists()


def test_the_one_time_password_is_shown_once_and_signs_in_once_chosen_anew(owner: Browser) -> None:
    ada = make_staff(Staff.objects.get().studio, "Ada", signs_in=False)
    address = reverse("staff_sign_in", args=[ada.pk])

    shown = owner.post(address, {"email": "ada@birch.example"})
    again = owner.get(address)

    found = re.search(r"<code>([a-z0-9-]{14})</code>", shown.content.decode())
    assert found is not None
    password = found[1]
    assert password not in again.content.decode()
    assert "no-store" in shown.headers["Cache-Control"]
    hers = Browser()
    assert hers.login(email="ada@birch.example", password=password)
    assert hers.get(reverse("day_sheet")).headers["Location"] == reverse("password")


def test_the_one_time_password_is_not_taken_over_an_account_of_someone_else(owner: Browser) -> None:
    ada = make_staff(Staff.objects.get().studio, "Ada", signs_in=False)

    answer = owner.post(reverse("staff_sign_in", args=[ada.pk]), {"email": "olive@birch.example"})

    assert b"has an account already" in answer.content
    assert User.objects.count() == 1


def test_a_sign_in_is_taken_away_but_never_the_last_owners(owner: Browser) -> None:
    olive = Staff.objects.get()
    ada = make_staff(olive.studio, "Ada")

    owner.post(reverse("staff_sign_out", args=[ada.pk]))
    owner.post(reverse("staff_sign_out", args=[olive.pk]))

    assert set(Staff.objects.values_list("name", "user")) == {("Ada", None), ("Olive", olive.user_id)}
