"""An HTTP server in this process that stands for a provider: fast, kept open, and quiet."""

from __future__ import annotations

import threading
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from typing import Any


class Handler(BaseHTTPRequestHandler):
    """What a provider's handler begins with.

    What http.server does by itself makes each answer to a connection that stays open wait 40 ms.
    """

    protocol_version = "HTTP/1.1"
    disable_nagle_algorithm = True
    wbufsize = -1

    def say(self, status: int, content: bytes, headers: Mapping[str, str] | None = None) -> None:
        """Answer with content, in JSON unless ``headers`` say otherwise."""
        self.send_response(status)
        for name, value in {"Content-Type": "application/json", **(headers or {})}.items():
            self.send_header(name, value)
        self.send_header("Content-Length", str(len(content)))
        self.end_headers()
        self.wfile.write(content)

    def log_message(self, format: str, *args: object) -> None:
        """Nobody reads it."""


class _Server(ThreadingHTTPServer):
    daemon_threads = True
    request_queue_size = 128  # by itself it refuses the sixth client

    def handle_error(self, request: Any, client_address: Any) -> None:
        """A client that went away is no news."""


@contextmanager
def serving(handler: type[Handler], **given: Any) -> Iterator[str]:
    """Serve with a handler that has ``given`` as its attributes; yield the address, without a slash at its end."""
    server = _Server(("127.0.0.1", 0), type("Bound", (handler,), given))
    thread = threading.Thread(target=server.serve_forever, kwargs={"poll_interval": 0.02}, daemon=True)
    thread.start()
    try:
        yield f"http://127.0.0.1:{server.server_port}"
    finally:
        server.shutdown()
        server.server_close()
        thread.join()
