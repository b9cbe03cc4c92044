"""The files that an installation starts from say what the code reads."""

from __future__ import annotations

import configparser
import os
import re
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
import yaml

from deploy import starting, testing

ROOT = Path(__file__).resolve().parents[2]
EXAMPLE = ROOT / "deploy" / "env.example"
UNITS = sorted((ROOT / "deploy" / "systemd").glob("*.service"))


def written() -> set[str]:
    """Every variable that the example gives or shows behind a comment sign."""
    return set(re.findall(r"^#?([A-Z][A-Z_]*)=", EXAMPLE.read_text(), re.MULTILINE))


def test_the_example_has_every_variable_that_the_service_reads() -> None:
    settings = (ROOT / "studio" / "settings.py").read_text()
    server = (ROOT / "deploy" / "gunicorn.conf.py").read_text()

    read = set(re.findall(r"""\benv\.(?!prefixed|options)\w+\(\s*["']([A-Z_]+)["']""", settings + server))

    assert {"SECRET_KEY", "REDIS_URL", "LISTEN", "WEB_THREADS"} <= read
    assert {name for name in read if name not in written() and f"{name}_FILE" not in written()} == set()


def test_the_example_has_what_the_containers_are_told() -> None:
    compose = (ROOT / "deploy" / "compose.yaml").read_text()

    asked = set(re.findall(r"\$\{([A-Z_]+)", compose))

    assert {"POSTGRES_PASSWORD", "SECRET_KEY"} <= asked <= written()


def test_the_example_is_read_as_it_stands() -> None:
    example = testing.read_example(EXAMPLE)

    assert example["PUBLIC_URL"].startswith("https://")
    assert set(example) <= written()


def test_the_pins_are_exact_and_none_is_given_twice() -> None:
    lines = [
        line.partition("#")[0].strip()
        for file in ("requirements.txt", "tests/requirements.txt")
        for line in (ROOT / file).read_text().splitlines()
    ]
    pins = [line.partition(";")[0].strip() for line in lines if line]

    assert [pin for pin in pins if not re.fullmatch(r"[\w.-]+(\[\w+\])?==[\w.]+", pin)] == []
    names = [re.split(r"[\[=]", pin)[0].lower().replace("_", "-") for pin in pins]
    assert len(names) == len(set(names))


def test_what_deploy_start_runs_is_what_the_units_and_the_containers_run(monkeypatch: pytest.MonkeyPatch) -> None:
    compose: dict[str, Any] = yaml.safe_load((ROOT / "deploy" / "compose.yaml").read_text())["services"]
    units = [unit.read_text() for unit in UNITS]

    monkeypatch.delenv("REDIS_URL", raising=False)
    embedded = starting.programs(Path("/data"))
    monkeypatch.setenv("REDIS_URL", "redis://127.0.0.1/1")
    grown = starting.programs(Path("/data"))

    assert [one.name for one in embedded] == ["The web server", "The engine"]
    assert [one.name for one in grown] == ["The web server", "Worker 1", "The beat"]
    for program in (*embedded, *grown[1:]):
        words = [word for word in program.command[1:] if not word.startswith(("/", "--schedule", "--hostname", "-m"))]
        assert any(all(word in unit for word in words) for unit in units), program
    for name in ("worker", "beat"):
        ours = next(one for one in grown if one.name == {"worker": "Worker 1", "beat": "The beat"}[name])
        common = [word for word in ours.command[1:] if not word.startswith(("--schedule", "--hostname"))]
        assert compose[name]["command"][1 : len(common) + 1] == common


def test_every_carrier_has_a_program_of_its_own(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("SMPP_ALPHA", "smpp://u:p@h")
    monkeypatch.setenv("SMPP_BETA_FILE", "/etc/aftercare/beta")
    monkeypatch.setenv("SMPP_GAMMA", " ")
    monkeypatch.delenv("REDIS_URL", raising=False)

    started = [list(one.command[1:]) for one in starting.programs(Path("/data")) if "run_smpp" in one.command]

    assert started == [["manage.py", "run_smpp", "alpha"], ["manage.py", "run_smpp", "beta"]]
    assert any("manage.py run_smpp %i\n" in unit.read_text() for unit in UNITS)


@pytest.mark.parametrize("unit", UNITS, ids=lambda unit: unit.stem)
def test_a_unit_can_be_read_and_is_always_started_again(unit: Path) -> None:
    parser = configparser.ConfigParser(strict=False, interpolation=None)
    parser.optionxform = str  # type: ignore[assignment,method-assign]  # systemd's names have capitals
    parser.read(unit)

    assert parser["Service"]["Restart"] == "always"
    assert parser["Service"]["EnvironmentFile"] == "/etc/aftercare.env"
    assert "/.venv/bin/python " in parser["Service"]["ExecStart"]


@pytest.mark.parametrize("script", ["deploy/start", "deploy/test"])
def test_a_script_tells_how_it_is_used(script: str) -> None:
    ran = subprocess.run([sys.executable, str(ROOT / script), "--help"], capture_output=True, text=True, timeout=60)

    assert (ran.returncode, ran.stderr) == (0, "")
    assert script in ran.stdout


@pytest.mark.parametrize("name", ["PORT", "WEB_PROCESSES", "WEB_THREADS"])
def test_a_number_of_the_web_server_that_is_none_is_said_as_any_other(name: str) -> None:
    command = [sys.executable, "-m", "gunicorn", "--check-config", "--config", "deploy/gunicorn.conf.py"]

    ran = subprocess.run(command, cwd=ROOT, env={**os.environ, name: "two"}, capture_output=True, text=True, timeout=60)

    assert ran.returncode
    assert f"{name}=two is not a whole number: write digits only" in ran.stderr


def test_the_scripts_can_be_run_as_they_are() -> None:
    for script in ("deploy/start", "deploy/test", ".ci/run"):
        assert (ROOT / script).stat().st_mode & 0o111 == 0o111, script
