"""The cache that several processes share. Where its Redis is away it forgets, and keeps nobody from signing in."""

from __future__ import annotations

import logging
import time
from collections.abc import Callable
from typing import Any, ClassVar

from django.core.cache.backends.redis import RedisCache
from redis.backoff import NoBackoff
from redis.exceptions import ConnectionError, TimeoutError
from redis.retry import Retry

log = logging.getLogger(__name__)

LEFT_ALONE = 10.0  # seconds


class ForgetfulRedis(RedisCache):
    """A Redis that is away answers as one that is empty: whoever waits for an eye's news must get in all the same.

    Each call is tried once: redis-py's own three further tries would make a frozen one four times as long to wait for.
    One that did not answer is left alone for some seconds by every thread of this process: a sign-in asks four times.
    """

    _away_until: ClassVar[dict[str, float]] = {}  # by server; on this process's own clock

    def __init__(self, server: str, params: dict[str, Any]) -> None:
        options = {"retry": Retry(NoBackoff(), 0), **params.get("OPTIONS", {})}
        super().__init__(server, {**params, "OPTIONS": options})
        self._server = server

    def get(self, key: Any, default: Any = None, version: int | None = None) -> Any:
        return self._unless_away(lambda: super(ForgetfulRedis, self).get(key, default, version), default)

    def add(self, key: Any, value: Any, *args: Any, **more: Any) -> bool:
        return bool(self._unless_away(lambda: super(ForgetfulRedis, self).add(key, value, *args, **more), False))

    def incr(self, key: Any, delta: int = 1, version: int | None = None) -> int:
        return int(self._unless_away(lambda: super(ForgetfulRedis, self).incr(key, delta, version), delta))

    def delete(self, key: Any, version: int | None = None) -> bool:
        return bool(self._unless_away(lambda: super(ForgetfulRedis, self).delete(key, version), False))

    def _unless_away(self, ask: Callable[[], Any], otherwise: Any) -> Any:
        if time.monotonic() < self._away_until.get(self._server, 0.0):
            return otherwise
        try:
            return ask()
        except (ConnectionError, TimeoutError) as error:
            log.warning("the cache does not answer (%s): failed sign-ins are not counted meanwhile", error)
            self._away_until[self._server] = time.monotonic() + LEFT_ALONE
            return otherwise
