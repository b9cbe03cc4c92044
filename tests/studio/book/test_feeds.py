"""Fetching a calendar, from a real server on this machine."""

from __future__ import annotations

from collections.abc import Iterator
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from threading import Thread

import pytest

from studio.book import feeds
from studio.book.feeds import FeedError, fetch, public_only


class Calendar(BaseHTTPRequestHandler):
    """Answers as the path says."""

    disable_nagle_algorithm = True

    def do_GET(self) -> None:
        if self.path == "/week.ics":
            self._answer(304 if self.headers.get("If-None-Match") == '"e1"' else 200, b"BEGIN:VCALENDAR", ETag='"e1"')
        elif self.path == "/moved":
            self._answer(301, Location="/week.ics")
        elif self.path == "/round":
            self._answer(302, Location="/round")
        elif self.path == "/inward":
            self._answer(302, Location="http://10.0.0.7/week.ics")
        elif self.path == "/large":
            self._answer(200, b"x" * 4096)
        else:
            self._answer(int(self.path[1:]))

    def _answer(self, code: int, body: bytes = b"", **headers: str) -> None:
        self.send_response(code)
        for name, value in headers.items():
            self.send_header(name, value)
        self.send_header("Content-Length", "0" if code == 304 else str(len(body)))
        self.end_headers()
        if code != 304:
            self.wfile.write(body)

    def log_message(self, format: str, *args: object) -> None:
        """Keep quiet."""


@pytest.fixture(scope="module")
def address() -> Iterator[str]:
    server = ThreadingHTTPServer(("127.0.0.1", 0), Calendar)
    thread = Thread(target=server.serve_forever, daemon=True)
    thread.start()
    yield f"http://127.0.0.1:{server.server_port}"
    server.shutdown()
    server.server_close()
    thread.join()


def here(host: str) -> None:
    """Let this machine be asked, and no other."""
    if host != "127.0.0.1":
        public_only(host)


def test_a_calendar_comes_with_its_tag_and_is_not_sent_again_unchanged(address: str) -> None:
    first = fetch(f"{address}/week.ics", allowed=here)
    again = fetch(f"{address}/week.ics", first.etag, allowed=here)

    assert (first.data, first.etag, len(first.digest)) == (b"BEGIN:VCALENDAR", '"e1"', 64)
    assert (again.data, again.etag) == (None, '"e1"')


def test_a_calendar_that_moved_is_followed(address: str) -> None:
    assert fetch(f"{address}/moved", allowed=here).data == b"BEGIN:VCALENDAR"


@pytest.mark.parametrize(
    ("path", "words"),
    [("/round", "the last of them"), ("/404", "Copy its address anew"), ("/500", "asked again later")],
)
def test_what_goes_wrong_is_said_with_its_cure(address: str, path: str, words: str) -> None:
    with pytest.raises(FeedError, match=words):
        fetch(f"{address}{path}", allowed=here)


def test_an_endless_calendar_is_broken_off(address: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(feeds, "LARGEST", 1000)

    with pytest.raises(FeedError, match="larger than"):
        fetch(f"{address}/large", allowed=here)


def test_nobody_is_led_to_machines_within(address: str) -> None:
    for path in ("/week.ics",):
        with pytest.raises(FeedError, match="not a public address"):
            fetch(f"{address}{path}")
    with pytest.raises(FeedError, match="not a public address"):
        fetch(f"{address}/inward", allowed=here)


def test_a_server_that_is_not_there_is_asked_again_later() -> None:
    with pytest.raises(FeedError, match="did not answer"):
        fetch("http://127.0.0.1:9/week.ics", allowed=here)


@pytest.mark.parametrize("address", ["ftp://calendar.example/a.ics", "week.ics", "file:///etc/passwd", "https://"])
def test_what_is_no_web_address_is_refused(address: str) -> None:
    with pytest.raises(FeedError, match="https:// or webcal://"):
        fetch(address)
