# SPDX-License-Identifier: Apache-2.0
"""An export read without Snugwalk: Python's zipfile, json and hashlib, and 30 lines of CBOR after RFC 8949
section 4.2.1; its signatures by PyNaCl and cbor2. Then packed anew by others and imported. usage: read_export.py PROBE"""
import hashlib
import json
import struct
import subprocess
import sys
import tempfile
import zipfile
from pathlib import Path

import cbor2
import nacl.signing

PROBE = sys.argv[1]
FAULTS = []


def call(*words):
    done = subprocess.run([PROBE, *map(str, words)], capture_output=True, text=True, check=False, timeout=120)
    if done.returncode < 0 or not done.stdout.strip():
        sys.exit(f"the probe ended with {done.returncode} for {words}: {done.stderr}")
    return json.loads(done.stdout)


def note(ok, *what):
    print(("  ok   " if ok else "  FAIL ") + " ".join(str(w) for w in what)[:300])
    if not ok:
        FAULTS.append(what)


def head(major, number):
    for limit, code, form in ((24, None, None), (2**8, 24, ">B"), (2**16, 25, ">H"), (2**32, 26, ">I"), (2**64, 27, ">Q")):
        if number < limit:
            if code is None:
                return bytes([major << 5 | number])
            return bytes([major << 5 | code]) + struct.pack(form, number)
    raise ValueError(number)


def cbor(value):
    """Deterministic CBOR, RFC 8949 section 4.2.1; doubles always 8 bytes as core/base/value.hpp says."""
    if value is None:
        return b"\xf6"
    if isinstance(value, bool):
        return b"\xf5" if value else b"\xf4"
    if isinstance(value, int):
        return head(0, value) if value >= 0 else head(1, -1 - value)
    if isinstance(value, float):
        return b"\xfb" + struct.pack(">d", value)
    if isinstance(value, bytes):
        return head(2, len(value)) + value
    if isinstance(value, str):
        return head(3, len(value.encode())) + value.encode()
    if isinstance(value, list):
        return head(4, len(value)) + b"".join(cbor(item) for item in value)
    pairs = sorted((cbor(key), cbor(item)) for key, item in value.items())
    return head(5, len(pairs)) + b"".join(key + item for key, item in pairs)


def entry_bytes(line):
    """The entry's canonical bytes from what its line shows, README.txt and core/exchange/FORMAT.md."""
    entry = {key: value for key, value in line.items() if key not in ("hash", "previous", "cbor")}
    for name in ("stream", "act", "scope", "undoes", "entity"):
        entry[name] = None if entry[name] is None else bytes.fromhex(entry[name])
    entry["prev"] = [[bytes.fromhex(stream), seq] for stream, seq in entry["prev"]]
    entry["hlc"] = int(entry["hlc"])
    return cbor(entry)


def blake(data):
    return hashlib.blake2b(data, digest_size=32).digest()


def signed(line, purpose):
    """The payload of a COSE_Sign1 (RFC 9052 section 4.4) whose Ed25519 signature (RFC 8032) holds, by cbor2 and PyNaCl."""
    data = bytes.fromhex(line["bytes"])
    note(blake(data).hex() == line["hash"], f"a {line['kind']} is named by its hash")
    protected, _, payload, signature = cbor2.loads(data).value
    members = cbor2.loads(payload)
    to_sign = cbor2.dumps(["Signature1", protected, purpose, payload])
    nacl.signing.VerifyKey(members["key"]).verify(to_sign, signature)  # raises where it does not hold
    for shown, member in (("rig", "space"), ("counter", "counter"), ("prev", "prev")):
        value = members[member]
        note(line[shown] == (value.hex() if isinstance(value, bytes) else value), f"a {line['kind']} shows its {member}")
    return members


def read_sharing(archive, entries):
    """Who shares the rig and which file carried what, core/exchange/FORMAT.md."""
    kinds, carried = {}, set()
    for line in map(json.loads, archive.read("sharing.jsonl").decode().splitlines()):
        kinds.setdefault(line["kind"], []).append(line)
    note(set(kinds) == {"rig", "record", "file", "member"}, "kinds of sharing", sorted(kinds))
    for line in kinds["record"]:
        members = signed(line, b"snugwalk control 1")
        note(line["action"] == members["action"] == "found" and line["by"] == blake(members["key"]).hex()[:32],
             "a record shows who founded the rig")
    note(kinds["rig"][0]["root"] == kinds["record"][0]["hash"], "a rig names its founding record")
    for line in kinds["file"]:
        members = signed(line, b"snugwalk segment 1")
        runs = {(stream, seq) for stream, first, last in line["entries"] for seq in range(first, last + 1)}
        note(line["stream"] == members["stream"].hex() and len(runs) == members["count"], "a file carried what it counts")
        carried |= runs
    note(carried == entries, f"{len(carried)} entries, each carried by a signed file")
    note([line["role"] for line in kinds["member"]] == ["owner"], "one owner")


