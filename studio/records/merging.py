"""Two clients who are one person: made one, and made two again.

Every table that points at a client is found through Django's own list of relations, so that the tables of other apps
move too without being named here. What moved is written down row by row in ``Merge.moved``::

    {"rows": {"studio.Visit.client": [3, 9]},             moved, by primary key
     "pairs": {"app.Flag_clients.client": [{…}]},   taken out, as the kept client stands in that list already
     "fields": {"mobile": ["", "+15555550101"]},          the kept client's fields, before and after
     "consents": [17]}                                    answers added so that the stricter one wins
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from django.apps import apps
from django.core.exceptions import ValidationError
from django.db import transaction
from django.db.models import ForeignKey, Model, Q, UniqueConstraint
from django.utils.translation import gettext as _

from studio.models import Client, Consent, Merge, Staff, Visit
from studio.records.writing import locked, raise_client_revision, raise_visit_revision, same_studio

HOW = "merge"
PAIRS = tuple((channel, purpose) for channel in ("sms", "email") for purpose in ("visits", "reminders"))
CAREFUL = ("sensitive", "wears_lenses", "oily_lids", "under_18", "on_break")
FILLED = ("last_name", "mobile", "email", "time_zone", "language", "channel", "wished_hours", "waiver_signed_on")
GUARDIAN = ("guardian_name", "guardian_mobile", "guardian_agreed_on")


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a merge would make of one field: both values, and the one that stands afterwards."""

    field: str
    kept: object
    gone: object
    after: object


def preview(kept: Client, gone: Client) -> list[Outcome]:
    """What wins, field by field, in the order of the card."""
    after = _winning(kept, gone)
    fields = ("first_name", *FILLED, *CAREFUL, *GUARDIAN, "paused_until", "note")
    return [
        Outcome(name, getattr(kept, name), getattr(gone, name), after.get(name, getattr(kept, name))) for name in fields
    ]


def refused(kept: Client, gone: Client, stopped: Collection[str] = ()) -> list[tuple[str, str]]:
    """The channel and purpose pairs that are a no after the merge: either said no, or the channel is in ``stopped``."""
    standing = standing_answers(kept), standing_answers(gone)
    return [pair for pair in PAIRS if pair[0] in stopped or any(answers.get(pair) is False for answers in standing)]


@transaction.atomic
def merge(*, kept: Client, gone: Client, by: Staff | None, now: datetime, stopped: Collection[str] = ()) -> Merge:
    """Move everything of ``gone`` to ``kept``; both references stay, the more careful answer wins.

    ``stopped`` are channels on which either of them said stop: a stop belongs to a number, and where only one of the
    two numbers stays, her stop must hold for it as well.
    """
    same_studio(kept.studio, gone=gone, by=by)
    if kept.pk == gone.pk:
        raise ValidationError(_("These are one client already: choose two."))
    kept, gone = locked(kept), locked(gone)
    if kept.merged_into_id or gone.merged_into_id:
        raise ValidationError(_("One of the two was merged before: choose the client who stands in the list."))
    noes, fields = refused(kept, gone, stopped), _winning(kept, gone)
    moved: dict[str, Any] = {"fields": {name: [_plain(getattr(kept, name)), _plain(fields[name])] for name in fields}}
    moved["rows"], moved["pairs"] = _move_all(gone, kept)
    _set(kept, fields)
    moved["consents"] = [_refuse(kept, channel, purpose, by, now).pk for channel, purpose in noes]
    gone.merged_into = kept
    gone.save(update_fields=["merged_into"])
    _raise_revisions(kept, gone, moved)
    return Merge.objects.create(studio=kept.studio, kept=kept, gone=gone, moved=moved, at=now, by=by)


@transaction.atomic
def undo_merge(*, merge: Merge, now: datetime) -> Merge:
    """Put every row that moved back where it was. What was added or changed since stays with the client kept."""
    row = locked(merge)
    if row.undone_at is not None:
        raise ValidationError(_("This merge was undone already."))
    pair = [row.kept_id, row.gone_id]
    later = Merge.objects.filter(Q(kept__in=pair) | Q(gone__in=pair), undone_at=None, pk__gt=row.pk).last()
    if later is not None:
        raise ValidationError(
            _("One of the two was merged again (%(gone)s into %(kept)s): undo that merge first.")
            % {"gone": later.gone, "kept": later.kept}
        )
    kept, gone, moved = locked(row.kept), locked(row.gone), row.moved
    _move_back(moved, kept, gone)
    before = {name: old for name, (old, new) in moved["fields"].items() if _plain(getattr(kept, name)) == new}
    columns = {column.name: column for column in Client._meta.concrete_fields}
    _set(kept, {name: columns[name].to_python(old) for name, old in before.items()})
    Consent.objects.filter(pk__in=moved["consents"], client=kept, how=HOW).delete()
    gone.merged_into = None
    gone.save(update_fields=["merged_into"])
    _raise_revisions(kept, gone, moved)
    row.undone_at = now
    row.save(update_fields=["undone_at"])
    return row


