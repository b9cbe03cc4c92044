"""Check a wording before it is saved: what is wrong, where, and the cure.

Works on the source text. Only its length needs the text as it would arrive, which the caller renders with the longest
names there are.
"""

from __future__ import annotations

import dataclasses
import re
from dataclasses import dataclass

from aftercare.core import carriers, cautions, neversaid, placeholders, say
from aftercare.core.answering import BREATHING, CHEMICAL, SEALED, SIGHT
from aftercare.core.fields import BLOCKS, FIELDS, STAFF, kind_of
from aftercare.core.placeholders import Problem, Source
from aftercare.core.segments import Measure, measure

__all__ = ["Draft", "Problem", "blocks_saving", "check"]

MANY_SEGMENTS = 2  # above it each text costs more than its reader will read
TOO_MANY_SEGMENTS = 6  # above it carriers cut or refuse
LONGEST_SUBJECT = 200

# What each occasion must say, whatever its ifs decide, and what some kinds must say instead.
_REQUIRED: dict[str, tuple[str, ...]] = {
    "prepare": ("studio", "day", "hour"),
    "patch_test": ("studio",),
    "care": ("studio", "caution"),
    "check": ("studio", "caution"),
    "fill_due": ("studio", "window"),
    "full_set_due": ("studio", "window"),
    "opt_in": ("studio",),
    "notice": ("studio",),
    "answer": ("caution",),
    "alert": ("link",),
    "morning_list": ("link",),
    "caution": ("emergency_call",),
}
# CTIA Messaging Principles and Best Practices (May 2023): an opt-out gets one confirmation, by name and no more; the
# answer to HELP gives name, contact and how to stop.
_REQUIRED_OF_KINDS: dict[tuple[str, str], tuple[str, ...]] = {
    ("answer", "stopped"): ("studio",),
    ("answer", "started"): ("studio",),
    ("answer", "help"): ("studio",),
    ("answer", "your_record"): ("studio", "record"),
    ("caution", "chemical"): ("emergency_care",),
}
_STOP_IN_ANSWERS = frozenset({"started", "help"})
# The one wording that answers every emergency: nothing but the studio's name may keep her from what to do at once.
_AT_ONCE = frozenset({"", BREATHING, CHEMICAL, SEALED, SIGHT})
_BEGINS_WITH_THE_CAUTION = re.compile(r"\s*(?:\{\{-?\s*studio\s*-?\}\}[\s:,.!-]*)?\{\{-?\s*caution\s*-?\}\}")
_MISSING = {
    "caution": "The caution is missing or can be left out. It is fixed.",
    "day": "The visit's day is missing or can be left out.",
    "hour": "The visit's hour is missing or can be left out.",
}
_STOP = re.compile(r"\bSTOP\b")
_HELP = re.compile(r"\bHELP\b")


@dataclass(frozen=True, slots=True)
class Draft:
    """A wording as its owner typed it; ``longest`` is its body as it arrives with the longest names, "" if unknown.

    ``first`` is the caution that its body would stand in for, "" where it stands in for none.
    """

    occasion: str
    kind: str
    channel: str
    subject: str
    body: str
    longest: str = ""
    language: str = "en"
    first: str = ""


def check(draft: Draft) -> tuple[Problem, ...]:
    """Return everything that is wrong with a draft, the subject's problems first, each part's from top to bottom."""
    subject = _check_subject(draft)
    known = {name for name, field in FIELDS.items() if field.serves(draft.occasion)}
    body = placeholders.read(draft.body, known)
    _check_said(body, draft.occasion)
    if not draft.body.strip():
        body.problem(None, "The text is empty.", "Write something, or go back to the first wording.")
    elif not body.broken:  # else half of it would be missed, and all for one brace
        _check_required(body, draft)
        _check_way_to_stop(body, draft)
    _check_language(body, draft)
    _check_caution(body, draft)
    if draft.channel == "sms":
        _check_carriers(body)
        _check_length(body, draft.longest)
    return (*subject, *sorted(body.problems, key=lambda problem: (problem.line, problem.column)))


def blocks_saving(problems: tuple[Problem, ...]) -> bool:
    """Say whether any of the problems is more than a warning."""
    return any(not problem.warning for problem in problems)


def _check_subject(draft: Draft) -> tuple[Problem, ...]:
    known = {name for name, field in FIELDS.items() if field.serves(draft.occasion)}
    subject = placeholders.read(draft.subject, known)
    _check_said(subject, draft.occasion)
    if draft.channel == "email" and draft.occasion not in BLOCKS and not draft.subject.strip():
        subject.problem(None, "The subject is empty.", "Write in a few words what the e-mail is about.")
    if draft.channel == "sms" and draft.subject.strip():
        subject.problem(None, "An SMS has no subject.", "Leave it empty.")
    if "\n" in draft.subject.strip():
        subject.problem(draft.subject.index("\n"), "The subject has more than one line.", "Keep it to one.")
    if len(draft.subject) > LONGEST_SUBJECT:
        subject.problem(LONGEST_SUBJECT, "The subject is too long.", f"Keep it under {LONGEST_SUBJECT} characters.")
    return tuple(dataclasses.replace(problem, part="subject") for problem in subject.problems)


