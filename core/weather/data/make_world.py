#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""Makes climate.bin and coast.bin (see FORMAT.md) out of packages; run by hand, never by a build or CI.

    apt-get download marble-qt-data ferret-datasets      # 4:22.12.3-1 and 7.6.0-5
    dpkg-deb -x EACH.deb UNPACKED
    npm install --ignore-scripts world-atlas@2.0.2
    apt-get install python3-numpy python3-scipy python3-pil python3-netcdf4
    python3 make_world.py UNPACKED node_modules/world-atlas .

The same packages give the same bytes.
"""
import hashlib
import json
import pathlib
import struct
import sys

import netCDF4
import numpy as np
from PIL import Image, ImageDraw
from scipy.spatial import cKDTree

FINE = 6  # cells of the source a degree: 10 arc-minutes
CELL = 20  # arc-minutes of a stored cell
ROWS, COLUMNS, NORTH = 432, 1080, 84  # 84 N to 60 S
SEA_CELL, SEA_ROWS, SEA_COLUMNS, SEA_NORTH = 120, 72, 180, 84
MISSING = 255
FILES = {  # the first 16 digits of SHA-256, so that another release is noticed
    "temp-july/temp-july.jpg": "3ee5d6735cae993a", "temp-dec/temp-dec.jpg": "8ad34dd194eefe35",
    "precip-july/precip-july.jpg": "23f765418e1d3296", "precip-dec/precip-dec.jpg": "1ad87df0e1ccc574"}


# ---- reading what the packages hold -------------------------------------------------------------

def grey(folder, name):
    """One map of marble-qt-data: 1080 x 2160, row 0 at 90 N, column 0 at 180 W, 0..255."""
    path = folder / "usr/share/marble/data/maps/earth" / name
    found = hashlib.sha256(path.read_bytes()).hexdigest()[:16]
    if found != FILES[name]:
        sys.exit(f"{path}: SHA-256 starts {found}, not {FILES[name]}: another release; check the legend first")
    values = np.array(Image.open(path).convert("L"), dtype=float)
    values[:, 0] = values[:, 1]  # three of the maps have a frame along 180 W and the North Pole
    values[0] = values[1]
    return values


def temperature(folder, month):
    """Degrees Celsius. The legend's own line, -69 + grey * 111 / 255, is 0.5 to 1 K too cold against stations of
    the same years (218 in Colorado, 1961-90: -1.0 K) and against city means; this line was fitted to 42 city
    means (rms 0.65 K) and leaves -0.4 K there. About 1 K of doubt stays in it as a whole."""
    return 0.437 * grey(folder, f"temp-{month}/temp-{month}.jpg") - 68.73


def rain(folder, month):
    """Millimetres a month, between the steps of precipcolors.leg; saturates at about 1,000."""
    share = [0.0, 0.04, 0.16, 0.25, 0.35, 0.5, 0.75, 0.87, 0.93, 1.0]
    millimetres = [0, 10, 40, 63, 89, 127, 256, 512, 1024, 1024]
    return np.interp(grey(folder, f"precip-{month}/precip-{month}.jpg") / 255.0, share, millimetres)


def data_set(folder, name):
    return netCDF4.Dataset(folder / "usr/share/ferret-vis/data" / name)


def elevation(folder, land):
    """Mean height of the land in each 10-minute cell, laid out as the maps, from the 5-minute points of ETOPO5;
    `land` in 1/30 degree leaves out the sea's floor. 0 where no point is on land."""
    points = data_set(folder, "etopo5.cdf")["ROSE"][:].filled(np.nan)  # 2161 from 90 S, 4320 from 0 E
    points = np.roll(points[::-1], 2160, 1)  # from 90 N, 180 W, a point every 2.5 small cells
    row = np.minimum((np.arange(2161) * 2.5).astype(int), land.shape[0] - 1)
    dry = land[np.ix_(row, (np.arange(4320) * 2.5).astype(int))].astype(float)
    height, weight = cell_sums(points * dry), cell_sums(dry)
    return np.where(weight > 0.0, height / np.maximum(weight, 1e-9), 0.0)


def cell_sums(points):
    """Of the nine points in and on the edge of each cell, those of the edge shared with the neighbours."""
    points = np.concatenate([points, points[:, :1]], 1)
    weights = (0.25, 0.5, 0.25)
    across = sum(w * points[:, k:k + 4320:2][:, :2160] for k, w in enumerate(weights))
    return sum(w * across[k:k + 2160:2][:1080] for k, w in enumerate(weights))


