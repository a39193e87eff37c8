# SPDX-License-Identifier: Apache-2.0
"""The first five minutes by taps in the real app, from no file at all: an invented rig looked round and removed,
a rig described, its first short walk begun, its sheet put right. Counts the taps."""
import os
import re
import sys
import tempfile

from app_life import live
from program import Failed, Program, check

# A tap and a look at what came take about five seconds (common practice, no source): 24 are two minutes.
MOST_TAPS = 12


def main():
    app, program, _, shots = sys.argv[1:5]
    with tempfile.TemporaryDirectory(prefix="snugwalk-start-") as folder:
        try:
            book = os.path.join(folder, "mine", "new.snugwalk")
            said = live(app, "begin", book, shots, "2026-11-24T08:10:00+13:00")
            taps = int(re.search(r"^taps (\d+)$", said, re.M).group(1))
            check(taps <= MOST_TAPS, f"{taps} taps to the first line of the first walk")
            left = set(os.listdir(os.path.dirname(book))) - {"data", "config"}  # the app's own folders
            check(left == {"new.snugwalk"}, f"left behind: {left}")
            line = Program(program, folder)
            line.book = book
            rig = line.json("rig", "show")
            check(rig["name"] == "Kea" and rig["kind"] == "travel_trailer", f"the rig is {rig['name']}, {rig['kind']}")
            # NIST SP 811 appendix B.8: 1 ft = 0.3048 m exactly
            check(abs(rig["measures"]["length"]["value"] - 20 * 0.3048) < 1e-9, "the length is not as put right")
            check(line.json("check", "--deep")["faults"] == [], "check found faults")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print(f"{taps} taps from nothing to the first line")
    return 0


if __name__ == "__main__":
    sys.exit(main())
