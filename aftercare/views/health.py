"""Whether the service is at work, for machines that watch it."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from django.contrib.auth.decorators import login_not_required
from django.db import DatabaseError, connection
from django.db.migrations.executor import MigrationExecutor
from django.db.models import Min
from django.http import HttpRequest, JsonResponse
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_safe

from aftercare import moved
from aftercare.core.delivery import State
from aftercare.models import Heartbeat, Message, Reply
from studio import clock

DEAF_SECONDS = 60


@require_safe
@never_cache
@login_not_required
def healthz(request: HttpRequest) -> JsonResponse:
    """Answer 200 when the database answers, its tables are up to date and what is due is looked at; else 503 with why.

    ``sweep_age`` and ``oldest_due`` are seconds by the database's clock, null where there is nothing to tell: how long
    ago the service last looked at what is due, and for how long the oldest planned message, or a reply that nobody has
    read, has waited.
    """
    try:
        reasons = _unapplied()
        body: dict[str, Any] = {"ok": not reasons, "reasons": reasons, "sweep_age": None, "oldest_due": None}
        if not reasons:
            engine = _engine(clock.now())
            has_moved = moved.complaint()
            reasons = [has_moved] if has_moved else _deaf(engine["sweep_age"], engine["oldest_due"])
            body |= {**engine, "ok": not reasons, "reasons": reasons}
    except DatabaseError:
        reasons = ["the database does not answer: check DATABASE_URL and whether it runs"]
        body = {"ok": False, "reasons": reasons, "sweep_age": None, "oldest_due": None}
    return JsonResponse(body, status=503 if reasons else 200)


def _unapplied() -> list[str]:
    executor = MigrationExecutor(connection)
    behind = executor.migration_plan(executor.loader.graph.leaf_nodes())
    if not behind:
        return []
    names = ", ".join(f"{migration.app_label}.{migration.name}" for migration, _backwards in behind[:5])
    return [f"{len(behind)} migrations are not applied ({names}): run manage.py migrate"]


def _engine(now: datetime) -> dict[str, int | None]:
    sweep = Heartbeat.objects.filter(name="sweep").values_list("at", flat=True).first()
    due = Message.objects.filter(state=State.PLANNED, due_at__lte=now).aggregate(at=Min("due_at"))["at"]
    reply = Reply.objects.filter(read_at=None, received_at__lte=now).aggregate(at=Min("received_at"))["at"]
    oldest = min((at for at in (due, reply) if at is not None), default=None)
    return {"sweep_age": _seconds(now, sweep), "oldest_due": _seconds(now, oldest)}


def _deaf(sweep_age: int | None, oldest_due: int | None) -> list[str]:
    """Say so where work is due and nobody looks. Before the first sweep ever, the engine gets its time to begin."""
    if oldest_due is None or (oldest_due if sweep_age is None else sweep_age) <= DEAF_SECONDS:
        return []
    last = "none has ever ended" if sweep_age is None else f"the last one ended {sweep_age} s ago"
    return [
        f"work is due and no sweep looks at it ({last}; the oldest has waited {oldest_due} s): see that the engine, or "
        "a Celery worker, runs and reaches the database"
    ]


def _seconds(now: datetime, at: datetime | None) -> int | None:
    return None if at is None else max(0, int((now - at).total_seconds()))
