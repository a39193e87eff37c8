# SPDX-License-Identifier: Apache-2.0
"""How many checks of the bench come from which source: run the programs and scripts that check, add up the
"sourced KEY COUNT" lines they print, print a table, fail under 40 that are published or another program's.

Run: sources_table.py <repository root> <least> <command> [--then <command>] ...
"""
import re
import subprocess
import sys
from collections import Counter

# Not of the outside world: the trade's habits, and figures worked apart from the code by hand.
OURS = ("CP", "computed")
LINE = re.compile(r"^sourced (\S+) (\d+)$", re.M)
# Independent programs and libraries that tests run; every other key stands in core/SOURCES.md.
PROGRAMS = {"scipy": "SciPy, run by the test", "numpy": "NumPy, run by the test", "units": "GNU units, run by the test",
            "python": "Python's calendar and fractions, run by the test"}


def commands(words):
    """The command lines between the separators."""
    line = []
    for word in words:
        if word == "--then":
            yield line
            line = []
        else:
            line.append(word)
    yield line


def names(root):
    with open(f"{root}/core/SOURCES.md", encoding="utf-8") as file:
        rows = [line.split("|") for line in file if line.startswith("| ")]
    return {row[1].strip(): row[2].strip() for row in rows}


def main():
    root, least = sys.argv[1], int(sys.argv[2])
    counts, known = Counter(), names(root)
    for command in commands(sys.argv[3:]):
        done = subprocess.run(command, capture_output=True, text=True, check=False, cwd=root)
        if done.returncode:
            sys.exit(f"{' '.join(command)}: exit {done.returncode}\n{done.stdout}\n{done.stderr}")
        for key, count in LINE.findall(done.stdout):
            counts[key] += int(count)
    unknown = [key for key in counts if key not in known and key not in OURS and key not in PROGRAMS]
    if unknown:
        sys.exit(f"no such source in core/SOURCES.md: {', '.join(unknown)}")
    print(f"{'checks':>6}  source")
    for key, count in sorted(counts.items(), key=lambda row: (row[0] in OURS, -row[1], row[0])):
        what = PROGRAMS.get(key) or known.get(key) or {"CP": "common practice, no source",
                                                       "computed": "worked apart from the code"}[key]
        print(f"{count:>6}  {key}: {what[:100]}")
    outside = sum(count for key, count in counts.items() if key not in OURS)
    print(f"{outside} checks from {sum(key not in OURS for key in counts)} published sources and other programs, "
          f"{sum(counts.values()) - outside} more of the trade and worked apart")
    if outside < least:
        sys.exit(f"fewer than {least}")


main()
