# SPDX-License-Identifier: Apache-2.0
"""The shape of the tree: names at the top, SPDX lines, sizes, and no foreign places named."""
import re

import repo

TOP = {"README.md", "DEVELOPERS.md", "CMakeLists.txt", "core", "qml", "platform", "tests",
       "translations", "demo-rig", "LICENSE"}
SPDX = "SPDX-License-Identifier: Apache-2.0"
LIMIT, REVIEW = 600, 350
# Written in two parts, so that this file does not find itself.
PLACES = [("the checkout's place", r"(?<![\w.\-])/wo" + r"rk/(main|shared|\.library)"),
          ("a folder outside", r"\.\./sha" + r"red\b"),
          ("a place on one machine", r"/tm" + r"p/(bash_jobs|snug)"),
          ("a registry host", r"(registry\.npm" + r"js|deb\.deb" + r"ian|snapshot\.deb" + r"ian|pypi\.org)")]


def top_faults(base):
    tracked = repo.git_files(base)
    names = {repo.name(base, path).split("/")[0] for path in tracked or base.iterdir()
             if path.name != "build"}
    for extra in sorted(name for name in names if name not in TOP and not name.startswith(".")):
        yield f"{extra}: not among the names of the top level"
    for absent in sorted(TOP - names):
        yield f"{absent}: missing from the top level"


def head_faults(where, path, lines):
    if not lines and path.name == "__init__.py":
        return
    wanted = 1 if lines[:1] and lines[0].startswith("#!") else 0
    if len(lines) <= wanted or SPDX not in lines[wanted]:
        yield f"{where}: line {wanted + 1} does not say {SPDX}"
    if path.suffix == ".sh" and "set -euo pipefail" not in lines:
        yield f"{where}: no `set -euo pipefail`"


def main():
    base = repo.root()
    faults, checked, long_ones = list(top_faults(base)), 0, []
    for path in repo.files(base):
        where = repo.name(base, path)
        if path.suffix in (".png", ".jpg", ".ttf", ".woff2") or "/data/" in where or "/corpus/" in where:
            continue
        lines = repo.text(path).splitlines()
        for line_number, line in enumerate(lines, 1):
            faults += [f"{where}:{line_number}: names {what}" for what, place in PLACES
                       if re.search(place, line)]
        if not repo.is_source(path):
            continue
        checked += 1
        faults += head_faults(where, path, lines)
        if len(lines) > LIMIT:
            faults.append(f"{where}: {len(lines)} lines, limit {LIMIT}")
        elif len(lines) > REVIEW:
            long_ones.append((len(lines), where))
    for count, where in sorted(long_ones, reverse=True):
        print(f"note: {where} has {count} lines; worth splitting above {REVIEW}")
    repo.report(faults, checked)


main()
