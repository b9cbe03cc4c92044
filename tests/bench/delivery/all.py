# ruff: noqa: E402  it is run as a script from anywhere
"""The speed of delivery, line by line: what is reached here, beside what is to be reached.

    python tests/bench/delivery/all.py [part ...] [--rounds 3] [--number 1500] [--history 1000000]

Parts: postgres, sqlite, workers, latency, promised, webhook, sweep; without any, all of them, in some minutes. What
texts a second are worth depends on the machine: they are measured beside the SMS centre's own rate, in the same run
and taking turns, with everything journaled. A line of texts stands twice: *whole*, as ``run_smpp`` does it, each
message claimed and judged anew and its text written; and *handed*, the hand-over alone, with letters judged beforehand.
Beside it stands what the leanest sender that journals reaches in the same run, and what it reaches on the service's own
tables (``leanest.py``). Exit 1 where a line is not kept.
"""

from __future__ import annotations

import argparse
import json
import os
import re
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]
sys.path.insert(0, str(ROOT))

from tests import servers
from tests.smsc import Smsc, smsc

HERE = Path(__file__).resolve().parent
LATENCY = 20  # ms
WINDOWS = {"whole": 10, "handed": 50}  # of the latency's lines: a window that this machine could fill without it
FILLED = 150  # how often a window is filled at least there: with fewer, how it begins and ends would count as well


@dataclass(frozen=True, slots=True)
class Line:
    """One line of the table. ``at_most``: the figure must stay below the limit, not above it."""

    what: str
    figure: float
    limit: float
    beside: str
    at_most: bool = False

    @property
    def is_kept(self) -> bool:
        return self.figure <= self.limit if self.at_most else self.figure >= self.limit

    def __str__(self) -> str:
        sign = "<=" if self.at_most else ">="
        word = "kept" if self.is_kept else "NOT KEPT"
        return f"{self.what:46} {self.figure:8.3f} {sign} {self.limit:5.2f} {word:8}  {self.beside}"


@dataclass(frozen=True, slots=True)
class Bench:
    """How large the measurements are."""

    rounds: int
    number: int
    history: int

    def postgres(self) -> Iterator[Line]:
        yield from self._texts("PostgreSQL", {False: 0.30, True: 0.45})

    def sqlite(self) -> Iterator[Line]:
        yield from self._texts("SQLite", {False: 0.60, True: 0.60})

    def _texts(self, database: str, limits: dict[bool, float]) -> Iterator[Line]:
        for receipts, limit in limits.items():
            found = self._sender(database, "--receipts" if receipts else "--window=200")
            for name in ("whole", "handed"):
                yield Line(
                    f"{database}, {'with' if receipts else 'without'} receipts, {name}",
                    found[name] / found["own"],
                    limit,
                    f"{found[name]:,.0f} of {found['own']:,.0f} a second, {found[f'{name}_ms']:.2f} ms of CPU each; "
                    f"the leanest {found['leanest'] / found['own']:.3f}, "
                    f"on these tables {found['leanest_own'] / found['own']:.3f}",
                )

    def latency(self) -> Iterator[Line]:
        for name, window in WINDOWS.items():
            number = max(self.number, FILLED * window)
            found = self._sender("PostgreSQL", f"--latency={LATENCY}", f"--window={window}", f"--number={number}")
            best = window * found["own"]  # by a window of one: the round trip as it is
            beside = (
                f"{found[name]:,.0f} of {best:,.0f} a second, round trip {1000 / found['own']:.1f} ms; "
                f"the leanest {found['leanest'] / best:.3f}"
            )
            yield Line(f"{LATENCY} ms to the carrier, window {window}, {name}", found[name] / best, 0.92, beside)

    def _sender(self, database: str, *options: str) -> dict[str, float]:
        with smsc() as centre:
            centre.set(plain=True, latency=LATENCY if f"--latency={LATENCY}" in options else 0)
            given = [f"--number={self.number}", f"--rounds={self.rounds}", *options]
            return _run("handing.py", _of(centre) + given, database)

    def workers(self) -> Iterator[Line]:
        with servers.redis() as broker:
            found = _run("workers.py", [], REDIS_URL=broker)
        beside = f"{found['together']:,.0f} against {found['alone']:,.1f} messages a second"
        yield Line("Celery, against one task a message", found["times"], 25, beside)

    def promised(self) -> Iterator[Line]:
        found = _run("promised.py", [f"--rounds={self.rounds + 2}"])
        beside = f"{found['promise']:,.0f} against {found['bulk_create']:,.0f} rows a second"
        yield Line("planned messages, against bulk_create", found["promise"] / found["bulk_create"], 4, beside)

    def webhook(self) -> Iterator[Line]:
        said = _say([str(HERE / "webhook.py")])
        ratio, times = _number(r"ratio: ([\d.]+)", said), _number(r"([\d.]+) times", said)
        yield Line("a carrier's call, against raw SQL", ratio, 0.8, said.splitlines()[0].partition(" (")[0])
        yield Line("  at 200 a second: p99 in medians", times, 5, said.splitlines()[-1].partition(";")[0], at_most=True)

    def sweep(self) -> Iterator[Line]:
        said = _say([str(ROOT / "tests" / "bench" / "sweep.py"), "--postgres", f"--history={self.history}"])
        times = _number(r"times: ([\d.]+)", said)
        yield Line(f"a sweep beside {self.history:,} messages", times, 1.3, said.splitlines()[0], at_most=True)


