"""What a reading found, in words: signs, sides, and what a text is about."""

from __future__ import annotations

from django.utils.functional import Promise
from django.utils.translation import gettext_lazy

from aftercare.core.reading import Topic

SIGNS: dict[str, Promise] = {
    "redness": gettext_lazy("redness"),
    "swelling": gettext_lazy("swelling"),
    "itching": gettext_lazy("itching"),
    "burning": gettext_lazy("burning"),
    "pain": gettext_lazy("pain"),
    "watering": gettext_lazy("watering"),
    "discharge": gettext_lazy("discharge"),
    "rash": gettext_lazy("rash or bumps"),
    "light": gettext_lazy("light hurts"),
    "gritty": gettext_lazy("a gritty feeling"),
    "vision": gettext_lazy("sight"),
    "breathing": gettext_lazy("breathing or throat"),
    "glue_in_eye": gettext_lazy("adhesive or remover in the eye"),
    "sealed_eye": gettext_lazy("an eye that does not open"),
    "hives": gettext_lazy("hives"),
    "faint": gettext_lazy("faintness"),
    "poking": gettext_lazy("something that pokes"),
}
SIDES: dict[str, Promise] = {
    "left": gettext_lazy("left eye"),
    "right": gettext_lazy("right eye"),
    "both": gettext_lazy("both eyes"),
}
TOPICS: dict[str, Promise] = {
    Topic.STOP: gettext_lazy("ending messages"),
    Topic.START: gettext_lazy("getting messages again"),
    Topic.HELP: gettext_lazy("help with messages"),
    Topic.WRONG_PERSON: gettext_lazy("somebody else’s number"),
    Topic.IRRITATION: gettext_lazy("something about eyes or lids"),
    Topic.FINE: gettext_lazy("nothing noticed"),
    Topic.RETENTION: gettext_lazy("how the lashes hold"),
    Topic.BOOKING: gettext_lazy("a visit"),
    Topic.COMPLAINT: gettext_lazy("a complaint"),
    Topic.QUESTION: gettext_lazy("a question"),
    Topic.OTHER: gettext_lazy("something else"),
}
