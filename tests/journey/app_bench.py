# SPDX-License-Identifier: Apache-2.0
"""A question of the bench by taps; the answer is held against the definitions of wire and copper."""
import math
import re
import sys
import tempfile

from app_life import live
from program import Failed, Program, check

# ASTM B258: AWG 36 is 0.005 in, 0000 is 0.46 in, 39 steps between; NIST SP 811 B.8: 1 in = 25.4 mm, 1 ft = 0.3048 m
DIAMETER_MM = 0.005 * 25.4 * 92 ** ((36 - 12) / 39)
# IEC 60028: annealed copper at 20 degC, 1/58 ohm mm2/m
RESISTANCE = 2 * 25 * 0.3048 / 58 / (math.pi / 4 * DIAMETER_MM**2)


def main():
    app, program, _, shots = sys.argv[1:5]
    with tempfile.TemporaryDirectory(prefix="snugwalk-bench-") as folder:
        try:
            line = Program(program, folder)
            line.run("rig", "add", "name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in",
                     "measures.height=2.2 m", "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]')
            said = live(app, "wire", line.book, shots, "2026-11-20T08:10:00+13:00")
            drop = float(re.search(r"^figure Drop: ([\d.]+)\sV", said, re.M).group(1))
            check(abs(drop - 13 * RESISTANCE) < 0.005, f"{drop} V, by the definitions {13 * RESISTANCE:.4f} V")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print(f"{drop} V over 25 ft of 12 AWG")
    return 0


if __name__ == "__main__":
    sys.exit(main())
