from __future__ import annotations

import pytest

from aftercare import upkeep
from aftercare.models import Fit, Forecast, Message
from studio.models import Client, Consent
from tests.people import NOW, make_studio
from tests.readings import make_worn

pytestmark = pytest.mark.django_db


@pytest.fixture
def mia() -> Client:
    client = make_worn(make_studio(), email="mia@mail.example")
    for purpose in Consent.Purpose.values:
        Consent.objects.create(client=client, channel="email", purpose=purpose, given=True, at=NOW, how="on paper")
    return client


def settled(client: Client) -> bool:
    client.refresh_from_db()
    return client.revision == client.planned_revision == client.forecast_revision


def test_her_reminder_follows_from_the_forecast_in_one_go(mia: Client) -> None:
    counts = upkeep.plan_clients([mia.pk], NOW)

    assert Forecast.objects.filter(client=mia).exists()
    assert {"fill_due", "full_set_due"} <= set(Message.objects.values_list("occasion", flat=True))
    assert counts["planned"] == Message.objects.filter(state="planned").count()
    assert settled(mia), "nothing is left to do"


def test_catching_up_forecasts_before_it_plans(mia: Client) -> None:
    zoe = make_worn(make_studio("alder"), "Zoe", email="zoe@mail.example")
    told: list[int] = []

    upkeep.catch_up(NOW, studio=mia.studio, progress=told.append)

    assert settled(mia)
    assert told == [1]
    assert Message.objects.filter(occasion="fill_due").count() == 1
    assert not settled(zoe)
    assert not upkeep.catch_up(NOW, studio=mia.studio)


def test_what_fails_in_forecasting_holds_up_no_plan(mia: Client, caplog: pytest.LogCaptureFixture) -> None:
    Fit.objects.create(studio=mia.studio, made_at=NOW, values={"not": "a population"}, clients=1, readings=1)

    upkeep.catch_up(NOW, studio=mia.studio)

    mia.refresh_from_db()
    assert mia.planned_revision == mia.revision
    assert "forecasts could not be made" in caplog.text
    assert not Forecast.objects.exists()
