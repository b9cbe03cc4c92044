"""What is ticked on a client's page, in words: hers on the page, and on the pages of those who read it."""

from __future__ import annotations

from collections.abc import Iterator

from django.utils.functional import Promise
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from aftercare.core.reading import Side
from aftercare.core.ticks import Since, Suits, Tick, Ticked

TICKS: dict[str, Promise] = {
    Tick.BREATHING: gettext_lazy("Trouble breathing or swallowing, or a swollen face, lips, tongue or throat"),
    Tick.FAINT: gettext_lazy("I feel faint"),
    Tick.HIVES: gettext_lazy("Hives over my body"),
    Tick.IN_EYE: gettext_lazy("Adhesive, remover or something else got into an eye"),
    Tick.WILL_NOT_OPEN: gettext_lazy("An eye will not open"),
    Tick.SIGHT: gettext_lazy("My sight has changed"),
    Tick.SEVERE_PAIN: gettext_lazy("Severe pain"),
    Tick.INJURY: gettext_lazy("An eye was injured"),
    Tick.PUPIL: gettext_lazy("One pupil is bigger than the other"),
    Tick.PAIN: gettext_lazy("Pain"),
    Tick.LIGHT: gettext_lazy("Light hurts"),
    Tick.RED: gettext_lazy("Red eye"),
    Tick.SWOLLEN: gettext_lazy("Swollen lid"),
    Tick.DISCHARGE: gettext_lazy("Discharge or crusts"),
    Tick.RASH: gettext_lazy("Rash, blisters or flaking skin"),
    Tick.BURNING: gettext_lazy("Burning"),
    Tick.ITCHING: gettext_lazy("Itching"),
    Tick.WATERING: gettext_lazy("Watering"),
    Tick.GRITTY: gettext_lazy("A gritty feeling"),
    Tick.POKING: gettext_lazy("Something pokes"),
    Tick.FEVER: gettext_lazy("Fever"),
    Tick.SICK: gettext_lazy("Headache and feeling sick"),
    Tick.INFECTION: gettext_lazy("An eye infection or a stye"),
    Tick.UNWELL: gettext_lazy("Something is wrong with an eye"),
    Tick.NOTHING: gettext_lazy("I notice nothing"),
}
SIDES: dict[str, Promise] = {
    Side.LEFT: gettext_lazy("Left"),
    Side.RIGHT: gettext_lazy("Right"),
    Side.BOTH: gettext_lazy("Both"),
}
SINCE: dict[str, Promise] = {
    Since.TODAY: gettext_lazy("Today"),
    Since.YESTERDAY: gettext_lazy("Yesterday"),
    Since.DAYS: gettext_lazy("Two to six days"),
    Since.WEEK: gettext_lazy("A week or longer"),
}
SUITS: dict[str, Promise] = {
    Suits.WEEKDAYS: gettext_lazy("Monday to Friday"),
    Suits.SATURDAYS: gettext_lazy("Saturdays"),
    Suits.SUNDAYS: gettext_lazy("Sundays"),
    Suits.MORNINGS: gettext_lazy("Mornings"),
    Suits.AFTERNOONS: gettext_lazy("Afternoons"),
    Suits.EVENINGS: gettext_lazy("Evenings"),
}


def in_words(ticked: Ticked) -> str:
    """Say what she ticked about her eyes; '' where it was not about them, or nothing was ticked."""
    if not ticked.is_about_her_eyes:
        return ""
    return " · ".join(_parts(ticked))


def suits_in_words(ticked: Ticked) -> str:
    """Say when another day would suit her; '' where she did not say."""
    return ", ".join(str(SUITS[one]) for one in Suits if one in ticked.suits)


def _parts(ticked: Ticked) -> Iterator[str]:
    if ticked.ticks:
        yield ", ".join(str(TICKS[tick]) for tick in Tick if tick in ticked.ticks)
    if ticked.side:
        yield _("eye: %(side)s") % {"side": SIDES[ticked.side]}
    if ticked.since:
        yield _("since: %(since)s") % {"since": SINCE[ticked.since]}
    if ticked.lenses:
        yield _("wears contact lenses")
