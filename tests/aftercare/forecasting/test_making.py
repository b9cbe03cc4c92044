from __future__ import annotations

import time
from datetime import timedelta
from decimal import Decimal

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from aftercare import forecasting
from aftercare.core import shedding
from aftercare.core.shedding import History, LashSet, Population, Seen
from aftercare.forecasting.making import BATCH
from aftercare.models import Forecast, RuleSet
from studio import records
from studio.models import Client, Studio, Visit
from studio.records.writing import raise_client_revision
from tests.meanwhile import when
from tests.people import NOW, make_client, make_studio, make_visit
from tests.readings import done, in_days, make_worn

pytestmark = pytest.mark.django_db


@pytest.fixture
def studio() -> Studio:
    return make_studio()


@pytest.fixture
def mia(studio: Studio) -> Client:
    return make_worn(studio)


def revisions(client: Client) -> tuple[int, int]:
    client.refresh_from_db()
    return client.revision, client.forecast_revision


def test_the_set_that_is_on_is_forecast_as_the_model_has_it(mia: Client) -> None:
    assert forecasting.catch_up(NOW) == 1

    row = Forecast.objects.get()
    local = NOW.date()
    sets = [
        LashSet(local - timedelta(days=d), "", (Seen(local - timedelta(days=d - 20), 0.6),)) for d in (83, 63, 43, 23)
    ]
    history = History("x", tuple(sets), LashSet(local - timedelta(days=3)))
    (hers, usual) = shedding.forecast(Population.prior(), [history, History("")], today=local)
    assert hers.curve
    assert usual.curve
    assert hers.loss
    fill, full_set = hers.days[0.6], hers.days[0.4]
    assert row.visit == Visit.objects.latest("starts_at")
    assert (row.client, row.fit, row.made_at, row.readings) == (mia, None, NOW, 4)
    assert (row.fill_level, row.full_set_level) == (0.6, 0.4)
    assert [row.fill_low, row.fill_day, row.fill_high] == pytest.approx([fill.low, fill.middle, fill.high], abs=0.01)
    assert [row.full_set_low, row.full_set_day, row.full_set_high] == pytest.approx(
        [full_set.low, full_set.middle, full_set.high], abs=0.01
    )
    assert set(row.curve) == {"days", "low", "middle", "high", "read_low", "read_high"}
    assert row.curve["days"] == list(hers.curve.days)
    assert row.curve["middle"] == pytest.approx(hers.curve.middle, abs=1e-3)
    assert row.curve["read_low"] == pytest.approx(hers.curve.read_low, abs=1e-3)
    assert row.usual == pytest.approx(usual.curve.middle, abs=1e-3)
    assert row.loss["shed"][1] == pytest.approx(hers.loss.shed.middle, abs=1e-3)
    assert row.loss["told_apart"] == hers.loss.told_apart


def test_the_levels_are_the_owners(mia: Client) -> None:
    RuleSet.objects.create(studio=mia.studio, version=1, values={"fill_level": 0.7, "full_set_level": 0.5}, at=NOW)

    forecasting.catch_up(NOW)

    row = Forecast.objects.get()
    assert (row.fill_level, row.full_set_level) == (0.7, 0.5)
    assert row.fill_day < 20, "at 20 days 0.6 was left"


def test_a_client_with_no_set_on_gets_none_and_is_not_looked_at_again(mia: Client) -> None:
    Visit.objects.update(status="missed")
    done(mia, 1, service="removal")
    zoe = make_client(mia.studio, "Zoe")
    make_visit(zoe)

    assert forecasting.catch_up(NOW) == 0

    assert revisions(mia) == (1, 1)
    assert revisions(zoe) == (1, 1)
    assert not Forecast.objects.exists()


def test_a_set_that_was_taken_off_before_it_was_forecast_is_forecast_once_as_if_it_were_on(mia: Client) -> None:
    worn = Visit.objects.latest("starts_at")
    done(mia, 1, service="removal")
    done(mia, 0.9, service="removal")  # entered twice

    assert forecasting.catch_up(NOW) == 1
    assert Forecast.objects.get().visit == worn

    raise_client_revision(mia.pk)
    done(mia, 2, 5, service="touch-up")  # which would say more of it
    assert forecasting.catch_up(in_days(9)) == 0


def test_a_set_that_came_off_after_it_had_been_forecast_keeps_that(mia: Client) -> None:
    forecasting.catch_up(NOW)
    done(mia, 0, 1, service="removal")
    raise_client_revision(mia.pk)

    assert forecasting.catch_up(in_days(9)) == 0


def test_a_new_forecast_leaves_her_ahead_of_her_plan_but_not_of_her_forecast(mia: Client) -> None:
    Client.objects.update(planned_revision=1)  # planned before there was a forecast

    forecasting.catch_up(NOW)

    assert revisions(mia) == (2, 2)
    assert mia.planned_revision == 1
    assert forecasting.catch_up(NOW) == 0, "and is done"


def test_a_forecast_that_says_nothing_new_is_not_written(mia: Client) -> None:
    forecasting.catch_up(NOW)
    records.save_client(studio=mia.studio, client=mia, by=None, now=NOW, note="Prefers mornings")
    before = revisions(mia)
    assert before[0] > before[1]

    assert forecasting.catch_up(in_days(0.1)) == 0

    assert revisions(mia) == (before[0], before[0])
    assert Forecast.objects.count() == 1


