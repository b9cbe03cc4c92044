"""Who is told of what cannot wait beside a client's artist, and who is away."""

from __future__ import annotations

from datetime import date, datetime

from django.core.exceptions import ValidationError
from django.db import transaction
from django.utils.translation import gettext as _

from studio.models import Absence, Staff, Studio
from studio.records.writing import locked, same_studio


@transaction.atomic
def save_duty(
    *,
    studio: Studio,
    on_duty: Staff | None,
    third_contact: Staff | None,
    done_after_hours: int | None,
    by: Staff | None,
    now: datetime,
) -> Studio:
    """Set who is told beside the artist and the owners, and after how long an unmarked visit counts as done."""
    same_studio(studio, by=by, on_duty=on_duty, third_contact=third_contact)
    row = locked(studio)
    if third_contact is not None and not third_contact.sees_matters:
        raise ValidationError(
            {
                "third_contact": _(
                    "%(name)s is of the front desk alone and could not see what is the matter, nor take it: choose an "
                    "artist or an owner, or nobody."
                )
                % {"name": third_contact.name}
            }
        )
    for name, person in (("on_duty", on_duty), ("third_contact", third_contact)):
        if person is not None and not (person.is_active and (person.mobile or person.email)):
            raise ValidationError(
                {
                    name: _("%(name)s has no mobile and no e-mail here: write one on her page first.")
                    % {"name": person.name}
                }
            )
    row.on_duty, row.third_contact, row.done_after_hours = on_duty, third_contact, done_after_hours
    row.full_clean(validate_unique=False)
    row.save(update_fields=["on_duty", "third_contact", "done_after_hours"])
    return row


@transaction.atomic
def add_absence(
    *, staff: Staff, cover: Staff | None, first_day: date, last_day: date, by: Staff | None, now: datetime
) -> Absence:
    """Note that somebody is away, the first and the last day among them, and who has her work then."""
    same_studio(staff.studio, by=by, cover=cover)
    if last_day < first_day:
        raise ValidationError({"last_day": _("The last day is before the first: change one of them.")})
    if last_day < now.astimezone(staff.studio.zone).date():
        raise ValidationError({"last_day": _("These days are over: write days to come.")})
    if cover == staff:
        raise ValidationError({"cover": _("She cannot cover for herself: choose somebody else, or nobody.")})
    if staff.absences.filter(first_day__lte=last_day, last_day__gte=first_day).exists():
        raise ValidationError(
            {"first_day": _("She is away on some of these days already: take that off the list first.")}
        )
    return Absence.objects.create(staff=staff, cover=cover, first_day=first_day, last_day=last_day)


@transaction.atomic
def remove_absence(*, absence: Absence, by: Staff | None, now: datetime) -> None:
    """She is there after all."""
    same_studio(absence.staff.studio, by=by)
    absence.delete()
