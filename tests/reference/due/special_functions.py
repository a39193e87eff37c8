# SPDX-License-Identifier: Apache-2.0
"""Special functions and first passages of the core against SciPy, over the arguments that
special_values.cpp prints.

usage: special_functions.py SPECIAL_VALUES"""
import subprocess
import sys

from scipy import special, stats


def first_passage(drift, spread, limit, time):
    mean, shape = limit / drift, (limit / spread) ** 2
    return stats.invgauss.cdf(time, mean / shape, scale=shape)


# name -> (SciPy's function, relative tolerance, absolute tolerance). SciPy's own incomplete functions and
# inverse Gaussian are good to some 1e-13; far tails of the latter only absolutely.
THEIRS = {
    "gammaincc": (special.gammaincc, 1e-10, 1e-15),
    "betainc": (special.betainc, 1e-10, 1e-15),
    "erfcx": (special.erfcx, 1e-13, 0),
    "ndtri": (special.ndtri, 1e-13, 1e-13),
    "stdtrit": (special.stdtrit, 1e-8, 1e-8),
    "first_passage": (first_passage, 1e-9, 1e-13),
    "gamma_wear": (lambda a, b, limit, time: stats.gamma.sf(limit, a * time, scale=1 / b), 1e-10, 1e-15),
}


def main():
    shown = subprocess.run([sys.argv[1]], capture_output=True, text=True, check=True)
    faults, seen = [], {}
    for line in shown.stdout.splitlines():
        name, *numbers = line.split()
        *arguments, mine = map(float, numbers)
        function, relative, absolute = THEIRS[name]
        theirs = function(*arguments)
        off = abs(mine - theirs)
        seen.setdefault(name, [0, 0.0])
        seen[name][0] += 1
        seen[name][1] = max(seen[name][1], off / max(abs(theirs), 1e-300) if off > absolute else 0.0)
        if not off <= max(absolute, relative * abs(theirs)):
            faults.append(f"{name}{tuple(arguments)}: {mine!r}, SciPy has {theirs!r}")
    for fault in faults:
        print(fault)
    for name, (count, worst) in seen.items():
        print(f"{name}: {count} values, furthest off {worst:.1e} of its size")
    sys.exit(1 if faults or set(seen) != set(THEIRS) else 0)


main()
