"""The roads of every_road: what a line on each is like, how clients are heard there, and what its provider tells."""

from __future__ import annotations

import time
from collections.abc import Callable
from typing import Any

from aftercare import tasks
from aftercare.core.delivery import State
from aftercare.lines import callback_address
from aftercare.models import Line, Message, Reply, StoredCallback
from aftercare.pages import morning
from studio import clock
from tests import kannel
from tests.flow.every_road import EMAIL, HTTP_SMS, SECONDS, SECRET, SMPP, WORDS, Road, Servers
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
