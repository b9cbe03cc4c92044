"""A carrier's call through the whole view against a bare view with nothing but the insert, under gunicorn.

    python tests/bench/delivery/webhook.py [--seconds 2] [--rounds 8] [--sqlite]

Both are in the same process, with the same middlewares, on PostgreSQL; every call is new and signed (HMAC-SHA256).
Prints the calls a second of both and their ratio, then how long a call takes at 200 a second, the 99th of 100 beside
the median. Exit 1 where the ratio is below 0.8, or the 99th takes 5 times the median or more. ``wrk`` (Debian's
package) calls as fast as it can; where it is missing, an asyncio client does.
"""

from __future__ import annotations

import argparse
import asyncio
import hashlib
import hmac
import json
import os
import re
import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]
sys.path.insert(0, str(ROOT))
os.environ.setdefault("DJANGO_SETTINGS_MODULE", "studio.settings")
LEAST_RATIO, MOST_TIMES, RATE = 0.8, 5.0, 200
CONNECTIONS = 16
SECRET = b"a-secret-of-the-two"
LUA = """
local threads, calls, at = 0, {}, 0
function setup(thread)
  thread:set("number", threads)
  threads = threads + 1
end
function init(arguments)
  for line in io.lines(arguments[1] .. "." .. number) do
    calls[#calls + 1] = line
  end
end
function request()
  at = at + 1
  local signature, body = calls[(at - 1) %% #calls + 1]:match("^(%%S+) (.*)$")
  return wrk.format("POST", "%s", {["Content-Type"] = "application/json", ["X-Signature"] = signature}, body)
end
"""


def service() -> object:
    """Make the service itself, and beside it the bare view."""
    import django

    django.setup()
    from django.contrib.auth.decorators import login_not_required
    from django.core.handlers.wsgi import WSGIHandler
    from django.db import connection
    from django.http import HttpRequest, HttpResponse
    from django.urls import path
    from django.views.decorators.csrf import csrf_exempt

    from aftercare import urls

    statement = (
        "INSERT INTO aftercare_storedcallback (line_id, digest, url, headers, body) VALUES (%s, %s, %s, %s, %s) "
        "ON CONFLICT (line_id, digest) DO NOTHING"
    )

    @csrf_exempt
    @login_not_required
    def bare(request: HttpRequest, line_id: int) -> HttpResponse:
        with connection.cursor() as cursor:
            row = [line_id, request.headers["X-Signature"], request.path, "{}", request.body]
            cursor.execute(statement, row)
        return HttpResponse()

    urls.urlpatterns.insert(0, path("bare/<int:line_id>/", bare))  # beside the view's: as far to look for
    return WSGIHandler()


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--seconds", type=int, default=2)
    parser.add_argument("--rounds", type=int, default=8)
    parser.add_argument("--sqlite", action="store_true", help="on SQLite, with one process, instead of PostgreSQL")
    chosen = parser.parse_args()
    with ExitStack() as stack:
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory(prefix="webhook-")))
        port, line_id = stack.enter_context(_served(folder, chosen.sqlite))
        paths = {"bare": f"/bare/{line_id}/", "view": f"/hooks/{line_id}/"}
        rates: dict[str, list[float]] = {name: [] for name in paths}
        for turn in range(chosen.rounds):
            for name, path in sorted(paths.items(), reverse=turn % 2 == 1):  # neither always has the quieter moment
                calls = _calls(f"{name}-{turn}", chosen.seconds * 6_000)
                rates[name].append(_as_fast_as_it_can(port, path, calls, chosen.seconds, folder))
        # Whatever else runs on this machine only slows: the quickest round of each is nearest to what it can do.
        ratio = max(rates["view"]) / max(rates["bare"])
        for name, found in rates.items():
            print(f"{name}: {max(found):,.0f} calls a second (rounds: {', '.join(f'{one:,.0f}' for one in found)})")
        print(f"ratio: {ratio:.2f}; least {LEAST_RATIO}")
        waits = asyncio.run(_at_a_rate(port, paths["view"], _calls("steady", RATE * chosen.seconds * 2)))
        middle, late = statistics.median(waits), statistics.quantiles(waits, n=100)[98]
        print(f"at {RATE} a second: median {middle * 1000:.1f} ms, 99th of 100 {late * 1000:.1f} ms", end="; ")
        print(f"{late / middle:.1f} times; most {MOST_TIMES}")
    return int(ratio < LEAST_RATIO or late >= MOST_TIMES * middle)