def rings(atlas, level):
    """Closed rings of whole numbers without the closing point, longitude running on over 180 degrees; and the
    transform to degrees (scale and origin of x, of y)."""
    topology = json.loads((atlas / f"land-{level}.json").read_text())
    (scale_x, scale_y), (x0, y0) = topology["transform"]["scale"], topology["transform"]["translate"]
    turn = round(360.0 / scale_x)
    arcs = []
    for arc in topology["arcs"]:
        x = y = 0
        arcs.append([(x := x + dx, y := y + dy) for dx, dy in arc])
    found = []
    for polygon in topology["objects"]["land"]["geometries"][0]["arcs"]:
        for indices in polygon:
            points = []
            for i in indices:
                arc = arcs[i] if i >= 0 else arcs[~i][::-1]
                points += arc if not points else arc[1:]
            if max(y for _, y in points) * scale_y + y0 < -89.9:
                continue  # the South Pole drawn as a line
            ring = points[:1]
            for x, y in points[1:]:
                x += round((ring[-1][0] - x) / turn) * turn
                if (x, y) != ring[-1]:
                    ring.append((x, y))
            if ring[-1] == ring[0]:
                ring.pop()
            if len(ring) >= 3:
                found.append(ring)
    return found, (scale_x, x0, scale_y, y0)


# ---- land and the sea -----------------------------------------------------------------------------

def on_land(ring_list, transform, per_degree=30):
    """True where a cell of 1/30 degree has its middle on land."""
    scale_x, x0, scale_y, y0 = transform
    width, height = 360 * per_degree, 180 * per_degree
    image = Image.new("1", (width, height))
    draw = ImageDraw.Draw(image)
    for ring in sorted(ring_list, key=len, reverse=True):
        line = [((x * scale_x + x0 + 180) * per_degree, (90 - y * scale_y - y0) * per_degree) for x, y in ring]
        turned = abs(line[-1][0] - line[0][0]) > width / 2
        if turned:  # round the pole
            line += [(line[-1][0], height), (line[0][0], height)]
        hole = signed_area(line) < 0 and not turned  # y runs down, so land turns to the positive side
        for shift in (-width, 0, width):
            moved = [(x + shift, y) for x, y in line]
            if min(x for x, _ in moved) < width and max(x for x, _ in moved) > 0:
                draw.polygon(moved, fill=0 if hole else 1, outline=None)
    return np.asarray(image)


def signed_area(line):
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(line, line[1:] + line[:1]))


def on_sphere(latitude, longitude):
    a, b = np.radians(latitude), np.radians(longitude)
    return np.stack([np.cos(a) * np.cos(b), np.cos(a) * np.sin(b), np.sin(a)], -1)


def sea_distance(ring_list, transform, latitude, longitude):
    """Kilometres from each place to the nearest corner of the coast, on a sphere; Natural Earth 10m has a corner
    every few kilometres."""
    scale_x, x0, scale_y, y0 = transform
    corners = np.array([(y * scale_y + y0, x * scale_x + x0) for ring in ring_list for x, y in ring])
    chord = cKDTree(on_sphere(corners[:, 0], corners[:, 1])).query(on_sphere(latitude, longitude))[0]
    return 2 * 6371.0 * np.arcsin(np.minimum(1.0, chord / 2))


