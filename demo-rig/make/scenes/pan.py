# SPDX-License-Identifier: Apache-2.0
"""The belly-pan sheet: a row of rivets, one standing proud; a pipe through the sheet."""
import numpy as np
from PIL import Image, ImageDraw, ImageFont

from render.noise import Noise
from render.shapes import Dome, Plane, Rod, box, unit
from render.trace import Scene, Surface, Torch
from render.film import FONT

from .mix import smooth

PITCH = 44.0


def metal_sheet(seed, marks):
    """Weathered aluminium with road film; `marks`: (x, y, hole, smoke) a rivet."""
    a, b, c = Noise(seed), Noise(seed + 1), Noise(seed + 2)

    def look(p, n):
        x, y = p[:, 0], p[:, 1]
        film = np.clip(0.5 + 1.1 * a.fractal(x / 70, y / 45, 5), 0, 1)
        spots = np.clip(2.6 * (c.fractal(x / 5, y / 5, 4) - 0.30), 0, 1)
        run = np.clip(2.2 * (b.fractal(x / 9, y / 160, 3) - 0.12), 0, 1)
        dirt = np.clip(0.10 + 0.62 * film * film + 0.30 * spots + 0.40 * run, 0, 1)
        smoke = np.zeros(len(p))
        hole = np.zeros(len(p))
        for rx, ry, h, s in marks:
            dx, dy = x - rx, y - ry
            r = np.sqrt(dx * dx + dy * dy)
            ring = np.exp(-np.maximum(r - 7.0, 0) / 1.6) * (r > 5.5)
            dirt = np.clip(dirt + 0.35 * ring, 0, 1)
            wob = 1.15 + 0.6 * a.fractal(x / 7, y / 5, 3)
            u, v = 0.50 * dx - 0.87 * dy, 0.87 * dx + 0.50 * dy
            tail = np.exp(-np.maximum(u - 7, 0) / 36) * np.exp(-(v / (8.5 + 0.20 * np.abs(u))) ** 2)
            smoke = np.maximum(smoke, s * wob * np.maximum(tail * smooth(-9, 3, u), 0.8 * np.exp(-(np.maximum(r - 7, 0) / 3.0) ** 2)))
            egg = np.sqrt(((dx - 0.5) / 1.25) ** 2 + dy * dy)
            hole = np.maximum(hole, np.clip((h - egg) * 2.0 + 0.5, 0, 1))
        clean = np.array([0.42, 0.43, 0.445])
        mud = np.array([0.15, 0.125, 0.10])
        col = clean * (1 - dirt[:, None]) + mud * dirt[:, None]
        col = col * (1 - 0.85 * np.clip(smoke, 0, 1)[:, None]) * (1 - 0.97 * hole[:, None])
        gloss = (0.50 * (1 - 0.80 * dirt)) * (1 - 0.8 * np.clip(smoke, 0, 1)) * (1 - hole)
        rough = 0.34 + 0.35 * dirt + 0.3 * np.clip(smoke, 0, 1)
        bump = np.zeros_like(p)
        bump[:, 1] = 0.035 * c(x / 40, y * 2.6) + 0.05 * a.fractal(x / 90, y / 70, 2)
        bump[:, 0] = 0.012 * c(x * 1.7, y * 1.7) + 0.05 * b.fractal(x / 90, y / 80, 2)
        return Surface(col, gloss, rough, bump, 0.55)
    return look


def rivet_skin(seed, worn):
    a = Noise(seed + 9)

    def look(p, n):
        x, y = p[:, 0], p[:, 1]
        d = np.clip(0.30 + worn * 0.25 + 0.7 * a.fractal(x / 5, y / 5 + p[:, 2] / 4, 4), 0, 1)
        d = np.clip(d + 0.5 * (n[:, 2] < 0.3), 0, 1)
        col = np.array([0.66, 0.66, 0.67]) * (1 - d[:, None]) + np.array([0.22, 0.185, 0.155]) * d[:, None]
        bump = 0.07 * np.stack([a(x * 1.3, y * 1.3), a(y * 1.3 + 9, x * 1.3), 0 * x], 1)
        return Surface(col, 0.5 * (1 - 0.7 * d), 0.26 + 0.35 * d, bump, 0.6)
    return look


