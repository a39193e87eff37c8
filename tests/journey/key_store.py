# SPDX-License-Identifier: Apache-2.0
"""Where secrets lie: a key store of the system where one runs, files without one.

gnome-keyring keeps them and libsecret's secret-tool looks into it: other people's programs on both sides.
Starts itself once more inside a bus of its own.
"""
import os
import stat
import subprocess
import sys
import tempfile

from program import Program, check


def stored(folder):
    """The value that secret-tool finds, or an empty text."""
    return subprocess.run(["secret-tool", "lookup", "folder", os.path.join(folder, "data", "snugwalk", "secrets"),
                           "name", "stores"], stdout=subprocess.PIPE, text=True, check=False).stdout


def add(program, name):
    password = os.path.join(program.folder, "password.txt")
    with open(password, "w", encoding="utf-8") as file:
        file.write("white-heron\n")
    return program.run("store", "add", name, "webdav", "https://shed.invalid/rig/", "--user", "rata",
                       "--password-file", password)


def with_key_store(path, folder):
    program = Program(path, folder)
    key = os.path.join(folder, "data", "snugwalk", "secrets", "stores.key")
    check(os.path.exists(key), "the secret of before is no longer a file")
    check("key store of the system" in add(program, "shed"), "where the password lies is not said")
    check(len(stored(folder)) == 64, "the key store has no secret of 32 bytes")
    check(not os.path.exists(key), "the secret lies in the file as well")
    # A store kept before the move still opens: the address is nowhere, its password is no matter.
    program.refused("sync", "--store", "barn", code=7, saying=["could not be reached", "barn"])
    with open(os.path.join(folder, "data", "snugwalk", "stores.json"), encoding="utf-8") as file:
        check("white-heron" not in file.read(), "the password lies in the list")
    print("with a key store: the secret moved into it, and no file has it")


def without(path, folder):
    program = Program(path, folder)
    program.environment["DBUS_SESSION_BUS_ADDRESS"] = "unix:path=/nonexistent"
    program.run("rig", "add", "name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in",
                "measures.height=2.2 m", "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]', "wheels.studs=6",
                "tires.placard=55 psi", "fittings=leaf_springs,electric_brakes,ball_coupling,safety_chains")
    program.run("share", "Heron")
    check("0600" in add(program, "barn"), "where the password lies is not said")
    key = os.path.join(folder, "data", "snugwalk", "secrets", "stores.key")
    mode = stat.S_IMODE(os.stat(key).st_mode)
    check(mode == 0o600, f"the file's mode is {mode:o}")
    os.chmod(key, 0o644)
    program.refused("sync", "--store", "barn", code=5, saying=["stores.key"])
    os.chmod(key, 0o600)
    print("without one: a file for its user alone, refused once others may read it")


def main():
    path = os.path.abspath(sys.argv[1])
    if len(sys.argv) > 2:
        with_key_store(path, sys.argv[2])
        return
    with tempfile.TemporaryDirectory() as folder:
        without(path, folder)
        home = os.path.join(folder, "home")
        run = os.path.join(folder, "run")
        os.makedirs(home)
        os.makedirs(run, mode=0o700)
        environment = dict(os.environ, HOME=home, XDG_RUNTIME_DIR=run)
        environment.pop("DBUS_SESSION_BUS_ADDRESS", None)
        inside = "echo -n tui | gnome-keyring-daemon --unlock --components=secrets >/dev/null && exec \"$@\""
        subprocess.run(["dbus-run-session", "--", "sh", "-c", inside, "sh", sys.executable, "-B", __file__, path, folder],
                       env=environment, check=True)


main()
