"""What clients wrote, and how long it took until a person had it."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import Any

from aftercare.figures import Span, heard
from aftercare.figures.heard import Matter, wait
from aftercare.models import Flag, Message, Reply
from tests.cast import Cast

HOUR = timedelta(hours=1)


def only(span: Span) -> Matter:
    [found] = heard(span).matters
    return found


def test_a_person_has_it_who_takes_answers_or_closes_it_whichever_was_first(cast: Cast, span: Span) -> None:
    at = cast.at(9, -3)
    flag = cast.wrote(cast.client("Mia"), "itchy", at, urgency="same_day")
    assert only(span).had_at is None

    Flag.objects.filter(pk=flag.pk).update(closed_at=at + 5 * HOUR)
    assert only(span).had_at == at + 5 * HOUR

    Flag.objects.filter(pk=flag.pk).update(taken_at=at + 4 * HOUR)
    assert only(span).had_at == at + 4 * HOUR

    answer: dict[str, Any] = {"studio": cast.studio, "flag": flag, "occasion": "answer", "planned_from": at}
    Message.objects.create(key="machine", handed_over_at=at + HOUR / 60, **answer)
    Message.objects.create(key="own", handed_over_at=at + 2 * HOUR, written_by=cast.ada, **answer)
    assert only(span).had_at == at + 2 * HOUR


def test_what_became_urgent_waits_from_then_on(cast: Cast, span: Span) -> None:
    at = cast.at(9, -3)
    flag = cast.wrote(cast.client("Mia"), "itchy", at, urgency="emergency")
    Flag.objects.filter(pk=flag.pk).update(urgent_since=at + 3 * HOUR, taken_at=at + 4 * HOUR)

    assert (only(span).urgency, only(span).since) == ("emergency", at + 3 * HOUR)

    Flag.objects.filter(pk=flag.pk).update(urgency="watch")
    assert (only(span).urgency, only(span).since) == ("other", at)


def test_standard_words_and_machines_are_no_replies(cast: Cast, span: Span) -> None:
    her = cast.client("Mia")
    for number in (1, 2, 3):
        cast.wrote(her, "words", cast.at(9, -number))
    Reply.objects.filter(received_at=cast.at(9, -1)).update(command="stop")
    Reply.objects.filter(received_at=cast.at(9, -2)).update(automatic=True)

    found = heard(span)

    assert found.replies == {"sms": 1}
    assert len(found.matters) == 1


def test_a_matter_is_the_artists_who_did_the_visit_before(cast: Cast, span: Span) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -30), artist=cast.noor)
    cast.done(her, cast.at(9, -4), artist=cast.ada)
    cast.done(her, cast.at(9, -1), artist=cast.noor)
    cast.wrote(her, "itchy", cast.at(9, -3))

    assert only(span).artist == cast.ada.pk
    assert len(heard(replace(span, artist=cast.ada.pk)).matters) == 1
    assert heard(replace(span, artist=cast.noor.pk)).matters == []


def test_waits_are_in_hours_and_what_stands_counts_up_to_now(cast: Cast) -> None:
    at = cast.at(9, -3)
    some = [Matter("other", None, at, at + hours * HOUR) for hours in (1, 2, 4)]
    standing = Matter("other", None, at, None)

    found = wait([*some, standing], 0.5, at + 10 * HOUR)

    assert found is not None
    assert (found.value, found.waits, found.standing) == (2, 4, 1)  # two of the four
    assert wait([], 0.5, at) is None
