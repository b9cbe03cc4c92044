"""What is never said to a client, with what may be said all the same.

The list of what is never said is the project's own safety rule. Behind it: NHS, "Red eye" (reviewed 2022-03-21) and the
American Academy of Ophthalmology on extensions, which send an irritated eye to be seen.
"""

from __future__ import annotations

import pytest

from aftercare.core import neversaid

NEVER = [
    ("A little redness is normal", "normal"),
    ("Redness is Normal.", "Normal"),
    ("It normally stops", "normally"),
    ("This glue is safe", "safe"),
    ("It is perfectly safe to wait", "safe"),
    ("You can safely sleep on them", "safely"),
    ("Your eyes are fine", "fine"),
    ("It is harmless", "harmless"),
    ("There is nothing to worry about", "nothing to worry about"),
    ("Nothing to\nworry about", "Nothing to\nworry about"),
    ("Don’t worry, see you soon", "Don’t worry"),
    ("No need to worry", "No need to worry"),
    ("The morning is all clear", "all clear"),
    ("That is not serious", "not serious"),
    ("That is probably not serious", "not serious"),
    ("It will settle soon", "will settle"),
    ("It'll settle", "It'll settle"),
    ("It should calm down", "should calm down"),
    ("This will pass", "This will pass"),
    ("Wait and see", "Wait and see"),
    ("Give it a day", "Give it a day"),
    ("Lids part in 1 to 4 days", "Lids part in 1"),
    ("It is only irritation", "only irritation"),
    ("That's just a little irritation", "just a little irritation"),
    ("You are allergic to it", "You are allergic"),
    ("You're probably allergic", "You're probably allergic"),
    ("You have an infection", "You have an infection"),
    ("You have an eye infection", "You have an eye infection"),
    ("It is an allergy", "It is an allergy"),
    ("Take an antihistamine", "antihistamine"),
    ("If it does not go away, take an antihistamine", "antihistamine"),
    ("If it doesn't stop, a steroid helps", "steroid"),
    ("Use eye drops", "eye drops"),
    ("Take 10 mg", "10 mg"),
    ("A tea bag helps", "tea bag"),
    ("No rubbing\n- Dab on coconut oil", "oil"),
    ("No problem. Use castor oil", "oil"),
    ("No, use oil", "oil"),
    ("Do not wait but use oil", "oil"),
    ("Try breast milk", "breast milk"),
    ("A cold compress helps", "compress"),
    ("Our glue is hypoallergenic", "hypoallergenic"),
    ("Our hypo-allergenic glue", "hypo-allergenic"),
    ("A formaldehyde-free glue", "formaldehyde-free"),
    ("Free of formaldehyde", "Free of formaldehyde"),
    ("Peel the lashes off at home", "Peel the lashes off at home"),
    ("You can remove them yourself", "remove them yourself"),
    ("At home, soak the lashes", "At home, soak the lashes"),
    ("You passed the patch test", "passed the patch test"),
    ("Your test was negative", "test was negative"),
    ("You are good to go", "good to go"),
    ("Un poco de rojez es normal", "normal"),
    ("Son reacciones normales", "normales"),
    ("Este pegamento es seguro", "seguro"),
    ("Es inofensivo", "inofensivo"),
    ("Tus ojos están bien", "están bien"),
    ("Todo está bien", "Todo está bien"),
    ("Todo bien", "Todo bien"),
    ("No te preocupes", "No te preocupes"),
    ("No pasa nada", "No pasa nada"),
    ("No es nada", "No es nada"),
    ("Se te pasará", "Se te pasará"),
    ("Espera a ver", "Espera a ver"),
    ("Es solo irritación", "solo irritación"),
    ("Solo es una alergia", "Solo es una alergia"),
    ("Eres alérgica", "Eres alérgica"),
    ("Tienes una infección", "Tienes una infección"),
    ("Toma un antihistamínico", "antihistamínico"),
    ("Usa gotas", "gotas"),
    ("Un colirio ayuda", "colirio"),
    ("Ponte manzanilla", "manzanilla"),
    ("Ponte aceite de coco", "aceite"),
    ("Con leche materna", "leche materna"),
    ("Es hipoalergénico", "hipoalergénico"),
    ("Sin formaldehído", "Sin formaldehído"),
    ("Quítatelas en casa", "Quítatelas en casa"),
    ("Has superado la prueba superada", "prueba superada"),
    ("Pasaste la prueba", "Pasaste la"),
    ("You'll be ok", "You'll be ok"),
    ("It’s okay, dear", "It’s okay"),
    ("It's alright", "It's alright"),
    ("Everything looks good", "Everything looks good"),
    ("You're good", "You're good"),
    ("Nothing is wrong with it", "Nothing is wrong"),
    ("That is not dangerous", "That is not dangerous"),
    ("It's probably nothing", "It's probably nothing"),
    ("This is very common", "is very common"),
    ("It is not an emergency", "It is not an emergency"),
    ("No hay de qué preocuparse", "No hay de qué preocuparse"),
    ("Es muy común", "Es muy común"),
    ("No es una urgencia", "No es una urgencia"),
    ("The swelling will go down", "swelling will go down"),
    ("The redness will be gone tomorrow", "will be gone"),
    ("The redness goes away", "redness goes away"),
    ("It usually goes away", "It usually goes away"),
    ("It gets better tomorrow", "It gets better"),
    ("You'll feel better tomorrow", "You'll feel better"),
    ("It clears up on its own", "clears up on its own"),
    ("You do not need a doctor", "do not need a doctor"),
    ("No need to go to the ER", "No need to go to the ER"),
    ("No doctor needed", "No doctor needed"),
    ("Se pasa solo", "Se pasa solo"),
    ("Se te va a quitar", "Se te va a quitar"),
    ("Mañana estarás mejor", "estarás mejor"),
    ("No necesitas médico", "No necesitas médico"),
    ("It sounds like an allergy", "sounds like an allergy"),
    ("That looks infected", "looks infected"),
    ("You may be allergic", "You may be allergic"),
    ("You might have an eye infection", "You might have an eye infection"),
    ("This is pink eye", "This is pink eye"),
    ("It's a mild reaction", "It's a mild reaction"),
    ("Parece una alergia", "Parece una alergia"),
    ("Use eye-drops", "eye-drops"),
    ("Take allergy meds", "Take allergy meds"),
    ("Use some hydrating cream", "Use some hydrating cream"),
    ("Rinse with saline", "saline"),
    ("Usa suero", "suero"),
    ("A warm washcloth helps", "washcloth"),
    ("A hypo allergenic glue", "hypo allergenic"),
    ("Your patch test was clear", "test was clear"),
    ("The test came back good", "test came back good"),
]

