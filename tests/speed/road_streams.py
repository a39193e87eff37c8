# SPDX-License-Identifier: Apache-2.0
"""A day at 100 Hz, three axes: spectra, rainflow, damage and roughness in one pass by our stream, against
SciPy's Welch alone on the same samples. Processor seconds of both, alternating in one run, warm, medians; goal 5
times faster. Peak memory of a tenth and of the whole day. Our time holds the reading of the file, SciPy's does not.

usage: road_streams.py STREAMS FOLDER [SAMPLES]"""
import json
import os
import statistics
import subprocess
import sys
import time

import numpy as np
from scipy import signal

RATE, SEGMENT, ROUNDS = 100, 1024, 7


def made_up(samples):
    """Noise through a body's resonance, with gravity on a tilted sensor."""
    rng = np.random.default_rng(11)
    noise = rng.standard_normal((samples, 3))
    shaking = signal.lfilter([0.3], [1, -1.2, 0.8], noise, axis=0)
    return shaking + 9.80665 * np.array([0.36, 0.48, 0.8])


def stream(program, path, samples, axes=3):
    done = subprocess.run([program, path, str(samples), str(axes)], capture_output=True, text=True, check=True)
    return json.loads(done.stdout)


def scipy_seconds(columns):
    begin = time.process_time()
    densities = [signal.welch(column, RATE, nperseg=SEGMENT)[1] for column in columns]
    return time.process_time() - begin, densities


def compare(program, path, samples, columns, axes):
    ours, theirs = [], []
    for round_number in range(ROUNDS + 1):
        seconds, densities = scipy_seconds(columns[:axes])
        answer = stream(program, path, samples, axes)
        worst = max(np.max(np.abs(np.array(o) - d)[1:] / d[1:]) for o, d in zip(answer["density"], densities))
        if not worst < 1e-9:
            raise SystemExit(f"spectra {worst} apart")
        if round_number > 0:  # the first warms up
            ours.append(answer["seconds"])
            theirs.append(seconds)
    ours, theirs = statistics.median(ours), statistics.median(theirs)
    print(f"{samples} samples, spectra of {axes} of 3 axes: everything {ours:.3f} s "
          f"({1e9 * ours / samples:.1f} ns a sample of three), SciPy's Welch alone {theirs:.3f} s, "
          f"ratio {theirs / ours:.2f} (goal 5)")


def main():
    program, folder = sys.argv[1:3]
    samples = int(sys.argv[3]) if len(sys.argv) > 3 else 8_640_000
    path = os.path.join(folder, "road_streams.f64")
    try:
        data = made_up(samples)
        data.tofile(path)
        columns = [np.ascontiguousarray(data[:, i]) for i in range(3)]
        del data
        compare(program, path, samples, columns, 3)
        compare(program, path, samples, columns, 1)
        tenth, whole = stream(program, path, samples // 10), stream(program, path, samples)
        print(f"peak memory: {tenth['peak_kilobytes']} KiB for a tenth, {whole['peak_kilobytes']} KiB for the whole")
        print(f"roughness {whole['median']:.2f} m/km in {whole['windows']} stretches, level {whole['level']:.3f} m/s2")
        return 0 if whole["peak_kilobytes"] < 1.1 * tenth["peak_kilobytes"] else 1
    finally:
        if os.path.exists(path):
            os.remove(path)


sys.exit(main())
