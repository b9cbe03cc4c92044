"""Numbers of a scale, letters of a list, and times, under the question that gives them their meaning."""

from __future__ import annotations

import pytest

from aftercare.core.reading import read
from aftercare.core.reading.values import Topic, Urgency


@pytest.mark.parametrize(
    ("answer", "question", "urgency", "topic"),
    [
        ("0", "From 0 to 10, how sore are your eyes?", Urgency.NONE, Topic.FINE),
        ("maybe a 4", "From 0 to 10, how sore are your eyes?", Urgency.SAME_DAY, Topic.IRRITATION),
        ("was 5 now 0", "What number would you give the itching?", Urgency.WATCH, Topic.IRRITATION),
        ("9", "Out of 10, how happy are you with your set?", Urgency.NONE, Topic.FINE),
        ("2", "Out of 10, how happy are you with your set?", Urgency.NONE, Topic.COMPLAINT),
        ("B", "Your eyes: A comfortable B slightly itchy", Urgency.SAME_DAY, Topic.IRRITATION),
        ("A", "Your eyes: A comfortable B slightly itchy", Urgency.NONE, Topic.FINE),
        ("about 3 days", "When did the itching start?", Urgency.SAME_DAY, Topic.IRRITATION),
        ("no thanks", "Would you like to keep getting our messages?", Urgency.NONE, Topic.STOP),
        ("no sorry", "Can you still make 10.30 on Friday?", Urgency.NONE, Topic.BOOKING),
    ],
)
def test_an_answer_means_what_its_question_makes_of_it(
    answer: str, question: str, urgency: Urgency, topic: Topic
) -> None:
    reading = read(f"{answer}\n\n> {question}")
    assert (reading.urgency, reading.about) == (urgency, (topic,))
