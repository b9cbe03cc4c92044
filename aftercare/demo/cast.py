"""Who is in the demo: the studio, its staff, its adhesives and its 60 clients. All invented.

Telephone numbers are of the range that the North American numbering plan keeps for fiction (555 01xx), e-mail
addresses of the domains that RFC 2606 keeps for examples.
"""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from aftercare.lines import lines_of
from studio.models import Absence, Adhesive, Client, ClosingDay, Consent, ServiceName, Staff, Studio, User

SLUG = "demo"
ZONE = ZoneInfo("America/New_York")
PAST_DAYS = 365

LOSES_EARLY = {5, 23, 44}  # clients whose bonds fail many times as fast as others'

FIRST_NAMES = [
    "Mia", "Zoe", "Wilhelmina", "Imani", "Rosa", "Bea", "Grace", "Lucía", "Priya", "Anouk", "Thandiwe", "Sofía",
    "Ines", "Yara", "Keiko", "Fatou", "Maren", "Odile", "Paloma", "Greta", "Nadia", "Esther", "Lena", "Amara",
    "Carys", "Freya", "Hana", "Ivy", "June", "Katya", "Leila", "Mabel", "Nia", "Opal", "Petra", "Quinn", "Ruth",
    "Sasha", "Tilda", "Uma", "Vera", "Wren", "Xiomara", "Ynez", "Zadie", "Alma", "Brigid", "Cleo", "Dina", "Elif",
    "Flora", "Gwen", "Hilde", "Iris", "Joan", "Kira", "Lotte", "Marisol", "Noemí", "Ofelia",
]  # fmt: skip
LAST_NAMES = [
    "Okafor", "Lindqvist", "Featherstonehaugh-Asante", "Castellanos", "Adeyemi", "Pham", "Navarro", "Rao",
    "Delacroix", "Mbeki", "Ortega", "Halloran", "Haddad", "Tanaka", "Diop", "Solberg", "Marchetti", "Ibáñez",
    "Weiss", "Petrov", "Goldman", "Kowalski", "Osei", "Prosser", "Nilsson", "Sato", "Marlowe", "Ibarra",
]  # fmt: skip
SPANISH = {"Lucía", "Sofía", "Paloma", "Marisol", "Noemí", "Ofelia", "Xiomara", "Ynez"}
STYLES = ["classic", "hybrid", "volume", "wet look"]
MAPS = ["C 0.07, 9-12", "CC 0.05, 8-13", "D 0.05, 9-14", "C 0.10, 8-11", "B 0.07, 8-10"]
ON_PAPER = "on paper, at the consultation"


@dataclass(frozen=True, slots=True)
class Person:
    """How one invented client sheds, and who she is to the book."""

    client: Client
    artist: Staff
    cycle: float  # mean days of a natural lash cycle
    bond: float  # hazard of a bond's failure, a day
    every: int  # days between fills that she aims at
    style: str
    lash_map: str
    starts_after: int  # days into the year of her first visit
    books_ahead: bool  # the others come when they are reminded


def studio() -> Studio:
    """Make the studio, in rehearsal, with its lines and its own names for services."""
    made = Studio.objects.create(
        slug=SLUG,
        name="Wrenfield Lash Room",
        time_zone=ZONE.key,
        region="US",
        phone="+1 518 555 0199",
        address="14 Juniper Row, Wrenfield, New York",
        date_order=Studio.DateOrder.MDY,
        is_demo=True,
    )
    lines_of(made)
    ServiceName.objects.bulk_create(
        ServiceName(studio=made, name=name, kind=kind)
        for name, kind in [("volume full set", "full set"), ("two-week top-up", "fill"), ("lunch", "")]
    )
    return made


def staff(studio: Studio, passwords: Callable[[], str]) -> list[tuple[str, str, str]]:
    """Make owner, artists and front desk; return (role, e-mail, password) of each."""
    made = []
    roles = [
        ("owner and artist", "Ines Halloran", {"is_owner": True, "is_artist": True}),
        ("artist", "Noor Vandermeer", {"is_artist": True}),
        ("artist", "Marguerite-Anne Osei", {"is_artist": True}),
        ("front desk", "Tomas Quill", {"is_front_desk": True}),
    ]
    for role, name, flags in roles:
        email, password = f"{name.split()[0].lower()}@wrenfield.example", passwords()
        user = User.objects.create_user(email, password, name=name)
        Staff.objects.create(studio=studio, user=user, name=name, email=email, **flags)
        made.append((role, email, password))
    return made


