"""What the log does not tell: the links by which clients reach their own pages open them for whoever reads it."""

from __future__ import annotations

import logging
import re

_LINK = re.compile(r"(/[vcdq]/)[0-9A-Za-z]{13,40}|(/unsubscribe/)[\w.:=-]+")


class WithoutLinks(logging.Filter):
    """Cuts such links short in each line; Django names the address of every request that is refused."""

    def filter(self, record: logging.LogRecord) -> bool:
        said = record.getMessage()
        cut = _LINK.sub(lambda found: f"{found[1] or found[2]}…", said)
        if cut != said:
            record.msg, record.args = cut, None
        return True
