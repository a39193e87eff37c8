# SPDX-License-Identifier: Apache-2.0
"""Photos that leave in a report, read by ExifTool and Pillow: no position, no time, no camera, and upright."""
import base64
import io
import json
import os
import re
import subprocess
import sys
import tempfile

from PIL import Image, ImageOps

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "journey"))
from program import Failed, Program, check  # noqa: E402

WORDS = ["-GPSLatitude=44.27", "-GPSLatitudeRef=S", "-GPSLongitude=170.1", "-GPSLongitudeRef=E", "-GPSAltitude=640",
         "-DateTimeOriginal=2026:11:24 21:10:00", "-Make=Somebody", "-SerialNumber=123456", "-Artist=A person",
         "-XMP:City=Twizel", "-IPTC:Keywords=holiday", "-Comment=taken at home", "-UserComment=our drive"]
# what a picture of its own says of itself: nothing that a person or a camera wrote
PLAIN_GROUPS = {"ExifTool", "File", "System", "JFIF", "Composite", "SourceFile", "ICC_Profile", "ICC-header",
                "ICC-view", "ICC-meas", "APP14"}


def picture(file, size, orientation):
    """Four quarters of four colours, so that a turn can be seen."""
    image = Image.new("RGB", size)
    w, h = size
    for x, y, colour in ((0, 0, "red"), (w // 2, 0, "lime"), (0, h // 2, "blue"), (w // 2, h // 2, "white")):
        image.paste(colour, (x, y, x + w // 2, y + h // 2))
    image.save(file, quality=92)
    subprocess.run(["exiftool", "-q", "-overwrite_original", f"-Orientation#={orientation}", *WORDS, file], check=True)


def told(data):
    out = subprocess.run(["exiftool", "-json", "-G1", "-a", "-u", "-"], input=data, check=True,
                         capture_output=True).stdout
    return json.loads(out)[0]


def corners(image):
    image = image.convert("RGB")
    w, h = image.size
    return [tuple(round(c / 255) for c in image.getpixel((x, y)))
            for x, y in ((w // 8, h // 8), (w - w // 8, h // 8), (w // 8, h - h // 8), (w - w // 8, h - h // 8))]


def photos_in(page):
    with open(page, encoding="utf-8") as file:
        return [base64.b64decode(data) for data in re.findall(r"src='data:image/jpeg;base64,([^']*)'", file.read())]


def added(program, folder, size, orientation):
    file = os.path.join(folder, f"{size[0]}-{orientation}.jpg")
    picture(file, size, orientation)
    with open(file, "rb") as original:
        bytes_ = original.read()
    found = program.json("finding", "list")["findings"][0]["id"]
    program.run("photo", "add", file, "--finding", found)
    return bytes_


def main(path, source):
    with tempfile.TemporaryDirectory() as folder:
        program = Program(path, folder)
        program.run("demo", "--from", os.path.join(source, "demo-rig"))
        page = os.path.join(folder, "walk.html")
        before = len(photos_in_report(program, page))
        originals = [added(program, folder, size, orientation)
                     for size in ((400, 300), (2400, 1800)) for orientation in (1, 3, 6, 8)]
        photos = photos_in_report(program, page)
        check(len(photos) >= before + len(originals), f"{len(photos)} photos, {before} before")
        for data in photos:
            facts = told(data)
            groups = {key.split(":")[0] for key in facts}
            only = {key for key in facts if key.startswith("IFD0:")}
            check(only <= {"IFD0:Orientation", "IFD0:ResolutionUnit", "IFD0:YCbCrPositioning", "IFD0:XResolution",
                           "IFD0:YResolution"}, f"IFD0 says {only}")
            check(groups - {"IFD0"} <= PLAIN_GROUPS, f"a copy says {groups - PLAIN_GROUPS}")
            check("GPSInfo" not in data.decode("latin-1") and "Comment" not in " ".join(facts), "a comment is left")
            check(not Image.open(io.BytesIO(data)).getexif().get_ifd(0x8825), "Pillow finds a position")
        seen = [(upright.size, corners(upright)) for upright in
                (ImageOps.exif_transpose(Image.open(io.BytesIO(data))) for data in photos)]
        for data in originals:
            check("GPSLatitude" in " ".join(told(data)), "the test's own photo has no position")
            upright = ImageOps.exif_transpose(Image.open(io.BytesIO(data)))
            shape = round(upright.size[0] / upright.size[1], 2)
            check(any(corners(upright) == c and round(s[0] / s[1], 2) == shape for s, c in seen),
                  f"no copy shows {corners(upright)} at {shape}")
        check(max(max(size) for size, _ in seen) == 1600, "a large photo is not larger than a thumbnail")
        kept = photos_in_report(program, page, "--photo-data")
        check(all(data in kept for data in originals), "an original is not kept byte for byte when asked for")
    print("photos: nothing of position, time, camera or person left; upright")


def photos_in_report(program, page, *options):
    program.run("report", "--kind", "walk", "--out", page, *options)
    return photos_in(page)


if __name__ == "__main__":
    try:
        main(*sys.argv[1:])
    except Failed as failed:
        print(f"photo_copies: {failed}", file=sys.stderr)
        sys.exit(1)