MAY_BE_SAID = [
    "Signs that are not normal: pain, swelling",
    "This isn't normal",
    "It is not safe to drive",
    "It is never safe to pull",
    "abnormal, unsafe, refine, define, safety glasses, insane",
    "fine lashes and a fine mist",
    "get home safely home",
    "Come with no mascara or oil",
    "without mascara or oil products",
    "Do not use remover, oil or acetone",
    "No pulling, no remover, no oil",
    "an oil-free cleanser",
    "no eye drops, no ointment",
    "Tell us if you are allergic to latex",
    "Tell us if you think you have an infection",
    "Do not take the lashes off at home",
    "Never peel them off yourself",
    "Take contact lenses out and do not rub",
    "If you were prescribed an adrenaline pen, use it first",
    "No test can rule a reaction out",
    "Tell us anything you notice, or reply GOOD",
    "The water drops on the pad",
    "Señales que no son normales",
    "Eso no es normal",
    "No es seguro conducir",
    "sin rímel ni aceite",
    "nada de removedor, aceite ni acetona",
    "No te quites las pestañas en casa",
    "Dinos si eres alérgica al látex",
    "Dinos lo que notes, o responde BIEN",
    "Si quedan pocas pestañas, lo decide tu artista",
    "If that's okay with you, we call at 3",
    "Is it ok to call you at 3?",
    "Tell us if you might be allergic to latex",
    "Do you have an allergy?",
    "Does it look infected?",
    "This is not an emergency line",
    "If it is not an emergency, answer here",
    "If it does not go away, see a doctor today",
    "Do not use any cream or gel near your eyes",
    "We lay a gel pad under your eyes",
    "A patch test is a good idea before a first set",
    "Tuesday looks good for us",
    "That looks great on you",
    "If nothing is wrong, reply GOOD",
    "You do not need to bring anything else",
    "It is common sense to rinse first",
    "No hay problema con el martes",
    "Si parece una infección, ve al médico",
]


