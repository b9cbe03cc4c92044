"""The rules of the house that import-linter cannot see."""

from __future__ import annotations

import ast
import doctest
import re
import sys
from importlib import import_module
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
# What core may use: the standard library, and these.
ALLOWED_IN_CORE = {"aftercare", "babel", "gsm0338", "icalendar", "numpy", "phonenumbers", "rapidfuzz", "scipy"}
MAY_NAME_AFTERCARE = {"settings.py", "urls.py", "celery.py"}
TOP = {
    "README.md",
    "DEVELOPERS.md",
    "manage.py",
    "pyproject.toml",
    "requirements.txt",
    "aftercare",
    "studio",
    "templates",
    "tests",
    "deploy",
}
MADE_HERE = {"data", "__pycache__"}  # not kept by git


def modules(folder: str) -> list[Path]:
    return sorted((ROOT / folder).rglob("*.py"))


def with_examples() -> list[str]:
    """Give the name of each module whose docstrings hold an example."""
    files = [file for folder in ("aftercare", "studio") for file in modules(folder)]
    found = [file.relative_to(ROOT).with_suffix("") for file in files if ">>> " in file.read_text(encoding="utf-8")]
    return [".".join(name.parts).removesuffix(".__init__") for name in found]


def imported(file: Path) -> set[str]:
    found: set[str] = set()
    for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found.update(name.name for name in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            found.add(node.module)
            found.update(f"{node.module}.{name.name}" for name in node.names)
    return found


def test_core_uses_nothing_but_its_short_list() -> None:
    strange = {
        f"{file.relative_to(ROOT)}: {name}"
        for file in modules("aftercare/core")
        for name in imported(file)
        if name.split(".")[0] not in ALLOWED_IN_CORE | sys.stdlib_module_names
    }

    assert not strange


def test_core_reads_no_clock() -> None:
    clocks = re.compile(r"\.(now|utcnow|today)\(|time\.(time|monotonic|time_ns)\(")

    assert not [str(file) for file in modules("aftercare/core") if clocks.search(file.read_text(encoding="utf-8"))]


def test_the_stages_read_no_clock_but_their_argument() -> None:
    """But for what goes by the database's clock: leases, how roads fare, and what a bind brings between two rounds."""
    names = ("answers", "asking", "choices", "consulting", "erasing", "lotwatch", "matters", "paging", "telling")
    stages = [ROOT / "aftercare" / f"{name}.py" for name in (*names, "trials", "upkeep")]

    folders = ("facts", "planning", "forecasting", "triage", "figures")
    for file in [*stages, *(file for folder in folders for file in modules(f"aftercare/{folder}"))]:
        assert "timezone.now" not in file.read_text(encoding="utf-8"), file
        assert "studio.clock" not in imported(file), file


def test_whoever_wrote_has_forecast_before_it_is_planned() -> None:
    """Edges and imports call upkeep: planning alone would leave a new set without a forecast."""
    alone = re.compile(r"planning\.(plan_clients|catch_up)\(")
    files = {str(file.relative_to(ROOT)) for file in modules("aftercare") if alone.search(file.read_text("utf-8"))}

    assert files == {"aftercare/upkeep.py"}


def test_only_three_files_of_the_studio_name_aftercare() -> None:
    """As strings: include("aftercare.urls") and dotted paths in settings."""
    named = re.compile(r"[\"']aftercare[.\"']")
    files = {file.name for file in modules("studio") if named.search(file.read_text(encoding="utf-8"))}

    assert files <= MAY_NAME_AFTERCARE


def test_the_top_level_is_what_it_is_said_to_be() -> None:
    there = {path.name for path in ROOT.iterdir() if not path.name.startswith(".")} - MADE_HERE

    assert there == TOP


@pytest.mark.parametrize("name", with_examples())
def test_the_examples_in_docstrings_are_true(name: str) -> None:
    failed, tried = doctest.testmod(import_module(name))

    assert tried
    assert not failed


def chained(call: ast.expr) -> dict[str, ast.Call]:
    """Return the calls of a chain such as ``rows.filter(…).get(…)`` by their names."""
    found: dict[str, ast.Call] = {}
    while isinstance(call, ast.Call | ast.Attribute):
        if isinstance(call, ast.Call):
            if isinstance(call.func, ast.Attribute):
                found.setdefault(call.func.attr, call)
            call = call.func
        else:
            call = call.value
    return found


def test_a_lock_names_its_table_where_others_are_read_along() -> None:
    """PostgreSQL refuses to lock what an outer join may leave empty; SQLite locks nothing, and says nothing."""
    wrong = [
        f"{file.relative_to(ROOT)}:{node.lineno}"
        for folder in ("aftercare", "studio")
        for file in modules(folder)
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8")))
        if isinstance(node, ast.Call)
        and {"select_for_update", "select_related"} <= (calls := chained(node)).keys()
        and "of" not in {keyword.arg for keyword in calls["select_for_update"].keywords}
    ]

    assert not wrong
