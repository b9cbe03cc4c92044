"""Answers of those who are away, told from all else that a machine may send on. Their words: common practice."""

from __future__ import annotations

import pytest

from aftercare.core import away, reading


@pytest.mark.parametrize(
    ("subject", "text"),
    [
        ("Automatic reply: Your visit", "I am out of the office until Monday with limited access to e-mail."),
        ("Re: Your visit", "Thank you for your email. I am currently on annual leave and will return on Monday."),
        ("Automatic reply", "Thanks for your message! I'm on vacation and will get back to you when I return."),
        ("Out of office", ""),
        ("Respuesta automática: Tu visita", "Estoy fuera de la oficina hasta el lunes."),
        ("Respuesta automática", "Gracias por su mensaje. Estaré de vacaciones hasta el 15 de marzo."),
    ],
)
def test_an_absence_says_nothing_else(subject: str, text: str) -> None:
    assert away.says_only_that(subject, text, reading.read(text))


@pytest.mark.parametrize(
    ("subject", "text"),
    [
        ("Automatic reply", "I am out of the office. My left eye is swollen."),
        ("Automatic reply", "Out of office: recovering from eye surgery, back Monday"),
        ("Automatic reply", "Fuera de la oficina, estoy enferma"),
        ("Automatic reply", "I'm on holiday, please stop sending me these"),
        ("Automatic reply", "I'm on holiday. No redness at all."),
        ("Automatic reply", "I no longer work here, out of office"),
        ("Out of office: eye surgery", "I am out of the office until Monday."),
        ("Automatic reply", "Your message has been received. Ticket 1234."),
        ("Automatic reply", "This mailbox is no longer monitored."),
        ("", ""),
        ("Out of office", "x " * 600),
    ],
)
def test_what_says_more_or_is_unclear_is_for_a_person(subject: str, text: str) -> None:
    assert not away.says_only_that(subject, text, reading.read(text))