def read(file):
    archive = zipfile.ZipFile(file)
    note(archive.testzip() is None, "every member's own checksum")
    names = archive.namelist()
    manifest = json.loads(archive.read("manifest.json"))
    note(manifest["format"] == "snugwalk-export" and manifest["version"] == 1, "the manifest")
    note({f["name"] for f in manifest["files"]} | {"manifest.json"} == set(names), "names every file")
    for row in manifest["files"]:
        data = archive.read(row["name"])
        if len(data) != row["size"] or blake(data).hex() != row["blake2b_256"]:
            note(False, "a file that is not as the manifest says", row)
    lines = archive.read("entries.jsonl").decode("utf-8").split("\n")
    note(lines.pop() == "" and len(lines) == manifest["entries"], f"{len(lines)} entries, one a line")
    last, good = {}, 0
    for text in lines:
        line = json.loads(text)
        before = last.get(line["stream"], (0, bytes(32)))
        computed = blake(before[1] + entry_bytes(line))
        good += line["seq"] == before[0] + 1 and computed.hex() == line["hash"]
        last[line["stream"]] = (line["seq"], computed)
    note(good == len(lines), f"{good} hashes computed from the JSON by an independent program agree")
    for stream in manifest["streams"]:
        note(blake(bytes.fromhex(stream["public_key"])).hex()[:32] == stream["stream"][:32], "a stream is its key's")
    read_sharing(archive, {(line["stream"], line["seq"]) for line in map(json.loads, lines)})
    photos = [name for name in names if name.startswith("photos/")]
    for name in photos:
        note(blake(archive.read(name)).hex() == Path(name).stem, "a photo is named by its hash")
    things = [json.loads(line) for line in archive.read("things.jsonl").decode().splitlines()]
    types = {thing["type"] for thing in things}
    note({"rig", "walk", "mark", "finding", "photo"} <= types, "things for reading", sorted(types))
    whole = Path(file).read_bytes()
    seal = archive.comment.decode()
    note(seal.endswith(blake(whole[: -len(archive.comment)]).hex()), "the checksum over the whole file", seal[:40])
    note(b"\\u00e9" not in whole and "caf\u00e9".encode() in whole, "text is UTF-8")
    return archive, photos


def main():
    here = Path(tempfile.mkdtemp())
    note(call("make", here / "book")["ok"], "a logbook")
    out = call("export", here / "book", here / "all.zip")
    note(out["ok"], "an export", out)
    original = call("dump", here / "book")
    archive, photos = read(here / "all.zip")
    note(call("check", here / "all.zip")["faults"] == [], "check finds nothing")

    # packed anew, squeezed, in another order, with a folder and a stranger's note: the same logbook
    for kind, name in ((zipfile.ZIP_DEFLATED, "squeezed"), (zipfile.ZIP_STORED, "stored")):
        with zipfile.ZipFile(here / f"{name}.zip", "w", kind) as again:
            again.mkdir("photos") if hasattr(again, "mkdir") else again.writestr("photos/", b"")
            again.writestr("notes of my own.txt", "hello")
            for member in reversed(archive.namelist()):
                again.writestr(member, archive.read(member))
        answer = call("import", here / name, here / f"{name}.zip")
        note(answer["ok"] and answer["entries"] == out["entries"] and answer["photos"] == len(photos)
             and len(answer["notes"]) == 1, "packed anew by Python and taken in", name, answer)
        copy = call("dump", here / name)
        note(copy["hash"] == original["hash"] and copy["faults"] == [], "the same log and projection, byte for byte")
        again = call("import", here / name, here / f"{name}.zip")
        note(again["ok"] and again["entries"] == 0 and again["known"] == out["entries"], "twice is once")
        faults = call("check", here / f"{name}.zip")["faults"]
        note(any("checksum" in fault for fault in faults), "check tells that it was packed anew", faults)
    # back out of the copy: the same entries again
    call("export", here / "squeezed", here / "third.zip")
    third = zipfile.ZipFile(here / "third.zip")
    note(third.read("entries.jsonl") == archive.read("entries.jsonl") and third.read("things.jsonl") ==
         archive.read("things.jsonl"), "out of the copy come the same lines")
    print(f"{len(FAULTS)} wrong")
    sys.exit(1 if FAULTS else 0)


main()
