"""Forecasting: from the shares left that artists saw to the studio's fit and a forecast of each set that is on.

A forecast is kept as it was made, so that it can be scored when she comes; the newest of a visit is in force. Writing
one leaves her ahead of her plan, so that planning follows.
"""

from aftercare.forecasting.fitting import fit, fit_if_grown, refit, refit_due
from aftercare.forecasting.making import as_if, catch_up, refresh, renew

__all__ = ["as_if", "catch_up", "fit", "fit_if_grown", "refit", "refit_due", "refresh", "renew"]
