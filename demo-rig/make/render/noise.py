# SPDX-License-Identifier: Apache-2.0
"""Seeded value noise: smooth random fields for dirt, dents and grain."""
import numpy as np

SIZE = 256


class Noise:
    """One seeded field; RandomState is used because its stream is frozen by NumPy."""

    def __init__(self, seed):
        self.grid = np.random.RandomState(seed).uniform(-1.0, 1.0, (SIZE, SIZE))

    def __call__(self, x, y):
        """Smooth noise in -1..1, one lattice cell a unit."""
        xf, yf = np.floor(x), np.floor(y)
        u, v = x - xf, y - yf
        i, j = xf.astype(np.int64) % SIZE, yf.astype(np.int64) % SIZE
        i1, j1 = (i + 1) % SIZE, (j + 1) % SIZE
        u = u * u * (3.0 - 2.0 * u)
        v = v * v * (3.0 - 2.0 * v)
        flat = self.grid.ravel()
        a = flat[j * SIZE + i]
        b = flat[j * SIZE + i1]
        c = flat[j1 * SIZE + i]
        d = flat[j1 * SIZE + i1]
        low = a + (b - a) * u
        return low + (c + (d - c) * u - low) * v

    def fractal(self, x, y, octaves=4, gain=0.5):
        """Sum of octaves, still about -1..1."""
        total, amp, norm = 0.0, 1.0, 0.0
        for k in range(octaves):
            total = total + amp * self(x + 17.3 * k, y + 41.9 * k)
            norm += amp
            amp *= gain
            x, y = x * 2.03, y * 2.03
        return total / norm
