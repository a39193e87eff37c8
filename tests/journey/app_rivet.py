# SPDX-License-Identifier: Apache-2.0
"""A loose rivet through three lives of the app: found, worse two months later and mended, confirmed."""
import os
import re
import sys
import tempfile

from app_life import live
from program import Failed, Program, check

LIVES = [("find", "2026-09-12T09:00:00+12:00"), ("come_back", "2026-11-14T09:00:00+13:00"),
         ("confirm", "2026-11-15T09:00:00+13:00")]


def main():
    app, program, source, shots = sys.argv[1:5]
    camera = os.path.join(source, "demo-rig", "photos")
    with tempfile.TemporaryDirectory(prefix="snugwalk-rivet-") as folder:
        try:
            line = Program(program, folder)
            line.run("rig", "add", "name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in",
                     "measures.height=2.2 m", "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]',
                     "fittings=leaf_springs,electric_brakes,lp_gas,ball_coupling,safety_chains,belly_pan")
            taps = None
            for role, now in LIVES:
                said = live(app, role, line.book, shots, now, camera=camera)
                taps = re.search(r"^taps (\d+)$", said, re.M) or taps
            findings = line.json("finding", "list", "--all")["findings"]
            check(len(findings) == 1, f"{len(findings)} findings, one was made")
            finding = line.json("finding", "show", findings[0]["id"])
            check(finding["status"] == "confirmed", f"it is {finding['status']}")
            check([look["grade"] for look in finding["looks"]] == [3, 4], "the looks are not 3, then 4")
            check(finding["place"]["face"] == "underside", f"it is on {finding['place']}")
            check(len(finding["photos"]) == 1, f"{len(finding['photos'])} photos")
            check(line.json("check", "--deep")["faults"] == [], "check found faults")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print(f"found, worse, mended, confirmed; a finding with its photo in {taps.group(1)} taps after attention")
    return 0


if __name__ == "__main__":
    sys.exit(main())
