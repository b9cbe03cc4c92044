from __future__ import annotations

import json
import os
import random
import subprocess
import sys
from datetime import date, timedelta
from io import StringIO
from pathlib import Path

import pytest
from django.core.management import CommandError, call_command

from aftercare.core import shedding
from aftercare.core.shedding import History, LashSet, Seen

ROOT = Path(__file__).resolve().parents[4]
HEADER = "client,set_on,observed_on,fraction_left,adhesive_lot"
FEW = f"""{HEADER}
mia,2026-01-01,2026-01-21,0.8,A1
mia,2026-01-21,2026-02-10,0.75,A1
mia,2026-02-10,,,A1
zoe,2026-01-01,2026-01-21,0.35,
zoe,2026-01-21,2026-02-10,0.4,
"""
JANUARY, LATER, LAST = date(2026, 1, 1), date(2026, 1, 21), date(2026, 2, 10)


def forecast(tmp_path: Path, content: str, *more: str) -> dict[str, dict[str, list[float]]]:
    source, out = tmp_path / "seen.csv", tmp_path / "out.json"
    source.write_text(content)
    call_command("forecast_fills", str(source), "--out", str(out), *more, stderr=StringIO())
    found: dict[str, dict[str, list[float]]] = json.loads(out.read_text())
    return found


def test_it_runs_without_a_database_and_writes_quantiles_of_days(tmp_path: Path) -> None:
    source, out = tmp_path / "seen.csv", tmp_path / "out.json"
    source.write_text(FEW)
    nowhere = {"DATABASE_URL": "postgres://nobody:x@127.0.0.1:1/none", "DATA_DIR": str(tmp_path / "data")}

    ran = subprocess.run(
        [sys.executable, "manage.py", "forecast_fills", str(source), "--out", str(out)],
        cwd=ROOT,
        env={**os.environ, **nowhere},
        capture_output=True,
        text=True,
        timeout=60,
    )

    assert (ran.returncode, ran.stdout) == (0, ""), ran.stderr
    assert "Learning from 4 readings of 2 clients" in ran.stderr
    found = json.loads(out.read_text())
    assert list(found) == ["mia", "zoe"]
    for days in found.values():
        assert list(days) == ["0.6", "0.4"]
        for low, middle, high in days.values():
            assert 0 < low < middle < high
        assert days["0.6"][1] < days["0.4"][1]
    assert found["mia"]["0.6"][1] > 20 > found["zoe"]["0.6"][1], "after 20 days 0.8 was left of hers, and 0.35"


def test_it_is_the_models_own_forecast_of_the_set_that_is_worn(tmp_path: Path) -> None:
    mia = History(
        "mia",
        (
            LashSet(JANUARY, "A1", (Seen(LATER, 0.8),)),
            LashSet(LATER, "A1", (Seen(LAST, 0.75),)),
        ),
        LashSet(LAST, "A1"),
    )
    zoe = History("zoe", (LashSet(JANUARY, "", (Seen(LATER, 0.35),)), LashSet(LATER, "", (Seen(LAST, 0.4),))))
    today = date(2026, 2, 25)
    wanted = shedding.forecast(shedding.fit([mia, zoe]), [mia, zoe], levels=[0.5], today=today)

    found = forecast(tmp_path, FEW, "--level", "0.5", "--today", "2026-02-25")

    for one in wanted:
        days = one.days[0.5]
        assert found[one.client] == {"0.5": pytest.approx([days.low, days.middle, days.high], abs=1e-3)}


def test_levels_are_named_as_they_were_asked_for(tmp_path: Path) -> None:
    found = forecast(tmp_path, FEW, "--level", "0.50", "--level", ".3")

    assert [list(days) for days in found.values()] == [["0.50", ".3"], ["0.50", ".3"]]


def test_a_client_without_history_gets_the_populations_forecast(tmp_path: Path) -> None:
    found = forecast(tmp_path, f"{FEW}new,2026-02-09,,,\nnewer,2026-02-09,,,\n")

    assert found["new"] == found["newer"]
    assert found["zoe"]["0.6"][1] < found["new"]["0.6"][1] < found["mia"]["0.6"][1]


