"""Short ways to write worked examples of timing: moments as text in UTC, a visit a line, plans as a dict."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from aftercare.core import timing
from aftercare.core.timing import Client, Occasion, Planned, Reason, Rules, SetForecast, Slot, Standing, Visit

NEW_YORK, LONDON, SYDNEY = ZoneInfo("America/New_York"), ZoneInfo("Europe/London"), ZoneInfo("Australia/Sydney")
KOLKATA, LORD_HOWE = ZoneInfo("Asia/Kolkata"), ZoneInfo("Australia/Lord_Howe")
ST_JOHNS, CHATHAM = ZoneInfo("America/St_Johns"), ZoneInfo("Pacific/Chatham")

MIA = Client(zone=LONDON, channel="sms", unreachable=None)
SENSITIVE_MIA = replace(MIA, sensitive=True)
DEFAULTS = Rules()


def utc(text: str) -> datetime:
    """Return a moment written as UTC, with or without seconds."""
    return datetime.fromisoformat(text).replace(tzinfo=UTC)


def visit(
    id: int,
    service: str,
    status: str,
    start: str,
    *,
    minutes: int = 60,
    heard: str = "2026-01-01 00:00",
    adhesive: str = "",
    sign: bool = False,
) -> Visit:
    begins = utc(start)
    return Visit(
        id=id,
        ref=f"v{id}",
        service=service,
        status=status,
        start=begins,
        end=begins + timedelta(minutes=minutes),
        heard_at=utc(heard),
        adhesive=adhesive,
        sign_on_test=sign,
    )


def told(messages: Iterable[Planned], *occasions: str) -> dict[str, str]:
    """Return e.g. ``{"1 care 0": "2027-06-01 15:45", "1 check 1": "too late"}``; moments are UTC."""
    found = {}
    for message in messages:
        if not occasions or message.occasion in occasions:
            edition = f" edition {message.edition}" if message.edition > 1 else ""
            moment = "" if message.due is None else f"{message.due:%Y-%m-%d %H:%M}"
            outcome = str(message.reason) if message.reason else moment
            found[f"{message.visit.id} {message.occasion} {message.step}{edition}"] = outcome
    return found


def planned(
    visits: Iterable[Visit],
    now: str,
    *occasions: str,
    client: Client = MIA,
    rules: Rules = DEFAULTS,
    standing: Mapping[Slot, Standing] | None = None,
    forecast: SetForecast | None = None,
) -> dict[str, str]:
    return told(timing.plan(client, visits, rules, utc(now), standing, forecast), *occasions)


def waiting(messages: Iterable[Planned]) -> dict[Slot, Standing]:
    """What is on record once a plan has been written and nothing has gone."""
    return {
        message.slot: Standing(
            open_edition=message.edition,
            open_planned=message.reason is None,
            open_gave_way=message.reason is Reason.ANOTHER_CHECK,
            open_aim=message.aim,
            open_from=message.planned_from,
            open_forecast=message.forecast,
        )
        for message in messages
    }


def gone(messages: Iterable[Planned]) -> dict[Slot, Standing]:
    """What is on record once every message of a plan has gone at its moment."""
    return {
        message.slot: Standing(gone_edition=message.edition, gone_start=message.visit.start, gone_due=message.due)
        for message in messages
    }


def only(messages: Iterable[Planned], occasion: Occasion, step: int) -> list[Planned]:
    return [message for message in messages if (message.occasion, message.step) == (occasion, step)]
