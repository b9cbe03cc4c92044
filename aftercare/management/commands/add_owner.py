"""`add_owner --studio SLUG --name NAME --email ADDRESS`: the first who can sign in to a studio of one's own."""

from __future__ import annotations

from argparse import ArgumentParser
from typing import Any

from django.conf import settings
from django.core.exceptions import ValidationError
from django.core.management.base import BaseCommand, CommandError
from django.db import transaction

from aftercare.management.arguments import add_studio
from aftercare.management.making import Refused, add_creating, studio_of
from studio import clock, records
from studio.models import Staff, Studio


class Command(BaseCommand):
    help = (
        "Let an owner sign in to a studio: all others are added by her, on the page of people. Prints a one-time "
        "password, which she replaces at once. Called again for the same name, it gives her a new one."
    )

    def add_arguments(self, parser: ArgumentParser) -> None:
        """Name the studio, or what makes it, and the owner."""
        add_studio(parser)
        parser.add_argument("--name", required=True, help="the owner's name, as the appointment book has it")
        parser.add_argument("--email", required=True, help="the address by which she signs in")
        add_creating(parser)

    def handle(self, *args: Any, **options: Any) -> None:
        try:
            with transaction.atomic():
                studio, _made = studio_of(options)
                password = _let_in(studio, options["name"], options["email"])
        except Refused as refused:
            raise CommandError(refused.problem) from refused
        except ValidationError as error:
            raise CommandError(" ".join(error.messages)) from error
        self.stderr.write(f"{studio.name}: sign in at {settings.PUBLIC_URL}; this password is shown once.")
        self.stdout.write(f"{options['email'].strip().lower()}  {password}")


def _let_in(studio: Studio, name: str, email: str) -> str:
    """Make her an owner, whatever else she is here, and give her a sign-in; return its one-time password."""
    now = clock.now()
    there = Staff.objects.filter(studio=studio, name__iexact=name.strip()).first()
    owner = records.save_staff(studio=studio, staff=there, by=None, now=now, name=name, is_owner=True, is_active=True)
    user, password = records.give_sign_in(staff=owner, email=email, by=None, now=now)
    if not owner.email:  # where she is told may be another address, and stays
        records.save_staff(studio=studio, staff=owner, by=None, now=now, email=user.email)
    return password
