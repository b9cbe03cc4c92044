"""How the commands end that others rely on: 0 or 1 and nothing else, with what they promised on standard output."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from django.conf import settings
from django.db import OperationalError

from aftercare.management.commands import go_live

ZEROS = dict.fromkeys(("handed_over", "planned", "withheld", "withdrawn", "undelivered", "unsure"), 0)
COMMANDS = ("import_book", "list_messages", "go_live", "send_due", "measure_sms")


def manage(data: Path, *args: str) -> subprocess.CompletedProcess[str]:
    env = {**os.environ, "DATABASE_URL": f"sqlite:///{data}/birch.sqlite3"}
    command = [sys.executable, "manage.py", *args]
    return subprocess.run(command, cwd=settings.BASE_DIR, env=env, capture_output=True, text=True, timeout=60)


@pytest.mark.parametrize("command", COMMANDS)
def test_each_has_help_and_ends_well_with_it(tmp_path: Path, command: str) -> None:
    done = manage(tmp_path, command, "--help")

    assert done.returncode == 0
    assert f"usage: manage.py {command}" in done.stdout


@pytest.mark.parametrize(
    ("args", "promised"),
    [
        (("import_book",), "bad_rows"),
        (("import_book", "book.csv", "--studio=birch", "--format=xlsx"), "bad_rows"),
        (("list_messages", "--json"), None),
        (("go_live",), {}),
        (("go_live", "--studio=birch", "--forward"), {}),
        (("send_due",), ZEROS),
        (("measure_sms", "in.jsonl"), None),
    ],
)
def test_a_wrong_argument_is_bad_input_like_any_other(tmp_path: Path, args: tuple[str, ...], promised: Any) -> None:
    done = manage(tmp_path, *args)

    assert done.returncode == 1
    assert "Error: " in done.stderr
    if promised is None:
        assert done.stdout == ""
    elif promised == "bad_rows":
        bad = json.loads(done.stdout.splitlines()[-1])["bad_rows"]
        assert [(one["row"], one["field"]) for one in bad] == [(0, "arguments")]
    else:
        assert json.loads(done.stdout) == promised


@pytest.mark.parametrize("command", ["import_book book.csv", "list_messages --json", "go_live", "send_due"])
def test_a_database_that_is_not_set_up_is_said_with_its_cure(tmp_path: Path, command: str) -> None:
    done = manage(tmp_path, *command.split(), "--studio=birch")

    assert done.returncode == 1
    assert "manage.py migrate" in done.stderr
    assert "Traceback" not in done.stderr


@pytest.mark.parametrize("command", ["import_book book.csv", "list_messages --json", "go_live", "send_due"])
def test_a_database_that_is_not_there_is_said_with_its_cure(tmp_path: Path, command: str) -> None:
    (tmp_path / "birch.sqlite3").write_text("This is no database at all.\n" * 40)

    done = manage(tmp_path, *command.split(), "--studio=birch")

    assert done.returncode == 1
    assert "check DATABASE_URL" in done.stderr
    assert "Traceback" not in done.stderr
    assert command.startswith("list_messages") or json.loads(done.stdout.splitlines()[-1]) is not None


@pytest.mark.django_db
def test_a_database_that_gives_up_on_the_way_is_said_with_its_cure(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def locked(*_: Any, **__: Any) -> Any:
        raise OperationalError("database is\nlocked")

    monkeypatch.setattr(go_live.Command, "handle", locked)

    with pytest.raises(SystemExit) as ended:
        go_live.Command().run_from_argv(["manage.py", "go_live", "--studio", "birch"])

    said = capsys.readouterr()
    assert ended.value.code == 1
    assert "did not go on (database is locked): check that" in said.err
    assert json.loads(said.out) == {}


def test_what_needs_no_database_runs_without_one(tmp_path: Path) -> None:
    (tmp_path / "in.jsonl").write_text('{"id": "7", "text": "See you at 10:00"}\n', encoding="utf-8")

    done = manage(tmp_path, "measure_sms", str(tmp_path / "in.jsonl"), "--out", str(tmp_path / "out.jsonl"))

    assert done.returncode == 0
    assert not (tmp_path / "birch.sqlite3").exists()
