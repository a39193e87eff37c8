# SPDX-License-Identifier: Apache-2.0
"""Roads by the command line: a trip's log measured and measured again, the class told by hand, profiles, spectra
and cycles from files, each with its JSON members."""
import math
import os
import sys
import tempfile

from program import Failed, Program, check

RIG = ["rig", "add", "name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in",
       "measures.height=2.2 m", "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]']
START = 1_795_507_800  # 2026-11-24T08:10:00Z
METRES = 111_131.7746  # a degree of latitude at 45 degrees
SPEED = 20.0


def written(program, name, text):
    path = os.path.join(program.folder, name)
    with open(path, "w", encoding="ascii") as file:
        file.write(text)
    return path


def track(program):
    """Ten minutes due north at 20 m/s."""
    points = "".join(f'<trkpt lat="{45 + SPEED * s / METRES:.8f}" lon="7"><time>2026-11-24T08:{10 + s // 60:02}:{s % 60:02}Z'
                     "</time></trkpt>" for s in range(0, 601, 2))
    return written(program, "drive.gpx", f'<gpx version="1.1"><trk><trkseg>{points}</trkseg></trk></gpx>')


def log(program, name, seconds, start, shake=0.6):
    lines = ["time_ms,x (g),y (g),z (g)"]
    for i in seconds:
        t = i / 100
        lines.append(f"{1000 * start + 10 * i},0,0,{1 + shake * math.sin(2 * math.pi * 5 * t) / 9.80665:.12f}")
    return written(program, name, "\n".join(lines) + "\n")


def trips(program):
    program.run(*RIG)
    gpx = track(program)
    trip = program.json("trip", "import", gpx, "--road", "gravel")["trips"][0]
    check("measured" not in trip, "a trip without a log is measured")
    told = program.json("trip", "road", trip["id"][:8], "smooth")
    check((told["road"], told["shake"]["basis"]) == ("smooth", "common_practice"), f"told {told['shake']}")
    check(told["shake"]["equivalent"]["value"] == told["shake"]["driven"]["value"], "smooth road does not count as itself")
    check(told["shake"]["consumption"]["value"] == 1.0, "smooth road uses up more than itself")

    whole = log(program, "whole.csv", range(60_000), START)
    first = log(program, "first.csv", range(23_456), START)
    second = log(program, "second.csv", range(23_456, 60_000), START)
    one = program.json("trip", "shake", trip["id"][:8], whole, "--location", "rig")
    wanted = 5.3884 * 0.6 * math.sqrt(0.5) * math.sqrt(80 / 72)
    check(abs(one["measured"]["median_roughness"]["value"] / wanted - 1) < 0.01, f"median {one['measured']}")
    check(one["roughness"]["inputs_defaulted"] == ["scale", "speed"], f"defaulted {one['roughness']['inputs_defaulted']}")
    check(one["shake"]["basis"] == "measured", "a measured trip is not told as such")
    check(one["shake"]["low"]["value"] < one["shake"]["equivalent"]["value"] < one["shake"]["high"]["value"], "no range")
    two = program.json("trip", "shake", trip["id"][:8], first, second, "--location", "rig")
    check(two["measured"] == one["measured"], "two files of one log shake otherwise")
    tracked = program.json("trip", "shake", trip["id"][:8], whole, "--track", gpx, "--scale", "3", "--location", "rig")
    check(tracked["measured"]["calibrated"], "a given scale is not taken")
    check("speed" not in tracked["roughness"]["inputs_defaulted"], "the track's speed is not taken")
    listed = program.json("trip", "list")["trips"]
    check(len(listed) == 1 and listed[0]["measured"] == tracked["measured"], "measuring again did not supersede")
    check(listed[0]["road"] == "smooth", "measuring changed the class")
    check(program.json("check", "--deep")["faults"] == [], "the logbook has faults")
    program.refused("trip", "shake", trip["id"][:8], log(program, "late.csv", range(3_000), START + 7_200), code=3,
                    saying=["not of the time", "--starts"])
    program.refused("trip", "shake", trip["id"][:8], second, first, code=3, saying=["begins before", "order"])
    program.refused("trip", "road", "ffffffff", "gravel", code=4, saying=["trip"])


def figures(program):
    bump = ["0"] * 401
    bump[41], bump[42], bump[43] = "0.005", "0.01", "0.005"
    iri = program.json("road", "iri", written(program, "bump.txt", "\n".join(bump)), "--dx", "0.25")
    check(abs(iri["value"] - 0.27594784749) < 5e-12 and iri["unit"] == "m/km", f"index {iri['value']}")
    check(len(iri["segments"]) == 1 and {"low", "high", "basis", "source", "warnings"} <= set(iri), f"members {sorted(iri)}")
    rows = "distance,elevation\n" + "".join(f"{0.25 * i},{z}\n" for i, z in enumerate(bump))
    again = program.json("road", "iri", written(program, "bump.csv", rows))
    check(again["value"] == iri["value"] and again["warnings"] == [], "distances change the index")
    flow = program.json("road", "rainflow", written(program, "load.txt", "-2\n1\n-3\n5\n-1\n3\n-4\n4\n-2\n"),
                        "--exponents", "3,4,5,8")
    check(flow["cycles"][:3] == [[3, -0.5, 0.5], [4, -1, 0.5], [4, 1, 1]], f"cycles {flow['cycles']}")
    check([round(flow["damage"][m]) for m in "3458"] == [1094, 8449, 67838, 39241969], f"damage {flow['damage']}")
    check(abs(flow["level"]["4"] - 9.587411) < 5e-7, f"level {flow['level']}")
    road = program.json("road", "synth", "--class", "C", "--seed", "1", "--bins", "400")
    check([round(z, 7) for z in road["profile"][:4]] == [-0.0158049, -0.017395, -0.0122103, -0.0184876], "made-up road")
    check(len(road["profile"]) == 8000 and road["warnings"] == ["repeats"], "made-up road's length or warning")
    text = program.run("road", "synth", "--class", "C", "--seed", "3", "--length", "500")
    profile = written(program, "road.txt", text)
    check(abs(program.json("road", "iri", profile, "--dx", "0.25")["value"] / 8.69 - 1) < 0.1, "made-up road's index")
    check(program.json("road", "class", "--iri", "8.7")["class"] == "C", "class by index")
    psd = program.json("road", "psd", profile, "--fs", "4", "--segment", "256")
    check(len(psd["frequency"]) == len(psd["density"]) == 129, "spectrum's length")
    stretch = log(program, "stretch.csv", range(6_000), START)
    scale = program.json("road", "calibrate", stretch, "--iri", "2.5", "--speed", "72")
    check(abs(scale["value"] * 0.6 * math.sqrt(0.5 * 80 / 72) / 2.5 - 1) < 0.01, f"scale {scale['value']}")
    check(scale["low"] <= scale["value"] <= scale["high"], f"range of the scale {scale}")
    check(scale["exponent"] == {"value": 0.5, "spread": 0.25, "fitted": False}, f"power of speed {scale['exponent']}")


def main():
    with tempfile.TemporaryDirectory() as folder:
        program = Program(sys.argv[1], folder)
        try:
            figures(program)
            trips(program)
        except Failed as failed:
            print(f"failed: {failed}")
            return 1
    return 0


sys.exit(main())
