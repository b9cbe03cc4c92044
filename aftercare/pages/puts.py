"""What the fields of a wording are called where they are put in: plain words, not the names in the braces."""

from __future__ import annotations

from django.utils.functional import Promise
from django.utils.translation import gettext_lazy as _

LABELS: dict[str, Promise] = {
    "studio": _("your studio’s name"),
    "studio_phone": _("your telephone"),
    "first_name": _("her first name"),
    "artist": _("her artist"),
    "service": _("the service"),
    "day": _("the day of the visit"),
    "hour": _("the hour of the visit"),
    "minutes": _("how many minutes"),
    "step": _("which message it is"),
    "moved": _("only if the visit has moved"),
    "first": _("only if she is new here"),
    "waiver_due": _("only if the waiver is missing"),
    "under_18": _("only if she is under 18"),
    "wears_lenses": _("only if she wears lenses"),
    "dry_hours": _("how many hours to keep dry"),
    "window": _("the best days to come"),
    "booked_day": _("the later day she has booked"),
    "questions": _("the link to her questions"),
    "caution": _("the caution"),
    "how_to_stop": _("how to stop"),
    "emergency_call": _("the emergency number"),
    "emergency_care": _("emergency eye care"),
    "poison_line": _("the poison line"),
    "call_by": _("by when a person calls"),
    "visit_ahead": _("only if a visit is booked"),
    "page": _("the link to her page"),
    "record": _("the link to her record"),
    "link": _("the link to the list"),
    "as_of": _("when it was counted"),
    "last_reply": _("the newest reply"),
    "last_sweep": _("the last look"),
    "open_flags": _("how many are open"),
    "urgent_flags": _("how many are urgent"),
    "nothing_open": _("only if nothing is open"),
    "promises": _("how many other lines"),
}
OFTEN = frozenset({"first_name", "artist", "service", "day", "hour", "window", "page", "link"})  # the others are folded


def put(name: str, meaning: str) -> str:
    """Return what a click puts into the text: the field, or an if around what goes only where it holds."""
    if meaning.startswith("For an if:"):
        return f"{{% if {name} %}} {{% endif %}}"
    return f"{{{{ {name} }}}}"
