"""Being forgotten: nothing that says who she was is left in any table, and nothing that counts is lost."""

from __future__ import annotations

from datetime import timedelta

import pytest
from django.apps import apps
from django.core.exceptions import ValidationError
from django.db import models

from aftercare import erasing, links, outbox, receiving, stops, triage, trials
from aftercare.core.delivery import Event
from aftercare.lines import lines_of
from aftercare.models import (
    Attachment,
    Attempt,
    Consultation,
    Flag,
    Message,
    Receipt,
    Reply,
    Stop,
    StoredCallback,
    Stray,
)
from aftercare.transports.base import ReceiptNote
from aftercare.wording import Words
from studio import records
from studio.models import BookFile, CalendarFeed, Client, ClientRef, Consent, Reaction, Staff, Visit, VisitRef
from tests.aftercare.test_pictures import photo
from tests.letters import begin, end, make_message
from tests.people import NOW, make_client, make_staff, make_studio, make_visit

pytestmark = pytest.mark.django_db
SAID = ("Okafor", "Wilhelmina", "+12125550101", "willa@mail.example", "puffy", "secret note", "other eye", "guardian")


@pytest.fixture
def olga() -> Staff:
    return make_staff(make_studio(), "Olga", is_owner=True)


@pytest.fixture
def mia(olga: Staff) -> Client:
    """One of whom everything is kept that can be."""
    studio = olga.studio
    her = make_client(
        studio,
        "Wilhelmina",
        last_name="Okafor",
        mobile="+12125550101",
        email="willa@mail.example",
        note="secret note",
        guardian_name="guardian",
        sensitive=True,
        wished_hours="evening",
    )
    twin = make_client(studio, "Wilhelmina", last_name="Okafor", mobile="+12125550101")
    ClientRef.objects.create(studio=studio, source="csv", reference="c1", client=her, said={"last_name": "Okafor"})
    visit = make_visit(her, status="done", starts_at=NOW - timedelta(days=3), note="secret note", share_left=50)
    VisitRef.objects.create(studio=studio, source="csv", reference="v1", visit=visit, said={"client": "Okafor"})
    Consent.objects.create(client=her, channel="sms", purpose="visits", given=True, at=NOW, how="on paper")
    message = make_message(her, visit=visit)
    Message.objects.filter(pk=message.pk).update(
        state="delivered", handed_over_at=NOW, text="Hi Wilhelmina", address=her.mobile
    )
    make_message(her, visit=visit, occasion="check")
    reply = receiving.receive(
        lines_of(studio)["sms"],
        her.mobile,
        "Okafor here, lid puffy",
        received_at=NOW,
        raw="puffy",
        files=[("other eye", photo())],
    )
    Reply.objects.filter(pk=reply.pk).update(client=her, read_at=NOW, reading={"why": [["puffy", 0, 1]]})
    flag = Flag.objects.create(
        studio=studio, opened_at=NOW, urgent_since=NOW, state="closed", words="puffy, she says", outcome="seen"
    )
    flag.clients.add(her)
    records.record_reaction(client=her, visit=visit, words="puffy", by=None, now=NOW, side="left")
    Consultation.objects.create(
        studio=studio,
        client=her,
        visit=visit,
        once="1",
        at=NOW,
        language="en",
        questions=1,
        agreed=True,
        answers={"reactions": {"said": "yes", "words": "puffy, says Okafor"}},
        more="secret note",
        style="as Wilhelmina likes it",
        signed_name="Wilhelmina Okafor",
        signed_on=NOW.date(),
        waiver="I have read it.",
        guardian_name="guardian",
        to_look_at=1,
    )
    records.merge(kept=her, gone=twin, by=olga, now=NOW)
    stops.stop(her, "sms", words="Okafor says stop", by=olga, now=NOW)
    BookFile.objects.create(
        studio=studio, name="b.csv", format="csv", data=b"Okafor,+12125550101", uploaded_at=NOW, state="done"
    )
    return Client.objects.get(pk=her.pk)


def left() -> str:
    """Everything that stands in the tables of studio and aftercare, but for the numbers that said stop."""
    found = []
    for model in [*apps.get_app_config("studio").get_models(), *apps.get_app_config("aftercare").get_models()]:
        for row in model._default_manager.all():
            for column in row._meta.concrete_fields:
                if (model, column.name) != (Stop, "address") and not isinstance(column, models.ForeignKey):
                    value = getattr(row, column.attname)
                    found.append(
                        bytes(value).decode(errors="replace") if isinstance(value, memoryview | bytes) else str(value)
                    )
    return "\n".join(found)


