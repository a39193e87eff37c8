# SPDX-License-Identifier: Apache-2.0
"""The core asks for no symbol of Qt, and a build without the app never looked for Qt.

usage: check_symbols.py ROOT BUILD"""
import pathlib
import re
import subprocess
import sys

import repo

QT_SYMBOL = re.compile(r"\bQ[A-Z][A-Za-z]+::|\bq(Debug|Warning|Free|Malloc|_|t_)")


def undefined(archive):
    shown = subprocess.run(["nm", "-C", "--undefined-only", archive], capture_output=True, text=True, check=True)
    return shown.stdout.splitlines()


def main():
    build = pathlib.Path(sys.argv[2])
    faults, archives = [], sorted((build / "core").rglob("libsnugwalk_*.a"))
    for archive in archives:
        faults += [f"{archive.name}: asks for {line.strip()}" for line in undefined(archive)
                   if QT_SYMBOL.search(line)]
    cache = repo.text(build / "CMakeCache.txt")
    if "SNUGWALK_APP:BOOL=OFF" in cache and re.search(r"^Qt6\w*_DIR:", cache, re.M):
        faults.append("a build with SNUGWALK_APP=OFF looked for Qt")
    repo.report(faults, len(archives))


main()
