"""Marking a visit done in few taps: what was used, how much of the last set was left, how she left."""

from __future__ import annotations

from decimal import Decimal
from typing import Any, cast

from django import forms
from django.core.exceptions import ValidationError
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from studio.forms.fields import RecordForm
from studio.models import SETS, Adhesive, Service, Studio, Visit
from studio.records import UsedFields

NOT_LOOKED, ANOTHER = "not looked", "another"
TENS = [(str(share), str(share)) for share in range(0, 101, 10)]
RECENT = 5
NEW, NOT_KNOWN = "new", "not known"

# Which questions belong to which service.
_GLUED = (Service.FULL_SET, Service.FILL, Service.TOUCH_UP, Service.PATCH_TEST)
_ASKED = {
    "style": SETS,
    "lash_map": SETS,
    "adhesive": _GLUED,
    "remover": (*SETS, Service.REMOVAL),
    "tape": (*_GLUED, Service.REMOVAL, Service.LIFT),
    "primer": (*_GLUED, Service.LIFT),
    "outgrown": SETS,
    "mirror_check": (*SETS, Service.REMOVAL, Service.TOUCH_UP, Service.LIFT),
}


class DoneForm(RecordForm):
    """What was done. Nothing is preset that an eye must see: share left, outgrown lashes, mirror check, lot."""

    share = forms.ChoiceField(
        label=_("How much of the last set was left, %?"),
        choices=[*TENS, (ANOTHER, _("another number")), (NOT_LOOKED, _("not looked"))],
        widget=forms.RadioSelect,
        error_messages={"required": _("Tap what was left when she came in, or “not looked”.")},
    )
    share_exact = forms.DecimalField(
        label=_("Another number, %"),
        required=False,
        min_value=0,
        max_value=100,
        max_digits=4,
        decimal_places=1,
        widget=forms.NumberInput(attrs={"inputmode": "decimal", "step": "any"}),
    )
    outgrown = forms.ChoiceField(
        label=_("Outgrown lashes"), choices=Visit.Outgrown.choices, widget=forms.RadioSelect, required=False
    )
    mirror_check = forms.ChoiceField(
        label=_("Mirror check"), choices=Visit.MirrorCheck.choices, widget=forms.RadioSelect, required=False
    )
    adhesive = forms.ChoiceField(
        label=_("Adhesive and lot"),
        widget=forms.RadioSelect,
        error_messages={"required": _("Tap the adhesive that was used, or “not known”.")},
    )
    new_product = forms.CharField(label=_("Another adhesive: product"), required=False, max_length=80)
    new_lot = forms.CharField(label=_("Its lot"), required=False, max_length=40)
    remover = forms.ChoiceField(
        label=_("Remover"), choices=Visit.Remover.choices, widget=forms.RadioSelect, required=False
    )
    style = forms.CharField(label=_("Style"), required=False, max_length=60)
    lash_map = forms.CharField(
        label=_("Lash map"), required=False, max_length=200, help_text=_("Curls, lengths, thickness.")
    )
    tape = forms.CharField(label=_("Tape or pads"), required=False, max_length=60)
    primer = forms.CharField(label=_("Primer"), required=False, max_length=60)
    note = forms.CharField(label=_("Note"), required=False, widget=forms.Textarea(attrs={"rows": 2}))

    def __init__(self, data: Any = None, *, visit: Visit, last_set: Visit | None, health: bool) -> None:
        super().__init__(data, initial=_initial(visit, last_set))
        self.visit = visit
        self.studio: Studio = visit.studio
        for name, services in _ASKED.items():
            if visit.service not in services:
                del self.fields[name]
        if visit.service not in SETS or last_set is None:  # there was no set to look at
            del self.fields["share"], self.fields["share_exact"]
            self.fields.pop("outgrown", None)
        if not health:  # what she may not read she does not write over
            del self.fields["note"]
        if "adhesive" in self.fields:
            choice: Any = self.fields["adhesive"]
            choice.choices = _adhesives(visit)
        else:
            del self.fields["new_product"], self.fields["new_lot"]

    def clean(self) -> dict[str, Any]:
        data: dict[str, Any] = super().clean() or {}
        exact = data.get("share_exact")
        if data.get("share") == ANOTHER and exact is None and "share_exact" not in self.errors:
            self.add_error("share_exact", ValidationError(gettext("Write the number, 0 to 100.")))
        if data.get("adhesive") == NEW and not (data.get("new_product") or data.get("new_lot")):
            self.add_error("new_product", ValidationError(gettext("Write the product, its lot, or both.")))
        return data

    def refuse(self, error: ValidationError) -> None:
        """Show what the records refuse beside the question that it is about."""
        homes = {"share_left": "share", "share_seen": "share", "product": "new_product", "lot": "new_lot"}
        if hasattr(error, "error_dict"):
            error = ValidationError({homes.get(name, name): found for name, found in error.error_dict.items()})
        super().refuse(error)

    @property
    def names_new_adhesive(self) -> bool:
        return self.cleaned_data.get("adhesive") == NEW

    def used(self, adhesive: Adhesive | None) -> UsedFields:
        """Return what was entered, as the records take it; questions that were not asked are left out."""
        data = self.cleaned_data
        asked = ("style", "lash_map", "remover", "tape", "primer", "outgrown", "mirror_check", "note")
        used: dict[str, Any] = {name: data[name] for name in asked if name in data}
        if "adhesive" in self.fields:
            used["adhesive"] = adhesive
        if "share" in self.fields:
            used["share_left"], used["share_seen"] = self._share()
        return cast(UsedFields, used)

    def _share(self) -> tuple[Decimal | None, str]:
        answer = self.cleaned_data["share"]
        if answer == NOT_LOOKED:
            return None, Visit.ShareSeen.NOT_LOOKED
        return (self.cleaned_data["share_exact"] if answer == ANOTHER else Decimal(answer)), Visit.ShareSeen.SEEN


