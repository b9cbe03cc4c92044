"""Arguments that several commands share."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest
from django.core.management import CommandError

from aftercare.management.arguments import moment, studio_named
from tests.people import make_studio


@pytest.mark.parametrize(
    "text",
    [
        "2027-03-09T15:00:00Z",
        "2027-03-09T15:00:00+00:00",
        "2027-03-09T10:00:00-05:00",
        "2027-03-09 20:30+05:30",
        "20270309T150000Z",
        "2027-03-09T15:00:00.999999Z",
    ],
)
def test_a_moment_is_taken_as_iso_8601_with_any_offset_in_whole_seconds(text: str) -> None:
    assert moment(text) == datetime(2027, 3, 9, 15, tzinfo=UTC)


def test_no_moment_is_none() -> None:
    assert moment(None) is None


@pytest.mark.parametrize(
    ("text", "cure"),
    [
        ("soon", "Write it like 2026-03-09T14:00:00Z"),
        ("", "Write it like"),
        ("09/03/2027 15:00", "Write it like"),
        ("2027-02-30T10:00:00Z", "Write it like"),
        ("2027-03-09T15:00:00", "Add Z for UTC"),
        ("2027-03-09", "Add Z for UTC"),
        ("0001-01-01T00:00:00+14:00", "Write the year in full"),
        ("9999-12-31T23:59:59-14:00", "Write the year in full"),
    ],
)
def test_what_is_no_moment_is_named_with_its_cure(text: str, cure: str) -> None:
    with pytest.raises(CommandError, match=cure) as refused:
        moment(text)

    assert f"--now: “{text}”" in str(refused.value)


@pytest.mark.django_db
def test_a_studio_is_found_by_its_short_name_and_a_slip_is_met_with_those_there_are() -> None:
    with pytest.raises(CommandError, match="no studio “brich”. Known here: none yet"):
        studio_named("brich")

    birch = make_studio()
    assert studio_named("birch") == birch
    with pytest.raises(CommandError, match="no studio “brich”. Known here: birch"):
        studio_named("brich")