def shank_skin(seed):
    a = Noise(seed + 23)

    def look(p, n):
        z = p[:, 2]
        band = 0.5 + 0.5 * a(p[:, 0] / 3, z * 1.4)
        col = np.array([0.50, 0.49, 0.47]) * (0.45 + 0.55 * band[:, None])
        return Surface(col, np.full(len(z), 0.45), np.full(len(z), 0.3), None, 0.7)
    return look


def rule_face(mm):
    """Steel rule: a tick each millimetre, numbers each ten, drawn at 12 px a mm."""
    k = 12
    im = Image.new("L", (15 * k, mm * k), 0)
    draw = ImageDraw.Draw(im)
    font = ImageFont.truetype(FONT % "Regular", 44, layout_engine=ImageFont.Layout.BASIC)
    for i in range(mm):
        reach = 6.2 if i % 10 == 0 else (4.6 if i % 5 == 0 else 3.0)
        y = (mm - i) * k
        draw.rectangle([0, y - 2, int(reach * k), y + 1], fill=255)
        if i % 10 == 0 and i:
            draw.text((int(7.0 * k), y), str(i), font=font, fill=255, anchor="lm")
    return np.asarray(im, float)[::-1] / 255, k


def rule_skin(x0, seed, mm=40):
    ink, k = rule_face(mm)
    a = Noise(seed + 31)

    def look(p, n):
        u = np.clip(((p[:, 0] - x0) * k).astype(int), 0, ink.shape[1] - 1)
        v = np.clip((p[:, 2] * k).astype(int), 0, ink.shape[0] - 1)
        mark = ink[v, u] * (n[:, 1] < -0.5)
        wear = 0.5 + 0.5 * a.fractal(p[:, 0] / 4, p[:, 2] / 9, 3)
        col = (0.60 + 0.08 * wear)[:, None] * np.array([1.0, 0.99, 0.96]) * (1 - 0.93 * mark[:, None])
        bump = np.zeros_like(p)
        bump[:, 0] = 0.03 * a(p[:, 0] * 0.3, p[:, 2] * 5)
        return Surface(col, 0.22 * (1 - mark), 0.42 + 0 * wear, bump, 0.25)
    return look


def rivets(gaps, tilts, smoke, seed=11):
    """One view, one scale: five rivets; only gap, tilt and residue differ."""
    xs = [(i - 2) * PITCH for i in range(5)]
    marks = [(x, 0.0, 2.9 + 0.05 * g if g > 0.3 else 0.0, s) for x, g, s in zip(xs, gaps, smoke)]
    skin = metal_sheet(seed, marks)
    shapes = [Plane(skin, -1.3), box(skin, (-900, -900, -1.3), (900, 27, 0))]
    for i, (x, g, tilt) in enumerate(zip(xs, gaps, tilts)):
        axis = unit([np.sin(tilt[0]), np.sin(tilt[1]), 1.0])
        foot = np.array([x, 0.0, 0.0])
        head = foot + axis * max(g, 0.02)
        look = rivet_skin(seed + 3 * i, min(g, 3) / 3)
        shapes.append(Rod(look, head, head + axis * 1.1, 8.0))
        shapes.append(Dome(look, head + axis * 1.1, axis, 14.6, 2.6))
        shapes.append(Rod(shank_skin(seed), head + axis * 2.6, head + axis * 4.05, 1.5))
        if g > 0.3:
            shapes.append(Rod(shank_skin(seed), foot - axis * 2, head + axis * 0.1, 2.4))
    shapes.append(box(rule_skin(11.0, seed), (11.0, 11.0, 0), (26.0, 11.9, 40)))
    torches = [Torch((-185, -105, 92), (4, 2, 3), 2.6, 9.0, spread=0.40),
               Torch((240, -260, 260), (0, 0, 0), 0.22, 60.0, (0.86, 0.92, 1.0), 1.2)]
    return Scene(shapes, (22, -205, 92), (5, 1, 9), 31, torches, exposure=1.0, seed=seed,
                 aperture=3.0)
