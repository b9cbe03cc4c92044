from __future__ import annotations

from datetime import datetime, timedelta

import pytest

from aftercare import facts, receiving, sending, stops, texts, triage
from aftercare.core.delivery import Event
from aftercare.models import Flag, Line, Message, Reply, Stop, Wish
from aftercare.transports import memory
from studio.models import Client, Studio
from tests.aftercare.test_pictures import photo
from tests.letters import begin, end, make_line, make_message
from tests.people import NOW, make_client, make_staff, make_studio

pytestmark = pytest.mark.django_db
NUMBER = "+12125550101"
LATER = NOW + timedelta(minutes=5)


@pytest.fixture
def studio() -> Studio:
    return make_studio(live_since=NOW)


@pytest.fixture
def line(studio: Studio) -> Line:
    return make_line(studio)


@pytest.fixture
def mia(studio: Studio) -> Client:
    return make_client(studio, mobile=NUMBER, email="mia@mail.example", revision=1, planned_revision=1)


def hear(line: Line, text: str, number: str = NUMBER, at: datetime = LATER, **more: bool | str) -> Reply:
    """Receive and read one reply; return it as it then stands."""
    subject, automatic = str(more.get("subject", "")), bool(more.get("automatic"))
    reply = receiving.receive(line, number, text, subject=subject, automatic=automatic, received_at=at)
    triage.read(reply.pk, at)
    reply.refresh_from_db()
    return reply


def answers() -> list[tuple[str, str, str]]:
    return list(Message.objects.filter(occasion="answer").order_by("pk").values_list("kind", "state", "address"))


# What waits for a person


def test_what_is_not_understood_waits_as_an_open_flag(line: Line, mia: Client) -> None:
    reply = hear(line, "mắt tôi hơi lạ")

    flag = Flag.objects.get()
    assert (flag.urgency, flag.state, flag.opened_at) == ("unread", "open", LATER)
    assert list(flag.clients.all()) == [mia]
    assert (reply.flag, reply.client, reply.read_at, reply.command) == (flag, mia, LATER, "")
    assert reply.reading["unread"]
    assert answers() == []


@pytest.mark.parametrize("text", ["yes", "ok", ""])
def test_a_bare_yes_is_not_understood_either(line: Line, mia: Client, text: str) -> None:
    assert hear(line, text).flag is not None


def test_what_reads_as_thanks_is_at_the_end_of_the_list_and_never_reassured(line: Line, mia: Client) -> None:
    reply = hear(line, "Thank you, I love them!")

    assert reply.flag is not None
    assert (reply.flag.urgency, reply.reading["about"]) == ("none", ["fine"])
    assert answers() == []


# An eye


def told(mia: Client, line: Line, occasion: str) -> Message:
    message = make_message(mia, occasion=occasion)
    Message.objects.filter(pk=message.pk).update(
        state="handed_over", handed_over_at=NOW, line=line, address=NUMBER, channel="sms"
    )
    return message


@pytest.mark.parametrize(
    ("text", "urgency", "kind"),
    [
        ("cant breathe well and my lips are swelling", "emergency", "breathing"),
        ("remover dripped in my right eye what do i do", "emergency", "chemical"),
        ("woke up and cant open my right eye, its swollen", "emergency", "sealed"),
        ("i cant see out of my left eye since this morning", "emergency", "sight"),
        ("my left eye is red and it hurts", "same_day", "seen_today"),
        ("left lid is kinda puffy n itchy since last nite", "same_day", "same_day"),
    ],
)
def test_an_eye_in_trouble_is_answered_at_once_by_kind(
    line: Line, mia: Client, text: str, urgency: str, kind: str
) -> None:
    night = NOW.replace(hour=7)  # two in the morning in New York
    reply = hear(line, text, at=night)

    assert reply.flag is not None
    assert reply.flag.urgency == urgency
    assert answers() == [(kind, "planned", NUMBER)]
    assert Message.objects.get(occasion="answer").due_at == night


