# SPDX-License-Identifier: Apache-2.0
"""clang-tidy over the sources of the core, the platform and the models.

usage: tidy.py BUILD [--analyzer] [PART...]
Without --analyzer the slow path analysis is left to the long run. With PARTs only files whose name
holds one of them. A file is not looked at again while it, what it includes of ours, the settings and
its command are what they were when it was clean (BUILD/tidy holds the stamps).
"""
import concurrent.futures
import functools
import hashlib
import json
import os
import pathlib
import re
import subprocess
import sys

ROOT = pathlib.Path(__file__).resolve().parents[3]
# GCC's precompiled headers: clang cannot read them, and without them a file that includes too little is found
PRECOMPILED = re.compile(r" -Winvalid-pch| -include \S*/cmake_pch\.hxx")
INCLUDE = re.compile(rb'^\s*#\s*include\s*"([^"]+)"', re.M)


@functools.lru_cache(maxsize=None)
def content_and_includes(path):
    content = path.read_bytes()
    names = [name.decode() for name in INCLUDE.findall(content)]
    places = [ROOT / "core", ROOT, path.parent]
    found = [place / name for name in names for place in places if (place / name).is_file()]
    return content, [each.resolve() for each in found]


def everything_read(path, seen):
    """Every file of ours that this one includes, itself among them."""
    if path not in seen:
        seen.add(path)
        for included in content_and_includes(path)[1]:
            everything_read(included, seen)
    return seen


def stamp_of(entry, checks):
    digest = hashlib.sha256((ROOT / ".clang-tidy").read_bytes() + checks.encode() + entry["command"].encode())
    for path in sorted(everything_read(pathlib.Path(entry["file"]).resolve(), set())):
        digest.update(content_and_includes(path)[0])
    return digest.hexdigest()


def main():
    build = pathlib.Path(sys.argv[1]).resolve()
    analyzer = "--analyzer" in sys.argv
    parts = [word for word in sys.argv[2:] if word != "--analyzer"]
    # the commands are GCC's: its own switches mean nothing to clang
    lenient = "--extra-arg=-Wno-unknown-warning-option"
    checks = "" if analyzer else "-clang-analyzer-*"
    stamps = build / "tidy"
    stamps.mkdir(exist_ok=True)
    ours = tuple(f"{ROOT}/{name}/" for name in ("core", "platform", "qml"))

    def look(entry):
        stamp = stamps / stamp_of(entry, checks)
        if stamp.exists():
            return None
        command = ["clang-tidy", "-p", str(stamps), "--quiet", f"--checks={checks}", lenient,
                   entry["file"]]
        done = subprocess.run(command, capture_output=True, text=True, check=False)
        if done.returncode == 0:
            stamp.touch()
            return None
        return f"{entry['file']}\n{done.stdout}"

    entries = [entry for entry in json.loads((build / "compile_commands.json").read_text())
               if entry["file"].startswith(ours) and (not parts or any(part in entry["file"] for part in parts))]
    for entry in entries:
        entry["command"] = PRECOMPILED.sub("", entry["command"])
    (stamps / "compile_commands.json").write_text(json.dumps(entries))
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as workers:
        faults = [fault for fault in workers.map(look, entries) if fault]
    print("\n".join(faults))
    print(f"{len(entries)} files, {len(faults)} with faults")
    return 1 if faults or not entries else 0


if __name__ == "__main__":
    sys.exit(main())
