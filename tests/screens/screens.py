# SPDX-License-Identifier: Apache-2.0
"""Draws every page of the app over a logbook and fails with what a person could not read, reach or name there.

usage: screens.py TST_SCREENS SNUGWALK ROOT FOLDER demo|new|empty [options of tst_screens]"""
import os
import shutil
import subprocess
import sys

RIG = ["rig", "add", "name=Plover", "kind=travel_trailer", "measures.length=6.4 m", "measures.width=2.4 m",
       "measures.height=2.7 m", "measures.floor_height=0.55 m", 'measures.axles=["3.4 m", "4.3 m"]']


def book_of(kind, snugwalk, root, folder):
    if kind == "empty":
        return "-"
    book = os.path.join(folder, f"{kind}.snugwalk")
    command = ["demo", "--from", os.path.join(root, "demo-rig")] if kind == "demo" else RIG
    environment = dict(os.environ, XDG_DATA_HOME=os.path.join(folder, "data"))
    subprocess.run([snugwalk, "--book", book, *command], check=True, env=environment, stdout=subprocess.DEVNULL)
    return book


def main():
    screens, snugwalk, root, folder, kind, *options = sys.argv[1:]
    folder = os.path.join(folder, kind)
    shutil.rmtree(folder, ignore_errors=True)
    os.makedirs(folder)
    book = book_of(kind, snugwalk, root, folder)
    environment = dict(os.environ, QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software")
    return subprocess.run([screens, book, *options], env=environment).returncode


sys.exit(main())
