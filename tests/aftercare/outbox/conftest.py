"""A client and the line by which texts go to her."""

from __future__ import annotations

import pytest

from aftercare.models import Line
from studio.models import Client
from tests.letters import make_line
from tests.people import make_client, make_studio


@pytest.fixture
def mia(db: None) -> Client:
    return make_client(make_studio(), mobile="+12125550101")


@pytest.fixture
def line(mia: Client) -> Line:
    return make_line(mia.studio)
