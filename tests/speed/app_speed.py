# SPDX-License-Identifier: Apache-2.0
"""The app as a person uses it, watched from within: frames of a full round, scrolling over twenty years, marks, and
files that come in. Printed, never judged."""
import datetime
import math
import os
import shutil
import subprocess
import sys
import tempfile

TRACK_BYTES = 50_000_000
PHOTOS = 200
NOW = "2026-11-20T08:10:00+13:00"


def track(path):
    """A drive of many days, a point a second, as loggers write it."""
    start = datetime.datetime(2026, 9, 1, tzinfo=datetime.timezone.utc)
    with open(path, "w", encoding="utf-8") as file:
        file.write('<?xml version="1.0" encoding="UTF-8"?>\n<gpx version="1.1" creator="test" '
                   'xmlns="http://www.topografix.com/GPX/1/1"><trk><trkseg>\n')
        second = 0
        while file.tell() < TRACK_BYTES if second % 10_000 == 0 else True:
            at = (start + datetime.timedelta(seconds=second)).strftime("%Y-%m-%dT%H:%M:%SZ")
            latitude = -44.0 + 0.8 * math.sin(second * 1.7e-5) + 2e-4 * math.sin(second * 0.013)
            longitude = 170.0 + 0.9 * math.cos(second * 1.3e-5) + 2e-4 * math.cos(second * 0.011)
            height = 300.0 + 80.0 * math.sin(second * 3e-4)
            file.write(f'<trkpt lat="{latitude:.7f}" lon="{longitude:.7f}"><ele>{height:.1f}</ele><time>{at}</time>'
                       "</trkpt>\n")
            second += 1
        file.write("</trkseg></trk></gpx>\n")


def photos(source, folder):
    """As many as asked for, each another file: the demo's, with a comment of their own behind the start of image."""
    os.makedirs(folder)
    found = sorted(name for name in os.listdir(source) if name.endswith(".jpg"))
    for number in range(PHOTOS):
        with open(os.path.join(source, found[number % len(found)]), "rb") as file:
            data = file.read()
        note = f"number {number}".encode()
        comment = b"\xff\xfe" + (len(note) + 2).to_bytes(2, "big") + note  # ISO/IEC 10918-1, B.2.4.5
        with open(os.path.join(folder, f"{number:03}.jpg"), "wb") as file:
            file.write(data[:2] + comment + data[2:])


class Runs:
    """Books to be used up, and the program that uses them."""

    def __init__(self, app, long_book, program, source, folder):
        self.app, self.long_book, self.program, self.source, self.folder = app, long_book, program, source, folder
        self.environment = dict(
            os.environ, QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software", XDG_RUNTIME_DIR=folder,
            XDG_DATA_HOME=os.path.join(folder, "data"), XDG_CONFIG_HOME=os.path.join(folder, "config"))

    def demo(self, name):
        book = os.path.join(self.folder, name, "demo.snugwalk")
        os.makedirs(os.path.dirname(book))
        subprocess.run([self.program, "--book", book, "demo", "--from", os.path.join(self.source, "demo-rig")], check=True,
                       env=self.environment, stdout=subprocess.DEVNULL)
        return book

    def years(self):
        book = os.path.join(self.folder, "years.snugwalk")
        subprocess.run([self.long_book, book], check=True, env=self.environment)
        return book

    def run(self, what, book, now, *more):
        print(f"--- {what}", flush=True)
        subprocess.run([self.app, what, book, self.folder, now, *more], check=True, env=self.environment)


def main():
    app, long_book, program, source, what = sys.argv[1:6]
    folder = tempfile.mkdtemp(prefix="snugwalk-use-")
    runs = Runs(app, long_book, program, source, folder)
    try:
        if what == "import":
            path = os.path.join(folder, "long.gpx")
            track(path)
            print(f"a track of {os.path.getsize(path) / 1e6:.1f} MB")
            runs.run("track", runs.demo("track"), NOW, "track=" + path)
            photos(os.path.join(source, "demo-rig", "photos"), os.path.join(folder, "photos"))
            runs.run("photos", runs.demo("photo_book"), NOW, "photos=" + os.path.join(folder, "photos"))
        elif what == "scroll":
            runs.run("scroll", runs.years(), "2024-12-02T08:00:00Z")
        else:
            runs.run(what, runs.demo(what), NOW)
    finally:
        shutil.rmtree(folder)


if __name__ == "__main__":
    sys.exit(main())
