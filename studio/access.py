"""Who may see and do what. Every view goes through here, so that no query starts without its studio.

Owners see and do everything in their studio. Artists see the day, mark visits, and read the health notes of the
clients whose visits they have had or have booked. The front desk books and keeps contact data, without a word on
health; whether a client is sensitive is a health note. What belongs to another studio is not found (404), so that
nobody learns that it is there.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from functools import cached_property, wraps
from typing import TYPE_CHECKING, Any, Concatenate, Literal, ParamSpec, cast

from django.core.exceptions import PermissionDenied
from django.db.models import QuerySet
from django.db.models.functions import Now
from django.http import HttpRequest, HttpResponseBase
from django.shortcuts import get_object_or_404, redirect
from django.utils import timezone, translation
from django.utils.translation import gettext as _

from studio import covering
from studio.models import Client, Staff, Studio, User, Visit

if TYPE_CHECKING:
    from django_stubs_ext import ValuesQuerySet

Role = Literal["owner", "artist", "front desk"]
P = ParamSpec("P")

CHOSEN = "studio"  # the session's key for the studio that someone with several has chosen
TREATED = (Visit.Status.BOOKED, Visit.Status.DONE)


@dataclass(frozen=True)
class May:
    """What a member of staff may see and do; templates ask it by name."""

    staff: Staff
    away: Mapping[int, int | None] = field(default_factory=dict)  # who is away today, and her cover: she reads hers

    @property
    def own(self) -> bool:
        """Change the studio itself: its wordings, its rules, its staff, going live."""
        return self.staff.is_owner

    @property
    def treat(self) -> bool:
        """Mark visits done, say what was used, and see to flags."""
        return self.staff.is_owner or self.staff.is_artist

    @property
    def book(self) -> bool:
        """Change visits and contact data, and bring the appointment book in."""
        return self.staff.is_owner or self.staff.is_front_desk

    @property
    def see_every_list(self) -> bool:
        """See the lists of all artists rather than only her own."""
        return self.staff.is_owner or self.staff.is_front_desk

    def read_health_of(self, client_ids: Collection[int]) -> frozenset[int]:
        """Return those of the clients whose health notes she may read. One query, or none."""
        if self.staff.is_owner:
            return frozenset(client_ids)
        if not self.staff.is_artist or not client_ids:
            return frozenset()
        return frozenset(self.treated().filter(client_id__in=client_ids).distinct())

    def treated(self) -> ValuesQuerySet[Visit, int]:
        """Return the clients whose visits she has had or has booked, and theirs for whom she covers today.

        For a query to look among. Nobody where she is no artist: a book may name her as one, and roles end.
        """
        hers = self.stands_for if self.staff.is_artist else ()
        return Visit.objects.filter(artist__in=hers, status__in=TREATED).values_list("client_id", flat=True)

    @cached_property
    def stands_for(self) -> frozenset[int]:
        """Return whose work she does today: her own, and theirs for whom she covers."""
        return frozenset({self.staff.pk} | covering.covered_by(self.away, self.staff))

    def read_health(self, client: Client) -> bool:
        """Return whether she may read this client's health notes."""
        return client.pk in self.read_health_of([client.pk])

    @cached_property
    def roles(self) -> frozenset[Role]:
        """Return the roles that she holds."""
        held = {
            "owner": self.staff.is_owner,
            "artist": self.staff.is_artist,
            "front desk": self.staff.is_front_desk,
        }
        return frozenset(cast(Role, role) for role, has in held.items() if has)


class StudioRequest(HttpRequest):
    """A request that has gone through ``page``: someone of a studio stands behind it, at one moment."""

    user: User
    studio: Studio
    staff: Staff
    may: May
    places: list[Staff]  # her rows in every studio that she works in
    language: str  # that pages are in for her: her own, else the studio's
    now: datetime
    waiting_now: int  # how many matters the menu shows to be waiting, where a page knows it already


