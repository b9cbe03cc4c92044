"""What is found in a wording before it is saved."""

from __future__ import annotations

import pytest

from aftercare.core.wordcheck import Draft, Problem, blocks_saving, check

STOP = "{{ how_to_stop }}"


def found(
    occasion: str, body: str, *, kind: str = "", channel: str = "sms", subject: str = "", longest: str = ""
) -> list[str]:
    problems = check(Draft(occasion, kind, channel, subject, body, longest))
    return [problem.what for problem in problems]


@pytest.mark.parametrize(
    ("occasion", "kind", "body"),
    [
        ("prepare", "fill", f"{{{{ studio }}}}: {{{{ day }}}}, {{{{ hour }}}} {STOP}"),
        ("patch_test", "", f"{{{{ studio }}}}: a test first {STOP}"),
        ("care", "fill", f"{{{{ studio }}}} {{{{ caution }}}} {STOP}"),
        ("check", "fill", f"{{{{ studio }}}} {{{{ caution }}}} {STOP}"),
        ("fill_due", "", f"{{{{ studio }}}} {{{{ window }}}} {STOP}"),
        ("full_set_due", "", f"{{{{ studio }}}} {{{{ window }}}} {STOP}"),
        ("opt_in", "", f"{{{{ studio }}}} Reply HELP for help. {STOP}"),
        ("answer", "breathing", "{{ caution }}"),
        ("answer", "same_day", "{{ caution }}"),
        ("answer", "stopped", "{{ studio }}: no more."),
        ("answer", "started", f"{{{{ studio }}}} {STOP}"),
        ("answer", "help", f"{{{{ studio }}}} {{{{ studio_phone }}}} {STOP}"),
        ("alert", "", "{{ link }}"),
        ("morning_list", "", "{{ link }}"),
        ("caution", "breathing", "Call {{ emergency_call }}"),
        ("caution", "chemical", "Rinse. {{ emergency_care }}"),
        ("how_to_stop", "", "Reply STOP"),
    ],
)
def test_what_an_occasion_must_say_is_enough_and_each_part_of_it_is_missed(occasion: str, kind: str, body: str) -> None:
    assert found(occasion, body, kind=kind) == []
    for part in [*[word for word in body.split() if word in ("HELP", "STOP")], *_fields(body)]:
        assert found(occasion, body.replace(part, "x"), kind=kind), part


def _fields(body: str) -> list[str]:
    return ["{{" + piece.split("}}")[0] + "}}" for piece in body.split("{{")[1:]]


@pytest.mark.parametrize(
    "body",
    [
        "{% if first %}{{ caution }}{% endif %}",
        "{{ caution | truncate: 20 }}",
        '{{ caution | default: "x" }}',
        "{% comment %}{{ caution }}{% endcomment %}",
        "{% unless caution %}{{ caution }}{% endunless %}",
        "caution",
    ],
)
def test_the_caution_cannot_be_dropped_by_any_trick(body: str) -> None:
    problems = check(Draft("care", "fill", "sms", "", f"{{{{ studio }}}} {body} {STOP}"))

    assert [problem.what for problem in problems] == ["The caution is missing or can be left out. It is fixed."]
    assert blocks_saving(problems)


@pytest.mark.parametrize("kind", ["", "breathing"])
@pytest.mark.parametrize(
    "body",
    [
        "Thank you for your message! {{ caution }}",
        "{% comment %}{{ caution }}{% endcomment %}Thank you! {{ caution }}",
        "{% if studio_phone %}{{ caution }}{% endif %}Thank you! {{ caution }}",
        "{{ studio }} thanks you: {{ caution }}",
    ],
)
def test_nothing_stands_before_what_to_do_in_an_emergency(body: str, kind: str) -> None:
    problems = check(Draft("answer", kind, "sms", "", body))

    assert [problem.what for problem in problems] == ["It does not begin with what to do at once."]
    assert blocks_saving(problems)


@pytest.mark.parametrize("body", ["{{ caution }} Thank you!", "{{ studio }}: {{ caution }}", "\n{{- caution -}}"])
def test_an_emergencys_answer_may_name_the_studio_first_and_say_more_below(body: str) -> None:
    assert found("answer", body) == []
    assert found("answer", f"Thank you. {body}", kind="will_call") == []


@pytest.mark.parametrize("way", ["{{ how_to_stop }}", "Reply STOP to end", "Text STOP."])
def test_a_way_to_stop_may_be_the_field_or_the_word(way: str) -> None:
    assert found("patch_test", f"{{{{ studio }}}} {way}") == []


@pytest.mark.parametrize(
    "way", ["", "stop by", "{% if first %}Reply STOP{% endif %}", "{% comment %}STOP{% endcomment %}"]
)
def test_a_way_to_stop_that_can_go_missing_is_none(way: str) -> None:
    assert found("patch_test", f"{{{{ studio }}}} {way}") == ["It does not always say how to stop these messages."]


def test_a_field_that_the_occasion_does_not_offer_is_unknown_there() -> None:
    assert "There is no field “first_name” here." in found("alert", "{{ first_name }} {{ link }}")
    assert "There is no field “window” here." in found("care", "{{ window }}")


