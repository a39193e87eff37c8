# SPDX-License-Identifier: Apache-2.0
"""The nearest named place by the command line: of coordinates, of a trip's ends, a stay and a finding, rough and
exact. Twizel and the ways to it: from memory; distances of names are checked in tests/reference/map."""
import os
import sys
import tempfile

from program import Failed, Program, check


def coordinates(program):
    answer = program.json("where", "-44.20", "170.10")
    one = answer["where"][0]
    check(answer["place_detail"] == "exact" and one["what"] == "place", f"{answer}")
    check(one["near"]["name"] == "Twizel" and one["near"]["country"] == "NZ", f"{one}")
    check(one["near"]["distance"]["unit"] == "m" and 5000 < one["near"]["distance"]["value"] < 9000, f"{one}")
    check(one["near"]["direction"] == "n" and one["words"].endswith("north of Twizel"), f"{one}")
    check("mi" in program.run("--units", "us", "where", "-44.20", "170.10"), "no miles")
    check("al norte de" in program.run("--language", "es", "where", "-44.20", "170.10"), "not in Spanish")
    rough = {program.run("where", "-44.20", str(170.07 + step / 1000), "--place", "coarse") for step in range(12)}
    check(len(rough) == 1 and "about" in rough.pop(), "a coarse place tells more than its cell")
    program.refused("where", "-94", "170.10", code=3, saying=["earth"])
    program.refused("where", "here", "there", code=3, saying=["LAT"])


def things(program, root):
    program.run("demo", "--from", os.path.join(root, "demo-rig"))
    kept = program.json("trip", "list")
    for trip in kept["trips"]:
        ends = program.json("where", trip["id"])["where"]
        check([end["what"] for end in ends] == ["start", "end"], f"{ends}")
        check(program.json("where", trip["id"][:8])["where"] == ends, "the short id is another trip")
    for stay in kept["stays"]:
        check(program.json("where", stay["id"])["where"][0]["near"], "a stay without a name near it")
    findings = program.json("finding", "list", "--all")["findings"]
    found = [program.json("where", finding["id"])["where"][0] for finding in findings]
    check(all(one["what"] == "finding" for one in found), "not a finding each")
    check(any(one["near"] for one in found), "no finding of the demo has a place")
    program.refused("where", "00000000", code=4, saying=["finding list"])


def missing(program):
    program.environment["SNUGWALK_DATA"] = program.folder
    program.refused("where", "-44.20", "170.10", code=4, saying=["places.bin", "SNUGWALK_DATA"])


def main():
    with tempfile.TemporaryDirectory() as folder:
        program = Program(sys.argv[1], folder)
        try:
            coordinates(program)
            things(program, sys.argv[2])
            missing(program)
        except Failed as fault:
            print(fault)
            return 1
    print("places by name: as expected")
    return 0


sys.exit(main())
