# SPDX-License-Identifier: Apache-2.0
"""The main job by the command line, on the demo rig: walk, rivet, killed process, comparison, report."""
import os
import re
import signal
import sys
import tempfile

from program import Failed, Program, check

NOW = "2026-11-20T08:10:00+13:00"
RIVET = "belly-pan-sheet"


def acted(program, *arguments):
    return program.json("--by", "M. Rata", "--at", NOW, "--where", "-44.27, 170.10, 640", *arguments)


def points_of(walk, wanted):
    return [p for line in walk["tape"] for p in line["points"] if wanted(p)]


def walk_two_zones(program, walk):
    """Passes what belongs to brakes and hitch; gives the points marked."""
    zones = {p["point"]: p["zone"] for p in program.json("points")["points"]}
    marked = points_of(walk, lambda p: zones[p] in ("brakes", "hitch"))
    check(len(marked) >= 8, f"only {len(marked)} points in two zones")
    for point in marked:
        acted(program, "walk", "mark", point, "pass")
    return marked


def low_tire_warns(program):
    """Limits are the placard and sidewall of the demo rig; JSON stays in SI whatever the units shown."""
    marked = acted(program, "--units", "us", "walk", "mark", "tire-pressure", "pass", "--how", "measured",
                   "--reading", "cold-pressure@wheel 1L=300 kPa", "--reading", "cold-pressure@wheel 1R=400 kPa")
    check(len(marked["warnings"]) == 1, f"warnings {marked['warnings']}")
    warning = marked["warnings"][0]
    check((warning["place"], warning["unit"], warning["basis"]) == ("wheel 1L", "Pa", "maker"), f"warning {warning}")
    check([round(warning[key]) for key in ("value", "low", "high")] == [300_000, 380_000, 450_000], f"warning {warning}")


def log_rivet(program, source):
    photo = os.path.join(source, "demo-rig", "photos", "rivet-2026-11.jpg")
    program.refused("walk", "mark", RIVET, "attention", "--defect", "loose", "--grade", "4", code=6,
                    saying=["open finding already", "--same", "--new"])
    found = [f for f in program.json("finding", "list")["findings"] if f["point"] == RIVET]
    check(len(found) == 1, f"{len(found)} open findings on the belly pan, expected the rivet")
    acted(program, "walk", "mark", RIVET, "attention", "--same", found[0]["id"][:8], "--grade", "4", "--extent", "14 mm",
          "--note", "two more rivets work", "--photo", photo)
    return found[0]["id"]


def kill_between_marks(program, walk, done):
    """Marks on, killing a process in the middle of each third mark; gives every acknowledged point."""
    left = points_of(walk, lambda p: p not in done and p != RIVET)[:9]
    acknowledged = []
    for i, point in enumerate(left):
        process = program.start("--json", "--at", NOW, "walk", "mark", point, "pass")
        if i % 3 == 1:
            process.send_signal(signal.SIGKILL)
        out, _ = process.communicate(timeout=60)
        if process.returncode == 0 and '"mark"' in out:
            acknowledged.append(point)
    check(acknowledged, "no mark was acknowledged")
    return acknowledged


def expect_marks(program, points):
    shown = program.json("walk", "show")
    states = {m["point"]: m["state"] for m in shown["marks"]}
    lost = [p for p in points if p not in states]
    check(not lost, f"acknowledged marks that are gone: {lost}")
    check(shown["counts"]["not_looked"] > 0, "nothing is left to look at")
    unmarked = [line["line"] for line in shown["tape"] if any(p not in states for p in line["points"])]
    check(shown["next_line"] == unmarked[0], "the walk does not go on at the first unmarked line")


def undo_takes_one_back(program, walk, done):
    point = points_of(walk, lambda p: p not in done and p != RIVET)[-1]
    acted(program, "walk", "unseen", point, "wet_or_icy")
    acted(program, "walk", "undo")
    states = {m["point"] for m in program.json("walk", "show")["marks"]}
    check(point not in states, "undo left the mark")


def expect_worse(program, rivet):
    compared = program.json("compare")
    change = next(p for p in compared["points"] if p["point"] == RIVET)
    found = next(f for f in change["findings"] if f["finding"] == rivet)
    check(change["change"] == "worse" and found["change"] == "worse", f"the rivet is {found['change']}, not worse")
    check((found["then_grade"], found["now_grade"]) == (2, 4), f"grades {found}")
    check(abs(found["now_extent"]["value"] - 0.014) < 1e-12, f"extent {found['now_extent']}")
    check(len(found["then_photos"]) == 1 and len(found["now_photos"]) == 1, "not one photo then and one now")
    check("worse" in program.run("compare"), "the text does not say worse")


