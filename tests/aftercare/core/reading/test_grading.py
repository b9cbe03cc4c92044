from __future__ import annotations

from aftercare.core.reading import Sign, read


def test_sweat_that_runs_into_eyes_is_no_glue() -> None:
    found = read("Would hot yoga melt the glue? I sweat like nobody's business, straight down into the eyes")

    assert Sign.GLUE_IN_EYE not in found.signs


def test_glue_that_runs_into_them_is() -> None:
    assert Sign.GLUE_IN_EYE in read("the glue ran when I sweated, its in my eye").signs
