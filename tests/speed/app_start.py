# SPDX-License-Identifier: Apache-2.0
"""Warm start to the first usable screen, and resident memory, of the app on the demo rig against an empty Qt Quick
window. Alternating in one run, median of 15. Budgets: 1.5 and 2. Printed, never judged."""
import os
import statistics
import subprocess
import sys
import tempfile
import time

RUNS = 15


def measure(command, environment):
    """Seconds until the program says that its first usable frame is shown, what it then took of the processor, and its
    peak resident memory in MiB."""
    before = time.perf_counter()
    process = subprocess.Popen(command, env=environment, stdout=subprocess.PIPE, text=True)
    out = process.stdout.readline()
    seconds = time.perf_counter() - before
    process.stdout.read()
    _, status, usage = os.wait4(process.pid, 0)
    if os.waitstatus_to_exitcode(status) != 0 or "usable" not in out:
        raise SystemExit(f"{command[0]} did not come up: {out}")
    return seconds, usage.ru_utime + usage.ru_stime, usage.ru_maxrss / 1024


def main():
    app, empty, program, source = sys.argv[1:5]
    with tempfile.TemporaryDirectory(prefix="snugwalk-start-") as folder:
        environment = dict(os.environ, QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software", XDG_RUNTIME_DIR=folder,
                           XDG_DATA_HOME=os.path.join(folder, "data"), XDG_CONFIG_HOME=os.path.join(folder, "config"))
        book = os.path.join(folder, "demo.snugwalk")
        subprocess.run([program, "--book", book, "demo", "--from", os.path.join(source, "demo-rig")], check=True,
                       env=environment, stdout=subprocess.DEVNULL)
        ours, peer = [], []
        for _ in range(RUNS + 1):
            ours.append(measure([app, "--book", book, "--until-usable"], environment))
            peer.append(measure([empty], environment))
    for what, unit, part, scale, budget in (("start to first usable screen", "ms", 0, 1000, " (budget 1.5)"),
                                            ("processor's time, to the end", "ms", 1, 1000, ""),
                                            ("resident memory at most", "MiB", 2, 1, " (budget 2)")):
        mine, empty_one = (statistics.median(run[part] for run in runs[1:]) * scale for runs in (ours, peer))
        print(f"{what:29} {mine:8.0f} {unit}, empty window {empty_one:8.0f} {unit}, ratio {mine / empty_one:.2f}{budget}")


if __name__ == "__main__":
    main()
