"""Alarms in other languages: a small list, and a person reads them all. Phrases written for this test, from memory."""

from __future__ import annotations

import pytest

from aftercare.core.reading import Urgency, read

ALARMS = """
    pt: não consigo respirar
    pt: não consigo ver do olho esquerdo
    pt: não consigo abrir o olho
    pt: meu rosto está inchado
    fr: je n'arrive pas à respirer
    fr: je ne vois plus de l'œil gauche
    fr: je n'arrive pas à ouvrir l'œil
    fr: je vois double
    de: ich bekomme keine Luft
    de: ich sehe auf dem linken Auge nichts
    de: ich kann mein Auge nicht öffnen
    de: Kleber im Auge
    it: non riesco a respirare
    it: non vedo dall'occhio sinistro
    it: non riesco ad aprire l'occhio
    it: mi si chiude la gola
    nl: ik krijg geen adem
    nl: ik zie niets met mijn linkeroog
    nl: mijn gezicht is opgezwollen
    nl: lijm in mijn oog
    pl: nie mogę oddychać
    pl: nie widzę na lewe oko
    pl: nie mogę otworzyć oka
    pl: mam spuchniętą twarz
    ru: не могу дышать
    ru: не вижу левым глазом
    ru: не могу открыть глаз
    ru: лицо опухло
    vi: tôi không thở được
    vi: tôi không nhìn thấy gì
    vi: tôi không mở được mắt
    vi: mặt tôi sưng to
    zh: 我喘不过气
    zh: 我看不见了
    zh: 我睁不开眼睛
    zh: 我的脸肿了
    ko: 숨을 못 쉬겠어요
    ko: 앞이 안 보여요
    ko: 눈을 못 뜨겠어요
    ko: 얼굴이 부었어요
    ja: 息ができない
    ja: 目が見えません
    ja: 目が開かない
    ja: 顔が腫れています
    ar: لا أستطيع التنفس
    ar: لا أرى بعيني
    ar: لا أستطيع فتح عيني
    ar: وجهي متورم
    tl: hindi ako makahinga
    tl: hindi ako makakita
    tl: hindi ko mabuksan ang mata ko
    tl: namamaga ang mukha ko
"""
THANKS = """
    obrigada, adorei!
    merci, elles sont superbes
    danke, alles super
    grazie mille, bellissime
    heel erg bedankt
    dziękuję, są piękne
    спасибо, очень красиво
    cảm ơn chị, đẹp lắm
    谢谢，很漂亮
    감사합니다 너무 예뻐요
    شكرا جميلة جدا
    salamat, ang ganda
    puis-je venir vendredi?
    kann ich Freitag kommen?
"""


@pytest.mark.parametrize("line", ALARMS.strip().splitlines())
def test_what_must_be_acted_on_now_is_known_in_other_languages_too(line: str) -> None:
    text = line.partition(": ")[2]

    assert read(text).urgency is Urgency.EMERGENCY


@pytest.mark.parametrize("text", [line.strip() for line in THANKS.strip().splitlines()])
def test_thanks_and_bookings_raise_no_alarm(text: str) -> None:
    assert read(text).urgency is Urgency.NONE


@pytest.mark.parametrize(
    "text", ["我的眼睛有点红", "mắt tôi hơi đỏ", "mes yeux me grattent un peu", "Ich habe eine Frage zur Pflege"]
)
def test_all_else_is_for_a_person(text: str) -> None:
    assert read(text).unread


def test_english_that_looks_like_another_language_still_raises_its_alarm() -> None:
    assert read("Mi tongue a swell up inna mi mouth, mi cyaan talk good").urgency is Urgency.EMERGENCY