@pytest.mark.parametrize(
    ("text", "languages"),
    [
        ("no puedo abrir el ojo izquierdo", ["es"]),
        ("I can't open my left eye", ["en"]),
        ("não consigo abrir o olho", ["en", "es"]),  # no wording in Portuguese: in each language that there is one in
    ],
)
def test_an_answer_goes_in_the_language_of_her_words(text: str, languages: list[str], line: Line, mia: Client) -> None:
    hear(line, text)

    found = Message.objects.filter(occasion="answer", kind="sealed").order_by("pk")
    assert [message.language for message in found] == languages
    words = [texts.for_message(message, facts.load([mia.pk], NOW)[mia.pk], NOW).body for message in found]
    assert ["No fuerces el ojo" in one for one in words] == [language == "es" for language in languages]


def test_the_same_answer_does_not_go_twice_but_a_worse_one_does(line: Line, mia: Client) -> None:
    hear(line, "left lid is itchy")
    hear(line, "still itchy", at=LATER + timedelta(minutes=5))
    flag = hear(line, "now i cant open my eye", at=LATER + timedelta(minutes=6)).flag

    assert [kind for kind, _state, _to in answers()] == ["same_day", "sealed"]
    assert flag is not None
    assert flag.urgency == "emergency"


def test_a_worse_reply_opens_what_somebody_had_taken(line: Line, mia: Client) -> None:
    flag = hear(line, "left lid is itchy").flag
    assert flag is not None
    Flag.objects.update(state="taken", taken_at=LATER)

    hear(line, "cant breathe", at=LATER + timedelta(minutes=1))

    flag.refresh_from_db()
    assert (flag.state, flag.taken_at, flag.urgency) == ("open", None, "emergency")


def test_an_urgent_matter_has_her_planned_anew_as_it_holds_her(line: Line, mia: Client) -> None:
    hear(line, "both eyes are red and burning")

    mia.refresh_from_db()
    assert mia.revision > mia.planned_revision


def test_what_is_not_understood_after_a_check_is_answered_once_in_twelve_hours(line: Line, mia: Client) -> None:
    told(mia, line, "check")

    for minutes in (1, 300, 800):
        hear(line, "yes", at=LATER + timedelta(minutes=minutes))

    assert [kind for kind, _state, _to in answers()] == ["same_day", "same_day"]


@pytest.mark.parametrize("text", ["Yes!", "ok", "👍", "sí"])
def test_a_yes_to_what_she_was_told_before_a_visit_is_a_confirmation(line: Line, mia: Client, text: str) -> None:
    told(mia, line, "prepare")

    assert hear(line, text).flag is None


@pytest.mark.parametrize("text", ["", " ", "!", "yes but my eye is red", "no"])
def test_a_picture_without_words_or_more_than_a_yes_is_no_confirmation(line: Line, mia: Client, text: str) -> None:
    told(mia, line, "prepare")

    assert hear(line, text).flag is not None


@pytest.mark.parametrize("text", ["pls take me off this", "stop texting me please", "no more messages"])
def test_her_own_words_end_messages_as_the_standard_ones_do(line: Line, mia: Client, text: str) -> None:
    reply = hear(line, text)

    assert Stop.objects.filter(address=NUMBER, lifted_at=None).exists()
    assert answers() == [("stopped", "planned", NUMBER)]
    assert reply.flag is not None, "she wrote a sentence: somebody reads it"


def test_a_stop_with_a_sign_in_it_is_obeyed_cautioned_and_waits_for_a_person(line: Line, mia: Client) -> None:
    reply = hear(line, "take me off this list. my eyes are swollen")

    assert answers() == [("stopped_with_sign", "planned", NUMBER)]
    assert reply.flag is not None
    assert reply.flag.urgency == "same_day"


@pytest.mark.parametrize(
    ("texts", "kinds"),
    [
        (["take me off this list. my eyes are swollen"], ["stopped_with_sign"]),
        (["STOP", "cant breathe and my lips are swelling"], ["stopped", "breathing"]),
        (["STOP", "my left lid is itchy"], ["stopped"]),
        (["STOP", "stop texting me!! i cant breathe"], ["stopped", "breathing"]),
        (["take me off this list, my throat is closing"], ["stopped_with_sign", "breathing"]),
    ],
)
def test_after_a_stop_only_its_confirmation_and_emergency_answers_leave(
    line: Line, mia: Client, texts: list[str], kinds: list[str]
) -> None:
    for minutes, text in enumerate(texts):
        hear(line, text, at=LATER + timedelta(minutes=minutes))

    sending.sweep(LATER + timedelta(minutes=9), studio_id=mia.studio_id)

    gone = Message.objects.filter(occasion="answer", state="handed_over").order_by("pk")
    assert list(gone.values_list("kind", flat=True)) == kinds


