"""How fast texts can be handed over at all: the SMS centre's own rate, and that of the road alone, without a database.

    python tests/bench/delivery/bare.py [--seconds 3]

The centre's own rate is what a client reaches that writes units made beforehand and only counts the answers. Texts of
110 characters, one part. Client and centre share this machine's cores, so the shares are what to read.
"""

from __future__ import annotations

import argparse
import socket
import sys
import time
from collections.abc import Sequence
from pathlib import Path
from struct import Struct

sys.path.insert(0, str(Path(__file__).resolve().parents[3]))

from aftercare.core.delivery import Event
from aftercare.transports.base import Outgoing, ReceiptNote, ReplyNote
from aftercare.transports.smpp import Smpp, pdu
from tests.smsc import Smsc, smsc

WINDOWS = (50, 200)
TEXT = "Hello Mia, please come with bare, clean lashes: no mascara, no oil. Ada looks forward to it. Reply STOP to end"
HEAD = Struct(">IIII")
LEAST = 0.6  # of the centre's own rate, with receipts and without


def own_rate(centre: Smsc, window: int, seconds: float, *, receipts: bool) -> float:
    """Return texts a second of a client that does nothing but write and count; receipts are answered."""
    body = pdu.write_message(
        pdu.write_address(1, 1, "15550109999"),
        pdu.write_address(1, 1, "15550100100"),
        TEXT.encode(),
        registered_delivery=int(receipts),
        options=pdu.write_option(pdu.USER_MESSAGE_REFERENCE, b"\x12\x34"),
    )
    whole = pdu.write(pdu.SUBMIT_SM, 1, body)
    answer = pdu.write(pdu.DELIVER_SM_RESP, 0, b"\0")[:12]
    with socket.create_connection(("127.0.0.1", centre.port)) as line:
        line.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        line.sendall(pdu.write(pdu.BIND_TRANSCEIVER, 1, pdu.write_bind("studio", "s3cret")))
        line.recv(1000)
        began, taken, reported, rest = time.monotonic(), 0, 0, b""
        line.sendall(whole * window)
        while (passed := time.monotonic() - began) < seconds:
            octets = rest + line.recv(256 * 1024)
            place, end, more, answers = 0, len(octets), 0, []
            while end - place >= 16:
                length, command, _, sequence = HEAD.unpack_from(octets, place)
                if place + length > end:
                    break
                place += length
                if command == pdu.SUBMIT_SM_RESP:
                    more += 1
                elif command == pdu.DELIVER_SM:
                    answers.append(answer + sequence.to_bytes(4, "big") + b"\0")
            rest = octets[place:]
            taken += more
            reported += len(answers)
            line.sendall(b"".join([whole * more, *answers]))
    return (reported if receipts else taken) / passed


def road_rate(centre: Smsc, window: int, seconds: float, *, receipts: bool) -> float:
    """Return texts a second by ``Smpp``, kept busy as the sender does; with receipts, those that were reported."""
    reported = 0

    def inbox(notes: Sequence[ReceiptNote], replies: Sequence[ReplyNote]) -> None:
        nonlocal reported
        reported += len(notes)

    road = Smpp(bind="bench", window=window, receipts=receipts, inbox=inbox, **centre.address)
    began, taken, number, free = time.monotonic(), 0, 0, window
    while (passed := time.monotonic() - began) < seconds:
        batch = [
            Outgoing(
                reference=f"ref-{number + place}",
                channel="sms",
                address=f"+1555{(number + place) % 10_000_000:07}",
                sender="+15550109999",
                text=TEXT,
            )
            for place in range(free)
        ]
        number += free
        heard = road.submit(batch)
        heard += road.collect(1.0)
        assert all(outcome.event is Event.TAKEN for outcome in heard), heard[:3]
        free = len(heard)
        taken += free
    road.close()
    return (reported if receipts else taken) / passed


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--seconds", type=float, default=3.0, help="of each measurement")
    seconds = parser.parse_args().seconds
    good = True
    with smsc() as centre:
        centre.set(plain=True)
        own_rate(centre, WINDOWS[0], seconds, receipts=True)  # node compiles as it goes: not the first run
        for receipts in (False, True):
            for window in WINDOWS:
                own = own_rate(centre, window, seconds, receipts=receipts)
                road = road_rate(centre, window, seconds, receipts=receipts)
                good = good and road >= LEAST * own
                kind = "with receipts" if receipts else "without receipts"
                print(f"{kind:17} window {window:3}: centre {own:8,.0f} a second, road {road:8,.0f}, {road / own:.2f}")
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
