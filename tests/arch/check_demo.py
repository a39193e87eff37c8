# SPDX-License-Identifier: Apache-2.0
"""Checks the demo rig: order, files, slugs, references, tracks, photos, rebuild. One line a fault.

Usage: check_demo.py [repository] [--no-rebuild | --all]. Without --all two of the photos are drawn again, with
it every one, which takes minutes. Formats checked against: GPX 1.1 (topografix.com/GPX/1/1),
NMEA 0183 checksum (exclusive or between $ and *), EXIF 2.32 tag numbers (from memory).
"""
import json
import math
import struct
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
from datetime import datetime, timedelta
from pathlib import Path

GPX = "{http://www.topografix.com/GPX/1/1}"
SAMPLE = ["rivet-2026-09", "tail-lamp-2025-12"]
faults = []


def fault(where, what):
    faults.append("%s: %s" % (where, what))


def moment(text):
    return datetime.fromisoformat(text.replace("Z", "+00:00"))


def track(path):
    """Fixes (time, lat, lon); a fault when it is not a track."""
    try:
        points = ElementTree.parse(path).getroot().findall(".//%strkpt" % GPX)
        fixes = [(moment(p.find(GPX + "time").text), float(p.get("lat")), float(p.get("lon"))) for p in points]
    except (ElementTree.ParseError, AttributeError, ValueError, OSError) as error:
        fault(path.name, "not a GPX 1.1 track: %s" % error)
        return []
    if len(fixes) < 2:
        fault(path.name, "fewer than two points")
    if any(b[0] <= a[0] for a, b in zip(fixes, fixes[1:])):
        fault(path.name, "fixes out of order")
    return fixes


def speeds(fixes):
    for (t0, a0, o0), (t1, a1, o1) in zip(fixes, fixes[1:]):
        d = math.hypot(a1 - a0, (o1 - o0) * math.cos(math.radians(a0))) * 111195
        yield d / (t1 - t0).total_seconds()


def begins(act, root):
    if act["do"] == "trip":
        fixes = track(root / act["file"])
        return fixes[0][0] if fixes else None
    return moment(act.get("from") or act.get("start") or act.get("at"))


def check_order(acts, root):
    times = [(a["id"], begins(a, root)) for a in acts]
    times = [(i, t) for i, t in times if t]
    for (_, before), (name, t) in zip(times, times[1:]):
        if t < before:
            fault(name, "out of time order")
    if len(times) < 2 or times[-1][1] - times[0][1] < timedelta(days=24 * 30.44):
        fault("scenario.json", "spans less than 24 months")
    if len({a["id"] for a in acts}) != len(acts):
        fault("scenario.json", "an id is used twice")


def check_walks(acts):
    walks = [a for a in acts if a["do"] == "walk"]
    if len(walks) < 8:
        fault("scenario.json", "fewer than 8 walks")
    if not walks or walks[-1]["kind"] != "full_round" or not walks[-1].get("finish"):
        fault("scenario.json", "the last walk is not a finished full round")
    for w in walks:
        if w.get("finish") and moment(w["finish"]) <= moment(w["start"]):
            fault(w["id"], "finishes before it starts")
    return walks


def catalogue(repository):
    """Points by slug, or nothing while the data are not there."""
    folder = repository / "core/catalogue/data/points"
    points = {}
    for path in sorted(folder.glob("*.json")) if folder.is_dir() else []:
        data = json.loads(path.read_text(encoding="utf-8"))
        for point in data["points"] if isinstance(data, dict) else data:
            points[point["slug"]] = point
    return points


def check_mark(walk, mark, points):
    where = "%s %s" % (walk["id"], mark["point"])
    point = points.get(mark["point"])
    if points and not point:
        fault(where, "no such point in the catalogue")
        return
    known = {r["slug"] for r in point["readings"]} if point else None
    for reading in mark.get("readings", []):
        if known is not None and reading["reading"] not in known:
            fault(where, "the point takes no reading " + reading["reading"])
    defect = mark.get("finding", {}).get("defect")
    if point and defect and defect not in point["defects"]:
        fault(where, "the point has no defect " + defect)
    if mark["mark"] == "could_not_look" and not mark.get("reason"):
        fault(where, "could not look without a reason")


def check_findings(acts, points):
    """Every reference names a finding that exists by then and is open."""
    is_open, where = {}, {}
    for act in acts:
        for name in act.get("closes", []):
            if not is_open.get(name):
                fault(act["id"], "closes %s, which is not open" % name)
            is_open[name] = False
        for mark in act.get("marks", []):
            check_mark(act, mark, points)
            if "finding" in mark:
                name = mark["finding"]["id"]
                if name in is_open:
                    fault(act["id"], "finding %s opened twice" % name)
                is_open[name], where[name] = True, mark["point"]
            elif "same" in mark:
                if not is_open.get(mark["same"]) or where.get(mark["same"]) != mark["point"]:
                    fault(act["id"], "same %s, which is not open on that point" % mark["same"])
            elif mark["mark"] == "attention":
                fault(act["id"], "attention without a finding")


