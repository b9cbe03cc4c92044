"""`manage.py run_engine`: the embedded engine, which deploy/start keeps running where there is no Redis."""

from __future__ import annotations

from typing import Any

from django.core.management.base import BaseCommand, CommandError

from aftercare import engine, moved, tasks
from aftercare.management import stopping
from studio import lifeline


class Command(BaseCommand):
    help = (
        "Sends what is due, reads calendars and carries out imports, looking each second, until it gets SIGTERM or "
        "Ctrl-C. One at a time for a database. With REDIS_URL, run Celery workers and one beat instead."
    )

    def handle(self, *args: Any, **options: Any) -> None:
        lifeline.tie_if_asked()
        stop = stopping.when_asked()
        try:
            with engine.only_one(engine.place()):
                moved.refuse()
                engine.make_room()
                tasks.take_up()
                self.stderr.write("The engine is running.")
                engine.run(engine.jobs(stop), stop)
        except engine.AlreadyRunning as refusal:
            raise CommandError(str(refusal)) from refusal
        self.stderr.write("The engine has stopped.")