def closed_and_away(studio: Studio, today: date) -> None:
    """Close the studio for two days some weeks ahead, and let an artist be away for three with a cover."""
    for days, name in ((24, "Wrenfield street fair"), (25, "")):
        ClosingDay.objects.create(studio=studio, date=today + timedelta(days=days), name=name)
    owner, noor = Staff.objects.filter(studio=studio, is_artist=True).order_by("pk")[:2]
    first, last = today + timedelta(days=16), today + timedelta(days=18)
    Absence.objects.create(staff=noor, cover=owner, first_day=first, last_day=last)


def adhesives(studio: Studio) -> list[Adhesive]:
    """Make two lots of the usual adhesive, of which the second is a bad one, and one of a milder kind."""
    known = [("Birch 4", "0226", 24), ("Birch 4", "0419", 24), ("Alder Mild", "A-77", 48)]
    return [
        Adhesive.objects.create(studio=studio, product=product, lot=lot, dry_hours=hours)
        for product, lot, hours in known
    ]


def people(studio: Studio, pick: random.Random, heard_at: datetime) -> list[Person]:
    """Make the clients and what they agreed to; the last five are new and still to come."""
    artists = list(Staff.objects.filter(studio=studio, is_artist=True).order_by("pk"))
    clients = [_client(studio, number, first_name, heard_at) for number, first_name in enumerate(FIRST_NAMES)]
    Client.objects.bulk_create(clients)
    _consents(clients, heard_at)
    return [_person(number, client, artists, pick) for number, client in enumerate(clients)]


def _person(number: int, client: Client, artists: list[Staff], pick: random.Random) -> Person:
    later = 0 if number < 34 else pick.randrange(20, PAST_DAYS - 30)
    cycle, bond = pick.gauss(115, 14), max(0.004, pick.lognormvariate(-4.6, 0.4))
    return Person(
        client,
        artists[number % len(artists)],
        cycle=cycle,
        bond=0.05 if number in LOSES_EARLY else bond,
        every=pick.choice([14, 17, 19, 21, 21, 24]),
        style=pick.choice(STYLES),
        lash_map=pick.choice(MAPS),
        starts_after=PAST_DAYS + pick.randrange(0, 7) if number >= 55 else later,
        books_ahead=number % 3 != 2 or number >= 55,
    )


def _client(studio: Studio, number: int, first_name: str, heard_at: datetime) -> Client:
    young = number == 17
    return Client(
        studio=studio,
        first_name=first_name,
        last_name=LAST_NAMES[number % len(LAST_NAMES)],
        # A mother and a daughter share a number; one client left none.
        mobile="" if number == 31 else f"+151855501{19 if young else number + 1:02}",
        email="" if number % 9 == 4 else f"{_plain(first_name)}{number}@example.com",
        language="es" if first_name in SPANISH else "en",
        time_zone="America/Los_Angeles" if number == 8 else "",  # she comes when she is in town
        sensitive=number % 7 == 0,
        wears_lenses=number % 3 == 0,
        oily_lids=number % 11 == 5,
        under_18=young,
        guardian_name="Paloma Weiss" if young else "",
        guardian_mobile="+15185550119" if young else "",
        guardian_agreed_on=heard_at.date() if young else None,
        waiver_signed_on=None if number >= 55 else heard_at.date() - timedelta(days=300 - number),
    )


def _plain(name: str) -> str:
    return name.lower().translate(str.maketrans("áéíóúñ", "aeioun"))


def _consents(clients: list[Client], at: datetime) -> None:
    rows = []
    for number, client in enumerate(clients):
        sms, reminders = number % 10 != 6, number % 4 != 3
        given = [("sms", "visits", sms), ("sms", "reminders", sms and reminders)]
        given += [("email", "visits", True), ("email", "reminders", reminders)]
        rows += [
            Consent(client=client, channel=channel, purpose=purpose, given=yes, at=at, how=ON_PAPER)
            for channel, purpose, yes in given
            if channel == "email" or client.mobile
        ]
    Consent.objects.bulk_create(rows)
