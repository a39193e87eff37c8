# SPDX-License-Identifier: Apache-2.0
"""Lap sealant on a roof: the front cap seam and a corner of a roof vent."""
import numpy as np

from render.noise import Noise
from render.relief import Relief
from render.shapes import Dome, Rod, box
from render.trace import Scene, Surface, Torch

from .mix import blend, field, smooth

STEP = 0.3


def crack_cut(along, across, path, width, lift, noise):
    """Depth share (0..1) of a crack of `width` mm about `path`, and its raised lip."""
    here = path + 3.2 * noise.fractal(along / 26, along * 0 + 3.5, 5) + 0.7 * noise(along / 1.9, along * 0 + 9)
    open_here = width * np.clip(0.75 + 0.9 * noise.fractal(along / 19, along * 0 + 71, 3), 0.0, 2)
    d = across - here
    cut = 1 - smooth(open_here * 0.35, open_here * 0.55 + 0.12, np.abs(d))
    cut = cut * (open_here > 0.08)
    lip = lift * np.exp(-np.maximum(d, 0) / 5.0) * (d > 0) * np.clip(open_here / max(width, 0.1), 0, 1.3)
    return cut, lip


def sealant_look(bead, ground, seed, age):
    """Chalky bead; whatever lies below the surface the bead had when whole is dark."""
    a, b = Noise(seed), Noise(seed + 1)

    def look(p, n):
        x, y = p[:, 0], p[:, 1]
        share = bead.sample(bead.share, x, y)
        cut = smooth(0.12, 1.1, bead.sample(bead.whole, x, y) - p[:, 2])
        speck = np.clip(3 * (b.fractal(x / 3.5, y / 3.5, 4) - 0.30), 0, 1)
        grime = np.clip(0.25 + 0.9 * a.fractal(x / 38, y / 26, 5), 0, 1) * age
        col = blend((0.52, 0.505, 0.47), (0.24, 0.215, 0.18), np.clip(grime + 0.5 * speck * age, 0, 1))
        edge = np.exp(-((share - 0.25) / 0.16) ** 2)
        col = blend(col, (0.14, 0.125, 0.11), np.clip(edge * (0.35 + 0.45 * age) * (0.6 + 0.6 * b.fractal(x / 9, y / 9, 3)), 0, 1))
        craze = np.clip(1 - np.abs(a.fractal(x / 8, y / 8, 4)) / 0.025, 0, 1) * (age > 0.6) * 0.35
        col = blend(col, (0.16, 0.15, 0.14), craze)
        under, gloss, rough, rub = ground(x, y)
        col = blend(under, col, smooth(0.1, 0.35, share))
        gl = gloss * (1 - share) + (0.05 - 0.03 * age) * share
        ro = rough * (1 - share) + (0.48 + 0.25 * age) * share
        col = blend(col, (0.018, 0.016, 0.014), np.clip(cut * 1.05, 0, 1))
        bump = np.zeros_like(p)
        k = 0.05 + 0.10 * share * age + rub * (1 - share)
        bump[:, 0] = k * b(x * 1.1, y * 1.1)
        bump[:, 1] = k * b(y * 1.1 + 7, x * 1.1)
        return Surface(col, gl, ro, bump, 0.0)
    return look


def make_relief(z, whole, share, origin):
    r = Relief(None, z, origin, STEP)
    r.share, r.whole = share, whole
    return r


def cap_seam(cracks, age=0.8, extra=0.0, seed=31):
    """The seam across the nose: moulded cap this side, membrane beyond; one view for all dates."""
    n1, n2 = Noise(seed), Noise(seed + 2)
    x, y = field(-170, 170, -110, 210, STEP)
    half = 19 + extra + 3.0 * n1.fractal(x / 45, x * 0 + np.where(y > 0, 5, 55), 4)
    body = np.clip(1 - (y / half) ** 2, 0, 1)
    bead = (4.2 + 0.35 * extra) * body ** 0.62 * (1 + 0.16 * n2.fractal(x / 34, y / 18, 3))
    for sx in np.arange(-150, 170, 52.0):
        bead = bead + 1.7 * body * np.exp(-((x - sx - 4) ** 2 + (y - 1) ** 2) / 52)
    base = np.where(y < 0, -0.00085 * y * y, 0.0) + np.where(y > 8, 0.35 * n2.fractal(x / 40, y / 25, 3), 0)
    whole = base + bead
    z = whole
    for i, (path, width, lift, x0, x1) in enumerate(cracks):
        cut, lip = crack_cut(x, y, path, width, lift, Noise(seed + 40 + i))
        span = smooth(x0, x0 + 14, x) * (1 - smooth(x1 - 14, x1, x)) * (body > 0.02)
        z = z + lip * span * body
        z = z - cut * span * np.minimum(bead * 0.95, 1.2 + 1.6 * width)
    relief = make_relief(z, whole, body ** 0.5, (-170, -110))
    g = Noise(seed + 7)

    def ground(px, py):
        cap = py < 0
        streak = np.clip(0.3 + g.fractal(px / 9, py / 90, 4), 0, 1)
        dirt = np.clip(0.3 + 0.9 * g.fractal(px / 50, py / 50, 4), 0, 1)
        gel = blend((0.50, 0.50, 0.49), (0.25, 0.235, 0.20), np.clip(0.8 * streak, 0, 1))
        mem = blend((0.27, 0.275, 0.28), (0.13, 0.12, 0.10), dirt)
        col = np.where(cap[:, None], gel, mem)
        return col, np.where(cap, 0.06, 0.02), np.where(cap, 0.22, 0.7), np.where(cap, 0.0, 0.16)
    relief.look = sealant_look(relief, ground, seed + 11, age)
    torches = [Torch((-210, -60, 120), (0, 5, 0), 0.95, 9.0, spread=0.50),
               Torch((120, 420, 420), (0, 0, 0), 0.16, 90.0, (0.80, 0.89, 1.0), 1.2)]
    return Scene([relief], (10, -190, 150), (4, 6, 0), 35, torches, seed=seed,
                 sky=(0.090, 0.100, 0.118), aperture=2.4)


