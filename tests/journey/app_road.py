# SPDX-License-Identifier: Apache-2.0
"""Before the road by taps: a walk without a hold and its slip; a day later a point that could not be looked at, its hold,
a person's own decision, and both on the slip."""
import os
import re
import shutil
import subprocess
import sys
import tempfile

from app_life import live
from program import Failed, Program, check


def text_of(pdf):
    return subprocess.run([shutil.which("pdftotext"), "-layout", pdf, "-"], check=True, stdout=subprocess.PIPE,
                          text=True).stdout


def main():
    app, program, _, shots = sys.argv[1:5]
    with tempfile.TemporaryDirectory(prefix="snugwalk-road-") as folder:
        try:
            line = Program(program, folder)
            rig = os.path.join(folder, "heron.snugwalk")
            line.run("rig", "add", "name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in",
                     "measures.height=2.2 m", "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]',
                     "fittings=leaf_springs,electric_brakes,lp_gas,ball_coupling,safety_chains", book=rig)
            slips = [os.path.join(folder, name) for name in ("clear.pdf", "held.pdf")]
            said = live(app, "clear", rig, shots, "2026-11-20T08:10:00+13:00", PDF=slips[0])
            check(re.search(r"^state No hold among the \d+ points looked at since ", said, re.M), f"the state: {said}")
            check("not that nothing will fail" in said, f"the state promises: {said}")
            check("on hold" not in text_of(slips[0]).lower(), "the slip has a hold that nobody found")
            said = live(app, "held", rig, shots, "2026-11-21T08:10:00+13:00", PDF=slips[1],
                        line="Last lap before pulling away", reason="too dark")
            check(re.search(r"^state 1 on hold: ", said, re.M), f"the state: {said}")
            slip = text_of(slips[1])
            for words in ("a step left down", "Mar", "too dark"):
                check(words in slip, f"the slip does not say \"{words}\":\n{slip}")
            state = line.json("--at", "2026-11-21T09:00:00+13:00", "state", book=rig)
            check(state["hold"] == 1 and state["accepted"] == 1, f"holds {state['hold']}, accepted {state['accepted']}")
            check(line.json("check", "--deep", book=rig)["faults"] == [], "check found faults")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print("no hold; then one, accepted once, and both slips say so")
    return 0


if __name__ == "__main__":
    sys.exit(main())