def test_a_set_that_is_still_worn_today_is_not_forecast_as_if_new(tmp_path: Path) -> None:
    worn = f"{FEW}new,2026-01-01,,,\n"

    later = forecast(tmp_path, worn, "--today", "2026-02-20")

    assert later["new"]["0.4"][1] > forecast(tmp_path, worn)["new"]["0.4"][1] + 1


def test_names_are_kept_whatever_they_hold(tmp_path: Path) -> None:
    found = forecast(tmp_path, f'{HEADER}\n"Lucía ""L"", 2",2026-01-01,,,\n')

    assert list(found) == ['Lucía "L", 2']


def test_a_file_without_rows_gives_an_empty_object(tmp_path: Path) -> None:
    assert forecast(tmp_path, HEADER) == {}


def test_more_clients_than_are_forecast_at_a_time_are_all_written(tmp_path: Path) -> None:
    pick = random.Random(4)
    rows = [
        f"c{number},2026-01-01,{JANUARY + timedelta(days=pick.randrange(12, 30))},{pick.randrange(8, 18) / 20},"
        for number in range(2050)
    ]

    found = forecast(tmp_path, "\n".join([HEADER, *rows]))

    assert list(found) == [f"c{number}" for number in range(2050)]


@pytest.mark.parametrize(
    ("options", "cure"),
    [
        (["--level", "60"], "--level: 60 is not between 0 and 1. Write a share such as 0.6"),
        (["--level", "0"], "--level: 0 is not between 0 and 1"),
        (["--level", "1"], "--level: 1 is not between 0 and 1"),
        (["--level", "nan"], "--level: nan is not between 0 and 1"),
        (["--level", "half"], "--level: “half” is not a number"),
        (["--level", "0.6", "--level", "0.60"], "--level: 0.60 is asked for twice"),
        (["--today", "10/02/2026"], '--today: "10/02/2026" is not a date: write it like 2026-03-09'),
        (["--today", "2026-02-09"], "row 3, observed_on: 2026-02-10 lies after today, 2026-02-09"),
    ],
)
def test_an_argument_that_cannot_be_used_is_named_with_the_cure_and_nothing_is_written(
    tmp_path: Path, options: list[str], cure: str
) -> None:
    with pytest.raises(CommandError) as caught:
        forecast(tmp_path, FEW, *options)

    assert cure in str(caught.value)
    assert caught.value.returncode == 1
    assert [file.name for file in tmp_path.iterdir()] == ["seen.csv"]


def test_a_bad_file_leaves_the_forecasts_of_the_last_good_one(tmp_path: Path) -> None:
    before = forecast(tmp_path, FEW)

    with pytest.raises(CommandError, match="row 2, fraction_left"):
        forecast(tmp_path, f"{HEADER}\nmia,2026-01-01,2026-01-15,60,\n")

    assert json.loads((tmp_path / "out.json").read_text()) == before


def test_a_place_that_cannot_be_written_is_named_with_the_cure(tmp_path: Path) -> None:
    (tmp_path / "seen.csv").write_text(FEW)

    with pytest.raises(CommandError, match="cannot be written .*: name another file for --out"):
        call_command(
            "forecast_fills", str(tmp_path / "seen.csv"), "--out", str(tmp_path / "no" / "out"), stderr=StringIO()
        )


def test_readings_that_no_set_can_have_are_told(tmp_path: Path) -> None:
    shares = [0.0001 * number if number % 2 else 1 - 0.0001 * number for number in range(400)]
    rows = [f"mia,2026-01-01,2026-01-{2 + at % 20:02},{share:.4f}," for at, share in enumerate(shares)]

    with pytest.raises(CommandError, match="Nothing was written: the readings of the set of 2026-01-01 cannot be"):
        forecast(tmp_path, "\n".join([HEADER, *rows, "mia,2026-01-01,,,"]))

    assert not (tmp_path / "out.json").exists()
