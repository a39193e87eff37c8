# SPDX-License-Identifier: Apache-2.0
"""A device is enrolled by QR codes alone: zbarimg (Debian's zbar-tools, an independent reader) reads the picture,
the page drawing and what the terminal shows. usage: qr_codes.py SNUGWALK SOURCE ZBARIMG"""
import os
import re
import subprocess
import sys
import tempfile

from party import Device, rig_of
from program import Failed, check

SCALE, QUIET = 8, 4
HALVES = {"█": (255, 255), "▀": (255, 0), "▄": (0, 255), " ": (0, 0)}


def read(zbarimg, file):
    done = subprocess.run([zbarimg, "--raw", "--oneshot", "-q", "-Sdisable", "-Sqrcode.enable", "-Sbinary", file],
                          capture_output=True, timeout=60, check=False)
    check(done.returncode == 0 and done.stdout, f"{file} is not readable: {done.stderr.decode()}")
    return done.stdout


def grey(rows, file):
    """Rows of 0 and 255 as a picture of SCALE pixels a module."""
    with open(file, "wb") as out:
        out.write(b"P5 %d %d 255\n" % (len(rows[0]) * SCALE, len(rows) * SCALE))
        for row in rows:
            out.write(b"".join(bytes([value]) * SCALE for value in row) * SCALE)
    return file


def drawn_on_terminal(text):
    rows = []
    for line in text.split("\n"):
        if "█" in line:
            rows.append([HALVES[c][0] for c in line])
            rows.append([HALVES[c][1] for c in line])
    return rows


def drawn_on_page(file):
    with open(file, encoding="utf-8") as page:
        svg = page.read()
    side = int(re.search(r'viewBox="0 0 (\d+) ', svg).group(1))
    rows = [[255] * side for _ in range(side)]
    for x, y in re.findall(r"M(\d+) (\d+)h1v1h-1z", svg):
        rows[int(y)][int(x)] = 0
    return rows


def piped(device, data, *arguments):
    done = subprocess.run([device.path, "--book", device.book, "--json", *arguments], input=data,
                          env=device.environment, capture_output=True, timeout=60, check=False)
    check(done.returncode == 0, f"{arguments}: {done.stderr.decode()}")
    return done.stdout.decode()


def journey(program, source, zbarimg, folder):
    import json
    owner, fresh = Device(program, folder, "owner"), Device(program, folder, "fresh")
    owner.run("demo", "--from", os.path.join(source, "demo-rig"))
    picture, page = (os.path.join(folder, name) for name in ("offer.png", "offer.svg"))
    offered = owner.json("share", rig_of(owner), "--role", "helper", "--qr", picture)
    code = read(zbarimg, picture)
    answered = json.loads(piped(fresh, code, "device", "answer", "--from", "-", "--qr", os.path.join(folder, "answer.png")))
    answer = read(zbarimg, os.path.join(folder, "answer.png"))
    enrolled = json.loads(piped(owner, answer, "device", "enroll", "--from", "-", "--code", answered["code"]))
    check(enrolled["role"] == "helper", f"enrolled {enrolled}")
    check(len(offered["offer"].split()) > 40, "words are missing")
    text = owner.run("device", "offer", "--role", "viewer", "--qr", page)
    by_page = read(zbarimg, grey(drawn_on_page(page), os.path.join(folder, "page.pgm")))
    by_terminal = read(zbarimg, grey(drawn_on_terminal(text), os.path.join(folder, "terminal.pgm")))
    check(by_page == by_terminal, "page and terminal show different codes")
    owner.refused("device", "offer", "--role", "viewer", "--qr", os.path.join(folder, "offer.gif"), code=3, saying=[".png"])
    print(f"{len(code)} and {len(answer)} bytes read back from pictures")


def main():
    with tempfile.TemporaryDirectory(prefix="snugwalk-qr-") as folder:
        try:
            journey(sys.argv[1], sys.argv[2], sys.argv[3], folder)
        except Failed as fault:
            print("failed:", fault)
            return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
