"""Short answers under a quoted question: what they mean hangs on what was asked."""

from __future__ import annotations

import pytest

from aftercare.core.reading import Side, Topic, Urgency, read

SIGNS = "Have you noticed any redness, swelling or itching since your visit?"
WELL = "Are your eyes comfortable?"
GONE = "Has the redness gone down?"
SPANISH = "¿Ha notado picor o enrojecimiento desde su visita?"
STATE = "How are your eyes today? Tell us anything you notice, or reply GOOD. If your eyes swell, call 999."
VISIT = "Reminder: your infill is on Thursday at 3pm. Please tell us if you have redness or swelling."
LIKING = "Are you happy with your lashes?"
ALARMS = "Any trouble breathing or swelling of the lips?"
NUMBERED = "1. Any redness?\n> 2. Any swelling?\n> 3. Any gaps?"
MIXED = "1) Any redness? 2) Are your eyes comfortable? 3) Any discharge? 4) Would you like to book a fill?"


def under(question: str, answer: str) -> str:
    return f"{answer}\n\n> {question}"


@pytest.mark.parametrize(
    ("question", "answer", "urgency"),
    [
        *(
            (SIGNS, answer, Urgency.SAME_DAY)
            for answer in ("yea they are", "a bit", "just the left", "worse", "not much")
        ),
        *((SIGNS, answer, Urgency.SAME_DAY) for answer in ("only when I blink", "same as before", "no, only at night")),
        *(
            (SIGNS, answer, Urgency.SAME_DAY)
            for answer in ("Little bit. Thanks, Jo", "Yes, thank you for checking on me")
        ),
        *((SIGNS, answer, Urgency.WATCH) for answer in ("not any more", "did but it passed", "much better")),
        *(
            (SIGNS, answer, Urgency.NONE)
            for answer in ("not that I've noticed", "no they're not", "No.\nRegards,\nAnn")
        ),
        *((SPANISH, answer, Urgency.SAME_DAY) for answer in ("Sí, un poco.", "solo el izquierdo", "sigue igual")),
        *((SPANISH, answer, Urgency.NONE) for answer in ("No, gracias", "nada de eso", "todo bien")),
        (SPANISH, "ya se me quitó", Urgency.WATCH),
        (WELL, "yes very", Urgency.NONE),
        (WELL, "not really", Urgency.SAME_DAY),
        (GONE, "yes", Urgency.WATCH),
        (GONE, "not yet", Urgency.SAME_DAY),
        (STATE, "not great", Urgency.SAME_DAY),
        (STATE, "good thanks", Urgency.NONE),
        (ALARMS, "yes a little", Urgency.EMERGENCY),
        (ALARMS, "no", Urgency.NONE),
    ],
)
def test_an_answer_is_read_with_its_question(question: str, answer: str, urgency: Urgency) -> None:
    found = read(under(question, answer))

    assert (found.urgency, found.unread) == (urgency, False)
    assert found.about == ((Topic.FINE,) if urgency is Urgency.NONE else (Topic.IRRITATION,))


@pytest.mark.parametrize(
    ("answer", "urgency"),
    [
        *((answer, Urgency.SAME_DAY) for answer in ("1 no 2 yes 3 no", "1: N\n2: Y\n3: N", "no to 1, yes to 2", "2")),
        *(
            (answer, Urgency.SAME_DAY)
            for answer in ("yes to the second", "no yes no", "Q2 a bit, rest no", "no except 2")
        ),
        *((answer, Urgency.NONE) for answer in ("1 no 2 no 3 no", "no no no", "no to all 3", "1-3 no", "n n n")),
        ("1 not any more, 2 no, 3 no", Urgency.WATCH),
    ],
)
def test_several_questions_are_answered_by_their_numbers(answer: str, urgency: Urgency) -> None:
    assert read(under(NUMBERED, answer)).urgency is urgency


def test_each_number_has_its_own_question() -> None:
    gaps, well, unwell = (
        read(under(NUMBERED, "3 yes, rest no")),
        *(read(under(MIXED, f"1 no 2 {word} 3 no 4 yes")) for word in ("yes", "no")),
    )

    assert (gaps.urgency, gaps.about) == (Urgency.NONE, (Topic.RETENTION,))
    assert (well.urgency, well.about) == (Urgency.NONE, (Topic.FINE, Topic.BOOKING))
    assert (unwell.urgency, unwell.about) == (Urgency.SAME_DAY, (Topic.IRRITATION, Topic.BOOKING))


def test_numbers_without_their_questions_may_tell_of_signs() -> None:
    yes, no = read("Pregunta 1 no, la 2 no, la 3 sí"), read("1 no 2 no 3 no")

    assert (yes.urgency, yes.about) == (Urgency.SAME_DAY, (Topic.IRRITATION,))
    assert (no.urgency, no.unread) == (Urgency.NONE, True)


@pytest.mark.parametrize(
    ("question", "answer", "about"),
    [
        (VISIT, "Yes I'll be there.", Topic.BOOKING),
        (VISIT, "ok thanks", Topic.BOOKING),
        (LIKING, "Yes, very.", Topic.FINE),
        (LIKING, "not really", Topic.COMPLAINT),
    ],
)
def test_what_is_not_asked_about_eyes_tells_of_no_sign(question: str, answer: str, about: Topic) -> None:
    found = read(under(question, answer))

    assert (found.urgency, found.about) == (Urgency.NONE, (about,))


@pytest.mark.parametrize(
    ("answer", "side"), [("just the left one", Side.LEFT), ("both eyes", Side.BOTH), ("right", Side.RIGHT)]
)
def test_an_answer_names_the_side(answer: str, side: Side) -> None:
    assert read(under(SIGNS, answer)).side is side


@pytest.mark.parametrize("answer", ["worse", "just the left", "same as before", "1 2 3"])
def test_without_a_question_a_person_sees_what_is_meant(answer: str) -> None:
    found = read(answer)

    assert (found.urgency, found.unread) == (Urgency.NONE, True)
