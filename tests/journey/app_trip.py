# SPDX-License-Identifier: Apache-2.0
"""A track comes in by the app's own page for files: a trip of its length with a line; a broken file is refused."""
import math
import os
import sys
import tempfile

from app_life import live
from app_wheel import EARTH_KM, track
from program import Failed, Program, check

KILOMETERS = 60.0


def main():
    app, program, _, shots = sys.argv[1:5]
    with tempfile.TemporaryDirectory(prefix="snugwalk-trip-") as folder:
        try:
            line = Program(program, folder)
            line.run("rig", "add", "name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in",
                     "measures.height=2.2 m", "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]')
            drive, broken = os.path.join(folder, "drive.gpx"), os.path.join(folder, "broken.gpx")
            track(drive, KILOMETERS, "2026-11-15")
            with open(broken, "w", encoding="utf-8") as file:
                file.write("<gpx><trk><trkseg><trkpt lat=")
            live(app, "import", line.book, shots, "2026-11-20T08:10:00+13:00", track=drive, broken=broken,
                 title="drive.gpx")
            trips = line.json("trip", "list")["trips"]
            check(len(trips) == 1, f"{len(trips)} trips, one file was whole")
            # the same drive on the ellipsoid, WGS 84: a degree along this meridian is 0.9965 of the sphere's
            degrees = math.degrees(KILOMETERS / EARTH_KM)
            length = trips[0]["summary"]["length"]["value"]
            check(abs(length - degrees * 111_100) < 0.002 * length, f"{length} m for {degrees} degrees of latitude")
            check(line.json("check", "--deep")["faults"] == [], "check found faults")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print(f"a trip of {length / 1000:.1f} km; the broken file was refused")
    return 0


if __name__ == "__main__":
    sys.exit(main())