@pytest.mark.parametrize(("text", "words"), NEVER)
def test_what_is_never_said_is_found_in_its_very_words(text: str, words: str) -> None:
    found = [finding for finding in neversaid.find(text, "care") if finding.words == words]

    assert len(found) == 1
    assert text[found[0].start : found[0].end] == words
    assert found[0].why
    assert found[0].cure


@pytest.mark.parametrize("text", MAY_BE_SAID)
def test_what_may_be_said_is_let_through(text: str) -> None:
    assert list(neversaid.find(text, "care")) == []


@pytest.mark.parametrize("text", ["s\u00adafe", "sa\u200bfe", "SAFE", "ｓａｆｅ", "sáfe"])
def test_no_hidden_letter_or_accent_hides_a_word(text: str) -> None:
    assert [finding.words for finding in neversaid.find(text, "care")] == [text]


@pytest.mark.parametrize(("seam", "found"), [(0, 0), (8, 0), (10, 1), (12, 1), (14, 0)])
def test_an_excuse_that_an_if_can_take_away_is_none(seam: int, found: int) -> None:
    assert len(list(neversaid.find("this is not normal", "care", seams=[seam]))) == found


@pytest.mark.parametrize(
    "text", ["20% off", "Only $15 today", "15 € today", "Book now", "a discount", "10% de descuento"]
)
def test_advertisements_are_kept_out_of_visits_and_health_and_left_to_reminders(text: str) -> None:
    for occasion in ("prepare", "care", "check", "answer", "patch_test"):
        assert list(neversaid.find(text, occasion)), occasion
    assert not list(neversaid.find(text, "fill_due"))


@pytest.mark.parametrize(
    "text",
    [
        "Your deposit of $20 counts toward the visit",
        "The balance is 60 €, in cash or by card",
        "Whoever cancels within 24 h is charged $25",
        "A missed visit costs 30 dollars",
        "El depósito es de 20 €",
    ],
)
def test_what_she_owes_for_her_visit_may_be_said(text: str) -> None:
    assert list(neversaid.find(text, "prepare")) == []


@pytest.mark.parametrize("text", ["No deposit, only $40", "The deposit is waived. $40 today", "Pay in cash from $40"])
def test_no_word_of_what_is_owed_hides_an_advertisement(text: str) -> None:
    assert list(neversaid.find(text, "prepare"))


def test_links_and_percentages_are_kept_out_of_health() -> None:
    assert list(neversaid.find("See https://wrenfield.example/care", "care"))
    assert list(neversaid.find("it happens to 54 % of clients", "check"))
    assert not list(neversaid.find("See https://wrenfield.example/way", "prepare"))


@pytest.mark.parametrize("text", ["Come by the studio", "Book an appointment", "Pásate por el estudio"])
def test_a_visit_is_never_the_answer_to_a_sign(text: str) -> None:
    assert list(neversaid.find(text, "answer"))
    assert not list(neversaid.find(text, "fill_due"))


@pytest.mark.parametrize("text", ["https://bit.ly/x1", "tinyurl.com/lash", "see T.CO/ab"])
def test_link_shorteners_are_found(text: str) -> None:
    assert list(neversaid.find_shorteners(text))


@pytest.mark.parametrize("text", ["https://wrenfield.example", "rabbit.lyons", "at.com/x", "not.co.uk"])
def test_other_addresses_are_no_shorteners(text: str) -> None:
    assert not list(neversaid.find_shorteners(text))
