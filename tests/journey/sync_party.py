# SPDX-License-Identifier: Apache-2.0
"""An owner's phone and laptop and a technician share the demo rig over a stick and over a file to hand over:
what each wrote arrives at all, a conflict is shown and settled, a technician is revoked and adopted."""
import os
import sys
import tempfile
import zipfile

from party import Device, enrolls, expect_alike, rig_of, round_of
from program import Failed, check

DAY = "2026-12-{:02d}T08:10:00+13:00"


def begin(program, source, folder):
    """The demo rig on the phone, shared with a laptop (owner) and a technician."""
    phone, laptop, technician = (Device(program, folder, name) for name in ("phone", "laptop", "technician"))
    phone.run("demo", "--from", os.path.join(source, "demo-rig"))
    stick = os.path.join(folder, "stick")
    os.mkdir(stick)
    for device in (phone, laptop, technician):
        device.meets_at("stick", "folder", stick)
    enrolls(phone, laptop, "owner")
    device_id = enrolls(phone, technician, "technician", "--until", "2026-12-31")
    sent = phone.syncs()
    check(sent["entries_sent"] > 100 and sent["photos_sent"] > 0, f"the phone sent {sent}")
    got = laptop.syncs()
    check(got["entries_received"] == sent["entries_sent"], f"the laptop got {got}")
    check(got["thumbnails_received"] == sent["photos_sent"] and got["photos_received"] == 0, f"thumbnails first: {got}")
    technician.syncs()
    again = phone.syncs()
    check(again["entries_sent"] == 0 and again["entries_received"] == 0, f"a second sync moved {again}")
    expect_alike([phone, laptop, technician])
    return phone, laptop, technician, device_id


def all_walk(phone, laptop, technician):
    """One walk, three people, each marks points without a signal."""
    walk = phone.acted("--at", DAY.format(1), "walk", "start", "full_round")
    points = [p for line in walk["tape"] for p in line["points"]]
    round_of([phone, laptop, technician], times=1)
    for start, device in enumerate((phone, laptop, technician)):
        for point in points[start:12:3]:
            device.acted("--at", DAY.format(2), "walk", "mark", point, "pass")
    technician.acted("--at", DAY.format(2), "finding", "add", "window-frames", "--new", "--defect", "gap", "--grade", "3",
                     "--place", "window 1")
    round_of([phone, laptop, technician])
    expect_alike([phone, laptop, technician])
    marked = {m["point"] for m in phone.json("walk", "show")["marks"]}
    check(set(points[:12]) <= marked, f"marks that did not arrive: {set(points[:12]) - marked}")
    return points


def conflict_is_settled(devices, point):
    """Two mark one point apart: the worse is shown, both versions are listed, one entry settles it everywhere."""
    phone, laptop, technician = devices
    phone.acted("--at", DAY.format(3), "walk", "mark", point, "pass")
    laptop.acted("--at", DAY.format(3), "walk", "unseen", point, "wet_or_icy")
    round_of(devices)
    expect_alike(devices)
    state = lambda d: next(m["state"] for m in d.json("walk", "show")["marks"] if m["point"] == point)
    check(all(state(d) == "could_not_look" for d in devices), "the worse of two marks is not the one shown")
    listed = phone.json("conflict", "list")["conflicts"]
    check(len(listed) == 1 and listed[0]["type"] == "mark", f"conflicts {listed}")
    field = next(f for f in listed[0]["fields"] if f["field"] == "state")
    check({v["value"]: v["by"] for v in field["versions"]} == {"pass": "phone", "could_not_look": "laptop"},
          f"versions {field}")
    check("pass" in phone.run("conflict", "list") and "laptop" in phone.run("conflict", "list"), "the text hides a version")
    kept = next(v["version"] for v in field["versions"] if v["value"] == "pass")
    laptop.refused("conflict", "settle", listed[0]["id"][:8], "--keep", "00000000", code=4, saying=["no such version"])
    settled = laptop.acted("conflict", "settle", listed[0]["id"][:8], "--keep", kept)
    check(settled["settled"]["state"] == "pass" and settled["left"] == [], f"settled {settled}")
    mark = next(m for m in laptop.json("walk", "show")["marks"] if m["point"] == point)
    check(not mark.get("reason") and mark["by"] == "phone", f"a pass with the other's reason or writer: {mark}")
    round_of(devices)
    expect_alike(devices)
    check(all(d.json("conflict", "list")["conflicts"] == [] and state(d) == "pass" for d in devices), "not settled everywhere")


