# SPDX-License-Identifier: Apache-2.0
"""Shapes a ray can meet. Lengths in mm; each answers distance and normal."""
import numpy as np

FAR = 1e9
EPS = 1e-3


def unit(v):
    v = np.asarray(v, float)
    return v / np.sqrt((v * v).sum(-1, keepdims=True))


def dot(a, b):
    return a[..., 0] * b[..., 0] + a[..., 1] * b[..., 1] + a[..., 2] * b[..., 2]


def near_ball(shape, o, d):
    """Indices of rays that pass the ball around a small shape; all for a large one."""
    ball = getattr(shape, "ball", None)
    if ball is None:
        return None
    oc = np.array(ball[0], float) - o
    along = dot(oc, d)
    return np.nonzero((dot(oc, oc) - along * along < ball[1] ** 2) & (along > -ball[1]))[0]


def meet(shape, o, d, share=1.0):
    """Distance along each ray to the shape, FAR where it misses."""
    idx = near_ball(shape, o, d)
    if idx is None:
        return shape.hit(o, d, share)
    out = np.full(len(o), FAR)
    if len(idx):
        out[idx] = shape.hit(o[idx], d[idx])
    return out


class Plane:
    """The ground of a close-up: z = height everywhere."""

    def __init__(self, look, height=0.0):
        self.look, self.height = look, height

    def hit(self, o, d, share=1.0):
        with np.errstate(divide="ignore", invalid="ignore"):
            t = (self.height - o[:, 2]) / d[:, 2]
        return np.where((t > EPS) & np.isfinite(t), t, FAR)

    def normal(self, p):
        n = np.zeros_like(p)
        n[:, 2] = 1.0
        return n


class Convex:
    """A solid between planes n.x <= k: rules, plates, nuts."""

    def __init__(self, look, planes):
        self.look = look
        self.n = unit(np.array([q[0] for q in planes], float))
        self.k = np.array([q[1] for q in planes], float)

    def hit(self, o, d, share=1.0):
        near = np.full(len(o), -FAR)
        far = np.full(len(o), FAR)
        for n, k in zip(self.n, self.k):
            slope = d @ n
            dist = k - o @ n
            with np.errstate(divide="ignore", invalid="ignore"):
                t = dist / slope
            flat = np.abs(slope) < 1e-12
            near = np.where(~flat & (slope < 0), np.maximum(near, t), near)
            far = np.where(~flat & (slope > 0), np.minimum(far, t), far)
            far = np.where(flat & (dist < 0), -FAR, far)
        t = np.where(near > EPS, near, FAR)
        return np.where((near <= far) & (far > EPS), t, FAR)

    def normal(self, p):
        gap = np.abs(p @ self.n.T - self.k)
        return self.n[np.argmin(gap, axis=1)]


def box(look, low, high):
    planes = []
    for axis in range(3):
        e = np.zeros(3)
        e[axis] = 1.0
        planes += [(e, high[axis]), (-e, -low[axis])]
    solid = Convex(look, planes)
    low, high = np.array(low, float), np.array(high, float)
    if np.linalg.norm(high - low) < 200:
        solid.ball = ((low + high) / 2, np.linalg.norm(high - low) / 2 + 0.1)
    return solid


def prism(look, centre, across, low, high, turn=0.0, sides=6, bevel=0.0):
    """An upright nut: `across` flats, top edge broken by `bevel` mm."""
    planes = [((0, 0, 1), high), ((0, 0, -1), -low)]
    for i in range(sides):
        a = turn + 2 * np.pi * i / sides
        n = np.array([np.cos(a), np.sin(a), 0.0])
        planes.append((n, across / 2 + n[0] * centre[0] + n[1] * centre[1]))
    for i in range(2 * sides if bevel else 0):
        a = turn + np.pi * i / sides
        reach = across / 2 * (1.0 if i % 2 == 0 else 1.12)
        n = unit([np.cos(a) * 0.5, np.sin(a) * 0.5, 1.0])
        at = np.array([centre[0] + np.cos(a) * reach, centre[1] + np.sin(a) * reach, high - bevel])
        planes.append((n, float(n @ at)))
    solid = Convex(look, planes)
    solid.ball = ((centre[0], centre[1], (low + high) / 2), np.hypot(across * 0.6, (high - low) / 2) + 0.5)
    return solid


class Dome:
    """The part of a ball that lies beyond a plane: a rivet's head."""

    def __init__(self, look, base, axis, width, rise):
        self.look = look
        self.axis = unit(axis)
        self.base = np.asarray(base, float)
        self.radius = (width * width / 4 + rise * rise) / (2 * rise)
        self.centre = self.base + self.axis * (rise - self.radius)
        self.rim = width / 2
        self.ball = (self.base, float(np.hypot(width / 2, rise)) + 0.1)

    def hit(self, o, d):
        oc = o - self.centre
        b = dot(oc, d)
        c = dot(oc, oc) - self.radius ** 2
        disc = b * b - c
        root = np.sqrt(np.maximum(disc, 0.0))
        best = np.full(len(o), FAR)
        for t in (-b - root, -b + root):
            h = (o + d * t[:, None] - self.base) @ self.axis
            best = np.where((disc > 0) & (t > EPS) & (h >= 0) & (t < best), t, best)
        slope = d @ self.axis
        with np.errstate(divide="ignore", invalid="ignore"):
            t = ((self.base - o) @ self.axis) / slope
        q = o + d * np.where(np.isfinite(t), t, 0.0)[:, None] - self.base
        flat = np.isfinite(t) & (t > EPS) & (t < best) & (dot(q, q) < self.rim ** 2)
        return np.where(flat, t, best)

    def normal(self, p):
        n = unit(p - self.centre)
        low = (p - self.base) @ self.axis < 1e-6
        n[low] = -self.axis
        return n


class Rod:
    """A round bar from a to b with flat ends."""

    def __init__(self, look, a, b, radius):
        self.look = look
        self.a = np.asarray(a, float)
        self.length = float(np.linalg.norm(np.asarray(b, float) - self.a))
        self.axis = (np.asarray(b, float) - self.a) / self.length
        self.r = radius
        self.ball = (self.a + self.axis * self.length / 2, float(np.hypot(radius, self.length / 2)) + 0.1)

    def hit(self, o, d):
        oc = o - self.a
        da, oa = d @ self.axis, oc @ self.axis
        dp, op = d - da[:, None] * self.axis, oc - oa[:, None] * self.axis
        a, b, c = dot(dp, dp), dot(dp, op), dot(op, op) - self.r ** 2
        disc = b * b - a * c
        with np.errstate(divide="ignore", invalid="ignore"):
            t = (-b - np.sqrt(np.maximum(disc, 0.0))) / a
            h = oa + t * da
            best = np.where((disc > 0) & (t > EPS) & (h >= 0) & (h <= self.length), t, FAR)
            for end in (0.0, self.length):
                s = (end - oa) / da
                q = op + dp * s[:, None]
                best = np.where((s > EPS) & (s < best) & (dot(q, q) < self.r ** 2), s, best)
        return best

    def normal(self, p):
        q = p - self.a
        h = q @ self.axis
        n = unit(q - h[:, None] * self.axis + 1e-12)
        n[h < 1e-5] = -self.axis
        n[h > self.length - 1e-5] = self.axis
        return n
