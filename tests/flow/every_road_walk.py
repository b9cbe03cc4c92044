"""The walk of every_road: what is due leaves by each road, is reported of, and is answered; and what came of it."""

from __future__ import annotations

import time
from collections import Counter
from collections.abc import Callable
from typing import Any

from aftercare import hearing, tasks
from aftercare.core.delivery import State
from aftercare.lines import callback_address
from aftercare.models import Attempt, Line, Message, Reply, StoredCallback, Stray
from aftercare.pages import morning
from studio import clock
from tests import kannel
from tests.flow import every_road
from tests.flow.every_road import EMAIL, HTTP_SMS, KINDS, SECONDS, SECRET, SMPP, WORDS, Road, Servers
from tests.flow.road_cast import TOLD, Branch, branch, number, ways
from tests.flow.test_kannel import OPTIONS as BY_KANNEL

GONE = (State.HANDED_OVER, State.DELIVERED)
BY_HTTP: dict[str, Any] = {
    "fields": {"to": "{to}", "from": "{from}", "text": "{text}", "callback": "{callback}"},
    "provider_ref": {"path": "sid"},
    "receipts": {"word": "state", "words": {"DELIVRD": "delivered"}},
    "replies": {"text": "text", "from_address": "from", "to_address": "to", "provider_ref": "id"},
    "callback_secret": SECRET,
    "account": "carrier",
}


