# SPDX-License-Identifier: Apache-2.0
"""Every kind of report as a PDF of both sheet sizes, read by poppler's programs and nothing of ours."""
import os
import re
import subprocess
import sys
import tempfile

from program import Failed, Program, check

NOW = "2026-11-24T08:10:00+13:00"
KINDS = ("walk then_and_now road_slip work_order work_done survey damage out_and_back seals_and_damp weights dates "
         "shopping laying_up").split()
# ISO 216 and ANSI/ASME Y14.1, in points of 1/72 inch
SIZES = {"a4": (595, 842), "letter": (612, 792)}
FOOTER = {"en": "Not an official inspection.", "es": "No es una inspección oficial."}
NUMBER = {"en": "page {} of {}", "es": "página {} de {}"}


def poppler(program, *arguments):
    return subprocess.run([program, *arguments], check=True, capture_output=True, text=True).stdout


def written(app, folder, book, kind, *options):
    file = os.path.join(folder, "report.pdf")
    run = os.path.join(folder, "run")
    os.makedirs(run, mode=0o700, exist_ok=True)
    done = subprocess.run([app, "--book", book, "--now", NOW, "--paper", kind, "--out", file, *options],
                          capture_output=True, text=True, timeout=300,
                          env=dict(os.environ, XDG_DATA_HOME=os.path.join(folder, "data"), XDG_RUNTIME_DIR=run))
    check(done.returncode == 0, f"{kind} {options}: exit {done.returncode}\n{done.stderr}")
    check(done.stderr == "", f"{kind}: {done.stderr}")
    return file


def facts_of(file):
    return dict(re.match(r"([^:]+):\s*(.*)", line).groups() for line in poppler("pdfinfo", file).splitlines())


def pages_of(file):
    return [" ".join(page.split()) for page in poppler("pdftotext", "-layout", file, "-").split("\f")[:-1]]


def letters_are_embedded(file, kind):
    rows = poppler("pdffonts", file).splitlines()[2:]
    check(rows, f"{kind}: no letters at all")
    for row in rows:
        embedded = re.search(r"\s(yes|no)\s+(?:yes|no)\s+(?:yes|no)\s+\d+\s+\d+$", row).group(1)
        check(embedded == "yes", f"{kind}: letters not embedded: {row}")
    check(any("Atkinson" in row for row in rows), f"{kind}: not our letters: {rows}")


def feet_stand_on_each_page(pages, language, kind):
    for number, text in enumerate(pages, 1):
        check(FOOTER[language] in text, f"{kind}: page {number} has no foot")
        check(NUMBER[language].format(number, len(pages)) in text, f"{kind}: page {number} has no number")


def nothing_is_cut(file, kind, width, height):
    """Words that poppler finds lie on the sheet, 10 mm or more from its edge."""
    edge = 10 / 25.4 * 72
    for x1, y1, x2, y2, word in re.findall(
            r'<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)</word>',
            poppler("pdftotext", "-bbox", file, "-")):
        check(float(x1) >= edge and float(x2) <= width - edge + 1, f"{kind}: {word} from {x1} to {x2}")
        check(float(y1) >= edge - 8 and float(y2) <= height - 2, f"{kind}: {word} from {y1} to {y2} high")


def words_do_not_overlap(file, kind):
    boxes = []
    for page in poppler("pdftotext", "-bbox", file, "-").split("<page ")[1:]:
        boxes = [(float(a), float(b), float(c), float(d), w) for a, b, c, d, w in re.findall(
            r'<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)</word>', page)]
        boxes.sort(key=lambda box: box[1])
        for i, (x1, y1, x2, y2, word) in enumerate(boxes):
            for a1, b1, a2, b2, other in boxes[i + 1:]:
                if b1 >= y2:
                    break
                wide = min(x2, a2) - max(x1, a1)
                high = min(y2, b2) - max(y1, b1)
                # letters' boxes of neighbouring lines touch; drawn twice (a halo) is the same word
                check(not (wide > 2 and high > 0.6 * min(y2 - y1, b2 - b1) and word != other),
                      f"{kind}: {word!r} lies over {other!r}")


def photos_are_small(file, kind):
    rows = [row.split() for row in poppler("pdfimages", "-list", file).splitlines()[2:]]
    for row in rows:
        encoding, dots = row[8], int(row[12])
        check(encoding == "jpeg", f"{kind}: a picture as {encoding}")
        check(dots <= 205, f"{kind}: a picture of {dots} dots an inch")
    return len(rows)


def main(cli, app, source):
    with tempfile.TemporaryDirectory() as folder:
        program = Program(cli, folder)
        program.run("demo", "--from", os.path.join(source, "demo-rig"))
        photos = {}
        for kind in KINDS:
            for size, language in (("a4", "en"), ("letter", "en"), ("a4", "es")):
                file = written(app, folder, program.book, kind, "--size", size, "--language", language)
                facts = facts_of(file)
                width, height = SIZES[size]
                measured = [float(n) for n in re.findall(r"[\d.]+", facts["Page size"])[:2]]
                check(all(abs(a - b) < 1 for a, b in zip(measured, (width, height))), f"{kind}: {facts['Page size']}")
                pages = pages_of(file)
                check(int(facts["Pages"]) == len(pages), f"{kind}: {facts['Pages']} pages, {len(pages)} read")
                check(len(facts["Title"]) > 8 and pages[0].startswith(facts["Title"].split(",")[0][:20]),
                      f"{kind}: title {facts['Title']!r}, page begins {pages[0][:60]!r}")
                letters_are_embedded(file, kind)
                feet_stand_on_each_page(pages, language, kind)
                nothing_is_cut(file, kind, width, height)
                words_do_not_overlap(file, kind)
                photos[kind] = photos_are_small(file, kind)
        check(photos["walk"] >= 2 and photos["damage"] >= 1, f"photos {photos}")
        refused = subprocess.run([app, "--book", program.book, "--paper", "poem", "--out", os.path.join(folder, "x.pdf")],
                                 capture_output=True, text=True, timeout=120,
                                 env=dict(os.environ, XDG_DATA_HOME=os.path.join(folder, "data")))
        check(refused.returncode == 3 and not os.path.exists(os.path.join(folder, "x.pdf")),
              f"an unknown kind: exit {refused.returncode}")
    print(f"sheets: {len(KINDS)} kinds, both sizes, two languages")


if __name__ == "__main__":
    try:
        main(*sys.argv[1:])
    except Failed as failed:
        print(f"report_sheets: {failed}", file=sys.stderr)
        sys.exit(1)
