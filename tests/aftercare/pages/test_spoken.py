"""What the parts below the pages write in English is said in the reader's language."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator

import pytest
from django.utils import translation

from aftercare.core.fields import FIELDS
from aftercare.core.timing import Occasion, Reason, Rules, explain
from aftercare.pages.spoken import FORMS, spoken
from studio import catalogue

# Where words come from that pages show: each sentence of theirs must have its form.
BELOW = {
    "aftercare/core/cautions.py": r"^[a-z ,]+$",
    "aftercare/core/carriers.py": r"\.$",
    "aftercare/core/forbidden.py": r"^[A-Z].*\.$",
    "aftercare/core/neversaid.py": r"\.$|^“X” is",
    "aftercare/core/patchtests.py": r".",
    "aftercare/core/placeholders.py": r"[.?]$",
    "aftercare/core/wordcheck.py": r"\.$|^“X” (is|may)",
    "aftercare/facts/judging.py": r".",
    "aftercare/outbox/unsure.py": r"^(It |The service)",
    "aftercare/sending/roads.py": r"nobody knows",
    "aftercare/transports/email/__init__.py": r"mail (server|address)",
    "aftercare/transports/email/outcomes.py": r"nobody knows|client's card",
    "aftercare/transports/email/provider.py": r"mail",
    "aftercare/transports/email/smtp.py": r"mail|The line dropped",
    "aftercare/transports/memory.py": r"The provider (is|refused)|nobody knows",
}
WORDS = re.compile(r"[a-z“”]+ [a-z{]+")


def sentences(file: str, only: str) -> Iterator[str]:
    """Return the sentences that a module puts together, with an X for whatever is filled in; no docstrings."""
    tree = ast.parse((catalogue.ROOT / file).read_text(encoding="utf-8"))
    quiet: set[int] = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.JoinedStr):
            quiet |= {id(part) for part in ast.walk(node) if part is not node}
        if isinstance(node, ast.Expr):
            quiet.add(id(node.value))
    for node in ast.walk(tree):
        if id(node) in quiet or not isinstance(node, ast.Constant | ast.JoinedStr):
            continue
        parts = node.values if isinstance(node, ast.JoinedStr) else [node]
        text = "".join(str(part.value) if isinstance(part, ast.Constant) else "X" for part in parts)
        if WORDS.search(text) and re.search(only, text):
            yield text.removeprefix("X ")


@pytest.mark.parametrize("file", BELOW)
def test_every_sentence_from_below_has_its_form(file: str) -> None:
    found = set(sentences(file, BELOW[file])) - {"the visit was X"}  # X: cancelled or missed, each a form of its own
    assert found

    with translation.override("es"):
        assert {one for one in found if spoken(one) == one} == set()


@pytest.mark.parametrize("reason", list(Reason))
def test_every_reason_is_said(reason: Reason) -> None:
    with translation.override("es"):
        assert spoken(reason) != reason


@pytest.mark.parametrize("occasion", list(Occasion))
def test_when_a_message_goes_is_said(occasion: Occasion) -> None:
    step = 1 if occasion is Occasion.CHECK else 0
    with translation.override("es"):
        said = spoken(explain(occasion, step, Rules()))

    assert said != explain(occasion, step, Rules())
    assert "before" not in said
    assert "after" not in said


def test_what_stands_together_is_said_together() -> None:
    with translation.override("es"):
        moved = spoken("10:00, 3 days before the visit; moved to the next moment that is open for it; on hold")
        refused = spoken(
            "The mail server refused mia@mail.example (550 no such user). Correct it on the client's card."
        )

    assert moved == (
        "a las 10:00, 3 días antes de la visita; pasado al próximo momento que le queda abierto; en espera"
    )
    assert refused == (
        "El servidor de correo rechazó mia@mail.example (550 no such user). Corrígelo en la ficha de la clienta."
    )


def test_a_server_s_own_answer_stays_as_it_was_written() -> None:
    with translation.override("es"):
        assert spoken("554 5.7.1 policy; see below") == "554 5.7.1 policy; see below"
    assert spoken("too late") == "too late"
    assert spoken("") == ""


def test_no_form_hides_another() -> None:
    """Each form's own words are found by itself, and not by one that stands before it."""
    with translation.override("es"):
        for form in FORMS:
            filled = re.sub(r"\{(\w+)\}", r"<\1>", form)
            wanted = re.sub(r"\{(\w+)\}", r"<\1>", translation.gettext(form))
            assert spoken(filled) == wanted


def test_what_each_field_of_a_wording_says_has_its_form() -> None:
    assert [field.meaning for field in FIELDS.values() if field.meaning not in FORMS] == []