def file_is_handed_over(phone, laptop, folder):
    """The same by one file, as mail carries it."""
    for device in (phone, laptop):
        device.meets_at("mail", "file", os.path.join(folder, "heron.snug"))
    phone.acted("--at", DAY.format(4), "finding", "add", "roof-membrane", "--new", "--defect", "crack", "--grade", "2",
                "--face", "top", "--x", "1 m", "--y", "0 m")
    phone.syncs(store="mail")
    got = laptop.syncs(store="mail")
    check(got["entries_received"] >= 2, f"by file came {got}")
    expect_alike([phone, laptop])


def originals_on_demand(phone, laptop):
    photos = laptop.json("photo", "list")["photos"]
    check(photos and not any(p["original"] for p in photos), "originals travelled unasked")
    laptop.json("photo", "want", photos[0]["id"][:8])
    check(laptop.syncs()["photos_received"] == 1, "the wanted original did not come")
    check(laptop.syncs("--originals", "all")["photos_left"] == 0, "originals are left")
    check(all(p["original"] for p in laptop.json("photo", "list")["photos"]), "an original is missing")
    check(laptop.json("check", "--deep")["faults"] == [], "an original is damaged")


def revoked_then_adopted(phone, laptop, technician, device_id):
    """What a technician writes after the revocation is set aside by all, shown, and counts once adopted."""
    technician.syncs()
    phone.syncs()
    phone.json("device", "revoke", device_id[:8], "--reason", "job done")
    late = technician.acted("--at", DAY.format(6), "finding", "add", "window-frames", "--new", "--defect", "crack",
                            "--grade", "2", "--place", "window 2")
    technician.syncs()  # has not heard of it and leaves its entries; sealed with the old key
    round_of([phone, laptop])
    known = [f["id"] for f in phone.json("finding", "list")["findings"]]
    check(late["id"] not in known, "an entry of a revoked device was applied")
    aside = phone.json("aside", "list")["aside"]
    check(aside and all(a["device"] == device_id and "revoked" in a["reason"] for a in aside), f"aside {aside}")
    expect_alike([phone, laptop])
    phone.json("aside", "adopt", "--all")
    round_of([phone, laptop])
    for device in (phone, laptop):
        check(late["id"] in [f["id"] for f in device.json("finding", "list")["findings"]], "adopted, but not there")
        check(device.json("aside", "list")["aside"] == [], "adopted, but still aside")
    expect_alike([phone, laptop])
    after = technician.syncs()
    check(after["entries_received"] == 0, f"a revoked device got {after}")
    listed = {d["device"]: d for d in phone.json("device", "list")["devices"]}[device_id]
    check(listed["revoked"] and listed["reason"] == "job done" and listed["until"] == "2026-12-31", f"listed {listed}")


def stick_tells_nothing(phone, folder):
    """Neither words nor pictures of the logbook can be found at the store."""
    photos = [os.path.join(where, name) for where, _, names in os.walk(phone.book + ".photos") for name in names]
    with open(max(photos, key=os.path.getsize), "rb") as file:
        middle = file.read()[1000:1032]
    plain = [rig_of(phone).encode(), b"window-frames", b"technician", middle]
    for where, folders, names in os.walk(os.path.join(folder, "stick")):
        for name in names:
            with open(os.path.join(where, name), "rb") as file:
                data = file.read()
            # records of members are signed, not sealed: they say who belongs, with which role
            told = [text for text in plain if text != b"technician" or not name.endswith(".ctl")]
            found = [text for text in told if text in data]
            check(not found, f"{name} holds {found} in plain")


