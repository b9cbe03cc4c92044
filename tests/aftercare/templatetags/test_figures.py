"""Figures in words."""

from __future__ import annotations

import pytest

from aftercare.core.rates import Figure
from aftercare.templatetags.figures import percent, points, signed, sure


@pytest.mark.parametrize(("share", "said"), [(0.0523, "5.2"), (0, "0.0"), (-0.0004, "0.0"), (-0.012, "-1.2")])
def test_a_share_is_said_in_points(share: float, said: str) -> None:
    assert points(share) == said


@pytest.mark.parametrize(("share", "said"), [(0.012, "+1.2"), (-0.004, "-0.4"), (0.0004, "0.0"), (-0.0004, "0.0")])
def test_a_bias_has_its_sign_unless_it_is_nothing(share: float, said: str) -> None:
    assert signed(share) == said


def test_a_rate_is_said_in_whole_percent() -> None:
    assert percent(0.814) == "81"
    assert percent(0.7575) == "76"


def test_how_sure_a_figure_is_is_said_in_its_own_way() -> None:
    figure = Figure(0.05, -0.0123, 0.0612, 40, 12)

    assert sure(figure) == "-1.2 to 6.1"
    assert sure(figure, "signed") == "-1.2 to +6.1"
    assert sure(figure, "percent") == "-1 to 6"


def test_of_one_client_nothing_is_said_of_how_sure() -> None:
    assert sure(Figure(0.05, None, None, 4, 1)) == ""
