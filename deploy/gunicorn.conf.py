"""The web server: one process with threads (SQLite has one writer anyway), or several on PostgreSQL."""

from __future__ import annotations

from importlib import import_module
from typing import Any

from studio import env
from studio.lifeline import tie, tie_if_asked

bind = f"{env.text('LISTEN', '127.0.0.1')}:{env.whole('PORT', 8000, least=1, most=65535)}"
wsgi_app = "studio.wsgi"
worker_class = "gthread"
workers = env.whole("WEB_PROCESSES", 1, least=1)
threads = env.whole("WEB_THREADS", 8, least=1)
timeout = 60
graceful_timeout = 5
keepalive = 5
loglevel = "warning"
control_socket_disable = True


def on_starting(server: Any) -> None:
    tie_if_asked()


def post_fork(server: Any, worker: Any) -> None:
    tie(worker.ppid)


def post_worker_init(worker: Any) -> None:
    import_module("aftercare.core.reading.reader")  # not while the first client who writes on a page waits for it
