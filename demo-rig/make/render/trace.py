# SPDX-License-Identifier: Apache-2.0
"""Renders one close-up by torch light: camera rays, shadow, reflection."""
from dataclasses import dataclass, field

import numpy as np

from .shapes import FAR, dot, meet, unit

WIDE = 50.0                     # a lamp this large (mm) throws no shadow of its own


@dataclass
class Surface:
    """What a look function answers for n points."""
    colour: np.ndarray          # n x 3, linear
    gloss: np.ndarray           # strength of the mirror part, 0..1
    rough: np.ndarray           # 0.05 polished .. 0.8 chalky
    bump: np.ndarray = None     # n x 3 added to the normal
    metal: float = 0.0          # 1: the mirror part takes the colour
    glow: np.ndarray = None     # n x 3 light of its own


@dataclass
class Torch:
    at: tuple
    aim: tuple
    power: float = 1.0
    radius: float = 12.0
    colour: tuple = (1.0, 0.97, 0.90)
    spread: float = 0.42        # radians to half brightness


@dataclass
class Scene:
    shapes: list
    eye: tuple
    aim: tuple
    fov: float                  # degrees, horizontal
    torches: list
    up: tuple = (0, 0, 1)
    sky: tuple = (0.105, 0.112, 0.125)
    floor: tuple = (0.05, 0.045, 0.04)
    exposure: float = 1.0
    aperture: float = 5.0       # blur in pixels far out of focus
    seed: int = 1
    backdrop: tuple = (0.01, 0.012, 0.015)
    hidden: list = field(default_factory=list)   # shapes that throw no shadow


def nearest(shapes, o, d):
    best = np.full(len(o), FAR)
    which = np.full(len(o), -1)
    for i, s in enumerate(shapes):
        t = meet(s, o, d)
        closer = t < best
        best = np.where(closer, t, best)
        which[closer] = i
    return best, which


def blocked(shapes, o, d, reach, share):
    out = np.zeros(len(o), bool)
    for s in shapes:
        todo = np.nonzero(~out)[0]
        if len(todo):
            out[todo] = meet(s, o[todo], d[todo], share) < reach[todo]
    return out


def surround(scene, d):
    """What a mirror sees: dim sky above, dark ground at the horizon."""
    up = np.clip(d[:, 2:3] * 0.5 + 0.5, 0, 1)
    return np.array(scene.floor) * (1 - up) + np.array(scene.sky) * 2.2 * up ** 1.5


def lit_by(torch, casters, p, n, s, view, u, v, open_sky):
    """Light of one torch, with one shadow ray towards a point of its lens; a wide one only dims with the sky."""
    at, aim = np.array(torch.at, float), unit(np.array(torch.aim, float) - np.array(torch.at))
    side = unit(np.cross(aim, [0.3, 0.5, 0.81]))
    other = np.cross(aim, side)
    ang, rad = 2 * np.pi * u, torch.radius * np.sqrt(v)
    src = at + (np.cos(ang) * rad)[:, None] * side + (np.sin(ang) * rad)[:, None] * other
    to = src - p
    far = np.sqrt(dot(to, to))
    l = to / far[:, None]
    face = dot(n, l)
    cone = -(l @ aim)
    off = np.arccos(np.clip(cone, -1, 1)) / torch.spread
    beam = (0.80 * np.exp(-0.69 * off ** 4) + 0.20 * np.exp(-(off * 3.2) ** 2) + 0.05)
    full = np.linalg.norm(np.array(torch.aim, float) - at)
    beam = beam * torch.power * (full / far) ** 2
    on = (face > 0).astype(float)
    idx = np.nonzero(on)[0]
    if torch.radius >= WIDE:
        on *= 0.5 + 0.5 * open_sky
    elif len(idx):
        on[idx] = ~blocked(casters, p[idx] + n[idx] * 0.02, l[idx], far[idx], 0.5)
    beam = beam * on
    half = unit(l + view)
    alpha = np.maximum(s.rough, 0.04) ** 2
    nh = np.clip(dot(n, half), 0, 1)
    ggx = alpha ** 2 / (np.pi * (nh * nh * (alpha ** 2 - 1) + 1) ** 2)
    fres = s.gloss + (1 - s.gloss) * (1 - np.clip(dot(half, view), 0, 1)) ** 5 * (1 - s.rough)
    nv = np.clip(dot(n, view), 0.05, 1)
    spec = np.minimum(ggx * fres / (4 * np.maximum(nv, np.clip(face, 0.05, 1))), 12.0)
    tint = s.colour * s.metal + (1 - s.metal)
    diffuse = s.colour * (1 - 0.85 * s.metal) / np.pi * 2.2
    face = np.clip(face, 0, 1)
    return (diffuse + tint * spec[:, None]) * (beam * face)[:, None] * np.array(torch.colour)


