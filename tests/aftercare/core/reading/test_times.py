from __future__ import annotations

import pytest

from aftercare.core.reading import Topic, Urgency, read


@pytest.mark.parametrize(
    "text",
    [
        "was a bit pink last night, gone now",
        "sore the first nite, normal now ty",
        "the swelling went down",
        "itched on Monday. Nothing since.",
        "me lloraban ayer, hoy ya no",
        "se me hinchó el primer día, ya se bajó",
        "it WAS sore. it is not sore now.",
        "was itchy, isn't itchy now",
        "bit crusty two mornings but since thursday they wake up clean",
        "were red when I got in, red was gone by supper",
        "el sábado se me hinchó, el lunes ya estaba normal",
        "blurry on day one but it cleared with blinking, all finished now",
        "The swelling was there on Sunday and has gone, she is back at school",
        "eyes ran the whole way home. dried up by teatime",
        "sorted itself out, the puffiness",
        "both the pink and the puffiness cleared by bedtime",
        "right eye settled itself overnight",
    ],
)
def test_a_sign_that_is_over_is_watched_and_not_listed(text: str) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.WATCH, ())
    assert Topic.IRRITATION in found.about


@pytest.mark.parametrize(
    "text",
    [
        "just about gone, a teeny bit of grit left",
        "hardly red anymore",
        "soreness all but gone",
        "itching is much better",
        "casi no me pica",
    ],
)
def test_a_sign_that_is_nearly_over_stays_listed(text: str) -> None:
    found = read(text)

    assert found.urgency is Urgency.WATCH
    assert len(found.signs) == 1


@pytest.mark.parametrize(
    "text",
    [
        "mild redness still. hasnt budged",
        "the itching went away but came back",
        "it is not going away, the swelling",
        "eye's gone all red",
        "redness is gone but it is still itchy",
        "sigue rojo y no se me quita",
        "redness gone on Tuesday but its back in my left eye",
        "just a bit of crust in the corner",
        "ya está bien hinchado",
        "a slight blur, clearing each time I blink",
        "sore and I've gone through a whole box of tissues",
        "im used to it by now but its sore",
        "flaky again!! it had healed!!",
        "the itch is gone, the redness isn't",
        "my eyes are so dry today",
    ],
)
def test_a_sign_that_stays_or_comes_back_is_current(text: str) -> None:
    assert read(text).urgency is Urgency.SAME_DAY


def test_what_has_gone_is_the_sign_and_no_lash() -> None:
    assert Topic.RETENTION not in read("all of the puffiness has gone").about


def test_of_two_signs_the_one_that_turned_into_the_other_is_over() -> None:
    assert [str(sign) for sign in read("it went from itchy to painful").signs] == ["pain"]


def test_no_longer_is_a_denial_of_what_was() -> None:
    found = read("ya no me arde")

    assert (found.urgency, found.signs, found.negated) == (Urgency.WATCH, (), ("burning",))


def test_blur_that_clears_on_blinking_is_no_emergency() -> None:
    assert read("a bit blurry but it clears when i blink").urgency is Urgency.SAME_DAY
    assert read("blurry and blinking does nothing").urgency is Urgency.EMERGENCY


@pytest.mark.parametrize(
    ("text", "urgency"),
    [
        ("eyes itchy and pink again, was fine all weekend", Urgency.SAME_DAY),
        ("tad tender which you told me to expect, and its easing off every day", Urgency.WATCH),
        ("the soreness is past, but nobody rang me back", Urgency.WATCH),
        ("only a bit itchy and it's easing, can I wear mascara again?", Urgency.WATCH),
        ("the sting is there and it's gone gooey", Urgency.SAME_DAY),
    ],
)
def test_what_is_back_and_what_is_nearly_over(text: str, urgency: Urgency) -> None:
    assert read(text).urgency is urgency


@pytest.mark.parametrize(
    "text",
    [
        "it was red one night and then gone and I been to work and back all week",
        "was sore on Friday but that's gone now, so I take it all back, they are fab",
    ],
)
def test_back_from_work_is_not_back_again(text: str) -> None:
    assert read(text).urgency is Urgency.WATCH


def test_what_she_asks_about_goes_on() -> None:
    assert read("How long does the blur last? Been a day now and no drops help").urgency is Urgency.EMERGENCY
    assert read("How long does the itch last? Been fine so far").urgency is Urgency.NONE


@pytest.mark.parametrize(
    ("text", "urgency"),
    [
        ("el izquierdo estuvo rojo, ya está blanco otra vez", Urgency.WATCH),
        ("anoche me picaban, hoy amanecí bien del picor", Urgency.WATCH),
        ("se deshinchó", Urgency.WATCH),
        ("no se deshincha", Urgency.SAME_DAY),
        ("el derecho no tanto, está hinchado", Urgency.SAME_DAY),
    ],
)
def test_as_it_was_before_is_over_and_not_so_much_is_not(text: str, urgency: Urgency) -> None:
    assert read(text).urgency is urgency
