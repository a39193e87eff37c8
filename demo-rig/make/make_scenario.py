# SPDX-License-Identifier: Apache-2.0
"""Writes scenario.json: the rig, and trips, stays, walks and mends in time order."""
import json
import sys
from datetime import datetime, timedelta
from pathlib import Path

from make_tracks import fixes
from story.clock import iso, offset
from story.early import EARLY
from story.late import LATE
from story.places import P
from story.rig import RIG
from story.trips import TRIPS

NAMES = {"yard": "yard", "alexandra": "river camp", "methven": "foothill camp", "moeraki": "shore camp",
         "moana": "lake camp", "haast": "coast camp", "okarito": "lagoon camp", "lilybank": "lake-head camp",
         "ahuriri_hut": "hut flat"}
# The rig stands in the shed from each laying up to the next bringing out.
SHED = [("2025-06-07 15:30", "2025-08-30 09:45"), ("2026-06-06 15:10", "2026-08-29 09:30")]
BEGIN, END = "2024-09-01 12:00", "2026-11-19 18:00"


def wall(moment):
    """UTC back to the yard's clock, as text to the minute."""
    guess = moment + timedelta(hours=12)
    return (moment + timedelta(hours=offset(guess))).strftime("%Y-%m-%d %H:%M")


def stay(begin, end, place, covered):
    return {"do": "stay", "from": iso(begin), "to": iso(end), "lat": P[place][0], "lon": P[place][1],
            "covered": covered, "name": "shed at the yard" if covered else NAMES[place]}


def stays():
    """The time between trips, cut where the rig goes into the shed and out."""
    out, at, place = [], BEGIN, "yard"
    for trip in TRIPS + [None]:
        end = trip["start"] if trip else END
        for into, outof in SHED:
            if at < into < end:
                out += [stay(at, into, place, False), stay(into, outof, place, True)]
                at = outof
        out.append(stay(at, end, place, False))
        if trip:
            at, place = wall(fixes(trip)[-1][0] + timedelta(minutes=1)), trip["route"][-1]
    for number, act in enumerate(out, 1):
        act["id"] = "s%d" % number
    return [dict([("do", a.pop("do")), ("id", a.pop("id"))] + list(a.items())) for a in out]


def begins(act):
    if act["do"] == "trip":
        return datetime.fromisoformat(iso(next(t["start"] for t in TRIPS if t["id"] == act["id"])))
    return datetime.fromisoformat(act.get("from") or act.get("start") or act.get("at"))


def acts():
    trips = [{"do": "trip", "id": t["id"], "file": t["file"], "road": t["road"], "note": t["note"]} for t in TRIPS]
    return sorted(trips + stays() + EARLY + LATE, key=begins)


def main(root):
    text = json.dumps({"format": 1, "rig": RIG, "acts": acts()}, ensure_ascii=False, indent=1)
    Path(root).mkdir(parents=True, exist_ok=True)
    (Path(root) / "scenario.json").write_text(text + "\n", encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main(sys.argv[1] if len(sys.argv) > 1 else Path(__file__).resolve().parent.parent)
