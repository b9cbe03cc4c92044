"""Fetching a calendar, from a real server on this machine."""

from __future__ import annotations

import gzip
import time
from collections.abc import Iterator
from contextlib import suppress
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from threading import Thread

import pytest

from studio.book.feeds import FeedError, Limits, fetch, public_only


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
        elif self.path == "/packed":
            self._answer(200, gzip.compress(b"x" * 4096), Content_Encoding="gzip")
        elif self.path == "/cut":
            self._answer(200, b"BEGIN:VCAL", length=4096)
        elif self.path == "/drip":
            self._answer(200, b"", length=4096)
            with suppress(OSError):  # who asked has had enough
                for _ in range(200):
                    self.wfile.write(b"x")
                    time.sleep(0.02)
        elif self.path == "/nowhere":
            self._answer(302)
        elif self.path == "/file":
            self._answer(302, Location="file:///etc/passwd")
        else:
            self._answer(int(self.path[1:]))

    def _answer(self, code: int, body: bytes = b"", length: int | None = None, **headers: str) -> None:
        self.send_response(code)
        for name, value in headers.items():
            self.send_header(name.replace("_", "-"), value)
        self.send_header("Content-Length", "0" if code == 304 else str(length or len(body)))
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
    [
        ("/round", "the last of them"),
        ("/nowhere", "answered 302"),
        *((f"/{code}", "Copy its address anew") for code in (401, 403, 404, 410)),
        *((f"/{code}", f"answered {code}. It is asked again later") for code in (204, 429, 500, 503)),
    ],
)
def test_what_goes_wrong_is_said_with_its_cure(address: str, path: str, words: str) -> None:
    with pytest.raises(FeedError, match=words):
        fetch(f"{address}{path}", allowed=here)


@pytest.mark.parametrize("path", ["/large", "/packed"])
def test_an_endless_calendar_is_broken_off(address: str, path: str) -> None:
    with pytest.raises(FeedError, match="larger than 1,000 bytes"):
        fetch(f"{address}{path}", allowed=here, limits=Limits(size=1000))


def test_a_packed_calendar_is_unpacked(address: str) -> None:
    assert fetch(f"{address}/packed", allowed=here).data == b"x" * 4096


def test_a_calendar_that_drips_is_not_waited_for_to_the_end(address: str) -> None:
    began = time.monotonic()

    with pytest.raises(FeedError, match="took over 0.3 seconds"):
        fetch(f"{address}/drip", allowed=here, limits=Limits(seconds=0.3))

    assert time.monotonic() - began < 2


def test_a_calendar_that_is_cut_off_is_no_calendar(address: str) -> None:
    with pytest.raises(FeedError, match="broke off"):
        fetch(f"{address}/cut", allowed=here)


def test_nobody_is_led_to_machines_within(address: str) -> None:
    with pytest.raises(FeedError, match="not a public address"):
        fetch(f"{address}/week.ics")
    with pytest.raises(FeedError, match="not a public address"):
        fetch(f"{address}/inward", allowed=here)
    with pytest.raises(FeedError, match="starts with https://"):
        fetch(f"{address}/file", allowed=here)


@pytest.mark.parametrize(
    "host",
    [
        *(
            "127.0.0.1",
            "10.1.2.3",
            "172.16.0.1",
            "192.168.1.1",
            "169.254.169.254",
            "100.64.0.1",
            "0.0.0.0",
            "224.0.0.1",
        ),
        *("::1", "fe80::1", "fd00::1", "::ffff:127.0.0.1", "::ffff:10.0.0.7", "localhost"),
    ],
)
def test_a_host_that_is_not_on_the_public_network_is_refused(host: str) -> None:
    """IANA IPv4 and IPv6 Special-Purpose Address Registries; RFC 4291, 2.5.5.2 (addresses mapped from IPv4)."""
    with pytest.raises(FeedError, match="Use the address that your calendar shares"):
        public_only(host)


@pytest.mark.parametrize("host", ["8.8.8.8", "2001:4860:4860::8888", "::ffff:8.8.8.8"])
def test_a_host_on_the_public_network_may_be_asked(host: str) -> None:
    public_only(host)


@pytest.mark.parametrize("host", ["no-such-host.invalid", "a..b", "x" * 70 + ".example"])
def test_a_host_that_cannot_be_found_is_named(host: str) -> None:
    """RFC 2606, 2: nobody has a name under .invalid."""
    with pytest.raises(FeedError, match="cannot be found"):
        public_only(host)


def test_webcal_means_https(address: str) -> None:
    with pytest.raises(FeedError, match=r"SSLError"):  # this server speaks no TLS
        fetch(address.replace("http://", "webcal://") + "/week.ics", allowed=here)


def test_a_server_that_is_not_there_is_asked_again_later() -> None:
    with pytest.raises(FeedError, match="did not answer"):
        fetch("http://127.0.0.1:9/week.ics", allowed=here)


@pytest.mark.parametrize(
    "address", ["ftp://calendar.example/a.ics", "week.ics", "file:///etc/passwd", "https://", "http://[::1/a.ics", ""]
)
def test_what_is_no_web_address_is_refused(address: str) -> None:
    with pytest.raises(FeedError, match="https:// or webcal://"):
        fetch(address)
