# SPDX-License-Identifier: Apache-2.0
"""`snugwalk due fit` against R's survreg on the data sets that come with R's survival package.

usage: survival.py SNUGWALK RSCRIPT"""
import json
import math
import pathlib
import subprocess
import sys
import tempfile

# What survreg of survival 3.5 on R 4.2 printed for two of them, beside what the one at hand says.
PRINTED = {
    "cracks": {"intercept": 7.687999064, "sigma": 0.6735061012, "log_likelihood": -309.6311809},
    "lung": {"intercept": 6.03490391, "sigma": 0.7593936011, "log_likelihood": -1153.851188},
}
LOGNORMAL = {"intercept": 7.4424184, "sigma": 0.9989999746, "log_likelihood": -311.8822544}  # of the cracks
WITHIN = 1e-6  # relative, or of one for figures below one; log-likelihoods 1e-9


def fitted(snugwalk, file):
    shown = subprocess.run([snugwalk, "--json", "due", "fit", file], capture_output=True, text=True)
    if shown.returncode != 0:
        sys.exit(f"{file}: exit {shown.returncode}: {shown.stderr}")
    return json.loads(shown.stdout)


def ours(fit, figure):
    kind, _, name = figure.partition(":")
    if kind == "covariate":
        return fit["covariates"][name]
    if kind == "error":
        return fit["standard_errors"][name]
    if kind.endswith("_error"):
        return fit["standard_errors"][kind.removesuffix("_error")]
    return fit[kind]


def half_a_unit(printed):
    """Of the last digit printed."""
    return 0.501 * 10.0 ** -len(repr(printed).partition(".")[2])


def printed_faults(fits):
    for name, printed in PRINTED.items():
        fit = fits[name]
        mine = {"intercept": math.log(fit["scale"]), "sigma": 1.0 / fit["shape"], "log_likelihood": fit["log_likelihood"]}
        for figure, value in printed.items():
            if not abs(mine[figure] - value) <= max(half_a_unit(value), WITHIN if figure != "log_likelihood" else 0.0):
                yield f"{name} {figure}: {mine[figure]!r}, printed was {value!r}"
    if not fits["cracks"]["log_likelihood"] > LOGNORMAL["log_likelihood"]:
        yield "cracks: the lognormal law fits better than ours"


def main():
    snugwalk, rscript = sys.argv[1:]
    here = pathlib.Path(__file__).parent
    faults, compared, worst, fits = [], 0, 0.0, {}
    with tempfile.TemporaryDirectory() as folder:
        said = subprocess.run([rscript, here / "survival.R", folder], capture_output=True, text=True, check=True)
        for line in said.stdout.splitlines():
            name, figure, value = line.split()
            if name not in fits:
                fits[name] = fitted(snugwalk, pathlib.Path(folder, f"{name}.csv"))
            if figure.startswith("lognormal:"):
                printed = LOGNORMAL[figure.partition(":")[2]]
                if not abs(float(value) - printed) <= max(half_a_unit(printed), WITHIN):
                    faults.append(f"{name} {figure}: survreg has {value}, printed was {printed!r}")
                continue
            theirs, mine = float(value), ours(fits[name], figure)
            off = abs(mine - theirs) / max(1.0, abs(theirs))
            within = 1e-9 if figure == "log_likelihood" else WITHIN
            compared, worst = compared + 1, max(worst, off)
            if not off <= within:
                faults.append(f"{name} {figure}: {mine!r}, survreg has {theirs!r}")
    faults += printed_faults(fits)
    for fault in faults:
        print(fault)
    print(f"{len(fits)} data sets, {compared} figures, furthest off {worst:.1e}, {len(faults)} faults")
    sys.exit(1 if faults or len(fits) < 10 else 0)


main()
