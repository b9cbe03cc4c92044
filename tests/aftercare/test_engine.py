from __future__ import annotations

import sqlite3
import threading
import time
from collections import Counter
from collections.abc import Callable, Sequence
from contextlib import closing
from pathlib import Path

import pytest

from aftercare import engine
from aftercare.engine import AlreadyRunning, Job

OFTEN = 0.01


def run_until(todo: Sequence[Job], condition: Callable[[], bool]) -> tuple[bool, float]:
    """Run the jobs until the condition holds; gives what `run` gave, and the seconds that stopping took."""
    stop, results = threading.Event(), list[bool]()
    loop = threading.Thread(target=lambda: results.append(engine.run(todo, stop)))
    loop.start()
    until = time.monotonic() + 10
    while not condition() and time.monotonic() < until:
        time.sleep(0.01)
    assert condition()
    began = time.monotonic()
    stop.set()
    loop.join(20)
    return results[0], time.monotonic() - began


def test_a_job_that_fails_is_tried_again_and_stops_no_other(caplog: pytest.LogCaptureFixture) -> None:
    calls = Counter[str]()

    def sound() -> None:
        calls["sound"] += 1

    def broken() -> None:
        calls["broken"] += 1
        raise ValueError("out of glue")

    def once_broken() -> None:
        calls["once"] += 1
        if calls["once"] == 1:
            raise ValueError("not yet")

    todo = [Job("sound", OFTEN, sound), Job("broken", OFTEN, broken), Job("once", OFTEN, once_broken)]
    stopped, _ = run_until(todo, lambda: calls["broken"] > 3 and calls["once"] > 3 and calls["sound"] > 3)

    assert stopped
    traced = [record for record in caplog.records if record.exc_info]
    assert [record.getMessage().split()[0] for record in traced if "broken" in record.getMessage()] == ["broken"]
    assert "broken still fails: ValueError('out of glue')" in caplog.text


def test_nothing_is_written_to_a_full_disk_before_the_log_was_carried_back(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    calls = Counter[str]()
    full = sqlite3.OperationalError("database or disk is full")
    full.sqlite_errorcode = sqlite3.SQLITE_FULL

    def checkpoint(_file: Path) -> bool:
        calls["checkpoint"] += 1
        if calls["checkpoint"] <= 20:
            raise full
        return True

    def write() -> None:
        calls["written while full"] += 1 < calls["checkpoint"] <= 19
        calls["written after"] += calls["checkpoint"] > 21

    monkeypatch.setattr(engine, "checkpoint", checkpoint)
    carrying = Job("checkpoint", OFTEN, lambda: engine._checkpoint(tmp_path), needs_room=False)
    run_until([carrying, Job("write", OFTEN, write)], lambda: calls["written after"] > 3)

    assert calls["written while full"] <= 1  # one that had begun


def test_a_long_import_does_not_hold_up_what_is_due() -> None:
    begun, swept = threading.Event(), Counter[str]()

    def long_import() -> None:
        begun.set()
        time.sleep(0.5)

    todo = [Job("run_imports", OFTEN, long_import, grace=2), Job("send_due", OFTEN, lambda: swept.update(["sweep"]))]
    run_until(todo, lambda: begun.is_set() and swept["sweep"] > 10)

    assert swept["sweep"] > 10


def test_an_idle_engine_stops_at_once() -> None:
    done = Counter[str]()
    todo = [Job(name, 60, lambda name=name: done.update([name])) for name in ("one", "two")]  # type: ignore[misc]

    stopped, seconds = run_until(todo, lambda: done.total() == 2)

    assert stopped
    assert seconds < 1


def test_a_round_in_hand_is_finished_within_its_grace_and_cut_off_after_it() -> None:
    begun, release, ended = threading.Event(), threading.Event(), list[str]()

    def in_hand() -> None:
        begun.set()
        time.sleep(0.3)
        ended.append("handed over")

    def stuck() -> None:
        begun.set()
        release.wait(10)

    assert run_until([Job("send_due", 60, in_hand, grace=5)], begun.is_set)[0]
    assert ended == ["handed over"]
    begun.clear()
    stopped, seconds = run_until([Job("poll_feeds", 60, stuck, grace=0.2)], begun.is_set)
    release.set()
    assert not stopped
    assert seconds < 1.5


def test_there_is_one_loop_for_a_database(tmp_path: Path) -> None:
    file = tmp_path / "new" / "studio.sqlite3.engine"

    refused = pytest.raises(AlreadyRunning, match=r"Another loop \(process \d+\) already looks at this database")
    with engine.only_one(file), refused, engine.only_one(file):
        pytest.fail("two loops at once")
    with engine.only_one(file):
        assert file.exists()


@pytest.fixture
def book(tmp_path: Path) -> Path:
    """A database whose log nobody but the engine carries back."""
    file = tmp_path / "book.sqlite3"
    with closing(sqlite3.connect(file, isolation_level=None)) as connection:
        connection.execute("PRAGMA journal_mode=WAL")
        connection.execute("CREATE TABLE visit (id INTEGER PRIMARY KEY)")
    return file


def test_the_log_is_carried_back_and_emptied_while_others_have_the_book_open(book: Path) -> None:
    log = Path(f"{book}-wal")
    with closing(sqlite3.connect(book, isolation_level=None)) as other:
        other.execute("PRAGMA wal_autocheckpoint=0")
        other.execute("INSERT INTO visit VALUES (1)")
        assert log.stat().st_size > 0

        engine.checkpoint(book)

        assert log.stat().st_size == 0
        assert other.execute("SELECT count(*) FROM visit").fetchone() == (1,)


def test_while_someone_writes_the_log_is_left_for_the_next_round(book: Path) -> None:
    with closing(sqlite3.connect(book, isolation_level=None)) as other:
        other.execute("PRAGMA wal_autocheckpoint=0")
        other.execute("INSERT INTO visit VALUES (1)")
        other.execute("BEGIN IMMEDIATE")
        other.execute("INSERT INTO visit VALUES (2)")
        began = time.monotonic()

        engine.checkpoint(book)

        assert time.monotonic() - began < 1.5
        assert Path(f"{book}-wal").stat().st_size > 0
        other.execute("COMMIT")
        assert other.execute("SELECT count(*) FROM visit").fetchone() == (2,)
