"""The web server: one process with threads (SQLite has one writer anyway), or several on PostgreSQL."""

from __future__ import annotations

import os
from typing import Any

from studio.lifeline import tie, tie_if_asked

bind = f"{os.environ.get('LISTEN') or '127.0.0.1'}:{os.environ.get('PORT') or '8000'}"
wsgi_app = "studio.wsgi"
worker_class = "gthread"
workers = int(os.environ.get("WEB_PROCESSES") or 1)
threads = int(os.environ.get("WEB_THREADS") or 8)
timeout = 60
graceful_timeout = 5
keepalive = 5
loglevel = "warning"
control_socket_disable = True


def on_starting(server: Any) -> None:
    tie_if_asked()


def post_fork(server: Any, worker: Any) -> None:
    tie(worker.ppid)
