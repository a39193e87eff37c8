# SPDX-License-Identifier: Apache-2.0
"""Spectra, filtered shaking and the golden car by the command line against SciPy: [WELCH-1967] and
[BUTTERWORTH-1930] as SciPy has them, on series of seeded noise.

usage: road_scipy.py SNUGWALK"""
import json
import os
import subprocess
import sys
import tempfile

import numpy as np
from scipy import linalg, signal

TIGHT = 1e-9


class Failed(Exception):
    pass


def ask(program, *arguments):
    done = subprocess.run([program, "--json", *map(str, arguments)], capture_output=True, text=True, check=False)
    if done.returncode != 0:
        raise Failed(f"{arguments}: {done.stderr}")
    return json.loads(done.stdout)


def close(what, ours, theirs, tolerance=TIGHT, floor=0.0):
    ours, theirs = np.asarray(ours), np.asarray(theirs)
    if ours.shape != theirs.shape:
        raise Failed(f"{what}: {ours.shape} figures against {theirs.shape}")
    worst = np.max(np.abs(ours - theirs) / np.maximum(np.abs(theirs), floor + 1e-300))
    print(f"{what}: {worst:.1e} apart at worst, {ours.size} figures")
    if not worst <= tolerance:
        raise Failed(f"{what}: {worst} apart, allowed {tolerance}")


def written(folder, name, values):
    path = os.path.join(folder, name)
    with open(path, "w", encoding="ascii") as file:
        file.write("\n".join(repr(float(v)) for v in values) + "\n")
    return path


def spectra(program, folder, rng):
    for length, segment, fs in [(20_000, 256, 100), (20_001, 512, 50), (9_999, 1000, 400), (5_000, 333, 100),
                                (4_096, 4_096, 100), (1_500, 1_024, 100), (300, 1_024, 100), (10_007, 97, 31.25)]:
        x = rng.normal(9.8, 1.3, length).cumsum() * 0.01 + rng.normal(0, 1, length)
        ours = ask(program, "road", "psd", written(folder, "x.txt", x), "--fs", fs, "--segment", segment)
        f, p = signal.welch(x, fs, nperseg=min(segment, length))
        close(f"frequencies {length}/{segment}", ours["frequency"][1:], f[1:])
        # the line at 0 is what rounding leaves of a mean taken off
        close(f"density {length}/{segment}", ours["density"], p, floor=1e-12)


def vertical_of(samples, fs):
    """Gravity by the same low-pass, begun at the mean of the first half second."""
    share = -np.expm1(-1.0 / (10.0 * fs))
    begin = samples[:int(round(fs / 2))].mean(axis=0)
    gravity = np.stack([signal.lfilter([share], [1.0, share - 1.0], samples[:, i], zi=[(1 - share) * begin[i]])[0]
                        for i in range(3)], axis=1)
    return np.sum((samples - gravity) * gravity, axis=1) / np.linalg.norm(gravity, axis=1)


def shaking(program, folder, rng):
    for fs in (50, 100, 200):
        n = 60 * fs
        samples = rng.normal(0, 0.8, (n, 3)) + 9.80665 * np.array([0.36, 0.48, 0.8])
        path = os.path.join(folder, "log.csv")
        with open(path, "w", encoding="ascii") as file:
            file.write("time,x (m/s2),y (m/s2),z (m/s2)\n")
            for i, row in enumerate(samples):
                file.write(",".join(repr(float(v)) for v in (i / fs, *row)) + "\n")
        ours = ask(program, "road", "roughness", path, "--speed", "72", "--windows")
        sos = signal.butter(4, [0.5, 20], btype="band", fs=fs, output="sos")
        filtered = signal.sosfilt(sos, vertical_of(samples, fs))
        theirs = []
        for stretch in ours["stretches"]:
            window = filtered[int(round(stretch["from"] * fs)):int(round(stretch["to"] * fs))]
            theirs.append(np.sqrt(np.mean(window ** 2)))
        if len(theirs) < 10:
            raise Failed(f"only {len(theirs)} stretches at {fs} Hz")
        close(f"rms of the filtered vertical at {fs} Hz", [s["rms"] for s in ours["stretches"]], theirs)


def golden_car(program, folder, rng):
    k1, k2, c, u, v = 653.0, 63.3, 6.0, 0.15, 80 / 3.6
    a = np.array([[0, 1, 0, 0], [-k2, -c, k2, c], [0, 0, 0, 1], [k2 / u, c / u, -(k1 + k2) / u, -c / u]])
    b = np.array([0, 0, 0, k1 / u])
    for dx in (0.05, 0.1, 0.25, 0.3, 0.6):
        y = rng.normal(0, 0.002, 4_000).cumsum() * np.sqrt(dx)
        s = linalg.expm(a * dx / v)
        p = np.linalg.solve(a, (s - np.eye(4)) @ b)
        k = int(np.floor(0.25 / dx + 0.5)) if dx < 0.167 else 1
        slopes = (y[k:] - y[:-k]) / (k * dx)
        start = slopes[:int(round(11 / dx))].mean()
        x, total = np.array([start, 0, start, 0]), 0.0
        for slope in slopes:
            x = s @ x + p * slope
            total += abs(x[0] - x[2])
        ours = ask(program, "road", "iri", written(folder, "y.txt", y), "--dx", dx)
        close(f"index at {dx} m", [ours["value"]], [1000 * total / len(slopes)])


def main():
    program = sys.argv[1]
    rng = np.random.default_rng(20261128)
    with tempfile.TemporaryDirectory() as folder:
        try:
            spectra(program, folder, rng)
            shaking(program, folder, rng)
            golden_car(program, folder, rng)
        except Failed as failed:
            print(f"failed: {failed}")
            return 1
    return 0


sys.exit(main())
