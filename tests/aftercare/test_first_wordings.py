"""Each first wording, with the longest and the shortest names, in both languages and in several countries."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import date, datetime, time
from itertools import product
from typing import Any

import pytest

from aftercare import wording
from aftercare.core.fields import Facts
from aftercare.core.segments import measure
from aftercare.wording import MESSAGES, Words, compose, fields_used, first_wording, problems

FLAGS = ("moved", "first", "waiver_due", "under_18", "wears_lenses")
SHORTEST = Facts(
    occasion="prepare",
    studio="Z",
    first_name="Bo",
    starts_at=datetime.combine(date(2027, 5, 1), time(9, 0)),
    window=(date(2027, 5, 4), date(2027, 5, 4)),
)
EMERGENCIES = ("breathing", "chemical", "sealed", "sight")
OTHER_ANSWERS = ("same_day", "seen_today", "nobody_yet", "stopped_with_sign")
SERVICES = ("full set", "fill", "removal", "patch test", "touch-up", "lift", "consultation")

Key = tuple[str, str, int, str, str]


def every_wording() -> Iterator[Key]:
    """Give occasion, kind, step, channel and language of each file there is."""
    for file in sorted(MESSAGES.glob("*/*/*.txt")):
        channel, kind, step = [*file.stem.split("."), "", "0"][:3] if file.stem.count(".") < 2 else file.stem.split(".")
        yield file.parts[-3], kind, int(step or 0), channel, file.parts[-2]


WORDINGS = list(every_wording())
MESSAGE_WORDINGS = [key for key in WORDINGS if key[0] not in ("caution", "how_to_stop")]


def every_message() -> Iterator[Key]:
    """Give each wording once for every message that it serves: the checks' steps, and each emergency."""
    for occasion, kind, step, channel, language in MESSAGE_WORDINGS:
        kinds = EMERGENCIES if (occasion, kind) == ("answer", "") else (kind,)
        steps = (1, 2, 3) if occasion == "check" else (step,)
        for each_kind, each_step in product(kinds, steps):
            yield occasion, each_kind, each_step, channel, language


MESSAGES_TO_SEND = list(every_message())


def every_way(key: Key, base: Facts) -> Iterator[Words]:
    """Compose one message in each country, with every decision of its ifs, with and without what may be missing."""
    occasion, kind, step, channel, language = key
    words = first_wording(*key)
    flags = [flag for flag in FLAGS if flag in fields_used(words.body) | fields_used(words.subject)]
    facts = replace(base, occasion=occasion, kind=kind, step=step, channel=channel, language=language)
    links = ("", wording.QUESTIONS) if "questions" in fields_used(words.body) else ("",)
    for region, link, decided in product(
        ("US", "GB", "ES", "MX", "ZZ"), links, product((False, True), repeat=len(flags))
    ):
        ways: dict[str, Any] = dict(zip(flags, decided, strict=True)) | {"questions": link}
        yield compose(words, replace(facts, region=region, **ways))


@pytest.mark.parametrize("key", MESSAGES_TO_SEND, ids=str)
@pytest.mark.parametrize("base", [wording.LONGEST, SHORTEST], ids=["longest", "shortest"])
def test_a_first_wording_reads_well_with_the_longest_and_the_shortest_names(key: Key, base: Facts) -> None:
    for words in every_way(key, base):
        text = f"{words.subject}\n{words.body}"
        assert words.body
        assert not re.search(r"\{\{|\{%|%\}|\}\}|None|True|False", text)
        assert not re.search(r"  |\(\s*\)| [,.;:!?](?!\w)|,,|\.\.|,\.|[\u00a0\u202f]|\n\n\n", text), text


@pytest.mark.parametrize("key", [key for key in MESSAGES_TO_SEND if key[3] == "sms"], ids=str)
@pytest.mark.parametrize("base", [wording.LONGEST, SHORTEST], ids=["longest", "shortest"])
def test_a_first_sms_fits_two_segments_of_the_cheap_alphabet(key: Key, base: Facts) -> None:
    # 3GPP TS 23.038 6.2.1 and 23.040 9.2.3.24.1: two segments carry 306 septets.
    for words in every_way(key, base):
        measured = measure(words.body)
        assert (measured.encoding, measured.segments <= 2) == ("gsm7", True), (measured.units, words.body)


@pytest.mark.parametrize("key", WORDINGS, ids=str)
def test_a_first_wording_passes_the_check_that_the_owner_s_must_pass(key: Key) -> None:
    assert problems(*key, first_wording(*key)) == ()


