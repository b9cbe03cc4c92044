"""The walk of every_road: what is due leaves by each road, is reported of, and is answered; and what came of it."""

from __future__ import annotations

import time
from collections import Counter
from typing import Any

from aftercare import hearing
from aftercare.core.delivery import State
from aftercare.models import Attempt, Line, Message, Reply, StoredCallback, Stray
from aftercare.pages import morning
from studio import clock
from tests.flow import every_road
from tests.flow.every_road import KINDS, WORDS, Servers
from tests.flow.road_cast import TOLD, number
from tests.flow.road_lines import Walk, by_smpp


def walk(outside: Servers) -> dict[str, Any]:
    """Walk all roads; return what came of it."""
    began = time.monotonic()
    walked = Walk(outside)
    also: dict[str, Any] = {}
    with every_road.process(outside, "manage", "run_smpp", "alpha"):
        walked.turn(until=lambda: walked.is_done((*TOLD, "opt_in", "morning_list")))
        for road in walked.roads:
            for one in road.branches:
                for her in one.clients.values():
                    road.hear(her.mobile or her.email, one.line.address, WORDS)
        walked.turn(until=lambda: walked.is_done(("answer", "alert")))
        cells = _cells(walked)
        also["second line"] = _second_lines(walked)
        also["nobody's number"] = _strays(walked)
        also["taken, tried"] = _taken(outside)
    return {"cells": cells, "also": also, "seconds": time.monotonic() - began, "whole": _is_whole(cells, also)}


def _cells(walked: Walk) -> list[dict[str, Any]]:
    return [
        {
            "road": road.name,
            "kind": kind,
            "wanted": walked.wanted(road, kind),
            "handed_over": walked.handed_over(road, kind),
            "delivered": walked.delivered(road, kind) if road.gives_receipts else None,
            "heard": walked.heard(road, kind) if kind in TOLD else None,
        }
        for road in walked.roads
        for kind in KINDS
        if walked.wanted(road, kind)
    ]


def _second_lines(walked: Walk) -> dict[str, str]:
    """A reply to a studio's second line, which takes another road than its first, is answered by that line."""
    for line, name in zip(walked.second, ("smpp", "http"), strict=True):
        her = walked.first("http" if name == "smpp" else "smpp").clients["check"]
        walked.road(name).hear(her.mobile, line.address, WORDS)

    def answers(line: Line) -> list[str]:
        return [message.state for message in Message.objects.filter(occasion="answer", line=line)]

    walked.turn(until=lambda: all(answers(line) == [State.DELIVERED] for line in walked.second))
    return {
        f"{line.studio.slug} by {name}": ", ".join(answers(line)) if _stands_at(line) else "not on the list"
        for line, name in zip(walked.second, ("smpp", "http"), strict=True)
    }


def _stands_at(line: Line) -> bool:
    """Whether the one reply to a line stands on the list of its studio."""
    listed = {matter.flag.pk for matter in morning.morning_list(line.studio, clock.now()).matters}
    return [reply.flag_id in listed for reply in Reply.objects.filter(line=line, studio=line.studio)] == [True]


def _strays(walked: Walk) -> dict[str, str]:
    """A text to a number that is no line's is kept, and goes to the studio whose line has the number later."""
    sender, bound, called = number(), number(), number()
    walked.road("smpp").hear(sender, bound, WORDS)
    walked.road("http").hear(sender, called, WORDS)
    kept = StoredCallback.objects.exclude(problem="")
    found = {"smpp": "lost", "http": "lost"}
    if not walked.turn(until=lambda: Stray.objects.exists() and kept.exists()):
        return found
    assert not Reply.objects.filter(from_address=sender).exists()
    second = {name: walked.road(name).branches[1].studio for name in found}
    lines = {
        "smpp": Line.objects.create(studio=second["smpp"], **by_smpp(bound)),
        "http": Line.objects.create(studio=second["http"], **walked.by_http(called)),
    }
    hearing.read_again(walked.first("http").studio)
    walked.turn(until=lambda: all(_stands_at(line) for line in lines.values()))
    left = Stray.objects.count() + kept.count()
    return {name: "taken up" if _stands_at(line) and not left else "lost" for name, line in lines.items()}


def _taken(outside: Servers) -> dict[str, tuple[int, int]]:
    """Return how many each server took, and how many tries are on record: as many where nothing left twice."""
    tried = Counter(provider.partition("-")[0] for provider in Attempt.objects.values_list("provider", flat=True))
    mails = len(outside.mail.accepted) + len(outside.provider.taken)
    return {
        "http": (len(outside.carrier.requests), tried["carrier"]),
        "smpp": (len(outside.centre.counts.texts), tried["smpp:alpha"]),
        "mail": (mails, tried["email"]),
    }


def _is_whole(cells: list[dict[str, Any]], also: dict[str, Any]) -> bool:
    taken = also["taken, tried"]
    return all(
        cell["handed_over"] == cell["wanted"]
        and cell["delivered"] in (cell["wanted"], None)
        and cell["heard"] in (2, None)
        for cell in cells
    ) and also == {
        "second line": {"http-a by smpp": "delivered", "smpp-a by http": "delivered"},
        "nobody's number": {"smpp": "taken up", "http": "taken up"},
        "taken, tried": {road: (tried, tried) for road, (_, tried) in taken.items()},
    }
