# SPDX-License-Identifier: Apache-2.0
"""Draws the demo's photos: traced by torch light, seeded, each under 220 KB. Usage: [root] [name ...]."""
import io
import sys
from multiprocessing import Pool
from pathlib import Path

import numpy as np
from PIL import Image

from render.exif import exif
from render.film import caption, develop, focus
from render.trace import render
from story.clock import local, offset, utc
from story.places import P
from story.shots import SHOTS

WIDE, HIGH = 1600, 1200
TRACED = (1200, 900)
LIMIT = 212000


def enlarge(picture):
    """Traced size to picture size, one plane at a time, in 32-bit floats."""
    planes = [Image.fromarray(picture[..., k].astype(np.float32), "F").resize((WIDE, HIGH), Image.Resampling.BICUBIC)
              for k in range(picture.shape[2])]
    return np.maximum(np.stack([np.asarray(p, float) for p in planes], 2), 0)


def drawn(shot):
    scene = shot["scene"]()
    picture, depth = render(scene, *TRACED)
    at = float(np.linalg.norm(np.array(scene.eye, float) - np.array(scene.aim, float)))
    picture = enlarge(focus(picture, depth, at, scene.aperture))
    pixels = develop(picture, scene.exposure, scene.seed + sum(map(ord, shot["name"])))
    return caption(pixels, shot["words"], shot["when"][:10])


def jpeg(image, tags):
    """The highest quality that stays under the limit."""
    for quality in range(88, 40, -2):
        out = io.BytesIO()
        image.save(out, "JPEG", quality=quality, subsampling=2, optimize=True, exif=tags)
        if out.tell() <= LIMIT:
            return out.getvalue()
    raise SystemExit("a photo stays too large")


def make(job):
    root, number = job
    shot = SHOTS[number]
    image = drawn(shot)
    if shot["turned"]:
        image = image.transpose(Image.Transpose.ROTATE_90)
    when = local(shot["when"])
    seconds = sum(map(ord, shot["name"])) % 60
    when = when.replace(second=seconds)
    tags = exif(when, "+%02d:00" % offset(when), utc(shot["when"]).replace(second=seconds), P[shot["place"]],
                6 if shot["turned"] else 1, "made for the demo: " + shot["words"], image.size)
    (Path(root) / "photos").mkdir(parents=True, exist_ok=True)
    (Path(root) / "photos" / (shot["name"] + ".jpg")).write_bytes(jpeg(image, tags))


def main(root, names):
    # Shots hold functions, which do not travel between processes: their numbers do.
    wanted = [(root, i) for i, s in enumerate(SHOTS) if not names or s["name"] in names]
    with Pool(2) as pool:
        pool.map(make, wanted, chunksize=1)


if __name__ == "__main__":
    main(sys.argv[1] if len(sys.argv) > 1 else Path(__file__).resolve().parent.parent, sys.argv[2:])
