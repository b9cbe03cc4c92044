from __future__ import annotations

import socket
import time
from collections.abc import Iterator

import pytest
from django.core.cache.backends.redis import RedisCache

from studio.cache import ForgetfulRedis
from tests import servers


@pytest.fixture
def frozen() -> Iterator[str]:
    """A server that takes calls and never answers."""
    with socket.socket() as silent:
        silent.bind(("127.0.0.1", 0))
        silent.listen()
        yield f"redis://127.0.0.1:{silent.getsockname()[1]}/2"


def cache(url: str, seconds: float = 0.5) -> ForgetfulRedis:
    return ForgetfulRedis(url, {"OPTIONS": {"socket_timeout": seconds, "socket_connect_timeout": seconds}})


def test_a_cache_that_is_away_or_frozen_forgets_and_holds_nobody_up(frozen: str) -> None:
    for url in (f"redis://127.0.0.1:{servers.free_port()}/2", frozen):
        began = time.monotonic()
        one = cache(url)

        assert one.get("tries", 0) == 0
        assert one.add("tries", 0, 60) is False
        assert one.incr("tries") == 1
        assert one.delete("tries") is False
        assert time.monotonic() - began < 1.0, "four calls, of which one waits"


def test_one_that_is_back_is_asked_again(frozen: str, monkeypatch: pytest.MonkeyPatch) -> None:
    one = cache(frozen)
    one.get("tries")
    asked: list[str] = []
    monkeypatch.setattr(RedisCache, "get", lambda _self, key, *_more: asked.append(key))

    one.get("tries")
    assert asked == []
    monkeypatch.setattr("studio.cache.LEFT_ALONE", 0.0)
    monkeypatch.setitem(ForgetfulRedis._away_until, frozen, 0.0)
    one.get("tries")
    assert asked == ["tries"]


@pytest.mark.servers
@pytest.mark.skipif(not servers.has_redis(), reason="Redis is not installed")
def test_one_that_answers_counts() -> None:
    with servers.redis() as url:
        one = cache(url)

        assert one.add("tries", 0, 60) is True
        assert (one.incr("tries"), one.incr("tries"), one.get("tries")) == (1, 2, 2)
        assert one.delete("tries") is True
        assert one.get("tries", 0) == 0
        with pytest.raises(ValueError, match="not found"):
            one.incr("tries")