def shade(scene, p, d, which, rnd):
    """Colour at n hit points; also the share of open sky at each."""
    colour = np.tile(np.array(scene.backdrop, float), (len(p), 1))
    casters = [s for i, s in enumerate(scene.shapes) if i not in scene.hidden]
    for i, shape in enumerate(scene.shapes):
        m = np.nonzero(which == i)[0]
        if not len(m):
            continue
        q, view = p[m], -d[m]
        g = shape.normal(q)
        g = np.where(dot(g, view)[:, None] < 0, -g, g)
        s = shape.look(q, g)
        n = g if s.bump is None else unit(g + s.bump)
        h = hemisphere(g, rnd[m, 0], rnd[m, 1])
        open_sky = ~blocked(casters, q + g * 0.03, h, np.full(len(m), 60.0), 0.25)
        r = unit(2 * dot(n, view)[:, None] * n - view)
        soft = unit(r + s.rough[:, None] * (h - r) * 0.8)
        tint = s.colour * s.metal + (1 - s.metal)
        fres = s.gloss + (1 - s.gloss) * (1 - np.clip(dot(n, view), 0, 1)) ** 5 * (1 - s.rough)
        c = (s.colour * (1 - 0.85 * s.metal) * surround(scene, unit(n + 0.25 * h)) * 1.2
             + tint * surround(scene, soft) * fres[:, None]) * (0.5 + 0.5 * open_sky)[:, None]
        for k, torch in enumerate(scene.torches):
            c = c + lit_by(torch, casters, q, n, s, view, rnd[m, 2 + 2 * k], rnd[m, 3 + 2 * k], open_sky)
        if s.glow is not None:
            c = c + s.glow
        colour[m] = c
    return colour


def hemisphere(n, u, v):
    """Cosine-weighted direction about n."""
    a, z = 2 * np.pi * u, 2 * v - 1
    r = np.sqrt(np.maximum(0, 1 - z * z))
    ball = np.stack([r * np.cos(a), r * np.sin(a), z], 1)
    return unit(n + ball * 0.999)


def camera(scene, px, py, wide, high):
    eye = np.array(scene.eye, float)
    fwd = unit(np.array(scene.aim, float) - eye)
    right = unit(np.cross(fwd, np.array(scene.up, float)))
    up = np.cross(right, fwd)
    k = np.tan(np.radians(scene.fov) / 2)
    sx, sy = (px / wide * 2 - 1) * k, (1 - py / high * 2) * k * high / wide
    d = unit(fwd + sx[:, None] * right + sy[:, None] * up)
    return np.tile(eye, (len(px), 1)), d


def sample(scene, xx, yy, k, turn, rng, wide, high):
    """Colour and depth of one of the four samples of these pixels; each takes its own quarter."""
    jit = rng.uniform(size=(len(xx), 2))
    o, d = camera(scene, xx + (k % 2 + jit[:, 0]) / 2, yy + (k // 2 + jit[:, 1]) / 2, wide, high)
    t, which = nearest(scene.shapes, o, d)
    t = np.minimum(t, 5000.0)
    rnd = turn.copy()
    rnd[:, 0::2] = (rnd[:, 0::2] + k / 4) % 1.0
    rnd[:, 1::2] = (rnd[:, 1::2] + (k * 3 % 4) / 4) % 1.0
    return np.minimum(shade(scene, o + d * t[:, None], d, which, rnd), 6.0), t


def render(scene, wide, high, band=16):
    """Linear picture and depth. Two samples a pixel, two more where those differ; all seeded."""
    picture = np.zeros((high, wide, 3))
    depth = np.zeros((high, wide))
    for top in range(0, high, band):
        rows = min(band, high - top)
        rng = np.random.RandomState(scene.seed * 7919 + top)
        yy, xx = (g.ravel().astype(float) for g in np.mgrid[top:top + rows, 0:wide])
        turn = rng.uniform(size=(len(xx), 8))
        a, ta = sample(scene, xx, yy, 0, turn, rng, wide, high)
        b, tb = sample(scene, xx, yy, 3, turn, rng, wide, high)
        colour, deep = (a + b) / 2, (ta + tb) / 2
        m = np.nonzero(np.abs(a - b).sum(1) > 0.14 * (a + b).sum(1) + 0.02)[0]
        for k in (1, 2) if len(m) else ():
            c, tc = sample(scene, xx[m], yy[m], k, turn[m], rng, wide, high)
            colour[m] += (c - (a + b)[m] / 2) / 4
            deep[m] += (tc - (ta + tb)[m] / 2) / 4
        picture[top:top + rows] = colour.reshape(rows, wide, 3)
        depth[top:top + rows] = deep.reshape(rows, wide)
    return picture, depth
