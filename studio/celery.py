"""Celery's application: `celery -A studio worker`, and one `celery -A studio beat`."""

import os
from typing import Any

from celery import Celery
from celery.signals import task_prerun, worker_process_init
from django.db import close_old_connections

from studio import lifeline

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "studio.settings")
_WORKER = os.getpid()  # as this is loaded before a worker forks
app = Celery("studio")
app.config_from_object("django.conf:settings", namespace="CELERY")
app.autodiscover_tasks()


def look_at_connections(task: Any = None, **more: Any) -> None:
    """Have a kept connection looked at before its next use, as a page does: the database may have been restarted."""
    if not getattr(getattr(task, "request", None), "is_eager", False):
        close_old_connections()


task_prerun.connect(look_at_connections, weak=False, dispatch_uid="studio.connections")


def tie_to_worker(**more: Any) -> None:
    """Die with the worker that forked this process, also where that is killed: nothing of it goes on unseen."""
    if os.getpid() != _WORKER:  # a worker without children says so of itself
        lifeline.tie(_WORKER)


worker_process_init.connect(tie_to_worker, weak=False, dispatch_uid="studio.lifeline")