def blocks(grid, size):
    return grid.reshape(grid.shape[0] // size, size, grid.shape[1] // size, size)


def land_mean(grid, land, size):
    """Mean over the land in each block, or over all of it where there is none."""
    count = blocks(land, size).sum((1, 3))
    total = blocks(np.where(land, grid, 0.0), size).sum((1, 3))
    return np.where(count > 0, total / np.maximum(count, 1), blocks(grid, size).mean((1, 3)))


def widened(mask):
    """A cell more all round."""
    padded = np.pad(np.pad(mask, ((0, 0), (1, 1)), mode="wrap"), ((1, 1), (0, 0)))
    return np.logical_or.reduce([padded[i:i + mask.shape[0], j:j + mask.shape[1]]
                                 for i in range(3) for j in range(3)])


# ---- the air over the sea ---------------------------------------------------------------------------

def sea_humidity(folder):
    """Relative humidity over the sea in percent, month by cell from 84 N and 180 W, spread a little over land."""
    data = data_set(folder, "coads_climatology.cdf")
    specific = np.ma.filled(data["SPEH"][:].astype(float), np.nan)
    air = np.ma.filled(data["AIRT"][:].astype(float), np.nan)
    wrong = ~(np.abs(specific) < 100) | ~(np.abs(air) < 100)
    share = np.where(wrong, np.nan, specific) / 1000.0
    vapor = share * 1013.25 / (0.622 + 0.378 * share)  # hPa at sea level
    percent = 100.0 * vapor / (6.1094 * np.exp(17.625 * air / (243.04 + air)))
    percent = np.where(wrong, np.nan, np.clip(percent, 0.0, 100.0))
    # first column is 20..22 E, first row 90..88 S; ours begin at 180 W and at the north
    first = int(round((float(data["COADSX"][0]) - 1.0 + 180.0) / 2.0))
    percent = np.roll(percent[:, ::-1], first, axis=2)
    top = (90 - SEA_NORTH) // 2
    return [spread(month)[top:top + SEA_ROWS] for month in percent]


def spread(month, cells=3):
    """Fills each empty cell that has sea within three cells by their mean weighted with 1 / distance squared."""
    filled = month.copy()
    for row, column in zip(*np.nonzero(np.isnan(month))):
        weight = value = 0.0
        for i in range(max(0, row - cells), min(month.shape[0], row + cells + 1)):
            squeeze = max(0.2, np.cos(np.radians(89.0 - 2.0 * row)))
            for j in range(column - cells, column + cells + 1):
                here = month[i, j % month.shape[1]]
                if not np.isnan(here):
                    w = 1.0 / ((i - row) ** 2 + ((j - column) * squeeze) ** 2)
                    weight, value = weight + w, value + w * here
        if weight > 0.0:
            filled[row, column] = value / weight
    return filled


# ---- writing ----------------------------------------------------------------------------------------

def runs(row):
    edges = np.flatnonzero(np.diff(np.concatenate([[0], row.astype(np.int8), [0]])))
    return list(zip(edges[::2], edges[1::2] - edges[::2]))


def climate(folder, ring_list, transform):
    fine_land = on_land(ring_list, transform)
    land = blocks(fine_land, 30 // FINE).mean((1, 3)) > 0.5  # on the 10 minutes of the maps
    height = np.clip(np.where(land, elevation(folder, fine_land), 0.0), -450.0, 7200.0)
    size = CELL // 10
    layers = [land_mean(temperature(folder, m), land, size) for m in ("july", "dec")]
    codes = [np.round((layer + 70.0) / 0.5) for layer in layers]
    codes += [np.minimum(255, np.round(8.0 * np.sqrt(land_mean(rain(folder, m), land, size)))) for m in ("july", "dec")]
    middle = 60.0 / CELL
    latitude = 90.0 - (np.arange(180 * middle) + 0.5) / middle
    longitude = -180.0 + (np.arange(360 * middle) + 0.5) / middle
    grid = np.meshgrid(latitude, longitude, indexing="ij")
    inland = fine_land[(np.floor((90.0 - grid[0]) * 30)).astype(int), (np.floor((grid[1] + 180.0) * 30)).astype(int)]
    away = np.where(inland, sea_distance(ring_list, transform, *grid), 0.0)
    # ETOPO5 puts the sea's floor under some shores (Hilo: -150 m), so low ground counts only away from them
    stored = land_mean(height, land, size)
    stored = np.where(away < 30.0, np.maximum(stored, 0.0), stored)
    codes += [np.round((stored + 450.0) / 30.0), np.round(32.0 * np.log1p(away / 10.0))]
    # any land at all, also an island that no middle of a small cell meets, and one cell around it
    present = blocks(fine_land, 30 * CELL // 60).any((1, 3))
    scale_x, x0, scale_y, y0 = transform
    for ring in ring_list:
        for x, y in ring:
            row = min(int((90.0 - y * scale_y - y0) * middle), present.shape[0] - 1)
            present[row, int((x * scale_x + x0 + 180.0) * middle) % COLUMNS] = True
    land_cells = present.copy()
    present = widened(present)
    top = int((90 - NORTH) * middle)
    cut = slice(top, top + ROWS)
    out = [b"SNUGCLI1", struct.pack("<HHhH", ROWS, COLUMNS, NORTH, CELL),
           struct.pack("<I", int(present[cut].sum())),
           struct.pack("<HHhH", SEA_ROWS, SEA_COLUMNS, SEA_NORTH, SEA_CELL)]
    for row in present[cut]:
        found = runs(row)
        out.append(struct.pack("<H", len(found)))
        out += [struct.pack("<HH", int(start), int(length)) for start, length in found]
    planes = codes + [land_cells.astype(float)]
    for plane in planes:
        assert plane[cut][present[cut]].min() >= 0 and plane[cut][present[cut]].max() <= 255
        out.append(plane[cut][present[cut]].astype(np.uint8).tobytes())
    for month in sea_humidity(folder):
        out.append(np.where(np.isnan(month), MISSING, np.round(month)).astype(np.uint8).tobytes())
    return b"".join(out)


def varint(value):
    value = (value << 1) ^ (value >> 63)
    out = bytearray()
    while value > 127:
        out.append(value & 127 | 128)
        value >>= 7
    out.append(value)
    return bytes(out)


def coast_level(ring_list, transform):
    scale_x, x0, scale_y, y0 = transform
    body = bytearray()
    for ring in sorted(ring_list, key=len, reverse=True):
        body += struct.pack("<I", len(ring))
        x = y = 0
        for to_x, to_y in ring:
            body += varint(to_x - x) + varint(to_y - y)
            x, y = to_x, to_y
    points = sum(len(ring) for ring in ring_list)
    return struct.pack("<ddddIII", scale_x, x0, scale_y, y0, len(ring_list), points, len(body)) + bytes(body)


def main():
    if len(sys.argv) != 4:
        sys.exit(__doc__)
    folder, atlas, to = (pathlib.Path(argument) for argument in sys.argv[1:])
    levels = [rings(atlas, name) for name in ("50m", "10m")]
    files = {"climate.bin": climate(folder, *levels[1]),
             "coast.bin": b"SNUGCST1" + struct.pack("<I", len(levels)) + b"".join(coast_level(*l) for l in levels)}
    for name, content in files.items():
        (to / name).write_bytes(content)
        print(f"{name}: {len(content):,} bytes, SHA-256 {hashlib.sha256(content).hexdigest()}")


main()
