from __future__ import annotations

import os
import threading
from collections.abc import Iterator
from pathlib import Path

import pytest
from django.core.management import CommandError

from aftercare.management import files


def test_a_file_is_written_piece_by_piece(tmp_path: Path) -> None:
    files.write(tmp_path / "out", iter(["one\n", "two\n"]))

    assert (tmp_path / "out").read_text() == "one\ntwo\n"


def test_a_file_stays_as_it_was_until_all_is_written(tmp_path: Path) -> None:
    out = tmp_path / "out"
    out.write_text("before")
    out.chmod(0o600)

    def pieces() -> Iterator[str]:
        yield "half of it"
        assert out.read_text() == "before"
        raise RuntimeError("the lights went out")

    with pytest.raises(RuntimeError):
        files.write(out, pieces())
    assert [(file.name, file.read_text()) for file in tmp_path.iterdir()] == [("out", "before")]
    files.write(out, ["after"])
    assert (out.read_text(), out.stat().st_mode & 0o777) == ("after", 0o600)


def test_a_pipe_is_written_to_and_not_replaced(tmp_path: Path) -> None:
    pipe = tmp_path / "pipe"
    os.mkfifo(pipe)
    read: list[str] = []
    reader = threading.Thread(target=lambda: read.append(pipe.read_text()))
    reader.start()

    files.write(pipe, ["words"])

    reader.join(10)
    assert read == ["words"]
    assert pipe.is_fifo()


def test_a_place_that_cannot_be_written_is_named_with_the_cure(tmp_path: Path) -> None:
    with pytest.raises(CommandError, match=r"no/out cannot be written \(No such file.*\): name another file for --out"):
        files.write(tmp_path / "no" / "out", ["words"])


def test_a_link_stays_one_and_what_it_points_to_is_written_whole_or_not_at_all(tmp_path: Path) -> None:
    (tmp_path / "there").mkdir()
    (tmp_path / "there" / "march").write_text("before")
    link = tmp_path / "latest"
    link.symlink_to("there/march")

    def pieces() -> Iterator[str]:
        yield "half of it"
        raise RuntimeError("the lights went out")

    with pytest.raises(RuntimeError):
        files.write(link, pieces())
    assert link.read_text() == "before"
    files.write(link, ["after"])
    assert link.is_symlink()
    assert (tmp_path / "there" / "march").read_text() == "after"