class Walk:
    """Everything that is walked, on one database."""

    def __init__(self, outside: Servers) -> None:
        self.outside = outside
        self.now = clock.now()
        self.reported: set[str] = set()
        self.roads = [
            road for road in (self._kannel(), self._http(), self._smpp(), self._smtp(), self._anymail()) if road
        ]
        for road in self.roads:
            reached = ways(road.channel, road.name)
            for which in "ab":
                slug = f"{road.name}-{which}"
                address = number() if road.channel == "sms" else f"hello@{slug}.example"
                road.branches.append(branch(slug, road.line(address), reached, self.now))
        self.second = [Line.objects.create(studio=self.first(name).studio, **line) for name, line in self._second()]

    def road(self, name: str) -> Road:
        return next(road for road in self.roads if road.name == name)

    def first(self, name: str) -> Branch:
        """Return the first studio on a road."""
        found: Branch = self.road(name).branches[0]
        return found

    def _second(self) -> list[tuple[str, dict[str, Any]]]:
        """Give the first studio of two roads a second line, on the road of the other."""
        return [("http", by_smpp(number())), ("smpp", self.by_http(number()))]

    def turn(self, *, until: Callable[[], bool]) -> bool:
        """Let the engine's rounds follow one another until something has come to pass; return whether it has."""
        end = time.monotonic() + SECONDS
        while not until():
            if time.monotonic() > end:
                return False
            tasks.send_due()
            for road in self.roads:
                road.report()
            time.sleep(0.1)
        return True

    # Roads

    def _kannel(self) -> Road | None:
        if self.outside.gateway is None:
            return None
        gateway = self.outside.gateway

        def hear(sender: str, to: str, words: str) -> None:
            gateway.text_comes_in(sender.removeprefix("+"), to.removeprefix("+"), words)
            # Its pretend carrier loses some of those that come together: one after the other.
            come = StoredCallback.objects.filter(url__contains=sender[1:]).filter(url__contains=to[1:])
            kannel.wait_for(come.exists, 5)

        return Road(
            "kannel",
            "sms",
            lambda to: _texts(to, HTTP_SMS, {**BY_KANNEL, "url": gateway.url, "callback_secret": SECRET}),
            hear,
        )

    def _http(self) -> Road:
        def hear(sender: str, to: str, words: str) -> None:
            # One account has one address for all that comes in: that of the first line of its first studio.
            path = f"{callback_address(self.road('http').branches[0].line.pk)}/{SECRET}"
            self.outside.call(path, {"from": sender, "to": to, "text": words, "id": f"in-{sender}-{to}"})

        return Road("http", "sms", self.by_http, hear, self._report_texts)

    def by_http(self, to: str) -> dict[str, Any]:
        return _texts(to, HTTP_SMS, {**BY_HTTP, "url": f"{self.outside.carrier.url}/send"})

    def _smpp(self) -> Road:
        def hear(sender: str, to: str, words: str) -> None:
            self.outside.centre.inject(sender, to, words.encode())

        return Road("smpp", "sms", by_smpp, hear)

    def _smtp(self) -> Road:
        def line(address: str) -> dict[str, Any]:
            return {"channel": "email", "address": address}  # on the transport of the settings

        return Road("smtp", "email", line, self._mail_comes_in, gives_receipts=False)

    def _anymail(self) -> Road:
        def line(address: str) -> dict[str, Any]:
            options = self.outside.provider.options("postmark")
            return {"channel": "email", "address": address, "transport": EMAIL, "options": options}

        return Road("anymail", "email", line, self._mail_comes_in, self._report_mails)

    # What providers tell

    def _report_texts(self) -> None:
        for taken in list(self.outside.carrier.requests):
            called = taken.form["callback"]
            if called not in self.reported:
                self.reported.add(called)
                self.outside.call(called, {"state": "DELIVRD"})

    def _report_mails(self) -> None:
        for taken in list(self.outside.provider.taken):
            reference = taken["Metadata"]["reference"]
            if reference not in self.reported:
                self.reported.add(reference)
                said = {"RecordType": "Delivery", "DeliveredAt": self.now.isoformat(), "MessageID": f"pm-{reference}"}
                told = {**said, "Metadata": {"reference": reference}, "Recipient": taken["To"]}
                self.outside.call("/mail/postmark/tracking/", told, as_json=True)

    def _mail_comes_in(self, sender: str, to: str, words: str) -> None:
        """As Postmark documents its inbound callback, shortened to the fields that are read (from memory)."""
        name = f"<{sender}-{to}>".replace("@", "-").replace(">", "@mail.example>")
        told = {
            "From": sender,
            "FromFull": {"Email": sender, "Name": "Mia"},
            "To": to,
            "ToFull": [{"Email": to, "Name": ""}],
            **{"Cc": "", "CcFull": [], "HtmlBody": "", "Attachments": []},
            "Subject": "Re: How are your eyes today?",
            "MessageID": name,
            "Date": self.now.strftime("%a, %d %b %Y %H:%M:%S +0000"),
            "TextBody": words,
            "Headers": [{"Name": "Message-ID", "Value": name}],
        }
        self.outside.call("/mail/postmark/inbound/", told, as_json=True)

    # What came of it

    def is_done(self, kinds: tuple[str, ...]) -> bool:
        return all(self.delivered(road, kind) == self.wanted(road, kind) for road in self.roads for kind in kinds)

    def wanted(self, road: Road, kind: str) -> int:
        """Say how many there are of a kind in both studios of a road: introductions go by text alone."""
        if kind == "opt_in":
            return len(TOLD) * 2 if road.channel == "sms" else 0
        return len(TOLD) * 2 if kind in ("answer", "alert") else 2

    def handed_over(self, road: Road, kind: str) -> int:
        return sum(message.state in GONE for message in self._messages(road, kind))

    def delivered(self, road: Road, kind: str) -> int:
        found = self._messages(road, kind)
        return sum(
            message.state == State.DELIVERED or not road.gives_receipts and message.state in GONE for message in found
        )

    def _messages(self, road: Road, kind: str) -> list[Message]:
        """By this road's accounts and lines alone."""
        found = [message for one in road.branches for message in self._of(one, kind)]
        return [message for message in found if message.channel == road.channel and not message.rehearsed]

    def _of(self, one: Branch, kind: str) -> list[Message]:
        rows = Message.objects.filter(studio=one.studio, occasion=kind)
        if kind in TOLD:
            rows = rows.filter(client=one.clients[kind]).order_by("due_at")[:1]
        return list(rows)

    def heard(self, road: Road, kind: str) -> int:
        """Count the studios on whose list the words of this client stand, hers alone and at their own line."""
        return sum(_stands(one, one.line, kind) for one in road.branches)


def _stands(one: Branch, line: Line, kind: str) -> bool:
    her = one.clients[kind]
    replies = Reply.objects.filter(from_address=her.mobile or her.email, line=line)
    listed = {matter.flag.pk: matter for matter in morning.morning_list(one.studio, clock.now()).matters}
    return len(replies) == 1 and all(
        reply.studio == one.studio
        and reply.text == WORDS
        and reply.client == her
        and reply.flag_id in listed
        and [book.client for book in listed[reply.flag_id].books] == [her]
        for reply in replies
    )


def by_smpp(to: str) -> dict[str, Any]:
    return _texts(to, SMPP, {"bind": "alpha"})


def _texts(to: str, transport: str, options: dict[str, Any]) -> dict[str, Any]:
    return {"channel": "sms", "address": to, "transport": transport, "options": options}


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
