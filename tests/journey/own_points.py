# SPDX-License-Identifier: Apache-2.0
"""The catalogue and an owner's points by the command line: list, add, hide, show, every, minutes."""
import os
import sys
import tempfile

from program import Failed, Program, check

MEMBERS = """point code zone stand title look pass grades consequence forbids months distance uses drivers kinds
 practices needs without repeat readings defects photos tools minutes cautions source_tag sources sources_full""".split()
RIG = ["rig", "add", "name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in",
       "measures.height=2.2 m", "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]']


def whole_catalogue(program):
    """Without a rig and without a logbook: every point with every member, in both languages."""
    points = program.json("points", "--all")["points"]
    check(len(points) == 223, f"{len(points)} points, not 223")
    check(len({p["point"] for p in points}) == 223, "a slug is there twice")
    for point in points:
        lost = [member for member in MEMBERS if member not in point]
        check(not lost, f"{point['point']} lacks {lost}")
        check(sorted(point["grades"]) == list("12345"), f"{point['point']} has not five grades")
        check(all(s["full"] and s["key"] for s in point["sources_full"]), f"{point['point']}: a source without a name")
        for reading in point["readings"]:
            bare = reading["quantity"] in ("count", "date", "percent", "fraction")
            check(bare or reading["unit"], f"{point['point']}: {reading['reading']} has no unit")
    spanish = program.json("--language", "es", "points", "--all")["points"]
    check(all(a["title"] != "" and b["title"] != "" for a, b in zip(points, spanish)), "a title is empty")
    check(len(program.json("points", "--all", "--zone", "gas")["points"]) == 15, "the gas zone is not whole")
    check(not os.path.exists(program.book), "listing made a logbook")
    program.refused("points", "--all", "--minutes", "10", code=2, saying=["budget"])
    program.refused("points", code=4, saying=["rig"])


def owners_choices(program):
    program.run(*RIG)
    before = program.json("points")["points"]
    check(len(before) > 100, "a new rig has few points: no usual fittings")
    added = program.json("--by", "M. Rata", "points", "add", "Step light", "--zone", "inside", "--stand", "kerb-front",
                         "--months", "3", "--each", "every_move", "--reading", "Pump voltage, V, 11.5, 14.8")
    check(added["point"] == "own-step-light" and added["own"], "the point was not added")
    check(added["readings"][0]["low"] == 11.5, "its reading has another limit")
    program.refused("points", "add", "Step light", "--zone", "inside", "--stand", "kerb-front", "--months", "3",
                    code=6, saying=["another title"])
    program.refused("points", "add", "Odd", "--zone", "inside", "--stand", "moon", "--months", "3", code=3,
                    saying=["stand"])
    tape = program.json("points", "--kind", "before_road")["points"]
    check(any(p["point"] == "own-step-light" for p in tape), "it is not on the tape of a move")
    program.run("--by", "M. Rata", "points", "hide", "tread-depth", "--note", "gauge lost")
    program.refused("points", "hide", "tread-depth", code=6, saying=["hidden already", "M. Rata"])
    listed = {p["point"]: p for p in program.json("points")["points"]}
    check(listed["tread-depth"]["hidden"]["by"] == "M. Rata", "the hidden point is not shown as hidden")
    check([h["point"] for h in program.json("state")["hidden"]] == ["tread-depth"], "the state does not name it")
    check("hidden by M. Rata" in program.run("state"), "the state's text does not name it")
    check(all(d["point"] != "tread-depth" for d in program.json("due", "--all")["due"]), "it still falls due")
    page = os.path.join(program.folder, "report.html")
    program.run("report", "--out", page)
    with open(page, encoding="utf-8") as file:
        check("hidden by M. Rata" in file.read(), "the report does not name it")
    program.run("points", "show", "tread-depth")
    check(program.json("state")["hidden"] == [], "it is still hidden")


def intervals(program):
    program.refused("points", "every", "tread-depth", "--months", "6", code=3, saying=["less often"])
    check(program.json("points", "every", "tread-depth", "--months", "1")["months"] == 1, "not shortened")
    check(program.json("points", "every", "roof-chalk", "--months", "24")["months"] == 24, "not lengthened")
    check(program.json("points", "every", "roof-chalk", "--usual")["months"] == 12, "not given back")


def minutes(program):
    before = -1.0
    for time in ("10", "25", "60"):
        budget = program.json("points", "--minutes", time)["budget"]
        check(budget["kept_minutes"] <= float(time) + 1e-9, "more time was taken than there is")
        check(budget["harm"] >= before, "more minutes, less harm")
        before = budget["harm"]
    walk = program.json("walk", "start", "full_round", "--minutes", "10")
    check(walk["budget"]["left_out"][0]["hold_list"], "the hold list's points are not named first")
    kept = program.json("walk", "show")["budget"]
    check(kept["minutes"] == 10.0 and len(kept["left_out"]) == len(walk["budget"]["left_out"]), "the walk forgot it")
    program.run("walk", "finish")
    whole = program.json("walk", "start", "full_round", "--minutes", "any")
    check(whole["budget"] is None and len(whole["tape"]) > len(walk["tape"]), "any time is not all")
    program.refused("walk", "start", "full_round", "--minutes", "soon", code=2, saying=["minutes"])


def main():
    with tempfile.TemporaryDirectory(prefix="snugwalk-journey-") as folder:
        program = Program(sys.argv[1], folder)
        try:
            for part in (whole_catalogue, owners_choices, intervals, minutes):
                part(program)
            check(program.json("check", "--deep")["faults"] == [], "check found faults")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print("the journey went as expected")
    return 0


sys.exit(main())
