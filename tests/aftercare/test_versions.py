"""The owner's versions of wordings beside the first ones."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest
from django.core.exceptions import ValidationError
from django.db import IntegrityError, transaction

from aftercare import versions
from aftercare.models import Wording
from aftercare.versions import Seen, Slot
from aftercare.wording import MESSAGES, WordingError, Words, first_wording
from tests.cast import Cast, make

DAY = timedelta(days=1)
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
            cast.studio, Slot("how_to_stop", "", 0, "sms", "en"), Words("", "No."), by=cast.olga, now=cast.now, seen=0
        )


CAUTION = Slot("caution", "", 0, "email", "en")


def save_caution(cast: Cast, body: str, seen: int = 0, **more: Any) -> Wording:
    return versions.save(cast.studio, CAUTION, Words("", body), by=cast.olga, now=cast.now, seen=seen, **more)


def caution_in_force(cast: Cast) -> str:
    return versions.finder(cast.studio)("caution", "care", 0, "email", "en").body


def test_a_caution_is_added_to_and_stays_whole(cast: Cast) -> None:
    save_caution(cast, "", addition="Our optician next door sees you without an appointment.")

    assert caution_in_force(cast).startswith(CAUTION.first().body)
    assert caution_in_force(cast).endswith("\n\nOur optician next door sees you without an appointment.")


def test_other_words_for_a_caution_need_a_professional_who_has_seen_them(cast: Cast) -> None:
    today = cast.now.astimezone(cast.studio.zone).date()
    other = "Rinse. Call {{ emergency_call }} or get {{ emergency_care }}."

    for seen in (Seen(), Seen("Dr Adisa"), Seen(on=today), Seen(" ", today), Seen("Dr Adisa", today + DAY)):
        with pytest.raises(ValidationError):
            save_caution(cast, other, professional=seen)
    assert caution_in_force(cast) == CAUTION.first().body

    row = save_caution(cast, other, professional=Seen("Dr Adisa", today))

    assert caution_in_force(cast) == other
    assert (row.seen_by, row.seen_on) == ("Dr Adisa", today)


def test_not_even_a_row_can_hold_other_words_that_nobody_has_seen(cast: Cast) -> None:
    with pytest.raises(IntegrityError), transaction.atomic():
        Wording.objects.create(
            studio=cast.studio, occasion="caution", channel="sms", language="en", version=1, body="x", at=cast.now
        )


def test_the_caution_s_own_words_sent_back_are_no_change(cast: Cast) -> None:
    row = save_caution(cast, CAUTION.first().body, addition="More.")

    assert row.body == ""
    assert row.seen_by == ""


def test_a_blank_version_puts_the_caution_back(cast: Cast) -> None:
    save_caution(cast, "", addition="More.")
    save_caution(cast, "", seen=1)

    assert caution_in_force(cast) == CAUTION.first().body


def test_a_slot_of_a_service_s_own_serves_that_service_alone(cast: Cast) -> None:
    slot = versions.slot_at("care", "fill.0", "sms", "en")
    assert slot is not None
    assert not slot.is_first
    versions.save(cast.studio, slot, Words("", "After a fill."), by=cast.olga, now=cast.now, seen=0)
    find = versions.finder(cast.studio)

    assert find("care", "fill", 0, "sms", "en").body == "After a fill."
    assert find("care", "fill", 0, "sms", "en").source == "care/fill.0/sms/en@1"
    assert find("care", "full set", 0, "sms", "en") == first_wording("care", "full set", 0, "sms", "en")
    assert find("care", "fill", 0, "email", "en") == first_wording("care", "fill", 0, "email", "en")

    versions.save(cast.studio, slot, Words("", ""), by=cast.olga, now=cast.now, seen=1)
    assert versions.finder(cast.studio)("care", "fill", 0, "sms", "en").source == "care/any/sms/en@0"


def test_a_slot_of_one_step_serves_every_service_without_a_nearer_one(cast: Cast) -> None:
    slot = versions.slot_at("check", "any.3", "sms", "en")
    assert slot is not None
    versions.save(cast.studio, slot, Words("", "A week on."), by=cast.olga, now=cast.now, seen=0)
    find = versions.finder(cast.studio)

    assert find("check", "fill", 3, "sms", "en").body == "A week on."
    assert find("check", "fill", 2, "sms", "en") == first_wording("check", "fill", 2, "sms", "en")
    assert find("check", "removal", 3, "sms", "en") == first_wording("check", "removal", 3, "sms", "en")


def test_a_further_language_is_used_where_it_has_words_and_else_the_studio_s_first(cast: Cast) -> None:
    cast.studio.language = "es"
    french = Slot("care", "", 0, "sms", "fr")
    versions.save(cast.studio, french, Words("", "Bonjour."), by=cast.olga, now=cast.now, seen=0)
    find = versions.finder(cast.studio)

    assert find("care", "fill", 0, "sms", "fr-CA").body == "Bonjour."
    assert find("care", "fill", 0, "sms", "fr").language == "fr"
    assert find("care", "fill", 0, "email", "fr") == first_wording("care", "fill", 0, "email", "es")
    assert find("care", "fill", 0, "sms", "vi").language == "es"


def test_a_translation_for_all_other_services_never_serves_a_removal(cast: Cast) -> None:
    french = Slot("care", "", 0, "sms", "fr")
    versions.save(cast.studio, french, Words("", "Bonjour."), by=cast.olga, now=cast.now, seen=0)

    assert versions.finder(cast.studio)("care", "removal", 0, "sms", "fr") == first_wording(
        "care", "removal", 0, "sms", "en"
    )


@pytest.mark.parametrize(
    "named",
    [
        ("care", "consultation.0", "sms", "en"),
        ("prepare", "fill.7", "sms", "en"),
        ("prepare", "fill.00", "sms", "en"),
        ("prepare", "fill", "sms", "en"),
        ("answer", "fill.0", "sms", "en"),
        ("how_to_stop", "any", "sms", "fr"),
        ("care", "any", "sms", "xx-nothing"),
        ("care", "any", "sms", "EN"),
        ("care", "any", "fax", "en"),
        ("care", "../any", "sms", "en"),
    ],
)
def test_an_address_that_names_no_wording_and_none_that_may_be_is_none(named: tuple[str, str, str, str]) -> None:
    assert versions.slot_at(*named) is None


def test_a_slot_that_is_none_is_refused(cast: Cast) -> None:
    with pytest.raises(WordingError):
        versions.save(
            cast.studio, Slot("prepare", "../x", 0, "sms", "en"), Words("", "x"), by=cast.olga, now=cast.now, seen=0
        )
