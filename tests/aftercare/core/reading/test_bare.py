from __future__ import annotations

import pytest

from aftercare.core.reading import Topic, Urgency, read

ASKED = (
    "\n\nOn Tue, 3 June, the studio wrote:\n> Any redness, swelling or itching?\n> Reply STOP to end these messages."
)


@pytest.mark.parametrize("text", ["yes", "No.", "7", "sí", "[photo]", "🤔", "?", "ok"])
def test_what_means_nothing_by_itself_goes_to_a_person(text: str) -> None:
    found = read(text)

    assert (found.urgency, found.about, found.unread) == (Urgency.NONE, (Topic.OTHER,), True)


def test_a_quoted_question_gives_a_bare_answer_its_meaning() -> None:
    yes, no = read("yes" + ASKED), read("no" + ASKED)

    assert (yes.urgency, yes.about, yes.signs) == (Urgency.SAME_DAY, (Topic.IRRITATION,), ())
    assert (no.urgency, no.about) == (Urgency.NONE, (Topic.FINE,))


def test_signs_and_stops_in_the_quotation_are_not_hers() -> None:
    found = read("All good here!" + ASKED)

    assert (found.urgency, found.about, found.negated) == (Urgency.NONE, (Topic.FINE,), ())


def test_an_answer_under_the_quotation_is_read() -> None:
    found = read("> Any redness?\nmy left lid is swollen")

    assert found.signs == ("swelling",)
    assert all(one.text == "> Any redness?\nmy left lid is swollen"[one.start : one.end] for one in found.why)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("Вчера немного чесалось, сегодня уже прошло, спасибо", "ru"),
        ("睫毛掉了好多，才三天而已", "zh"),
        ("Oi, meu olho está muito vermelho desde ontem", "pt"),
        ("Mein Auge ist seit gestern rot", "de"),
        ("J'ai l'œil rouge depuis hier", "fr"),
    ],
)
def test_another_language_goes_to_a_person(text: str, code: str) -> None:
    found = read(text)

    assert (found.language, found.unread) == (code, True)


@pytest.mark.parametrize(
    "text",
    [
        "не могу дышать",
        "não consigo abrir o olho",
        "je ne peux plus respirer",
        "Mein Gesicht ist geschwollen",
        "눈이 안 떠져요",
        "我看不见了",
        "لا استطيع التنفس",
        "hindi ko mabuksan ang mata ko",
        "không thở được, mặt em sưng hết",
        "nie mogę oddychać",
        "non riesco a respirare",
    ],
)
def test_an_emergency_in_another_language_does_not_wait(text: str) -> None:
    assert read(text).urgency is Urgency.EMERGENCY


CHOICE = "\n\n> How are your eyes? Reply 1 for no trouble at all, 2 for some redness or itching."


def test_a_number_means_what_the_question_says_it_does() -> None:
    well, red = read("1" + CHOICE), read("2" + CHOICE)

    assert (well.urgency, well.about) == (Urgency.NONE, (Topic.FINE,))
    assert (red.urgency, red.about) == (Urgency.SAME_DAY, (Topic.IRRITATION,))
    assert read("3" + CHOICE).unread


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("Yes\n\n> Are you happy with your lashes?", Topic.FINE),
        ("No.\n\n> Are you happy with your lashes?", Topic.COMPLAINT),
        ("Yes please\n\n> Would you like us to book your infill?", Topic.BOOKING),
    ],
)
def test_a_bare_answer_is_about_what_was_asked(text: str, topic: Topic) -> None:
    assert read(text).about == (topic,)


def test_what_is_over_answers_a_question_about_signs() -> None:
    found = read("Day one only, it has passed." + ASKED)

    assert (found.urgency, found.about) == (Urgency.WATCH, (Topic.IRRITATION,))