def sharing_of(device):
    """Who belongs with which role, what is set aside and why, what people wrote differently."""
    members = [{key: value for key, value in item.items() if key != "this_device"}
               for item in device.json("device", "list")["devices"]]
    return members, device.json("aside", "list"), device.json("conflict", "list")


def export_goes_round(program, phone, folder):
    """The open export holds the shared logbook, gives it back on a device with another key, and that one is let in."""
    viewer = Device(program, folder, "viewer")
    viewer.meets_at("stick", "folder", os.path.join(folder, "stick"))
    enrolls(phone, viewer, "viewer")
    round_of([phone, viewer], times=1)
    for number in (1, 2):  # what a viewer writes is set aside, and some of it is adopted
        viewer.acted("--at", DAY.format(7), "finding", "add", "window-frames", "--new", "--defect", "lifted", "--grade",
                         "2", "--place", f"window {number}")
    round_of([viewer, phone], times=1)
    phone.json("aside", "adopt", phone.json("aside", "list")["aside"][0]["entry"])
    check(phone.json("aside", "list")["aside"], "nothing is set aside any more")
    file = os.path.join(folder, "whole.zip")
    out = phone.json("export", file, "--all")
    check(out["shared_rigs"] == 1, f"export {out}")
    check(phone.json("check", "--export", file)["faults"] == [], "the export does not verify")
    fresh = Device(program, folder, "fresh")
    added = fresh.json("import", file)
    check(added["entries_added"] == out["entries"] and added["missing"] == [] and added["notes"] == [], f"import {added}")
    expect_alike([phone, fresh])
    check(sharing_of(fresh) == sharing_of(phone), f"sharing differs: {sharing_of(fresh)} {sharing_of(phone)}")
    check(fresh.json("photo", "list") == phone.json("photo", "list"), "photos differ")
    again = os.path.join(folder, "again.zip")
    fresh.json("export", again, "--all")
    with zipfile.ZipFile(file) as one, zipfile.ZipFile(again) as two:
        for name in ("entries.jsonl", "things.jsonl", "sharing.jsonl"):
            check(one.read(name) == two.read(name), f"{name} came back as another")
    fresh.refused("device", "offer", "--role", "helper", code=3, saying=["owner"])
    mine = fresh.acted("--at", DAY.format(8), "finding", "add", "window-frames", "--new", "--defect", "gap", "--grade", "2",
                       "--place", "window 1")
    fresh.meets_at("stick", "folder", os.path.join(folder, "stick"))
    check(fresh.syncs()["entries_sent"] == 0, "a device that nobody let in sent entries")
    enrolls(phone, fresh, "helper")
    round_of([phone, fresh])
    expect_alike([phone, fresh])
    check(mine["id"] in [f["id"] for f in phone.json("finding", "list")["findings"]], "what it wrote meanwhile is lost")


def journey(program, source, folder):
    phone, laptop, technician, device_id = begin(program, source, folder)
    points = all_walk(phone, laptop, technician)
    conflict_is_settled([phone, laptop, technician], points[13])
    file_is_handed_over(phone, laptop, folder)
    originals_on_demand(phone, laptop)
    revoked_then_adopted(phone, laptop, technician, device_id)
    check(rig_of(laptop) == rig_of(phone), "another rig")
    check(phone.json("check", "--store", "stick")["faults"] == [], "the stick is damaged")
    stick_tells_nothing(phone, folder)
    export_goes_round(program, phone, folder)


def main():
    with tempfile.TemporaryDirectory(prefix="snugwalk-party-") as folder:
        try:
            journey(sys.argv[1], sys.argv[2], folder)
        except Failed as fault:
            print("failed:", fault)
            return 1
    print("three logbooks ended alike")
    return 0


if __name__ == "__main__":
    sys.exit(main())
