# SPDX-License-Identifier: Apache-2.0
"""Two devices of the app and a folder between them, by taps: paired by words and six digits, the rig goes over, a mark
comes back."""
import os
import re
import subprocess
import sys
import tempfile

from app_life import environment_of
from program import Failed, Program, check


class Device:
    """A life that waits for what the other device shows."""

    def __init__(self, app, role, book, shots, now, folder):
        self.role = role
        self.process = subprocess.Popen([app, role, book, shots, now, "folder=" + folder], env=environment_of(book),
                                        stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)

    def hears(self, words):
        self.process.stdin.write(words + "\n")
        self.process.stdin.flush()

    def says(self, what):
        for line in self.process.stdout:
            if line.startswith("failed"):
                raise Failed(f"{self.role}: {line.strip()}")
            if line.startswith(what):
                return line[len(what):].strip()
        raise Failed(f"{self.role} ended before it said {what}")

    def ends(self):
        self.says("done")
        check(self.process.wait() == 0, f"{self.role} ended with {self.process.returncode}")


def main():
    app, program, _, shots = sys.argv[1:5]
    with tempfile.TemporaryDirectory(prefix="snugwalk-exchange-") as folder:
        try:
            mine, yours = (os.path.join(folder, name, "book.snugwalk") for name in ("mine", "yours"))
            shed = os.path.join(folder, "shed")
            for path in (os.path.dirname(mine), os.path.dirname(yours), shed):
                os.makedirs(path)
            line = Program(program, os.path.dirname(mine))
            line.run("rig", "add", "name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in",
                     "measures.height=2.2 m", "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]', book=mine)
            owner = Device(app, "owner", mine, shots, "2026-11-20T08:10:00+13:00", shed)
            code = owner.says("code")
            other = Device(app, "other", yours, shots, "2026-11-20T08:12:00+13:00", shed)
            other.hears(code)
            answer = other.says("answer")
            digits = other.says("digits")
            owner.hears(answer)
            check(owner.says("digits") == digits and len(re.sub(r"\D", "", digits)) == 6, f"other digits than {digits}")
            owner.says("exchanged")
            other.hears("enrolled")
            other.says("sent")
            owner.hears("sent")
            owner.ends()
            other.ends()
            walks = line.json("walk", "list", book=mine)["walks"]
            looked = [walk["counts"]["points"] - walk["counts"]["not_looked"] for walk in walks]
            check(len(looked) == 1 and looked[0] > 0, f"the other's walk did not come: {looked}")
            for book in (mine, yours):
                check(Program(program, os.path.dirname(book)).json("check", "--deep", book=book)["faults"] == [],
                      "check found faults")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print(f"paired by {digits}; the rig went over, the other's mark came back")
    return 0


if __name__ == "__main__":
    sys.exit(main())
