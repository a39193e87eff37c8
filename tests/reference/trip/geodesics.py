# SPDX-License-Identifier: Apache-2.0
"""Distances and bearings against the test set of [KARNEY-2013]'s author as his Python library carries it, and
against that library (an implementation of its own) on seeded pairs, near and far, near the poles and antipodes.

usage: geodesics.py GEODESIC_PROBE"""
import random
import subprocess
import sys

from geographiclib.geodesic import Geodesic
from geographiclib.test.test_geodesic import GeodesicTest

METRES, DEGREES = 1e-6, 1e-9


def turned(longitude):
    return (longitude + 180) % 360 - 180


def test_set():
    """Rows of lat1, lon1, azi1, lat2, lon2, azi2, s12 and more."""
    for row in GeodesicTest.testcases:
        yield (row[0], turned(row[1]), row[3], turned(row[4])), row[6], row[2]


def pairs(count):
    draw = random.Random(20261128)
    for i in range(count):
        lat, lon = draw.uniform(-89.9, 89.9), draw.uniform(-180, 180)
        reach = (0.001, 0.1, 10, 180)[i % 4]
        other = max(-90, min(90, lat + draw.uniform(-reach, reach))) if i % 5 else -lat + draw.uniform(-0.3, 0.3)
        ends = (lat, lon, other, turned(lon + (draw.uniform(-reach, reach) if i % 5 else 179.8)))
        answer = Geodesic.WGS84.Inverse(*ends)
        yield ends, answer["s12"], answer["azi1"]


def check(probe, name, rows):
    rows = list(rows)
    lines = "".join(" ".join(repr(v) for v in ends) + "\n" for ends, _, _ in rows)
    done = subprocess.run([probe], input=lines, capture_output=True, text=True, check=True)
    answers = [tuple(map(float, line.split())) for line in done.stdout.splitlines()]
    if len(answers) != len(rows) or not rows:
        raise SystemExit(f"{name}: {len(answers)} answers to {len(rows)} rows")
    apart = max(abs(s - row[1]) for (s, _), row in zip(answers, rows))
    # a bearing is as sharp as the distance is long
    turn = max(abs(turned(azimuth - row[2])) / (1 + 6e7 / row[1]) for (_, azimuth), row in zip(answers, rows)
               if row[1] > 1)
    print(f"{name}: {len(rows)} rows, {apart:.1e} m and {turn:.1e} degrees apart at worst")
    if not (apart <= METRES and turn <= DEGREES):
        raise SystemExit(f"{name}: too far apart")


check(sys.argv[1], "test set", test_set())
check(sys.argv[1], "library", pairs(4000))
