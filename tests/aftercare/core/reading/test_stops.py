from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Topic, read


@pytest.mark.parametrize(
    "text",
    [
        # The standard words: 47 CFR 64.1200(a)(10).
        *("STOP", "stop all", "Unsubscribe", "cancel", "END", "quit", "revoke", "opt out", "\ufeffSTOP\r\n\x00"),
        "pls take me off this list",
        "stop texting me",
        "no more messages please",
        "lose my number",
        "quit blowing up my phone",
        "I no longer wish to receive these texts",
        "dame de baja",
        "ya no me escriban",
        "no quiero recibir mensajes",
        "I've moved away, so there is no point sending me these anymore",
        "lovely lashes, but please leave me out of the reminders",
        "I'd sooner ye didn't",
        "would you mind not sending any more?",
        "I asked twice now. leave me in peace",
        "corten con los mensajes",
        "ya basta de recordatorios, por favor",
        "STOP.\nmy eye still stings by the way",
        "Delete. My. Number.",
        "I'd rather not get these texts",
        "Don't text me at 7am. Or ever.",
        "you can turn off the machine now",
        "These pings go off at 6am, kindly cease.",
        "Pestering me every single day. Enough.",
        "signed up by accident, pls remove",
        "Cada vez que suena el teléfono son ustedes. No más.",
        "Why don't you take me off the list?",
    ],
)
def test_an_opt_out_is_obeyed(text: str) -> None:
    assert Topic.STOP in read(text).about


@pytest.mark.parametrize(
    "text",
    [
        "can't stop staring at them",
        "don't stop doing what you do",
        "my phone stopped working",
        "i'll stop by at 3",
        "stop itching already!!",
        "omg stop they're gorgeous",
        "my eyes won't stop watering",
        "can you stop sending these at 6am? after 9 is fine",
        "quit my job so any day works",
        "cancel my friday please",
        "i never want these lashes to fall out",
        "will the redness go away?",
        "no es que me moleste la luz",
        "text me again and I'll confirm Friday",
        "they dont bother me anymore",
        "oh stop. I love them",
        "butt dial sorry",
        "stop with the small talk and tell me what to do about this swelling",
    ],
)
def test_another_stop_is_none(text: str) -> None:
    assert Topic.STOP not in read(text).about


def test_a_stop_with_a_sign_keeps_both() -> None:
    found = read("quit texting me my eye is STILL swollen")

    assert {Topic.STOP, Topic.IRRITATION} <= set(found.about)
    assert found.signs == (Sign.SWELLING,)


def test_a_visit_is_changed_beside_an_end() -> None:
    assert {Topic.STOP, Topic.BOOKING} <= set(read("cancel my fill and stop with the texts").about)


def test_what_is_cancelled_is_a_message() -> None:
    assert Topic.BOOKING not in read("cancel the texts, please").about


@pytest.mark.parametrize(
    "text",
    [
        "please don't take me off the list, I like the reminders",
        "my eyes itch since you did them. Enough.",  # the itch is meant
        "That is my husband for you. Enough.",
        "remove me from the waiting list for Saturday",
        "he won't stop calling me Bambi",
    ],
)
def test_what_only_sounds_like_an_end_is_none(text: str) -> None:
    assert Topic.STOP not in read(text).about
