# SPDX-License-Identifier: Apache-2.0
"""A waste pipe through the belly pan; foam has come away on one side."""
import numpy as np

from render.noise import Noise
from render.relief import Relief
from render.shapes import Dome, Rod
from render.trace import Scene, Torch

from .mix import blend, field, plain, smooth


def opening(seed=131):
    """A waste pipe through the belly pan; foam has come away on one side."""
    from .pan import metal_sheet
    a, b = Noise(seed), Noise(seed + 1)
    x, y = field(-130, 130, -120, 130, 0.4)
    r, t = np.hypot(x, y), np.arctan2(y, x)
    lump = a.fractal(x / 16, y / 16, 5)
    edge = 62 + 9 * a.fractal(np.cos(t) * 2 + 5, np.sin(t) * 2 + 5, 3)
    away = smooth(0.62, 0.42, np.abs(np.arctan2(np.sin(t + 0.9), np.cos(t + 0.9))) + 0.10 * lump)
    foam = smooth(edge, edge - 16, r) * (1 - away)
    z = foam * (13 + 7 * lump + 3 * b.fractal(x / 5, y / 5, 3) - 0.1 * (r - 34))
    hole = smooth(49.5, 48.6, r + 0.4 * lump) * (1 - smooth(0.1, 0.4, foam))
    z = z - 34 * hole
    relief = Relief(None, z, (-130, -120), 0.4, 56)
    metal = metal_sheet(seed + 3, [(-95, -70, 0, 0.0), (95, -70, 0, 0.0)])

    def look(p, n):
        s = metal(p, n)
        f = smooth(0.0, 0.05, relief.sample(foam, p[:, 0], p[:, 1]))
        h = relief.sample(hole, p[:, 0], p[:, 1])
        d = np.clip(0.35 + 0.8 * b.fractal(p[:, 0] / 9, p[:, 1] / 9 + p[:, 2] / 9, 4), 0, 1)
        s.colour = blend(s.colour, blend((0.40, 0.315, 0.185), (0.19, 0.13, 0.07), d), f) * (1 - 0.93 * smooth(0.2, 0.9, h))[:, None]
        s.gloss = s.gloss * (1 - f) * (1 - h)
        s.rough = np.maximum(s.rough, 0.75 * f)
        s.bump = s.bump * (1 - f[:, None]) + f[:, None] * 0.22 * np.stack([b(p[:, 0], p[:, 1]), b(p[:, 1], p[:, 0] + 3), 0 * f], 1)
        return s
    relief.look = look
    pipe = plain((0.20, 0.20, 0.195), 0.05, 0.38, 0.0, 0.75, seed + 7, 22.0)
    shapes = [relief, Rod(pipe, (-8, 0, -80), (8, 6, 240), 34.0)]
    for c in ((-95, -70), (95, -70), (-95, 70), (95, 72)):
        skin = plain((0.40, 0.40, 0.41), 0.4, 0.3, 0.6, 0.6, seed + 9, 5.0)
        shapes += [Rod(skin, (c[0], c[1], 0), (c[0], c[1], 1.1), 8.0), Dome(skin, (c[0], c[1], 1.1), (0, 0, 1), 13.0, 2.6)]
    torches = [Torch((150, -210, 170), (14, -26, 0), 2.3, 10.0, spread=0.45),
               Torch((-260, -200, 260), (0, 0, 0), 0.2, 60.0, (0.86, 0.92, 1.0), 1.2)]
    return Scene(shapes, (46, -225, 190), (8, -16, 6), 42, torches, seed=seed, aperture=4.0)
