# SPDX-License-Identifier: Apache-2.0
"""Cited and checked never drift apart: every [KEY] in a comment of the core stands in
core/SOURCES.md and is named by some test."""
import re

import repo

KEY = re.compile(r"\[([A-Z][A-Z0-9.\-]{3,})\]")
ENTRY = re.compile(r"^\| \[?([A-Z][A-Z0-9.\-]+)\]? \|", re.M)


def cited_in(path):
    comments = [line[line.index("//"):] for line in repo.text(path).splitlines() if "//" in line]
    return {key for comment in comments for key in KEY.findall(comment)}


def main():
    base = repo.root()
    listed = set(ENTRY.findall(repo.text(base / "core/SOURCES.md")))
    faults, cited, tests = [], set(), ""
    for path in repo.files(base):
        where = repo.name(base, path)
        if where.startswith("tests/") and path.suffix in (".cpp", ".py", ".sh", ".json", ".tsv"):
            tests += repo.text(path)
        if where.startswith("core/") and path.suffix in (".hpp", ".cpp"):
            keys = cited_in(path)
            cited |= keys
            faults += [f"{where}: [{key}] is not in core/SOURCES.md" for key in sorted(keys - listed)]
    faults += [f"[{key}] is cited in the core, but no test names it" for key in sorted(cited)
               if key not in tests]
    repo.report(faults, len(cited))


main()
