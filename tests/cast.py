"""A studio on a morning, for the tests of pages: it is always between seven and eight there.

Ada is the artist, Noor another one, Olga the owner, Dee the front desk. Mia replies, Zoe opted out. Numbers are from
the range kept for fiction in North America (555-01xx).
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from functools import cache
from itertools import count
from typing import Any

from django.conf import settings
from django.contrib.auth.hashers import make_password

from aftercare import planning
from aftercare.core.delivery import State
from aftercare.lines import lines_of
from aftercare.models import Flag, Message, Reply
from studio import clock
from studio.models import Adhesive, Client, Consent, Reaction, Service, Staff, Studio, User, Visit
from tests.forecasts import forecast

PASSWORD = "a long enough password"
_numbers = count(100)


def zone_where_it_is(hour: int, now: datetime) -> str:
    """Return an IANA zone whose wall clock shows ``hour`` now: every hour of the day is somewhere."""
    ahead = (hour - now.astimezone(UTC).hour + 11) % 24 - 11  # -11 to +12
    return f"Etc/GMT{-ahead:+d}" if ahead else "Etc/GMT"


@dataclass
class Cast:
    """The people of one studio and the moment that they live in."""

    now: datetime
    studio: Studio
    olga: Staff
    ada: Staff
    noor: Staff
    dee: Staff
    glue: Adhesive
    clients: dict[str, Client] = field(default_factory=dict)

    def at(self, hour: float, days: int = 0) -> datetime:
        """Return the moment at which the studio's clock shows ``hour`` today, or ``days`` later."""
        midnight = self.now.astimezone(self.studio.zone).replace(hour=0, minute=0, second=0, microsecond=0)
        return midnight + timedelta(days=days, hours=hour)

    def client(self, first: str, last: str = "", *, texts: bool = True, **fields: Any) -> Client:
        """Add a client who is reached by text unless it is said otherwise."""
        fields.setdefault("mobile", f"+1212555{next(_numbers):04}")
        # Her number says New York, the studio lies wherever it is morning: hours that suit both may hardly overlap.
        fields.setdefault("time_zone", self.studio.time_zone)
        her = Client.objects.create(studio=self.studio, first_name=first, last_name=last, **fields)
        if texts:
            Consent.objects.create(
                client=her, channel="sms", purpose="visits", given=True, at=self.at(9, -60), how="on paper", by=self.dee
            )
        self.clients[first] = her
        return her

    def visit(self, her: Client, at: datetime, service: str = Service.FILL, **fields: Any) -> Visit:
        """Add a visit to Ada, known long before."""
        fields.setdefault("artist", self.ada)
        fields.setdefault("minutes", 180 if service == Service.FULL_SET else 75)
        return Visit.objects.create(
            studio=self.studio, client=her, service=service, starts_at=at, heard_at=at - timedelta(days=20), **fields
        )

    def done(self, her: Client, at: datetime, service: str = Service.FILL, **fields: Any) -> Visit:
        """Add a visit that was done."""
        fields.setdefault("adhesive", self.glue)
        return self.visit(her, at, service, status=Visit.Status.DONE, **fields)

    def plan(self) -> None:
        """Plan everybody as things stand."""
        planning.plan_studio(self.studio, self.now)

    def gone(self, her: Client, visit: Visit | None, occasion: str, at: datetime, **fields: Any) -> Message:
        """Set a message of hers to one that was delivered at ``at``; make it where planning made none."""
        fields = {
            "state": State.DELIVERED,
            "handed_over_at": at,
            "ended_at": at,
            "due_at": at,
            "channel": "sms",
            "line": lines_of(self.studio)["sms"],
            "address": her.mobile,
            "text": f"Words about {occasion}.",
            **fields,
        }
        known = Message.objects.filter(client=her, visit=visit, occasion=occasion).order_by("step").first()
        message = known or Message(
            studio=self.studio, client=her, visit=visit, occasion=occasion, planned_from=at, key=f"t:{her.pk}:{at}"
        )
        for name, value in fields.items():
            setattr(message, name, value)
        message.save()
        return message

    def wrote(
        self, her: Client, text: str, at: datetime, *, urgency: str = "unread", answers: Message | None = None
    ) -> Flag:
        """Have a client write something that waits for a person."""
        flag = Flag.objects.create(studio=self.studio, urgency=urgency, opened_at=at, urgent_since=at)
        flag.clients.add(her)
        Reply.objects.create(
            studio=self.studio,
            line=lines_of(self.studio)["sms"],
            from_address=her.mobile,
            provider_ref=f"t-{her.pk}-{at.timestamp()}",
            received_at=at,
            text=text,
            client=her,
            flag=flag,
            answers=answers,
            read_at=at,
        )
        return flag


