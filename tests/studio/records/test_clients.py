from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import pytest
from django.core.exceptions import ValidationError

from studio import records
from studio.models import Client, Consent, Reaction
from tests.people import NOW, make_client, make_staff, make_studio, make_visit

pytestmark = pytest.mark.django_db


def test_a_new_client_is_written_with_what_she_agreed_to() -> None:
    studio = make_studio()
    ada = make_staff(studio)

    mia = records.save_client(
        studio=studio,
        client=None,
        by=ada,
        now=NOW,
        answers=[records.Answer("sms", "visits", True, "on paper", "We text you about your visits.")],
        first_name=" Mia ",
        mobile="(212) 555-0101",
    )

    assert (mia.first_name, mia.mobile) == ("Mia", "+12125550101")
    consent = Consent.objects.get()
    assert (consent.client, consent.given, consent.how, consent.at, consent.by) == (mia, True, "on paper", NOW, ada)
    assert consent.words_shown == "We text you about your visits."


def test_a_change_raises_her_revision_and_leaves_the_rest() -> None:
    studio = make_studio()
    mia = make_client(studio, email="mia@mail.example", sensitive=True)

    changed = records.save_client(studio=studio, client=mia, by=None, now=NOW, last_name="Marsh")

    assert (changed.revision, changed.last_name, changed.email, changed.sensitive) == (2, "Marsh", mia.email, True)


@pytest.mark.parametrize(
    ("fields", "field"),
    [
        ({"first_name": ""}, "first_name"),
        ({"mobile": "12"}, "mobile"),
        ({"email": "mia at home"}, "email"),
        ({"time_zone": "Eastern"}, "time_zone"),
        ({"language": "Spanish, please"}, "language"),
        ({"channel": "fax"}, "channel"),
        ({"guardian_mobile": "her dad"}, "guardian_mobile"),
    ],
)
def test_bad_input_names_its_field_and_changes_nothing(fields: dict[str, str], field: str) -> None:
    studio = make_studio()
    mia = make_client(studio)
    before = Client.objects.values().get()

    with pytest.raises(ValidationError) as refused:
        records.save_client(studio=studio, client=mia, by=None, now=NOW, **fields)  # type: ignore[arg-type]

    assert list(refused.value.message_dict) == [field]
    assert Client.objects.values().get() == before


def test_an_answer_that_is_refused_takes_the_whole_write_with_it() -> None:
    studio = make_studio()

    with pytest.raises(ValidationError):
        records.save_client(
            studio=studio,
            client=None,
            by=None,
            now=NOW,
            answers=[records.Answer("sms", "visits", True, " ")],
            first_name="Mia",
        )

    assert not Client.objects.exists()


def test_a_client_of_another_studio_is_never_written() -> None:
    mia = make_client(make_studio("elm"))

    with pytest.raises(ValidationError):
        records.save_client(studio=make_studio(), client=mia, by=None, now=NOW, first_name="Zoe")

    assert Client.objects.get().first_name == "Mia"


def test_a_merged_client_is_not_changed_behind_the_back_of_the_one_kept() -> None:
    studio = make_studio()
    kept, gone = make_client(studio), make_client(studio)
    records.merge(kept=kept, gone=gone, by=None, now=NOW)

    with pytest.raises(ValidationError, match="merged"):
        records.save_client(studio=studio, client=gone, by=None, now=NOW, first_name="Zoe")


def test_consents_are_only_ever_added() -> None:
    mia = make_client(make_studio())

    for given in (True, False):
        records.give_consent(
            client=mia, channel="sms", purpose="reminders", given=given, how="by telephone", by=None, now=NOW
        )

    assert list(mia.consents.values_list("given", flat=True)) == [True, False]
    assert Client.objects.get().revision == 3


