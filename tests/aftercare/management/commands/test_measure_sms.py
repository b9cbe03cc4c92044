"""The counts here are those of 3GPP TS 23.038 and 23.040; test_segments.py has their table."""

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
GOOD = '{"id": "a", "text": "Hi"}'


def measure(tmp_path: Path, content: str | bytes) -> list[dict[str, object]]:
    source, out = tmp_path / "in.jsonl", tmp_path / "out.jsonl"
    source.write_bytes(content.encode() if isinstance(content, str) else content)
    call_command("measure_sms", str(source), "--out", str(out), stderr=StringIO())
    return [json.loads(line) for line in out.read_text().splitlines()]


def test_it_runs_without_a_database_and_says_what_each_text_costs(tmp_path: Path) -> None:
    texts = ["a" * 160, "a" * 152 + "€" + "a" * 152, "a" * 159 + "’", ""]
    source = tmp_path / "in.jsonl"
    source.write_text("".join(json.dumps({"id": row, "text": text}) + "\n" for row, text in enumerate(texts)))
    nowhere = {"DATABASE_URL": "postgres://nobody:x@127.0.0.1:1/none", "DATA_DIR": str(tmp_path / "data")}

    ran = subprocess.run(
        [sys.executable, "manage.py", "measure_sms", str(source), "--out", str(tmp_path / "out.jsonl")],
        cwd=ROOT,
        env={**os.environ, **nowhere},
        capture_output=True,
        text=True,
        timeout=60,
    )

    assert (ran.returncode, ran.stdout) == (0, ""), ran.stderr
    assert "4 texts measured" in ran.stderr
    assert [json.loads(line) for line in (tmp_path / "out.jsonl").read_text().splitlines()] == [
        {"id": 0, "encoding": "gsm7", "units": 160, "segments": 1},
        {"id": 1, "encoding": "gsm7", "units": 306, "segments": 3},
        {"id": 2, "encoding": "ucs2", "units": 160, "segments": 3},
        {"id": 3, "encoding": "gsm7", "units": 0, "segments": 1},
    ]


def test_the_spellings_of_json_lines_are_all_read(tmp_path: Path) -> None:
    lines = [
        '\ufeff{"text": "\\ud83d\\ude00", "id": "pair", "more": 1}',
        "",
        '{"id": "lone", "text": "\\ud83d"}\r',
        '{"id": "a separator stays inside its text", "text": "a\u2028b"}',
    ]

    out = measure(tmp_path, "\n".join(lines))

    assert [(row["encoding"], row["units"]) for row in out] == [("ucs2", 2), ("ucs2", 1), ("ucs2", 3)]


def test_an_empty_file_gives_an_empty_file(tmp_path: Path) -> None:
    assert measure(tmp_path, "") == []


@pytest.mark.parametrize(
    ("line", "field", "cure"),
    [
        ("{", "line", "is not JSON: write"),
        ("[" * 100_000, "line", "is not JSON: write"),
        ('["a", "Hi"]', "line", "is no JSON object: write"),
        ('{"text": "Hi"}', "id", "it is missing: write a text or a whole number"),
        ('{"id": null, "text": "Hi"}', "id", "null cannot be used"),
        ('{"id": true, "text": "Hi"}', "id", "true cannot be used"),
        ('{"id": 1.5, "text": "Hi"}', "id", "1.5 cannot be used"),
        ('{"id": "", "text": "Hi"}', "id", '"" cannot be used'),
        ('{"id": "a"}', "text", "it is missing: write a text in quotes"),
        ('{"id": "a", "text": 7}', "text", "7 cannot be used: write a text in quotes"),
    ],
)
def test_a_bad_line_names_row_field_and_cure_and_writes_nothing(
    tmp_path: Path, line: str, field: str, cure: str
) -> None:
    with pytest.raises(CommandError) as caught:
        measure(tmp_path, f"{GOOD}\n{line}\n{GOOD}\n")

    assert f"row 2, field {field}, " in str(caught.value)
    assert cure in str(caught.value)
    assert caught.value.returncode == 1
    assert [file.name for file in tmp_path.iterdir()] == ["in.jsonl"]


def test_what_a_bad_line_holds_does_not_steer_the_terminal(tmp_path: Path) -> None:
    with pytest.raises(CommandError, match=r"row 1, field line, \\x1b\[2Jred is not JSON") as caught:
        measure(tmp_path, "\x1b[2Jred\n")

    assert "\x1b" not in str(caught.value)


def test_every_bad_line_is_listed(tmp_path: Path) -> None:
    with pytest.raises(CommandError, match=r"(?s)2 bad rows.*row 1, .*byte 9 is not UTF-8.*row 3, "):
        measure(tmp_path, b'{"id": "\xff"}\n' + GOOD.encode() + b"\nx\n")


def test_a_bad_run_leaves_the_file_of_the_last_good_one(tmp_path: Path) -> None:
    before = measure(tmp_path, GOOD)

    with pytest.raises(CommandError):
        measure(tmp_path, "x")

    assert [json.loads(line) for line in (tmp_path / "out.jsonl").read_text().splitlines()] == before


def test_files_that_cannot_be_read_or_written_are_named_with_the_cure(tmp_path: Path) -> None:
    (tmp_path / "in.jsonl").write_text(GOOD)

    with pytest.raises(CommandError, match=r"none\.jsonl cannot be read .*: name a file of JSON lines"):
        call_command("measure_sms", str(tmp_path / "none.jsonl"), "--out", str(tmp_path / "out"), stderr=StringIO())
    with pytest.raises(CommandError, match=r"cannot be written .*: name another file for --out"):
        call_command(
            "measure_sms", str(tmp_path / "in.jsonl"), "--out", str(tmp_path / "no" / "out"), stderr=StringIO()
        )
