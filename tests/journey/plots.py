# SPDX-License-Identifier: Apache-2.0
"""Plots of the demo rig: drawings read by Python's XML and drawn by librsvg (Debian: librsvg2-bin); bars and
shapes measured against the axis give the numbers back; months of weather worked out again here from the days that
`weather rig` tells, roads and costs from the trips and the table of mends.
usage: plots.py SNUGWALK SOURCE RSVG"""
import csv
import io
import math
import os
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET

from PIL import Image

from program import Failed, Program, check

NOW = ("--at", "2026-11-20T08:10:00+13:00")
SVG = "{http://www.w3.org/2000/svg}"
# SVG Tiny 1.2 has these, and every reader draws them
TINY = {"svg", "title", "desc", "rect", "g", "path", "text", "circle"}
GAMMA = {"sun": 0.5, "heat": 0.25}  # the two strongest drivers of the seal, as the catalogue lists them
# level lines lie in the middle of a pixel, so that they are crisp: a height is read that exactly
PIXEL = 0.75
INK, PAPER = "#1B1F23", "#fff"


def near(a, b, room, what):
    check(abs(a - b) <= room, f"{what}: {a} and {b}")


def drawing(program, name, *arguments):
    path = os.path.join(program.folder, name + ".svg")
    program.run(*NOW, *arguments, "--format", "svg", "--out", path)
    root = ET.parse(path).getroot()
    names = {element.tag.replace(SVG, "") for element in root.iter()}
    check(names <= TINY, f"{name}: elements beyond SVG Tiny: {names - TINY}")
    check(root.get("role") == "img" and root.get("aria-label"), f"{name}: nothing for who does not see it")
    for element in root.iter():
        check(not {"style", "class", "clip-path"} & set(element.attrib), f"{name}: {element.attrib}")
    return path, root


def spots(element):
    return [(float(x), float(y)) for x, y in re.findall(r"(-?[\d.]+) (-?[\d.]+)", element.get("d"))]


def scale(root):
    """What a height means, by the labels of the upright axis and the level lines beside them."""
    group = root.findall(f"{SVG}g/{SVG}g")[-1]
    levels = [spots(p)[0][1] for p in group.iter(f"{SVG}path") if p.get("stroke") == "#C8CCD0"]
    labels = [(float(t.get("y")), float(t.text.replace(",", ".").replace("\u202f", ""))) for t in group.iter(f"{SVG}text")
              if t.get("text-anchor") == "end" and re.fullmatch("-?[\\d.,\u202f]+", t.text)]
    check(len(levels) == len(labels) >= 3, f"{len(levels)} level lines, {len(labels)} labels")
    pairs = sorted(zip(sorted(levels), [value for _, value in sorted(labels)]))
    (y0, v0), (y1, v1) = pairs[0], pairs[-1]
    for y, value in pairs:
        near(v0 + (y - y0) * (v1 - v0) / (y1 - y0), value, (v0 - v1) / 200, "a label beside its line")
    return group, lambda y: v0 + (y - y0) * (v1 - v0) / (y1 - y0), abs(v1 - v0) / abs(y1 - y0)


def heights(group, value, fill):
    """Heights of bars by their areas, oldest first; the key above the field is left out."""
    foot = max(y for p in group.iter(f"{SVG}path") for _, y in spots(p) if p.get("stroke") == "#C8CCD0")
    bars = []
    for path in group.iter(f"{SVG}path"):
        corners = spots(path)
        if path.get("fill") == fill and len(corners) == 4 and path.get("stroke") is None:
            if abs(max(y for _, y in corners) - foot) < 1:
                bars.append((corners[0][0], value(min(y for _, y in corners))))
    return [height for _, height in sorted(bars)]