def test_a_consent_says_how_it_was_given() -> None:
    mia = make_client(make_studio())

    with pytest.raises(ValidationError) as refused:
        records.give_consent(client=mia, channel="sms", purpose="visits", given=True, how="", by=None, now=NOW)

    assert "how" in refused.value.message_dict
    assert not mia.consents.exists()


def test_a_pause_ends_on_a_day_that_is_ahead_on_the_studios_clock() -> None:
    studio = make_studio(time_zone="Pacific/Auckland")  # already 10 March there
    mia = make_client(studio)

    with pytest.raises(ValidationError) as refused:
        records.pause(client=mia, until=date(2027, 3, 10), by=None, now=NOW)
    paused = records.pause(client=mia, until=date(2027, 3, 11), by=None, now=NOW)
    resumed = records.resume(client=mia, by=None, now=NOW)

    assert "until" in refused.value.message_dict
    assert (paused.paused_until, paused.revision) == (date(2027, 3, 11), 2)
    assert (resumed.paused_until, resumed.revision) == (None, 3)


def test_a_reaction_stands_until_a_person_has_answered_both_questions() -> None:
    studio = make_studio()
    ada, mia = make_staff(studio), make_client(studio)
    reaction = records.record_reaction(
        client=mia, visit=make_visit(mia), words="left lid puffy", by=ada, now=NOW, at=NOW - timedelta(hours=3)
    )

    with pytest.raises(ValidationError) as one:
        records.release_reaction(reaction=reaction, clinician_consulted="", test_first=True, by=ada, now=NOW)
    with pytest.raises(ValidationError) as other:
        records.release_reaction(reaction=reaction, clinician_consulted="no", test_first=None, by=ada, now=NOW)
    still = Reaction.objects.get().released_at
    released = records.release_reaction(
        reaction=reaction, clinician_consulted="not_known", test_first=False, by=ada, now=NOW
    )

    assert ("clinician_consulted" in one.value.message_dict, "test_first" in other.value.message_dict) == (True, True)
    assert still is None
    assert (released.released_at, released.released_by, released.test_first) == (NOW, ada, False)
    assert reaction.at == NOW - timedelta(hours=3)


def test_a_release_is_decided_once() -> None:
    mia = make_client(make_studio())
    reaction = records.record_reaction(client=mia, visit=None, words="hives", by=None, now=NOW)
    records.release_reaction(reaction=reaction, clinician_consulted="yes", test_first=True, by=None, now=NOW)

    with pytest.raises(ValidationError):
        records.release_reaction(reaction=reaction, clinician_consulted="no", test_first=False, by=None, now=NOW)

    assert Reaction.objects.get().clinician_consulted == "yes"


@pytest.mark.parametrize("words", ["", "  "])
def test_a_reaction_needs_words(words: str) -> None:
    with pytest.raises(ValidationError):
        records.record_reaction(client=make_client(make_studio()), visit=None, words=words, by=None, now=NOW)


def test_a_reaction_is_not_tied_to_another_clients_visit() -> None:
    studio = make_studio()
    mia, zoe = make_client(studio), make_client(studio, "Zoe")

    with pytest.raises(ValidationError) as refused:
        records.record_reaction(client=mia, visit=make_visit(zoe), words="red", by=None, now=NOW)

    assert "visit" in refused.value.message_dict


def test_a_pause_that_is_over_by_her_own_date_ends_and_has_her_planned_again() -> None:
    studio = make_studio()
    mia = make_client(studio, "Mia", paused_until=date(2027, 3, 10))
    zoe = make_client(studio, "Zoe", paused_until=date(2027, 3, 10), time_zone="Pacific/Kiritimati")
    at = datetime(2027, 3, 9, 12, tzinfo=UTC)  # the 10th on Kiritimati

    assert records.end_pauses(at) == 1

    mia.refresh_from_db()
    zoe.refresh_from_db()
    assert (mia.paused_until, zoe.paused_until, zoe.revision) == (date(2027, 3, 10), None, 2)
    assert records.end_pauses(at) == 0
