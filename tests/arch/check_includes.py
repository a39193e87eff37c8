# SPDX-License-Identifier: Apache-2.0
"""Arrows between core folders, by reading: includes and CMake links follow the table, no Qt."""
import re

import repo

ARROWS = {
    "base": "",
    "keys": "base",
    "rig": "base",
    "trip": "base",
    "weather": "base trip",
    "map": "base trip weather",
    "road": "base trip",
    "catalogue": "base rig",
    "walk": "base rig catalogue",
    "due": "base rig catalogue walk trip weather road",
    "concern": "base rig catalogue walk due",
    "compare": "base rig catalogue walk due",
    "bench": "base rig weather due",
    "logbook": "base keys rig catalogue walk trip",
    "exchange": "base keys walk logbook sync",
    "sync": "base keys logbook",
    "round": "base rig catalogue walk trip weather map road due concern compare bench logbook",
    "report": "base rig catalogue walk trip map concern compare due round",
}
OUTSIDE = ("platform/", "qml/", "tests/")
QUOTED = re.compile(r'^\s*#\s*include\s*"([^"]+)"', re.M)
ANGLED = re.compile(r"^\s*#\s*include\s*<([^>]+)>", re.M)
LINKS = re.compile(r"snugwalk_core_library\(\s*(\w+)(.*?)\)", re.S)
KEYWORDS = {"SOURCES", "PUBLIC_LIBS", "PRIVATE_LIBS"}


def include_faults(where, folder, body):
    allowed = set(ARROWS[folder].split()) | {folder}
    for target in QUOTED.findall(body):
        first = target.split("/")[0]
        if "/" not in target or target.startswith((".", *OUTSIDE)):
            yield f'{where}: "{target}" is not written from the core\'s root'
        elif first not in ARROWS:
            yield f'{where}: "{target}" is in no known folder'
        elif first not in allowed:
            yield f'{where}: no arrow from {folder} to {first}'
    for target in ANGLED.findall(body):
        if re.match(r"Q[A-Z]|Qt|q[a-z]+\.h$", target):
            yield f"{where}: <{target}> is Qt, which the core does not know"
        elif "/" in target and target.split("/")[0] in ARROWS:
            yield f"{where}: <{target}> is ours, written in quotes"


def link_faults(where, body):
    for folder, rest in LINKS.findall(body):
        words = rest.split()
        if folder not in ARROWS:
            yield f"{where}: {folder} is not in the table of arrows"
            continue
        links = words[words.index("LINKS") + 1:] if "LINKS" in words else []
        for word in links:
            if word in KEYWORDS:
                break
            if word not in ARROWS[folder].split():
                yield f"{where}: no arrow from {folder} to {word}"


def main():
    base = repo.root()
    faults, checked = [], 0
    for path in repo.files(base):
        where = repo.name(base, path)
        parts = where.split("/")
        if parts[0] != "core" or len(parts) < 3:
            continue
        if parts[1] not in ARROWS:
            faults.append(f"{where}: core/{parts[1]} is not in the table of arrows")
        elif path.suffix in (".hpp", ".cpp", ".h"):
            checked += 1
            faults += include_faults(where, parts[1], repo.text(path))
        elif path.name == "CMakeLists.txt":
            faults += link_faults(where, repo.text(path))
            if "Qt6" in repo.text(path) or "Qt::" in repo.text(path):
                faults.append(f"{where}: the core builds without Qt")
    repo.report(faults, checked)


main()