def weathering(program):
    path, root = drawing(program, "weathering", "plot", "--kind", "weathering")
    rows = program.json(*NOW, "plot", "--kind", "weathering")["plots"][0]["rows"]
    first = rows[0]["from"]
    told = program.json(*NOW, "weather", "rig", "--from", first, "--until", "2026-11-19")
    days = told["days"]
    check(sum(row["days"] for row in rows) == len(days), "days of the months are not those of the weather")
    check(sum(row["recorded_days"] for row in rows) == sum(day["recorded"] for day in days), "days with a record")
    at = 0
    for row in rows:
        month = days[at:at + int(row["days"])]
        at += len(month)
        aged = float(len(month))
        for driver, gamma in GAMMA.items():
            mean = sum(day[driver]["value"] for day in month) / len(month)
            aged *= min(4.0, max(0.25, mean)) ** gamma
        near(row["aged_days"], aged, 1e-6, f"weathering of {row['month']}")
        check(row["aged_low_days"] <= row["aged_days"] <= row["aged_high_days"], row["month"])
    group, value, step = scale(root)
    drawn = heights(group, value, PAPER)
    check(len(drawn) == len(rows), f"{len(drawn)} bars of {len(rows)} months")
    for bar, row in zip(drawn, rows):
        near(bar, row["aged_days"], step * PIXEL, f"bar of {row['month']}")
    return path


def shake(program):
    path, root = drawing(program, "shake", "plot", "--kind", "shake")
    rows = program.json(*NOW, "plot", "--kind", "shake")["plots"][0]["rows"]
    trips = program.json(*NOW, "trip", "list")["trips"]
    length = sum(trip["summary"]["length"]["value"] for trip in trips)
    near(sum(row["driven_m"] for row in rows), length, 1.0, "metres of the months and of the trips")
    check(sum(row["trips"] for row in rows) == len(trips), "trips of the months")
    # naming the road that a trip has already changes nothing and tells its shake
    shaken = sum(program.json(*NOW, "--by", "A. Walker", "trip", "road", trip["id"], trip["road"])["shake"]["equivalent"]["value"]
                 for trip in trips)
    near(sum(row["smooth_road_m"] for row in rows), shaken, 1.0, "shake of the months and of the trips")
    # a log axis: powers of ten at even steps
    group = root.findall(f"{SVG}g/{SVG}g")[-1]
    labels = sorted((float(t.get("y")), math.log10(float(t.text.replace("\u202f", "")))) for t in group.iter(f"{SVG}text")
                    if t.get("text-anchor") == "end")
    lines = sorted(spots(p)[0][1] for p in group.iter(f"{SVG}path") if p.get("stroke") == "#C8CCD0")
    check(len(lines) == len(labels) >= 3, f"{len(lines)} level lines, {len(labels)} labels")
    decade = (lines[-1] - lines[0]) / (labels[0][1] - labels[-1][1])
    for fill, key in ((INK, "driven_m"), ("#fff", "smooth_road_m")):
        dots = sorted((float(c.get("cx")), float(c.get("cy"))) for c in group.iter(f"{SVG}circle")
                      if c.get("fill") == fill and float(c.get("cy")) >= lines[0] - 1)
        told = [row[key] / 1000 for row in rows if row["driven_m"] > 0]
        check(len(dots) == len(told), f"{len(dots)} dots of {len(told)} months")
        for (_, y), km in zip(dots, told):
            near(labels[-1][1] + (lines[-1] - y) / decade, math.log10(km), PIXEL / decade, f"{key} drawn, as a power of ten")
    miles = program.run(*NOW, "--units", "us", "plot", "--kind", "shake")
    check(f"{length / 1609.344:.0f}\u00a0mi" in miles, f"{length / 1609.344:.0f} mi are not told: {miles[:200]}")
    return path