@pytest.mark.parametrize("kind", EMERGENCIES)
def test_a_picture_in_the_studio_s_name_makes_no_emergency_s_answer_longer_than_two(kind: str) -> None:
    facts = replace(_facts("answer", kind, 0, "sms", "en"), studio="Wrenfield \u2728 Lash Room", region="US")

    assert measure(compose(first_wording("answer", kind, 0, "sms", "en"), facts).body).segments <= 2


@pytest.mark.parametrize("key", MESSAGES_TO_SEND, ids=str)
def test_a_first_wording_names_the_studio(key: Key) -> None:
    for words in every_way(key, wording.LONGEST):
        assert "Wrenfield Lash Room" in words.subject + words.body


VISIT_WORDINGS = [key for key in MESSAGE_WORDINGS if key[0] in ("prepare", "patch_test", "care", "check")]


@pytest.mark.parametrize("key", VISIT_WORDINGS, ids=str)
def test_a_wording_about_a_visit_names_her_and_how_to_stop(key: Key) -> None:
    for words in every_way(key, wording.LONGEST):
        assert "Wilhelmina" in words.body
        assert ("Marguerite-Anne" in words.body) is (key[1] != "lot")  # a lot is nobody's: it points at no artist
        assert "STOP" in words.body


@pytest.mark.parametrize(
    "key", [key for key in VISIT_WORDINGS if key[0] in ("prepare", "patch_test") or key[3] == "email"], ids=str
)
def test_a_wording_for_a_booked_visit_and_every_email_tells_day_and_hour(key: Key) -> None:
    for words in every_way(key, wording.LONGEST):
        assert re.search(r"Wednesday 30 September, 10:30|miércoles 30 de septiembre, 10:30", words.body)


@pytest.mark.parametrize("key", [key for key in MESSAGES_TO_SEND if key[0] in ("care", "check")], ids=str)
def test_care_and_checks_put_rinsing_first_and_say_whom_to_call(key: Key) -> None:
    facts = replace(
        wording.LONGEST, occasion=key[0], kind=key[1], step=key[2], channel=key[3], language=key[4], region="GB"
    )
    body = compose(first_wording(*key), facts).body

    assert re.search(r"[Rr]ins|[Ee]njua", body)
    assert re.search(r"999 or your local emergency number|999 o a emergencias de tu zona", body)
    assert re.search(r"doctor today|médico hoy|See a doctor or an eye doctor today|Ve hoy a un médico", body)


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("kind", ["full set", "fill", "touch-up", "lift"])
def test_keeping_dry_is_told_by_the_hour_of_the_adhesive_and_never_stops_a_rinse(
    kind: str, language: str, channel: str
) -> None:
    words = first_wording("care", kind, 0, channel, language)
    facts = replace(wording.LONGEST, occasion="care", kind=kind, channel=channel, language=language, dry_hours=36)

    body = compose(words, facts).body

    assert re.search(r"dry (?:for )?36 h|no mojes las pestañas 36 h|pestañas secas 36 h", body, re.IGNORECASE)
    rinse = (
        "never let that stop you from rinsing an eye|but do rinse an eye|nunca te impide enjuagar un ojo|pero enjuaga"
    )
    assert re.search(rinse, body)
    for none in (None, 0):
        without = compose(words, replace(facts, dry_hours=none)).body
        assert "36" not in without
        assert not re.search(r"\b0 h|dry for|no mojes las pestañas \d|pestañas secas", without, re.IGNORECASE)


@pytest.mark.parametrize(
    ("language", "over", "second_day"),
    [
        ("en", "Once the dry hours are over, wash", "second day"),
        ("es", "Pasadas las horas sin mojarlas", "segundo día"),
    ],
)
def test_washing_never_begins_before_the_dry_hours_are_over(language: str, over: str, second_day: str) -> None:
    facts = _facts("care", "full set", 0, "email", language)
    words = first_wording("care", "full set", 0, "email", language)

    body = compose(words, replace(facts, dry_hours=48)).body

    assert over in body
    assert second_day not in body
    assert second_day in compose(words, replace(facts, dry_hours=0)).body


@pytest.mark.parametrize("channel", ["sms", "email"])
def test_a_check_asks_so_that_a_bare_yes_is_no_answer(channel: str) -> None:
    facts = replace(wording.LONGEST, occasion="check", kind="fill", step=1, channel=channel)

    body = compose(first_wording("check", "fill", 1, channel, "en"), facts).body

    assert "How are your eyes today? Tell us anything you notice, or reply GOOD." in body


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize(("language", "washing"), [("en", "From today"), ("es", "Desde hoy")])
def test_only_the_first_check_tells_how_to_wash(language: str, washing: str, channel: str) -> None:
    texts = [
        compose(
            first_wording("check", "fill", step, channel, language),
            replace(_facts("check", "fill", step, channel, language), page=""),
        ).body
        for step in (1, 2, 3)
    ]

    assert [washing in text for text in texts] == [True, False, False]


