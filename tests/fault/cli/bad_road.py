# SPDX-License-Identifier: Apache-2.0
"""Numbers that cannot be, through the road commands: each refusal is one line with file, line and reason."""
import os
import sys
import tempfile

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "journey"))
from program import Failed, Program, check  # noqa: E402

SERIES = [  # text, where, what
    ("1\n2\nx\n", "line 3", "not a number"),
    ("1\nnan\n", "line 2", "finite"),
    ("1\n-inf\n", "line 2", "finite"),
    ("1\n\n2\n", "line 2", "empty line"),
    ("1,2\n3,4\n", "line 1", "without names"),
    ("time,v\n0,1\n0.01,2\n0.005,3\n", "line 4", "not sorted"),
    ("time,v\n0,1\n0.01,\n", "line 3", "gap"),
    ("time,v\n0,1\n0.01,2,3\n", "line 3", "columns"),
    ("", "series.txt", "no number"),
    ("5\n" + "1" * 5000 + "\n", "line 2", "4,096"),
    ("\x00\x01\n", "line 1", "not a number"),
]
LOGS = [
    ("time,x,y,z\n0,0,0,9.8\n0.02,0,0,9.8\n0.01,0,0,9.8\n", "line 4", "not sorted"),
    ("time,x,y,z\n0,0,0,9.8\n0.02,0,nan,9.8\n", "line 3", "finite"),
    ("time,x,y,z\n0,0,0,9.8\n0.02,0,,9.8\n", "line 3", "gap"),
    ("time,x,y,z\n0,0.1,0,0.2\n0.02,0,0,0.1\n", "line 2", "gravity"),
    ("time,x (g),y (g),z (g)\n0,0,0,9.8\n0.02,0,0,9.8\n", "line 2", "gravity"),
    ("time,x,y\n0,0,0\n", "line 1", "three axes"),
    ("time (h),x,y,z\n0,0,0,1\n", "line 1", "unknown unit"),
]


def written(program, name, text):
    path = os.path.join(program.folder, name)
    with open(path, "w", encoding="latin-1") as file:
        file.write(text)
    return path


def series(program):
    for text, where, what in SERIES:
        path = written(program, "series.txt", text)
        for command in (["rainflow"], ["psd", "--fs", "100"]):
            program.refused("road", command[0], path, *command[1:], code=3, saying=["series.txt", where, what])
    path = written(program, "gap.csv", "time,v\n0,1\n0.01,2\n0.02,1\n0.5,2\n")
    program.refused("road", "psd", path, code=3, saying=["line 5", "a gap: 0.48"])
    one = written(program, "one.txt", "1\n")
    program.refused("road", "psd", one, "--fs", "100", code=3, saying=["fewer than two"])
    program.refused("road", "psd", one, code=2, saying=["--fs"])
    program.refused("road", "rainflow", one, "--exponents", "2,x", code=2, saying=["exponent"])
    program.refused("road", "rainflow", one, "--exponents", "99", code=3, saying=["0.5 to 20"])
    program.refused("road", "rainflow", os.path.join(program.folder, "none.txt"), code=4, saying=["none.txt"])
    check(program.json("road", "rainflow", one)["cycles"] == [], "one value has a cycle")


def profiles(program):
    flat = written(program, "flat.txt", "1\n" * 100)
    program.refused("road", "iri", flat, code=2, saying=["--dx"])
    program.refused("road", "iri", flat, "--dx", "5", code=3, saying=["0.01 to 0.6"])
    program.refused("road", "iri", flat, "--dx", "0.25", "--segment", "0.1", code=3, saying=["segment"])
    program.refused("road", "iri", written(program, "p.txt", "1\n"), "--dx", "0.25", code=3, saying=["p.txt"])
    rows = "x,z\n" + "".join(f"{0.25 * i + (40 if i > 200 else 0)},{0.001 * (i % 7)}\n" for i in range(400))
    gap = program.json("road", "iri", written(program, "gap.csv", rows))
    check(gap["warnings"] == ["gap at line 203"] and gap["gaps"] == 1, f"warnings {gap['warnings']}")
    rows = "x,z\n" + "".join(f"{0.25 * i + 0.05 * (i % 2)},{0.001 * (i % 7)}\n" for i in range(400))
    check("resampled" in program.json("road", "iri", written(program, "odd.csv", rows))["warnings"], "not resampled")
    program.refused("road", "synth", "--class", "A", "--length", "1e7", code=3, saying=["too"])
    program.refused("road", "synth", "--class", "X", code=2, saying=["--class"])
    program.refused("road", "class", code=2, saying=["--iri"])


def logs(program):
    for text, where, what in LOGS:
        path = written(program, "log.csv", text)
        program.refused("road", "roughness", path, "--speed", "60", code=3, saying=["log.csv", where, what])
    still = "time,x,y,z\n" + "".join(f"{i / 100},0,0,9.8\n" for i in range(1000))
    program.refused("road", "roughness", written(program, "slow.csv", still), "--speed", "10", code=3,
                    saying=["nothing could be analysed", "20 km/h"])
    millis = "time,x,y,z\n" + "".join(f"{10 * i},0,0,9.8\n" for i in range(1000))
    program.refused("road", "roughness", written(program, "millis.csv", millis), "--speed", "60", code=3,
                    saying=["50", "time_ms"])
    gaps = "time,x,y,z\n" + "".join(f"{i / 100 + (9 if i > 2000 else 0)},0,0,{9.8 + 0.1 * (i % 2)}\n" for i in range(4000))
    answer = program.json("road", "roughness", written(program, "gaps.csv", gaps), "--speed", "60")
    check("gaps" in answer["warnings"] and answer["first_gap"].endswith("line 2003"), f"first gap {answer['first_gap']}")


def main():
    with tempfile.TemporaryDirectory() as folder:
        program = Program(sys.argv[1], folder)
        try:
            series(program)
            profiles(program)
            logs(program)
        except Failed as failed:
            print(f"failed: {failed}")
            return 1
    return 0


sys.exit(main())
