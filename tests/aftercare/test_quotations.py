"""The texts of e-mails, parted. Kinds of mail programs are described by how they set out an answer, not by name."""

from __future__ import annotations

import time
from collections import Counter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from aftercare import quotations
from aftercare.core import reading
from aftercare.core.reading import Reading

QUESTION = "> How are your eyes today? Any redness, itching or swelling?\n> Reply STOP to end texts"


@pytest.mark.parametrize(
    ("text", "own"),
    [
        (f"Yes, a bit\n\nOn Tue, 9 Mar 2027 at 10:00, The Studio <a@b.example> wrote:\n{QUESTION}", "Yes, a bit"),
        (
            f"Sí, un poco\n\nEl mar, 9 mar 2027 a las 10:00, Estudio (<a@b.example>) escribió:\n\n{QUESTION}",
            "Sí, un poco",
        ),
        (f"Oui un peu\n\nLe mar. 9 mars 2027 à 10:00, Studio <a@b.example> a écrit :\n{QUESTION}", "Oui un peu"),
        (f"{QUESTION}\n\nnot good, they burn", "not good, they burn"),
        ("all good\n\n-- \nMia Quist\n14 Juniper Row", "all good"),
        ("it stings\n\nSent from my phone", "it stings"),
        ("me pica\n\nEnviado desde mi teléfono", "me pica"),
        (
            "My left eye is red\n\n-----Original Message-----\nFrom: The Studio\nSubject: Eyes\n\nHow are they?",
            "My left eye is red",
        ),
        ("one line\r\n\r\nanother, with > in it", "one line\n\nanother, with > in it"),
        ("", ""),
    ],
)
def test_her_own_words_stand_apart_from_what_her_program_put_below(text: str, own: str) -> None:
    assert quotations.split(text).own == own


def test_a_bare_yes_has_its_meaning_from_the_question_below() -> None:
    found = quotations.split(f"Yes\n\nOn Tue, 9 Mar 2027 at 10:00, The Studio <a@b.example> wrote:\n{QUESTION}")
    quoted = "\n".join(f"> {line}" for line in found.below.splitlines())

    assert reading.read(f"{found.own}\n\n{quoted}").urgency == "same_day"


HEADER = "On Tue, 9 Mar 2027 at 10:00, The Studio <a@b.example> wrote:"
BLOCK = (
    "From: The Studio <a@b.example>\nSent: Tuesday, March 9, 2027 10:00\nTo: Mia\nSubject: Your eyes\n\nAny redness?"
)
BLOQUE = "De: Estudio <a@b.example>\nEnviado el: martes, 9 de marzo\nPara: Mia\nAsunto: Tus ojos\n\n¿Enrojecimiento?"


def read(text: str) -> Reading:
    """Read a mail's text as triage does: her words, and what stands below them as quoted."""
    found = quotations.split(text)
    quoted = "\n".join(f"> {line}" for line in found.below.splitlines())
    return reading.read(f"{found.own}\n\n{quoted}" if found.below else found.own)


@pytest.mark.parametrize(
    ("text", "own"),
    [
        (f"My eye is red\n\n{'_' * 32}\n{BLOCK}", "My eye is red"),
        (f"My eye is red\n\n{BLOCK}", "My eye is red"),
        (f"Tengo el ojo rojo\n\n{BLOQUE}", "Tengo el ojo rojo"),
        (f"look\n\n---------- Forwarded message ---------\n{BLOCK}", "look"),
        (f"{HEADER}\n> Any redness?\n\nyes, the left one", "yes, the left one"),
        (f"{HEADER}\n> Any redness?\nyes a lot\n> Any swelling?\nno", "yes a lot\nno"),
        ("Yes\n\nOn Tue, 9 Mar 2027 at 10:00, The Studio of Long Names\n<a@b.example> wrote:\n\n> Any?", "Yes"),
        ("all good\n\nBest regards,\nMia Quist\nSenior buyer | Redfield Textiles\n+1 555 010 0199", "all good"),
        ("my eye is red\n\nThis e-mail is confidential and may be privileged.", "my eye is red"),
        ("Sent from my phone", ""),
        ("> my eye is red", "> my eye is red"),
        ("hey\n>.< my eye is so red", "hey\n>.< my eye is so red"),
    ],
)
def test_only_what_a_program_or_a_sign_off_put_there_is_taken_off(text: str, own: str) -> None:
    assert quotations.split(text).own == own


