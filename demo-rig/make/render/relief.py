# SPDX-License-Identifier: Apache-2.0
"""A height map a ray can meet: beads, cracks, tread. Marched, then halved."""
import numpy as np

from .shapes import EPS, FAR


class Relief:
    """Heights in mm on a grid of `step` mm; flat outside it."""

    def __init__(self, look, heights, origin, step, tries=36):
        self.look, self.z, self.step, self.tries = look, heights, step, tries
        self.x0, self.y0 = origin
        self.low, self.high = float(heights.min()) - 0.01, float(heights.max()) + 0.01
        gy, gx = np.gradient(heights, step)
        self.gx, self.gy = gx, gy
        self.ny, self.nx = heights.shape

    def sample(self, grid, x, y):
        u = np.clip((x - self.x0) / self.step, 0.0, self.nx - 1.001)
        v = np.clip((y - self.y0) / self.step, 0.0, self.ny - 1.001)
        i, j = u.astype(np.int64), v.astype(np.int64)
        u, v = u - i, v - j
        k = j * self.nx + i
        flat = grid.ravel()
        a, b = flat[k], flat[k + 1]
        c, d = flat[k + self.nx], flat[k + self.nx + 1]
        low = a + (b - a) * u
        return low + (c + (d - c) * u - low) * v

    def height(self, x, y):
        return self.sample(self.z, x, y)

    def hit(self, o, d, share=1.0):
        """`share` of the tries: shadow and sky rays do with fewer."""
        tries = max(6, int(self.tries * share))
        dz = np.where(np.abs(d[:, 2]) < 1e-9, 1e-9, d[:, 2])
        t1, t2 = (self.low - o[:, 2]) / dz, (self.high - o[:, 2]) / dz
        near = np.maximum(np.minimum(t1, t2), 0.0)
        far = np.minimum(np.maximum(t1, t2), near + 400.0)
        out = np.full(len(o), FAR)
        live = np.nonzero(far > near)[0]
        if len(live) == 0:
            return out
        o, d, near, far = o[live], d[live], near[live], far[live]
        t = near + EPS
        step = (far - near) / tries
        found = np.full(len(live), FAR)
        ids = np.arange(len(live))
        for _ in range(tries + 1):
            nxt = t[ids] + step[ids]
            p = o[ids] + d[ids] * nxt[:, None]
            under = p[:, 2] < self.height(p[:, 0], p[:, 1])
            got = ids[under]
            found[got] = nxt[under]
            t[ids] = nxt
            ids = ids[~under]
            if len(ids) == 0:
                break
        got = np.nonzero(found < FAR)[0]
        if len(got):
            hi = found[got]
            lo = hi - step[got]
            for _ in range(7):
                mid = (lo + hi) / 2
                p = o[got] + d[got] * mid[:, None]
                under = p[:, 2] < self.height(p[:, 0], p[:, 1])
                hi = np.where(under, mid, hi)
                lo = np.where(under, lo, mid)
            found[got] = hi
        out[live] = np.where(found > EPS, found, FAR)
        return out

    def normal(self, p):
        n = np.empty_like(p)
        n[:, 0] = -self.sample(self.gx, p[:, 0], p[:, 1])
        n[:, 1] = -self.sample(self.gy, p[:, 0], p[:, 1])
        n[:, 2] = 1.0
        return n / np.sqrt((n * n).sum(1, keepdims=True))
