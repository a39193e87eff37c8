# SPDX-License-Identifier: Apache-2.0
"""How far our coast lies from a finer one that others drew from other maps: GSHHG, high resolution, outer shores
between 60 S and 60 N. coast_accuracy.py PROBE FOLDER."""
import pathlib
import subprocess
import sys

import h5py
import numpy
from scipy.spatial import cKDTree

RADIUS = 6371.0  # km
BIN = 2.0  # degrees
SAMPLE = 3000


def outer_shores(path):
    """Latitude and longitude of every point of a shore between land and sea."""
    with h5py.File(path) as file:
        read = {name: file[name][:] for name in file}
    segments = read["Embedded_npts_levels_exit_entry_for_a_segment"]
    count, level = segments >> 9, (segments >> 6) & 7
    owner = numpy.repeat(numpy.arange(len(read["N_segments_in_a_bin"])), read["N_segments_in_a_bin"])
    keep = numpy.repeat(level == 1, count)
    row, column = numpy.divmod(numpy.repeat(owner, count)[keep], int(360 / BIN))
    inside = [read[f"Relative_{name}_from_SW_corner_of_bin"].astype(numpy.uint16)[keep] * BIN / 65535
              for name in ("latitude", "longitude")]
    latitude = 90.0 - BIN * (row + 1) + inside[0]
    return numpy.stack([latitude, (column * BIN + inside[1] + 180.0) % 360.0 - 180.0], 1)[numpy.abs(latitude) < 60]


def solid(places):
    phi, lam = numpy.radians(places).T
    return RADIUS * numpy.stack([numpy.cos(phi) * numpy.cos(lam), numpy.cos(phi) * numpy.sin(lam), numpy.sin(phi)], 1)


def ours(probe, places):
    """Kilometres to our coast."""
    asked = "".join(f"coast {latitude:.9f} {longitude:.9f}\n" for latitude, longitude in places)
    answers = subprocess.run([probe], input=asked, text=True, capture_output=True, check=True).stdout.splitlines()
    return numpy.array([float(answer.split()[0]) / 1000.0 for answer in answers])


def main():
    probe, folder = sys.argv[1], pathlib.Path(sys.argv[2])
    if not (folder / "list.tsv").exists():
        print(f"{folder} is empty: bash tests/real/fetch_climate.sh build/real-data")
        sys.exit(77)
    shores = outer_shores(folder / "binned_GSHHS_h.nc")
    chance = numpy.random.default_rng(3)
    places = shores[chance.choice(len(shores), SAMPLE, replace=False)] + chance.normal(0.0, 0.1, (SAMPLE, 2))
    theirs = cKDTree(solid(shores)).query(solid(places))[0]
    error = numpy.abs(ours(probe, places) - theirs)
    half, most, nearly_all = numpy.percentile(error, [50, 80, 95])
    print(f"{SAMPLE} places up to 30 km from {len(shores):,} points of shore: half of our distances within "
          f"{half:.1f} km, 8 in 10 within {most:.1f} km, 19 in 20 within {nearly_all:.1f} km")
    # what Coast::distanceTo declares
    sys.exit(0 if half <= 1.0 and most <= 3.5 and nearly_all <= 13.0 and len(shores) > 1_000_000 else 1)


main()
