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
    """Seconds until the program ends by itself after its first usable frame, and its peak resident memory in MiB."""
    before = time.perf_counter()
    process = subprocess.Popen(command, env=environment, stdout=subprocess.PIPE, text=True)
    out = process.stdout.read()
    _, status, usage = os.wait4(process.pid, 0)
    seconds = time.perf_counter() - before
    if os.waitstatus_to_exitcode(status) != 0 or "usable" not in out:
        raise SystemExit(f"{command[0]} did not come up: {out}")
    return seconds, usage.ru_maxrss / 1024


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
    seconds = [statistics.median(run[0] for run in runs[1:]) for runs in (ours, peer)]
    memory = [statistics.median(run[1] for run in runs[1:]) for runs in (ours, peer)]
    print(f"start to first usable screen  {seconds[0] * 1000:8.0f} ms, empty window {seconds[1] * 1000:8.0f} ms, "
          f"ratio {seconds[0] / seconds[1]:.2f} (budget 1.5)")
    print(f"resident memory at most       {memory[0]:8.0f} MiB, empty window {memory[1]:7.0f} MiB, "
          f"ratio {memory[0] / memory[1]:.2f} (budget 2)")


if __name__ == "__main__":
    main()