def _winning(kept: Client, gone: Client) -> dict[str, Any]:
    """The kept client's fields that change: blanks filled, the more careful of two answers, both notes."""
    after: dict[str, Any] = {}
    for name in CAREFUL:
        after[name] = _more_careful(getattr(kept, name), getattr(gone, name))
    for name in FILLED:
        after[name] = getattr(kept, name) or getattr(gone, name)
    if not any(getattr(kept, name) for name in GUARDIAN):  # a guardian's three facts are of one person: never mixed
        after.update({name: getattr(gone, name) for name in GUARDIAN})
    after["paused_until"] = max(filter(None, (kept.paused_until, gone.paused_until)), default=None)
    after["note"] = "\n".join(dict.fromkeys(note for note in (kept.note, gone.note) if note))
    return {name: value for name, value in after.items() if value != getattr(kept, name)}


def _more_careful(one: bool | None, other: bool | None) -> bool | None:
    if one or other:
        return True
    return False if False in (one, other) else None


def standing_answers(client: Client) -> dict[tuple[str, str], bool]:
    """Her newest answer for each channel and purpose that she was asked about."""
    return {(row.channel, row.purpose): row.given for row in client.consents.order_by("at", "id")}


def _refuse(client: Client, channel: str, purpose: str, by: Staff | None, now: datetime) -> Consent:
    return Consent.objects.create(client=client, channel=channel, purpose=purpose, given=False, at=now, how=HOW, by=by)


def _set(client: Client, fields: dict[str, Any]) -> None:
    for name, value in fields.items():
        setattr(client, name, value)
    if fields:
        client.save(update_fields=list(fields))


def _plain(value: object) -> object:
    return value.isoformat() if isinstance(value, date) else value


def _pointers() -> Iterator[tuple[str, type[Model], ForeignKey[Any, Any]]]:
    """Every foreign key to a client, lists of clients included, by its label; not the record of merges itself."""
    for model in apps.get_models(include_auto_created=True):
        for field in model._meta.concrete_fields:
            own = model in (Client, Merge)  # merged_into and Merge say what was merged: they stay
            if isinstance(field, ForeignKey) and field.related_model is Client and not own:
                yield f"{model._meta.label}.{field.name}", model, field


def _move_all(gone: Client, kept: Client) -> tuple[dict[str, list[int]], dict[str, list[dict[str, Any]]]]:
    rows: dict[str, list[int]] = {}
    pairs: dict[str, list[dict[str, Any]]] = {}
    for label, model, field in _pointers():
        hers = model._base_manager.filter(**{field.name: gone})
        taken = hers.filter(pk__in=_stand_already(model, field, gone, kept))
        if model._meta.auto_created and (values := list(taken.values())):
            pairs[label] = values
            taken.delete()
        # Of what may stand but once a client and already does, hers stays with her, hidden: nothing is lost.
        free = hers.exclude(pk__in=_stand_already(model, field, gone, kept))
        if ids := list(free.order_by("pk").values_list("pk", flat=True)):
            rows[label] = ids
            free.update(**{field.name: kept})
    return rows, pairs


def _move_back(moved: dict[str, Any], kept: Client, gone: Client) -> None:
    for label, model, field in _pointers():
        still = model._base_manager.filter(pk__in=moved["rows"].get(label, []), **{field.name: kept})
        still.update(**{field.name: gone})
        for values in moved["pairs"].get(label, []):
            model._base_manager.get_or_create(**values)


def _stand_already(model: type[Model], field: ForeignKey[Any, Any], gone: Client, kept: Client) -> set[int]:
    """The rows of ``gone`` whose like, in what must be unique, stands for ``kept``."""
    found: set[int] = set()
    for names in _unique_with(model, field):
        others = [name for name in names if name != field.name]
        standing = set(model._base_manager.filter(**{field.name: kept}).values_list(*others, field.name))
        hers = model._base_manager.filter(**{field.name: gone}).values_list("pk", *others)
        found.update(pk for pk, *same in hers if (*same, kept.pk) in standing)
    return found


def _unique_with(model: type[Model], field: ForeignKey[Any, Any]) -> Iterator[tuple[str, ...]]:
    if field.unique:
        yield (field.name,)
    for names in model._meta.unique_together:
        if field.name in names:
            yield tuple(names)
    for constraint in model._meta.constraints:
        if isinstance(constraint, UniqueConstraint) and field.name in constraint.fields:
            yield tuple(constraint.fields)


def _raise_revisions(kept: Client, gone: Client, moved: dict[str, Any]) -> None:
    raise_client_revision(kept.pk, gone.pk)
    raise_visit_revision(moved["rows"].get(f"{Visit._meta.label}.client", []))
