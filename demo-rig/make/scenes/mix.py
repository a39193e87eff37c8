# SPDX-License-Identifier: Apache-2.0
"""Small helpers the scenes share: blending colours, grids, smooth steps."""
import numpy as np

from render.noise import Noise
from render.trace import Surface


def smooth(low, high, x):
    t = np.clip((x - low) / (high - low), 0, 1)
    return t * t * (3 - 2 * t)


def blend(a, b, w):
    """Colour a where w is 0, b where w is 1; either may be one colour or n."""
    return np.asarray(a, float) * (1 - w[:, None]) + np.asarray(b, float) * w[:, None]


def field(x0, x1, y0, y1, step):
    return np.meshgrid(np.arange(x0, x1 + step / 2, step), np.arange(y0, y1 + step / 2, step))


def plain(colour, gloss=0.05, rough=0.4, metal=0.0, dirt=0.5, seed=3, scale=14.0, mud=(0.16, 0.135, 0.11)):
    """A dusty even material."""
    a = Noise(seed)

    def look(p, n):
        d = np.clip(0.35 + a.fractal((p[:, 0] + p[:, 2] * 0.7) / scale, (p[:, 1] + p[:, 2]) / scale, 4), 0, 1) * dirt
        return Surface(blend(colour, mud, d), gloss * (1 - 0.7 * d), rough + 0.3 * d, None, metal)
    return look
