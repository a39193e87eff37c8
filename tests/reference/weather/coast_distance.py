# SPDX-License-Identifier: Apache-2.0
"""Distances to the coast and land against another computation from the package's own file: the edges of
[NATURAL-EARTH] cut into short steps, the nearest of them by PROJ's geodesics; land by counting southwards.
coast_distance.py PROBE FOLDER GEOD."""
import json
import pathlib
import random
import subprocess
import sys

import numpy
from scipy.spatial import cKDTree

STEP = 500.0  # metres between points on an edge
PLACES = 100


def arcs(topology):
    """Every arc's edges in degrees: longitude, latitude, longitude, latitude, the second within half a turn."""
    scale, origin = (numpy.array(topology["transform"][key]) for key in ("scale", "translate"))
    for arc in topology["arcs"]:
        corners = numpy.cumsum(numpy.array(arc), 0) * scale + origin
        pairs = numpy.concatenate([corners[:-1], corners[1:]], 1)
        pairs[:, 2] -= 360.0 * numpy.round((pairs[:, 2] - pairs[:, 0]) / 360.0)
        yield pairs


def rings(topology, edges_of_arcs):
    """Every edge as often as rings use it: what two rings share cancels."""
    return numpy.concatenate([edges_of_arcs[i if i >= 0 else ~i]
                              for polygon in topology["objects"]["land"]["geometries"][0]["arcs"]
                              for ring in polygon for i in ring])


def without_cuts(table):
    """Edges along 180 degrees part land from land."""
    cut = (numpy.abs(numpy.abs(table[:, 0]) - 180.0) < 1e-9) & (numpy.abs(table[:, 2] - table[:, 0]) < 1e-9)
    return table[~cut]


def solid(latitude, longitude):
    """Metres in space on the WGS84 ellipsoid."""
    phi, lam = numpy.radians(latitude), numpy.radians(longitude)
    e2 = 6.69437999014e-3
    n = 6378137.0 / numpy.sqrt(1.0 - e2 * numpy.sin(phi) ** 2)
    return numpy.stack([n * numpy.cos(phi) * numpy.cos(lam), n * numpy.cos(phi) * numpy.sin(lam),
                        n * (1.0 - e2) * numpy.sin(phi)], -1)


def steps(table, length):
    """Points on every edge at most `length` apart, and the edge each belongs to."""
    size = numpy.linalg.norm(solid(table[:, 1], table[:, 0]) - solid(table[:, 3], table[:, 2]), axis=1)
    count = numpy.ceil(size / length).astype(int) + 1
    edge = numpy.repeat(numpy.arange(len(table)), count)
    inside = numpy.arange(len(edge)) - numpy.repeat(numpy.cumsum(count) - count, count)
    share = (inside / numpy.maximum(count[edge] - 1, 1))[:, None]
    return table[edge, :2] * (1 - share) + table[edge, 2:] * share, edge


def nearest(geod, place, tree, edge, table):
    """Metres by PROJ to the nearest of points 2 m apart on the edges that are nearest in space."""
    here = solid(*place)
    _, found = tree.query(here, k=60)
    fine, _ = steps(table[numpy.unique(edge[found])], 2.0)
    point = fine[numpy.argmin(numpy.linalg.norm(solid(fine[:, 1], fine[:, 0]) - here, axis=1))]
    line = f"{place[0]:.12f} {place[1]:.12f} {point[1]:.12f} {point[0]:.12f}\n"
    answer = subprocess.run([geod, "-I", "-F", "%.3f", "+ellps=WGS84"], input=line, text=True, capture_output=True,
                            check=True)
    return float(answer.stdout.split()[2])


def is_land(place, ring_edges):
    """Whether an even number of edges lies south of the place: the South Pole is land."""
    offset = (ring_edges[:, 0] - place[1] + 180.0) % 360.0 - 180.0
    end = offset + ring_edges[:, 2] - ring_edges[:, 0]
    crossed = (offset <= 0.0) != (end <= 0.0)
    share = -offset[crossed] / (end - offset)[crossed]
    low, high = ring_edges[crossed, 1], ring_edges[crossed, 3]
    at = low + share * (high - low)
    return (numpy.count_nonzero(at < place[0])) % 2 == 0


def chosen_places(table):
    """Anywhere on the globe, and within about 30 km of the coast."""
    chance = random.Random(7)
    for _ in range(PLACES):
        yield numpy.degrees(numpy.arcsin(chance.uniform(-1.0, 1.0))), chance.uniform(-180.0, 180.0)
    for _ in range(PLACES):
        longitude, latitude = table[chance.randrange(len(table)), :2]
        away = chance.gauss(0.0, 0.1)
        squeeze = max(0.1, numpy.cos(numpy.radians(latitude)))
        moved = longitude + chance.gauss(0.0, 0.1) / squeeze
        yield max(-90.0, min(90.0, latitude + away)), (moved + 180.0) % 360.0 - 180.0


def main():
    probe, folder, geod = sys.argv[1], pathlib.Path(sys.argv[2]), sys.argv[3]
    if not (folder / "list.tsv").exists():
        print(f"{folder} is empty: bash tests/real/fetch_climate.sh build/real-data")
        sys.exit(77)
    topology = json.loads((folder / "land-10m.json").read_text())
    edges_of_arcs = list(arcs(topology))
    ring_edges = rings(topology, edges_of_arcs)
    table = without_cuts(numpy.concatenate(edges_of_arcs))
    points, edge = steps(table, STEP)
    tree = cKDTree(solid(points[:, 1], points[:, 0]))
    places = list(chosen_places(table))
    asked = "".join(f"coast {latitude:.12f} {longitude:.12f}\n" for latitude, longitude in places)
    answers = subprocess.run([probe], input=asked, text=True, capture_output=True, check=True).stdout.splitlines()
    worst, faults, land = 0.0, 0, 0
    for place, answer in zip(places, answers, strict=True):
        ours, on_land = float(answer.split()[0]), answer.split()[1] == "1"
        theirs = nearest(geod, place, tree, edge, table)
        if theirs < 30e3:
            worst = max(worst, abs(ours - theirs))
        land += on_land
        if abs(ours - theirs) > 20.0 + 1e-4 * theirs:
            print(f"{place}: {ours:.0f} m, PROJ says {theirs:.0f} m")
            faults += 1
        if on_land != is_land(place, ring_edges):
            print(f"{place}: said to be {'land' if on_land else 'sea'}")
            faults += 1
    print(f"{len(places)} places, {land} on land; within {worst:.1f} m of PROJ where the sea is nearer than "
          f"30 km; {faults} faults")
    sys.exit(1 if faults or not 50 < land < 150 else 0)


main()
