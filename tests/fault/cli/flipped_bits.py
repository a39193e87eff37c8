# SPDX-License-Identifier: Apache-2.0
"""One bit flipped anywhere in a shared logbook, its photos, a store or an export is told by the command line, which names
the entry or photo. What a bit of the logbook's file changes is asked of another reader: Python's own sqlite3 reads every
row of every table; only a bit that changes none of them may pass. usage: flipped_bits.py PROGRAM SOURCE book|store|export"""
import json
import os
import random
import sqlite3
import sys
import tempfile
import zipfile
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent.parent.parent / "journey"))
from party import Device, enrolls, rig_of, round_of  # noqa: E402
from program import Failed, check  # noqa: E402

FLIPS = 300
DAY = "2026-12-{:02d}T08:10:00+13:00"


def shared_rig(program, source, folder):
    """An owner, and a viewer whose entries are set aside, who met at a stick; a photo of each."""
    owner, viewer = Device(program, folder, "owner"), Device(program, folder, "viewer")
    owner.run("demo", "--from", os.path.join(source, "demo-rig"))
    stick = os.path.join(folder, "stick")
    os.mkdir(stick)
    for device in (owner, viewer):
        device.meets_at("stick", "folder", stick)
    enrolls(owner, viewer, "viewer", "--until", "2026-12-24")
    round_of([owner, viewer])
    for place in ("window 1", "window 2"):
        viewer.acted("--at", DAY.format(1), "finding", "add", "window-frames", "--new", "--defect", "gap", "--grade", "2",
                     "--place", place)
    round_of([viewer, owner])
    check(len(owner.json("aside", "list")["aside"]) >= 2, "nothing was set aside")
    owner.acted("--at", DAY.format(2), "finding", "add", "window-frames", "--new", "--defect", "crack", "--grade", "2",
                "--place", "window 3")  # not sent yet
    return owner, stick


def flipped(data, at, dice):
    out = bytearray(data)
    out[at] ^= 1 << dice.randrange(8)
    return bytes(out)


def rows_of(file):
    """Every row of every table, and their descriptions; or the fault that Python's sqlite3 finds."""
    try:
        db = sqlite3.connect(f"file:{file}?mode=ro&immutable=1", uri=True)
        try:
            texts = db.execute("SELECT type, name, tbl_name, sql FROM sqlite_schema ORDER BY name").fetchall()
            marks = [db.execute(f"PRAGMA {name}").fetchone()[0] for name in ("application_id", "user_version")]
            tables = {name: sorted(db.execute(f"SELECT * FROM {name}").fetchall(), key=repr)
                      for kind, name, _, _ in texts if kind == "table"}
            return {"sqlite_schema": texts, "marks": marks, **tables}
        finally:
            db.close()
    except (sqlite3.Error, UnicodeDecodeError, OverflowError) as fault:
        return str(fault)


def entries_hit(before, after):
    """Names of entries whose row is another or gone."""
    streams = {row[0]: row[1].hex()[:8] + "-" + row[1].hex()[32:] for row in before["stream"]}
    gone = set(map(repr, before["entry"])) - set(map(repr, after["entry"]))
    return [f"{streams[row[0]]} {row[1]}" for row in before["entry"] if repr(row) in gone]


class BookTrial:
    def __init__(self, owner, folder):
        self.owner = owner
        with open(owner.book, "rb") as file:
            self.whole = file.read()
        self.book = os.path.join(folder, "flipped.snugwalk")
        os.symlink(owner.book + ".photos", self.book + ".photos")
        self.before = rows_of(owner.book)
        self.told = self.unused = self.named = self.hits = self.unreadable = 0

    def flip(self, at, dice):
        for ending in ("", "-wal", "-shm"):
            if os.path.exists(self.book + ending):
                os.remove(self.book + ending)
        with open(self.book, "wb") as file:
            file.write(flipped(self.whole, at, dice))
        after = rows_of(self.book)
        process = self.owner.start("--json", "check", "--deep", book=self.book)
        out, err = process.communicate(timeout=120)
        check(process.returncode in (0, 3, 5), f"byte {at}: exit {process.returncode} {out} {err}")
        if process.returncode == 0:
            check(after == self.before, f"byte {at} changed {self.changed(after)}, and check --deep did not tell")
            self.unused += 1
            return
        error = json.loads(err)["error"]
        check(error["what"] and error["do"], f"byte {at}: {error}")
        self.told += 1
        self.unreadable += isinstance(after, str)
        if not isinstance(after, str):
            for name in entries_hit(self.before, after):
                self.hits += 1
                self.named += f"entry {name}" in error["what"]

    def changed(self, after):
        if isinstance(after, str):
            return after
        return [(name, sorted(set(map(repr, rows)) ^ set(map(repr, after.get(name, [])))) [:4])
                for name, rows in self.before.items() if after.get(name) != rows]


def small_values(before):
    """What stands in tables that are too small for a random bit to hit: their texts and bytes."""
    values = set()
    for table in ("stream", "space", "control", "segment", "aside", "twin", "wanted", "meta"):
        for row in before[table]:
            values |= {value.encode() if isinstance(value, str) else value for value in row
                       if isinstance(value, (str, bytes)) and 5 <= len(value) <= 64}
    return sorted(value for value in values if any(value))  # zeros stand everywhere


