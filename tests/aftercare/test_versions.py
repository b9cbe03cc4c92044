"""The owner's versions of wordings beside the first ones."""

from __future__ import annotations

from typing import Any

import pytest
from django.core.exceptions import ValidationError

from aftercare import versions
from aftercare.versions import Slot
from aftercare.wording import MESSAGES, WordingError, Words, first_wording
from tests.cast import Cast, make

EVENING = Slot("prepare", "full_set", 1, "sms", "en")


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


def test_every_file_of_a_first_wording_is_one_slot_and_no_two_share_one() -> None:
    files = list(MESSAGES.glob("*/*/*.txt"))

    assert len(files) == len(versions.slots()) == len(set(versions.slots()))


def test_every_slot_resolves_to_itself_and_to_its_own_first_wording() -> None:
    for slot in versions.slots():
        assert versions.slot_of(slot.occasion, slot.kind, slot.step, slot.channel, slot.language) == slot
        assert versions.slot_at(slot.occasion, slot.variant, slot.channel, slot.language) == slot
        assert slot.first() == first_wording(slot.occasion, slot.kind, slot.step, slot.channel, slot.language)


@pytest.mark.parametrize(
    ("asked", "kind", "step"),
    [
        (("prepare", "full set", 1, "sms", "en"), "full_set", 1),
        (("prepare", "touch-up", 0, "sms", "en"), "touch_up", 0),
        (("care", "fill", 0, "sms", "en-US"), "", 0),
        (("check", "removal", 3, "email", "es"), "removal", 0),
        (("care", "fill", 0, "sms", "vi"), "", 0),
    ],
)
def test_a_message_finds_the_most_exact_slot(asked: tuple[Any, ...], kind: str, step: int) -> None:
    slot = versions.slot_of(*asked)

    assert slot is not None
    assert (slot.kind, slot.step) == (kind, step)


def test_the_newest_version_is_in_force_for_its_own_slot_alone(cast: Cast) -> None:
    versions.save(cast.studio, EVENING, Words("", "Tomorrow."), by=cast.olga, now=cast.now, seen=0)
    versions.save(cast.studio, EVENING, Words("", "See you tomorrow."), by=cast.olga, now=cast.now, seen=1)
    find = versions.finder(cast.studio)

    assert find("prepare", "full set", 1, "sms", "en").body == "See you tomorrow."
    assert find("prepare", "full set", 0, "sms", "en") == first_wording("prepare", "full set", 0, "sms", "en")
    assert find("prepare", "full set", 1, "sms", "es") == first_wording("prepare", "full set", 1, "sms", "es")


def test_another_studio_s_version_is_in_force_there_alone(cast: Cast) -> None:
    other = make("larkhill", "Larkhill Lashes")
    versions.save(cast.studio, EVENING, Words("", "Tomorrow."), by=cast.olga, now=cast.now, seen=0)

    assert versions.finder(other.studio)("prepare", "full set", 1, "sms", "en") == EVENING.first()


def test_a_blank_version_puts_the_first_wording_back(cast: Cast) -> None:
    versions.save(cast.studio, EVENING, Words("", "Tomorrow."), by=cast.olga, now=cast.now, seen=0)
    versions.save(cast.studio, EVENING, Words("", ""), by=cast.olga, now=cast.now, seen=1)

    assert versions.finder(cast.studio)("prepare", "full set", 1, "sms", "en") == EVENING.first()


def test_finding_costs_one_query_however_much_is_asked(cast: Cast, django_assert_num_queries: Any) -> None:
    with django_assert_num_queries(1):
        find = versions.finder(cast.studio)
        for slot in versions.slots():
            find(slot.occasion, slot.kind, slot.step, slot.channel, slot.language)


def test_a_version_that_builds_on_an_older_one_is_refused(cast: Cast) -> None:
    versions.save(cast.studio, EVENING, Words("", "Tomorrow."), by=cast.olga, now=cast.now, seen=0)

    with pytest.raises(ValidationError, match="meanwhile"):
        versions.save(cast.studio, EVENING, Words("", "Later."), by=cast.olga, now=cast.now, seen=0)

    assert len(versions.history(cast.studio, EVENING)) == 1


def test_a_fixed_block_is_never_changed(cast: Cast) -> None:
    with pytest.raises(ValidationError, match="fixed"):
        versions.save(
            cast.studio, Slot("caution", "", 0, "sms", "en"), Words("", "Fine."), by=cast.olga, now=cast.now, seen=0
        )


def test_a_slot_that_is_none_is_refused(cast: Cast) -> None:
    with pytest.raises(WordingError):
        versions.save(
            cast.studio, Slot("prepare", "../x", 0, "sms", "en"), Words("", "x"), by=cast.olga, now=cast.now, seen=0
        )
