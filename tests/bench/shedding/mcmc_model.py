"""The model of the forecast in the language of numpyro; run by beside_mcmc.py, JSON in and out.

Shedding is taken from a table over (days, log cycle), interpolated, as gamma functions have no slope by their shape
here; its coefficient of variation and least age are given, which is a favor to this side.
"""

from __future__ import annotations

import json
import sys
import time
from typing import Any

import jax
import jax.numpy as jnp
import numpy as np
import numpyro
import numpyro.distributions as dist
from jax.scipy.special import gammaincc, ndtr
from numpyro.infer import MCMC, NUTS, init_to_median

LEAST_AGE, STEP, WRONG_ANY = 30.0, 0.05, 1 / 21


def excess(x: Any, mean: Any, spread: float) -> Any:
    shape = spread**-2
    return mean * gammaincc(shape + 1, x * shape / mean) - x * gammaincc(shape, x * shape / mean)


def kept(days: Any, cycle: Any, spread: float) -> Any:
    return excess(LEAST_AGE + days, cycle, spread) / excess(LEAST_AGE, cycle, spread)


def model(client: Any, days: Any, share: Any, clients: int, table: Any, logs: Any) -> None:
    cycle, cycle_sd = (
        numpyro.sample("cycle", dist.Normal(4.85, 0.35)),
        numpyro.sample("cycle_sd", dist.LogNormal(-1.6, 0.3)),
    )
    hazard, hazard_sd = (
        numpyro.sample("hazard", dist.Normal(-4.5, 0.7)),
        numpyro.sample("hazard_sd", dist.LogNormal(-0.7, 0.3)),
    )
    luck, eye = numpyro.sample("luck", dist.LogNormal(-1.4, 0.4)), numpyro.sample("eye", dist.LogNormal(-3.0, 0.4))
    wrong = numpyro.sample("wrong", dist.Beta(1, 30))
    with numpyro.plate("clients", clients):
        own_cycle = cycle + cycle_sd * numpyro.sample("c", dist.Normal(0, 1))
        own_hazard = hazard + hazard_sd * numpyro.sample("h", dist.Normal(0, 1))
    with numpyro.plate("sets", len(days)):
        of_set = own_hazard[client] + luck * numpyro.sample("l", dist.Normal(0, 1))
    at = (own_cycle[client] - logs[0]) / (logs[1] - logs[0])
    below = jnp.clip(jnp.floor(at).astype(int), 0, len(logs) - 2)
    part = at - below
    left = (table[days, below] * (1 - part) + table[days, below + 1] * part) * jnp.exp(-jnp.exp(of_set) * days)
    low = jnp.where(share < STEP / 4, -jnp.inf, share - STEP / 2)
    high = jnp.where(share > 1 - STEP / 4, jnp.inf, share + STEP / 2)
    chance = ndtr((jnp.where(jnp.isinf(high), 9.0, high) - left) / eye) - ndtr(
        (jnp.where(jnp.isinf(low), -9.0, low) - left) / eye
    )
    numpyro.factor("readings", jnp.log((1 - wrong) * chance + wrong * WRONG_ANY).sum())


def days_to(level: float, cycle: Any, hazard: Any, spread: float) -> Any:
    low, high = jnp.zeros_like(cycle), jnp.full_like(cycle, 1000.0)
    for _halving in range(30):
        middle = (low + high) / 2
        above = kept(middle, cycle, spread) * jnp.exp(-hazard * middle) > level
        low, high = jnp.where(above, middle, low), jnp.where(above, high, middle)
    return (low + high) / 2


def main() -> None:
    given = json.load(sys.stdin)
    flat = [(number, *one) for number, row in enumerate(given["rows"]) for one in row]
    client, days, share = (np.array(column) for column in zip(*flat, strict=True))
    logs = np.linspace(np.log(35), np.log(500), 400)
    table = np.array(kept(jnp.arange(0, 40)[:, None] * 1.0, jnp.exp(logs)[None, :], given["spread"]))
    began = time.perf_counter()
    sampler = MCMC(
        NUTS(model, init_strategy=init_to_median),
        num_warmup=given["warm_up"],
        num_samples=given["samples"],
        progress_bar=False,
    )
    sampler.run(jax.random.PRNGKey(0), client, days, share, len(given["rows"]), jnp.array(table), jnp.array(logs))
    drawn = {name: np.array(values) for name, values in sampler.get_samples().items()}
    noise = np.random.default_rng(0).standard_normal(drawn["c"].shape)
    cycle = np.exp(drawn["cycle"][:, None] + drawn["cycle_sd"][:, None] * drawn["c"])
    hazard = np.exp(
        drawn["hazard"][:, None] + drawn["hazard_sd"][:, None] * drawn["h"] + drawn["luck"][:, None] * noise
    )
    found = [
        np.median(np.array(days_to(level, jnp.array(cycle), jnp.array(hazard), given["spread"])), axis=0)
        for level in given["levels"]
    ]
    print(json.dumps({"seconds": time.perf_counter() - began, "medians": [one.tolist() for one in found]}))


if __name__ == "__main__":
    main()
