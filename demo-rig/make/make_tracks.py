# SPDX-License-Identifier: Apache-2.0
"""Writes the demo's tracks: GPX 1.1 for every trip, one also as an NMEA 0183 log. Seeded."""
import math
import random
import sys
from datetime import timedelta
from pathlib import Path

from story.clock import utc
from story.places import P
from story.trips import TRIPS

SPEED = {"smooth": 86.0, "broken": 70.0, "gravel": 52.0, "washboard": 38.0, "track": 19.0}
DEGREE = 111195.0


def bends(rng, count):
    """A few sine bends: amplitude m, wave m, phase."""
    return [(rng.uniform(20, 240), rng.uniform(900, 7000), rng.uniform(0, 6.28)) for _ in range(count)]


def leg_points(a, b, rng, spacing=120.0):
    """Points from a to b with bends that vanish at both ends."""
    east = math.cos(math.radians((a[0] + b[0]) / 2)) * DEGREE
    dx, dy = (b[1] - a[1]) * east, (b[0] - a[0]) * DEGREE
    length = math.hypot(dx, dy)
    count = max(2, int(length / spacing))
    waves, hills = bends(rng, 4), bends(rng, 3)
    for i in range(count):
        f = i / count
        ends = min(1.0, 5 * f, 5 * (1 - f))
        side = sum(h * math.sin(f * length / w * 6.2832 + p) for h, w, p in waves) * ends
        climb = sum(h / 14 * math.sin(f * length / w * 6.2832 + p) for h, w, p in hills) * ends
        yield (a[0] + (b[0] - a[0]) * f + side * dx / length / DEGREE,
               a[1] + (b[1] - a[1]) * f - side * dy / length / east,
               max(4.0, a[2] + (b[2] - a[2]) * f + climb))


def road_of(trip):
    """All points of the road: (lat, lon, ele, speed limit m/s, no sky)."""
    route = trip["route"]
    rough = trip.get("rough_from") is None and trip["road"] != "smooth"
    out = []
    for a, b in zip(route, route[1:]):
        rough = (rough or a == trip.get("rough_from")) and a != trip.get("rough_to")
        hidden = (a, b) == trip.get("gap")
        # One road has one shape, whichever way it is driven.
        low, high = sorted((a, b))
        points = list(leg_points(P[low], P[high], random.Random("%s-%s" % (low, high)))) + [P[high]]
        if (low, high) != (a, b):
            points.reverse()
        limit = SPEED[trip["road"]] if rough else SPEED["smooth"] * (0.62 if hidden else 1.0)
        out += [p + (limit / 3.6, hidden) for p in points[:-1]]
    return out + [P[route[-1]] + (6.0, False)]


def step_length(a, b):
    return math.hypot((b[0] - a[0]) * DEGREE,
                      (b[1] - a[1]) * DEGREE * math.cos(math.radians(a[0])))


def drive(road, rng, period):
    """Fixes (seconds, lat, lon, ele, speed, hidden) along the road, one a period."""
    total = sum(step_length(a, b) for a, b in zip(road, road[1:]))
    stops = [total * rng.uniform(0.30, 0.38), total * rng.uniform(0.62, 0.72)][:2 if total > 150e3 else 1]
    waits = [rng.choice((540, 780, 1260)) for _ in stops]
    at, seconds, speed, done, i, out = 0.0, 0.0, 0.0, 0.0, 0, []
    mood, due = 0.9, 0.0
    while i < len(road) - 1:
        if seconds >= due:
            out.append((seconds, road[i], road[i + 1], at / max(1.0, step_length(road[i], road[i + 1])), speed))
            due += period
            mood = min(1.0, max(0.72, mood + rng.uniform(-0.06, 0.06)))
        left = (stops[0] if stops else total) - done
        wanted = min(road[i][3] * mood, math.sqrt(max(1.0, 2 * 0.5 * max(left, 2.0))))
        speed += max(-1.0, min(0.55, wanted - speed)) * 2.0
        seconds, at, done = seconds + 2.0, at + speed * 2.0, done + speed * 2.0
        while i < len(road) - 1 and at >= step_length(road[i], road[i + 1]):
            at -= step_length(road[i], road[i + 1])
            i += 1
        if stops and done >= stops[0] - 3:
            stops.pop(0)
            end, speed = seconds + waits.pop(0), 0.0
            while seconds < end and i < len(road) - 1:
                out.append((max(due, seconds), road[i], road[i + 1], at / max(1.0, step_length(road[i], road[i + 1])), 0.0))
                due = max(due, seconds) + period
                seconds = due
    out.append((max(seconds, due), road[-1], road[-1], 0.0, 0.0))
    return out


