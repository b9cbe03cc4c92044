"""Files of one JSON object a line: texts to look at, each under its reference."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from django.core.management.base import CommandError

from aftercare.management import files
from studio.book.text import shown

_EXAMPLE = '{"id": "7", "text": "See you at 10:00"}'


@dataclass(frozen=True, slots=True)
class Text:
    """One text; `id` is a string or a whole number and is handed back as it came."""

    id: str | int
    text: str


def read_texts(file: Path) -> list[Text]:
    """Read a whole file of `{"id", "text"}`; other fields and blank lines are passed over.

    CommandError: the file cannot be read, or some of its lines cannot; the message names the row, field and cure of
    every one, so that they can be mended in one go.
    """
    try:
        lines = file.read_bytes().removeprefix(b"\xef\xbb\xbf").split(b"\n")
    except OSError as error:
        raise CommandError(f"{file} cannot be read ({error.strerror}): name a file of JSON lines.") from error
    texts: list[Text] = []
    problems: list[str] = []
    for row, line in enumerate(lines, start=1):
        if line.strip():
            try:
                texts.append(_text(line))
            except ValueError as problem:
                problems.append(f"row {row}, {problem}")
    if problems:
        raise CommandError("\n".join([f"{file}: {len(problems)} bad rows, nothing was written.", *problems]))
    return texts


def write(file: Path, rows: Iterable[dict[str, Any]]) -> None:
    """Write one object a line. A file that stood there is replaced when all is written, or stays as it was."""
    files.write(file, (json.dumps(row) + "\n" for row in rows))


def _text(line: bytes) -> Text:
    """Read one line; ValueError says field, value and cure."""
    try:
        value = json.loads(line.decode("utf-8"))
    except UnicodeDecodeError as error:
        raise ValueError(f"field line, byte {error.start + 1} is not UTF-8: save the file as UTF-8.") from error
    except (ValueError, RecursionError) as error:
        raise ValueError(f"field line, {_shown(line)} is not JSON: write {_EXAMPLE}.") from error
    if not isinstance(value, dict):
        raise ValueError(f"field line, {_shown(line)} is no JSON object: write {_EXAMPLE}.")
    found, text = value.get("id"), value.get("text")
    if isinstance(found, bool) or not isinstance(found, str | int) or found == "":
        raise ValueError(f"field id, {_found(value, 'id')}: write a text or a whole number, like {_EXAMPLE}.")
    if not isinstance(text, str):
        raise ValueError(f"field text, {_found(value, 'text')}: write a text in quotes, like {_EXAMPLE}.")
    return Text(found, text)


def _found(value: dict[str, Any], field: str) -> str:
    return f"{_shown(json.dumps(value[field]).encode())} cannot be used" if field in value else "it is missing"


def _shown(line: bytes) -> str:
    return shown(line.decode("utf-8", "replace").strip())  # what clients wrote must not steer a terminal
