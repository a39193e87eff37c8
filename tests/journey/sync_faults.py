# SPDX-License-Identifier: Apache-2.0
"""What goes wrong between devices: killed syncs, a restored copy, a full stick, wrong words and digits, a viewer who
writes, flipped bits at a store, a lost phone."""
import os
import random
import shutil
import signal
import subprocess
import sys
import tempfile
import time

from party import Device, enrolls, expect_alike, projection, rig_of, round_of
from program import Failed, check

KILLS = 50
DAY = "2026-12-{:02d}T08:10:00+13:00"


def party(program, source, folder, *names):
    """Owners' devices over one stick, the demo rig on all."""
    devices = [Device(program, folder, name) for name in names]
    devices[0].run("demo", "--from", os.path.join(source, "demo-rig"))
    stick = os.path.join(folder, "stick")
    os.mkdir(stick)
    for device in devices:
        device.meets_at("stick", "folder", stick)
    devices[0].json("share", rig_of(devices[0]))
    for device in devices[1:]:
        enrolls(devices[0], device, "owner")
    round_of(devices, times=1)
    return devices, stick


def killed_in_the_middle(program, source, folder):
    """50 syncs killed (SIGKILL) at random moments while both go on marking: nothing acknowledged is lost."""
    (phone, laptop), _ = party(program, source, folder, "phone", "laptop")
    dice = random.Random(20261129)
    walk = phone.acted("--at", DAY.format(1), "walk", "start", "full_round")
    round_of([phone, laptop], times=1)
    points = [p for line in walk["tape"] for p in line["points"]]
    began = time.monotonic()
    phone.syncs()
    usual = time.monotonic() - began
    killed = 0
    for i in range(KILLS):
        device = (phone, laptop)[i % 2]
        device.acted("--at", DAY.format(2), "walk", "mark", points[i], "pass")
        process = device.start("--json", "sync", "--store", "stick", "--originals", "all")
        time.sleep(dice.uniform(0, usual * 1.2))
        process.send_signal(signal.SIGKILL)
        process.communicate(timeout=60)
        killed += process.returncode == -signal.SIGKILL
    check(killed >= KILLS // 4, f"only {killed} of {KILLS} syncs were killed before they ended")
    round_of([phone, laptop])
    expect_alike([phone, laptop])
    for device in (phone, laptop):
        marked = {m["point"] for m in device.json("walk", "show")["marks"]}
        check(set(points[:KILLS]) <= marked, f"{device.name} lost {set(points[:KILLS]) - marked}")
        check(device.json("check", "--deep")["faults"] == [], "check found faults")
    check(phone.json("check", "--store", "stick")["faults"] == [], "the stick is damaged")
    print(f"  {killed} of {KILLS} syncs killed before they ended, no mark lost")


def restored_copy(program, source, folder):
    """An old copy of the file goes on: a new stream, what was sent before comes back, both ways are kept."""
    (phone, laptop), _ = party(program, source, folder, "phone", "laptop")
    old = os.path.join(folder, "old")
    os.mkdir(old)
    for name in os.listdir(phone.folder):
        if name.startswith("logbook.snugwalk") and not name.endswith(".photos"):
            shutil.copy(os.path.join(phone.folder, name), old)
    sent = phone.acted("--at", DAY.format(1), "finding", "add", "window-frames", "--new", "--defect", "gap", "--grade", "2",
                       "--place", "window 1")
    round_of([phone, laptop])
    for name in os.listdir(phone.folder):
        if name.startswith("logbook.snugwalk") and not name.endswith(".photos"):
            os.remove(os.path.join(phone.folder, name))
    for name in os.listdir(old):
        shutil.copy(os.path.join(old, name), phone.folder)
    unsent = phone.acted("--at", DAY.format(2), "finding", "add", "window-frames", "--new", "--defect", "crack", "--grade",
                         "3", "--place", "window 2")
    summary = phone.syncs()
    check(summary["new_stream"], f"a copy went on under the old stream: {summary}")
    round_of([phone, laptop])
    expect_alike([phone, laptop])
    ids = {f["id"] for f in laptop.json("finding", "list")["findings"]}
    check({sent["id"], unsent["id"]} <= ids, "one of the two ways is lost")


def full_stick(program, source, folder):
    """A stick with 200 KB left: exit code 5 and a line that says so, nothing half there, and it goes on elsewhere."""
    phone = Device(program, folder, "phone")
    phone.run("demo", "--from", os.path.join(source, "demo-rig"))
    stick = os.path.join(folder, "stick")
    os.mkdir(stick)
    phone.meets_at("stick", "folder", stick)
    phone.json("share", rig_of(phone))
    before = projection(phone)
    spaces = ["unshare", "-m"] if os.getuid() == 0 else ["unshare", "-rm"]
    script = 'mount -t tmpfs -o size=200k tmpfs "$1" || exit 99; shift; "$@"; code=$?; find "$0" -type f; exit $code'
    done = subprocess.run([*spaces, "sh", "-c", script, stick, stick, program, "--book", phone.book, "--json", "sync"],
                          env=phone.environment, capture_output=True, text=True, timeout=300, check=False)
    check(done.returncode != 99, f"no tmpfs here: {done.stderr}")
    check(done.returncode == 5, f"a full stick gave {done.returncode}: {done.stderr}")
    check('"code"' in done.stderr and "stick" in done.stderr, f"said {done.stderr}")
    names = done.stdout.split()
    check(names and not any(".part-" in name for name in names), f"parts were left: {names}")
    check(projection(phone) == before, "a full stick changed the logbook")
    summary = phone.syncs()
    check(summary["damaged"] == 0, f"on an empty stick {summary}")
    check(phone.json("check", "--store", "stick")["faults"] == [], "something is missing on the new stick")


def refused(program, source, folder):
    """Words, digits, roles and places that are wrong, each with its line."""
    (phone,), _ = party(program, source, folder, "phone")
    other = Device(program, folder, "other")
    check(phone.json("share", rig_of(phone))["began"] is False, "shared twice")
    offer = phone.json("device", "offer", "--role", "helper")["offer"]
    words = offer.split()
    typo = " ".join([words[0], words[1][:-1] + ("b" if words[1][-1] != "b" else "d"), *words[2:]])
    other.refused("device", "answer", *typo.split(), code=3, saying=["word 2"])
    swapped = " ".join([words[1], words[0], *words[2:]])
    other.refused("device", "answer", *swapped.split(), code=3, saying=["word 1"])
    other.refused("device", "answer", *words[:-1], code=3, saying=["words"])
    other.refused("device", "answer", code=2, saying=["--from"])
    answer = other.json("device", "answer", *words)
    other.refused("sync", code=4, saying=["no store"])
    other.meets_at("stick", "folder", os.path.join(folder, "stick"))
    phone.syncs()
    got = other.syncs()
    check(got["entries_received"] == 0 and got["thumbnails_received"] == 0, f"a device nobody let in got {got}")
    outside = other.json("sync", "--store", "stick")["outside"]
    check(len(outside) == 1 and "owner lets it in" in outside[0]["why"], f"a device nobody let in is told {outside}")
    check(other.json("rig", "list")["rigs"] == [], "a device nobody let in sees the rig")
    wrong = f"{(int(answer['code']) + 1) % 1_000_000:06d}"
    phone.refused("device", "enroll", *answer["answer"].split(), "--code", wrong, code=3, saying=["six digits"])
    check(len(phone.json("device", "list")["devices"]) == 1, "wrong digits enrolled a device")
    stranger = Device(program, folder, "stranger")
    stranger.refused("import", os.path.join(folder, "gone.zip"), code=4, saying=["gone.zip"])
    check(not os.path.exists(stranger.book), "a wrong path left a logbook behind")
    stranger.run("demo", "--from", os.path.join(source, "demo-rig"))
    stranger.refused("share", rig_of(stranger), "--role", "helper", "--until", "2026-13-45", code=2, saying=["not a date"])
    stranger.refused("share", rig_of(stranger), "--qr", "x.png", code=2, saying=["--role"])
    stranger.refused("device", "list", code=4, saying=["not shared"])  # what was refused began nothing
    stranger.json("share", rig_of(stranger))
    picture = os.path.join(source, "demo-rig", "photos", "rivet-2026-11.jpg")
    stranger.refused("device", "answer", "--from", picture, code=3, saying=["neither words nor a code"])
    stranger.refused("device", "enroll", *answer["answer"].split(), "--code", answer["code"], code=4, saying=["offer"])
    phone.json("device", "enroll", *answer["answer"].split(), "--code", answer["code"])
    phone.refused("device", "enroll", *answer["answer"].split(), "--code", answer["code"], code=4, saying=["offer"])
    phone.refused("device", "revoke", rig_of(phone), code=4, saying=["no such device"])
    mine = next(d["device"] for d in phone.json("device", "list")["devices"] if d["this_device"])
    phone.refused("device", "revoke", mine[:8], code=6, saying=["last owner"])
    phone.syncs()
    other.refused("sync", "--store", "mail", code=4, saying=["no such store"])
    check(other.syncs()["entries_received"] > 100, "an enrolled device got nothing")
    check(other.json("sync", "--store", "stick")["outside"] == [], "an enrolled device is outside")
    other.refused("device", "offer", code=3, saying=["owner"])
    for words in (("photo", "want"), ("photo", "want", "3f2a", "--all"), ("aside", "adopt"), ("aside", "adopt", "3f2a", "--all")):
        other.refused(*words, code=2, saying=["--all", "one of both"])
    other.refused("aside", "adopt", "--all", code=4, saying=["nothing is set aside"])
    other.refused("aside", "adopt", "3f2a90bc", code=4, saying=["no such entry"])
    other.refused("conflict", "settle", "3f2a", "--keep", "7d10", code=4, saying=["conflict of that id"])
    other.refused("photo", "want", "zz", code=3, saying=["not an id"])
    other.refused("store", "add", "bad name", "folder", folder, code=3, saying=["name"])
    other.refused("store", "add", "gone", "folder", os.path.join(folder, "gone"), code=4, saying=["gone"])
    other.refused("store", "add", "stick", "folder", folder, code=6, saying=["already"])
    page = other.writes("page.snug", "<html>not a bundle</html>" * 40)
    other.refused("store", "add", "page", "file", page, code=5, saying=["page.snug"])
    secrets = other.writes("pw.txt", "five small words\n")
    web = ("store", "add", "web", "webdav", "https://127.0.0.1:9/dav/", "--user", "rata", "--password-file", secrets)
    process = other.start("--json", *web)
    _, error = process.communicate(timeout=60)
    if process.returncode == 0:  # built with Qt: a server that is not there is an error of the network
        other.refused("sync", "--store", "web", code=7, saying=["web"])
        other.json("store", "remove", "web")
    else:
        check(process.returncode == 3 and "without WebDAV" in error, f"{process.returncode} {error}")
    data = os.path.join(other.folder, "data", "snugwalk")
    for where, _, names in os.walk(data):
        for name in names:
            file = os.path.join(where, name)
            check(os.stat(file).st_mode & 0o077 == 0, f"others may read {name}")
            check(b"five small words" not in open(file, "rb").read(), f"{name} holds a password in plain")
    other.json("store", "remove", "stick")
    check(other.json("store", "list")["stores"] == [], "a removed store is still listed")


def viewer_writes(program, source, folder):
    """A viewer's entries are carried and shown, and change nothing."""
    (phone,), stick = party(program, source, folder, "phone")
    viewer = Device(program, folder, "viewer")
    viewer.meets_at("stick", "folder", stick)
    enrolls(phone, viewer, "viewer")
    round_of([phone, viewer])
    before = projection(phone)
    viewer.acted("--at", DAY.format(1), "finding", "add", "window-frames", "--new", "--defect", "gap", "--grade", "2",
                 "--place", "window 1")
    round_of([viewer, phone])
    check(projection(phone) == before, "a viewer changed the logbook")
    aside = phone.json("aside", "list")["aside"]
    check(aside and all(a["reason"] == "a viewer writes nothing" for a in aside), f"aside {aside}")
    check(phone.json("store", "list")["stores"][0]["last"]["aside"] == len(aside), "the store list does not count them")


def flipped_bits(program, source, folder):
    """Any one bit of a store is found and says what it belongs to; --mend puts a whole copy beside it."""
    (phone, laptop), stick = party(program, source, folder, "phone", "laptop")
    dice = random.Random(7)
    files = sorted(os.path.join(where, name) for where, _, names in os.walk(stick) for name in names)
    kinds = {}
    for file in files:
        kinds.setdefault(os.path.splitext(file)[1], []).append(file)
    check({".ctl", ".seg", ".man", ".chk"} <= set(kinds), f"kinds of files {sorted(kinds)}")
    tried = 0
    for kind, expected in ((".ctl", "record"), (".seg", "entries"), (".man", "photo"), (".chk", "photo")):
        for file in dice.sample(kinds[kind], min(4, len(kinds[kind]))):
            data = bytearray(open(file, "rb").read())
            bit = dice.randrange(len(data) * 8)
            data[bit // 8] ^= 1 << bit % 8
            whole = open(file, "rb").read()
            open(file, "wb").write(data)
            phone.refused("check", "--store", "stick", code=5, saying=["1 found", expected])
            open(file, "wb").write(whole)
            tried += 1
    check(phone.json("check", "--store", "stick")["faults"] == [], "bits put back are still faults")
    damaged = kinds[".seg"][0]
    data = bytearray(open(damaged, "rb").read())
    data[len(data) // 2] ^= 1
    open(damaged, "wb").write(data)
    laptop.syncs("--mend")
    check(phone.json("check", "--store", "stick")["faults"] == [], "not mended")
    third = Device(program, folder, "third")
    third.meets_at("stick", "folder", stick)
    enrolls(phone, third, "helper")
    round_of([phone, third])
    expect_alike([phone, third])
    print(f"  {tried} flipped bits found, each by the file's kind")


def lost_phone(program, source, folder):
    """Every device is lost: words on paper and a stick make a new owner; a rig that somebody made up is told."""
    (phone,), stick = party(program, source, folder, "phone")
    paper = phone.json("key", "backup")
    check(len(paper["words"].split()) == 24, f"{len(paper['words'].split())} words on paper")
    phone.syncs()
    before = projection(phone)
    fresh = Device(program, folder, "fresh")
    fresh.meets_at("stick", "folder", stick)
    words = paper["words"].split()
    wrong = [*words[:5], words[6], words[5], *words[7:]]
    fresh.refused("key", "recover", "--store", "stick", *wrong, code=3, saying=["word 6"])
    other_mark = phone.json("key", "backup")["words"].split()[:7]
    fresh.refused("key", "recover", "--store", "stick", *words, "--mark", " ".join(other_mark), code=3, saying=["word"])
    back = fresh.json("key", "recover", "--store", "stick", *words, "--mark", paper["mark"])
    check(back["mark_compared"] and back["mark"] == paper["mark"], f"recovered {back}")
    fresh.syncs()
    check(projection(fresh) == before, "something did not come back")
    lost = next(d["device"] for d in fresh.json("device", "list")["devices"]
                if not d["this_device"] and "printed" not in d["name"])
    fresh.json("device", "revoke", lost, "--reason", "phone lost")
    fresh.acted("--at", DAY.format(9), "finding", "add", "window-frames", "--new", "--defect", "gap", "--grade", "2",
                "--place", "window 1")
    fresh.syncs()
    sealed = set(os.listdir(os.path.join(stick, "snugwalk1")))
    check(len(sealed) == 1, f"rigs at the stick: {sealed}")
    unread = phone.syncs()
    check(unread["entries_received"] == 0 and unread["unopened"] > 0, f"the lost phone got {unread}")
    outside = phone.json("sync", "--store", "stick")["outside"]
    check(len(outside) == 1 and "phone lost" in outside[0]["why"], f"the lost phone is told {outside}")


TRIALS = {name: trial for name, trial in globals().items() if callable(trial) and name in (
    "killed_in_the_middle", "restored_copy", "full_stick", "refused", "viewer_writes", "flipped_bits", "lost_phone")}


def main():
    failed = 0
    for name in sys.argv[3:] or TRIALS:
        with tempfile.TemporaryDirectory(prefix="snugwalk-faults-") as folder:
            try:
                TRIALS[name](sys.argv[1], sys.argv[2], folder)
                print("as expected:", name)
            except Failed as fault:
                print(f"failed: {name}: {fault}")
                failed += 1
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
