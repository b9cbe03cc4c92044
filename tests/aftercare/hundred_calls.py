"""The same receipt a hundred times at once, in a process of its own on DATABASE_URL's database; prints the counts."""

from __future__ import annotations

import os
from collections import Counter
from concurrent.futures import ThreadPoolExecutor

import django

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "studio.settings")
django.setup()


def main() -> None:
    from django.core.management import call_command
    from django.db import connections

    from aftercare import hearing
    from aftercare.core.delivery import Event
    from aftercare.models import Message, Receipt, StoredCallback
    from tests import hooks, letters, people

    call_command("migrate", verbosity=0)
    studio = people.make_studio()
    line = hooks.make_line(studio)
    letters.make_message(people.make_client(studio, mobile=hooks.MIA))
    [parcel] = letters.begin(line)
    letters.end([parcel], Event.TAKEN, provider_ref="SM1")

    def call(number: int) -> int:
        try:
            return hooks.call(line.pk, {"id": "SM1", "state": "DELIVRD"}, query=f"?ref={parcel.reference}")
        finally:
            connections.close_all()

    with ThreadPoolExecutor(20) as pool:
        answers = Counter(pool.map(call, range(100)))
    print(*(f"{status}={times}" for status, times in answers.items()), f"callbacks={StoredCallback.objects.count()}")
    with ThreadPoolExecutor(4) as pool:  # several sweeps at once, too
        read = sum(pool.map(lambda _: hearing.read_waiting(people.NOW), range(4)))
    print(f"read={read}", f"receipts={Receipt.objects.count()}", f"state={Message.objects.get().state}")


if __name__ == "__main__":
    main()
