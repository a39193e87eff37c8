# SPDX-License-Identifier: Apache-2.0
"""Reports saved by taps: the files are there and read as what they say they are, by other people's readers."""
import csv
import json
import os
import subprocess
import sys
import tempfile
from html.parser import HTMLParser

from app_life import live
from app_road import text_of
from program import Failed, Program, check


class Page(HTMLParser):
    def __init__(self):
        super().__init__()
        self.words = []

    def handle_data(self, data):
        self.words.append(data)


def read(path):
    with open(path, encoding="utf-8", newline="") as file:
        return file.read()


def main():
    app, program, source, shots, ical_reader = sys.argv[1:6]
    with tempfile.TemporaryDirectory(prefix="snugwalk-papers-") as folder:
        try:
            line = Program(program, folder)
            line.run("demo", "--from", os.path.join(source, "demo-rig"))
            files = {"PDF": "walk.pdf", "web page": "walk.html", "table, CSV": "walk.csv", "calendar": "walk.ics",
                     "map data, GeoJSON": "walk.geojson", "order": "order.pdf"}
            files = {form: os.path.join(folder, name) for form, name in files.items()}
            live(app, "hand", line.book, shots, "2026-11-20T08:10:00+13:00", **files)
            check("Walk report" in text_of(files["PDF"]), "the PDF has no title")
            check("Work order" in text_of(files["order"]), "the work order has no title")
            page = Page()
            page.feed(read(files["web page"]))
            check(any("Walk report" in words for words in page.words), "the page has no title")
            rows = list(csv.DictReader(read(files["table, CSV"]).splitlines()))
            findings = line.json("finding", "list")["findings"]
            check(len(rows) >= len(findings) > 0, f"{len(rows)} rows, {len(findings)} open findings")
            check(json.loads(read(files["map data, GeoJSON"]))["type"] == "FeatureCollection", "no GeoJSON")
            events = subprocess.run([ical_reader], input=read(files["calendar"]), stdout=subprocess.PIPE, text=True,
                                    check=False)
            check(events.returncode == 0 and events.stdout.strip(), "libical does not read the calendar")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print(f"PDF, web page, table of {len(rows)} rows, calendar and map data read")
    return 0


if __name__ == "__main__":
    sys.exit(main())