def test_a_problem_names_line_and_column_from_one_and_the_cure() -> None:
    problem = check(Draft("patch_test", "", "sms", "", f"{{{{ studio }}}}\nAll is   normal. {STOP}"))[0]

    assert (problem.line, problem.column, problem.part) == (2, 10, "body")
    assert problem.what.startswith("“normal” is never said.")
    assert problem.cure == "Name the signs and what to do instead."
    assert str(problem).startswith("Line 2, column 10: “normal” is never said.")


def test_words_divided_by_a_tag_or_hidden_in_quotes_are_read_together() -> None:
    assert any(
        "safe" in what for what in found("patch_test", f"{{{{ studio }}}} sa{{% if first %}}{{% endif %}}fe {STOP}")
    )
    assert any("safe" in what for what in found("patch_test", f'{{{{ studio | default: "safe" }}}} {STOP}'))


def test_a_not_that_an_if_takes_away_excuses_nothing() -> None:
    body = f"{{{{ studio }}}} {{% if first %}}not {{% endif %}}normal {STOP}"

    assert [what for what in found("patch_test", body) if "normal" in what]


def test_signs_that_are_not_normal_may_be_said() -> None:
    assert found("patch_test", f"{{{{ studio }}}} Signs that are not normal {STOP}") == []


@pytest.mark.parametrize(
    ("letters", "what", "warning"),
    [
        (306, None, None),
        (307, "With the longest names it is charged as 3 texts.", True),
        (918, "With the longest names it is charged as 6 texts.", True),
        (919, "With the longest names it is charged as 7 texts.", False),
    ],
)
def test_length_warns_above_two_segments_and_stops_above_six(
    letters: int, what: str | None, warning: bool | None
) -> None:
    # 3GPP TS 23.040 9.2.3.24.1: 153 septets a segment, so that 306, 918 and 919 lie on the borders.
    problems = check(Draft("patch_test", "", "sms", "", f"{{{{ studio }}}} {STOP}", "a" * letters))

    assert [(problem.what, problem.warning) for problem in problems] == ([] if what is None else [(what, warning)])


def test_letters_that_make_a_text_dear_are_named() -> None:
    (problem,) = check(Draft("patch_test", "", "sms", "", f"{{{{ studio }}}} {STOP}", "Mia 🙂 🙂"))

    assert problem.warning
    assert "🙂" in problem.cure


def test_an_email_needs_a_subject_of_one_line_and_an_sms_has_none() -> None:
    body = f"{{{{ studio }}}} {STOP}"

    assert found("patch_test", body, channel="email") == ["The subject is empty."]
    assert found("patch_test", body, channel="email", subject="A test first") == []
    assert found("patch_test", body, channel="email", subject="A\ntest") == ["The subject has more than one line."]
    assert found("patch_test", body, channel="email", subject="a" * 201) == ["The subject is too long."]
    assert found("patch_test", body, subject="A test") == ["An SMS has no subject."]


def test_the_subject_is_read_as_closely_as_the_body() -> None:
    problem = check(Draft("patch_test", "", "email", "All is safe", f"{{{{ studio }}}} {STOP}"))[0]

    assert (problem.part, problem.line, problem.column) == ("subject", 1, 8)


def test_an_empty_text_says_only_that_it_is_empty() -> None:
    assert found("care", " \n ") == ["The text is empty."]


def test_a_shortened_link_is_refused_to_staff_too() -> None:
    assert any("hides a link" in what for what in found("alert", "{{ link }} bit.ly/x"))


def test_words_to_staff_need_no_way_to_stop_and_may_say_what_is_never_said_to_a_client() -> None:
    assert found("alert", "{{ link }} all is normal") == []


def test_only_warnings_let_a_wording_be_saved() -> None:
    assert not blocks_saving((Problem(1, 1, "long", "cut", warning=True),))
    assert blocks_saving((Problem(1, 1, "long", "cut", warning=True), Problem(1, 1, "bad", "mend")))


def test_in_a_language_without_its_list_somebody_who_speaks_it_is_asked_for() -> None:
    (problem,) = check(Draft("patch_test", "", "sms", "", f"{{{{ studio }}}} {STOP}", language="fr"))

    assert problem.warning
    assert "in this language" in problem.what
    assert check(Draft("alert", "", "sms", "", "{{ link }}", language="fr")) == ()


@pytest.mark.parametrize(
    "offer", ["Book now", "only $40", "20% off", "free fill", "gift card", "rebajas", "Reserva ya", "flash sale"]
)
@pytest.mark.parametrize("occasion", ["prepare", "patch_test", "care", "check"])
def test_an_offer_in_a_message_about_a_visit_or_health_is_refused(offer: str, occasion: str) -> None:
    # 47 CFR 64.1200(f)(1) and CTIA 5.1: what advertises needs another consent than what informs.
    body = f"{{{{ studio }}}} {{{{ day }}}} {{{{ hour }}}} {offer} {STOP}"

    assert any("advertisement" in what for what in found(occasion, body))


@pytest.mark.parametrize("slip", ["{% if first %}", "{{ studio }", "{% endif %}"])
def test_one_slip_is_one_complaint_and_what_follows_from_it_waits(slip: str) -> None:
    assert len(found("care", f"{slip} {{{{ studio }}}} {{{{ caution }}}} {STOP}")) == 1
    assert len(found("care", f"{slip} Hello")) == 1  # that the caution is missing is said once this can be read


def test_what_is_missing_has_no_place() -> None:
    [problem] = check(Draft("patch_test", "", "sms", "", "{{ studio }}"))

    assert problem.around == ("", "", "")
