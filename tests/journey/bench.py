# SPDX-License-Identifier: Apache-2.0
"""The bench on the command line: every question's help has a worked example that runs, what was typed is told back, and
figures keep their published values. Sources are those of tests/published/bench."""
import shlex
import sys
import tempfile

from program import Failed, Program, check

PSI = 6894.757293168361
POUND = 0.45359237
TOP = ("value", "unit", "low", "high", "level", "basis", "source", "warnings", "inputs_defaulted", "figures", "understood",
       "cautions")


def near(value, expected, tolerance, what):
    check(abs(value - expected) <= tolerance, f"{what}: {value}, expected {expected}")


def questions(program):
    """Names of the commands below bench, from its help."""
    lines = program.run("bench", "--help").split("Subcommands:")[1].split("\n")
    return [line.split()[0] for line in lines if line.startswith("  ") and line.strip() and not line.startswith("   ")]


def examples(program):
    names = questions(program)
    check(len(names) >= 9, f"only {names}")
    for name in names:
        text = program.run("bench", name, "--help")
        lines = [line.strip() for line in text.split("\n") if line.strip().startswith("snugwalk bench " + name)]
        check(lines and "gives" in text, f"{name}: no worked example with its result in --help")
        words = shlex.split(lines[0])[1:]
        answer = program.json(*words)
        check(all(member in answer for member in TOP), f"{name}: {sorted(answer)}")
        check(answer["unit"] and answer["basis"], f"{name}: no unit or basis")
        for units, language in (("us", "en"), ("si", "es")):
            check(program.run("--units", units, "--language", language, *words).strip(), f"{name} says nothing")


def hubs(program):
    """Two stops before this one, four hubs at each: the last hub gains on its mates."""
    now = ["bench", "hub", "--hubs", "112; 118; 109; 151 °F", "--earlier", "96; 98; 95; 104; 104; 107; 102; 125 °F"]
    answer = program.json(*now)
    check(answer["stops"] == 3 and answer["fastest"] == 4, f"{answer.get('stops')} {answer.get('fastest')}")
    # over the mean of its mates: 151 - 113 = 38, 104 - 96.33 = 7.67; the difference in kelvins, worked by hand
    near(answer["figures"]["growth"]["value"], (38 - (104 - 289 / 3)) * 5 / 9, 1e-6, "growth")
    program.refused("bench", "hub", "--hubs", "112; 118; 109; 151 °F", "--earlier", "96; 98; 95 °F", code=3, saying=["--earlier"])


def tires(program):
    load = ["bench", "tire-pressure", "--class", "lt", "--max-load", "2680 lb", "--max-pressure", "80 psi", "--load", "2,000 lb"]
    alone = program.json(*load)
    near(alone["value"] / PSI, 52.663741, 5e-7, "2,000 lb on 2,680 at 80 psi")
    check("set" not in alone and "not_a_setting" in alone["warnings"], f"{alone}")
    check(program.json(*load, "--placard", "65 psi")["set"] >= 65 * PSI, "set under the placard")
    check(program.json(*load, "--placard", "4.5 bar")["set"] == 4.5e5, "4.5 bar")
    said = {u["input"]: u["text"] for u in alone["understood"]}
    check("907.2" in said["load"], f"understood {said}")
    bare = program.json("--units", "us", *load[:-1], "2000")
    near(bare["value"], alone["value"], 1e-6, "a bare number in pounds")
    check("unit_assumed" in bare["warnings"], "a bare number went unsaid")
    st = program.json("bench", "tire-pressure", "--class", "st", "--max-load", "2540 lb", "--max-pressure", "65 psi", "--load", "1675 lb")
    near(st["set"] / PSI, 65, 1e-9, "a trailer tire runs at its maximum")
    p = program.json("bench", "tire-pressure", "--class", "p", "--max-load", "2028 lb", "--max-pressure", "35 psi", "--load", "1500 lb")
    check("passenger_on_trailer" in p["warnings"], "passenger tires unsaid")

    cold = program.json("bench", "tire-temperature", "--pressure", "65 psi", "--from", "20 °C", "--to", "32 F")
    near(cold["value"] / PSI, 59.562787, 5e-7, "65 psi at freezing")
    check(cold["inputs_defaulted"] == ["from-altitude", "to-altitude"], f"{cold['inputs_defaulted']}")
    high = program.json("bench", "tire-temperature", "--pressure", "65 psi", "--from", "20 °C", "--to", "5 °C", "--to-altitude", "2500 m")
    near(high["value"] / PSI, 64.786253, 5e-7, "over a pass")
    shed = program.json("bench", "tire-temperature", "--pressure", "65 psi", "--from", "20 °C", "--to", "-10 °C", "--placard",
                        "65 psi", "--max-pressure", "80 psi")
    near(shed["set"] / PSI, 74.0, 0.1, "65 psi wanted at -10 °C, set at 20 °C")
    hot = program.json("bench", "tire-temperature", "--pressure", "75 psi", "--from", "50 °C", "--to", "20 °C", "--placard",
                       "65 psi", "--warm")
    check("hot_against_cold" in hot["warnings"] and hot["call"] == "not_low", f"{hot['warnings']} {hot['call']}")

    near(program.json("bench", "load-index", "121")["value"], 1450, 0, "load index 121")
    both = program.json("bench", "load-index", "115/112Q")
    near(both["figures"]["load-dual"]["value"], 1120, 0, "112 in a pair")
    near(both["figures"]["speed"]["value"], 160 / 3.6, 1e-9, "Q")
    age = program.json("bench", "tire-age", "2319", "--on", "2026-11-24")
    check(age["made"] == "2019-06-09", f"made {age['made']}")
    near(age["value"], 7.5, 0.05, "age of 2319")
    tread = program.json("bench", "tread", "--before", "7/32", "--now", "5/32", "--driven", "9,000 mi")
    near(tread["value"] / 1609.344, 13500, 1e-6, "tread left")


