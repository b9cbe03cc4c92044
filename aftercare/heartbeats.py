"""When each part of the engine last finished a round: what /healthz looks at, as a process that is up may be deaf."""

from __future__ import annotations

from datetime import datetime, timedelta

from aftercare.models import Heartbeat

# A round a second need not be a write a second.
EVERY = timedelta(seconds=10)


def finished(name: str, *, now: datetime) -> None:
    """Note that the part `name` has finished a round; written at most every ten seconds."""
    if Heartbeat.objects.filter(name=name, at__gt=now - EVERY, at__lte=now).exists():
        return
    Heartbeat.objects.update_or_create(name=name, defaults={"at": now})


def last(prefix: str) -> dict[str, datetime]:
    """Return when each part whose name begins so last finished a round."""
    return dict(Heartbeat.objects.filter(name__startswith=prefix).values_list("name", "at"))


def late(before: datetime) -> dict[str, datetime]:
    """Return which parts have finished no round since a moment, and when each did last."""
    return dict(Heartbeat.objects.filter(at__lt=before).values_list("name", "at"))


def is_late(name: str, after: timedelta, *, now: datetime) -> bool:
    """Tell whether a part of the engine has finished no round for so long; one that never did is late at once."""
    return not Heartbeat.objects.filter(name=name, at__gt=now - after, at__lte=now + after).exists()