def fixes(trip):
    """Fixes with noise: (utc, lat, lon, ele, speed m/s)."""
    rng = random.Random(trip["file"])
    road = road_of(trip)
    period = 20.0 if len(road) < 800 else 40.0
    begin = utc(trip["start"])
    out = []
    for seconds, a, b, f, speed in drive(road, rng, period):
        if a[4]:
            continue
        n, e, u = rng.gauss(0, 2.6), rng.gauss(0, 2.6), rng.gauss(0, 3.2)
        out.append((begin + timedelta(seconds=round(seconds)),
                    a[0] + (b[0] - a[0]) * f + n / DEGREE,
                    a[1] + (b[1] - a[1]) * f + e / (DEGREE * 0.72), a[2] + (b[2] - a[2]) * f + u, speed))
    if trip.get("absurd"):
        for k in (len(out) // 4, len(out) // 2, len(out) // 2 + 1, 3 * len(out) // 4):
            t, lat, lon, ele, speed = out[k]
            out[k] = (t, lat + rng.uniform(0.08, 0.3), lon + rng.uniform(0.1, 0.4), ele + 2900, speed)
    return out


def gpx(trip, points):
    head = ('<?xml version="1.0" encoding="UTF-8"?>\n'
            '<gpx version="1.1" creator="demo of an invented rig" xmlns="http://www.topografix.com/GPX/1/1">\n'
            "<metadata><name>%s</name><desc>Invented; the roads are not real roads.</desc></metadata>\n"
            "<trk><name>%s</name><trkseg>\n" % (trip["name"], trip["name"]))
    rows = ['<trkpt lat="%.5f" lon="%.5f"><ele>%.0f</ele><time>%s</time></trkpt>\n'
            % (lat, lon, ele, t.strftime("%Y-%m-%dT%H:%M:%SZ")) for t, lat, lon, ele, _ in points]
    return head + "".join(rows) + "</trkseg></trk>\n</gpx>\n"


def sentence(body):
    total = 0
    for c in body:
        total ^= ord(c)
    return "$%s*%02X\r\n" % (body, total)


def minutes(value, digits, letters):
    """4415.7200,S: degrees and minutes, rounded first so that 60.0000 cannot appear."""
    whole = round(abs(value) * 60 * 10000)
    return "%0*d%07.4f,%s" % (digits, whole // 600000, whole % 600000 / 10000, letters[value < 0])


def nmea(points):
    out = []
    for k, (t, lat, lon, ele, speed) in enumerate(points):
        p, q = points[max(0, k - 1)], points[min(len(points) - 1, k + 1)]
        course = math.degrees(math.atan2((q[2] - p[2]) * 0.72, q[1] - p[1])) % 360
        place = minutes(lat, 2, "NS") + "," + minutes(lon, 3, "EW")
        clock = t.strftime("%H%M%S.00")
        out.append(sentence("GPGGA,%s,%s,1,09,0.9,%.1f,M,9.4,M,," % (clock, place, ele)))
        out.append(sentence("GPRMC,%s,A,%s,%.1f,%.1f,%s,,,A" % (clock, place, speed * 1.943844, course, t.strftime("%d%m%y"))))
    return "".join(out)


def main(root):
    folder = Path(root) / "tracks"
    folder.mkdir(parents=True, exist_ok=True)
    for trip in TRIPS:
        points = fixes(trip)
        (Path(root) / trip["file"]).write_text(gpx(trip, points), encoding="utf-8", newline="\n")
        if trip.get("nmea"):
            path = (Path(root) / trip["file"]).with_suffix(".nmea")
            path.write_bytes(nmea(points).encode("ascii"))


if __name__ == "__main__":
    main(sys.argv[1] if len(sys.argv) > 1 else Path(__file__).resolve().parent.parent)
