# SPDX-License-Identifier: Apache-2.0
"""A tire tread with a depth gauge across two ribs."""
import numpy as np

from render.noise import Noise
from render.relief import Relief
from render.shapes import Rod, box
from render.trace import Scene, Surface, Torch

from .mix import blend, field, plain, smooth


def tread(seed=113):
    """Trailer tire from the front, gauge foot across two ribs, pin in the groove."""
    a, b = Noise(seed), Noise(seed + 1)
    step = 0.35
    x, y = field(-125, 125, -150, 240, step)
    zig = 1.6 * (2 * np.abs(np.mod(y / 26, 1.0) - 0.5) - 0.5)
    cut = np.zeros_like(x)
    for gx, half, deep in ((-50, 4.6, 4.6), (-17, 5.0, 5.0), (17, 5.0, 5.0), (50, 4.6, 4.2)):
        cut = np.maximum(cut, deep * smooth(half + 0.6, half - 1.3, np.abs(x - gx + zig)))
    sipe = np.abs(np.mod(y + 0.28 * np.abs(x) + 1.1 * np.arcsin(np.sin(x * 0.8)), 17.0) - 8.5)
    rib = (np.abs(x) < 82)
    cut = np.maximum(cut, 2.6 * smooth(0.8, 0.3, sipe) * rib * (np.abs(np.abs(x) - 34) < 22))
    slot = np.abs(np.mod(y + 6, 34.0) - 17)
    cut = np.maximum(cut, 4.5 * smooth(3.4, 2.2, slot) * smooth(64, 70, np.abs(x)))
    shoulder = 26 * smooth(78, 112, np.abs(x)) ** 1.4
    z = -y * y / 660 - x * x / 2600 - shoulder - cut + 0.10 * a.fractal(x / 7, y / 7, 3)
    stone = ((16.2, -62.0, 4.2), (-17.8, 74.0, 3.6), (49.6, 30.0, 3.2))
    for sx, sy, sr in stone:
        d2 = (x - sx) ** 2 + (y - sy) ** 2
        z = np.where(d2 < sr * sr, np.maximum(z, -sy * sy / 660 - 4.8 + np.sqrt(np.maximum(sr * sr - d2, 0)) * 1.1), z)
    relief = Relief(None, z, (-125, -150), step, 64)
    deepmap = cut

    def rubber(p, n):
        px, py = p[:, 0], p[:, 1]
        deep = relief.sample(deepmap, px, py)
        dust = np.clip(0.22 + 0.8 * a.fractal(px / 13, py / 13, 5) + 0.22 * (deep > 1.5), 0, 1)
        col = blend((0.040, 0.040, 0.042), (0.185, 0.155, 0.122), dust * 0.62)
        st = np.zeros(len(px))
        for sx, sy, sr in stone:
            st = np.maximum(st, smooth(sr, sr - 0.8, np.hypot(px - sx, py - sy)))
        col = blend(col, (0.17, 0.16, 0.145), st * (0.75 + 0.3 * b(px, py)))
        bump = 0.10 * np.stack([b(px * 1.3, py * 1.3), b(py * 1.3 + 4, px * 1.3), 0 * px], 1)
        return Surface(col, np.full(len(px), 0.045), 0.46 + 0.3 * dust, bump, 0.0)
    relief.look = rubber
    steel = plain((0.20, 0.197, 0.192), 0.5, 0.22, 0.7, 0.25, seed + 5, 8.0)

    def barrel(p, n):
        h = p[:, 2]
        tick = (np.mod(h, 2.0) < 0.45) * (p[:, 1] < 3) * (np.abs(p[:, 0] - 17) < np.where(np.mod(h, 10.0) < 0.45, 4.5, 2.6)) * (h > 42)
        col = blend((0.20, 0.197, 0.19), (0.015, 0.03, 0.03), tick.astype(float))
        return Surface(col, np.full(len(h), 0.06), np.full(len(h), 0.3))
    shapes = [relief, box(steel, (-5, -4.5, 0.2), (39, 4.5, 5.2)),
              Rod(steel, (17, 0, 5.2), (17, 0, 40), 6.4), Rod(barrel, (17, 0, 40), (17, 0, 66), 4.6),
              Rod(steel, (17, 0, 66), (17, 0, 70), 6.6), Rod(steel, (17, 0, -6), (17, 0, 1), 1.4)]
    torches = [Torch((-170, -130, 150), (8, 0, 0), 2.6, 10.0, spread=0.50),
               Torch((250, -150, 350), (0, 0, 0), 0.5, 80.0, (0.86, 0.92, 1.0), 1.2)]
    return Scene(shapes, (-40, -112, 205), (8, 8, 8), 40, torches, seed=seed, sky=(0.20, 0.23, 0.28), aperture=4.0)
