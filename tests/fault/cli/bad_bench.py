# SPDX-License-Identifier: Apache-2.0
"""Bad numbers, wrong units and missing figures through `snugwalk bench`: one line each that names the flag, the
documented exit code; and a figure that marks nothing."""
import sys
import tempfile
import os

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "journey"))
from program import Failed, Program, check  # noqa: E402

RIG = ["name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in", "measures.height=2.2 m",
       "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]', "fittings=leaf_springs,electric_brakes,lp_gas"]
LOAD = {"--class": "lt", "--max-load": "2680 lb", "--max-pressure": "80 psi", "--load": "2000 lb"}


def pressure(**changes):
    """The words of a tire-pressure question with some flags changed, or left out with None."""
    flags = dict(LOAD, **{"--" + name.replace("_", "-"): text for name, text in changes.items()})
    return ["bench", "tire-pressure", *[word for flag, text in flags.items() if text is not None for word in (flag, text)]]


def tires(program):
    for name, text in [("load", "heavy"), ("load", "2000 psi"), ("load", "nan"), ("load", "1e400 lb"), ("load", "3000 lb"),
                       ("load", "-5 lb"), ("max_load", "2 lb"), ("max_pressure", "8 psi"), ("placard", "90 psi"),
                       ("table", "65=2335"), ("table", "80 psi=2680 lb; 65 psi=2335 lb"), ("class", "bias")]:
        program.refused(*pressure(**{name: text}), code=3, saying=["--" + name.replace("_", "-"), ";"])
    for name in ("class", "max_load", "max_pressure", "load"):
        program.refused(*pressure(**{name: None}), code=2, saying=["--" + name.replace("_", "-")])
    program.refused("bench", "tire-temperature", "--pressure", "65 psi", "--from", "20 °C", "--to", "400 °C", code=3, saying=["--to"])
    program.refused("bench", "load-index", "300", code=3, saying=["INDEX", "60 to 160"])
    program.refused("bench", "tire-age", "9919", "--on", "2026-11-24", code=3, saying=["CODE"])
    program.refused("bench", "tire-age", "2319", "--on", "soon", code=3, saying=["--on"])
    program.refused("bench", "tread", "--before", "5/32", "--now", "7/32", "--driven", "9000 mi", code=3, saying=["--before"])


def wheels(program):
    torque = ["bench", "torque", "--torque", "140 N·m"]
    program.refused(*torque, "--stud", "round", code=3, saying=["--stud"])
    program.refused("bench", "torque", "--stud", "M14", "--torque", "20 N·m", code=3, saying=["--torque"])
    program.refused(*torque, "--stud", "M14", "--friction", "0.9", code=3, saying=["--friction"])
    program.refused("bench", "star", "--studs", "2", code=3, saying=["--studs"])
    program.refused("bench", "star", "--studs", "5.5", code=3, saying=["--studs"])


def keeping(program):
    keep = ["bench", "torque", "--stud", "M14", "--torque", "140 N·m", "--keep"]
    program.refused(*keep, "wheel-nut-torque", code=4, saying=["no logbook"])
    program.run("rig", "add", *RIG)
    program.refused(*keep, "wheel-nut-torque", code=4, saying=["no walk is under way", "walk start"])
    program.run("walk", "start", "full_round")
    program.refused(*keep, "wheel-nut-torque", code=4, saying=["no mark", "walk mark wheel-nut-torque"])
    check(program.json("walk", "show")["marks"] == [], "a figure marked a point")
    program.run("walk", "mark", "wheel-nut-torque", "pass", "--how", "measured")
    program.refused(*keep, "belly-pan-sheet", code=4, saying=["belly-pan-sheet", "--keep wheel-nut-torque"])
    program.refused(*keep, "no-such-point", code=4, saying=["no-such-point"])
    kept = program.json(*keep, "wheel-nut-torque", "--keep-place", "wheel 1L")["kept"]
    check(kept["reading"] == "nut-torque" and kept["text"] == "140 N·m", f"kept {kept}")
    program.run(*keep, "wheel-nut-torque", "--keep-place", "wheel 2R")
    readings = program.json("walk", "show")["marks"][0]["readings"]
    check({r["place"] for r in readings} == {"wheel 1L", "wheel 2R"}, f"readings {readings}")
    check(all(r["tool"] == "bench torque" for r in readings), f"readings {readings}")


def main():
    with tempfile.TemporaryDirectory(prefix="snugwalk-bench-") as folder:
        program = Program(sys.argv[1], folder)
        try:
            tires(program)
            wheels(program)
            keeping(program)
        except Failed as fault:
            print("failed:", fault)
            return 1
    print("every refusal named its flag and lost nothing")
    return 0


if __name__ == "__main__":
    sys.exit(main())
