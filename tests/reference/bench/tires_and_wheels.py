# SPDX-License-Identifier: Apache-2.0
"""Tires and wheel nuts of the bench, asked on the command line, against SciPy (units of CODATA, the air column
integrated, the load law inverted by root finding) and Python's own calendar.

usage: tires_and_wheels.py SNUGWALK"""
import datetime
import json
import math
import os
import subprocess
import sys
import tempfile
from collections import Counter

from scipy import constants, integrate, optimize

counted = Counter()


def bench(*words):
    folder = tempfile.gettempdir()
    done = subprocess.run([sys.argv[1], "--json", "bench", *words], capture_output=True, text=True, check=False,
                          env=dict(os.environ, XDG_DATA_HOME=folder))
    if done.returncode:
        sys.exit(f"bench {' '.join(words)}: exit {done.returncode}\n{done.stderr}")
    return json.loads(done.stdout)


def check(source, what, ours, theirs, relative):
    counted[source] += 1
    if not math.isclose(ours, theirs, rel_tol=relative, abs_tol=1e-9):
        sys.exit(f"{what}: {ours!r}, {source} gives {theirs!r}")


def air(metres):
    """Pressure of the standard atmosphere by integrating the weight of the air above sea level."""
    def fall(height, pressure):
        return -pressure * 9.80665 * 0.0289644 / (8.31432 * (288.15 - 0.0065 * height))
    return integrate.solve_ivp(fall, (0.0, metres), [constants.atm], rtol=1e-11, atol=1e-6).y[0][-1] if metres else constants.atm


def temperatures():
    for shown, start, at, end, there in [(65, 20, 0, 0, 0), (65, 20, 0, 50, 0), (65, 20, 0, 20, 2000),
                                         (80, 35, 300, -5, 2000), (50, -10, 1500, 30, 0), (65, -10, 0, 20, 0)]:
        ours = bench("tire-temperature", "--pressure", f"{shown} psi", "--from", f"{start} °C", "--from-altitude",
                     f"{at} m", "--to", f"{end} °C", "--to-altitude", f"{there} m")
        kelvin = [t + constants.zero_Celsius for t in (start, end)]
        theirs = (shown * constants.psi + air(at)) * kelvin[1] / kelvin[0] - air(there)
        check("scipy", f"{shown} psi from {start} to {end}", ours["value"], theirs, 1e-8)
        if ours["unit"] != "Pa":
            sys.exit("a pressure in " + ours["unit"])


def loads():
    for kind, exponent, most, full, load in [("lt", 0.70, 2680, 80, 2000), ("lt", 0.70, 3042, 80, 2450),
                                             ("st", 0.585, 2540, 65, 1675), ("lt", 0.70, 3415, 80, 3000)]:
        ours = bench("tire-pressure", "--class", kind, "--max-load", f"{most} lb", "--max-pressure", f"{full} psi",
                     "--load", f"{load} lb")
        theirs = optimize.brentq(lambda p: most * (p / full) ** exponent - load, 1.0, full, xtol=1e-12)
        check("scipy", f"{load} lb on {most}", ours["value"], theirs * constants.psi, 1e-9)


def torques():
    for thread, metres, newton_metres, factor in [("M14", 0.014, 140, 0.20), ("M12x1.5", 0.012, 110, 0.18),
                                                  ("1/2-20", constants.inch / 2, 100 * constants.lbf * constants.foot, 0.2)]:
        ours = bench("torque", "--stud", thread, "--torque", f"{newton_metres!r} N·m", "--friction", str(factor))
        check("scipy", thread, ours["value"], newton_metres / (factor * metres), 1e-9)
        check("scipy", thread + " low", ours["low"], 0.7 * newton_metres / (factor * metres), 1e-9)


def ages():
    on = datetime.date(2026, 11, 24)
    for week, year in [(23, 2019), (1, 2000), (52, 2011), (10, 2024), (35, 2015)]:
        first = datetime.date(year, 1, 1)
        first += datetime.timedelta(days=(6 - first.weekday()) % 7)  # the first Sunday
        made = first + datetime.timedelta(weeks=week - 1)
        ours = bench("tire-age", f"{week:02}{year % 100:02}", "--on", on.isoformat())
        check("python", f"age of {week}/{year}", ours["value"], (on - made).days / 365.2425, 1e-12)
        if ours["made"] != made.isoformat():
            sys.exit(f"made {ours['made']}, by the calendar {made}")


def main():
    temperatures()
    loads()
    torques()
    ages()
    for source, count in sorted(counted.items()):
        print(f"sourced {source} {count}")


main()
