"""The two books that judge a fault: what the service wrote down of each message, and what the provider counted."""

from __future__ import annotations

import sqlite3
from collections import Counter
from collections.abc import Collection, Iterable, Mapping
from contextlib import closing
from dataclasses import dataclass
from typing import Any

import psycopg

# DESIGN of the outbox: safety messages of which nobody knows whether they left are sent again, the others are not.
SENT_AGAIN = frozenset({"care", "check", "patch_test", "answer", "alert"})
AT_REST = frozenset({"handed_over", "delivered", "undelivered", "unsure", "withheld", "withdrawn"})
DUE_NOW = "occasion IN ('care', 'prepare', 'opt_in')"  # the checks that follow are days ahead


@dataclass(frozen=True, slots=True)
class Entry:
    """One message: how it stands, and the reference and outcome of each try."""

    occasion: str
    state: str
    tries: tuple[tuple[str, str], ...]
    address: str = ""


def query(url: str, statement: str) -> list[tuple[Any, ...]]:
    """Ask the service's database by another road than the service's."""
    if url.startswith("sqlite:///"):
        with closing(sqlite3.connect(url.removeprefix("sqlite:///"), timeout=20)) as connection:
            return connection.execute(statement).fetchall()
    with psycopg.connect(url) as server:
        return server.execute(statement.encode()).fetchall()


def entries(url: str, which: str = DUE_NOW) -> list[Entry]:
    """Read every message with its tries, in order."""
    tries: dict[int, list[tuple[str, str]]] = {}
    asked = "SELECT message_id, reference, outcome FROM aftercare_attempt ORDER BY message_id, number"
    for message, reference, outcome in query(url, asked):
        tries.setdefault(message, []).append((reference, outcome))
    found = query(url, f"SELECT id, occasion, state, address FROM aftercare_message WHERE {which}")
    return [Entry(occasion, state, tuple(tries.get(pk, ())), address) for pk, occasion, state, address in found]


def at_work(url: str, which: str = DUE_NOW) -> int:
    """Return how many messages are not at rest; an unsure one with a lease still waits for its decision."""
    busy = "(state IN ('planned', 'claimed', 'handing_over') OR lease_until IS NOT NULL)"
    [(number,)] = query(url, f"SELECT count(*) FROM aftercare_message WHERE {which} AND {busy}")
    return int(number)


def hurry(url: str) -> None:
    """Have what waits for another try be due now, and roads that rest be tried: as if the time had passed."""
    for statement in (
        "UPDATE aftercare_message SET due_at = claimed_at WHERE state = 'planned' AND claimed_at < due_at",
        "DELETE FROM aftercare_roadhealth WHERE rests_until IS NOT NULL",
    ):
        change(url, statement)


def end_claims(url: str) -> None:
    """Have what a round that failed had claimed be due at once: as if its lease were over."""
    change(url, "UPDATE aftercare_message SET lease_until = claimed_at WHERE state = 'claimed'")


def change(url: str, statement: str) -> None:
    """Change the service's database by another road than the service's."""
    if url.startswith("sqlite:///"):
        with closing(sqlite3.connect(url.removeprefix("sqlite:///"), timeout=20)) as connection, connection:
            connection.execute("PRAGMA wal_autocheckpoint=0")  # the engine alone does that
            connection.execute(statement)
        return
    with psycopg.connect(url) as server:
        server.execute(statement.encode())


def judge(
    found: Collection[Entry], accepted: Iterable[str], in_flight: Collection[str], refused: int = 0, cut_off: int = 0
) -> list[str]:
    """Return all that must not be: lost, twice but by policy, unsure without need, or sent without being journaled.

    ``accepted`` are references as often as the provider took them, ``in_flight`` those that it left unanswered,
    ``refused`` is how many it refused for good. Where something was killed, ``cut_off`` is how many can have been in
    flight beside: which ones, nobody can have counted.
    """
    taken = Counter(accepted)
    faults = [fault for entry in found for fault in _faults(entry, taken)]
    known = {reference for entry in found for reference, _outcome in entry.tries}
    if strangers := set(taken) - known:
        faults.append(f"{len(strangers)} were sent that nobody has written down")
    unsure = {reference for entry in found for reference, outcome in entry.tries if outcome == "unsure"}
    if unheard := set(in_flight) - unsure:
        faults.append(f"{len(unheard)} tries were left unanswered and are not written down so")
    needless = unsure - set(in_flight)
    if len(needless) > cut_off:
        faults.append(f"{len(needless)} tries are unsure that were answered, or never in flight")
    denied = sum(outcome == "undelivered" for entry in found for _reference, outcome in entry.tries)
    if denied != refused:
        faults.append(f"{denied} tries were refused for good, by the provider's count {refused}")
    return faults


def judge_by_address(found: Collection[Entry], arrived: Mapping[str, int]) -> list[str]:
    """Return all that must not be where only addresses tell what arrived, each of which one message goes to."""
    return [fault for entry in found for fault in _faults_of(entry, arrived.get(entry.address, 0))]


def _faults(entry: Entry, taken: Mapping[str, int]) -> Iterable[str]:
    return _faults_of(entry, sum(taken[reference] for reference in {reference for reference, _outcome in entry.tries}))


def _faults_of(entry: Entry, times: int) -> Iterable[str]:
    lost = sum(outcome == "unsure" for _reference, outcome in entry.tries)
    if entry.state not in AT_REST:
        yield f"{entry.occasion}: at no rest: {entry.state}"
    if entry.state in ("handed_over", "delivered") and not times:
        yield f"{entry.occasion}: lost"
    if times > 1 and not (entry.occasion in SENT_AGAIN and times <= lost + 1):
        yield f"{entry.occasion}: sent {times} times, {lost} of them unheard"
    if entry.state == "unsure" and (entry.occasion in SENT_AGAIN or not lost):
        yield f"{entry.occasion}: unsure after {lost} tries that nobody heard the end of"


def counts(found: Collection[Entry], accepted: Collection[str]) -> dict[str, int]:
    """Return the figures of a run: ``again`` is how often one was taken that had been taken before."""
    taken = set(accepted)
    reached = sum(any(reference in taken for reference, _outcome in entry.tries) for entry in found)
    tries = Counter(outcome for entry in found for _reference, outcome in entry.tries)
    figures = {"messages": len(found), "taken": len(accepted), "again": len(accepted) - reached}
    figures |= {"unsure tries": tries["unsure"], "tries": tries.total()}
    return figures | dict(sorted(Counter(entry.state for entry in found).items()))
