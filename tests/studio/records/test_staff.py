from __future__ import annotations

import pytest
from django.contrib.auth import authenticate
from django.core.exceptions import ValidationError

from studio import records
from studio.models import Staff, User
from tests.people import NOW, make_staff, make_studio

pytestmark = pytest.mark.django_db


def test_a_person_without_a_role_is_refused() -> None:
    with pytest.raises(ValidationError, match="role"):
        records.save_staff(studio=make_studio(), staff=None, by=None, now=NOW, name="Ada")

    assert not Staff.objects.exists()


def test_two_people_of_one_name_are_refused_whatever_its_capitals() -> None:
    studio = make_studio()
    make_staff(studio, "Ada")

    with pytest.raises(ValidationError) as refused:
        records.save_staff(studio=studio, staff=None, by=None, now=NOW, name="ADA", is_artist=True)

    assert list(refused.value.message_dict) == ["name"]


def test_a_one_time_password_signs_in_and_must_be_replaced() -> None:
    ada = make_staff(make_studio(), signs_in=False)

    user, password = records.give_sign_in(staff=ada, email=" Ada@Birch.example ", by=None, now=NOW)

    assert authenticate(username="ada@birch.example", password=password) == user
    assert User.objects.get().one_time_password
    assert password not in str(User.objects.values().get())
    assert Staff.objects.get().user == user


def test_a_second_one_time_password_ends_the_first() -> None:
    ada = make_staff(make_studio(), signs_in=False)

    first = records.give_sign_in(staff=ada, email="ada@birch.example", by=None, now=NOW)[1]
    second = records.give_sign_in(staff=ada, email="ada@birch.example", by=None, now=NOW)[1]

    assert authenticate(username="ada@birch.example", password=first) is None
    assert authenticate(username="ada@birch.example", password=second) is not None
    assert User.objects.count() == 1


def test_nobody_is_given_someone_elses_account() -> None:
    studio = make_studio()
    make_staff(studio, "Ivy")
    ada = make_staff(studio, "Ada", signs_in=False)

    with pytest.raises(ValidationError) as refused:
        records.give_sign_in(staff=ada, email="ivy@birch.example", by=None, now=NOW)

    assert list(refused.value.message_dict) == ["email"]


def test_an_account_that_opens_another_studio_too_is_not_reset_from_one_of_them() -> None:
    """Its one-time password would open the other studio's clients to whoever owns this one."""
    ada = make_staff(make_studio(), "Ada")
    assert ada.user is not None
    ada.user.set_password("her own, well kept")
    ada.user.save()
    Staff.objects.create(studio=make_studio("elm"), user=ada.user, name="Ada", is_artist=True)

    with pytest.raises(ValidationError, match="use another address"):
        records.give_sign_in(staff=ada, email="ada@birch.example", by=None, now=NOW)
    user, password = records.give_sign_in(staff=ada, email="ada.two@birch.example", by=None, now=NOW)

    assert authenticate(username="ada@birch.example", password="her own, well kept") == ada.user
    assert [one.studio.slug for one in Staff.objects.filter(user=user)] == ["birch"]
    assert authenticate(username="ada.two@birch.example", password=password) == user


def test_the_last_owner_who_signs_in_stays() -> None:
    studio = make_studio()
    owner = make_staff(studio, "Olive", is_owner=True)
    make_staff(studio, "Ada")

    with pytest.raises(ValidationError, match="owner"):
        records.save_staff(studio=studio, staff=owner, by=owner, now=NOW, is_owner=False, is_artist=True)
    with pytest.raises(ValidationError, match="owner"):
        records.save_staff(studio=studio, staff=owner, by=owner, now=NOW, is_active=False)
    with pytest.raises(ValidationError, match="owner"):
        records.take_sign_in(staff=owner, by=owner, now=NOW)

    kept = Staff.objects.get(name="Olive")
    assert (kept.is_owner, kept.is_active, kept.user) == (True, True, owner.user)


def test_a_sign_in_is_taken_away() -> None:
    studio = make_studio()
    make_staff(studio, "Olive", is_owner=True)
    ada = make_staff(studio, "Ada")

    records.take_sign_in(staff=ada, by=None, now=NOW)

    assert Staff.objects.get(name="Ada").user is None