def places_of(whole, value):
    at = whole.find(value)
    while at >= 0:
        yield at
        at = whole.find(value, at + 1)


def book(program, source, folder):
    owner, _ = shared_rig(program, source, folder)
    check(owner.json("check", "--deep")["faults"] == [], "a fault before any bit was flipped")
    check(not os.path.exists(owner.book + "-wal"), "not closed")
    trial, dice = BookTrial(owner, folder), random.Random(20261201)
    check(isinstance(trial.before, dict), f"the logbook cannot be read by Python: {trial.before}")
    for _ in range(FLIPS):
        trial.flip(dice.randrange(len(trial.whole)), dice)
    random_unused = trial.unused
    # each of them somewhere, and where there are many a few of them
    values = small_values(trial.before)
    places = [at + dice.randrange(len(value)) for value in values for at in places_of(trial.whole, value)]
    places = dice.sample(places, min(len(places), FLIPS // 3))
    for at in places:
        trial.flip(at, dice)
    small = len(places) - (trial.unused - random_unused)
    check(small > len(places) // 2, f"only {small} of {len(places)} bits of small tables hit a row")
    check(trial.named == trial.hits, f"{trial.hits - trial.named} of {trial.hits} entries that a bit changed were not named")
    photos = sorted(str(path) for path in Path(owner.book + ".photos").rglob("*")
                    if path.suffix in (".jpg", ".png") and ".thumb" not in path.name)
    for photo in photos:
        whole = Path(photo).read_bytes()
        Path(photo).write_bytes(flipped(whole, dice.randrange(len(whole)), dice))
        owner.refused("check", "--deep", code=5, saying=["1 found: photo "])
        Path(photo).write_bytes(whole)
    check(owner.json("check", "--deep")["faults"] == [], "bits put back are still faults")
    print(f"  {FLIPS} random bits of {len(trial.whole)} bytes: {FLIPS - random_unused} told, {random_unused} in bytes that "
          f"no table uses; {len(places)} bits of small tables: {small} told, the others in "
          f"bytes no table uses; {trial.named} entries hit, all named; {trial.unreadable} left the file unreadable to others; "
          f"{len(photos)} photos: all told by name")


def store(program, source, folder):
    owner, stick = shared_rig(program, source, folder)
    owner.syncs()
    dice, kinds = random.Random(20261202), {}
    files = sorted(path for path in Path(stick).rglob("*") if path.is_file())
    words = {".ctl": "record of members", ".seg": "entries", ".man": "photo", ".chk": "photo"}
    for path in files:
        whole = path.read_bytes()
        path.write_bytes(flipped(whole, dice.randrange(len(whole)), dice))
        owner.refused("check", "--store", "stick", code=5, saying=["1 found", words[path.suffix]])
        path.write_bytes(whole)
        kinds[path.suffix] = kinds.get(path.suffix, 0) + 1
    check(set(kinds) == set(words), f"kinds of files: {kinds}")
    check(owner.json("check", "--store", "stick")["faults"] == [], "bits put back are still faults")
    print(f"  one bit of each of {len(files)} files at a store, all told: {kinds}")


def export(program, source, folder):
    owner, _ = shared_rig(program, source, folder)
    file = os.path.join(folder, "whole.zip")
    owner.json("export", file, "--all")
    check(owner.json("check", "--export", file)["faults"] == [], "a fault before any bit was flipped")
    whole = Path(file).read_bytes()
    members = {}
    with zipfile.ZipFile(file) as archive:
        for info in archive.infolist():
            begin = info.header_offset + 30 + len(info.filename)
            check(whole[begin:begin + info.file_size] == archive.read(info), "a member is not stored as it is")
            members[info.filename] = (begin, begin + info.file_size)
    dice, named, hits = random.Random(20261203), 0, 0
    lines = members["entries.jsonl"]
    places = [dice.randrange(len(whole)) for _ in range(FLIPS * 2 // 3)]
    places += [dice.randrange(*members[name]) for name in members]  # the smallest of them too
    places += [dice.randrange(*lines) for _ in range(FLIPS // 3)]
    copy = os.path.join(folder, "flipped.zip")
    for at in places:
        Path(copy).write_bytes(flipped(whole, at, dice))
        owner.run("--json", "check", "--export", copy, expect=5)
        what = json.loads(owner.error)["error"]["what"]
        name = next((name for name, (begin, end) in members.items() if begin <= at < end), None)
        if name is None:
            continue
        hits += 1
        if name == "entries.jsonl" and whole[at:at + 1] != b"\n":
            number = whole.count(b"\n", lines[0], at) + 1
            named += f"entries.jsonl line {number}" in what
        else:
            named += (f"photo {Path(name).stem}" if name.startswith("photos/") else name.split("/")[-1]) in what
    check(named == hits, f"{hits - named} of {hits} bits within a member did not name what they hit")
    check("sharing.jsonl" in members and any(name.startswith("photos/") for name in members), f"members {members}")
    print(f"  {len(places)} bits of an export of {len(whole)} bytes, all told; {hits} within an entry, photo or list, "
          "each named")


def main():
    with tempfile.TemporaryDirectory(prefix="snugwalk-bits-") as folder:
        try:
            {"book": book, "store": store, "export": export}[sys.argv[3]](sys.argv[1], sys.argv[2], folder)
        except Failed as fault:
            print("failed:", fault)
            return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
