"""Forecasts of what is left of a set, each kept as it was made, and the studio's fit that they rest on."""

from __future__ import annotations

from django.db import models

from studio.models import Client, Staff, Studio, Visit


class Fit(models.Model):
    """What one studio's readings say of its clients as a whole: the population that a forecast starts from."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="fits")
    made_at = models.DateTimeField()
    values = models.JSONField()  # core.shedding.Population, as it writes itself
    clients = models.PositiveIntegerField()
    readings = models.PositiveIntegerField()

    class Meta:
        ordering = ["-made_at", "-pk"]
        get_latest_by = ["made_at", "pk"]

    def __str__(self) -> str:
        return f"fit to {self.readings} readings"


class ForecastQuerySet(models.QuerySet["Forecast"]):
    """Forecasts, with those that newer ones replaced."""

    def in_force(self) -> ForecastQuerySet:
        """Return the newest of each visit."""
        of_visit = Forecast.objects.filter(visit=models.OuterRef("visit")).order_by("-made_at", "-pk")
        return self.filter(pk=models.Subquery(of_visit.values("pk")[:1]))


class Forecast(models.Model):
    """One forecast of the set of one visit. The newest of a visit is in force; the others are kept to be scored.

    Days count from the visit's local date, as fractions; ``curve`` and ``loss`` are those of core.shedding, and
    ``usual`` is the middle of the curve of a client of this studio of whom nothing is known, for the same days.
    """

    client = models.ForeignKey(Client, on_delete=models.CASCADE, related_name="forecasts")
    visit = models.ForeignKey(Visit, on_delete=models.CASCADE, related_name="forecasts")
    fit = models.ForeignKey(Fit, on_delete=models.SET_NULL, null=True, related_name="forecasts")
    made_at = models.DateTimeField()
    readings = models.PositiveIntegerField()
    fill_level = models.FloatField()
    full_set_level = models.FloatField()
    fill_low = models.FloatField()
    fill_day = models.FloatField()
    fill_high = models.FloatField()
    full_set_low = models.FloatField()
    full_set_day = models.FloatField()
    full_set_high = models.FloatField()
    curve = models.JSONField()
    usual = models.JSONField()
    loss = models.JSONField()
    seen_to_at = models.DateTimeField(null=True, blank=True)  # a set that fails early: an artist has looked into it
    seen_to_by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")

    objects = ForecastQuerySet.as_manager()

    class Meta:
        ordering = ["-made_at", "-pk"]
        indexes = [models.Index(fields=["visit", "-made_at"], name="forecast_of_visit")]

    def __str__(self) -> str:
        return f"fill level on day {self.fill_day:.0f}"
