"""The studio's own records."""

from studio.models.book import BookFile, CalendarFeed
from studio.models.clients import Client, ClientRef, Consent, Merge, Reaction
from studio.models.people import Absence, ClosingDay, ServiceName, Staff, Studio, User
from studio.models.visits import SETS, Adhesive, Service, Visit, VisitRef

__all__ = [
    "SETS",
    "Absence",
    "Adhesive",
    "BookFile",
    "CalendarFeed",
    "Client",
    "ClientRef",
    "ClosingDay",
    "Consent",
    "Merge",
    "Reaction",
    "Service",
    "ServiceName",
    "Staff",
    "Studio",
    "User",
    "Visit",
    "VisitRef",
]
