# SPDX-License-Identifier: Apache-2.0
"""Weibull fits side by side in one run: ours and R's survreg, warm, by turns, median of 15.

usage: weibull_fits.py WEIBULL_FITS RSCRIPT"""
import pathlib
import statistics
import subprocess
import sys

ROUNDS = 15


class Peer:
    def __init__(self, *command):
        self.process = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)

    def seconds(self, name, count):
        print(name, count, file=self.process.stdin, flush=True)
        line = self.process.stdout.readline()
        if not line:
            sys.exit(f"{self.process.args[0]} ended on {name}")
        return float(line)

    def end(self):
        self.process.stdin.close()
        self.process.wait()


def main():
    ours = Peer(sys.argv[1])
    theirs = Peer(sys.argv[2], str(pathlib.Path(__file__).parent / "survreg.R"))
    for name in ("cracks", "four_lives"):
        mine, other = [], []
        for _ in range(ROUNDS + 1):  # the first round warms up
            mine.append(ours.seconds(name, 500))
            other.append(theirs.seconds(name, 20))
        a, b = statistics.median(mine[1:]), statistics.median(other[1:])
        print(f"{name}: fit {a * 1e6:.1f} us, survreg {b * 1e6:.0f} us, ratio {b / a:.0f}")
    for name in ("grid", "coarse_grid"):
        took = statistics.median([ours.seconds(name, 50) for _ in range(ROUNDS + 1)][1:])
        print(f"{name}: five lives, 54 looks, {took * 1e6:.0f} us a point, survreg of four lives / this "
              f"{b / took:.0f}")
    bands = int(ours.seconds("bands_counted", 1))
    mine, other = [], []
    for _ in range(ROUNDS + 1):
        mine.append(ours.seconds("bands", 1))
        other.append(theirs.seconds("four_lives", bands) * bands)
    a, b = statistics.median(mine[1:]), statistics.median(other[1:])
    print(f"rig: all {bands} due bands {a * 1e3:.1f} ms, as many survreg fits {b * 1e3:.0f} ms, ratio {b / a:.0f} (goal 5)")
    ours.end()
    theirs.end()


main()
