"""`make_demo`: the demo studio, made once, at the first start."""

from __future__ import annotations

from argparse import ArgumentParser
from typing import Any

from django.conf import settings
from django.core.management.base import BaseCommand
from django.db import transaction

from aftercare import demo
from aftercare.demo.cast import SLUG
from studio import clock, records
from studio.models import Studio


class Command(BaseCommand):
    help = "Make the demo studio, unless it is there, and print how to sign in. The passwords are made now."

    def add_arguments(self, parser: ArgumentParser) -> None:
        """Take no arguments: the demo is what it is."""

    def handle(self, *args: Any, **options: Any) -> None:
        if Studio.objects.filter(slug=SLUG).exists():
            self.stdout.write(f"The demo studio is there. Sign in at {settings.PUBLIC_URL}")
            return
        # All of it or nothing: a start that was broken off makes it anew.
        with transaction.atomic():
            signing_in = demo.make(clock.now(), records.new_password, self.stderr.write)
        self.stdout.write(f"Sign in at {settings.PUBLIC_URL} (these passwords were made just now and are shown once):")
        for role, email, password in signing_in:
            self.stdout.write(f"  {role:16}  {email:38}  {password}")
