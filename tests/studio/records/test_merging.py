"""Two cards of one person: nothing lost, the more careful answer wins, and all of it can be undone."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest
from django.apps import apps
from django.core.exceptions import ValidationError

from aftercare.models import Flag, Line, Message, Reply
from studio import records
from studio.models import Client, ClientRef, Consent, Merge, Studio, Visit
from studio.records.merging import preview, refused
from tests.people import NOW, make_client, make_studio, make_visit

pytestmark = pytest.mark.django_db
REVISIONS = ("revision", "planned_revision", "changed_at")


def dump() -> dict[str, list[dict[str, Any]]]:
    """Every row of every table but the record of merges, without the revisions, which only ever rise, and when."""
    models = [model for model in apps.get_models(include_auto_created=True) if model is not Merge]
    rows = {model._meta.label: list(model._base_manager.order_by("pk").values()) for model in models}
    return {
        label: [{name: value for name, value in row.items() if name not in REVISIONS} for row in found]
        for label, found in rows.items()
    }


def two_cards() -> tuple[Client, Client]:
    """Mia by the spreadsheet and Mia by the calendar, with a row of every kind that points at a client."""
    studio = make_studio()
    line = Line.objects.create(studio=studio, channel="sms")
    kept = make_client(studio, mobile="+12125550101", sensitive=False, wears_lenses=None, note="Likes C curl.")
    gone = make_client(
        studio,
        last_name="Marsh",
        mobile="+12125550102",
        email="mia@mail.example",
        sensitive=True,
        under_18=False,
        paused_until=date(2027, 4, 1),
        note="Oat milk.",
    )
    shared = Flag.objects.create(studio=studio, opened_at=NOW, urgent_since=NOW)
    shared.clients.set([kept, gone])
    Flag.objects.create(studio=studio, opened_at=NOW, urgent_since=NOW).clients.set([gone])
    for number, client in enumerate((kept, gone)):
        visit = make_visit(client)
        ClientRef.objects.create(studio=studio, source="csv", reference=f"C{number}", client=client)
        for channel in ("sms", "email"):
            Consent.objects.create(client=client, channel=channel, purpose="visits", given=True, at=NOW, how="on paper")
        Message.objects.create(
            studio=studio, key=f"visit:{visit.pk}", client=client, visit=visit, occasion="prepare", planned_from=NOW
        )
        Reply.objects.create(
            studio=studio, line=line, from_address="x", provider_ref=str(number), received_at=NOW, client=client
        )
        records.record_reaction(client=client, visit=visit, words="itchy", by=None, now=NOW)
    return Client.objects.get(pk=kept.pk), Client.objects.get(pk=gone.pk)


def test_every_row_moves_and_both_references_are_kept() -> None:
    kept, gone = two_cards()

    records.merge(kept=kept, gone=gone, by=None, now=NOW)

    for model in apps.get_models(include_auto_created=True):
        for field in model._meta.concrete_fields:
            if field.related_model is Client and model not in (Merge, Client):
                assert not model._base_manager.filter(**{field.name: gone}).exists(), model
    assert set(ClientRef.objects.values_list("reference", "client")) == {("C0", kept.pk), ("C1", kept.pk)}
    assert (kept.visits.count(), kept.messages.count(), kept.replies.count()) == (2, 2, 2)
    assert [flag.clients.count() for flag in Flag.objects.all()] == [1, 1]


def test_an_undo_puts_every_table_back_as_it_was() -> None:
    kept, gone = two_cards()
    before = dump()

    merge = records.merge(kept=kept, gone=gone, by=None, now=NOW)
    between = dump()
    records.undo_merge(merge=merge, now=NOW)

    assert between != before
    assert dump() == before
    assert Merge.objects.get().undone_at == NOW


def test_the_more_careful_answer_wins_and_blanks_are_filled() -> None:
    kept, gone = two_cards()
    Client.objects.filter(pk=gone.pk).update(wished_hours="evening")

    records.merge(kept=kept, gone=gone, by=None, now=NOW)

    kept.refresh_from_db()
    assert kept.wished_hours == "evening"
    assert (kept.sensitive, kept.under_18, kept.wears_lenses, kept.oily_lids) == (True, False, None, None)
    assert (kept.mobile, kept.email, kept.last_name) == ("+12125550101", "mia@mail.example", "Marsh")
    assert (kept.paused_until, kept.note) == (date(2027, 4, 1), "Likes C curl.\nOat milk.")


@pytest.mark.parametrize(
    ("one", "other", "wins"),
    [
        (True, False, True),
        (False, True, True),
        (None, True, True),
        (None, False, False),
        (False, False, False),
        (None, None, None),
    ],
)
def test_of_two_answers_yes_wins_then_no_then_unknown(one: bool | None, other: bool | None, wins: bool | None) -> None:
    studio = make_studio()
    kept, gone = make_client(studio, under_18=one), make_client(studio, under_18=other)

    records.merge(kept=kept, gone=gone, by=None, now=NOW)

    kept.refresh_from_db()
    assert kept.under_18 is wins


def test_the_guardians_facts_stay_those_of_one_person() -> None:
    studio = make_studio()
    kept = make_client(studio, guardian_name="Rosa")
    gone = make_client(studio, guardian_name="Lee", guardian_mobile="+12125550103")

    records.merge(kept=kept, gone=gone, by=None, now=NOW)

    kept.refresh_from_db()
    assert (kept.guardian_name, kept.guardian_mobile) == ("Rosa", "")


def test_the_preview_says_what_the_merge_then_does() -> None:
    kept, gone = two_cards()
    foreseen = {outcome.field: outcome.after for outcome in preview(kept, gone)}

    records.merge(kept=kept, gone=gone, by=None, now=NOW)

    kept.refresh_from_db()
    assert {name: getattr(kept, name) for name in foreseen} == foreseen


@pytest.mark.parametrize("whose", ["kept", "gone"])
def test_a_standing_no_of_either_wins_over_a_later_yes_of_the_other(whose: str) -> None:
    studio = make_studio()
    pair = {"kept": make_client(studio), "gone": make_client(studio)}
    for name, client in pair.items():
        answer = name != whose
        Consent.objects.create(
            client=client, channel="sms", purpose="reminders", given=answer, how="on paper", at=NOW + timedelta(answer)
        )

    records.merge(kept=pair["kept"], gone=pair["gone"], by=None, now=NOW + timedelta(days=2))

    newest = pair["kept"].consents.last()
    assert newest is not None
    assert (newest.given, newest.how, newest.at) == (False, "merge", NOW + timedelta(days=2))


def test_a_no_that_was_taken_back_since_is_no_standing_no() -> None:
    studio = make_studio()
    kept, gone = make_client(studio), make_client(studio)
    for days, given in enumerate((False, True)):
        Consent.objects.create(
            client=gone, channel="sms", purpose="visits", given=given, how="on paper", at=NOW + timedelta(days)
        )

    assert refused(kept, gone) == []


def test_a_stop_on_one_of_the_two_numbers_holds_for_the_one_that_stays() -> None:
    studio = make_studio()
    kept, gone = make_client(studio, mobile="+12125550101"), make_client(studio, mobile="+12125550102")

    records.merge(kept=kept, gone=gone, by=None, now=NOW, stopped=["sms"])

    assert set(kept.consents.values_list("channel", "purpose", "given")) == {
        ("sms", "visits", False),
        ("sms", "reminders", False),
    }


def test_the_one_merged_away_is_hidden_and_both_are_planned_anew() -> None:
    kept, gone = two_cards()
    revisions = dict(Client.objects.values_list("pk", "revision"))
    visit = Visit.objects.get(client=gone)

    records.merge(kept=kept, gone=gone, by=None, now=NOW)

    assert list(Client.objects.standing()) == [kept]
    assert all(client.revision > revisions[client.pk] for client in Client.objects.all())
    assert Visit.objects.get(pk=visit.pk).revision == visit.revision + 1


def test_what_was_added_or_changed_since_stays_with_the_one_kept() -> None:
    kept, gone = two_cards()
    merge = records.merge(kept=kept, gone=gone, by=None, now=NOW)
    since = make_visit(kept, service="lift")
    records.save_client(studio=kept.studio, client=kept, by=None, now=NOW, last_name="Marsh-Lee")

    records.undo_merge(merge=merge, now=NOW)

    kept.refresh_from_db()
    assert (kept.last_name, kept.email) == ("Marsh-Lee", "")
    assert Visit.objects.get(pk=since.pk).client == kept


def test_an_undo_waits_for_the_later_merge_to_be_undone_first() -> None:
    kept, gone = two_cards()
    third = make_client(kept.studio, "Mia M.")
    before = dump()
    first = records.merge(kept=kept, gone=gone, by=None, now=NOW)
    second = records.merge(kept=third, gone=Client.objects.get(pk=kept.pk), by=None, now=NOW)

    with pytest.raises(ValidationError, match="merged again"):
        records.undo_merge(merge=first, now=NOW)
    assert third.visits.count() == 2
    records.undo_merge(merge=second, now=NOW)
    records.undo_merge(merge=first, now=NOW)

    assert dump() == before


def test_an_undo_happens_once() -> None:
    kept, gone = two_cards()
    merge = records.merge(kept=kept, gone=gone, by=None, now=NOW)
    records.undo_merge(merge=merge, now=NOW)

    with pytest.raises(ValidationError, match="undone already"):
        records.undo_merge(merge=merge, now=NOW)


def _itself(studio: Studio) -> tuple[Client, Client]:
    mia = make_client(studio)
    return mia, mia


def _elsewhere(studio: Studio) -> tuple[Client, Client]:
    return make_client(studio), make_client(make_studio("elm"))


def _merged(studio: Studio) -> tuple[Client, Client]:
    mia, gone = make_client(studio), make_client(studio)
    records.merge(kept=mia, gone=gone, by=None, now=NOW)
    return make_client(studio), gone


@pytest.mark.parametrize("pair", [_itself, _elsewhere, _merged])
def test_no_client_is_merged_with_herself_across_studios_or_twice(pair: Any) -> None:
    kept, gone = pair(make_studio())
    before = dump()

    with pytest.raises(ValidationError):
        records.merge(kept=kept, gone=gone, by=None, now=NOW)

    assert dump() == before
