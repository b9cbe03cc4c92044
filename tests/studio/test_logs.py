"""What the log tells of a request, and what it does not."""

from __future__ import annotations

import io
import logging
from collections.abc import Iterator

import pytest
from django.test import Client as Browser

from aftercare import links
from aftercare.links import Purpose
from tests.people import make_client, make_studio, make_visit


@pytest.fixture
def log() -> Iterator[io.StringIO]:
    """What the service's own handler writes, as it stands in the settings."""
    handler = next(one for one in logging.getLogger().handlers if type(one) is logging.StreamHandler)
    kept = handler.setStream(io.StringIO())
    assert isinstance(handler.stream, io.StringIO)
    yield handler.stream
    handler.setStream(kept)


@pytest.mark.django_db
def test_a_link_that_opens_a_client_s_page_is_not_in_the_log(log: io.StringIO) -> None:
    token = links.token(Purpose.VISIT, make_visit(make_client(make_studio())))

    assert Browser().post(f"/v/{token}", {"do": "eyes"}).status_code == 400  # nothing was ticked or written
    Browser().get("/unsubscribe/WzEsIm1pYUBtYWlsLmV4YW1wbGUiXQ.abc")
    Browser().get("/nowhere/at/all")

    said = log.getvalue()
    assert "Bad Request: /v/…" in said
    assert token not in said
    assert "Not Found: /unsubscribe/…" in said
    assert "Not Found: /nowhere/at/all" in said
