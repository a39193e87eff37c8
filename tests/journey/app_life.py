# SPDX-License-Identifier: Apache-2.0
"""Lives of the app in a journey: started over a logbook at a time of day, until they say they are done."""
import os
import subprocess

from program import check


def environment_of(book):
    """No screen, and nothing of the person who runs the test."""
    folder = os.path.dirname(book)
    return dict(os.environ, QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software",
                XDG_DATA_HOME=os.path.join(folder, "data"), XDG_CONFIG_HOME=os.path.join(folder, "config"))


def start(app, role, book, shots, now, **more):
    given = [f"{name}={value}" for name, value in more.items()]
    return subprocess.Popen([app, role, book, shots, now, *given], env=environment_of(book), stdout=subprocess.PIPE,
                            text=True)


def live(app, role, book, shots, now, **more):
    """What the app said, when it came to the end of its story."""
    process = start(app, role, book, shots, now, **more)
    out, _ = process.communicate(timeout=500)
    check(process.returncode == 0 and out.rstrip().endswith("done"), f"{role}: {out.strip()}")
    return out
