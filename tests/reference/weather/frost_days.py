# SPDX-License-Identifier: Apache-2.0
"""Freeze-thaw cycles of four real years in Seattle and New York (daily lows and highs, fetch_climate.sh): `weather frost` against a
plain state machine here, cycle by cycle; and what is to be expected of the months' means, which our docstring says is 1.34 and 1.545
times too many. usage: frost_days.py PROGRAM FOLDER"""
import json
import math
import os
import pathlib
import subprocess
import sys
import tempfile

import stations

SCATTER = 4.5  # K, as core/weather/laws/freeze_thaw.hpp has it
TIMES_TOO_MANY = {"New York": 1.34, "Seattle": 1.545}


def counted(days, frozen, thawed):
    cycles, was_frozen = 0, False
    for low, high in days:
        for value in (low, high):
            if value < frozen:
                was_frozen = True
            elif value > thawed:
                cycles += was_frozen
                was_frozen = False
    return cycles


def expected(rows, frozen, thawed):
    def below(limit, mean):
        return 0.5 * math.erfc(-(limit - mean) / SCATTER / math.sqrt(2))
    total = 0.0
    for month in range(1, 13):
        days = [(float(r["temp_min"]), float(r["temp_max"])) for r in rows if int(r["date"][5:7]) == month]
        low, high = (stations.mean(day[i] for day in days) for i in (0, 1))
        total += len(days) * max(0.0, below(frozen, low) - below(thawed, high))
    return total


def main():
    program, folder = sys.argv[1], pathlib.Path(sys.argv[2])
    faults = []
    rows = stations.rows(folder, "weather.csv")
    with tempfile.TemporaryDirectory() as scratch:
        for place, ratio in TIMES_TOO_MANY.items():
            mine = sorted((r for r in rows if r["location"] == place), key=lambda r: r["date"])
            days = [(float(r["temp_min"]), float(r["temp_max"])) for r in mine]
            path = os.path.join(scratch, "days.csv")
            with open(path, "w", encoding="utf-8") as file:
                file.write("date,temp_min,temp_max\n" + "".join(f'{r["date"]},{r["temp_min"]},{r["temp_max"]}\n' for r in mine))
            for frozen, thawed in ((-1, 1), (0, 0), (-2, 0)):
                done = subprocess.run([program, "--json", "weather", "frost", path, "--low", str(frozen), "--high", str(thawed)],
                                      capture_output=True, text=True, check=True)
                told, plain = json.loads(done.stdout), counted(days, frozen, thawed)
                print(f"{place}, {frozen} to {thawed} °C: {told['cycles']} cycles in {told['days']} days, "
                      f"expected {expected(mine, frozen, thawed):.0f}")
                if told["cycles"] != plain or told["days"] != len(days) or told["missing"] != 0:
                    faults.append(f"{place} {frozen} {thawed}: {told}, counted {plain}")
            if abs(expected(mine, -1, 1) / counted(days, -1, 1) - ratio) > 0.005:
                faults.append(f"{place}: {expected(mine, -1, 1) / counted(days, -1, 1):.3f} times, the docstring says {ratio}")
    for fault in faults:
        print("failed:", fault)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
