"""The settings as each kind of process gets them: by deploy/start, by the systemd units, and in the containers.

What is held against them: Celery's own page on Redis (docs.celeryq.dev, "Redis: Caveats", visibility timeout) and on
tasks (acks_late, reject_on_worker_lost), and Django's on persistent connections (docs.djangoproject.com, "Databases").
"""

from __future__ import annotations

import json
import re
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest
import yaml

from deploy import starting
from tests import services

ROOT = Path(__file__).resolve().parents[2]
GROWN = {"DATABASE_URL": "postgres://aftercare@127.0.0.1:1/aftercare", "REDIS_URL": "redis://127.0.0.1:1/3"}
SECRET = "k" * 50
SHOW = """
import json
from django.conf import settings
from studio.celery import app
conf = app.conf
names = ["task_acks_late", "task_reject_on_worker_lost", "task_ignore_result", "task_publish_retry", "task_time_limit",
  "task_soft_time_limit", "worker_prefetch_multiplier", "broker_connection_retry_on_startup", "broker_url", "timezone",
  "worker_cancel_long_running_tasks_on_connection_loss", "broker_transport_options"]
app.loader.import_default_modules()
print(json.dumps({
  **{name: conf[name] for name in names}, "db_reuse_max": conf.get("CELERY_DB_REUSE_MAX"),
  "database": settings.DATABASES["default"], "cache": settings.CACHES["default"],
  "schedule": {name: (one["schedule"], one["options"]["expires"]) for name, one in conf.beat_schedule.items()},
  "annotations": conf.task_annotations,
  "limits": {name: (task.time_limit, task.soft_time_limit) for name, task in app.tasks.items() if "aftercare" in name},
}))
"""


def started(role: str) -> Mapping[str, str]:
    name = {"web": "The web server", "worker": "Worker 1", "beat": "The beat"}[role]
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("REDIS_URL", GROWN["REDIS_URL"])
        return next(one.environment for one in starting.programs(Path("/data")) if one.name == name)


def unit(role: str) -> Mapping[str, str]:
    text = (ROOT / "deploy" / "systemd" / f"aftercare-{role}.service").read_text()
    lines = re.findall(r"^Environment=(.*)$", text, re.MULTILINE)
    return dict(pair.split("=", 1) for line in lines for pair in line.split())


def container(role: str) -> Mapping[str, str]:
    services = yaml.safe_load((ROOT / "deploy" / "compose.yaml").read_text())["services"]
    given: Mapping[str, str] = services[role]["environment"]
    return {name: value for name, value in given.items() if not value.startswith(("postgres:", "redis:", "${"))}


WAYS = {"deploy/start": started, "systemd": unit, "compose": container}


@pytest.fixture(scope="module")
def seen(tmp_path_factory: pytest.TempPathFactory) -> dict[tuple[str, str], dict[str, Any]]:
    """What each process of each way of running sees; processes with equal environments are looked at once."""
    data = str(tmp_path_factory.mktemp("data"))
    shown: dict[str, dict[str, Any]] = {}
    found = {}
    for way, environment_of in WAYS.items():
        for role in ("web", "worker", "beat"):
            own = {**environment_of(role), "DATA_DIR": data, "SECRET_KEY": SECRET}
            mark = str(own.get("REDIS_SOCKET_TIMEOUT"))
            if mark not in shown:
                settings = services.environment(Path(data), **GROWN, **own)
                done = subprocess.run(
                    [sys.executable, "-c", SHOW],
                    cwd=ROOT,
                    env={**settings, "DJANGO_SETTINGS_MODULE": "studio.settings"},
                    capture_output=True,
                    text=True,
                    check=True,
                )
                shown[mark] = json.loads(done.stdout)
            found[way, role] = shown[mark]
    return found


ROLES = [(way, role) for way in WAYS for role in ("web", "worker", "beat")]


@pytest.mark.parametrize("where", ROLES, ids=" ".join)
def test_a_task_that_a_dead_worker_had_is_run_again_and_none_runs_into_that(
    seen: dict[tuple[str, str], dict[str, Any]], where: tuple[str, str]
) -> None:
    conf = seen[where]
    options = conf["broker_transport_options"]

    assert conf["task_acks_late"] is True
    assert conf["task_reject_on_worker_lost"] is True
    assert (conf["task_soft_time_limit"], conf["task_time_limit"]) == (100, 120)
    assert options["visibility_timeout"] >= 2 * conf["task_time_limit"]
    assert set(conf["limits"]) == {f"aftercare.{name}" for name in conf["schedule"]}
    assert all(limits == [120, 100] for limits in conf["limits"].values()), "no task has limits of its own"
    assert not conf["annotations"]
    assert (options["unacked_restore_interval"], options["unacked_restore_throttle"]) == (5, 1)
    assert conf["worker_prefetch_multiplier"] == 1
    assert conf["task_ignore_result"] is True
    assert conf["worker_cancel_long_running_tasks_on_connection_loss"] is False
    assert conf["broker_connection_retry_on_startup"] is True
    assert conf["timezone"] == "UTC"


@pytest.mark.parametrize("where", ROLES, ids=" ".join)
def test_a_frozen_broker_holds_a_page_two_seconds_and_no_blocking_read_is_cut_off(
    seen: dict[tuple[str, str], dict[str, Any]], where: tuple[str, str]
) -> None:
    conf = seen[where]
    options = conf["broker_transport_options"]

    assert options["socket_timeout"] == (10 if where[1] == "worker" else 2)
    assert options["socket_connect_timeout"] == 2
    assert options["socket_keepalive"] is True
    assert options["retry_on_timeout"] is False
    assert options["max_retries"] == 0
    assert conf["task_publish_retry"] is False


@pytest.mark.parametrize("where", ROLES, ids=" ".join)
def test_the_broker_shares_its_database_with_no_cache(
    seen: dict[tuple[str, str], dict[str, Any]], where: tuple[str, str]
) -> None:
    conf = seen[where]

    assert conf["broker_url"] == "redis://127.0.0.1:1/3"
    assert conf["cache"]["LOCATION"] == "redis://127.0.0.1:1/4"
    assert conf["cache"]["OPTIONS"]["socket_timeout"] == 2


@pytest.mark.parametrize("where", ROLES, ids=" ".join)
def test_connections_are_kept_looked_at_and_never_pooled(
    seen: dict[tuple[str, str], dict[str, Any]], where: tuple[str, str]
) -> None:
    database = seen[where]["database"]

    assert database["CONN_MAX_AGE"] >= 60
    assert database["CONN_HEALTH_CHECKS"] is True
    assert "pool" not in database["OPTIONS"]
    assert seen[where]["db_reuse_max"] >= 100


@pytest.mark.parametrize("where", ROLES, ids=" ".join)
def test_a_tick_that_nobody_took_is_gone_before_many_pile_up(
    seen: dict[tuple[str, str], dict[str, Any]], where: tuple[str, str]
) -> None:
    for name, (every, expires) in seen[where]["schedule"].items():
        assert expires <= max(5, every), name


def test_a_worker_gets_its_time_to_end() -> None:
    """Celery's warm shutdown waits up to 30 s for its children (billiard's pool.py, 300 times 0.1 s)."""
    compose = yaml.safe_load((ROOT / "deploy" / "compose.yaml").read_text())["services"]
    worker = (ROOT / "deploy" / "systemd" / "aftercare-worker.service").read_text()
    [systemd] = re.findall(r"^TimeoutStopSec=(\d+)$", worker, re.MULTILINE)

    assert int(compose["worker"]["stop_grace_period"].removesuffix("s")) >= 40
    assert int(systemd) >= 40