def tags(data):
    """EXIF tags of a JPEG as {tag: raw bytes}; IFD0, Exif and GPS (GPS + 0x10000)."""
    at, out = data.find(b"Exif\0\0"), {}
    if at < 0:
        return out
    tiff = data[at + 6:]
    work = [(struct.unpack_from("<I", tiff, 4)[0], 0)]
    while work:
        offset, base = work.pop()
        for i in range(struct.unpack_from("<H", tiff, offset)[0]):
            tag, kind, count, value = struct.unpack_from("<HHII", tiff, offset + 2 + 12 * i)
            size = count * {1: 1, 2: 1, 3: 2, 4: 4, 5: 8, 7: 1}[kind]
            start = offset + 2 + 12 * i + 8 if size <= 4 else value
            out[tag + base] = tiff[start:start + size]
            if tag in (0x8769, 0x8825):
                work.append((value, 0x10000 if tag == 0x8825 else 0))
    return out


def dimensions(data):
    """Width and height from the frame header (JPEG, ITU-T T.81 B.2.2)."""
    at = 2
    while data[at] == 0xFF:
        if data[at + 1] in (0xC0, 0xC2):
            high, wide = struct.unpack_from(">HH", data, at + 5)
            return wide, high
        at += 2 + struct.unpack_from(">H", data, at + 2)[0]
    return 0, 0


def angle(raw):
    d, m, s = (a / b for a, b in (struct.unpack_from("<II", raw, 8 * i) for i in range(3)))
    return d + m / 60 + s / 3600


def check_photo(path, walk):
    data = path.read_bytes()
    found = tags(data)
    if len(data) >= 220 * 1024:
        fault(path.name, "not under 220 KB")
    turned = struct.unpack("<H", found.get(0x0112, b"\1\0"))[0] == 6
    if dimensions(data) != ((1200, 1600) if turned else (1600, 1200)):
        fault(path.name, "not 1600 x 1200 when shown")
    if not {0x9003, 0x9011, 0x10002, 0x10004, 0x10006} <= set(found):
        fault(path.name, "time or position is missing")
        return turned
    stamp = found[0x9003].rstrip(b"\0").decode() + found[0x9011].rstrip(b"\0").decode()
    taken = datetime.strptime(stamp, "%Y:%m:%d %H:%M:%S%z")
    if walk:
        if not moment(walk["start"]) <= taken <= moment(walk["finish"]):
            fault(path.name, "taken outside its walk")
        if abs(-angle(found[0x10002]) - walk["lat"]) > 1e-4 or abs(angle(found[0x10004]) - walk["lon"]) > 1e-4:
            fault(path.name, "taken away from its walk")
    return turned


def check_photos(acts, root):
    used = {}
    for walk in (a for a in acts if a["do"] == "walk"):
        for mark in walk["marks"]:
            for name in mark.get("photos", []) + mark.get("finding", {}).get("photos", []):
                used[name] = walk
    for name in used:
        if not (root / name).is_file():
            fault(name, "no such file")
    files = sorted((root / "photos").glob("*.jpg"))
    if len(files) < 10:
        fault("photos", "fewer than 10")
    if sum(check_photo(path, used.get("photos/" + path.name)) for path in files) < 2:
        fault("photos", "fewer than two stored turned")


def check_tracks(acts, root):
    size = sum(p.stat().st_size for p in (root / "tracks").iterdir())
    if size >= 1.5e6:
        fault("tracks", "%d bytes, not under 1.5 MB" % size)
    named = {a["file"] for a in acts if a["do"] == "trip"}
    for path in sorted((root / "tracks").glob("*.gpx")):
        if "tracks/" + path.name not in named:
            fault(path.name, "in no trip")
    fast = [name for name in sorted(named) if any(v > 60 for v in speeds(track(root / name)))]
    if len(fast) != 1:
        fault("tracks", "%d tracks hold absurd fixes, wanted one" % len(fast))
    logs = sorted((root / "tracks").glob("*.nmea"))
    if not logs:
        fault("tracks", "no NMEA log")
    for path in logs:
        for number, line in enumerate(path.read_text(encoding="ascii").split(), 1):
            body, _, given = line[1:].partition("*")
            total = 0
            for c in body:
                total ^= ord(c)
            if "%02X" % total != given or line[0] != "$":
                fault("%s:%d" % (path.name, number), "wrong checksum")


def check_rebuild(root, photos):
    done = subprocess.run(["bash", str(root / "rebuild.sh"), "--check", *photos],
                          capture_output=True, text=True, check=False)
    if done.returncode:
        fault("rebuild.sh --check", (done.stdout.strip() or done.stderr.strip() or "failed").replace("\n", "; "))


def main():
    words = [w for w in sys.argv[1:] if not w.startswith("--")]
    repository = Path(words[0] if words else ".").resolve()
    root = repository / "demo-rig"
    acts = json.loads((root / "scenario.json").read_text(encoding="utf-8"))["acts"]
    points = catalogue(repository)
    check_order(acts, root)
    check_walks(acts)
    check_findings(acts, points)
    check_photos(acts, root)
    check_tracks(acts, root)
    if "--no-rebuild" not in sys.argv:
        check_rebuild(root, [] if "--all" in sys.argv else SAMPLE)
    for line in dict.fromkeys(faults):
        print(line)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
