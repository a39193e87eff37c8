# SPDX-License-Identifier: Apache-2.0
"""Two tail lamps at dusk, one of them out."""
import numpy as np

from render.noise import Noise
from render.shapes import Dome, Plane, Rod
from render.trace import Scene, Surface, Torch

from .mix import blend, plain, smooth


def lens(colour, centre, lit, seed):
    """Ribbed lens; `lit` adds the light of the lamp behind it."""
    a = Noise(seed)

    def look(p, n):
        x, y = p[:, 0] - centre[0], p[:, 1] - centre[1]
        r = np.hypot(x, y)
        dust = np.clip(0.25 + 0.8 * a.fractal(x / 16, y / 16, 4) + 0.35 * (y < -28), 0, 1) * 0.55
        rib = 0.5 + 0.5 * np.cos(x * 2 * np.pi / 6.5)
        col = blend(np.array(colour) * (0.62 + 0.5 * rib)[:, None], (0.17, 0.14, 0.115), dust)
        rim = smooth(50, 53, r)
        col = blend(col, (0.02, 0.02, 0.022), rim)
        bump = np.zeros_like(p)
        bump[:, 0] = 0.45 * np.sin(x * 2 * np.pi / 6.5) * (1 - rim)
        bump[:, 1] = 0.16 * np.sin(y * 2 * np.pi / 5.0) * (1 - rim)
        glow = None
        if lit:
            heat = (3.2 * np.exp(-(r / 15) ** 2) + 1.1 * np.exp(-(r / 42) ** 2)) * (0.55 + 0.45 * rib) * (1 - rim) * (1 - 0.6 * dust)
            glow = heat[:, None] * np.array([1.0, 0.085, 0.045]) + 0.35 * np.exp(-(r / 9) ** 2)[:, None] * np.array([1.0, 0.5, 0.3])
        return Surface(col, np.full(len(x), 0.06), 0.12 + 0.45 * dust, bump, 0.0, glow)
    return look


def tail_lamps(seed=83):
    """Left lamp dark, right lamp lit; rust runs below the dark one's screw."""
    a, b = Noise(seed), Noise(seed + 1)
    left, right = (-78.0, 0.0), (78.0, 0.0)

    def wall(p, n):
        x, y = p[:, 0], p[:, 1]
        grime = np.clip(0.3 + 0.8 * a.fractal(x / 60, y / 90, 5) + smooth(60, -180, y) * 0.5, 0, 1)
        run = np.clip(2.4 * (b.fractal(x / 7, y / 150, 3) - 0.05), 0, 1) * smooth(-40, -70, y)
        col = blend((0.50, 0.505, 0.50), (0.19, 0.165, 0.135), np.clip(0.55 * grime + 0.5 * run, 0, 1))
        rx = x + 78 + 3 * a(y / 18, y * 0)
        rust = np.exp(-(rx / (4 + 0.03 * np.abs(y))) ** 2) * smooth(-56, -62, y) * smooth(-190, -70, y)
        col = blend(col, (0.20, 0.062, 0.020), np.clip(rust * (0.8 + 0.5 * b.fractal(x / 4, y / 9, 3)), 0, 1))
        spill = np.exp(-np.maximum(np.hypot(x - 78, y) - 55, 0) / 36)
        bump = np.zeros_like(p)
        rib = np.mod(y + 95, 130.0)
        bump[:, 1] = 1.1 * (np.exp(-((rib - 12) / 2.6) ** 2) - np.exp(-((rib - 22) / 2.6) ** 2)) + 0.01 * a(x / 2, y / 2)
        glow = (0.20 * spill)[:, None] * col * np.array([2.2, 0.16, 0.10])
        return Surface(col, np.full(len(x), 0.06), np.full(len(x), 0.3), bump, 0.0, glow)
    shapes = [Plane(wall)]
    rubber = plain((0.022, 0.022, 0.024), 0.04, 0.5, dirt=0.5, seed=seed + 3)
    for c, lit in ((left, False), (right, True)):
        shapes += [Rod(rubber, (c[0], c[1], 0), (c[0], c[1], 13), 61.0),
                   Dome(lens((0.30, 0.014, 0.012) if lit else (0.17, 0.010, 0.010), c, lit, seed + 5 + lit), (c[0], c[1], 13.0), (0, 0, 1), 112.0, 19.0)]
        for dy in (-57.2, 57.2):
            rusty = (0.15, 0.075, 0.04) if not lit and dy < 0 else (0.30, 0.30, 0.31)
            shapes.append(Dome(plain(rusty, 0.3, 0.35, 0.4, seed=seed + 8), (c[0], dy, 13.0), (0, 0, 1), 6.6, 1.9))
    steel = plain((0.40, 0.40, 0.41), 0.3, 0.35, 0.5, seed=seed + 9)
    for x in (-190, 190):
        shapes.append(Dome(steel, (x, 96, 0), (0, 0, 1), 11, 3))
    torches = [Torch((-230, 190, 330), (-50, -10, 0), 0.62, 11.0, spread=0.45)]
    return Scene(shapes, (-52, -42, 402), (-4, -12, 0), 46, torches, up=(0, 1, 0), seed=seed,
                 sky=(0.040, 0.050, 0.075), floor=(0.03, 0.03, 0.035), aperture=2.0)