@contextmanager
def _served(folder: Path, on_sqlite: bool) -> Iterator[tuple[int, int]]:
    """Run the service with one line; yield its port and the line's key."""
    from tests import servers

    with ExitStack() as stack:
        url = f"sqlite:///{folder}/bench.sqlite3" if on_sqlite else stack.enter_context(servers.postgres())
        os.environ |= {"DATABASE_URL": url, "DATA_DIR": str(folder), "LOG_LEVEL": "ERROR"}
        import django

        django.setup()
        from django.core.management import call_command
        from django.db import connections

        from tests import hooks, people

        (folder / "static").mkdir()
        call_command("migrate", verbosity=0)
        signature = {"header": "X-Signature", "secret": SECRET.decode()}
        line_id = hooks.make_line(people.make_studio(), signature=signature).pk
        connections.close_all()
        port = servers.free_port()
        workers = ["-w", "1", "--threads", "8"] if on_sqlite else ["-w", "2", "--threads", "4"]
        command = [sys.executable, "-m", "gunicorn", "-k", "gthread", *workers, "-b", f"127.0.0.1:{port}"]
        process = subprocess.Popen(
            [*command, "--log-level", "error", "--preload", "tests.bench.delivery.webhook:service()"],
            cwd=ROOT,
            env=os.environ,
        )
        try:
            while not servers.listens(port):
                time.sleep(0.1)
            time.sleep(1)
            yield port, line_id
        finally:
            process.terminate()
            process.wait()


def _calls(name: str, many: int) -> list[tuple[str, bytes]]:
    """Make signed calls, none of them the same as another."""
    bodies = [json.dumps({"id": f"{name}-{number}", "state": "DELIVRD"}).encode() for number in range(many)]
    return [(hmac.new(SECRET, body, hashlib.sha256).hexdigest(), body) for body in bodies]


def _as_fast_as_it_can(port: int, path: str, calls: list[tuple[str, bytes]], seconds: int, folder: Path) -> float:
    """Return how many calls a second were answered with yes."""
    if not shutil.which("wrk"):
        return asyncio.run(_closed_loop(port, path, calls, seconds))
    file, script = folder / "calls", folder / "calls.lua"
    for thread in range(2):
        lines = (f"{signature} {body.decode()}\n" for signature, body in calls[thread::2])
        file.with_suffix(f".{thread}").write_text("".join(lines))
    script.write_text(LUA % path)
    command = ["wrk", "-t2", f"-c{CONNECTIONS}", f"-d{seconds}s", "-s", str(script), f"http://127.0.0.1:{port}", "--"]
    said = subprocess.run([*command, str(file)], capture_output=True, text=True, check=True).stdout
    if "Non-2xx" in said or "Socket errors" in said or " 0 requests in" in said:
        sys.exit(f"not every call was taken:\n{said}")
    found = re.search(r"Requests/sec:\s+([\d.]+)", said)
    assert found is not None, said
    return float(found[1])


async def _closed_loop(port: int, path: str, calls: list[tuple[str, bytes]], seconds: int) -> float:
    waiting, done = iter(calls), 0
    end = time.monotonic() + seconds

    async def caller() -> None:
        nonlocal done
        reader, writer = await asyncio.open_connection("127.0.0.1", port)
        while time.monotonic() < end and (one := next(waiting, None)):
            await _call(reader, writer, path, *one)
            done += 1
        writer.close()

    await asyncio.gather(*(caller() for _ in range(CONNECTIONS)))
    return done / seconds


async def _at_a_rate(port: int, path: str, calls: list[tuple[str, bytes]]) -> list[float]:
    """Call RATE times a second, whatever the answers do; return how long each took, from when it was due."""
    idle: asyncio.Queue[tuple[asyncio.StreamReader, asyncio.StreamWriter]] = asyncio.Queue()
    for _ in range(CONNECTIONS):
        idle.put_nowait(await asyncio.open_connection("127.0.0.1", port))
    waits: list[float] = []
    began = time.monotonic()

    async def one(number: int, signature: str, body: bytes) -> None:
        due = began + number / RATE
        await asyncio.sleep(max(0.0, due - time.monotonic()))
        reader, writer = await idle.get()
        await _call(reader, writer, path, signature, body)
        idle.put_nowait((reader, writer))
        waits.append(time.monotonic() - due)

    await asyncio.gather(*(one(number, *call) for number, call in enumerate(calls)))
    return waits


async def _call(
    reader: asyncio.StreamReader, writer: asyncio.StreamWriter, path: str, signature: str, body: bytes
) -> None:
    head = f"POST {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nX-Signature: {signature}\r\nContent-Type: application/json\r\n"
    writer.write(f"{head}Content-Length: {len(body)}\r\n\r\n".encode() + body)
    answer = await reader.readuntil(b"\r\n\r\n")
    if b" 200 " not in answer.split(b"\r\n")[0]:
        sys.exit(f"a call was not taken: {answer.decode()}")


if __name__ == "__main__":
    sys.exit(main())
