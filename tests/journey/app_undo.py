# SPDX-License-Identifier: Apache-2.0
"""Taken back by taps: a mark on the walk, a mend from the logbook. What was taken back stays in the record."""
import os
import sys
import tempfile

from app_life import live
from program import Failed, Program, check


def mends_of(line):
    return line.run("report", "--format", "csv", "--list", "mends").splitlines()


def main():
    app, program, source, shots = sys.argv[1:5]
    with tempfile.TemporaryDirectory(prefix="snugwalk-undo-") as folder:
        try:
            line = Program(program, folder)
            line.run("demo", "--from", os.path.join(source, "demo-rig"))
            mends = mends_of(line)
            open_before = {one["id"] for one in line.json("finding", "list")["findings"]}
            live(app, "take_back", line.book, shots, "2026-11-20T08:10:00+13:00")
            walk = max(line.json("walk", "list")["walks"], key=lambda one: one["started"])
            marked = walk["counts"]["points"] - walk["counts"]["not_looked"]
            check(marked == len(walk["tape"][0]["points"]), f"{marked} points marked, those of the first line were left")
            check(mends_of(line) == mends, "the mend still counts")
            check({one["id"] for one in line.json("finding", "list")["findings"]} == open_before, "other findings are open")
            check(line.json("check", "--deep")["faults"] == [], "check found faults")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print("a mark and a mend taken back")
    return 0


if __name__ == "__main__":
    sys.exit(main())
