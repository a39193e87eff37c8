# SPDX-License-Identifier: Apache-2.0
"""Two walks of one rig that changed in between, by the command line: what was fitted and taken off, which points
follow, readings in another unit and by another hand, a trend with its limit, and pairs that cannot be."""
import sys
import tempfile

from program import Failed, Program, check

RIG = ["name=Heron", "kind=travel_trailer", "measures.length=6.4 m", "measures.width=2.44 m", "measures.height=2.2 m",
       "measures.floor_height=0.56 m", 'measures.axles=["3.3 m", "4.2 m"]', "tires.size=ST205/75R14"]
TREAD = "tread-depth@wheel 1L="


def walked(program, when, by, tread, tool=None):
    """A full round with one reading; gives its id."""
    walk = program.json("--by", by, "--at", f"{when}T09:00:00Z", "walk", "start", "full_round")
    extra = ["--tool", tool] if tool else []
    program.json("--by", by, "--at", f"{when}T09:10:00Z", "walk", "mark", "tread-depth", "pass", "--how", "measured",
                 "--reading", TREAD + tread, *extra)
    program.json("--by", by, "--at", f"{when}T10:00:00Z", "walk", "finish")
    return walk["id"]


def expect_rig(program, first, last):
    compared = program.json("compare", first[:8], last[:8])
    told = {(c["change"], c["what"], c["name"]) for c in compared["rig_changes"]}
    check(told == {("removed", "fitting", "awning"), ("added", "fitting", "lp_gas"), ("changed", "tires.size", "")},
          f"changes of the rig: {told}")
    check("awning-locks" in compared["no_longer_fitted"], f"no longer fitted: {compared['no_longer_fitted']}")
    check("gas-cylinder-mount" in compared["fitted_since"], f"fitted since: {compared['fitted_since']}")
    check(compared["only_then"] == [], f"only then: {compared['only_then']}")
    text = program.run("compare", first[:8], last[:8])
    check("no longer fitted: awning" in text and "ST205/75R14 to ST225/75R15" in text, f"the text does not say it: {text}")
    check("Of the points looked at both times" in program.run("compare", "--detail"), "no detail")


def expect_readings(program, walks):
    def reading(pair):
        point = next(p for p in program.json("compare", *pair)["points"] if p["point"] == "tread-depth")
        return point["readings"][0]

    same = reading(walks[0:2])
    check(same["doubled_by"] == [] and abs(same["z"] + 0.4 / (0.25 * 2 ** 0.5)) < 1e-9, f"reading {same}")
    other = reading(walks[1:3])
    check(other["doubled_by"] == ["unit", "observer", "tool"], f"doubled by {other['doubled_by']}")
    check(abs(other["uncertainty"] - 2 * 0.25e-3 * 2 ** 0.5) < 1e-12, f"uncertainty {other['uncertainty']}")


def expect_trend(program):
    trend = program.json("--at", "2026-06-01T08:00:00Z", "trend", "tread-depth", "--place", "wheel 1L")["trends"][0]
    check([p["read_in"] for p in trend["points"]] == ["mm", "mm", "in", "mm"], f"points {trend['points']}")
    check(trend["basis"] == "published" and trend["early"] < trend["likely"] < trend["late"], f"trend {trend}")
    check(abs(trend["per_year"] + 0.4e-3) < 0.02e-3, f"a year: {trend['per_year']}")
    text = program.run("--at", "2026-06-01T08:00:00Z", "trend", "tread-depth")
    check("limit met: early" in text, f"the text has no date: {text}")
    program.json("--at", "2026-06-01T09:00:00Z", "mend", "--point", "tread-depth", "--action", "replace", "--what", "tires")
    trend = program.json("--at", "2026-06-02T08:00:00Z", "trend", "tread-depth")["trends"][0]
    check(trend["points"] == [] and len(trend["before"]) == 4 and trend["note"] == "too_few", f"trend {trend}")


def expect_refusals(program, walks):
    program.refused("trend", "no-such-point", code=4, saying=["no such point"])
    program.refused("trend", "belly-pan-sheet", code=4, saying=["nothing was read"])
    program.refused("compare", "--kind", "no_such_kind", code=4, saying=["no such kind"])
    program.refused("compare", "--kind", "buying", code=4, saying=["no two walks"])
    program.refused("compare", walks[0], "--kind", "full_round", code=2, saying=["a kind and a walk"])
    program.json("rig", "add", *["name=Egret" if part == "name=Heron" else part for part in RIG])
    program.refused("--rig", "Egret", "compare", walks[0], walks[1], code=4, saying=["of another rig", "--rig"])


def journey(program):
    program.json("--at", "2023-01-01T08:00:00Z", "rig", "add", *RIG, "fittings=awning")
    walks = [walked(program, "2023-06-01", "M. Rata", "8.0 mm"), walked(program, "2024-06-01", "M. Rata", "7.6 mm")]
    program.json("--at", "2025-01-01T08:00:00Z", "rig", "set", "fittings=lp_gas", "tires.size=ST225/75R15")
    walks.append(walked(program, "2025-06-01", "A. Rata", "0.2835 in", "dial gauge"))
    walks.append(walked(program, "2026-05-31", "A. Rata", "6.8 mm", "dial gauge"))
    usual = program.json("compare")
    check((usual["then"], usual["now"], usual["paired_by"]) == (walks[2], walks[3], "same_kind"), "not the last of its kind")
    check("the last of its kind" in program.run("compare"), "the text does not say which pair it took")
    expect_rig(program, walks[0], walks[2])
    expect_readings(program, walks)
    expect_trend(program)
    expect_refusals(program, walks)


def main():
    with tempfile.TemporaryDirectory(prefix="snugwalk-changes-") as folder:
        try:
            journey(Program(sys.argv[1], folder))
        except Failed as fault:
            print("failed:", fault)
            return 1
    print("the journey went as expected")
    return 0


if __name__ == "__main__":
    sys.exit(main())
