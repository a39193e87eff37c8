#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""Kills a process that marks points, at random moments, and looks whether anything acknowledged is lost.

usage: kill_trials.py WRITER FOLDER TRIALS [SEED]

The writer says `ack N WALK/LINE` after act N has returned. It is killed with SIGKILL 0 to 300 ms after its
start, so that some kills hit the opening of the logbook, or in every other trial 0 to 100 ms after its first
to eighth act, so that many hit the writing however slow the machine is. Then every acknowledged act must be there whole, the
deep check must be clean, and the walk must go on at the line that was told last. One act more than
acknowledged may be there: it was on the disk when its word was cut off. The same logbook goes on for
25 trials.
"""

import pathlib
import random
import shutil
import subprocess
import sys
import time

TRIALS_A_BOOK = 25


def run_and_kill(writer, book, first, seed, seconds, acts):
    """The lines the writer got out before it was killed."""
    with subprocess.Popen([writer, "write", book, str(first), str(seed)], stdout=subprocess.PIPE) as process:
        out = b"".join(process.stdout.readline() for _ in range(acts))
        # the moment of the kill is what is tried here, so this one wait is real time
        time.sleep(seconds)
        process.kill()
        out += process.stdout.read()
        process.wait()
    if process.returncode != -9:
        raise SystemExit(f"the writer ended by itself: {out[-500:]!r}")
    whole = out[: out.rfind(b"\n") + 1].decode()
    return [line.split() for line in whole.splitlines()]


def check(writer, book):
    done = subprocess.run([writer, "check", book], stdout=subprocess.PIPE, text=True, check=False)
    if done.returncode != 0:
        raise SystemExit(f"the check ended with {done.returncode}: {done.stdout[-500:]}")
    return [line.split(maxsplit=1) for line in done.stdout.splitlines()]


def main():
    writer, folder, trials = sys.argv[1], pathlib.Path(sys.argv[2]), int(sys.argv[3])
    seed = int(sys.argv[4]) if len(sys.argv) > 4 else 20261124
    rng = random.Random(seed)
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    acknowledged_ever = lost = faults = unsaid = early = 0
    problems = []
    for trial in range(trials):
        if trial % TRIALS_A_BOOK == 0:
            shutil.rmtree(folder)
            folder.mkdir()
            book = str(folder / "book.snug")
            acknowledged, first = set(), 0
        acts = rng.randrange(1, 9) if trial % 2 == 1 else 0
        seconds = rng.uniform(0, 0.1 if acts else 0.3)
        lines = run_and_kill(writer, book, first, rng.randrange(2**31), seconds, acts)
        acks = [(int(line[1]), line[2]) for line in lines if line[0] == "ack"]
        problems += [f"trial {trial}: {line}" for line in lines if line[0] != "ack"]
        acknowledged |= {number for number, _ in acks}
        acknowledged_ever += len(acks)
        early += not acks

        report = check(writer, book)
        present = {int(rest) for word, rest in report if word == "act"}
        missing = acknowledged - present
        lost += len(missing)
        bad = [line for line in report if line[0] in ("fault", "half", "error")]
        faults += len(bad)
        extra = present - acknowledged
        new = {number for number in extra if number >= first}
        unsaid += len(new)
        if len(new) > 1:
            bad.append(("extra", str(sorted(new))))
        resumes = {rest for word, rest in report if word == "at"}
        if acks and not new and acks[-1][1] not in resumes | {"none"}:
            bad.append(("resume", f"{acks[-1][1]} not in {sorted(resumes)[-3:]}"))
        problems += [f"trial {trial}: {line}" for line in bad]
        problems += [f"trial {trial}: lost act {number}" for number in sorted(missing)]
        acknowledged |= new
        first = max(present, default=first - 1) + 1
    for problem in problems[:50]:
        print(problem)
    print(f"seed {seed}: {early} kills before the first act returned, {unsaid} acts on the disk but not yet told")
    print(f"{trials} trials, {acknowledged_ever} acknowledged marks, {lost} lost, {faults} faults")
    # a run in which hardly anything was written would prove nothing
    return 1 if problems or acknowledged_ever < trials else 0


if __name__ == "__main__":
    sys.exit(main())