def test_a_reading_that_was_corrected_moves_it(mia: Client) -> None:
    forecasting.catch_up(NOW)
    first = Forecast.objects.get()
    for visit in Visit.objects.filter(share_left=60):
        records.mark_done(visit=visit, by=None, now=NOW, share_left=Decimal(80), share_seen="seen")

    assert forecasting.catch_up(in_days(0.1)) == 1

    second = Forecast.objects.latest("made_at", "pk")
    assert second.fill_day > first.fill_day + 2
    assert second.visit == first.visit, "and the one before is kept as it was made"


def test_other_levels_are_forecast_anew(mia: Client) -> None:
    forecasting.catch_up(NOW)
    RuleSet.objects.create(studio=mia.studio, version=1, values={"full_set_level": 0.39}, at=NOW)

    assert forecasting.renew(mia.studio, NOW) == 1
    assert Forecast.objects.latest("made_at", "pk").full_set_level == 0.39


def test_a_set_that_came_to_another_client_is_forecast_as_hers(mia: Client) -> None:
    forecasting.catch_up(NOW)
    zoe = make_client(mia.studio, "Zoe")
    Visit.objects.update(client=zoe)

    assert forecasting.catch_up(NOW) == 1
    assert Forecast.objects.latest("made_at", "pk").client == zoe


def test_a_new_set_has_a_forecast_of_its_own(mia: Client) -> None:
    forecasting.catch_up(NOW)
    later = in_days(17)
    newest = make_visit(mia, starts_at=later, status="done", share_left=60)
    raise_client_revision(mia.pk)

    assert forecasting.refresh([mia.pk], later) == 1

    row = Forecast.objects.get(visit=newest)
    assert row.readings == 5


def test_refreshing_looks_at_those_alone_whose_records_changed(mia: Client) -> None:
    zoe = make_worn(mia.studio, "Zoe")
    assert forecasting.refresh([mia.pk], NOW) == 1
    Forecast.objects.all().delete()

    assert forecasting.refresh([mia.pk, zoe.pk], NOW) == 1
    assert Forecast.objects.get().client == zoe


def test_catching_up_for_one_studio_leaves_the_others(mia: Client) -> None:
    zoe = make_worn(make_studio("alder"), "Zoe")

    assert forecasting.catch_up(NOW, studio=zoe.studio) == 1
    assert revisions(mia) == (1, 0)


def test_many_are_forecast_in_batches_and_the_progress_is_told(studio: Studio) -> None:
    clients = Client.objects.bulk_create(Client(studio=studio, first_name="Client") for _ in range(BATCH + 3))
    for client in clients[-5:]:
        done(client, 8)
    told: list[int] = []

    assert forecasting.catch_up(NOW, progress=told.append) == 5

    assert told == [BATCH, BATCH + 3]
    assert not Client.objects.exclude(forecast_revision__gt=0).exists()


def test_it_takes_as_many_queries_for_ten_clients_as_for_two(studio: Studio) -> None:
    counts = []
    for some in (2, 10):
        ids = [make_worn(studio, f"Client {number}").pk for number in range(some)]
        with CaptureQueriesContext(connection) as queries:
            assert forecasting.refresh(ids, NOW) == some
        counts.append(len(queries))

    assert counts[0] == counts[1]


def test_one_whose_set_is_another_day_abroad_is_forecast_beside_the_others(studio: Studio) -> None:
    here, there = make_worn(studio), make_worn(studio, "Zoe", time_zone="Pacific/Auckland")

    assert forecasting.catch_up(NOW) == 2
    assert set(Forecast.objects.values_list("client", flat=True)) == {here.pk, there.pk}


def test_a_page_waits_only_milliseconds_for_one_client(mia: Client) -> None:
    forecasting.catch_up(NOW)
    began = time.perf_counter()
    for _ in range(10):
        raise_client_revision(mia.pk)
        forecasting.refresh([mia.pk], NOW)

    assert (time.perf_counter() - began) / 10 < 0.1, "some 10 ms; the rest is for a busy machine"


def test_readings_that_no_set_can_have_keep_no_other_client_waiting(
    mia: Client, caplog: pytest.LogCaptureFixture
) -> None:
    zoe = make_client(mia.studio, "Zoe")
    done(zoe, 30, service="full set")
    for number in range(300):
        done(zoe, 20 - number / 100, (0, 100)[number % 2], service="touch-up")

    assert forecasting.catch_up(NOW) == 1

    assert Forecast.objects.get().client == mia
    assert revisions(zoe) == (1, 1)
    assert f"no forecast for client {zoe.pk}: the readings" in caplog.text


def test_what_was_broken_off_is_done_the_next_time(mia: Client) -> None:
    def die() -> None:
        raise RuntimeError("the lights went out")

    with pytest.raises(RuntimeError), when('UPDATE "studio_client"', die):
        forecasting.catch_up(NOW)

    assert not Forecast.objects.exists()
    assert forecasting.catch_up(NOW) == 1