def _check_said(source: Source, occasion: str) -> None:
    if occasion not in STAFF:
        for finding in neversaid.find(source.shown, occasion, source.seams):
            what = f"“{finding.words.replace(placeholders.SHOWN_FIELD, '…')}” is never said. {finding.why}"
            source.problem(source.places[finding.start], what, finding.cure, end=source.places[finding.end - 1] + 1)
    for finding in neversaid.find_shorteners(source.shown):
        source.problem(source.places[finding.start], f"{finding.words} hides a link. {finding.why}", finding.cure)


def _check_required(source: Source, draft: Draft) -> None:
    required = _REQUIRED_OF_KINDS.get((draft.occasion, kind_of(draft.kind)), _REQUIRED.get(draft.occasion, ()))
    for name in required:
        if name not in source.always:
            what = _MISSING.get(name, f"“{name}” is missing or can be left out.")
            cure = f"Write {{{{ {name} }}}} where it always goes: in no “if”, and with nothing behind its name."
            source.problem(source.fields.get(name), what, cure)
    is_emergency = draft.occasion == "answer" and kind_of(draft.kind) in _AT_ONCE
    if is_emergency and "caution" in source.always and not _BEGINS_WITH_THE_CAUTION.match(draft.body):
        source.problem(None, "It does not begin with what to do at once.", "Write {{ caution }} first, all else below.")
    if draft.occasion == "answer" and kind_of(draft.kind) == "help" and "studio_phone" not in source.fields:
        source.problem(
            None, "It does not say where to find help.", "Write {{ studio_phone }}, in an if where it may be unknown."
        )
    if draft.occasion == "opt_in" and not _HELP.search(source.certain):
        source.problem(None, "It does not say that HELP brings help.", "Write: Reply HELP for help.")


def _check_way_to_stop(source: Source, draft: Draft) -> None:
    excused = draft.occasion in STAFF or draft.occasion == "caution"
    if excused or (draft.occasion == "answer" and kind_of(draft.kind) not in _STOP_IN_ANSWERS):
        return
    if "how_to_stop" not in source.always and not _STOP.search(source.certain):
        source.problem(
            source.fields.get("how_to_stop"),
            "It does not always say how to stop these messages.",
            "Write {{ how_to_stop }} where it always goes, in no “if”, or the word STOP.",
        )


def _check_language(source: Source, draft: Draft) -> None:
    if draft.language not in say.LANGUAGES and draft.occasion not in STAFF:
        source.problem(
            None,
            "What is never said cannot be looked for in this language.",
            "Have somebody who speaks it read the text before you save it.",
            warning=True,
        )


def _check_caution(source: Source, draft: Draft) -> None:
    if not draft.first:
        return
    first = placeholders.read(draft.first, FIELDS)
    # What a comment holds is said to nobody, and what an if holds not to everybody.
    missing = dict.fromkeys(
        (*cautions.left_out(_certain(first), _certain(source)), *cautions.left_out(_shown(first), _shown(source)))
    )
    if missing:
        what = f"The caution no longer says: {'; '.join(missing)}."
        source.problem(
            None, what, "Put it back, or make sure that the clinician has seen that it is gone.", warning=True
        )


def _certain(source: Source) -> str:
    return f"{source.certain} {' '.join(sorted(source.always))}"


def _shown(source: Source) -> str:
    return f"{source.shown} {' '.join(sorted(source.fields))}"


def _check_carriers(source: Source) -> None:
    for found in carriers.find_blocked(source.shown):
        place = source.places[found.start] if source.places else 0
        source.problem(
            place, f"“{found.words}” may keep it from arriving. {found.why}", found.cure, warning=not found.surely
        )


def _check_length(source: Source, longest: str) -> None:
    measured = measure(longest)
    if measured.segments > MANY_SEGMENTS:
        too_many = measured.segments > TOO_MANY_SEGMENTS
        what = f"With the longest names it is charged as {measured.segments} texts."
        source.problem(None, what, _shorter(measured), warning=not too_many)
    elif measured.dear:
        source.problem(None, "It has special letters, with which a text holds fewer.", _shorter(measured), warning=True)


def _shorter(measured: Measure) -> str:
    if not measured.dear:
        return f"Make it shorter: {MANY_SEGMENTS} texts carry 306 letters."
    characters = " ".join(dict.fromkeys(dear.character for dear in measured.dear))
    return f"Write something else for {characters}: each text carries 67 letters with them, 153 without."
