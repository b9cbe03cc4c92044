"""`go_live --studio SLUG [--back]`: end a studio's rehearsal, or resume it."""

from __future__ import annotations

import json
from argparse import ArgumentParser
from typing import Any

from aftercare import planning, upkeep
from aftercare.management.arguments import add_studio, studio_named
from aftercare.management.base import PromisingCommand
from studio import clock


class Command(PromisingCommand):
    help = "End a studio's rehearsal: from now on messages leave for real. Prints what would leave in the next 48 h."

    def add_arguments(self, parser: ArgumentParser) -> None:
        add_studio(parser)
        parser.add_argument("--back", action="store_true", help="resume the rehearsal: nothing leaves any more")

    def promised(self, problem: str) -> str:
        return "{}"

    def handle(self, *args: Any, **options: Any) -> None:
        studio = studio_named(options["studio"])
        now = clock.now()
        upkeep.catch_up(now, studio=studio)  # what is counted is what stands now
        if options["back"]:
            planning.go_back(studio)
            self.stderr.write(f"{studio.name} is in rehearsal: nothing reaches anyone outside.")
        else:
            planning.go_live(studio, now)
            self.stderr.write(f"{studio.name} is live: messages leave for real.")
        self.stdout.write(json.dumps(planning.leaving(studio, now)))
