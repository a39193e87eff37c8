# SPDX-License-Identifier: Apache-2.0
"""The main job by taps in the app, a tap a pass, with the process killed in the middle of it."""
import os
import re
import signal
import sys
import tempfile

from app_life import live, start
from program import Failed, Program, check

LINES_BEFORE_KILL = 17
NOW = "2026-11-20T08:10:00+13:00"


def walk_and_kill(app, book, photo, shots):
    """Reads acknowledged marks, then kills without waiting for the next one; gives their lines."""
    process = start(app, "walk", book, shots, NOW, photo=photo)
    lines = []
    for line in process.stdout:
        found = re.match(r"marked (\d+)", line)
        if not found:
            raise Failed(line.strip())
        lines.append(int(found.group(1)))
        if len(lines) == LINES_BEFORE_KILL:
            process.send_signal(signal.SIGKILL)
            break
    for line in process.stdout:  # what was acknowledged before the signal arrived
        if line.startswith("marked"):
            lines.append(int(line.split()[1]))
    process.wait()
    check(process.returncode == -signal.SIGKILL, f"the app ended by itself: {process.returncode}, {lines}")
    return lines


def resume(app, book, shots, acknowledged):
    out = live(app, "resume", book, shots, NOW)
    found = re.search(r"resumed at (\d+) with((?: \d+)*)", out)
    marks = {int(n) for n in found.group(2).split()}
    lost = set(acknowledged) - marks
    check(not lost, f"acknowledged lines without a mark: {sorted(lost)}")
    first = next(n for n in range(10_000) if n not in marks)
    check(int(found.group(1)) == first, f"resumed at {found.group(1)}, the first line without a mark is {first}")
    check("rivet worse, both photos side by side" in out, "the comparison does not show the rivet")
    print(f"{len(acknowledged)} acknowledged marks, 0 lost; resumed at line {first}")


def main():
    app, program, source, shots = sys.argv[1:5]
    photo = os.path.join(source, "demo-rig", "photos", "rivet-2026-11.jpg")
    with tempfile.TemporaryDirectory(prefix="snugwalk-app-") as folder:
        try:
            line = Program(program, folder)
            line.run("demo", "--from", os.path.join(source, "demo-rig"))
            acknowledged = walk_and_kill(app, line.book, photo, shots)
            resume(app, line.book, shots, acknowledged)
            check(line.json("check", "--deep")["faults"] == [], "check found faults")
        except Failed as fault:
            print("failed:", fault)
            return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