def test_a_machine_is_not_answered_and_never_means_that_all_is_well(line: Line, mia: Client) -> None:
    reply = hear(line, "I am out of office. My eyes are red.", automatic=True)

    assert reply.flag is not None
    assert answers() == []


def test_a_further_reply_joins_her_open_flag(line: Line, mia: Client) -> None:
    first = hear(line, "my eye is red")
    second = hear(line, "it is worse now", at=LATER + timedelta(minutes=9))
    by_email = hear(make_line(mia.studio, "email"), "are you there?", number="mia@mail.example")

    assert first.flag == second.flag == by_email.flag
    assert Flag.objects.count() == 1


def test_after_it_was_closed_a_reply_opens_another(line: Line, mia: Client) -> None:
    hear(line, "my eye is red")
    Flag.objects.update(state="closed")

    hear(line, "and now the other one")

    assert Flag.objects.count() == 2


def test_an_unknown_number_makes_a_flag_without_a_client(line: Line) -> None:
    reply = hear(line, "can I wear mascara?", number="+12125550177")
    again = hear(line, "hello?", number="+12125550177")
    other = hear(line, "hello?", number="+12125550178")

    assert reply.client is None
    assert list(Flag.objects.get(pk=reply.flag_id or 0).clients.all()) == []
    assert again.flag == reply.flag != other.flag


def test_a_withheld_number_is_nobodys(line: Line, studio: Studio) -> None:
    make_client(studio, "Zoe")  # without a number

    assert hear(line, "hello", number="").client is None


def test_a_number_of_several_names_them_all_and_writes_on_no_record(line: Line, mia: Client) -> None:
    sister = make_client(mia.studio, "Ines", mobile=NUMBER)

    reply = hear(line, "my eye is red")

    assert reply.client is None
    assert set(Flag.objects.get().clients.all()) == {mia, sister}


def test_of_several_only_those_lately_written_to_are_named(line: Line, mia: Client) -> None:
    make_client(mia.studio, "Ines", mobile=NUMBER)
    make_message(mia)
    end(begin(line), event=Event.TAKEN)

    reply = hear(line, "my eye is red")
    much_later = hear(line, "hello", at=NOW + timedelta(days=15))

    assert reply.client == mia
    assert much_later.client is None


def test_whoever_was_written_to_there_is_known_though_her_number_has_changed(line: Line, mia: Client) -> None:
    make_message(mia)
    end(begin(line), event=Event.TAKEN)
    Client.objects.update(mobile="+12125550199")

    assert hear(line, "my eye is red").client == mia


def test_another_studios_client_with_the_same_number_is_not_asked(line: Line, mia: Client) -> None:
    make_client(make_studio("alder"), "Zoe", mobile=NUMBER)

    assert hear(line, "my eye is red").client == mia


def test_it_answers_the_last_message_that_she_was_sent_there(line: Line, mia: Client) -> None:
    make_message(mia)
    last = make_message(mia, due_at=NOW + timedelta(minutes=1))
    end(begin(line), event=Event.TAKEN)
    end(begin(line, now=NOW + timedelta(minutes=1)), event=Event.TAKEN, now=NOW + timedelta(minutes=1))

    assert hear(line, "my eye is red").answers == last


def test_a_reply_is_read_once(line: Line, mia: Client) -> None:
    reply = hear(line, "my eye is red")

    assert not triage.read(reply.pk, LATER + timedelta(hours=1))
    assert Flag.objects.count() == 1


def test_what_a_crash_left_unread_is_read_by_the_next_sweep(line: Line, mia: Client) -> None:
    for text in ("my eye is red", "STOP"):
        receiving.receive(line, NUMBER, text, received_at=NOW)

    assert triage.read_waiting(LATER) == 2
    assert triage.read_waiting(LATER) == 0
    assert (Flag.objects.count(), Stop.objects.count()) == (1, 1)


def test_one_studios_replies_can_be_read_alone(line: Line, mia: Client) -> None:
    receiving.receive(make_line(make_studio("alder")), NUMBER, "hello", received_at=NOW)
    receiving.receive(line, NUMBER, "hello", received_at=NOW)

    assert triage.read_waiting(LATER, line.studio_id) == 1