def test_nothing_that_says_who_she_was_is_left_in_any_table(mia: Client, olga: Staff) -> None:
    before = left()
    assert all(said in before for said in SAID)

    erasing.erase(mia, by=olga, now=NOW)

    after = left()
    assert [said for said in SAID if said in after] == []


def test_nothing_is_left_of_her_in_what_a_file_changed(mia: Client, olga: Staff) -> None:
    said = {
        "visits": {"new": 1},
        "gone": [{"visit": "V1", "client": "Wilhelmina Okafor"}],
        "changes": [{"of": "client", "reference": "c1", "field": "last_name", "before": "Okafor", "after": "Marsh"}],
        "bad_rows": [{"row": 2, "field": "mobile", "value": "+12125550101", "problem": "No number: “+12125550101”."}],
    }
    BookFile.objects.update(result=said)

    erasing.erase(mia, by=olga, now=NOW)

    assert [word for word in SAID if word in left()] == []
    assert BookFile.objects.get().result["visits"] == {"new": 1}


@pytest.mark.parametrize("state", ["reading", "preview"])
def test_a_file_that_waits_keeps_nothing_of_her_and_cannot_bring_her_back(state: str, mia: Client, olga: Staff) -> None:
    BookFile.objects.update(state=state, result={"visits": {"new": 1}, "notes": ["Okafor"]})

    erasing.erase(mia, by=olga, now=NOW)

    assert [word for word in SAID if word in left()] == []
    file = BookFile.objects.get()
    assert file.state == "failed"
    assert "Choose it once more, without her" in file.result["problem"]


def test_while_a_file_is_being_written_nobody_is_forgotten(mia: Client, olga: Staff) -> None:
    BookFile.objects.update(state="writing")

    with pytest.raises(ValidationError, match="is being written"):
        erasing.erase(mia, by=olga, now=NOW)
    assert BookFile.objects.get().data


def test_a_calendar_s_troubles_name_her_no_more_and_it_is_read_anew(mia: Client, olga: Staff) -> None:
    troubles = {"problem": "event 3, client: Wilhelmina Okafor", "digest": "d", "etag": "e"}
    CalendarFeed.objects.create(studio=olga.studio, address="https://calendar.example/b.ics", **troubles)

    erasing.erase(mia, by=olga, now=NOW)

    feed = CalendarFeed.objects.get()
    assert (feed.problem, feed.digest, feed.etag) == ("", "", "")


@pytest.mark.parametrize("is_anothers", [False, True])
def test_what_she_wrote_to_a_number_that_is_no_lines_goes_unless_another_studio_has_her_number(
    is_anothers: bool, mia: Client, olga: Staff
) -> None:
    if is_anothers:
        make_client(make_studio("elm"), "Willa", mobile=mia.mobile)
    stray = {"account": "memory", "to_address": "+12125550190", "received_at": NOW}
    Stray.objects.create(from_address=mia.mobile, text="puffy", provider_ref="1", **stray)
    Stray.objects.create(from_address="+12125550102", text="Zoe's", provider_ref="2", **stray)

    erasing.erase(mia, by=olga, now=NOW)

    assert set(Stray.objects.values_list("provider_ref", flat=True)) == ({"1", "2"} if is_anothers else {"2"})


def shared(mia: Client) -> Client:
    """Another client with the same number, and what came from it: nobody has said yet from whom."""
    zoe = make_client(mia.studio, "Zoe", mobile=mia.mobile)
    reply = receiving.receive(lines_of(mia.studio)["sms"], mia.mobile, "Okafor here, lid puffy", received_at=NOW)
    triage.read(reply.pk, NOW)
    Flag.objects.update(state="closed", words="puffy")
    Message.objects.filter(client=None).update(state="delivered", handed_over_at=NOW, text="Hi Wilhelmina")
    assert Message.objects.filter(client=None, address=mia.mobile).exists()
    return zoe


def test_what_came_from_her_number_before_anybody_said_whose_it_was_goes_too(mia: Client, olga: Staff) -> None:
    zoe = shared(mia)
    zoe.mobile = "+12125550102"
    zoe.save()

    erasing.erase(mia, by=olga, now=NOW)

    assert [word for word in SAID if word in left()] == []


def test_what_came_from_a_number_that_another_has_too_may_be_hers_and_stays(mia: Client, olga: Staff) -> None:
    shared(mia)

    erasing.erase(mia, by=olga, now=NOW)

    assert Reply.objects.filter(client=None).get().text == "Okafor here, lid puffy"


