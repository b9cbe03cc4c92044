"""The same readings given to a general MCMC tool (numpyro's NUTS): ``python tests/bench/shedding --beside-mcmc``.

The tool is no dependency of the project: an environment of its own is built for it, by package name, in a temporary
folder. It samples the same model with all its numbers unknown: clients, each set's luck, the eye. Accuracy and time
are compared in one run, the forecast's time with the numbers fitted anew. Exits 1 where a limit is not kept, and says
so and exits 0 where the tool cannot be installed.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
import time
import venv
from pathlib import Path

os.environ.update(OPENBLAS_NUM_THREADS="1", OMP_NUM_THREADS="1")
sys.path.insert(0, str(Path(__file__).resolve().parents[3]))

import numpy as np

from aftercare.core import shedding
from tests.bench.shedding.worlds import World, draw, histories, truth

CLIENTS, WARM_UP, SAMPLES, SEED = 1_500, 500, 500, 1
FASTER, NO_LESS = 50.0, 1.005
LEVELS = (0.6, 0.4)


def installed(folder: Path) -> Path | None:
    """Return the Python of an environment that has the tool, or None where it cannot be had."""
    venv.create(folder, with_pip=True)
    python = folder / "bin" / "python"
    asked = subprocess.run([str(python), "-m", "pip", "install", "-q", "numpyro"], capture_output=True, check=False)
    return python if asked.returncode == 0 else None


def main() -> int:
    world = World("established")
    people = draw(world, CLIENTS, SEED)
    hers = histories(people)
    ours = float("inf")
    for _run in range(3):
        began = time.perf_counter()
        made = shedding.forecast(shedding.fit(hers), hers, levels=LEVELS, curves=False)
        ours = min(ours, time.perf_counter() - began)
    with tempfile.TemporaryDirectory() as folder:
        python = installed(Path(folder) / "tool")
        if python is None:
            print("  beside a general MCMC tool: it does not install here, nothing was compared")
            return 0
        rows = [[(days, share) for days, share, _hazard, _lot in person.sets[:-1]] for person in people]
        given = {"rows": rows, "levels": LEVELS, "warm_up": WARM_UP, "samples": SAMPLES, "spread": world.spread}
        script = Path(__file__).with_name("mcmc_model.py")
        run = subprocess.run(
            [str(python), str(script)], input=json.dumps(given), capture_output=True, text=True, check=True
        )
    theirs = json.loads(run.stdout.splitlines()[-1])
    missed = False
    for number, level in enumerate(LEVELS):
        true = truth(world, people, level)
        mine = float(np.abs(np.array([one.days[level].middle for one in made]) - true).mean())
        other = float(np.abs(np.array(theirs["medians"][number]) - true).mean())
        print(
            f"  beside NUTS, to {level}: mean error {mine:.3f} days, NUTS {other:.3f}, "
            f"ratio {mine / other:.4f} (at most {NO_LESS})"
        )
        missed |= mine / other > NO_LESS
    faster = theirs["seconds"] / ours
    print(
        f"  beside NUTS: {ours:.2f} s, NUTS {theirs['seconds']:.1f} s, "
        f"{faster:.0f} times faster (at least {FASTER:.0f})"
    )
    return 1 if missed or faster < FASTER else 0


if __name__ == "__main__":
    raise SystemExit(main())
