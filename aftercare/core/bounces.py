"""Whether what did not arrive says that nobody has the address, so that nothing more should go to it.

A mailbox that is full, a server that is down, a text that was taken for spam: those pass, or say nothing of the
address. However often they come they never end an address here: each message that matters and did not arrive is shown
by itself, and a person who is told of one address three days running learns nothing new.

The status codes are RFC 3463's (3.2 and 3.3) and, of what does not take mail at all, RFC 7505's (4.2).
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping

_STATUS = re.compile(r"(?<![\d.])([245])\.(\d{1,3})\.(\d{1,3})(?![\d.])")
# Bad mailbox, bad system, bad syntax, moved without a new address, takes no mail; and a mailbox that is closed (2.1).
# Of the others about addresses .0 is anything, .4 names two mailboxes, .5 is good, .7 and .8 are the sender's.
_NOBODYS = frozenset({(1, 1), (1, 2), (1, 3), (1, 6), (1, 10), (2, 1)})
_SAYS_NOTHING = frozenset({(0, 0), (1, 0)})

# Where providers' callbacks carry their own word for it, and the words that mean "for good" (their public
# documentation, from memory: Postmark Type, Brevo event, Resend data.bounce.type, Amazon SES bounce.bounceType, Mailgun
# event-data.severity, SparkPost's bounce class 10 "invalid recipient").
_WHERE = (
    ("Type",),
    ("event",),
    ("data", "bounce", "type"),
    ("bounce", "bounceType"),
    ("event-data", "severity"),
    ("bounce_class",),
    ("msys", "message_event", "bounce_class"),
)
_FOR_GOOD = frozenset({"hardbounce", "hard_bounce", "bademailaddress", "invalid_email", "permanent", "10"})


def is_for_good(said: Iterable[str], called: object = None, *, invalid: bool = False) -> bool:
    """Whether a server's words, or a provider's callback, say that nobody has the address.

    A status code in the words decides; without one that says anything, ``invalid`` (the provider's verdict on how the
    address is written) or the provider's own word for it in ``called``, the callback as it came.

    >>> is_for_good(["smtp;550 5.1.1 user unknown"]), is_for_good(["552 5.2.2 mailbox full"])
    (True, False)
    """
    found = [(int(of), int(detail), kind) for text in said for kind, of, detail in _STATUS.findall(text)]
    telling = [one for one in found if one[:2] not in _SAYS_NOTHING]
    if telling:
        return any(kind == "5" and (of, detail) in _NOBODYS for of, detail, kind in telling)
    return invalid or any(str(_at(called, path)).lower() in _FOR_GOOD for path in _WHERE)


def _at(called: object, path: tuple[str, ...]) -> object:
    for name in path:
        called = called.get(name) if isinstance(called, Mapping) else None
    return called