def _facts(occasion: str, kind: str, step: int, channel: str, language: str) -> Facts:
    return replace(wording.LONGEST, occasion=occasion, kind=kind, step=step, channel=channel, language=language)


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize(("language", "now"), [("en", "our visit is now"), ("es", "u visita es ahora")])
def test_a_moved_visit_is_told_as_one(language: str, now: str, channel: str) -> None:
    first = [("patch_test", "", 0), *(("prepare", service, 0) for service in SERVICES)]
    for what in [*first, ("prepare", "full set", 1), ("prepare", "fill", 1)]:
        words, facts = first_wording(*what, channel, language), _facts(*what, channel, language)
        assert now in compose(words, replace(facts, moved=True)).body
        assert now not in compose(words, facts).body


@pytest.mark.parametrize("channel", ["sms", "email"])
def test_a_first_full_set_is_told_all_that_it_takes(channel: str) -> None:
    # Common practice of the trade, no source.
    facts = replace(_facts("prepare", "full set", 0, channel, "en"), first=True, waiver_due=True)
    body = compose(first_wording("prepare", "full set", 0, channel, "en"), facts).body.lower()

    for said in (
        r"up to (?:3|three) hours",
        "bare clean lashes",
        "mascara",
        "oil",
        "lens",
        "case",
        "glasses",
        "caffeine",
    ):
        assert re.search(said, body), said
    assert "restroom first" in body
    assert "waiver" in body


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize(("language", "since"), [("en", "since last time"), ("es", "desde la [uú]ltima vez")])
def test_a_fill_asks_for_the_style_and_what_bothered_her_eyes(language: str, since: str, channel: str) -> None:
    body = compose(
        first_wording("prepare", "fill", 0, channel, language), _facts("prepare", "fill", 0, channel, language)
    ).body

    assert re.search(r"style|estilo", body)
    assert re.search(since, body)


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize("occasion", ["fill_due", "full_set_due"])
def test_a_reminder_names_the_days_and_leaves_the_decision_to_the_artist(occasion: str, channel: str) -> None:
    body = compose(first_wording(occasion, "", 0, channel, "en"), _facts(occasion, "", 0, channel, "en")).body

    assert "between Wed 30 September and Wed 14 October" in body
    assert "may need a longer fill or a new set" in body
    assert not re.search(r"[$£€%]|discount|price", body)


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize(("language", "booked"), [("en", "You are booked"), ("es", "Tu cita")])
def test_a_fills_reminder_offers_an_earlier_visit_to_her_alone_who_has_a_later_one(
    language: str, booked: str, channel: str
) -> None:
    facts = _facts("fill_due", "", 0, channel, language)
    words = first_wording("fill_due", "", 0, channel, language)

    assert booked in compose(words, facts).body
    assert booked not in compose(words, replace(facts, booked_at=None)).body


def test_the_opt_in_and_help_texts_say_what_carriers_ask_for() -> None:
    # CTIA Messaging Principles and Best Practices (May 2023), 5.1.2 and 5.1.3, as quoted by those who follow it:
    # the name, what for, how often, that rates may apply, HELP and STOP.
    opt_in = compose(first_wording("opt_in", "", 0, "sms", "en"), _facts("opt_in", "", 0, "sms", "en")).body
    helping = compose(first_wording("answer", "help", 0, "sms", "en"), _facts("answer", "help", 0, "sms", "en")).body

    for said in ("Wrenfield Lash Room", "visits", "for each visit", "data rates may apply", "STOP"):
        assert said in opt_in
        assert said in helping
    assert "HELP" in opt_in
    assert "+1 555 010 0199" in helping


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize("language", ["en", "es"])
def test_the_confirmation_of_a_stop_asks_nothing_and_offers_nothing(language: str, channel: str) -> None:
    # 47 CFR 64.1200(a)(12): one confirming text, no marketing.
    body = compose(
        first_wording("answer", "stopped", 0, channel, language), _facts("answer", "stopped", 0, channel, language)
    ).body

    assert "?" not in body
    assert not re.search(r"START|https?:|book|visit|reserva", body)


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize(
    ("kind", "first"),
    [("breathing", r"Call 999|Llama YA al 999"), ("chemical", r"RINSE THE EYE NOW|ENJUAGA EL OJO YA")]
    + [("sealed", r"Do not force the eye|No fuerces el ojo"), ("sight", r"Get emergency eye care|Ve YA a urgencias")],
)
def test_an_emergency_answer_puts_the_action_first_and_ends_by_not_waiting(
    kind: str, first: str, language: str, channel: str
) -> None:
    facts = replace(_facts("answer", kind, 0, channel, language), region="GB")

    body = compose(first_wording("answer", kind, 0, channel, language), facts).body

    assert re.match(first, body)
    assert re.search(r"(?:Do not wait for us\.|No nos esperes\.)$", body)
    assert "111" not in body