# STOP


def test_stop_ends_everything_by_that_line_and_is_confirmed(line: Line, mia: Client) -> None:
    reply = hear(line, "Stop!")

    stop = Stop.objects.get()
    assert (stop.line, stop.address, stop.at, stop.words, stop.lifted_at) == (line, NUMBER, LATER, "Stop!", None)
    assert (reply.command, reply.flag) == ("stop", None)
    assert answers() == [("stopped", "planned", NUMBER)]
    mia.refresh_from_db()
    assert mia.revision > mia.planned_revision  # so that she is planned anew


def test_the_confirmation_goes_though_she_said_stop_and_nothing_else_does(line: Line, mia: Client) -> None:
    make_message(mia, due_at=LATER)
    hear(line, "STOP")
    Client.objects.update(planned_revision=99, revision=99)

    sending.sweep(LATER)

    [outgoing] = memory.taken
    assert "no more texts" in outgoing.text
    assert outgoing.address == NUMBER
    assert answers() == [("stopped", "handed_over", NUMBER)]


def test_a_second_stop_in_a_row_is_not_confirmed_again(line: Line, mia: Client) -> None:
    hear(line, "STOP")
    hear(line, "stop")

    assert Stop.objects.count() == 1
    assert len(answers()) == 1


def test_cancel_is_a_stop_and_the_front_desk_looks_as_she_may_mean_the_visit(line: Line, mia: Client) -> None:
    reply = hear(line, "CANCEL")

    assert Stop.objects.filter(lifted_at=None).exists()
    assert reply.flag is None
    assert Wish.objects.get().kind == "may_cancel"
    assert answers() == [("stopped", "planned", NUMBER)]


@pytest.mark.parametrize(
    ("text", "matter", "wish"),
    [
        ("could we move Friday to Saturday?", False, "booking"),
        ("running 10 min late, sorry!!", False, "booking"),
        ("my left lid is itchy, can we move my fill?", True, "booking"),
        ("thank you, love them!", True, None),
        ("can I wear mascara?", True, None),
        ("half of them fell out after two days", True, None),
    ],
)
def test_booking_wishes_go_to_the_front_desk_and_all_else_to_her_artist(
    text: str, matter: bool, wish: str | None, line: Line, mia: Client
) -> None:
    reply = hear(line, text)

    assert (reply.flag is not None) is matter
    assert [one.kind for one in reply.wishes.all()] == ([wish] if wish else [])


def test_a_number_that_is_somebody_elses_rests_and_the_front_desk_is_told(line: Line, mia: Client) -> None:
    before = Client.objects.get(pk=mia.pk).revision
    reply = hear(line, "sorry, you have the wrong number")

    stop = Stop.objects.get(lifted_at=None)
    assert (stop.address, stop.why) == (NUMBER, "wrong_person")
    assert (reply.flag, Wish.objects.get().kind) == (None, "wrong_person")
    assert answers() == []
    assert Client.objects.get(pk=mia.pk).revision == before + 1


def test_one_who_tells_of_an_eye_is_heard_whoever_she_says_she_is(line: Line, mia: Client) -> None:
    reply = hear(line, "wrong number? anyway I cannot open my eye")

    assert not Stop.objects.exists()
    assert reply.flag is not None
    assert reply.flag.urgency == "emergency"


@pytest.mark.parametrize("text", ["STOP", "please stop texting me"])
def test_a_colleagues_stop_is_kept_and_the_owner_told_by_an_open_road(text: str, line: Line, studio: Studio) -> None:
    owner = make_staff(studio, "Olga", is_owner=True, email="olga@mail.example", mobile="+12125550122")
    ada = make_staff(studio, "Ada", is_artist=True, mobile="+12125550121", email="ada@mail.example")
    reply = hear(line, text, number="+12125550121")

    assert (Stop.objects.get().address, reply.flag) == ("+12125550121", None)
    page = Message.objects.get(occasion="alert")
    assert (page.kind, page.staff, page.channel) == ("staff_stop", owner, "sms")
    assert facts.ways([ada])[ada.pk].channel == "email"


