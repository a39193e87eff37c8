# SPDX-License-Identifier: Apache-2.0
"""A wheel with six nuts, one of which bleeds rust."""
import numpy as np

from render.noise import Noise
from render.relief import Relief
from render.shapes import Dome, Rod, prism
from render.trace import Scene, Surface, Torch

from .mix import blend, field, plain, smooth


def wheel(seed=97):
    """Six nuts; the top one bleeds rust, its paint mark still in line."""
    a, b = Noise(seed), Noise(seed + 1)
    pcd, rusty_nut = 69.85, 1
    angle = [np.pi / 6 + i * np.pi / 3 for i in range(6)]
    x, y = field(-190, 190, -190, 190, 0.5)
    r = np.hypot(x, y)
    z = 6 * smooth(52, 58, r) - 9 * smooth(92, 126, r) - 24 * smooth(140, 150, r) + 34 * smooth(160, 186, r)
    for t in angle:
        z = z + 3.0 * smooth(19, 15.5, np.hypot(x - pcd * np.cos(t), y - pcd * np.sin(t)))
    hole = np.zeros_like(x)
    for i in range(9):
        t = 2 * np.pi * i / 9 + 0.18
        u, v = x * np.cos(t) + y * np.sin(t) - 117, -x * np.sin(t) + y * np.cos(t)
        h = smooth(1.15, 0.9, np.hypot(u / 11, v / 17))
        z, hole = z + 1.6 * np.exp(-((np.hypot(u / 11, v / 17) - 1.15) / 0.12) ** 2) * (1 - h) - 40 * h, np.maximum(hole, h)
    relief = Relief(None, z, (-190, -190), 0.5, 48)

    def paint(px, py):
        out = np.zeros(len(px))
        for t in angle:
            u, v = px * np.cos(t) + py * np.sin(t) - pcd, -px * np.sin(t) + py * np.cos(t)
            out = np.maximum(out, (np.abs(v + 0.4 * a(u, u * 0)) < 1.6) * (u > 11) * (u < 27))
        return out

    def disc(p, n):
        px, py = p[:, 0], p[:, 1]
        rr = np.hypot(px, py)
        d = np.clip(0.2 + 0.9 * a.fractal(px / 30, py / 30, 5) + 0.35 * (n[:, 2] < 0.85), 0, 1)
        col = blend((0.37, 0.375, 0.38), (0.145, 0.12, 0.095), d * 0.75)
        t = angle[rusty_nut]
        u, v = px * np.cos(t) + py * np.sin(t) - pcd, -px * np.sin(t) + py * np.cos(t)
        q = np.hypot(u, v)
        fan = np.exp(-(v / (6.5 + 0.34 * np.maximum(u, 0))) ** 2) * np.exp(-np.maximum(u - 10, 0) / 34) * (u > 0)
        ring = np.exp(-((q - 14) / 4.5) ** 2)
        rust = np.clip((0.85 * fan + 0.8 * ring) * (0.85 + 0.9 * b.fractal(px / 5, py / 5, 4)), 0, 1)
        col = blend(col, (0.17, 0.052, 0.016), rust)
        col = blend(col, (0.66, 0.66, 0.62), paint(px, py) * np.clip(0.9 - 0.35 * d - 0.3 * rust, 0, 1))
        deep = smooth(-14, -30, p[:, 2]) * (rr < 140)
        col = col * (1 - 0.9 * deep)[:, None]
        bump = 0.05 * np.stack([b(px * 0.9, py * 0.9), b(py * 0.9, px * 0.9 + 5), 0 * px], 1)
        return Surface(col, 0.22 * (1 - 0.75 * np.clip(d + rust, 0, 1)), 0.36 + 0.3 * d, bump, 0.25)
    relief.look = disc

    def nut_skin(t, rusty):
        def look(p, n):
            px, py = p[:, 0] - pcd * np.cos(t), p[:, 1] - pcd * np.sin(t)
            u, v = px * np.cos(t) + py * np.sin(t), -px * np.sin(t) + py * np.cos(t)
            d = np.clip(0.2 + 0.8 * b.fractal((px + p[:, 2]) / 6, (py - p[:, 2]) / 6, 4), 0, 1)
            col = blend((0.40, 0.40, 0.405), (0.13, 0.10, 0.08), 0.7 * d)
            if rusty:
                col = blend(col, (0.17, 0.058, 0.02), np.clip(0.45 + 0.8 * a.fractal(px / 5, p[:, 2] / 5 + py / 5, 4), 0, 1))
            mark = (np.abs(v + 0.3 * a(u, u * 0)) < 1.6) * (u > 2)
            col = blend(col, (0.66, 0.66, 0.62), mark * (0.9 - 0.3 * d))
            return Surface(col, 0.38 * (1 - 0.6 * d) * (1 - 0.8 * mark), 0.25 + 0.35 * d, None, 0.5)
        return look
    shapes = [relief]
    for i, t in enumerate(angle):
        c = (pcd * np.cos(t), pcd * np.sin(t))
        skin = nut_skin(t, i == rusty_nut)
        shapes += [prism(skin, c, 21.0, 6.0, 24.0, t, bevel=2.2),
                   Rod(skin, (c[0], c[1], 6), (c[0], c[1], 11.5), 13.2),
                   Rod(plain((0.30, 0.28, 0.25), 0.35, 0.35, 0.5, 0.8, seed + i, 3.0), (c[0], c[1], 20), (c[0], c[1], 30), 6.0)]
    cap = plain((0.40, 0.405, 0.41), 0.4, 0.2, 0.5, 0.55, seed + 20, 20.0)
    shapes += [Rod(cap, (0, 0, -2), (0, 0, 26), 33.0), Dome(cap, (0, 0, 26), (0, 0, 1), 62.0, 8.0)]
    torches = [Torch((-190, 150, 200), (20, 10, 5), 1.45, 10.0, spread=0.55),
               Torch((300, -200, 400), (0, 0, 0), 0.12, 80.0, (0.86, 0.92, 1.0), 1.2)]
    return Scene(shapes, (46, -96, 236), (6, 34, 8), 41, torches, up=(0, 1, 0), seed=seed, aperture=3.0)
