from __future__ import annotations

import pytest

from aftercare.transports.base import Transport
from aftercare.transports.phone import Phone
from tests.aftercare.transports.contract import Addresses, TransportContract


class TestPhone(TransportContract):
    @pytest.fixture
    def transport(self) -> Transport:
        return Phone()

    @pytest.fixture
    def addresses(self) -> Addresses:
        return Addresses(good="+15550100100")
