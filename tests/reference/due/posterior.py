# SPDX-License-Identifier: Apache-2.0
"""`snugwalk due posterior` against SciPy's adaptive quadrature of the same prior and likelihood.

usage: posterior.py SNUGWALK"""
import json
import math
import pathlib
import subprocess
import sys
import tempfile

from scipy import integrate

WITHIN = 1e-5  # relative, the grid's own error
SPREAD, SHAPE_SPREAD = 0.6, 0.35
LEAST_SHAPE, MOST_SHAPE = 0.3, 8.0  # the prior's own ends, as `--help` says

# lives (lower, upper, weight), interval, shape, p, within
CASES = [
    ([(12, 18, 1), (6, math.inf, 1)], 30, 1.5, 1 - math.exp(-1), 6),
    ([(12, 18, 1), (6, math.inf, 1)], 12, 1.5, 0.10, 12),
    ([(0, 9, 1)], 12, 1.0, 0.25, 12),
    ([(20, math.inf, 2.5), (3, math.inf, 1)], 6, 2.5, 0.03, 3),
    ([(0, 30, 1), (14, 19, 3), (22, math.inf, 4)], 24, 1.5, 0.10, 10),
]


def log_likelihood(lives, scale, shape):
    total = 0.0
    for lower, upper, weight in lives:
        hazard = (lower / scale) ** shape
        total -= weight * hazard
        if upper < math.inf:
            gained = (upper / scale) ** shape - hazard
            total += weight * math.log(-math.expm1(-gained)) if gained > 0 else -math.inf
    return total


def by_quadrature(lives, interval, shape, p, within):
    middle = math.log(interval / (-math.log1p(-p)) ** (1 / shape))
    age = lives[-1][0] if lives[-1][1] == math.inf else 0.0

    def mean(of):
        def inner(y, z):
            scale, beta = math.exp(middle + SPREAD * z), shape * math.exp(SHAPE_SPREAD * y)
            beta = min(max(beta, LEAST_SHAPE), MOST_SHAPE)
            return of(scale, beta) * math.exp(log_likelihood(lives, scale, beta) - (z * z + y * y) / 2)
        return integrate.dblquad(inner, -7, 7, -7, 7, epsabs=0, epsrel=1e-9)[0]

    def fails(scale, beta):
        return -math.expm1((age / scale) ** beta - ((age + within) / scale) ** beta)

    total = mean(lambda scale, beta: 1.0)
    return {"mean_scale": mean(lambda scale, beta: scale) / total,
            "mean_shape": mean(lambda scale, beta: beta) / total,
            "fail_within": mean(fails) / total}


def main():
    faults, worst = [], 0.0
    with tempfile.TemporaryDirectory() as folder:
        file = pathlib.Path(folder, "lives.csv")
        for lives, interval, shape, p, within in CASES:
            rows = [f"{lower},{'' if upper == math.inf else upper},{weight}" for lower, upper, weight in lives]
            file.write_text("\n".join(["lower,upper,weight", *rows]) + "\n")
            options = ["--interval", interval, "--shape", shape, "--p", p, "--within", within]
            shown = subprocess.run([sys.argv[1], "--json", "due", "posterior", str(file), *map(str, options)],
                                   capture_output=True, text=True)
            if shown.returncode != 0:
                sys.exit(shown.stderr)
            ours = json.loads(shown.stdout)
            for name, theirs in by_quadrature(lives, interval, shape, p, within).items():
                off = abs(ours[name] / theirs - 1)
                worst = max(worst, off)
                if not off <= WITHIN:
                    faults.append(f"{rows} {name}: {ours[name]!r}, SciPy has {theirs!r}")
    for fault in faults:
        print(fault)
    print(f"{len(CASES)} histories, furthest off {worst:.1e}, {len(faults)} faults")
    sys.exit(1 if faults else 0)


main()
