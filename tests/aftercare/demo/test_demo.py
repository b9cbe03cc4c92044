"""The demo studio shows what the product does: made once here, as at a first start, and looked at."""

from __future__ import annotations

from datetime import timedelta

import pytest
from django.db.models import F

from aftercare import demo, forecasting
from aftercare.models import Fit, Forecast, Message
from studio.models import Client, Studio, Visit
from tests.people import NOW

pytestmark = pytest.mark.django_db


def test_it_has_one_of_everything_that_forecasts_show() -> None:
    said: list[str] = []
    signing_in = demo.make(NOW, lambda: "a long enough password", said.append)

    studio = Studio.objects.get()
    assert [role for role, _, _ in signing_in] == ["owner and artist", "artist", "artist", "front desk"]
    assert said[2] == "demo studio: the forecasts of 8 weeks, each from what was known then"

    # Forecasts that can be scored: made before the visit at which a share was seen, and from no later reading.
    seen = Visit.objects.filter(share_left__isnull=False, starts_at__gt=NOW - timedelta(weeks=8))
    known_before = Forecast.objects.filter(made_at__lt=NOW - timedelta(weeks=4))
    assert seen.count() > 100
    assert known_before.count() > 40
    assert all(one.readings <= _readings(one) for one in known_before.select_related("client"))
    assert Fit.objects.earliest("made_at").readings < Fit.objects.latest("made_at").readings

    # A bad lot, which the fit has found, and sets that fail early, for their artists to look at.
    lots = Fit.objects.latest("made_at").values["lots"]
    assert lots["Birch 4 0419"][0] - lots["Birch 4 0226"][0] > 0.3
    newest = {one.client_id: one for one in Forecast.objects.order_by("made_at", "pk")}
    assert 1 <= sum(one.fill_day < 10 for one in newest.values()) <= 8

    # Reminders that went, that are to go in the coming days, and that a booked set makes needless.
    reminders = Message.objects.filter(occasion="fill_due")
    assert reminders.filter(state="handed_over").exists()
    assert reminders.filter(state="planned", due_at__lt=NOW + timedelta(days=10)).count() >= 3
    assert reminders.filter(reason="already booked").exists()

    # Nothing is left to do: the engine begins with what is due.
    assert not Client.objects.filter(revision__gt=F("forecast_revision")).exists()
    assert forecasting.renew(studio, NOW) == 0


def _readings(forecast: Forecast) -> int:
    """How many shares of hers had been seen when it was made."""
    visits = Visit.objects.filter(client=forecast.client, share_left__isnull=False, starts_at__lte=forecast.made_at)
    return visits.count()
