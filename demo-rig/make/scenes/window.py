# SPDX-License-Identifier: Apache-2.0
"""The upper corner of a window frame; the bead has drawn back."""
import numpy as np

from render.noise import Noise
from render.relief import Relief
from render.trace import Scene, Surface, Torch

from .mix import blend, field, smooth


def window(seed=149):
    """Upper corner of a window frame: the bead has shrunk away from the corner."""
    a, b = Noise(seed), Noise(seed + 1)
    x, y = field(-140, 140, -120, 120, 0.35)
    qx, qy = x - 20 + 45, y - 0 + 45
    d = np.hypot(np.maximum(qx, 0), np.maximum(qy, 0)) + np.minimum(np.maximum(qx, qy), 0) - 45
    frame = smooth(0.3, -0.8, d) * (5 + 1.6 * smooth(-4, -12, d) - 8.5 * smooth(-26, -30, d))
    n = np.arctan2(np.maximum(qy, 0) + 0.01, np.maximum(qx, 0) + 0.01)
    wide = 6.5 + 1.6 * a.fractal(x / 18, y / 18, 4)
    bead = 3.0 * np.clip(1 - ((d - 1.5) / wide) ** 2, 0, 1) ** 0.7 * (d > -1.2)
    s = x - y
    gap = np.exp(-((s + 4 + 12 * a(x * 0, s / 30)) / 30) ** 2)
    pull = smooth(1.6 * gap + 0.25, 0.7 * gap, np.abs(d - 0.9 - 0.9 * gap - 0.35 * a.fractal(s / 7, s * 0 + 3, 3))) * (gap > 0.12)
    rib = np.mod(y + 20, 58.0)
    wallz = 2.4 * (smooth(4, 12, rib) - smooth(18, 26, rib)) * smooth(3, 12, d)
    z = np.maximum(frame, 0) * (d < 0.5) + wallz + bead * (1 - pull) - 3.2 * pull + np.where(d < -26, -3.5, 0)
    relief = Relief(None, z, (-140, -120), 0.35)
    share = np.clip(bead, 0, 1)

    def look(p, nn):
        px, py = p[:, 0], p[:, 1]
        dd, sh, pu = relief.sample(d, px, py), relief.sample(share, px, py), relief.sample(pull, px, py)
        dirt = np.clip(0.25 + 0.8 * a.fractal(px / 40, py / 70, 5), 0, 1)
        run = np.clip(2.0 * (b.fractal(px / 6, py / 120, 3) - 0.1), 0, 1)
        wall = blend((0.50, 0.50, 0.485), (0.22, 0.20, 0.165), np.clip(0.5 * dirt + 0.4 * run, 0, 1))
        black = blend((0.024, 0.024, 0.026), (0.12, 0.105, 0.085), 0.55 * dirt)
        glass = np.tile(np.array([0.016, 0.020, 0.024]), (len(px), 1))
        inside = smooth(0.2, -0.4, dd)
        pane = smooth(-27, -29, dd)
        col = blend(blend(wall, black, inside), glass, pane)
        seal = blend((0.44, 0.425, 0.385), (0.17, 0.15, 0.12), np.clip(dirt * 0.9 + 0.2, 0, 1))
        col = blend(col, seal, smooth(0.1, 0.5, sh) * (1 - smooth(0.6, -0.6, dd)))
        col = blend(col, (0.014, 0.013, 0.012), np.clip(pu * 1.15, 0, 1))
        bump = 0.05 * (1 - pane)[:, None] * np.stack([b(px, py), b(py, px + 3), 0 * px], 1)
        return Surface(col, 0.05 + 0.03 * pane, 0.38 - 0.32 * pane + 0.2 * dirt * (1 - pane), bump, 0.0)
    relief.look = look
    torches = [Torch((-150, 190, 140), (10, 5, 0), 1.15, 9.0, spread=0.55),
               Torch((250, -200, 400), (0, 0, 0), 0.14, 80.0, (0.86, 0.92, 1.0), 1.2)]
    return Scene([relief], (46, 66, 208), (10, 0, 0), 45, torches, up=(0, 1, 0), seed=seed, aperture=3.0)