def _initial(visit: Visit, last_set: Visit | None) -> dict[str, Any]:
    """Return what stands on the visit; of an unmarked one, style, map, tape and primer as last time."""
    initial: dict[str, Any] = {
        name: getattr(visit, name)
        for name in ("style", "lash_map", "remover", "tape", "primer", "outgrown", "mirror_check", "note")
    }
    if visit.status == Visit.Status.BOOKED and last_set is not None:
        for name in ("style", "lash_map", "tape", "primer"):
            initial[name] = initial[name] or getattr(last_set, name)
    if visit.share_seen == Visit.ShareSeen.NOT_LOOKED:
        initial["share"] = NOT_LOOKED
    elif visit.share_left is not None:
        as_ten = f"{visit.share_left:.0f}"
        is_ten = visit.share_left % 10 == 0
        initial["share"] = as_ten if is_ten else ANOTHER
        initial["share_exact"] = None if is_ten else visit.share_left
    if visit.adhesive_id is not None:
        initial["adhesive"] = str(visit.adhesive_id)
    return initial


def _adhesives(visit: Visit) -> list[tuple[str, str]]:
    """Return the adhesives used here last, the one on record among them."""
    recent: dict[int, Adhesive] = {visit.adhesive.pk: visit.adhesive} if visit.adhesive else {}
    rows = Visit.objects.filter(studio=visit.studio_id, adhesive__isnull=False, starts_at__lte=visit.starts_at)
    for other in rows.select_related("adhesive").order_by("-starts_at")[:200]:
        if other.adhesive and len(recent) < RECENT:
            recent.setdefault(other.adhesive.pk, other.adhesive)
    known = [(str(pk), _named(adhesive)) for pk, adhesive in recent.items()]
    return [*known, (NEW, gettext("another, named below")), (NOT_KNOWN, gettext("not known"))]


def _named(adhesive: Adhesive) -> str:
    aside = adhesive.set_aside_at is not None
    return gettext("%(adhesive)s: set aside, do not use") % {"adhesive": adhesive} if aside else str(adhesive)
