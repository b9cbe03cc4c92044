"""The cache that several processes share. Where its Redis is away it forgets, and keeps nobody from signing in."""

from __future__ import annotations

import logging
from collections.abc import Callable
from typing import Any

from django.core.cache.backends.redis import RedisCache
from redis.backoff import NoBackoff
from redis.exceptions import ConnectionError, TimeoutError
from redis.retry import Retry

log = logging.getLogger(__name__)


class ForgetfulRedis(RedisCache):
    """A Redis that is away answers as one that is empty: whoever waits for an eye's news must get in all the same.

    Each call is tried once: redis-py's own three further tries would make a frozen one four times as long to wait for.
    """

    def __init__(self, server: str, params: dict[str, Any]) -> None:
        options = {"retry": Retry(NoBackoff(), 0), **params.get("OPTIONS", {})}
        super().__init__(server, {**params, "OPTIONS": options})

    def get(self, key: Any, default: Any = None, version: int | None = None) -> Any:
        return _unless_away(lambda: super(ForgetfulRedis, self).get(key, default, version), default)

    def add(self, key: Any, value: Any, *args: Any, **more: Any) -> bool:
        return bool(_unless_away(lambda: super(ForgetfulRedis, self).add(key, value, *args, **more), False))

    def incr(self, key: Any, delta: int = 1, version: int | None = None) -> int:
        return int(_unless_away(lambda: super(ForgetfulRedis, self).incr(key, delta, version), delta))

    def delete(self, key: Any, version: int | None = None) -> bool:
        return bool(_unless_away(lambda: super(ForgetfulRedis, self).delete(key, version), False))


def _unless_away(ask: Callable[[], Any], otherwise: Any) -> Any:
    try:
        return ask()
    except (ConnectionError, TimeoutError) as error:
        log.warning("the cache does not answer (%s): failed sign-ins are not counted meanwhile", error)
        return otherwise
