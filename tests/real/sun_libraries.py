# SPDX-License-Identifier: Apache-2.0
"""Declination, day length and radiation geometry of [FAO-56] as we have it against two JavaScript libraries (suncalc,
solar-calculator), run by node now: usage: sun_libraries.py PROGRAM FOLDER.

FAO-56 takes a sine of the day's number for the declination; theirs follows the orbit. They part by 1.04 degrees at most, in
October: that is FAO-56's own error, printed here. With it taken out by a sum over the minutes of the day, what is left is the
geometry: half a percent of light (FAO-56's distance to the sun is a cosine too), a minute and a half of day."""
import datetime
import json
import math
import os
import shutil
import subprocess
import sys

LATITUDES = [-60, -45, -30, -15, 0, 15, 30, 45, 60]
DATES = [str(datetime.date(2026, month, day)) for month in range(1, 13) for day in (5, 20)]


def theirs(folder, asked):
    script = os.path.join(os.path.dirname(os.path.abspath(__file__)), "sun_libraries.cjs")
    done = subprocess.run(["node", script, folder], input=json.dumps(asked), capture_output=True, text=True, check=True)
    return json.loads(done.stdout)


def ours(program, latitude, date):
    command = [program, "--json", "weather", "sun", "--lat", str(latitude), "--date", date]
    return json.loads(subprocess.run(command, capture_output=True, text=True, check=True).stdout)


def light(latitude, declination):
    """Sum of the sine of the sun's height over the minutes of a day."""
    return sum(max(0.0, math.sin(latitude) * math.sin(declination) +
                   math.cos(latitude) * math.cos(declination) * math.cos(2 * math.pi * (m + 0.5) / 1440)) for m in range(1440))


def hours(latitude, declination):
    return sum(math.sin(latitude) * math.sin(declination) + math.cos(latitude) * math.cos(declination) *
               math.cos(2 * math.pi * (m + 0.5) / 14400) > 0 for m in range(14400)) / 600


def main():
    program, folder = sys.argv[1:3]
    if shutil.which("node") is None:
        print("failed: no node; platform/packages/test.txt brings it with npm")
        return 1
    if not os.path.exists(os.path.join(folder, "list.tsv")):
        print(f"failed: no libraries in {folder}; run tests/real/fetch_sun_libraries.sh")
        return 1
    asked = [[latitude, date] for latitude in LATITUDES for date in DATES]
    worst = {"declination": 0.0, "light": 0.0, "hours": 0.0, "geometry of light": 0.0, "geometry of hours": 0.0}
    bounds = {"declination": 1.1, "geometry of light": 0.005, "geometry of hours": 0.025}
    faults, almanac = [], []
    for (latitude, date), other in zip(asked, theirs(folder, asked)):
        mine = ours(program, latitude, date)
        place = math.radians(latitude)
        my_sun, their_sun = math.radians(mine["declination"]), math.radians(other["frame_declination"])
        moved = mine["extraterrestrial"] * light(place, their_sun) / light(place, my_sun)
        moved_hours = mine["day_length"] + hours(place, their_sun) - hours(place, my_sun)
        gaps = {"declination": abs(mine["declination"] - other["declination"]),
                "light": abs(mine["extraterrestrial"] / other["extraterrestrial"] - 1),
                "hours": abs(mine["day_length"] - other["hours"]),
                "geometry of light": abs(moved / other["extraterrestrial"] - 1),
                "geometry of hours": abs(moved_hours - other["hours"])}
        for name, gap in gaps.items():
            worst[name] = max(worst[name], gap)
            if name in bounds and gap > bounds[name]:
                faults.append(f"{name} at {latitude} on {date}: {gap:.3f} over {bounds[name]}")
        almanac.append(other["almanac_hours"] - hours(place, math.radians(other["declination"])))
    # the almanac counts from the sun's upper limb, through bent light: 0.833 degrees below the horizon
    if not (0.1 < min(almanac) and max(almanac) < 0.4):
        faults.append(f"the almanac's day is {min(almanac):.2f} to {max(almanac):.2f} h longer")
    print(f"{len(asked)} days, our largest distance from theirs: declination {worst['declination']:.2f} degrees, light "
          f"{100 * worst['light']:.1f} %, day {60 * worst['hours']:.0f} minutes; geometry alone: light "
          f"{100 * worst['geometry of light']:.2f} %, day {60 * worst['geometry of hours']:.1f} minutes; the almanac's day is "
          f"{60 * min(almanac):.0f} to {60 * max(almanac):.0f} minutes longer")
    for fault in faults:
        print("failed:", fault)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
