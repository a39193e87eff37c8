# SPDX-License-Identifier: Apache-2.0
"""Weights by the command line against NumPy: the scale's doubt by drawing tickets at random within their steps
(the way of JCGM 101), statics by solving for the two supports.

usage: weights_numpy.py SNUGWALK"""
import json
import subprocess
import sys

import numpy as np

DRAWS = 400_000
STATISTICAL = 0.01  # a spread of 400,000 draws is known to 0.1 %; the rest is for the linear law of doubt


class Failed(Exception):
    pass


def ask(program, *arguments):
    done = subprocess.run([program, "--json", "bench", *map(str, arguments)], capture_output=True, text=True,
                          check=False)
    if done.returncode != 0:
        raise Failed(f"{arguments}: {done.stderr}")
    return json.loads(done.stdout)["figures"]


def close(what, ours, theirs, tolerance):
    apart = abs(ours - theirs) / max(abs(theirs), 1e-12)
    print(f"{what}: {ours:.9g} against {theirs:.9g}")
    if not apart <= tolerance:
        raise Failed(f"{what}: {ours} against {theirs}, allowed {tolerance}")


def listed(values, unit):
    return "; ".join(f"{v} {unit}" for v in values)


def half(figure):
    return (figure["high"] - figure["low"]) / 2.0


def tickets(program):
    """Each reading lies anywhere within its step: what spread do the sums have?"""
    checks = 0
    cases = [((1240, 1480), (1190, 1730, 2650), (1220, 1640, 2710), 20),
             ((1300, 1210), (1150, 1690, 3100), (1240, 1560, 3140), 10)]
    random = np.random.default_rng(20261128)
    for solo, coupled, bars, step in cases:
        ours = ask(program, "weigh", "--solo", listed(solo, "kg"), "--coupled", listed(coupled, "kg"), "--bars",
                   listed(bars, "kg"), "--division", f"{step} kg")
        draw = {name: np.asarray(v)[:, None] + random.uniform(-step / 2, step / 2, (len(v), DRAWS))
                for name, v in (("solo", solo), ("coupled", coupled), ("bars", bars))}
        f0, r0 = draw["solo"]
        f1, r1, x1 = draw["coupled"]
        f2, r2, x2 = draw["bars"]
        tongue = f1 + r1 - f0 - r0
        spreads = {"tongue": tongue, "gross": tongue + x1, "share": tongue / (tongue + x1),
                   "front-unloading": f0 - f1, "restoration": (f2 - f1) / (f0 - f1), "moved-to-axles": x2 - x1,
                   "mismatch": f2 + r2 + x2 - f1 - r1 - x1}
        for name, drawn in spreads.items():
            if name == "restoration" and np.min(f0 - f1) < 50:
                continue  # a ratio by a small number is not linear any more
            close(f"{name}, doubt", half(ours[name]), 2.0 * float(np.std(drawn)), STATISTICAL)
            checks += 1
            if name != "mismatch":  # whose middle is nothing
                close(f"{name}, middle", ours[name]["value"], float(np.mean(drawn)), STATISTICAL)
                checks += 1
    return checks


def statics(program):
    """Two supports carry what is aboard: sum of forces and sum of moments, solved as a system."""
    random = np.random.default_rng(7)
    checks = 0
    for _ in range(10):
        axle = round(random.uniform(4, 6), 2)
        masses = [round(m, 1) for m in random.uniform(20, 900, 5)]
        places = [round(x, 2) for x in random.uniform(0.5, axle, 5)]
        tongue, axles = np.linalg.solve([[1.0, 1.0], [0.0, axle]],
                                        [sum(masses), float(np.dot(masses, places))])
        ours = ask(program, "packing", "--axle", f"{axle} m", "--items",
                   "; ".join(f"{m} kg@{x} m" for m, x in zip(masses, places)))
        close("tongue by two supports", ours["tongue"]["value"], float(tongue), 1e-9)
        close("axles by two supports", ours["axles"]["value"], float(axles), 1e-9)
        checks += 2
    return checks


def main():
    program = sys.argv[1]
    checks = tickets(program) + statics(program)
    print(f"sourced numpy {checks}")


try:
    main()
except Failed as fault:
    print(f"FAILED {fault}")
    sys.exit(1)
