# SPDX-License-Identifier: Apache-2.0
"""Bad input through the command line. Each refusal must be one line that says what and what to do, must end with the
documented exit code, and must leave the logbook as it was."""
import hashlib
import json
import os
import resource
import signal
import sqlite3
import struct
import sys
import tempfile
import zlib

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "journey"))
from program import Failed, Program, check  # noqa: E402

RIG = ["name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in", "measures.height=2.2 m",
       "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]', "fittings=leaf_springs,electric_brakes,lp_gas"]


def write(folder, name, data):
    path = os.path.join(folder, name)
    with open(path, "wb") as file:
        file.write(data)
    return path


def digest(path):
    with open(path, "rb") as file:
        return hashlib.sha256(file.read()).hexdigest()


def png(width, height):
    """A PNG that claims a size and holds almost nothing (PNG specification, chunks IHDR, IDAT, IEND)."""
    def chunk(kind, data):
        body = kind + data
        return struct.pack(">I", len(data)) + body + struct.pack(">I", zlib.crc32(body))
    header = struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header) + chunk(b"IDAT", zlib.compress(b"\0" * 1000)) + chunk(b"IEND", b"")


def tracks(program, folder, source):
    with open(os.path.join(source, "demo-rig", "tracks", sorted(
            n for n in os.listdir(os.path.join(source, "demo-rig", "tracks")) if n.endswith(".gpx"))[0]), "rb") as file:
        whole = file.read()
    cases = {"cut.gpx": whole[: len(whole) // 2], "garbage.gpx": b"<gpx" + bytes(range(256)) * 20,
             "empty.gpx": b"", "noise.nmea": os.urandom(5000), "words.nmea": b"$GPRMC,hello*00\r\n" * 50,
             "bomb.gpx": b'<?xml version="1.0"?><!DOCTYPE g [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]><gpx>&b;</gpx>'}
    for name, data in cases.items():
        program.refused("trip", "import", write(folder, name, data), code=3, saying=[name, ";"])
    program.refused("trip", "import", os.path.join(folder, "none.gpx"), code=4, saying=["none.gpx"])
    check(program.json("trip", "list")["trips"] == [], "a refused track left a trip")


def photos(program, folder, source):
    with open(os.path.join(source, "demo-rig", "photos", "rivet-2026-11.jpg"), "rb") as file:
        whole = file.read()
    cases = {"cut.jpg": whole[: len(whole) // 3], "garbage.jpg": b"\xff\xd8\xff" + os.urandom(4000),
             "huge.png": png(10000, 10000), "absurd.png": png(60000, 60000), "cut.png": png(64, 64)[:60], "text.jpg": b"no picture"}
    for name, data in cases.items():
        program.refused("photo", "add", write(folder, name, data), code=3, saying=[name, ";"])
    check(program.json("photo", "list")["photos"] == [], "a refused photo is in the logbook")
    left = [f for _, _, files in os.walk(program.book + ".photos") for f in files]
    check(left == [], f"a refused photo left files: {left}")


def usage(program):
    program.refused("fly", code=2, saying=["--help"])
    program.refused("walk", "mark", "tread-depth", "perfect", code=2, saying=["perfect"])
    program.refused("--where", "up there", "walk", "start", code=2, saying=["--where"])
    program.refused("--at", "yesterday", "due", code=2, saying=["--at"])
    program.refused("walk", "start", "moon_walk", code=4, saying=["moon_walk", "full_round"])
    program.refused("rig", "set", "measures.length=7 apples", code=3, saying=["measures.length"])
    program.refused("rig", "set", "measures.width=40 m", code=3, saying=["measures.width"])
    program.refused("rig", "set", "wings=2", code=2, saying=["wings"])
    program.run("walk", "start", "full_round")
    program.refused("walk", "mark", "tire-pressure", "pass", "--reading", "cold-pressure@wheel 9L=65 psi", code=3, saying=["wheel 9L"])
    program.refused("walk", "mark", "tire-pressure", "pass", "--reading", "cold-pressure@wheel 1L=65 kg", code=3, saying=["65 kg"])
    program.refused("walk", "mark", "sidewall-cracks", "attention", code=3, saying=["defect"])
    program.refused("finding", "add", "sidewall-cracks", "--grade", "2", code=3, saying=["defect"])
    program.refused("finding", "worse", "beef", "--grade", "2", code=4, saying=["beef"])
    program.refused("photo", "draw", "beef", "--circle", "0.1,0.1,0.2,0.2", code=4, saying=["beef"])
    program.refused("mend", "--point", "bearing-repack", "--action", "lubricate", "--what", "x", "--part", "0 x seal", code=3,
                    saying=["0 x seal"])
    program.refused("supplies", "have", "moon dust", "2", code=4, saying=["moon dust", "lap-sealant"])
    program.refused("supplies", "have", "lap-sealant", "2 kg", code=3, saying=["2 kg"])
    program.refused("event", "gate_post", code=4, saying=["gate_post", "kerb_strike"])
    program.refused("walk", "mark", "sidewall-cracks", "attention", "--defect", "crack", "--grade", "9", code=3, saying=["grade 9"])
    program.refused("walk", "unseen", "sidewall-cracks", "bored", code=3, saying=["reason", "risky_to_reach"])
    program.refused("walk", "mark", "ramp-door", "pass", code=4, saying=["ramp-door"])
    program.refused("finding", "show", "00000000", code=4, saying=["finding"])
    program.refused("mend", "00000000", "--action", "replace", "--what", "x", code=4, saying=["finding"])
    check(program.json("walk", "show")["marks"] == [], "a refused mark is on the walk")
    program.run("--json", "finding", "show", "zz", expect=3)
    fault = json.loads(program.error)["error"]
    check(set(fault) == {"code", "what", "where", "do"} and fault["code"] == "invalid_input", f"JSON error {fault}")


def lives(program, folder):
    """Tables of looks: the line, the column and the reason."""
    cases = {"order.csv": ("lower,upper\n1,2\n5,4\n", ["line 3", "upper is below lower"]),
             "nan.csv": ("lower,upper\n1,nan\n", ["line 2, column upper", "\"nan\""]),
             "gap.csv": ("lower,upper\n1,2\n,2\n", ["line 3, column lower", "missing"]),
             "unit.csv": ("lower,upper\n1,2 mo\n", ["line 2, column upper", "without a unit"]),
             "before.csv": ("lower,upper\n-1,2\n", ["line 2", "negative age"]),
             "weight.csv": ("lower,upper,weight\n1,2,-3\n", ["line 2", "negative weight"]),
             "semicolons.csv": ("lower;upper\n1;2\n", ["line 1", "commas"]),
             "narrow.csv": ("lower\n1\n", ["upper"]),
             "ragged.csv": ("lower,upper\n1,2\n1,2,3\n", ["line 3", "3 cells"]),
             "empty.csv": ("lower,upper\n", ["no lives"])}
    for name, (text, saying) in cases.items():
        file = write(folder, name, text.encode())
        program.refused("due", "fit", file, code=3, saying=[*saying, ";"])
        program.refused("due", "posterior", file, "--interval", "12", code=3, saying=[*saying, ";"])
    passing = write(folder, "passing.csv", b"lower,upper\n9,inf\n5,\n")
    program.refused("due", "fit", passing, code=3, saying=["none of them failed", "due posterior"])
    alike = write(folder, "alike.csv", b"lower,upper\n5,9\n5,9\n5,9\n")
    program.refused("due", "fit", alike, code=3, saying=["one age agrees with all"])
    named = write(folder, "named.csv", b"lower,upper,log_shape\n5,9,1\n5,9,2\n5,9,3\n")
    program.refused("due", "fit", named, code=3, saying=["log_shape", "rename"])
    program.refused("due", "posterior", named, "--interval", "12", code=3, saying=["no covariates"])
    for option, value in (("--interval", "-1"), ("--interval", "nan"), ("--interval", "inf"), ("--shape", "0"),
                          ("--p", "1"), ("--within", "-2"), ("--age", "nan"), ("--spread", "0")):
        options = {"--interval": "12", option: value}
        program.refused("due", "posterior", alike, *[word for pair in options.items() for word in pair], code=3,
                        saying=[option])
    program.refused("due", "fit", os.path.join(folder, "none.csv"), code=4, saying=["none.csv"])


def databases(program, folder):
    with open(program.book, "rb") as file:
        whole = file.read()
    cases = {"text.snugwalk": (b"not a database, but long enough to be read as one. " * 40, 5),
             "cut.snugwalk": (whole[:5000], 5), "garbage.snugwalk": (os.urandom(9000), 5)}
    for name, (data, code) in cases.items():
        path = write(folder, name, data)
        before = digest(path)
        program.refused("walk", "list", book=path, code=code, saying=[name, ";"])
        check(digest(path) == before, f"{name} was changed")
    other = os.path.join(folder, "other.db")
    with sqlite3.connect(other) as db:
        db.execute("CREATE TABLE t(x)")
    db.close()
    program.refused("walk", "list", book=other, code=3, saying=["another program"])
    newer = os.path.join(folder, "newer.snugwalk")
    program.run("backup", newer)
    with sqlite3.connect(newer) as db:
        db.execute("PRAGMA user_version = 999")
    db.close()
    before = digest(newer)
    program.refused("walk", "list", book=newer, code=3, saying=["newer version", "update"])
    check(digest(newer) == before, "the newer logbook was changed")
    program.refused("walk", "list", book=os.path.join(folder, "none.snugwalk"), code=4, saying=["none.snugwalk"])
    program.refused("rig", "add", *RIG, book="/proc/nowhere/x.snugwalk", code=5, saying=["/proc/nowhere"])
    program.refused("backup", newer, code=6, saying=["newer.snugwalk"])


def limit_files():
    signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    resource.setrlimit(resource.RLIMIT_FSIZE, (120_000, 120_000))


def full_disk(program):
    """Every file may grow to 120 kB only: what a full disk does, without needing one."""
    marks = len(program.json("walk", "show")["marks"])
    points = [p for line in program.json("walk", "show")["tape"] for p in line["points"]]
    failed = False
    for point in points * 3:
        process = program.start("walk", "mark", point, "pass", "--note", "x" * 3000, preexec_fn=limit_files)
        _, err = process.communicate(timeout=60)
        if process.returncode == 0:
            continue
        check(process.returncode == 5 and len(err.strip().split("\n")) == 1 and ";" in err, f"full disk: {process.returncode} {err}")
        failed = True
        break
    check(failed, "the limit was never reached")
    check(len(program.json("walk", "show")["marks"]) >= marks, "marks are gone after a full disk")
    check(program.json("check", "--deep")["faults"] == [], "check found faults after a full disk")


def main():
    source = sys.argv[2]
    with tempfile.TemporaryDirectory(prefix="snugwalk-bad-") as folder:
        program = Program(sys.argv[1], folder)
        try:
            program.refused("walk", "list", code=4, saying=["no logbook"])
            program.run("rig", "add", *RIG)
            program.refused("rig", "add", *RIG, code=6, saying=["Heron"])
            tracks(program, folder, source)
            photos(program, folder, source)
            usage(program)
            lives(program, folder)
            databases(program, folder)
            full_disk(program)
            program.run("check", "--deep")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print("every refusal was clear and lost nothing")
    return 0


if __name__ == "__main__":
    sys.exit(main())
