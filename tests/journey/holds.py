# SPDX-License-Identifier: Apache-2.0
"""Holds by the command line: every rule with its source, a look that failed, accepted once, shown, and its end."""
import sys
import tempfile

from program import Failed, Program, check

MORNING = "2026-11-20T08:10:00+13:00"
SOON = "2026-11-20T08:30:00+13:00"
NEXT_DAY = "2026-11-21T09:00:00+13:00"
LAP = "pull-away-lap"


def acted(program, *arguments, at=MORNING):
    return program.json("--by", "M. Rata", "--at", at, *arguments)


def rules_are_told(program):
    holds = {rule["rule"]: rule for rule in program.json("holds")["holds"]}
    wanted = {str(n) for n in range(1, 16)} | {"sleep", "plug", "light", "grade_5", "could_not_look"}
    check(set(holds) == wanted, f"rules {sorted(holds)}")
    tread = [t for t in holds["1"]["triggers"] if t.get("reading") == "tread-depth"][0]["below"]
    check(abs(tread["value"] - 0.0016) < 1e-12 and tread["unit"] == "m", f"tread {tread}")
    check(any("570.62" in source for source in tread["source"]), f"tread's source {tread}")
    text = program.run("holds")
    check("49 CFR 570.62, Vehicle in use inspection standards: tires" in text, "no full source in the text")
    spanish = program.run("--language", "es", "holds")
    check("prohíbe: no lo mueva" in spanish, "the rules are not told in Spanish")


def accepting(program):
    """Not without the flag, not by a renter, not twice; listed until a day has passed."""
    accept = ["accept", LAP, "--because", "too_dark", "--knowing", "a step left down"]
    program.refused("--at", SOON, "--by", "M. Rata", *accept, code=2,
                    saying=["nothing is written", "I move it once, today, on my own decision", "--i-move-it-once"])
    check(acted(program, "state", at=SOON)["accepted"] == 0, "written without the flag")
    program.refused("--at", SOON, "--by", "M. Rata", *accept, "--i-move-it-once", "--as", "renter", code=6,
                    saying=["only the owner", "renter"])
    done = acted(program, *accept, "--i-move-it-once", at=SOON)
    check("a step left down may follow" in done["sentence"], f"sentence {done['sentence']}")
    state = acted(program, "state", at=SOON)
    hold = [h for h in state["holds"] if h["point"] == LAP][0]
    check(hold["accepted"]["by"] == "M. Rata" and state["accepted"] == 1, f"not shown as accepted: {hold}")
    check(state["forbids"] == ["move"] and state["hold"] >= 1, "an accepted hold went away")
    check("accepted by M. Rata" in program.run("--at", SOON, "state"), "the text does not say who accepted")
    program.refused("--at", SOON, "--by", "M. Rata", *accept, "--i-move-it-once", code=6, saying=["accepted already"])
    check(acted(program, "state", at=NEXT_DAY)["accepted"] == 0, "it outlived its day")


def found_holds_are_not(program):
    acted(program, "walk", "mark", "chains-condition", "attention", "--defect", "missing", "--grade", "5", at=SOON)
    program.refused("--at", SOON, "--by", "M. Rata", "accept", "chains-condition", "--because", "no_time", "--knowing",
                    "it may part", "--i-move-it-once", code=6, saying=["found by a look", "mend it"])
    program.refused("--at", SOON, "--by", "M. Rata", "accept", "roof-membrane", "--because", "no_time", "--knowing",
                    "water", "--i-move-it-once", code=4, saying=["no hold because a look failed"])


def figures_open(program):
    finding = acted(program, "state", at=SOON)["open"][0]
    why = acted(program, "concern", "why", finding["finding"][:8], at=SOON)["why"]
    figures = {line["figure"]: line for line in why}
    check({"consequence", "grade", "chance", "risk", "concern", "matrix", "hold"} <= set(figures), f"figures {figures}")
    check(all(line["basis"] for line in why), "a figure without its basis")
    check(abs(figures["risk"]["value"] - figures["consequence"]["value"] * figures["chance"]["value"]) < 1e-9,
          "R is not C times p")
    passed = acted(program, "concern", "why", "ball-coupling-latched", at=SOON)["why"]
    check(any("no call" in line["text"] for line in passed), "a pass has a call")
    spanish = program.run("--at", SOON, "--language", "es", "concern", "why", LAP)
    check("Preocupación" in spanish, "why is not told in Spanish")


def state_is_whole(program):
    state = acted(program, "state", at=SOON)
    for name in ("serious_chance", "expected_loss", "serious_expected"):
        one = state[name]
        check(one["low"] <= one["value"] <= one["high"] and "unit" in one and one["basis"], f"{name} {one}")
    check(0.0 <= state["looked_share"] <= 1.0 and state["worst"]["point"], "share or worst item")
    risks = [p["risk"]["value"] for p in state["points"]]
    check(risks == sorted(risks, reverse=True), "points are not in order of risk")
    text = program.run("--at", SOON, "state")
    check("At least one serious item fails before the next look" in text and "of what matters by weight" in text, text)


def main():
    with tempfile.TemporaryDirectory() as folder:
        program = Program(sys.argv[1], folder)
        program.run("demo", "--from", sys.argv[2] + "/demo-rig")
        rules_are_told(program)
        acted(program, "walk", "start", "before_road")
        acted(program, "walk", "unseen", LAP, "too_dark")
        acted(program, "walk", "mark", "ball-coupling-latched", "pass")
        state_is_whole(program)
        accepting(program)
        found_holds_are_not(program)
        figures_open(program)


if __name__ == "__main__":
    try:
        main()
    except Failed as fault:
        print(fault)
        sys.exit(1)
