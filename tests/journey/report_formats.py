# SPDX-License-Identifier: Apache-2.0
"""Every kind of document of the demo rig as text, and its lists in open formats, read by readers of other hands:
Python's csv, python3-geojson and python3-shapely (Debian), and libical through ical_reader."""
import csv
import datetime
import io
import json
import os
import re
import subprocess
import sys
import tempfile

import geojson
import shapely.geometry

from program import Failed, Program, check

NOW = ("--at", "2026-11-20T08:10:00+13:00")
TODAY = datetime.date(2026, 11, 20)
# No place of the demo lies outside New Zealand, so a swapped pair would.
NORTH, SOUTH, WEST, EAST = -34.0, -48.0, 166.0, 179.0
COORDINATE = re.compile(r"-4[0-9]\.\d{2}|\b1[67]\d\.\d{2}")


def written(program, name, *arguments):
    path = os.path.join(program.folder, name)
    program.run(*NOW, "report", "--out", path, *arguments)
    with open(path, "rb") as file:
        return file.read()


def table(program, name, *arguments):
    data = written(program, name + ".csv", "--format", "csv", "--list", name, *arguments)
    check(data.endswith(b"\r\n"), f"{name}: the last line does not end in CRLF")
    check(b"\x00" not in data, f"{name}: a NUL")
    rows = list(csv.reader(io.StringIO(data.decode("utf-8"), newline=""), strict=True))
    check(len(set(map(len, rows))) == 1, f"{name}: rows of different lengths")
    check(len(set(rows[0])) == len(rows[0]), f"{name}: a column stands twice")
    return [dict(zip(rows[0], row)) for row in rows[1:]]


def comma_separated(program):
    findings = table(program, "findings")
    known = {f["id"] for f in program.json(*NOW, "finding", "list", "--all")["findings"]}
    check({f["finding"] for f in findings} == known and known, "findings are not those of the logbook")
    check("latitude" not in findings[0], "a place nobody asked for")
    exact = table(program, "findings", "--place", "exact")
    check("latitude" in exact[0], "no place though asked for")
    due = {b["point"]: b for b in program.json(*NOW, "due", "--all")["due"]}
    dates = table(program, "dates")
    check({d["point"] for d in dates} == set(due), "dates are not those of the due list")
    for date in dates:
        check(date["likely"] == (due[date["point"]]["likely"] or ""), f"{date['point']}: likely {date['likely']}")
    check(len(table(program, "mends")) >= 3, "mends are missing")
    marks = table(program, "marks")
    check({"pass", "attention"} <= {m["mark"] for m in marks}, "marks are missing")
    for mark in marks:
        check(bool(mark["value"]) == bool(mark["reading"]) and (not mark["value"] or float(mark["value"]) == float(mark["value"])),
              f"{mark['point']}: value {mark['value']}")
    table(program, "marks", "--place", "coarse")


def every_position(coordinates):
    if isinstance(coordinates[0], (int, float)):
        yield coordinates
    else:
        for part in coordinates:
            yield from every_position(part)


def features(program, *arguments):
    text = written(program, "map.geojson", "--format", "geojson", *arguments).decode("utf-8")
    collection = geojson.loads(text)
    check(isinstance(collection, geojson.FeatureCollection) and collection.is_valid, f"{collection.errors()}")
    check("crs" not in collection, "a coordinate system of its own")
    for feature in json.loads(text, parse_float=str)["features"]:
        written_as = json.dumps((feature["geometry"] or {}).get("coordinates"))
        check(not re.search(r"\.\d{8}", written_as), f"{feature['id']}: more than seven digits")
    return collection["features"]