def make(slug: str = "wrenfield", name: str = "Wrenfield Lash Room", *, now: datetime | None = None) -> Cast:
    """Make a studio with its staff, each of whom can sign in, and nobody else."""
    now = now or clock.now()
    studio = Studio.objects.create(
        slug=slug, name=name, time_zone=zone_where_it_is(7, now), region="US", phone="+12125550199"
    )
    people = {
        "olga": {"is_owner": True},
        "ada": {"is_artist": True},
        "noor": {"is_artist": True},
        "dee": {"is_front_desk": True},
    }
    staff = {
        who: Staff.objects.create(studio=studio, name=who.capitalize(), user=_user(f"{who}@{slug}.example"), **roles)
        for who, roles in people.items()
    }
    glue = Adhesive.objects.create(studio=studio, product="Birch 4", lot="0226")
    return Cast(now, studio, staff["olga"], staff["ada"], staff["noor"], staff["dee"], glue)


def _user(email: str) -> User:
    return User.objects.create(email=email, password=_hashed(settings.PASSWORD_HASHERS[0]))


@cache
def _hashed(_hasher: str) -> str:
    return make_password(PASSWORD)  # once: it is made to take long


def full_morning(cast: Cast) -> Cast:
    """Fill the studio with one of everything that a page can show."""
    _today(cast)
    _written(cast)
    _broken(cast)
    cast.plan()
    _told(cast)
    return cast


def _today(cast: Cast) -> None:
    rosa = cast.client("Rosa", "Lindqvist", sensitive=True, wears_lenses=True)
    cast.visit(rosa, cast.at(9), Service.FULL_SET, style="classic", room="2")
    bea = cast.client("Bea", "Castellanos", waiver_signed_on=cast.at(9, -50).date(), oily_lids=True)
    cast.done(bea, cast.at(10, -47), Service.PATCH_TEST, test_result=Visit.TestResult.NO_SIGN)
    worn = cast.done(
        bea, cast.at(10, -23), lash_map="C 0.07, 9 to 12", share_left=45, share_seen="seen", mirror_check="unhappy"
    )
    forecast(worn, cast.at(11, -23))
    cast.visit(bea, cast.at(12.5), style="hybrid")
    long = cast.client("Wilhelmina Konstantinopolitana", "Featherstonehaugh-Asante-Hohenzollern", under_18=True)
    held = cast.done(long, cast.at(10, -2), Service.FULL_SET)
    Reaction.objects.create(
        client=long, visit=held, at=cast.at(20, -1), words="Left lid puffy and itchy since last night.", by=cast.ada
    )
    cast.visit(long, cast.at(14), style="classic")
    nell = cast.client("Nell", "Quist", sensitive=True)
    cast.done(nell, cast.at(9, -4), Service.PATCH_TEST, test_result=Visit.TestResult.NOT_ANSWERED)
    cast.visit(nell, cast.at(16), Service.FULL_SET)
    zoe = cast.client("Zoe", "Abara")
    cast.done(zoe, cast.at(11, -15))
    cast.visit(zoe, cast.at(15), artist=cast.noor)
    cast.visit(cast.client("Ines", "Moreau", texts=False), cast.at(11), Service.PATCH_TEST, minutes=15)


def _written(cast: Cast) -> None:
    mia = cast.client("Mia", "Okafor", wears_lenses=True)
    done = cast.done(mia, cast.at(10, -1), remover="gel")
    asked = cast.gone(mia, done, "check", cast.at(5), text="How are your eyes today?")
    cast.wrote(mia, "woke up and cant open my right eye, its swollen and theres gunk", cast.at(5.25), answers=asked)
    lan = cast.client("Thi Lan", "Pham")
    cast.done(lan, cast.at(10, -4), artist=cast.noor)
    cast.wrote(lan, "mắt tôi hơi đỏ", cast.at(6.2))


def _broken(cast: Cast) -> None:
    grace = cast.client("Grace", "Adeyemi")
    done = cast.done(grace, cast.at(17, -1))
    cast.gone(grace, done, "care", cast.at(18.6, -1), state=State.UNDELIVERED, reason="The number does not take texts.")
    cast.visit(cast.client("Tova", "Berg"), cast.at(15, -1))
    cast.done(cast.client("Pia", "Lund"), cast.at(13, -1), mirror_check="unhappy", note="Inner corners too long.")


def _told(cast: Cast) -> None:
    bea = cast.clients["Bea"]
    visit = Visit.objects.get(client=bea, status=Visit.Status.BOOKED)
    cast.gone(
        bea, visit, "prepare", cast.at(10, -3), text="Wrenfield Lash Room: your fill is Tuesday. Come with bare lashes."
    )
    line = lines_of(cast.studio)["sms"]
    Reply.objects.create(
        studio=cast.studio,
        line=line,
        from_address=bea.mobile,
        provider_ref="t-bea",
        received_at=cast.at(20, -1),
        text="could we go a bit shorter on the inner corners?",
        client=bea,
        read_at=cast.at(20, -1),
    )
