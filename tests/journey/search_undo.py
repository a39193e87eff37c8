# SPDX-License-Identifier: Apache-2.0
"""Finding by words and taking back outside a walk, by the command line: search, undo."""
import os
import sys
import tempfile

from program import Failed, Program, check


def search(program, root):
    program.run("demo", "--from", os.path.join(root, "demo-rig"))
    hits = program.json("search", "rivet")["hits"]
    check(any(hit["kind"] == "finding" for hit in hits), "the rivet is not found")
    check(all({"kind", "id", "title", "part", "at"} <= set(hit) for hit in hits), "a member is missing")
    check(program.json("search", "RIVET")["hits"] == hits, "capitals matter")
    check(len(program.json("search", "a", "--limit", "3")["hits"]) == 3, "the limit does not hold")
    check(program.json("search", "no such words here")["hits"] == [], "found what is not there")
    check("nothing has these words" in program.run("search", "zzz"), "says nothing of nothing")
    point = program.json("--language", "es", "search", "presión", "frío")["hits"]
    check(point == program.json("--language", "es", "search", "presion", "frio")["hits"] and point, "accents matter")
    program.refused("search", code=2, saying=["words"])


def undo(program):
    before = program.json("rig", "show")
    program.run("rig", "set", "name=Dotterel")
    told = program.json("undo", "--what")
    check(told["type"] == "rig" and told["undone_by"] is None, f"the last act is {told}")
    check(program.json("rig", "show")["name"] == "Dotterel", "asking took it back")
    taken = program.json("undo")
    check(taken["act"] == told["act"] and taken["entries"] > 0, "another act was taken back")
    check(program.json("rig", "show") == before, "the rig is not what it was")
    check(program.json("check", "--deep")["faults"] == [], "the logbook has faults")


def begins(program):
    book = os.path.join(program.folder, "new.snugwalk")
    program.refused("undo", code=4, saying=["new.snugwalk"], book=book)
    program.run("rig", "add", "name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in",
                "measures.height=2.2 m", "measures.floor_height=22 in", 'measures.axles=["11 ft"]', book=book)
    program.refused("undo", code=6, saying=["begins a rig"], book=book)
    check(len(program.json("rig", "list", book=book)["rigs"]) == 1, "the rig is gone")


def main():
    with tempfile.TemporaryDirectory() as folder:
        program = Program(sys.argv[1], folder)
        try:
            search(program, sys.argv[2])
            undo(program)
            begins(program)
        except Failed as fault:
            print(fault)
            return 1
    print("search and undo: as expected")
    return 0


sys.exit(main())