def page(
    *roles: Role,
) -> Callable[
    [Callable[Concatenate[StudioRequest, P], HttpResponseBase]],
    Callable[Concatenate[HttpRequest, P], HttpResponseBase],
]:
    """Let a view be seen by staff who hold one of the roles; by all staff where none is named. Owners hold them all.

    The view's request then carries ``studio``, ``staff``, ``may`` and ``now``, and dates are read and written on the
    studio's wall clock. Raises PermissionDenied for everybody else. Someone with a one-time password chooses her own
    first.
    """

    def let_in(
        view: Callable[Concatenate[StudioRequest, P], HttpResponseBase],
    ) -> Callable[Concatenate[HttpRequest, P], HttpResponseBase]:
        @wraps(view)
        def guarded(request: HttpRequest, /, *args: P.args, **kwargs: P.kwargs) -> HttpResponseBase:
            here = stand(request)
            if here.user.one_time_password:
                return redirect("password")
            if roles and not here.staff.is_owner and here.may.roles.isdisjoint(roles):
                raise PermissionDenied(
                    _("This page is not part of your work here. The owner can change what your sign-in may do.")
                )
            with timezone.override(here.studio.zone):
                response = view(here, *args, **kwargs)
            response.headers.setdefault("Content-Language", here.language)
            # The tablet at the desk is everybody's: after signing out, "back" must not show who was there.
            response.headers.setdefault("Cache-Control", "private, no-store")
            return response

        return guarded

    return let_in


def stand(request: HttpRequest) -> StudioRequest:
    """Find the studio that the signed-in user works in: the one she chose, else the first by name.

    From here on the request speaks her language, its error pages too; the next one begins with its browser's again.
    Raises PermissionDenied where her sign-in belongs to no studio.
    """
    here = cast(StudioRequest, request)
    here.places = list(
        Staff.objects.filter(user=here.user, is_active=True)
        .select_related("studio__calendar_feed")
        # The database's clock comes along; the machine's is near enough for who may be away about now.
        .annotate(away=covering.near(timezone.now()), at=Now())
        .order_by("studio__name", "studio_id")
    )
    if not here.places:
        raise PermissionDenied(
            _("Your sign-in does not belong to a studio. Ask the studio’s owner to add you to the staff.")
        )
    here.now = getattr(here.places[0], "at").replace(microsecond=0)  # noqa: B009  an annotation
    chosen = request.session.get(CHOSEN)
    here.staff = next((place for place in here.places if place.studio_id == chosen), here.places[0])
    here.studio = here.staff.studio
    here.language = here.staff.language or here.studio.language
    translation.activate(here.language)
    today = here.now.astimezone(here.studio.zone).date()
    here.may = May(here.staff, covering.on(getattr(here.staff, "away", None), today))
    return here


def choose(request: StudioRequest, studio_id: int) -> bool:
    """Remember another of her studios for this session. Return whether she works there."""
    if not any(place.studio_id == studio_id for place in request.places):
        return False
    request.session[CHOSEN] = studio_id
    return True


def clients(request: StudioRequest) -> QuerySet[Client]:
    """Return the studio's clients, those that were merged into another left out."""
    return Client.objects.standing().filter(studio=request.studio)


def client_or_404(request: StudioRequest, client_id: int) -> Client:
    """Return the client; of two that were merged, the one that was kept."""
    client = get_object_or_404(Client.objects.select_related("merged_into"), studio=request.studio, pk=client_id)
    return client.merged_into or client


def visit_or_404(request: StudioRequest, visit_id: int) -> Visit:
    """Return the visit with its client, artist and adhesive."""
    rows = Visit.objects.select_related("client", "artist", "adhesive")
    return get_object_or_404(rows, studio=request.studio, pk=visit_id)


def health_or_403(request: StudioRequest, client: Client) -> None:
    """Raise PermissionDenied unless she may read the client's health notes."""
    if not request.may.read_health(client):
        raise PermissionDenied(_("Health notes are for the owner and for the artists who see this client."))


def standing(request: HttpRequest) -> dict[str, Any]:
    """Give templates who stands where, and when; nothing on pages that stand outside."""
    return {name: getattr(request, name, None) for name in ("studio", "staff", "may", "places", "now")}
