"""How many are journaled at once: few beside a carrier that is far, the whole window where the journal is the limit."""

from __future__ import annotations

import pytest

from aftercare.sending import portions
from aftercare.sending.portions import Portion


class Watch:
    """Stands in for the module's clock."""

    def __init__(self) -> None:
        self.now = 100.0

    def monotonic(self) -> float:
        return self.now


@pytest.fixture
def watch(monkeypatch: pytest.MonkeyPatch) -> Watch:
    watch = Watch()
    monkeypatch.setattr(portions, "time", watch)
    return watch


def spend(portion: Portion, watch: Watch, *, worked: float, waited: float, times: int) -> list[int]:
    """Let the wire work and wait in turns; return how many left at once after each."""
    found = []
    for _ in range(times):
        watch.now += worked + waited
        portion.wait(waited)
        found.append(portion.most)
    return found


@pytest.mark.parametrize(("window", "least"), [(1, 1), (2, 2), (10, 2), (50, 5), (200, 20)])
def test_beside_a_far_carrier_fewer_and_fewer(watch: Watch, window: int, least: int) -> None:
    portion = Portion(window, since=watch.now)
    assert portion.most == window
    found = spend(portion, watch, worked=0.002, waited=0.018, times=100)
    assert found == sorted(found, reverse=True)
    assert found[-1] == least


def test_where_the_wire_is_busy_the_whole_window_again(watch: Watch) -> None:
    portion = Portion(50, since=watch.now)
    spend(portion, watch, worked=0.002, waited=0.018, times=100)
    found = spend(portion, watch, worked=0.003, waited=0.001, times=200)
    assert found == sorted(found)
    assert found[-1] == 50


def test_between_the_two_it_stays(watch: Watch) -> None:
    portion = Portion(50, since=watch.now)
    assert set(spend(portion, watch, worked=0.006, waited=0.004, times=100)) == {50}


def test_a_moment_is_too_short_to_tell(watch: Watch) -> None:
    portion = Portion(50, since=watch.now)
    assert spend(portion, watch, worked=0.0, waited=0.004, times=4) == [50] * 4
