from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from aftercare import forecasting
from aftercare.core.shedding import Population
from aftercare.forecasting.fitting import KEPT
from aftercare.models import Fit, Forecast, Heartbeat
from studio.models import Client, Studio, Visit
from tests.people import NOW, make_studio, make_visit
from tests.readings import done, in_days, make_worn

pytestmark = pytest.mark.django_db


@pytest.fixture
def studio() -> Studio:
    return make_studio()


def test_a_studio_is_fitted_to_all_its_readings(studio: Studio) -> None:
    make_worn(studio, fills=3)
    make_worn(studio, "Zoe", fills=2, share=40)
    make_worn(make_studio("alder"), "Bea")

    assert forecasting.fit(NOW, studio=studio)

    fit = Fit.objects.get()
    assert (fit.studio, fit.made_at, fit.clients, fit.readings) == (studio, NOW, 2, 5)
    assert Population.from_dict(fit.values).readings == 5


def test_without_a_reading_there_is_nothing_to_fit(studio: Studio) -> None:
    make_worn(studio, fills=0)

    assert not forecasting.fit(NOW, studio=studio)
    assert not forecasting.fit_if_grown(NOW, studio=studio)
    assert not Fit.objects.exists()


def test_a_fit_to_the_same_readings_is_not_kept_twice(studio: Studio) -> None:
    make_worn(studio)
    forecasting.fit(NOW, studio=studio)

    assert not forecasting.fit(in_days(1), studio=studio)
    assert Fit.objects.count() == 1


def test_a_corrected_reading_is_fitted_to_anew_although_there_are_as_many(studio: Studio) -> None:
    make_worn(studio)
    forecasting.fit(NOW, studio=studio)
    Visit.objects.filter(pk=Visit.objects.latest("starts_at").pk).update(share_left=30)

    assert forecasting.fit(in_days(1), studio=studio)


def test_the_first_readings_are_fitted_to_at_once_and_a_tenth_more_again(studio: Studio) -> None:
    client = make_worn(studio, fills=9)
    assert forecasting.fit_if_grown(NOW, studio=studio)
    assert not forecasting.fit_if_grown(NOW, studio=studio)

    done(client, 1.5, 95, service="touch-up")  # 10 where 9 were, which is a tenth more

    assert forecasting.fit_if_grown(NOW, studio=studio)
    assert [fit.readings for fit in Fit.objects.all()] == [10, 9]


def test_shares_that_are_of_no_set_are_no_growth(studio: Studio) -> None:
    make_worn(studio, fills=9)
    forecasting.fit(NOW, studio=studio)
    for number in range(3):
        done(make_worn(studio, f"Client {number}", fills=0, last=5), 50, 70)  # of a set before her first

    assert not forecasting.fit_if_grown(NOW, studio=studio)


def test_refitting_forecasts_for_all_who_have_a_set_on_and_names_the_fit(studio: Studio) -> None:
    for number in range(4):
        make_worn(studio, f"Client {number}", share=75)
    make_worn(studio, "Zoe", last=200)

    assert forecasting.refit(NOW, studio=studio) == 4

    assert set(Forecast.objects.values_list("fit", flat=True)) == {Fit.objects.get().pk}
    assert forecasting.refit(NOW, studio=studio) == 0, "for nothing is new"


def test_what_the_others_readings_show_moves_a_forecast(studio: Studio) -> None:
    mia = make_worn(studio, fills=0)
    forecasting.catch_up(NOW)
    for number in range(6):
        make_worn(studio, f"Client {number}", share=80)  # after 20 days
    forecasting.refit(NOW, studio=studio)

    newest, first = Forecast.objects.filter(client=mia)

    assert newest.fill_day > first.fill_day + 3
    assert newest.fit is not None
    assert first.fit is None


def test_old_fits_go_but_for_those_that_a_forecast_rests_on(studio: Studio) -> None:
    client = make_worn(studio, fills=8)
    forecasting.refit(NOW - timedelta(days=100), studio=studio)  # one of those that a forecast rests on
    rested_on = Fit.objects.latest()
    Forecast.objects.update(fit=rested_on)
    old = Fit(studio=studio, values={}, clients=0, readings=0)
    for number in range(KEPT + 5):
        old.pk, old.made_at = None, NOW - timedelta(days=50 - number)
        old.save()
    done(client, 2, 95, service="touch-up")

    forecasting.fit(NOW, studio=studio)

    kept = set(Fit.objects.values_list("made_at", flat=True))
    assert len(kept) == KEPT + 1
    assert NOW - timedelta(days=50) not in kept
    assert {NOW, rested_on.made_at} <= kept


def test_each_studio_is_fitted_once_a_night_by_its_own_clock(studio: Studio) -> None:
    make_worn(studio)
    two, three = datetime(2027, 3, 10, 7, tzinfo=UTC), datetime(2027, 3, 10, 8, tzinfo=UTC)  # o'clock in New York

    assert forecasting.refit_due(NOW, seconds=60) == 1, "the first look at a studio, whatever the hour"
    assert forecasting.refit_due(two, seconds=60) == 0
    assert forecasting.refit_due(three, seconds=60) == 1
    assert forecasting.refit_due(three + timedelta(minutes=10), seconds=60) == 0
    assert Heartbeat.objects.get().at == three


def test_a_night_on_which_nothing_ran_is_made_up_for(studio: Studio) -> None:
    forecasting.refit_due(NOW, seconds=60)

    assert forecasting.refit_due(NOW + timedelta(days=2, hours=5), seconds=60) == 1


def test_out_of_time_the_next_look_goes_on_where_this_one_ended(studio: Studio) -> None:
    make_worn(studio)
    make_worn(make_studio("alder"), "Zoe")

    assert forecasting.refit_due(NOW, seconds=-1) == 0
    assert forecasting.refit_due(NOW, seconds=60, stop=lambda: Fit.objects.exists()) == 1
    assert forecasting.refit_due(NOW, seconds=60) == 1
    assert Fit.objects.count() == 2


def test_forecasts_made_by_night_are_planned_by_day(studio: Studio) -> None:
    mia = make_worn(studio)
    Client.objects.update(planned_revision=1, forecast_revision=1)

    forecasting.refit_due(NOW, seconds=60)

    mia.refresh_from_db()
    assert mia.revision > mia.planned_revision
    assert mia.revision == mia.forecast_revision


def test_a_fit_made_as_of_the_past_knows_nothing_later(studio: Studio) -> None:
    make_worn(studio, every=20, fills=4, last=3)
    make_visit(make_worn(studio, "Zoe", fills=0, last=1), status="booked")

    forecasting.refit(in_days(-30), studio=studio)

    assert Fit.objects.get().readings == 2
    assert Forecast.objects.get().visit.starts_at < in_days(-30)