def _of(centre: Smsc) -> list[str]:
    return [str(centre.port), str(centre.control)]


def _run(script: str, options: list[str], database: str = "PostgreSQL", **more: str) -> dict[str, float]:
    """Run one measurement on a database of its own; return what it prints."""
    with ExitStack() as stack:
        folder = stack.enter_context(tempfile.TemporaryDirectory(prefix="bench-"))
        on_postgres = database == "PostgreSQL"
        url = stack.enter_context(servers.postgres()) if on_postgres else f"sqlite:///{folder}/bench.sqlite3"
        said = _say([str(HERE / script), *options], DATABASE_URL=url, DATA_DIR=folder, LOG_LEVEL="ERROR", **more)
        found: dict[str, float] = json.loads(said.splitlines()[-1])
        return found


def _say(command: list[str], **more: str) -> str:
    """Return what a script prints, whether or not it keeps its own limits. Exits where it says nothing."""
    env = {**os.environ, **more}
    done = subprocess.run([sys.executable, *command], cwd=ROOT, env=env, stdout=subprocess.PIPE, text=True, check=False)
    if not done.stdout.strip():
        sys.exit(f"{' '.join(command)} failed")
    return done.stdout.strip()


def _number(pattern: str, said: str) -> float:
    found = re.search(pattern, said)
    if found is None:
        sys.exit(f"no figure in: {said}")
    return float(found[1])


PARTS: dict[str, Callable[[Bench], Iterator[Line]]] = {
    "postgres": Bench.postgres,
    "sqlite": Bench.sqlite,
    "workers": Bench.workers,
    "latency": Bench.latency,
    "promised": Bench.promised,
    "webhook": Bench.webhook,
    "sweep": Bench.sweep,
}


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("parts", nargs="*", metavar="part", help=f"of {', '.join(PARTS)}")
    parser.add_argument("--rounds", type=int, default=3, help="the best of them counts")
    parser.add_argument("--number", type=int, default=1500, help="texts a round")
    parser.add_argument("--history", type=int, default=1_000_000, help="messages beside which a sweep is timed")
    chosen = parser.parse_args()
    if unknown := set(chosen.parts) - set(PARTS):
        parser.error(f"no such part: {', '.join(sorted(unknown))}; there are {', '.join(PARTS)}")
    bench = Bench(chosen.rounds, chosen.number, chosen.history)
    kept = True
    for name in chosen.parts or PARTS:
        for line in PARTS[name](bench):
            print(line, flush=True)
            kept = kept and line.is_kept
    return 0 if kept else 1


if __name__ == "__main__":
    sys.exit(main())
