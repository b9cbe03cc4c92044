"""What is left of a lash set: from readings to the studio's population, one client's curve, and days to a level."""

from aftercare.core.shedding.fitting import fit
from aftercare.core.shedding.population import Population
from aftercare.core.shedding.predicting import Forecaster, forecast
from aftercare.core.shedding.values import LONGEST_WORN, Curve, Forecast, History, LashSet, Loss, Quantiles, Seen

__all__ = [
    "LONGEST_WORN",
    "Curve",
    "Forecast",
    "Forecaster",
    "History",
    "LashSet",
    "Loss",
    "Population",
    "Quantiles",
    "Seen",
    "fit",
    "forecast",
]