def on_the_map(program):
    left_out = features(program)
    check(left_out and all(f["geometry"] is None for f in left_out), "a place nobody asked for")
    known = {f["id"] for f in program.json(*NOW, "finding", "list", "--all")["findings"]}
    kept = program.json("trip", "list")
    there = len(known) + len(kept["trips"]) + len(kept["stays"])
    check(kept["stays"] and len(left_out) == there, "not one feature a finding, a trip and a stay")
    seen = {}
    for detail in ("coarse", "exact"):
        placed = [f for f in features(program, "--place", detail) if f["geometry"] is not None]
        check(placed, f"{detail}: no place at all")
        for feature in placed:
            shape = shapely.geometry.shape(feature["geometry"])
            check(shape.is_valid and not shape.is_empty, f"{feature['id']}: {shape}")
            check(feature["properties"]["place_detail"] == detail, "the detail is not said")
            for position in every_position(feature["geometry"]["coordinates"]):
                check(len(position) == 2, "a height, or none of the two")
                check(WEST < position[0] < EAST and SOUTH < position[1] < NORTH, f"{position} is elsewhere")
        seen[detail] = {f["id"]: f["geometry"] for f in placed}
    check(set(seen["coarse"]) == set(seen["exact"]), "coarse leaves out others than exact")
    for name, geometry in seen["coarse"].items():
        for position in every_position(geometry["coordinates"]):
            check(all(round(part, 2) == part for part in position), f"{name}: {position} is not coarse")


def calendar(program, reader):
    data = written(program, "dates.ics", "--format", "ics", "--days", "60")
    told = subprocess.run([reader], input=data, capture_output=True, check=False)
    check(told.returncode == 0, f"libical: {told.stderr.decode()}")
    events = {}
    for line in told.stdout.decode("utf-8").rstrip("\n").split("\n"):
        uid, day, whole, alarm, summary = line.split("\t")
        check(whole == "1" and uid not in events, f"{uid}: not a whole day, or twice")
        events[uid.split(".")[0]] = (datetime.date.fromisoformat(day), int(alarm), summary)
    horizon = TODAY + datetime.timedelta(days=60)
    bands = {b["point"]: b for b in program.json(*NOW, "due")["due"]
             if b["early"] and datetime.date.fromisoformat(b["early"]) <= horizon}
    check(set(events) == set(bands) and events, "events are not the dates of the next 60 days")
    for point, (day, alarm, summary) in events.items():
        likely = max(datetime.date.fromisoformat(bands[point]["likely"]), TODAY)
        check(day == likely, f"{point}: on {day}, likely {likely}")
        rings = datetime.datetime.combine(day, datetime.time()) + datetime.timedelta(seconds=alarm)
        wanted = max(datetime.date.fromisoformat(bands[point]["alert"]), TODAY)
        check(rings == datetime.datetime.combine(wanted, datetime.time(9)), f"{point}: rings {rings}")
        check(summary.startswith("Matagouri: "), f"summary {summary}")


def every_kind(program):
    help_text = program.run("report", "--help")
    kinds = re.search(r"--kind[^\n]*?((?:\w+, )+\w+) \(default", re.sub(r"\s*\n\s+", " ", help_text)).group(1).split(", ")
    check(len(kinds) == 13, f"{kinds}")
    for language, footer in (("en", "Not an official inspection."), ("es", "No es una inspección oficial.")):
        for kind in kinds:
            text = program.run("--language", language, *NOW, "report", "--kind", kind, "--format", "text")
            check(footer in re.sub(r"\s+", " ", text), f"{kind}: no footer")
            check(max(map(len, text.split("\n"))) <= 72, f"{kind}: a line of over 72 characters")
            check(not COORDINATE.search(text), f"{kind}: {COORDINATE.search(text)} tells a place")
            check("paper_" not in text and "%1" not in text, f"{kind}: words are missing")


def refusals(program):
    program.refused("report", "--kind", "inspection", code=2, saying=["--kind"])
    program.refused("report", "--kind", "damage", "--format", "text", "--finding", "00000000", code=4,
                    saying=["00000000"])
    program.refused("report", "--format", "csv", "--out", os.path.join(program.folder, "no", "such.csv"), code=4,
                    saying=["such.csv"])


def main():
    with tempfile.TemporaryDirectory() as folder:
        program = Program(sys.argv[1], folder)
        program.run("demo", "--from", sys.argv[2] + "/demo-rig")
        comma_separated(program)
        on_the_map(program)
        calendar(program, sys.argv[3])
        every_kind(program)
        refusals(program)


if __name__ == "__main__":
    try:
        main()
    except Failed as fault:
        print(fault)
        sys.exit(1)
