# SPDX-License-Identifier: Apache-2.0
"""Spectra by the command line against pwelch of Octave's signal package, on series of seeded noise. [WELCH-1967]

usage: road_octave.py SNUGWALK"""
import json
import os
import random
import subprocess
import sys
import tempfile

SPECTRA = [(12_000, 512, 100), (7_001, 256, 50), (5_000, 1_000, 200)]
SCRIPT = """
pkg load signal
x = load("{path}");
w = 0.5 - 0.5 * cos(2 * pi * (0:{segment} - 1)' / {segment});
[p, f] = pwelch(x, w, 0.5, {segment}, {rate}, "onesided", "mean");
printf("%.17g\\n", p);
"""


def octave(folder, script):
    path = os.path.join(folder, "script.m")
    with open(path, "w", encoding="ascii") as file:
        file.write(script)
    done = subprocess.run(["octave-cli", "--no-gui", "--norc", "--quiet", path], capture_output=True, text=True,
                          check=False)
    if done.returncode != 0:
        raise SystemExit(f"octave: {done.stderr}")
    return [float(line) for line in done.stdout.split()]


def main():
    program = sys.argv[1]
    draw = random.Random(5)
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "x.txt")
        for length, segment, rate in SPECTRA:
            with open(path, "w", encoding="ascii") as file:
                file.write("".join(f"{draw.gauss(9.8, 1.3)!r}\n" for _ in range(length)))
            done = subprocess.run([program, "--json", "road", "psd", path, "--fs", str(rate), "--segment", str(segment)],
                                  capture_output=True, text=True, check=True)
            ours = json.loads(done.stdout)["density"]
            theirs = octave(folder, SCRIPT.format(path=path, segment=segment, rate=rate))
            if len(ours) != len(theirs):
                raise SystemExit(f"{len(ours)} lines against {len(theirs)}")
            worst = max(abs(a - b) / b for a, b in list(zip(ours, theirs))[1:])
            print(f"pwelch of {length} by {segment}: {worst:.1e} apart at worst")
            if not worst < 1e-9:
                raise SystemExit("too far apart")


main()