def test_a_wording_tried_out_for_her_is_forgotten_and_one_on_its_way_still_arrives(mia: Client, olga: Staff) -> None:
    olga.mobile = "+12125550111"
    olga.save()
    for token in ("1", "2"):
        trials.send(Words("", f"Wilhelmina, how are your eyes? {token}", "en"), "sms", to=olga, token=token, now=NOW)
    gone = Message.objects.filter(kind="test").first()
    assert gone is not None
    Message.objects.filter(pk=gone.pk).update(state="delivered", handed_over_at=NOW, text=gone.own_words)

    erasing.erase(mia, by=olga, now=NOW)

    gone.refresh_from_db()
    assert (gone.text, gone.own_words) == ("", "")
    assert "how are your eyes" in Message.objects.get(kind="test", state="planned").own_words


LATE = "To +12125550101: “Hi Wilhelmina, your lid is puffy” cannot be delivered."


@pytest.mark.parametrize("event", [Event.TAKEN, Event.NOT_TAKEN, Event.REFUSED, Event.LOST])
@pytest.mark.parametrize("word", [Event.DELIVERED, Event.FAILED, None])
def test_what_is_said_late_of_a_text_that_was_on_its_way_brings_nothing_of_hers_back(
    mia: Client, olga: Staff, event: Event, word: Event | None
) -> None:
    Stop.objects.all().delete()
    line = lines_of(olga.studio)["sms"]
    make_message(mia)
    Message.objects.filter(occasion="check").delete()
    [parcel] = begin(line)
    erasing.erase(mia, by=olga, now=NOW)

    end([parcel], event, problem=LATE, provider_ref="p-1", bad_address=event is Event.REFUSED)
    note = ReceiptNote(
        provider_ref="p-1",
        word="said",
        event=word,
        reference=parcel.reference,
        problem=LATE,
        raw=f'{{"text": "{LATE}"}}',
    )
    outbox.note_receipts(parcel.provider, [note], NOW)

    assert [said for said in SAID if said in left()] == []
    assert Receipt.objects.get().attempt is not None


def test_a_receipt_that_was_quicker_than_the_answer_is_kept_without_her_words(mia: Client, olga: Staff) -> None:
    Stop.objects.all().delete()
    make_message(mia)
    Message.objects.filter(occasion="check").delete()
    [parcel] = begin(lines_of(olga.studio)["sms"])
    erasing.erase(mia, by=olga, now=NOW)

    early = ReceiptNote(provider_ref="p-1", word="said", event=Event.DELIVERED, raw=LATE)
    outbox.note_receipts(parcel.provider, [early], NOW)
    end([parcel], Event.TAKEN, provider_ref="p-1")

    assert [said for said in SAID if said in left()] == []
    assert Receipt.objects.get().attempt is not None


def test_what_is_said_of_others_on_their_way_is_kept_as_it_came(mia: Client, olga: Staff) -> None:
    Stop.objects.all().delete()
    Message.objects.filter(occasion="check").delete()
    make_message(make_client(olga.studio, "Zoe", mobile="+12125550102"))
    [parcel] = begin(lines_of(olga.studio)["sms"])
    erasing.erase(mia, by=olga, now=NOW)

    end([parcel], Event.REFUSED, problem="Nobody has that number.")
    note = ReceiptNote(provider_ref="", word="said", event=None, reference=parcel.reference, raw="raw")
    outbox.note_receipts(parcel.provider, [note], NOW)

    assert Attempt.objects.get().problem == "Nobody has that number."
    assert Receipt.objects.get().raw == "raw"


def test_who_did_it_and_when_is_on_record(mia: Client, olga: Staff) -> None:
    erasing.erase(mia, by=olga, now=NOW)

    mia.refresh_from_db()
    assert (mia.erased_at, mia.erased_by) == (NOW, olga)
    assert mia not in Client.objects.standing()
    assert str(mia) == "a client who was forgotten"
    assert mia.wished_hours == ""


def test_what_counts_stays_without_her(mia: Client, olga: Staff) -> None:
    erasing.erase(mia, by=olga, now=NOW)

    visit = Visit.objects.get(client=mia)
    assert (str(visit.share_left), visit.status, visit.service) == ("50.0", "done", "fill")
    assert Reaction.objects.get().visit == visit
    assert Message.objects.filter(state="delivered").get().handed_over_at == NOW