def wheels(program):
    torque = program.json("bench", "torque", "--stud", "M14", "--torque", "140 N·m", "--friction", "0.2")
    near(torque["value"], 50000, 1e-6, "clamp of M14 at 140 N·m")
    near(torque["low"], 35000, 1e-6, "its low end")
    check(torque["unit"] == "N" and torque["common_range"]["basis"] == "common_practice", f"{torque}")
    oiled = program.json("bench", "torque", "--stud", "1/2-20", "--torque", "100 lb·ft", "--friction", "0.15")
    check("lubricated_studs" in oiled["warnings"], "oiled studs unsaid")
    check(program.json("bench", "star", "--studs", "8")["sequence"] == [1, 5, 3, 7, 2, 6, 4, 8], "eight studs")
    check(program.json("bench", "star", "--studs", "5")["sequence"] == [1, 3, 5, 2, 4], "five studs")


def rig(program):
    """What is not typed comes from the rig's plates, and a fitted wheel's nuts come due as it is driven."""
    program.refused("bench", "star", "--of-rig", code=4, saying=["no logbook"])
    program.run("rig", "add", "name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in",
                "measures.height=2.2 m", "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]', "wheels.studs=6",
                "tires.placard=55 psi", "fittings=leaf_springs,electric_brakes,ball_coupling,safety_chains")
    check(program.json("bench", "star", "--of-rig")["sequence"] == [1, 4, 2, 5, 3, 6], "six studs of the rig")
    check(program.json("bench", "star", "--of-rig", "--studs", "5")["sequence"][1] == 3, "five as typed, not the rig's six")
    load = ["bench", "tire-pressure", "--class", "lt", "--max-load", "2680 lb", "--max-pressure", "80 psi", "--load", "900 lb"]
    # a plate in kPa as text is exact to a millionth of itself (core/round/bench_of_rig.hpp)
    near(program.json(*load, "--of-rig")["set"] / PSI, 55, 55e-6, "the placard of the rig")
    answer = program.json("event", "wheel_fitted", "--note", "wheel 2R")
    later = [(one["point"], one["after"]["value"]) for one in answer["later"]]
    check(answer["due"] == [] and later == [("wheel-nut-torque", 10 * 1609.344)], f"{answer['due']} {later}")


def main():
    with tempfile.TemporaryDirectory(prefix="snugwalk-bench-") as folder:
        program = Program(sys.argv[1], folder)
        try:
            examples(program)
            tires(program)
            hubs(program)
            wheels(program)
            rig(program)
        except Failed as fault:
            print("failed:", fault)
            return 1
    print("every question answered its worked example")
    return 0


if __name__ == "__main__":
    sys.exit(main())
