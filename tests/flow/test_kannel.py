"""A text goes out through a real gateway, its receipt comes back, and what a client writes comes in: all by HTTP."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from aftercare import hearing, lines, webhooks
from aftercare.core.delivery import Event
from aftercare.models import Line, Message, Receipt, Reply, StoredCallback
from aftercare.transports.base import Outgoing
from tests import kannel
from tests.hooks import HTTP_SMS, MIA, NUMBER, SECRET
from tests.letters import begin, end, make_message
from tests.people import NOW, make_client, make_studio

pytestmark = [
    pytest.mark.servers,
    pytest.mark.filterwarnings("ignore:No directory at"),  # of static files: nobody collected any
    pytest.mark.skipif(not kannel.is_there(), reason="Kannel is not installed"),
]
# Kannel's pretend carrier tells of nothing after it has taken a text (8), which this line therefore believes.
OPTIONS: dict[str, Any] = {
    **kannel.OPTIONS,
    "receipts": {"word": "state", "words": {"1": "delivered", "8": "delivered", "2": "failed", "16": "failed"}},
    "replies": {"text": "text", "from_address": "from", "to_address": "to", "provider_ref": "id"},
    "callback_secret": SECRET,
}


@pytest.mark.django_db(transaction=True)
def test_a_text_goes_out_its_receipt_comes_back_and_a_reply_comes_in(
    live_server: Any, settings: Any, tmp_path: Path
) -> None:
    settings.PUBLIC_URL = live_server.url
    webhooks.forget()
    line = Line.objects.create(studio=make_studio(), channel="sms", address=NUMBER, transport=HTTP_SMS)
    with kannel.kannel(tmp_path, f"{lines.callback_address(line.pk)}/{SECRET}?") as gateway:
        line.options = {**OPTIONS, "url": gateway.url}
        line.save()
        make_message(make_client(line.studio, mobile=MIA))
        [parcel] = begin(line)
        road = lines.transport_of(line)

        outgoing = Outgoing(reference=parcel.reference, channel="sms", address=MIA, sender=NUMBER, text="Hello Mia, é?")
        [outcome] = road.send([outgoing])
        road.close()

        assert outcome.event is Event.TAKEN, outcome
        end([parcel], outcome.event)
        kannel.wait_for(StoredCallback.objects.exists)
        assert hearing.read_waiting(NOW) == 1
        assert Message.objects.get().state == "delivered"
        assert Receipt.objects.get().attempt is not None
        kannel.wait_for(lambda: "Hello Mia" in gateway.carried)

        gateway.text_comes_in(MIA.removeprefix("+"), NUMBER.removeprefix("+"), "my left eye is swollen")
        kannel.wait_for(StoredCallback.objects.exists)
        assert hearing.read_waiting(NOW) == 1

    [reply] = Reply.objects.all()
    assert (reply.line, reply.from_address, reply.text) == (line, MIA, "my left eye is swollen")
    assert not StoredCallback.objects.exists()