def test_photos_go_and_what_waited_to_be_sent_is_withdrawn(mia: Client, olga: Staff) -> None:
    erasing.erase(mia, by=olga, now=NOW)

    assert not Attachment.objects.exists()
    assert Message.objects.get(occasion="check").state == "withdrawn"


def test_her_stop_holds_on_for_whoever_is_brought_in_with_that_number(mia: Client, olga: Staff) -> None:
    erasing.erase(mia, by=olga, now=NOW)

    again = make_client(olga.studio, "Willa", mobile="+12125550101")
    assert set(stops.standing(again)) == {"sms"}
    assert Stop.objects.get().words == ""


def test_her_links_open_nothing(mia: Client, olga: Staff) -> None:
    token = links.token(links.Purpose.DATA, mia)

    erasing.erase(mia, by=olga, now=NOW)

    assert links.opened(links.Purpose.DATA, token) is None


def test_nobody_else_is_touched(mia: Client, olga: Staff) -> None:
    zoe = make_client(olga.studio, "Zoe", mobile="+12125550102", note="hers")
    visit = make_visit(zoe, note="hers")

    erasing.erase(mia, by=olga, now=NOW)

    zoe.refresh_from_db()
    visit.refresh_from_db()
    assert (zoe.first_name, zoe.note, visit.note, zoe.erased_at) == ("Zoe", "hers", "hers", None)


@pytest.mark.parametrize(
    "said",
    [
        {"body": b"From=%2B12125550101&Text=my+eye"},
        {"body": b'{"from": "Willa@mail.example"}'},
        {"url": "https://studio.example/in?from=willa%40mail.example"},
    ],
    ids=["form", "json", "address"],
)
def test_a_call_of_a_provider_that_nobody_understood_goes_where_she_is_in_it(
    mia: Client, olga: Staff, said: dict[str, object]
) -> None:
    line = lines_of(olga.studio)["sms"]
    given = {"line": line, "url": "https://studio.example/in", "headers": {}, "body": b"", "waits": False}
    StoredCallback.objects.create(**given, digest="other")
    StoredCallback.objects.create(**(given | said), digest="hers")

    erasing.erase(mia, by=olga, now=NOW)

    assert [one.digest for one in StoredCallback.objects.all()] == ["other"]


def test_who_has_a_visit_ahead_is_not_forgotten(mia: Client, olga: Staff) -> None:
    make_visit(mia)

    with pytest.raises(ValidationError, match="cancel it first"):
        erasing.erase(mia, by=olga, now=NOW)
    assert Client.objects.get(pk=mia.pk).last_name == "Okafor"


def test_who_waits_for_a_person_is_not_forgotten(mia: Client, olga: Staff) -> None:
    reply = receiving.receive(lines_of(olga.studio)["sms"], mia.mobile, "my eye hurts", received_at=NOW)
    triage.read(reply.pk, NOW)

    with pytest.raises(ValidationError, match="still open"):
        erasing.erase(mia, by=olga, now=NOW)
    assert Client.objects.get(pk=mia.pk).last_name == "Okafor"


def test_twice_is_refused(mia: Client, olga: Staff) -> None:
    erasing.erase(mia, by=olga, now=NOW)
    mia.refresh_from_db()

    with pytest.raises(ValidationError, match="forgotten before"):
        erasing.erase(mia, by=olga, now=NOW)


def test_another_studio_s_owner_cannot(mia: Client) -> None:
    other = make_staff(make_studio("elm"), "Ivy", is_owner=True)

    with pytest.raises(ValidationError):
        erasing.erase(mia, by=other, now=NOW)
    assert Client.objects.get(pk=mia.pk).last_name == "Okafor"


def test_every_table_that_points_at_a_client_is_thought_of() -> None:
    """A table that is added later has to be shown to her (pages/kept.py) and forgotten (erasing.py), too."""
    fields = [field for model in apps.get_models() for field in (*model._meta.fields, *model._meta.many_to_many)]
    tables = {field.model._meta.label for field in fields if field.related_model is Client}

    assert tables == {
        "studio.Client",  # merged into her: forgotten with her
        "studio.ClientRef",
        "studio.Consent",
        "studio.Merge",
        "studio.Reaction",
        "studio.Visit",
        "aftercare.Consultation",
        "aftercare.Flag",
        "aftercare.Forecast",  # numbers of a set: stays with its visit, without her
        "aftercare.Message",
        "aftercare.Reply",
        "aftercare.Revocation",  # says when her links were ended, and nothing else
    }
