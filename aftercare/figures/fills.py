"""Fills that came within the window which was forecast for them: after a reminder, and without one.

Not an experiment: who is reminded follows from what she agreed to and from what she has booked.
"""

from __future__ import annotations

from django.db.models import Case, Exists, F, IntegerField, OuterRef, Q, Subquery, Value, When
from django.db.models.functions import Ceil, Floor

from aftercare.core.delivery import State
from aftercare.core.timing import Occasion
from aftercare.figures.grouped import Groups, Span, grouped
from aftercare.models import Message
from studio.aggregates import Days
from studio.models import SETS, Visit

REMINDED, NOT_REMINDED, BOOKED = "reminded", "not reminded", "booked"
KINDS = {"way": ("way",), "artist": ("by_artist", "way")}


def fills(span: Span) -> Groups:
    """Sum up the sets put on in the span whose window is over: 1 where she came for the next one within it.

    The window is the 80 % band of the day of the fill level, in whole days, of the forecast that her reminder was
    planned from. REMINDED: one arrived, or was handed over. BOOKED: none was, and the next set had been booked when
    one would have been due. A set whose reminder left when the window was over is left out. What was rehearsed reached
    nobody, but in the demo studio, where all is pretended.
    """
    visits = Visit.objects.filter(client=OuterRef("client"), service__in=SETS, status__in=["booked", "done"])
    after = visits.filter(starts_at__gt=OuterRef("visit__starts_at")).order_by("starts_at", "pk")
    gone = Q(state__in=[State.HANDED_OVER, State.DELIVERED])
    if not span.studio.is_demo:
        gone &= Q(rehearsed=False)
    newer = Message.objects.filter(visit=OuterRef("visit"), occasion=Occasion.FILL_DUE, edition__gt=OuterRef("edition"))
    reminders = Message.objects.filter(
        ~Exists(newer),
        studio=span.studio,
        occasion=Occasion.FILL_DUE,
        forecast__isnull=False,
        visit__studio=span.studio,
        visit__status=Visit.Status.DONE,
        visit__service__in=SETS,
        visit__starts_at__gte=span.since,
        visit__starts_at__lt=span.until,
    )
    if span.artist is not None:
        reminders = reminders.filter(visit__artist=span.artist)
    rows = reminders.annotate(
        who=F("client"),
        by_artist=F("visit__artist"),
        first=Floor("forecast__fill_low"),
        last=Ceil("forecast__fill_high"),
        old=Days(F("visit__starts_at"), Value(span.until)),
        came=Days(F("visit__starts_at"), Subquery(after.values("starts_at")[:1])),
        sent=Days(F("visit__starts_at"), F("handed_over_at")),
        ahead=Days(Subquery(after.values("heard_at")[:1]), F("aim_at")),
        went=Case(When(gone, then=1), default=0, output_field=IntegerField()),
    ).values("who", "by_artist", "first", "last", "old", "came", "sent", "ahead", "went")
    # Days are whole ones: half a day either way stands for the hour at which a visit begins.
    hit = "CASE WHEN came + 0.5 >= first AND came - 0.5 <= last THEN 1.0 ELSE 0.0 END"
    way = f"CASE WHEN went = 1 THEN '{REMINDED}' WHEN ahead >= 0 THEN '{BOOKED}' ELSE '{NOT_REMINDED}' END"
    return grouped(rows, KINDS, value=hit, where="old - 1 > last AND (went = 0 OR sent <= last)", also={"way": way})
