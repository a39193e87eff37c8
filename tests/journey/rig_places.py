# SPDX-License-Identifier: Apache-2.0
"""Where a rig keeps failing, by the command line: rig places against the findings' own list, gathered here anew."""
import math
import os
import sys
import tempfile

from program import Program, check

HAND = 0.15  # metres, as the help and the papers say: a hand's breadth


def spot(place):
    return tuple(place[axis]["value"] for axis in "xyz") if place.get("x") else None


def gathered(findings):
    """Oldest first: by name, or within a hand's breadth of the first of a place on its face."""
    places = []
    for one in sorted(findings, key=lambda f: f["opened"]):
        place = one["place"]
        for known in places:
            first = known[0]["place"]
            if place.get("named"):
                same = first.get("named") == place["named"]
            else:
                same = (not first.get("named") and first["face"] == place["face"]
                        and math.dist(spot(first), spot(place)) <= HAND)
            if same:
                known.append(one)
                break
        else:
            places.append([one])
    return places


def main(binary, root):
    with tempfile.TemporaryDirectory() as folder:
        program = Program(binary, folder)
        program.run("demo", "--from", os.path.join(root, "demo-rig"))
        findings = program.json("finding", "list", "--all")["findings"]
        told = program.json("rig", "places")
        mine = gathered([f for f in findings if f["place"]])
        check(sorted(sorted(p["findings"]) for p in told["places"])
              == sorted(sorted(f["id"] for f in group) for group in mine), "other findings lie together")
        check(told["without_place"] == sum(not f["place"] for f in findings), "findings without a place")
        by_id = {f["id"]: f for f in findings}
        for place in told["places"]:
            group = [by_id[one] for one in place["findings"]]
            check(place["times"] >= len(group), f"{place['words']}: fewer times than findings")
            check(place["first"] == min(f["opened"] for f in group), f"{place['words']}: found first")
            mends = [m["at"] for f in group for m in f["mends"]]
            check(place["last_mend"] == (max(mends) if mends else None), f"{place['words']}: last mend")
            check(place["open"] == any(f["status"] in ("open", "mended") for f in group), f"{place['words']}: open")
            check(set(place["points"]) == {f["point"] for f in group}, f"{place['words']}: points")
        times = [place["times"] for place in told["places"]]
        check(times == sorted(times, reverse=True) and times[0] > 1, "the most often found is not first")
        text = program.run("rig", "places")
        check(all(place["words"] in text for place in told["places"]), "a place is not told in words")
        survey = os.path.join(folder, "survey.html")
        program.run("report", "--kind", "survey", "--out", survey)
        with open(survey, encoding="utf-8") as file:
            page = file.read()
        check("Where things were found, ever" in page and page.count("M-14 0 L-7 -12") == sum(
            1 for place in told["places"] if place["place"].get("x")), "the survey draws other places")
    print(len(times), "places")


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2])
