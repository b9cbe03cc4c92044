"""Receiving: whatever comes in is stored, first of all and as it came. What to make of it is asked later."""

from __future__ import annotations

import hashlib
import logging
import uuid
from collections.abc import Iterator, Sequence
from contextlib import nullcontext
from datetime import datetime
from email.utils import parseaddr
from typing import Any

import phonenumbers
from django.db import transaction

from aftercare import lines, outbox, pictures
from aftercare.models import Attachment, Line, Reply, Stray
from aftercare.pictures import Kept
from aftercare.transports.base import Inbox, ReceiptNote, ReplyNote, storable
from studio import clock
from studio.models import Client

log = logging.getLogger(__name__)

TOO_MANY = "Not kept: more than {most} files came at once. Ask her to send it by itself."
MOST_TAKEN_UP = 100  # to one number, at once; the next round takes up more
MOST_NAMED = 50  # files of which at least the name is kept; of the rest, what came in whole tells how many
_LONGEST_REF, _LONGEST_ADDRESS, _LONGEST_SUBJECT = 200, 254, 400


def receive(
    line: Line,
    from_address: str,
    text: str,
    *,
    received_at: datetime,
    subject: str = "",
    provider_ref: str = "",
    automatic: bool = False,
    raw: str = "",
    below: str = "",
    files: Sequence[tuple[str, bytes]] = (),
    most_files: int = pictures.MOST_FILES,
    client: Client | None = None,
    ticked: dict[str, Any] | None = None,
) -> Reply:
    """Store a reply to ``line`` and return it; the same ``provider_ref`` twice is one. Nothing is dropped or refused.

    Without a ``provider_ref`` every call is a reply of its own. ``automatic`` says that a machine wrote it (RFC 3834).
    ``below`` is what stands under her words in an e-mail, ``files`` what came with them (name, content).
    ``client`` is hers whose own page it came from: then nobody has to tell it from the address, which may be ''.
    ``ticked`` is what she ticked there (`core.ticks`).
    ``raw`` is the whole as the provider gave it; where the address or the subject is cut here, it is whole in there.
    """
    address = _address(line, storable(from_address))
    whole = storable(raw)
    if not whole and (len(address) > _LONGEST_ADDRESS or len(subject) > _LONGEST_SUBJECT):
        whole = f"From: {address}\nSubject: {storable(subject)}"
    reference = _reference(storable(provider_ref))
    # Pictures are made anew before the transaction: others wait to write meanwhile. What came before is not looked at.
    is_known = bool(files) and Reply.objects.filter(line=line, provider_ref=reference).exists()
    kept = [] if is_known else list(_kept(files, most_files))
    with transaction.atomic():
        reply, is_new = Reply.objects.get_or_create(
            line=line,
            provider_ref=reference,
            defaults={
                "studio_id": line.studio_id,
                "client": client,
                "from_address": address[:_LONGEST_ADDRESS],
                "received_at": received_at,
                "subject": storable(subject)[:_LONGEST_SUBJECT],
                "text": storable(text),
                "below": storable(below),
                "raw": whole,
                "automatic": automatic,
                "ticked": ticked or {},
            },
        )
        if is_new:
            for attachment in kept:
                attachment.reply = reply
            Attachment.objects.bulk_create(kept)
    return reply


def inbox(account: str) -> Inbox:
    """Return where a road of this account puts what comes in: all of it in one commit, or none."""

    def keep(receipts: Sequence[ReceiptNote], replies: Sequence[ReplyNote]) -> None:
        now = clock.now()
        # Receipts are kept in one transaction anyhow; a savepoint for them within another would be asked for in vain.
        with transaction.atomic() if replies else nullcontext():
            outbox.note_receipts(account, receipts, now)
            for note in replies:
                _keep(account, note, now)

    return keep


def take_up_strays() -> int:
    """Give replies that nobody's number was written to by then to the line that has the number now; return how many."""
    taken = 0
    # By the numbers that they went to: however many texts to nobody's number are kept, the others are looked at.
    for account, number in Stray.objects.order_by().values_list("account", "to_address").distinct():
        line = lines.with_number(account, number)
        if line is None:
            continue
        for stray in Stray.objects.filter(account=account, to_address=number).order_by("pk")[:MOST_TAKEN_UP]:
            with transaction.atomic():
                receive(
                    line,
                    stray.from_address,
                    stray.text,
                    received_at=stray.received_at,
                    provider_ref=stray.provider_ref,
                    raw=stray.raw,
                )
                stray.delete()
            taken += 1
    return taken


def _keep(account: str, note: ReplyNote, now: datetime) -> None:
    """Give a reply to the one line that has the number that it was sent to; where none has, keep it as a stray."""
    line = lines.with_number(account, note.to_address)
    at = note.at or now
    if line is not None:
        receive(
            line,
            note.from_address,
            note.text,
            received_at=at,
            provider_ref=note.provider_ref,
            automatic=note.automatic,
            raw=note.raw,
        )
        return
    log.warning("A text came in by %s for a number that is no line's: it is kept until a line has it.", account)
    Stray.objects.get_or_create(
        account=account,
        provider_ref=_reference(storable(note.provider_ref)),
        defaults={
            "from_address": storable(note.from_address)[:_LONGEST_ADDRESS],
            "to_address": storable(note.to_address)[:_LONGEST_ADDRESS],
            "text": storable(note.text),
            "raw": storable(note.raw),
            "received_at": at,
        },
    )


def _kept(files: Sequence[tuple[str, bytes]], most: int) -> Iterator[Attachment]:
    """Keep pictures, made anew, the largest of too many: the smallest are a sign-off's. Of all else, say why not."""
    by_size = sorted(range(len(files)), key=lambda number: -len(files[number][1]))[:MOST_NAMED]
    found: dict[int, Kept] = {}
    for number in by_size:
        is_full = sum(kept.content is not None for kept in found.values()) >= most
        found[number] = Kept(problem=TOO_MANY.format(most=most)) if is_full else pictures.keep(files[number][1])
    for number, kept in sorted(found.items()):
        name, data = files[number]
        yield Attachment(
            name=storable(name)[:200],
            kind=kept.kind,
            content=kept.content,
            size=len(data),
            problem=kept.problem,
        )


def _reference(given: str) -> str:
    if not given:
        return f"own-{uuid.uuid4().hex}"
    if len(given) <= _LONGEST_REF:
        return given
    # Cut off it could be another's: its digest is not.
    digest = hashlib.sha256(given.encode()).hexdigest()
    return f"{given[: _LONGEST_REF - len(digest) - 1]}:{digest}"


def _address(line: Line, given: str) -> str:
    """Return the address as clients' are kept: E.164, or e-mail in lower case. What is neither stays as it came."""
    if line.channel == "email":
        return (parseaddr(given)[1] or given).strip().lower()
    try:
        number = phonenumbers.parse(given, line.studio.region)
    except phonenumbers.NumberParseException:
        return given.strip()
    if not phonenumbers.is_possible_number(number):  # a short code, a sender name in digits
        return given.strip()
    return phonenumbers.format_number(number, phonenumbers.PhoneNumberFormat.E164)