def test_glue_in_an_eye_is_rinsed_for_at_least_twenty_minutes_without_solvent_or_force() -> None:
    # MedlinePlus, "Cyanoacrylates", and the Ontario Poison Centre: rinse, no acetone or other chemical, no pulling; NHS
    # on chemicals in the eye, from memory: at least 20 minutes, lenses out.
    facts = replace(_facts("answer", "chemical", 0, "sms", "en"), region="US")

    body = compose(first_wording("answer", "chemical", 0, "sms", "en"), facts).body

    for said in (
        "lukewarm water",
        "at least 20 minutes",
        "lenses out",
        "No rubbing, pulling",
        "acetone",
        "1-800-222-1222",
    ):
        assert said in body


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("kind", ["seen_today", "stopped_with_sign"])
def test_answers_about_a_sign_send_her_to_be_seen_today(kind: str, language: str, channel: str) -> None:
    body = compose(
        first_wording("answer", kind, 0, channel, language), _facts("answer", kind, 0, channel, language)
    ).body

    assert re.search(r"see a doctor or an eye doctor today|ve hoy a un médico u oculista", body, re.IGNORECASE)
    assert re.search(r"[Rr]inse|[Ee]njuaga", body)


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize(
    ("language", "now", "today"),
    [
        ("en", r"get emergency eye care \(ER\) NOW", "doctor"),
        ("es", r"ve YA a urgencias \(ER\)", r"\bhoy\b|m[eé]dico"),
    ],
)
def test_an_hour_after_an_emergency_she_is_not_told_that_today_will_do(
    language: str, now: str, today: str, channel: str
) -> None:
    facts = replace(_facts("answer", "nobody_yet", 0, channel, language), region="US")

    body = compose(first_wording("answer", "nobody_yet", 0, channel, language), facts).body

    assert re.search(now, body)
    assert re.search(r"911 or your local|911 o a emergencias", body)
    assert re.search(r"rinse|enjuaga", body)
    assert not re.search(today, body, re.IGNORECASE)


@pytest.mark.parametrize("key", [key for key in MESSAGES_TO_SEND if key[3] == "email"], ids=str)
def test_a_sight_that_changes_is_nowhere_left_for_a_doctor_today(key: Key) -> None:
    # NHS, "Red eye" (reviewed 2022-03-21): a change of sight is for emergency care.
    for words in every_way(key, wording.LONGEST):
        for sentence in re.split(r"(?<=[.!?])\s", words.body):
            if re.search(r"doctor today|ve hoy", sentence):
                assert not re.search(r"\bsight\b|visi[oó]n", sentence), sentence


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize(
    ("language", "sign", "doctor", "call"),
    [
        ("en", "Swelling", "doctor today", "call you by Wednesday 30 September, 10:30 am."),
        ("es", "Hinchaz", "ve hoy a", "llama"),
    ],
)
def test_a_same_day_answer_tells_the_signs_not_to_wait_with_and_then_by_when_a_person_calls(
    language: str, sign: str, doctor: str, call: str, channel: str
) -> None:
    facts = replace(_facts("answer", "same_day", 0, channel, language), region="US")
    words = first_wording("answer", "same_day", 0, channel, language)

    body = compose(words, facts).body

    assert body.index(sign) < body.index(doctor) < body.rindex(call)
    assert re.search(r"blisters|ampollas", body)
    assert re.search(r"lenses out|Lentes (?:de contacto )?fuera", body, re.IGNORECASE)
    soon = compose(words, replace(facts, call_by=None)).body
    assert re.search(r"as soon as (?:we|they) can|en cuanto p", soon)


@pytest.mark.parametrize("channel", ["sms", "email"])
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("kind", ["same_day", "seen_today"])
def test_what_she_has_told_is_not_put_as_an_if(kind: str, language: str, channel: str) -> None:
    body = compose(
        first_wording("answer", kind, 0, channel, language), _facts("answer", kind, 0, channel, language)
    ).body

    assert not re.search(r"\b(?:if|when|si|cuando)\b", body, re.IGNORECASE), body


