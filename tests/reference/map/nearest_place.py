# SPDX-License-Identifier: Apache-2.0
"""The nearest named place of [GEONAMES] against looking at every one with GeographicLib's Python library (Debian's
python3-geographiclib), in an own reading of the file; the places against the coordinates that the time zone
database (Debian's tzdata, public domain) has of its cities; the map's projection against PROJ.

usage: nearest_place.py PLACE_PROBE PLACES_BIN"""
import math
import pathlib
import random
import re
import struct
import subprocess
import sys
import unicodedata

from geographiclib.geodesic import Geodesic

ZONES = pathlib.Path("/usr/share/zoneinfo/zone1970.tab")
# zones whose name in the database is that of a town in our file; each has to be found within APART
CITIES = """Auckland Berlin Anchorage Denver Phoenix Boise Winnipeg Halifax Lima Bogota Madrid Lisbon Paris Rome Vienna
Warsaw Athens Helsinki Nairobi Johannesburg Lagos Adelaide Perth Darwin Hobart Broken_Hill Tokyo Seoul""".split()
APART = 10.0  # km: the database gives whole minutes of arc, and both have their own idea of a middle
EARTH = 6371000.0


def varint(content, at):
    value = shift = 0
    while True:
        byte = content[at]
        value |= (byte & 127) << shift
        at, shift = at + 1, shift + 7
        if byte < 128:
            return (value >> 1) ^ -(value & 1), at


def read(path):
    content = path.read_bytes()
    assert content[:8] == b"SNUGPLC1"
    count, countries = struct.unpack_from("<IB", content, 8)
    at, latitude, longitude, places = 13 + 2 * countries, 0, 0, []
    for _ in range(count):
        step, at = varint(content, at)
        across, at = varint(content, at)
        latitude, longitude = latitude + step, longitude + across
        size = content[at + 2]
        places.append((latitude / 1000, longitude / 1000, content[at + 3:at + 3 + size].decode()))
        at += 3 + size
    assert at == len(content), "bytes are left"
    return places


def metres(a, b):
    return Geodesic.WGS84.Inverse(a[0], a[1], b[0], b[1])["s12"]


def solid(place):
    phi, lam = math.radians(place[0]), math.radians(place[1])
    return math.cos(phi) * math.cos(lam), math.cos(phi) * math.sin(lam), math.sin(phi)


def nearest(here, places, solids):
    """Every place by a sphere; those within 1.5 % of its nearest, more than a sphere errs, by the ellipsoid."""
    own = solid(here)
    angles = [2 * math.asin(min(1.0, math.dist(own, other) / 2)) for other in solids]
    limit = min(angles) * 1.015 + 1e-9
    return min((metres(here, places[i]), i) for i, angle in enumerate(angles) if angle <= limit)


def asked(places):
    draw = random.Random(41)
    for _ in range(120):
        yield math.degrees(math.asin(draw.uniform(-1, 1))), draw.uniform(-180, 180)
    for _ in range(200):
        latitude, longitude, _ = places[draw.randrange(len(places))]
        yield max(-90, min(90, latitude + draw.gauss(0, 0.2))), (longitude + draw.gauss(0, 0.2) + 180) % 360 - 180
    yield from ((90, 0), (-90, 0), (-17, 180), (-17, -180), (0, 0), (-54.8, -68.3))


def answers(probe, data, points):
    lines = "".join(f"{latitude!r} {longitude!r}\n" for latitude, longitude in points)
    done = subprocess.run([probe, data], input=lines, text=True, capture_output=True, check=True)
    return [line.split("\t") for line in done.stdout.splitlines()]


def compare(points, found, places, faults):
    solids = [solid(place) for place in places]
    for here, row in zip(points, found, strict=True):
        shortest, index = nearest(here, places, solids)
        told = float(row[2])
        if abs(told - shortest) > 1e-3:
            faults.append(f"{here}: {row[6]} at {told:.3f} m, but {places[index][2]} is at {shortest:.3f} m")
        way = Geodesic.WGS84.Inverse(float(row[0]), float(row[1]), *here)["azi1"] % 360
        if shortest > 1 and abs((float(row[3]) - way + 180) % 360 - 180) > 1e-6:
            faults.append(f"{here}: bearing {row[3]}, GeographicLib says {way}")


def degrees(sign, digits):
    value = int(digits[:-2]) + int(digits[-2:]) / 60 if len(digits) < 6 else (
        int(digits[:-4]) + int(digits[-4:-2]) / 60 + int(digits[-2:]) / 3600)
    return -value if sign == "-" else value


def bare(name):
    letters = unicodedata.normalize("NFD", name.replace("_", " ")).lower()
    return "".join(one for one in letters if one.isalpha() or one == " ")


def cities(places, faults):
    """The towns of zone1970.tab: name, and coordinates as +-DDMM+-DDDMM or with seconds."""
    lines = [line.split("\t") for line in ZONES.read_text().splitlines() if not line.startswith("#")]
    worst = met = 0
    for _, where, zone, *_ in lines:
        town = zone.split("/")[-1]
        if town not in CITIES:
            continue
        parts = re.fullmatch(r"([+-])(\d+)([+-])(\d+)", where)
        here = degrees(parts[1], parts[2]), degrees(parts[3], parts[4])
        same = [metres(here, place) / 1000 for place in places if bare(place[2]) == bare(town)]
        met += 1
        if not same or min(same) > APART:
            faults.append(f"{town}: the time zones have it at {here}, ours is {min(same, default=math.inf):.1f} km away")
        else:
            worst = max(worst, min(same))
    print(f"{met} cities of the time zones, the furthest {worst:.1f} km from ours")
    if met < len(CITIES):
        faults.append(f"only {met} of {len(CITIES)} cities are in {ZONES}")


def projection(points, found, faults):
    """Differences on our map, in kilometres at 40 N, against PROJ's in metres at the equator."""
    near = [i for i, (latitude, longitude) in enumerate(points) if abs(latitude) < 80 and -150 < longitude < 170]
    lines = "".join(f"{points[i][1]!r} {points[i][0]!r}\n" for i in near) + "20 40\n"
    done = subprocess.run(["proj", "-f", "%.6f", "+proj=merc", "+R=6371000"], input=lines, text=True,
                          capture_output=True, check=True)
    flat = [tuple(map(float, line.split())) for line in done.stdout.splitlines()]
    scale = math.cos(math.radians(40)) / 1000
    half = math.radians(30) * EARTH * scale
    for i, (x, y) in zip(near, flat[:-1], strict=True):
        theirs = half + (x - flat[-1][0]) * scale, half - (y - flat[-1][1]) * scale
        ours = float(found[i][4]), float(found[i][5])
        if math.dist(theirs, ours) > 1e-4:
            faults.append(f"{points[i]}: on the map at {ours}, PROJ says {theirs}")
    print(f"{len(near)} points on the map against PROJ")


def main():
    probe, data = sys.argv[1], pathlib.Path(sys.argv[2])
    places, faults = read(data), []
    points = list(asked(places))
    found = answers(probe, data, points)
    compare(points, found, places, faults)
    print(f"{len(points)} places against GeographicLib over all {len(places):,}")
    cities(places, faults)
    projection(points, found, faults)
    print("\n".join(faults) or "no faults")
    sys.exit(bool(faults))


main()