def cost(program):
    path, root = drawing(program, "cost", "plot", "--kind", "cost")
    rows = program.json(*NOW, "plot", "--kind", "cost")["plots"][0]["rows"]
    table = list(csv.DictReader(io.StringIO(program.run(*NOW, "report", "--format", "csv", "--list", "mends"))))
    sums = {}
    for mend in table:
        if mend["cost"]:
            currency, amount = mend["cost"].split(" ")
            check(currency == "NZD", mend["cost"])
            sums[int(mend["at"][:4])] = sums.get(int(mend["at"][:4]), 0.0) + float(amount)
    check(len(sums) >= 2, "the demo has too few costs to compare")
    check({int(row["year"]): round(row["cost"], 2) for row in rows if row["mends"]} ==
          {year: round(amount, 2) for year, amount in sums.items()}, f"{rows} {sums}")
    group, value, step = scale(root)
    drawn = heights(group, value, INK)
    check(len(drawn) == len([row for row in rows if row["cost"] > 0]), f"{len(drawn)} bars")
    for bar, row in zip(drawn, [row for row in rows if row["cost"] > 0]):
        near(bar, row["cost"], step * PIXEL, "a bar of a year")
    # what cannot be read is told, and another currency gets a plot of its own
    for words in ("a few dollars", "30 EUR", "1.250"):
        program.run(*NOW, "--by", "A. Walker", "mend", "--point", "tread-depth", "--action", "other", "--what", "x", "--cost", words)
    plots = program.json(*NOW, "plot", "--kind", "cost")["plots"]
    check([plot["rows"][0]["currency"] for plot in plots] == ["NZD", "EUR"], str(plots))
    notes = " ".join(plots[0]["notes"])
    check("a few dollars" in notes and "1.250" in notes, notes)
    program.refused(*NOW, "plot", "--kind", "cost", "--format", "svg", code=2, saying=["several"])
    return path


def concern(program):
    path, root = drawing(program, "concern", "plot", "--kind", "concern")
    rows = program.json(*NOW, "plot", "--kind", "concern")["plots"][0]["rows"]
    state = program.json(*NOW, "state")
    near(rows[-1]["concern"], state["worst"]["concern"]["value"], 0.051, "the last concern and the state's worst")
    check(rows[-1]["walk_kind"] == "" and rows[-1]["at"].startswith("2026-11-20"), str(rows[-1]))
    # as of an earlier walk it is what the state was at that time, all later entries left out
    for row in rows[-6:-1]:
        then = program.json("--at", row["at"], "state")
        near(row["concern"], then["worst"]["concern"]["value"], 0.051, f"concern at {row['at']}")
    return path


def reading(program):
    path, root = drawing(program, "reading", "plot", "--kind", "reading", "--point", "tread-depth", "--only", "wheel 1L")
    rows = program.json(*NOW, "plot", "--kind", "reading", "--point", "tread-depth", "--only", "wheel 1L")["plots"][0]["rows"]
    trend = [t for t in program.json(*NOW, "trend", "tread-depth", "--place", "wheel 1L")["trends"]][0]
    values = [point["value"] for point in trend["points"]]
    check([row["value"] for row in rows][-len(values):] == values, f"{rows} {trend['points']}")
    group, value, step = scale(root)
    dots = sorted((float(c.get("cx")), value(float(c.get("cy")))) for c in group.iter(f"{SVG}circle")
                  if c.get("fill") == INK)
    check(len(dots) == len(values), f"{len(dots)} dots of {len(values)} readings")
    for (_, dot), metres in zip(dots, values):
        near(dot, metres * 1000, step * PIXEL, "a dot in millimetres")
    return path


def rendered(rsvg, path, folder):
    """Drawn by librsvg: not empty, and all told without colour."""
    out = os.path.join(folder, os.path.basename(path) + ".png")
    subprocess.run([rsvg, "--width", "1280", "--output", out, path], check=True)
    grey = Image.open(out).convert("L")
    histogram = grey.histogram()
    dark, light = sum(histogram[:100]), sum(histogram[250:])
    check(dark > 2000 and light > dark, f"{path}: {dark} dark and {light} light dots")


def main():
    snugwalk, source, rsvg = sys.argv[1:4]
    with tempfile.TemporaryDirectory() as folder:
        program = Program(snugwalk, folder)
        program.run("demo", "--from", os.path.join(source, "demo-rig"))
        try:
            for path in (weathering(program), shake(program), concern(program), reading(program), cost(program)):
                rendered(rsvg, path, folder)
            table = list(csv.reader(io.StringIO(program.run(*NOW, "plot", "--kind", "shake", "--format", "csv"))))
            check(len(set(map(len, table))) == 1 and len(table) > 12, "the table of shake")
            program.refused(*NOW, "plot", "--kind", "shake", "--point", "tread-depth", code=2, saying=["--point"])
            program.refused(*NOW, "plot", "--kind", "concern", "--point", "no-such-point", code=4, saying=["no such point"])
        except Failed as failure:
            print("failed:", failure)
            return 1
    print("plots say what the logbook says")
    return 0


if __name__ == "__main__":
    sys.exit(main())
