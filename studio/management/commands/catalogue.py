"""Bring the catalogues of other languages up to the sources, and compile them."""

from __future__ import annotations

from typing import Any

from django.core.management.base import BaseCommand

from studio import catalogue


class Command(BaseCommand):
    help = (
        "Bring the catalogues of other languages (studio/locale) up to what is marked in the sources, and compile "
        "them. Then write what is still without words into the .po file, and run this again."
    )

    def handle(self, *args: Any, **options: Any) -> None:
        for language in catalogue.LANGUAGES:
            renewed = catalogue.renewed(language)
            catalogue.write(language, renewed)
            bare = [message.id for message in renewed if message.id and not catalogue.said(message)]
            self.stdout.write(f"{language}: {len(renewed)} strings, {len(bare)} without words")