def test_the_only_owners_own_stop_reaches_her_by_e_mail(line: Line, studio: Studio) -> None:
    owner = make_staff(studio, "Olga", is_owner=True, email="olga@mail.example", mobile="+12125550122")
    hear(line, "STOP", number="+12125550122")

    page = Message.objects.get(occasion="alert")
    assert (page.staff, page.channel, page.address) == (owner, "email", "olga@mail.example")


def test_what_she_answers_is_the_message_behind_the_introduction(line: Line, mia: Client) -> None:
    for occasion in ("check", "opt_in"):
        told = make_message(mia, occasion=occasion, line=line, address=NUMBER)
        Message.objects.filter(pk=told.pk).update(state="handed_over", handed_over_at=NOW)

    answered = hear(line, "GOOD").answers
    assert answered is not None
    assert answered.occasion == "check"


def test_a_yes_to_the_opt_in_is_neither_a_matter_nor_a_wish(line: Line, mia: Client) -> None:
    told = make_message(mia, occasion="opt_in", line=line, address=NUMBER)
    Message.objects.filter(pk=told.pk).update(state="handed_over", handed_over_at=NOW)

    assert hear(line, "YES").flag is None
    assert not Wish.objects.exists()


def test_stop_from_a_stranger_counts_too(line: Line) -> None:
    hear(line, "STOP", number="+12125550177")
    sending.sweep(LATER)

    assert Stop.objects.get().address == "+12125550177"
    assert answers() == [("stopped", "handed_over", "+12125550177")]


def test_stop_for_a_shared_number_stops_all_who_share_it(line: Line, mia: Client) -> None:
    sister = make_client(mia.studio, "Ines", mobile=NUMBER, revision=1, planned_revision=1)

    hear(line, "STOP")

    assert Stop.objects.count() == 1
    for client in (mia, sister):
        client.refresh_from_db()
        assert client.revision == 2


def test_stop_by_sms_leaves_her_email_alone(line: Line, mia: Client) -> None:
    hear(line, "STOP")

    assert not Stop.objects.filter(line__channel="email").exists()


def test_an_email_that_says_unsubscribe_alone_stops_email(mia: Client) -> None:
    email = make_line(mia.studio, "email")

    hear(email, "", number="Mia@Mail.Example", subject="Unsubscribe")

    assert Stop.objects.get().address == "mia@mail.example"
    assert answers() == [("stopped", "planned", "mia@mail.example")]


def test_a_word_of_stop_in_a_sentence_is_left_to_a_person(line: Line, mia: Client) -> None:
    reply = hear(line, "please stop by and look at my eye")

    assert not Stop.objects.exists()
    assert reply.flag is not None


# START and HELP


def test_start_lifts_her_stop_and_says_so(line: Line, mia: Client) -> None:
    hear(line, "STOP")
    reply = hear(line, "Start", at=LATER + timedelta(days=1))

    stop = Stop.objects.get()
    assert (stop.lifted_at, stop.lifted_how) == (LATER + timedelta(days=1), "her own reply: Start")
    assert (reply.command, reply.flag) == ("start", None)
    assert [kind for kind, _, _ in answers()] == ["stopped", "started"]


def test_after_start_a_stop_is_confirmed_again(line: Line, mia: Client) -> None:
    for text in ("STOP", "START", "STOP"):
        hear(line, text)

    assert [kind for kind, _, _ in answers()] == ["stopped", "started", "stopped"]
    assert Stop.objects.filter(lifted_at=None).count() == 1


def test_start_without_a_stop_is_no_consent_and_a_person_reads_it(line: Line, mia: Client) -> None:
    reply = hear(line, "START")

    assert answers() == []
    assert reply.flag is not None


def test_help_is_answered_and_a_person_looks_as_it_may_be_a_cry_for_it(line: Line, mia: Client) -> None:
    reply = hear(line, "HELP")
    sending.sweep(LATER)

    assert answers() == [("help", "handed_over", NUMBER)]
    assert reply.flag is not None
    assert "Reply STOP" in memory.taken[0].text


def test_after_a_stop_help_is_left_to_a_person(line: Line, mia: Client) -> None:
    hear(line, "STOP")
    reply = hear(line, "HELP")

    assert [kind for kind, _, _ in answers()] == ["stopped"]
    assert reply.flag is not None


def test_a_machines_reply_is_flagged_and_never_answered(mia: Client) -> None:
    email = make_line(mia.studio, "email")

    reply = hear(email, "STOP", number="mia@mail.example", automatic=True)

    assert answers() == []
    assert not Stop.objects.exists()
    assert (reply.command, reply.flag is not None) == ("", True)


