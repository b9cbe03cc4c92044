"""Who is told beside the artist, and who is away."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest
from django.core.exceptions import ValidationError

from studio import records
from studio.models import Absence, Staff, Studio
from tests.people import NOW, make_staff, make_studio

pytestmark = pytest.mark.django_db
TODAY = NOW.date()
DAY = timedelta(days=1)


@pytest.fixture
def studio() -> Studio:
    return make_studio()


@pytest.fixture
def ada(studio: Studio) -> Staff:
    return make_staff(studio, mobile="+12125550111", is_artist=True)


def duty(studio: Studio, **fields: Any) -> Studio:
    given = {"on_duty": None, "third_contact": None, "done_after_hours": None, **fields}
    return records.save_duty(studio=studio, by=None, now=NOW, **given)


def away(staff: Staff, **fields: Any) -> Absence:
    given = {"cover": None, "first_day": TODAY, "last_day": TODAY + 6 * DAY, **fields}
    return records.add_absence(staff=staff, by=None, now=NOW, **given)


def test_the_owner_says_who_is_told(studio: Studio, ada: Staff) -> None:
    saved = duty(studio, on_duty=ada, third_contact=ada, done_after_hours=24)

    assert (saved.on_duty, saved.third_contact, saved.done_after_hours) == (ada, ada, 24)


def test_nobody_is_chosen_who_cannot_be_told(studio: Studio) -> None:
    noor = make_staff(studio, "Noor", is_artist=True)

    with pytest.raises(ValidationError, match="Noor has no mobile and no e-mail here: write one on her page first"):
        duty(studio, third_contact=noor)
    assert Studio.objects.get().third_contact is None


def test_nobody_of_the_front_desk_alone_is_the_third_contact(studio: Studio) -> None:
    dee = make_staff(studio, "Dee", mobile="+12125550144", is_front_desk=True)

    with pytest.raises(ValidationError, match="Dee is of the front desk alone and could not see what is the matter"):
        duty(studio, third_contact=dee)
    assert Studio.objects.get().third_contact is None
    dee.is_artist = True
    dee.save()
    assert duty(studio, third_contact=dee).third_contact == dee


def test_nobody_of_another_studio_is_told(studio: Studio) -> None:
    stranger = make_staff(make_studio("elm"), "Eve", mobile="+12125550133", is_artist=True)

    with pytest.raises(ValidationError):
        duty(studio, third_contact=stranger)
    with pytest.raises(ValidationError):
        away(stranger, cover=make_staff(studio, "Noor", is_artist=True))


@pytest.mark.parametrize(
    ("fields", "field"),
    [
        ({"first_day": TODAY + 2 * DAY, "last_day": TODAY + DAY}, "last_day"),
        ({"first_day": TODAY - 9 * DAY, "last_day": TODAY - 2 * DAY}, "last_day"),
        ({"cover": "herself"}, "cover"),
    ],
)
def test_days_and_covers_that_cannot_be_name_their_field(ada: Staff, fields: dict[str, Any], field: str) -> None:
    if fields.get("cover"):
        fields = {"cover": ada}
    with pytest.raises(ValidationError) as refused:
        away(ada, **fields)

    assert list(refused.value.message_dict) == [field]
    assert not Absence.objects.exists()


def test_she_is_not_away_twice_on_one_day(ada: Staff) -> None:
    first = away(ada)
    with pytest.raises(ValidationError, match="on some of these days already"):
        away(ada, first_day=TODAY + 6 * DAY, last_day=TODAY + 8 * DAY)

    records.remove_absence(absence=first, by=None, now=NOW)
    assert away(ada, first_day=TODAY + 6 * DAY, last_day=TODAY + 8 * DAY).pk
