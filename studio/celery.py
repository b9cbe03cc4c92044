"""Celery's application: `celery -A studio worker`, and one `celery -A studio beat`."""

import os
from typing import Any

from celery import Celery
from celery.signals import task_prerun
from django.db import close_old_connections

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "studio.settings")
app = Celery("studio")
app.config_from_object("django.conf:settings", namespace="CELERY")
app.autodiscover_tasks()


def look_at_connections(task: Any = None, **more: Any) -> None:
    """Have a kept connection looked at before its next use, as a page does: the database may have been restarted."""
    if not getattr(getattr(task, "request", None), "is_eager", False):
        close_old_connections()


task_prerun.connect(look_at_connections, weak=False, dispatch_uid="studio.connections")
