# SPDX-License-Identifier: Apache-2.0
"""A wheel fitted in the app: its nuts come due by the distance logged, rung after rung, until done."""
import datetime
import math
import os
import sys
import tempfile

from app_life import live
from program import Failed, Program, check

# The rungs of the trade (common practice, no source): looks at 10 and 25 miles, and between 50 and 100.
DRIVES = [("first", 20.0, "2026-11-15"), ("second", 25.0, "2026-11-16"), ("last", 45.0, "2026-11-17")]
EARTH_KM = 6371.0088  # mean radius, IUGG 1980


def track(path, kilometers, day):
    """A drive due north at 60 km/h, a point a minute."""
    start = datetime.datetime.fromisoformat(day + "T01:00:00+00:00")
    points = []
    for minute in range(int(kilometers) + 1):
        latitude = -44.0 + math.degrees(minute * kilometers / int(kilometers) / EARTH_KM)
        at = (start + datetime.timedelta(minutes=minute)).strftime("%Y-%m-%dT%H:%M:%SZ")
        points.append(f'<trkpt lat="{latitude:.7f}" lon="170.0"><time>{at}</time></trkpt>')
    with open(path, "w", encoding="utf-8") as file:
        file.write('<?xml version="1.0"?><gpx version="1.1" creator="test" xmlns="http://www.topografix.com/GPX/1/1">'
                   "<trk><trkseg>" + "".join(points) + "</trkseg></trk></gpx>")


def main():
    app, program, _, shots = sys.argv[1:5]
    with tempfile.TemporaryDirectory(prefix="snugwalk-wheel-") as folder:
        try:
            line = Program(program, folder)
            line.run("rig", "add", "name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in",
                     "measures.height=2.2 m", "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]',
                     "wheels.studs=6", "fittings=leaf_springs,electric_brakes,ball_coupling,safety_chains")
            live(app, "fit", line.book, shots, "2026-11-14T09:00:00+13:00")
            for name, kilometers, day in DRIVES:
                route = os.path.join(folder, name + ".gpx")
                track(route, kilometers, day)
                live(app, "drive", line.book, shots, day + "T17:00:00+13:00", track=route, name=name)
            due = line.json("--at", "2026-11-18T09:00:00+13:00", "due")["due"]
            rules = [one["rule"] for one in due if one["point"] == "wheel-nut-torque"]
            check(rules == ["months"], f"90 km on and looked at three times, the nuts go by {rules}")
            check(line.json("check", "--deep")["faults"] == [], "check found faults")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print("fitted, due at 20, 45 and 90 km, done")
    return 0


if __name__ == "__main__":
    sys.exit(main())