def expect_report(program):
    page = os.path.join(program.folder, "report.html")
    program.run("--at", NOW, "report", "--out", page)
    with open(page, encoding="utf-8") as file:
        html = file.read()
    check(html.count("data:image/jpeg;base64,") >= 4, "photos are not in the report")
    check("<svg" in html and "Not an official inspection" in html, "drawing or footer is missing")
    fetched = re.findall(r"""(?:src|href)=['"](?!data:)""", html)
    check(not fetched, "the report fetches something")


def draws_beside_the_original(program, rivet):
    """Lines on a photo change no file, measure by their ruler, and show in the report."""
    photo = next(f for f in program.json("finding", "list")["findings"] if f["id"] == rivet)["photos"][-1]
    folder = program.book + ".photos"
    files = lambda: {name: open(os.path.join(where, name), "rb").read()
                     for where, _, names in os.walk(folder) for name in names}
    before = files()
    program.json("photo", "draw", photo["id"], "--erase", "--circle", "0.4,0.5,0.5,0.5:rivet", "--ruler",
                 "0.1,0.9,0.5,0.9=40 mm")
    length = program.json("photo", "measure", photo["id"], "0.2,0.2,0.4,0.2")["length"]["value"]
    check(abs(length - 0.020) < 1e-9, f"half of 40 mm measures {length}")
    check(files() == before, "drawing touched a photo's file")


def finding_between_walks(program):
    """Two findings on one point stay two; a look outside a walk marks nothing; stock goes down by a mend."""
    first = acted(program, "finding", "add", "window-frames", "--new", "--defect", "gap", "--grade", "2", "--place", "window 1")
    check(first["walk"] is None and first["mark"] is None, "a look between walks has a walk or a mark")
    program.refused("finding", "add", "window-frames", "--defect", "gap", "--grade", "2", "--place", "window 1", code=6,
                    saying=[first["id"][:8], "--new"])
    program.refused("finding", "worse", first["id"], "--grade", "1", code=2, saying=["grade 2"])
    worse = program.json("--at", "2026-11-21T08:10:00+13:00", "finding", "worse", first["id"], "--grade", "3")
    check([look["grade"] for look in worse["looks"]] == [2, 3], f"looks {worse['looks']}")
    program.json("--at", "2026-11-21T09:00:00+13:00", "supplies", "have", "non-sag sealant", "2 cartridges")
    program.json("--at", "2026-11-21T10:00:00+13:00", "mend", first["id"], "--action", "reseal", "--what", "new bead",
                 "--part", "wall sealant, 1 cartridge", "--cost", "NZD 20")
    items = program.json("--at", "2026-11-21T11:00:00+13:00", "supplies", "items")["items"]
    left = next(i for i in items if i["item"] == "non-sag-sealant")["on_hand"]["value"]
    check(abs(left - 300e-6) < 1e-12, f"{left} m3 on hand after a mend took one of two cartridges")
    due = program.json("--at", "2026-11-21T12:00:00+13:00", "event", "kerb_strike")["due"]
    check("tire-bulges" in due, f"due after a kerb strike: {due}")


def journey(program, source):
    program.run("demo", "--from", os.path.join(source, "demo-rig"))
    before = len(program.json("walk", "list")["walks"])
    walk = acted(program, "walk", "start", "full_round")
    program.refused("walk", "start", "full_round", code=6, saying=["not finished"])
    done = walk_two_zones(program, walk)
    low_tire_warns(program)
    rivet = log_rivet(program, source)
    done += [RIVET, "tire-pressure"] + kill_between_marks(program, walk, done)
    expect_marks(program, done)
    undo_takes_one_back(program, walk, done)
    acted(program, "walk", "finish")
    check(len(program.json("walk", "list")["walks"]) == before + 1, "the walk is not in the list")
    expect_worse(program, rivet)
    acted(program, "mend", rivet[:8], "--action", "replace", "--what", "three rivets", "--minutes", "25")
    mended = next(f for f in program.json("finding", "list")["findings"] if f["id"] == rivet)
    check(mended["status"] == "mended", f"after the mend the finding is {mended['status']}")
    draws_beside_the_original(program, rivet)
    expect_report(program)
    finding_between_walks(program)
    check(program.json("check", "--deep")["faults"] == [], "check found faults")


def main():
    with tempfile.TemporaryDirectory(prefix="snugwalk-journey-") as folder:
        try:
            journey(Program(sys.argv[1], folder), sys.argv[2])
        except Failed as fault:
            print("failed:", fault)
            return 1
    print("the journey went as expected")
    return 0


if __name__ == "__main__":
    sys.exit(main())