@pytest.mark.parametrize("key", [key for key in MESSAGE_WORDINGS if key[0] in ("alert", "morning_list")], ids=str)
def test_words_to_staff_carry_no_name_and_no_sign(key: Key) -> None:
    body = compose(first_wording(*key), _facts(*key)).body

    assert "https://wrenfield.example/flags/1234567" in body
    assert not re.search(r"Wilhelmina|Marguerite|all clear|eye|ojo|pain|dolor", body)


def test_an_empty_morning_list_says_that_nothing_is_open() -> None:
    facts = replace(SHORTEST, occasion="morning_list", link="https://z.example/l")

    assert (
        compose(first_wording("morning_list", "", 0, "sms", "en"), facts).body
        == "Z: nothing open this morning. https://z.example/l"
    )


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("channel", ["sms", "email"])
def test_there_are_words_for_every_message_that_is_ever_planned(channel: str, language: str) -> None:
    wanted = [(occasion, service) for occasion in ("prepare", "patch_test", "care", "check") for service in SERVICES]
    wanted += [
        ("care", "caution"),
        ("fill_due", ""),
        ("full_set_due", ""),
        ("opt_in", ""),
        ("alert", ""),
        ("morning_list", ""),
    ]
    wanted += [("answer", kind) for kind in (*EMERGENCIES, *OTHER_ANSWERS, "stopped", "started", "help")]
    for occasion, kind in wanted:
        assert first_wording(occasion, kind, 0, channel, language).body


@pytest.mark.parametrize("kind", [*EMERGENCIES, *OTHER_ANSWERS])
@pytest.mark.parametrize("channel", ["sms", "email"])
def test_every_answer_about_a_sign_has_a_caution_of_its_own(channel: str, kind: str) -> None:
    for language in ("en", "es"):
        assert (MESSAGES / "caution" / language / f"{channel}.{kind}.txt").is_file()


def test_both_languages_have_the_same_files() -> None:
    def names(language: str) -> set[tuple[str, str]]:
        return {(file.parts[-3], file.name) for file in MESSAGES.glob(f"*/{language}/*.txt")}

    assert names("en") == names("es")


# What others can read on a locked screen: the subject, and what a mail program shows of it.
SHOWS = re.compile(
    r"\b(red|swell\w*|swollen|itch\w*|burn\w*|pain\w*|hurt\w*|rash|discharge|reaction|allerg\w*|sensitive|patch test|"
    r"roj\w*|hincha\w*|pic\w*|ard\w*|dol\w*|reacci\w*|al[eé]rg\w*|sensible)\b",
    re.IGNORECASE,
)


@pytest.mark.parametrize("key", [key for key in WORDINGS if key[3] == "email"], ids=str)
def test_a_subject_shows_no_sign_and_no_surname(key: Key) -> None:
    subject = first_wording(*key).subject

    if key[0] == "patch_test" or key[1] == "patch_test":
        subject = re.sub(r"patch test|prueba de parche", "", subject, flags=re.IGNORECASE)  # it is what the visit is
    assert not SHOWS.search(subject), subject
    assert "last_name" not in subject


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize(("occasion", "step"), [("care", 0), ("check", 1), ("check", 2), ("fill_due", 0)])
def test_every_text_leads_to_her_page_where_that_costs_nothing_more(occasion: str, step: int, language: str) -> None:
    names: dict[str, Any] = {"studio": "Wrenfield Lash Room", "first_name": "Mia", "artist": "Ada", "booked_at": None}
    names["region"] = "US"
    facts = replace(_facts(occasion, "fill", step, "sms", language), **names)
    words = first_wording(occasion, "fill", step, "sms", language)

    with_link = compose(words, facts).body
    without = compose(words, replace(facts, page="")).body

    assert facts.page in with_link
    assert facts.page not in without
    assert measure(with_link).segments == 2


def test_a_link_that_would_make_a_text_dearer_is_left_out_only_where_the_wording_says_what_goes_then() -> None:
    facts = replace(_facts("care", "fill", 0, "sms", "en"), artist="A" * 30, studio="B" * 40)
    optional, fixed = Words("", "x" * 250 + "{% if page %} {{ page }}{% endif %}"), Words("", "x" * 290 + " {{ page }}")

    assert compose(optional, facts).body == "x" * 250 + f" {facts.page}"  # it fits
    longer = replace(optional, body="x" * 50 + optional.body)
    assert compose(longer, facts).body == "x" * 300
    assert facts.page in compose(fixed, facts).body
    assert facts.page in compose(longer, facts, on_page=True).body