# What a mail's greetings, lists and rules must never hide.
@pytest.mark.parametrize(
    ("text", "urgency"),
    [
        ("Hi Ada\nThanks, they look great but my left eye is swollen shut", "emergency"),
        ("Love them!\n\nBest regards,\nMia\n\nPS my left eye is swollen shut", "emergency"),
        ("Hi!\n- left eye is swollen\n- it burns", "same_day"),
        ("Hi\nall good so far\nKind regards\nMia\n\nActually now it is burning", "same_day"),
        ("ok\nSent from my phone\nwait, now my eye is burning", "same_day"),
        ("eye is ok\n--\nbut the lid is swollen", "same_day"),
        ("eye is ok\n__________\nbut the lid is swollen", "same_day"),
        ("Hola\n\nSaludos\nMia\n\npd: me arde el ojo", "same_day"),
        (f"{HEADER}\n> Any redness?\nyes a lot\n> Any swelling?\nno", "same_day"),
        (f"{HEADER}\n> Any redness?\n\nyes, my left eye burns\n\nBest,\nMia", "same_day"),
    ],
)
def test_a_sign_is_read_wherever_in_the_mail_she_wrote_it(text: str, urgency: str) -> None:
    assert read(text).urgency == urgency


def test_a_wish_below_a_greeting_stays_hers() -> None:
    assert "call me" in quotations.split("Thanks!\n\nit got really bad, call me\n\nBest\nMia").own


def test_answers_in_between_are_shown_with_their_questions_too() -> None:
    found = quotations.split(f"{HEADER}\n> Any redness?\nyes a lot\n> Any swelling?\nno")

    assert found.below == f"{HEADER}\n> Any redness?\nyes a lot\n> Any swelling?\nno"


def test_a_disclaimer_is_no_wish_of_hers_and_makes_no_wrong_person_of_her() -> None:
    disclaimer = "This message is confidential. If you are not the intended recipient, please delete it."

    assert quotations.split(f"All good!\n\nBest,\nMia\n\n{disclaimer}").own == "All good!"
    assert quotations.split(f"All good!\n\n{disclaimer}").own == "All good!"


@pytest.mark.parametrize(
    "text",
    [
        "On " * 33_000,  # with the kept library as it is, minutes
        ("On " * 60 + "\n") * 500,
        "> On " * 20_000,
        "Am " * 33_000,
        "From: a\n" * 12_000,
        "Thanks\n" * 14_000,
        "-" * 100_000,
        "\n" * 100_000,
        " " * 99_000 + "x",
        "This e-mail " * 8_000,
        ("El 1" + "a " * 80 + "\n") * 500,
    ],
    ids=lambda text: text[:12].strip() or "blank",
)
def test_no_text_keeps_others_waiting(text: str) -> None:
    started = time.process_time()

    quotations.split(text)

    assert time.process_time() - started < 2


@settings(max_examples=60, deadline=None)
@given(text=st.lists(st.sampled_from([*"a>-_", " ", "\n", "On x wrote:", "> q", "Thanks", "-- ", "From: a", "my eye"])))
def test_no_word_is_lost_between_hers_and_what_stands_below(text: list[str]) -> None:
    whole = "\n".join(text)
    found = quotations.split(whole)

    assert Counter(whole.split()) <= Counter(f"{found.own}\n{found.below}".split())
