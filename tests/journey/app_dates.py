# SPDX-License-Identifier: Apache-2.0
"""Due and why, a reading to its plot, and what if, by taps over the demo. What if writes nothing."""
import os
import re
import sys
import tempfile

from app_life import live
from program import Failed, Program, check

NOW = "2026-11-20T08:10:00+13:00"


def main():
    app, program, source, shots = sys.argv[1:5]
    with tempfile.TemporaryDirectory(prefix="snugwalk-dates-") as folder:
        try:
            line = Program(program, folder)
            line.run("demo", "--from", os.path.join(source, "demo-rig"))
            live(app, "read", line.book, shots, NOW, line="Tread depth", field="wheel 1L", figure="5.5")
            before = {one["point"]: one for one in line.json("--at", NOW, "due")["due"]}
            said = live(app, "ask", line.book, shots, NOW, line="Tread depth")
            trends = re.findall(r"^trend (.*) \| (\d+) \| (.*)$", said, re.M)
            check(any("5.5" in last for _, _, last in trends), f"the reading is on no plot: {trends}")
            check(re.search(r"^what if: \S", said, re.M), f"what if says nothing: {said}")
            due = {one["point"]: one for one in line.json("--at", NOW, "due")["due"]}
            check(due == before, "what if moved a date of the logbook")
            check(line.json("check", "--deep")["faults"] == [], "check found faults")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print(f"{len(trends)} plots, the reading on one of them; {said.split('what if: ')[1].strip()}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
