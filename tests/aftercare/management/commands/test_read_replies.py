from __future__ import annotations

import json
import os
import subprocess
import sys
from io import StringIO
from pathlib import Path

import pytest
from django.core.management import CommandError, call_command

ROOT = Path(__file__).resolve().parents[4]


def read(tmp_path: Path, *texts: str) -> list[dict[str, object]]:
    source, out = tmp_path / "in.jsonl", tmp_path / "out.jsonl"
    source.write_text("".join(json.dumps({"id": f"r{row}", "text": text}) + "\n" for row, text in enumerate(texts)))
    call_command("read_replies", str(source), "--out", str(out), stderr=StringIO())
    return [json.loads(line) for line in out.read_text().splitlines()]


def test_each_reply_has_its_reading_and_where_every_finding_stands(tmp_path: Path) -> None:
    text = "Love them!! only my left lid is itchy"
    [found] = read(tmp_path, text)

    assert {name: found[name] for name in ("id", "urgency", "signs", "negated", "side", "unread")} == {
        "id": "r0",
        "urgency": "same_day",
        "signs": ["itching"],
        "negated": [],
        "side": "left",
        "unread": False,
    }
    assert set(found["about"]) == {"fine", "irritation"}  # type: ignore[call-overload]
    why: list[dict[str, object]] = found["why"]  # type: ignore[assignment]
    assert "itching" in [one["finding"] for one in why]
    assert all(text[one["start"] : one["end"]] == one["text"] for one in why)  # type: ignore[misc]


def test_every_reply_is_read_in_its_order_whatever_it_holds(tmp_path: Path) -> None:
    odd = ["", "\u202eabc", "👁️" * 500, "a" * 100_000, "no\x00 redness", "\ud7ff", "  \n "]
    assert [one["id"] for one in read(tmp_path, *odd)] == [f"r{row}" for row in range(len(odd))]


def test_it_runs_without_a_database(tmp_path: Path) -> None:
    source, out = tmp_path / "in.jsonl", tmp_path / "out.jsonl"
    source.write_text('{"id": "a", "text": "cant open my right eye"}\n')
    nowhere = {"DATABASE_URL": "postgres://nobody:x@127.0.0.1:1/none", "DATA_DIR": str(tmp_path / "data")}
    command = [sys.executable, "manage.py", "read_replies", str(source), "--out", str(out)]

    subprocess.run(command, cwd=ROOT, env={**os.environ, **nowhere}, check=True, capture_output=True)

    assert json.loads(out.read_text())["urgency"] == "emergency"


def test_a_bad_line_is_named_and_nothing_is_written(tmp_path: Path) -> None:
    source, out = tmp_path / "in.jsonl", tmp_path / "out.jsonl"
    source.write_text('{"id": "a", "text": "hi"}\n{"id": "b"}\n')

    with pytest.raises(CommandError, match="2"):
        call_command("read_replies", str(source), "--out", str(out), stderr=StringIO())

    assert not out.exists()
