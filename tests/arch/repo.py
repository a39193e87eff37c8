# SPDX-License-Identifier: Apache-2.0
"""What every check needs: the root to look at, the files in it, and one way to report."""
import json
import pathlib
import subprocess
import sys

SOURCE_SUFFIXES = {".cpp", ".hpp", ".h", ".qml", ".js", ".py", ".sh", ".cmake"}


def root():
    """The tree named on the command line, else the one this file lies in."""
    return pathlib.Path(sys.argv[1] if len(sys.argv) > 1 else pathlib.Path(__file__).parents[2]).resolve()


def git_files(base, *options):
    # the owner of a clone inside a container is often another user, which git refuses by default
    listing = subprocess.run(["git", "-c", "safe.directory=*", "ls-files", "-z", *options], cwd=base,
                             capture_output=True, check=False)
    return [base / name for name in listing.stdout.decode().split("\0") if name]


def files(base):
    """Files of ours: what git has or would add; without git, all but build/ and dot folders."""
    found = git_files(base, "--cached", "--others", "--exclude-standard")
    if not found:
        skipped = ("build", ".git", "__pycache__")
        found = [path for path in base.rglob("*") if not set(skipped) & set(path.relative_to(base).parts)]
    return sorted({path for path in found if path.is_file()})


def name(base, path):
    return path.relative_to(base).as_posix()


def is_source(path):
    return path.suffix in SOURCE_SUFFIXES or path.name == "CMakeLists.txt"


def languages(base):
    """The languages that the product speaks, English among them."""
    return list(json.loads(text(base / "core" / "catalogue" / "data" / "languages.json")))


def text(path):
    return path.read_text(encoding="utf-8", errors="replace")


def report(faults, checked):
    """Prints the faults; a check that found nothing to look at has failed too."""
    for fault in faults:
        print(fault)
    print(f"{checked} looked at, {len(faults)} faults")
    sys.exit(1 if faults or not checked else 0)
