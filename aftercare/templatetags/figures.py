"""Figures of a score in words: points, percent, and how sure each is."""

from __future__ import annotations

from django import template
from django.utils.formats import number_format
from django.utils.translation import gettext as _

from aftercare.core.rates import Figure

register = template.Library()


@register.filter
def points(share: float) -> str:
    """Say a share in points: 0.0523 is "5.2"."""
    return number_format(round(100 * share, 1) + 0.0, 1)  # + 0.0: never "-0.0"


@register.filter
def signed(share: float) -> str:
    """Say it with its sign: "+1.2", "-0.4"."""
    words = points(share)
    return words if words.startswith("-") or not round(100 * share, 1) else f"+{words}"


@register.filter
def percent(share: float) -> str:
    """Say a share in whole percent: 0.814 is "81"."""
    return number_format(round(100 * share), 0)  # it would cut, not round


@register.filter
def sure(figure: Figure, way: str = "points") -> str:
    """Say how sure a figure is: "4.8 to 5.6", or nothing where that is unknown. ``way``: points, signed or percent."""
    if figure.low is None or figure.high is None:
        return ""
    said = {"points": points, "signed": signed, "percent": percent}[way]
    return _("%(low)s to %(high)s") % {"low": said(figure.low), "high": said(figure.high)}
