# SPDX-License-Identifier: Apache-2.0
"""Archives that nobody should open: names that lead elsewhere, links, doubles, bombs, encryption, lies. Each is
imported into a logbook of its own; nothing may appear outside it and no entry of a spoiled one inside.
usage: hostile.py PROBE"""
import hashlib
import io
import json
import os
import resource
import shutil
import stat
import struct
import subprocess
import sys
import tempfile
import zipfile
import zlib
from pathlib import Path

PROBE = sys.argv[1]
MEMORY = 1 << 30


def call(*words):
    done = subprocess.run([PROBE, *map(str, words)], capture_output=True, text=True, check=False, timeout=300,
                          preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
                          if "SNUGWALK_NO_LIMIT" not in os.environ else None)
    if done.returncode < 0 or not done.stdout.strip():
        sys.exit(f"the probe ended with {done.returncode} for {words}: {done.stderr[-2000:]}")
    return json.loads(done.stdout)


def pack(members, comment=b""):
    """A ZIP of (name, bytes or ZipInfo settings); names are kept exactly as given."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        for name, data, *rest in members:
            info = zipfile.ZipInfo("x")
            info.filename = name
            for key, value in (rest[0] if rest else {}).items():
                setattr(info, key, value)
            archive.writestr(info, data, compress_type=info.compress_type)
        archive.comment = comment
    return out.getvalue()


def raw_name(data, written, name):
    """Puts bytes of the same length where a name stands, for what Python refuses to write."""
    assert len(written) == len(name)
    return data.replace(written, name)


def with_flag(data, flag):
    """Sets a general purpose bit in every local and central header, APPNOTE 4.4.4."""
    out = bytearray(data)
    for magic, offset in ((b"PK\3\4", 6), (b"PK\1\2", 8)):
        at = out.find(magic)
        while at >= 0:
            out[at + offset] |= flag
            at = out.find(magic, at + 4)
    return bytes(out)


def with_method(data, method):
    out = bytearray(data)
    for magic, offset in ((b"PK\3\4", 8), (b"PK\1\2", 10)):
        at = out.find(magic)
        while at >= 0:
            struct.pack_into("<H", out, at + offset, method)
            at = out.find(magic, at + 4)
    return bytes(out)


def vectors(good):
    whole = [(name, data) for name, data in good.items()]
    evil = b"escaped"
    for name in ["/etc/evil", "//evil", "../evil", "../../evil", "../../../../../../tmp/evil", "photos/../../evil",
                 "./evil", "a/./evil", "a//evil", "a/../evil", "photos/..", "..", ".", "C:/evil", "C:evil", "c:\\evil",
                 "..\\evil", "..\\..\\evil", "photos\\..\\..\\evil", "\\\\server\\share\\evil", "\\evil", "a\\b",
                 "~/../evil", "evil:stream", "evil.", "evil ", " evil", "evil./x", "evil /x", "CON", "con", "nul",
                 "NUL.txt", "aux", "prn.jpg", "com1", "COM9.txt", "lpt1", "photos/con", "photos/nul.jpg", "conin$",
                 "evil\n", "evil\r", "evil\t", "evil\x1b[2J", "evil\x7f", "evil*", "evil?", "evil|x", "<evil>", 'ev"il',
                 "e\u202egpj.exe", "e\u2066vil", "\u200eevil", "a" * 256, "x/" * 130 + "evil", "photos/" + "b" * 300]:
        yield f"name {name[:24]!r}", pack(whole + [(name, evil)]), "refused"
    for name in [b"evil\0.jpg", b"\0evil.jpg\0", b"evil.jpg\0\0"]:
        written = b"Q" * len(name)
        yield f"NUL {name!r}", raw_name(pack(whole + [(written.decode(), evil)]), written, name), "nothing"
    yield "NUL after manifest.json", raw_name(
        pack([(n if n != "manifest.json" else "manifest.jsonQ", d) for n, d in whole]),
        b"manifest.jsonQ", b"manifest.json\0"), "refused"
    for name in [b"\xff\xfe", b"\xc0\xae\xc0\xae/evil", b"\xed\xa0\x80x", b"../\xff", b"\xf5evil"]:
        written = b"Q" * len(name)
        yield f"bytes {name!r}", raw_name(pack(whole + [(written.decode(), evil)]), written, name), "refused"
    for kind in (stat.S_IFLNK, stat.S_IFCHR, stat.S_IFBLK, stat.S_IFIFO, stat.S_IFSOCK):
        for target in (b"/etc/passwd", b"../../evil"):
            more = {"external_attr": (kind | 0o777) << 16, "create_system": 3}
            yield f"kind {kind:o} {target}", pack(whole + [("photos/link", target, more)]), "refused"
    photo = next(name for name in good if name.startswith("photos/"))
    yield "a photo that is a link", pack([(n, d, {"external_attr": (stat.S_IFLNK | 0o777) << 16, "create_system": 3})
                                          if n == photo else (n, d) for n, d in whole]), "refused"
    for name in ["entries.jsonl", "manifest.json", photo, "README.txt"]:
        yield f"twice {name[:20]}", pack(whole + [(name, b"")]), "refused"
        yield f"twice, first {name[:20]}", pack([(name, evil)] + whole), "refused"
    yield "twice but for case", pack(whole + [("ENTRIES.JSONL", b"x")]), "refused"
    packed = {"compress_type": zipfile.ZIP_DEFLATED}
    yield "bomb beside", pack(whole + [("zeros.bin", bytes(300 << 20), packed)]), "refused"
    yield "bomb as photo", pack([(n, bytes(60 << 20), packed) if n == photo else (n, d) for n, d in whole]), "refused"
    yield "bomb as entries", pack([(n, b" " * (200 << 20), packed) if n == "entries.jsonl" else (n, d)
                                   for n, d in whole]), "refused"
    yield "bomb as manifest", pack([(n, b"[" * (80 << 20), packed) if n == "manifest.json" else (n, d)
                                    for n, d in whole]), "refused"
    yield "manifest nested", pack([(n, b"[" * 500_000) if n == "manifest.json" else (n, d) for n, d in whole]), "refused"
    yield "line nested", pack([(n, b"[" * 500_000 + b"\n" + d) if n == "entries.jsonl" else (n, d)
                               for n, d in whole]), "refused"
    yield "70,000 members", pack(whole + [(f"m{i}", b"") for i in range(70_000)]), "refused"
    yield "encrypted", with_flag(pack(whole), 1), "refused"
    yield "encrypted, strongly", with_flag(pack(whole), 0x41), "refused"
    for method in (1, 6, 9, 12, 14, 93, 95, 97, 98, 99):
        yield f"packed by method {method}", with_method(pack(whole), method), "refused"
    yield "an archive within", pack(whole + [("more.zip", pack([("../evil", evil)]))]), "taken"
    yield "an archive as photo", pack([(n, pack([("../evil", evil)])) if n == photo else (n, d)
                                       for n, d in whole]), "no photo"
    yield "no photo", pack([(n, d) for n, d in whole if n != photo]), "no photo"
    yield "a photo that is no picture", bad_picture(good), "nothing"
    plain = pack(whole)
    at = plain.find(b"PK\1\2")
    name = plain.find(b"README.txt")
    yield "two names for one file", plain[:name] + b"/vil/a.txt" + plain[name + 10:], "refused"
    lying = bytearray(plain)
    struct.pack_into("<I", lying, at + 24, 0xFFFFFFF0)
    yield "a size that lies", bytes(lying), "refused"
    lying = bytearray(plain)
    struct.pack_into("<I", lying, at + 42, 0xFFFFFF00)
    yield "a place beyond the end", bytes(lying), "refused"
    end = plain.rfind(b"PK\5\6")
    for field, value in ((8, 0xFFFF), (10, 1), (12, 0xFFFFFFFF), (16, 0), (16, 0xFFFFFFFF)):
        lying = bytearray(plain)
        struct.pack_into("<H" if field < 12 else "<I", lying, end + field, value)
        yield f"the end's field {field} = {value}", bytes(lying), "refused"
    yield "cut in half", plain[: len(plain) // 2], "refused"
    yield "no archive", b"hello", "refused"
    yield "empty", b"", "refused"
    yield "an empty archive", pack([]), "refused"
    for spoil in (b"attention", b'"by":"W'):
        entries = good["entries.jsonl"]
        spoiled = entries.replace(spoil, spoil[:-1] + b"X", 1)
        assert spoiled != entries
        yield f"an entry changed {spoil}", pack([(n, spoiled) if n == "entries.jsonl" else (n, d)
                                                 for n, d in whole]), "refused"
        yield f"and its manifest {spoil}", pack(resigned(good, spoiled)), "refused"
    lines = good["entries.jsonl"].splitlines(keepends=True)
    yield "an entry missing", pack(resigned(good, b"".join(lines[:1] + lines[2:]))), "refused"
    yield "entries in another order", pack(resigned(good, b"".join(reversed(lines)))), "refused"
    yield "an entry twice", pack(resigned(good, b"".join(lines + lines[-1:]))), "refused"
    manifest = json.loads(good["manifest.json"])
    manifest["streams"][0]["public_key"] = "00" * 32
    yield "another key", pack([(n, json.dumps(manifest).encode()) if n == "manifest.json" else (n, d)
                               for n, d in whole]), "refused"
    manifest = json.loads(good["manifest.json"])
    manifest["version"] = 2
    yield "of a newer version", pack([(n, json.dumps(manifest).encode()) if n == "manifest.json" else (n, d)
                                      for n, d in whole]), "refused"


def resigned(good, entries):
    """The same with other entries, and a manifest that says so."""
    manifest = json.loads(good["manifest.json"])
    for row in manifest["files"]:
        if row["name"] == "entries.jsonl":
            row["size"], row["blake2b_256"] = len(entries), hashlib.blake2b(entries, digest_size=32).hexdigest()
    return [(n, json.dumps(manifest).encode() if n == "manifest.json" else entries if n == "entries.jsonl" else d)
            for n, d in good.items()]


def bad_picture(good):
    """A photo whose name is the hash of what it holds, but no entry names it and it is no picture."""
    data = b"\xff\xd8\xff" + b"not a picture" * 50
    name = f"photos/{hashlib.blake2b(data, digest_size=32).hexdigest()}.jpg"
    return pack(list(good.items()) + [(name, data)])


def tree(folder):
    return {str(p.relative_to(folder)): (p.lstat().st_mode, hashlib.blake2b(p.read_bytes()).hexdigest()
                                         if p.is_file() and not p.is_symlink() else "")
            for p in sorted(folder.rglob("*"))}


def main():
    base = Path(tempfile.mkdtemp())
    call("make", base / "source")
    call("export", base / "source", base / "good.zip")
    archive = zipfile.ZipFile(base / "good.zip")
    good = {name: archive.read(name) for name in archive.namelist()}
    photos = {Path(name).stem for name in good if name.startswith("photos/")}
    count = escapes = wrong = 0
    for what, data, expected in vectors(good):
        count += 1
        room = base / "room"
        (room / "deep" / "er").mkdir(parents=True)
        (room / "witness").write_bytes(b"untouched")
        book = room / "deep" / "er" / "book"
        file = room / "deep" / "archive.zip"
        file.write_bytes(data)
        before = tree(room)
        around = set(os.listdir(base)) | {"/etc/" + n for n in os.listdir("/etc")}
        answer = call("import", book, file)
        call("check", file)
        after = tree(room)
        new = {name for name in after if after[name] != before.get(name)}
        kept = {n for n in new if n in ("deep/er/book", "deep/er/book-wal", "deep/er/book-shm", "deep/er/book.photos")
                or (n.startswith("deep/er/book.photos/") and (len(Path(n).name) == 2 or Path(n).name.split(".")[0] in photos))}
        outside = (new - kept) | (set(before) - set(after)) | (
            (set(os.listdir(base)) | {"/etc/" + n for n in os.listdir("/etc")}) - around)
        if outside:
            escapes += 1
            print("  ESCAPE", what, outside)
        state = call("dump", book)
        got = [n for n in after if n.startswith("deep/er/book.photos/") and n.endswith((".jpg", ".png"))
               and not n.endswith(".thumb.jpg")]
        right = {"refused": not answer["ok"] and state["entries"] == 0 and not got,
                 "taken": answer["ok"] and len(got) == 2 and len(answer["notes"]) == 1,
                 "no photo": answer["ok"] and len(got) == 1 and len(answer["notes"] + answer["missing"]) == 1,
                 "nothing": answer["ok"] and len(got) == 2 or not answer["ok"] and state["entries"] == 0}[expected]
        if not right:
            wrong += 1
            print("  WRONG ", what, "expected", expected, "but", answer, state, got)
        shutil.rmtree(room)
    shutil.rmtree(base)
    print(f"{count} vectors: {escapes} escapes, {wrong} taken or refused wrongly")
    sys.exit(1 if escapes or wrong or count < 100 else 0)


assert zlib and len(sys.argv) > 1
main()