def test_who_is_away_is_no_matter_and_none_of_her_being_well(mia: Client) -> None:
    email = make_line(mia.studio, "email")
    make_message(mia, occasion="check", channel="email")
    [parcel] = begin(email)
    end([parcel], Event.TAKEN)
    Message.objects.update(subject="How are your eyes today, Mia?", handed_over_at=NOW, address="mia@mail.example")

    away = hear(
        email,
        "Thanks for writing! I'm out of the office until Monday.",
        number="mia@mail.example",
        subject="Automatic reply: How are your eyes today, Mia?",
        automatic=True,
    )

    assert (away.flag, away.client, away.automatic) == (None, mia, True)
    assert away.answers == Message.objects.get()
    assert answers() == []
    assert not Wish.objects.exists()


@pytest.mark.parametrize("text", ["I'm out of office. My left eye is red.", "Out of office after my eye surgery", ""])
def test_a_machine_that_says_more_than_that_somebody_is_away_is_a_matter(mia: Client, text: str) -> None:
    reply = hear(make_line(mia.studio, "email"), text, number="mia@mail.example", automatic=True)

    assert reply.flag is not None
    assert reply.flag.urgency in ("unread", "same_day")


def test_a_bare_yes_by_e_mail_has_its_meaning_from_the_question_below(mia: Client) -> None:
    line = make_line(mia.studio, "email")
    below = "On Tuesday, Birch wrote:\nAny redness, itching or swelling?"
    reply = receiving.receive(line, "mia@mail.example", "Yes", below=below, received_at=LATER, subject="Re: Your eyes")
    triage.read(reply.pk, LATER)
    reply.refresh_from_db()

    assert reply.flag is not None
    assert reply.flag.urgency == "same_day"


def test_a_picture_without_words_is_for_a_person_and_our_own_subject_is_not_read_as_hers(mia: Client) -> None:
    line = make_line(mia.studio, "email")
    reply = receiving.receive(line, "mia@mail.example", "", subject="Re: Burning, pain or swelling?", received_at=LATER)
    triage.read(reply.pk, LATER)
    reply.refresh_from_db()

    assert reply.flag is not None
    assert (reply.flag.urgency, reply.reading["signs"]) == ("unread", [])


def test_a_start_by_e_mail_lifts_what_one_click_ended_on_every_line(mia: Client) -> None:
    first, second = make_line(mia.studio, "email"), make_line(mia.studio, "email")
    stops.unsubscribe(first, "mia@mail.example", now=NOW)
    assert Stop.objects.filter(lifted_at=None).count() == 2

    reply = receiving.receive(second, "mia@mail.example", "START", received_at=LATER)
    triage.read(reply.pk, LATER)

    assert not Stop.objects.filter(lifted_at=None).exists()


# Pictures


def bring(line: Line, text: str, size: int = 30_000) -> Reply:
    """Receive and read a reply with a file of that many bytes."""
    files = [("a.jpg", photo().ljust(size, b"\0"))]
    reply = receiving.receive(line, NUMBER, text, received_at=LATER, files=files)
    triage.read(reply.pk, LATER)
    reply.refresh_from_db()
    return reply


@pytest.mark.parametrize("text", ["", "thx!! see pic", "Can we move to Friday?"])
def test_what_is_on_a_photo_is_for_a_person_to_see(line: Line, mia: Client, text: str) -> None:
    reply = bring(line, text)

    assert reply.flag is not None
    assert reply.flag.urgency == "unread"


def test_a_photo_makes_no_emergency_less(line: Line, mia: Client) -> None:
    flag = bring(line, "I can't open my left eye").flag

    assert flag is not None
    assert flag.urgency == "emergency"


def test_a_sign_offs_little_picture_is_not_taken_for_a_photo(line: Line, mia: Client) -> None:
    flag = bring(line, "Thank you, I love them!", size=0).flag

    assert flag is not None
    assert flag.urgency == "none"


def test_a_booking_wish_with_a_photo_is_on_both_lists(line: Line, mia: Client) -> None:
    assert bring(line, "Can we move to Friday?").flag is not None
    assert Wish.objects.get().kind == "booking"
