"""A live studio all of whose clients have one text due now, and the way back to that after it has gone."""

from __future__ import annotations

from datetime import datetime, timedelta

from django.db import connection

from aftercare import lines, outbox, planning
from aftercare.core.delivery import State
from aftercare.core.occasions import Occasion
from aftercare.models import Attempt, Line, Message, Receipt, Wording
from studio import clock
from studio.models import Client, Consent, Studio, Visit
from tests.services import zone_at_work

LINE = "+12125550100"
BEFORE, GONE, ACCOUNT = Occasion.CARE, 20_000, "smpp:before"
WORDS = "{{ studio }}: Hi {{ first_name }}, see you {{ day }}, {{ hour }}. Bare clean lashes, no oil. {{ how_to_stop }}"
"""About as long as the texts that the centre's own rate is measured with: one part."""


def make(number: int, transport: str, **options: object) -> Studio:
    """Make ``number`` clients who are booked, agreed to texts and were introduced, and plan their visits."""
    now = clock.now()
    live, zone = now - timedelta(days=30), zone_at_work(now)
    studio = Studio.objects.create(slug="bench", name="Bench", region="US", time_zone=zone, live_since=live)
    line = lines.lines_of(studio)["sms"]
    line.transport, line.options, line.address = transport, options, LINE
    line.save()
    Wording.objects.create(
        studio=studio,
        occasion=Occasion.PREPARE,
        kind="removal",
        channel="sms",
        language="en",
        version=1,
        body=WORDS,
        at=live,
    )
    mobiles = [f"+1212{5560000 + place}" for place in range(number)]
    clients = Client.objects.bulk_create(
        # Her zone is stated: else her number's, in which it may be night, would count beside the studio's.
        Client(studio=studio, first_name="Mia", last_name=f"Ortega {place}", mobile=mobile, time_zone=zone)
        for place, mobile in enumerate(mobiles)
    )
    Consent.objects.bulk_create(
        Consent(client=client, channel="sms", purpose="visits", given=True, at=live, how="on paper")
        for client in clients
    )
    Visit.objects.bulk_create(
        Visit(
            studio=studio,
            client=client,
            service="removal",
            starts_at=now + timedelta(days=2),
            minutes=45,
            heard_at=live,
        )
        for client in clients
    )
    planning.plan_studio(studio, now)
    introductions = [
        Message(
            studio=studio,
            client=client,
            key=f"number:{line.pk}:{client.mobile}:opt_in:1",
            occasion=Occasion.OPT_IN,
            channel="sms",
            line=line,
            address=client.mobile,
            planned_from=live,
        )
        for client in clients
    ]
    outbox.promise(introductions)
    Message.objects.filter(occasion=Occasion.OPT_IN).update(state=State.DELIVERED, ended_at=live)
    Message.objects.exclude(occasion__in=(Occasion.OPT_IN, Occasion.PREPARE)).delete()
    _go_back_in_time(studio, line, live)
    rewind(now)
    return studio


def _go_back_in_time(studio: Studio, line: Line, at: datetime) -> None:
    """Have texts gone out before: a database that has never seen one plans for tables without rows."""
    client = Client.objects.create(studio=studio, first_name="Ida", last_name="Before", mobile="+12125550101")
    outbox.promise(
        Message(
            studio=studio,
            client=client,
            key=f"before:{place}",
            occasion=BEFORE,
            channel="sms",
            line=line,
            address=client.mobile,
            planned_from=at,
            text=WORDS,
        )
        for place in range(GONE)
    )
    gone = Message.objects.filter(occasion=BEFORE)
    gone.update(state=State.DELIVERED, ended_at=at, handing_over_at=at, handed_over_at=at, due_at=at)
    Attempt.objects.bulk_create(
        Attempt(
            message_id=pk,
            number=1,
            line=line,
            provider=ACCOUNT,
            reference=f"before-{pk}",
            started_at=at,
            ended_at=at,
            outcome=State.HANDED_OVER,
            provider_ref=f"before-{pk}",
        )
        for pk in gone.values_list("pk", flat=True)
    )
    Receipt.objects.bulk_create(
        Receipt(
            account=ACCOUNT,
            provider_ref=attempt.provider_ref,
            word="DELIVRD",
            event="delivered",
            at=at,
            kept_at=at,
            attempt=attempt,
        )
        for attempt in Attempt.objects.all()
    )


def still_to_go() -> int:
    """Return how many have not been handed over, or of which that is not written down yet."""
    return Message.objects.filter(occasion=Occasion.PREPARE).exclude(state=State.HANDED_OVER).count()


def rewind(now: datetime) -> None:
    """Have all of it due once more, as if nothing had left, on tables without traces of what did."""
    Receipt.objects.exclude(attempt__message__occasion=BEFORE).delete()
    Attempt.objects.exclude(message__occasion=BEFORE).delete()
    Message.objects.filter(occasion=Occasion.PREPARE).update(
        state=State.PLANNED,
        due_at=now,
        handing_over_at=None,
        handed_over_at=None,
        ended_at=None,
        lease_until=None,
        address="",
        text="",
        line=None,
    )
    with connection.cursor() as cursor:
        if connection.vendor == "postgresql":
            cursor.execute("VACUUM ANALYZE aftercare_message, aftercare_attempt, aftercare_receipt")
        else:
            cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)")
