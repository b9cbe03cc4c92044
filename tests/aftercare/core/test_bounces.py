"""Outside facts: the status codes of RFC 3463, 3.2, 3.3 and 3.8, and RFC 7505, 4.2."""

from __future__ import annotations

import pytest

from aftercare.core.bounces import is_for_good


@pytest.mark.parametrize("status", ["5.1.1", "5.1.2", "5.1.3", "5.1.6", "5.1.10", "5.2.1"])
def test_what_says_that_nobody_has_the_address_does(status: str) -> None:
    assert is_for_good([f"550 {status} words"])
    assert is_for_good([status, ""])


@pytest.mark.parametrize(
    "status",
    [
        "4.1.1",  # passing
        "5.1.7",  # the sender's address
        "5.1.8",
        "5.2.2",  # full
        "5.2.3",  # too long
        "5.3.4",
        "5.4.4",  # no way to the server at the moment
        "5.7.1",  # policy
        "5.0.0",
        "2.1.5",
    ],
)
def test_what_passes_or_says_nothing_of_the_address_does_not(status: str) -> None:
    assert not is_for_good([f"550 {status} words"])


@pytest.mark.parametrize("said", ["", "550 no such user", "connected to 5.1.1.7", "see 15.1.1", "v5.1.10.2"])
def test_what_is_no_status_is_taken_for_none(said: str) -> None:
    assert not is_for_good([said])


@pytest.mark.parametrize(
    ("said", "called", "expected"),
    [
        ("552 5.2.2 full", {"Type": "HardBounce"}, False),  # the receiving server knows best
        ("550 5.1.1 x", {"Type": "SoftBounce"}, True),
        ("550 5.0.0 x", {"Type": "HardBounce"}, True),  # says nothing
        ("", {"event": "hard_bounce"}, True),
        ("", {"bounce": {"bounceType": "Permanent"}}, True),
        ("", {"bounce": {"bounceType": "Transient"}}, False),
        ("", {"bounce": "Permanent"}, False),
        ("", {"event-data": {"severity": "permanent"}}, True),
        ("", {"bounce_class": 10}, True),
        ("", None, False),
        ("", "HardBounce", False),
    ],
)
def test_a_servers_code_decides_and_a_providers_word_where_there_is_none(
    said: str, called: object, expected: bool
) -> None:
    assert is_for_good([said], called) is expected
