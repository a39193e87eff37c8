# SPDX-License-Identifier: Apache-2.0
"""`snugwalk due fit` against R's survreg on the data sets that come with R's survival package.

usage: survival.py SNUGWALK RSCRIPT"""
import json
import pathlib
import subprocess
import sys
import tempfile

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
            theirs, mine = float(value), ours(fits[name], figure)
            off = abs(mine - theirs) / max(1.0, abs(theirs))
            within = 1e-9 if figure == "log_likelihood" else WITHIN
            compared, worst = compared + 1, max(worst, off)
            if not off <= within:
                faults.append(f"{name} {figure}: {mine!r}, survreg has {theirs!r}")
    for fault in faults:
        print(fault)
    print(f"{len(fits)} data sets, {compared} figures, furthest off {worst:.1e}, {len(faults)} faults")
    sys.exit(1 if faults or len(fits) < 10 else 0)


main()
