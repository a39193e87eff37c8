# SPDX-License-Identifier: Apache-2.0
"""From linear light to a small camera's picture: focus, bloom, tone, grain, caption."""
import numpy as np
from PIL import Image, ImageDraw, ImageFont

FONT = "/usr/share/fonts/opentype/b612/B612-%s.otf"
STRIP = 58


def blur(a, sigma):
    """Separable Gaussian with edges held."""
    r = max(1, int(3 * sigma + 0.5))
    w = np.exp(-0.5 * (np.arange(-r, r + 1) / sigma) ** 2)
    w /= w.sum()
    for axis in (0, 1):
        pad = [(0, 0)] * a.ndim
        pad[axis] = (r, r)
        b = np.pad(a, pad, mode="edge")
        n = a.shape[axis]
        out = np.zeros_like(a)
        for i, k in enumerate(w):
            out += k * (b[i:i + n] if axis == 0 else b[:, i:i + n])
        a = out
    return a


def focus(picture, depth, at, strength):
    """Softens what lies away from the focused distance."""
    off = blur(np.abs(depth - at) / at, 6.0)
    size = np.clip(off * strength * 6.0 - 0.25, 0, strength)
    levels = [0.0, strength * 0.35, strength]
    soft = [picture, blur(picture, max(levels[1], 0.4)), blur(picture, max(levels[2], 0.6))]
    w1 = np.clip(1 - np.abs(size - levels[1]) / levels[1], 0, 1)
    w1 = np.where(size > levels[1], 1 - (size - levels[1]) / (levels[2] - levels[1]), w1)
    w2 = np.clip((size - levels[1]) / (levels[2] - levels[1]), 0, 1)
    w0 = 1 - w1 - w2
    return sum(w[..., None] * s for w, s in zip((w0, w1, w2), soft))


def develop(picture, exposure, seed, grain=0.014):
    """Bloom, filmic tone, slight sharpening, seeded grain; 8-bit out."""
    x = picture * exposure
    bright = np.maximum(x - 1.2, 0)
    x = x + 0.25 * blur(bright, 9.0)
    high, wide = x.shape[:2]
    yy, xx = np.mgrid[0:high, 0:wide]
    r2 = ((xx / wide - 0.5) ** 2 + (yy / high - 0.5) ** 2) / 0.5
    x = x * (1 - 0.32 * r2)[..., None]
    x = np.clip(x * (2.51 * x + 0.03) / (x * (2.43 * x + 0.59) + 0.14), 0, 1)
    x = 0.55 * np.sqrt(x) + 0.45 * x ** 0.75 * (1.5 - 0.5 * x)
    x = x + 0.40 * (x * x * (3 - 2 * x) - x)
    x = x + 0.35 * (x - blur(x, 1.1))
    rng = np.random.RandomState(seed + 5)
    lum = blur(rng.standard_normal((high, wide)), 0.55)
    col = blur(rng.standard_normal((high, wide, 3)), 1.6)
    dark = 1.25 - 0.75 * x.mean(2)
    x = x + grain * (1.5 * lum * dark)[..., None] + grain * 1.4 * col * dark[..., None]
    return (np.clip(x, 0, 1) * 255 + 0.5).astype(np.uint8)


def caption(pixels, what, when):
    """A plain strip inside the picture that says where it comes from."""
    im = Image.fromarray(pixels)
    draw = ImageDraw.Draw(im)
    wide, high = im.size
    draw.rectangle([0, high - STRIP, wide, high], fill=(18, 24, 30))
    bold = ImageFont.truetype(FONT % "Bold", 25, layout_engine=ImageFont.Layout.BASIC)
    plain = ImageFont.truetype(FONT % "Regular", 25, layout_engine=ImageFont.Layout.BASIC)
    y = high - STRIP // 2
    draw.text((26, y), "made for the demo", font=bold, fill=(255, 255, 255), anchor="lm")
    draw.text((wide // 2 + 40, y), what, font=plain, fill=(226, 230, 234), anchor="mm")
    draw.text((wide - 26, y), when, font=plain, fill=(226, 230, 234), anchor="rm")
    return im
