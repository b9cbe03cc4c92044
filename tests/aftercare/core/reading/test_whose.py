from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Urgency, read


@pytest.mark.parametrize(
    "text",
    [
        "my sister had a reaction once, her eyes swelled up",
        "saw a woman on the telly whose eyes swelled shut, scary",
        "I couldn't bear the light with the shingles, but that was long before you touched me",
        "my husband broke out in hives from shrimp",
        "my dog has pink eye lol",
        "I had hives once from strawberries, is that a problem?",
        "do lashes make your eyes water?",
        "a mi hermana se le hincharon los ojos",
        "last year I was allergic and my lids swelled up",
        "el año pasado me dio una alergia horrible",
        "what do I do IF they get red?",
        "If I wake up puffy tomorrow should I take them off?",
        "i was scared they would burn",
        "si me pican qué hago?",
        "my friend had hers done with you the same day and her eyes are burning",
        "my friend's mum had red eyes after lashes",
        "if you'd asked me whether they itch I'd have laughed",
        "my friend reckons hers stung for an hour, lovely salon though",
        "girl I work with has red eyes, she went elsewhere",
        "when I was 9 my lips swelled up from a bee sting, is that a problem?",
        "would sore eyes be normal? havent had mine done yet",
        "arms are burning after the gym, can we say 6?",
        "thought I'd look a fright, all puffy, and they are perfect",
        "my patient had the reddest eyes I ever saw",
    ],
)
def test_what_is_anothers_or_long_ago_or_imagined_is_no_current_sign(text: str) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.NONE, ())


@pytest.mark.parametrize(
    "text",
    [
        "my sister says my eye looks swollen",
        "a girl at work goes why is your eye so red and she was right",
        "my daughter wont tell you herself but her eyes are pink and sore",
        "sorry if I sound grumpy my eyelid is swollen",
        "my mom did her makeup and now my eye is itchy",
        "last year I reacted and now my lids are swollen again",
        "not sure if its swollen or just me, it hurts",
        "it feels as if something is in my eye",
        "is it normal that my eyes are red?",
        "Orla has no redness at all but my eyelids are pink",
        "Her mum here, writing for her. Her eyes are red and puffy",
        "Hello, it's Zoe's mum. Her left lid is swollen and sore",
        "Mother of Zoe (15) here, her eyelid is puffy this morning",
        "my daughter had her lashes done with you on Monday and her eyes are red",
        "bestie they are so cute but my one eye is leaking",
        "my husband reckons my lid is swollen",
        "hiya its Tillys mam, her lids are sore and red",
        "my daughter got a set at your salon and her eyelid is itching",
        "the girl at the desk gave me drops but my eye is still red",
        "softer than my last set. My left eye has felt gritty since Monday",
        "havent had them infilled yet but my eyes are burning",
        "never had lashes done before and my eyes are stinging now",
        "could you take them off tomorrow because my eyes are burning?",
        "¿me las pueden quitar hoy porque me arden los ojos?",
        "the lids are dry and peeling, like when I had eczema as a child",
        "ayer fue el otro y ahora me duele el derecho",
    ],
)
def test_her_own_sign_is_current(text: str) -> None:
    assert read(text).urgency is Urgency.SAME_DAY


@pytest.mark.parametrize(
    ("text", "urgency"),
    [
        ("my niece stuck her finger in the right one and it went into the white part, theres blood", Urgency.EMERGENCY),
        ("my toddler scratched my eye and it wont open", Urgency.EMERGENCY),
        ("took my kid to school and daylight is just too much", Urgency.SAME_DAY),
        ("picked up my son and couldnt stand the sun, had to close my eyes", Urgency.SAME_DAY),
        ("was playing with the baby and he poked me in the eye, its red and sore now", Urgency.SAME_DAY),
    ],
)
def test_somebody_whom_she_was_with_does_not_take_her_sign_from_her(text: str, urgency: Urgency) -> None:
    assert read(text).urgency is urgency


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("shaking like a wet dog, temp is 38.7, eyelids are up like sausages", (Sign.SWELLING,)),
        ("eyes red as tomatoes and if i go outside the sun hurts them", (Sign.REDNESS, Sign.LIGHT)),
        ("hubby here on her phone, she cant get her breath", (Sign.BREATHING,)),
        ("my daughter can't part her lids, she's the one you lashed on Friday", (Sign.SEALED_EYE,)),
        ("mi hija no puede abrir los ojos, usted la atendió ayer", (Sign.SEALED_EYE,)),
        ("she was in your chair this morning and has hives head to foot", (Sign.HIVES,)),
    ],
)
def test_a_client_in_danger_whoever_writes_and_whatever_it_is_like(text: str, signs: tuple[Sign, ...]) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.EMERGENCY, signs)


def test_light_that_is_only_feared_is_not_there_yet() -> None:
    found = read("if they go red or light hurts I will call you")

    assert (found.urgency, found.signs) == (Urgency.NONE, ())


def test_her_own_eyes_beside_those_of_somebody_at_another_salon() -> None:
    found = read("my mate got glue in her eye at some other salon, mine are just itchy")

    assert (found.urgency, found.signs) == (Urgency.SAME_DAY, (Sign.ITCHING,))


@pytest.mark.parametrize(
    ("text", "sign"),
    [
        ("obsessed with them and so was my sister, tho the corner keeps stinging", Sign.BURNING),
        ("me and mum both red eyed this morning", Sign.REDNESS),
        ("my nan adores them, its just theyre so sore", Sign.PAIN),
        ("my daughter had them done and her lids are puffy", Sign.SWELLING),
        ("a mi prima no le pasó nada y a mí se me hincharon los dos", Sign.SWELLING),
    ],
)
def test_who_is_only_mentioned_has_no_sign(text: str, sign: Sign) -> None:
    found = read(text)

    assert (found.urgency, sign in found.signs) == (Urgency.SAME_DAY, True)


def test_blood_is_read_by_a_person_whatever_else_is_said() -> None:
    assert read("cleaned them like you said and got a bit of blood on the pad").urgency is Urgency.SAME_DAY
    assert read("blood sweat and tears but worth it").urgency is Urgency.NONE


@pytest.mark.parametrize(
    ("text", "urgency"),
    [
        ("vet says the cats got pink eye so i need to cancel", Urgency.NONE),
        ("my ex saw me n went red as a beetroot", Urgency.NONE),
        ("my brother came in, tears streaming down his face", Urgency.NONE),
        ("vet says my eyes are red too", Urgency.SAME_DAY),
        ("mum saw me and my eyes were so swollen, they still are", Urgency.SAME_DAY),
        ("Shame man its a bit swollen by the lid", Urgency.SAME_DAY),
    ],
)
def test_who_is_seen_or_spoken_of(text: str, urgency: Urgency) -> None:
    assert read(text).urgency is urgency


def test_what_everyone_is_told_beside_it_is_hers() -> None:
    found = read("best set ever and I tell everyone so but there is a bit of stinging every time I come in")
    assert found.signs == (Sign.BURNING,)


def test_what_happened_to_somebody_may_be_hers_too() -> None:
    found = read("A mi tía le dio lo mismo una vez: ronchas por todo el cuerpo, así amanecí hoy yo")

    assert found.urgency is Urgency.EMERGENCY


def test_what_follows_a_kind_wish_is_her_own() -> None:
    assert read("hope your mum's ok, woke up and cant see out the right").urgency is Urgency.EMERGENCY
    assert read("hope your mum's sore eye clears up soon").urgency is Urgency.NONE