def vent_corner(width, lift, age=0.85, seed=57):
    """Kerb-side rear corner of vent 1: flange under sealant, the vent's own wall behind."""
    n1, n2 = Noise(seed), Noise(seed + 2)
    x, y = field(-120, 190, -120, 190, STEP)
    qx, qy = 14 - x, 14 - y
    out = np.sqrt(np.maximum(qx, 0) ** 2 + np.maximum(qy, 0) ** 2) + np.minimum(np.maximum(qx, qy), 0) - 14
    along = x - y
    wave = 3.2 * n1.fractal(along / 34, along * 0 + 4, 4)
    mid = out + 3 + wave
    half = 19 + 2.5 * n1.fractal(along / 40, along * 0 + 31, 3)
    body = np.clip(1 - (mid / half) ** 2, 0, 1)
    flange = 1.8 * smooth(5.0, -3.0, out)
    bead = 3.6 * body ** 0.6 * (1 + 0.2 * n2.fractal(x / 26, y / 26, 3))
    for s in np.arange(-200, 240, 44.0):
        sx, sy = (8 + max(s, 0), 8 + max(-s, 0))
        bead = bead + 2.0 * np.exp(-((x - sx) ** 2 + (y - sy) ** 2) / 46)
    whole = flange + bead + 0.15 * n2(x / 50, y / 50)
    cut, lip = crack_cut(along, -mid, -1.0, width, lift, Noise(seed + 41))
    span = smooth(-95, -70, along) * (1 - smooth(60, 90, along)) * (body > 0.02)
    z = whole + lip * span * body - cut * span * np.minimum(bead * 0.95, 1.1 + 1.4 * width)
    relief = make_relief(z, whole, body ** 0.5, (-120, -120))
    g = Noise(seed + 7)

    def ground(px, py):
        d = np.clip(0.35 + 0.9 * g.fractal(px / 45, py / 45, 5), 0, 1)
        inside = (px > 1) & (py > 1)
        mem = blend((0.27, 0.275, 0.28), (0.13, 0.12, 0.10), d)
        plastic = blend((0.62, 0.61, 0.57), (0.40, 0.37, 0.32), d * 0.7)
        return (np.where(inside[:, None], plastic, mem), np.where(inside, 0.05, 0.02),
                np.where(inside, 0.35, 0.7), np.where(inside, 0.0, 0.16))
    relief.look = sealant_look(relief, ground, seed + 11, age)
    h = Noise(seed + 90)

    def wall(p, n):
        d = np.clip(0.2 + 0.8 * h.fractal(p[:, 0] / 20 + p[:, 1] / 20, p[:, 2] / 12, 4), 0, 1)
        low = np.exp(-np.maximum(p[:, 2] - 2, 0) / 6)
        return Surface(blend((0.66, 0.65, 0.61), (0.36, 0.33, 0.28), np.clip(0.55 * d + 0.5 * low, 0, 1)),
                       np.full(len(p), 0.05), np.full(len(p), 0.33))
    shapes = [relief, box(wall, (44, 44, 0), (400, 400, 46)), box(wall, (34, 34, 46), (410, 410, 58))]
    torches = [Torch((-190, 40, 105), (10, 10, 0), 1.0, 9.0, spread=0.50),
               Torch((260, -330, 420), (0, 0, 0), 0.15, 90.0, (0.80, 0.89, 1.0), 1.2)]
    return Scene(shapes, (-112, -150, 150), (14, 9, 4), 39, torches, seed=seed,
                 sky=(0.090, 0.100, 0.118), aperture=2.4)
