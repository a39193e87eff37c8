# SPDX-License-Identifier: Apache-2.0
"""Counts the results of a test run: JUnit files of CTest and the table of steps in one folder.

Prints what failed and what was skipped, then `N passed, N failed, N skipped` on the last line.
Under CI=true a skip is a failure. Exit code 1 when anything failed or nothing ran.
"""
import os
import pathlib
import sys
import xml.etree.ElementTree as ElementTree


def outcome(case):
    """A test that asked to be skipped or is disabled is skipped; one that could not start failed.

    CTest writes both a skip and a missing program as `notrun` with a child `skipped`; only the
    message tells them apart.
    """
    skipped = case.find("skipped")
    if case.get("status") == "disabled" or (
            skipped is not None and skipped.get("message", "").startswith("SKIP_")):
        return "skipped"
    return "passed" if case.get("status") == "run" else "failed"


def read(folder):
    """Yields (outcome, name) of every test and step."""
    steps = folder / "steps.txt"
    for line in steps.read_text().splitlines() if steps.exists() else []:
        result, name = line.split(" ", 1)
        yield result, f"step: {name}"
    for report in sorted(folder.glob("*.xml")):
        for case in ElementTree.parse(report).getroot().iter("testcase"):
            yield outcome(case), f"{report.stem}: {case.get('name')}"


def main():
    counts = {"passed": 0, "failed": 0, "skipped": 0}
    for result, name in read(pathlib.Path(sys.argv[1])):
        if result != "passed":
            print(f"{result}  {name}")
        if result == "skipped" and os.environ.get("CI") == "true":
            result = "failed"
        counts[result] += 1
    print("{passed} passed, {failed} failed, {skipped} skipped".format(**counts))
    return 1 if counts["failed"] or not counts["passed"] else 0


if __name__ == "__main__":
    sys.exit(main())
