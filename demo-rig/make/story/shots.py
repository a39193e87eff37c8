# SPDX-License-Identifier: Apache-2.0
"""The photos: file, what is drawn, words, when and where. Times lie inside their walks."""
from scenes import opening, pan, sealant, tread, lamps, wheel, window

FLAT = (0.0, 0.0)


def rivets_september():
    return pan.rivets([0, 0, 6, 0, 0], [FLAT, FLAT, (0.07, -0.03), FLAT, FLAT], [0, 0.05, 0.5, 0.05, 0])


def rivets_november():
    return pan.rivets([0, 0.9, 14, 1.5, 0], [FLAT, (0.05, -0.04), (0.16, -0.06), (-0.08, -0.05), FLAT],
                      [0, 0.8, 0.95, 0.8, 0.1])


def shot(name, scene, words, when, place="yard", turned=False):
    return dict(name=name, scene=scene, words=words, when=when, place=place, turned=turned)


SHOTS = [
    shot("wheel-nut-2025-01", wheel.wheel, "wheel 2R, rust below one nut", "2025-01-18 17:58"),
    shot("front-seam-2025-03", lambda: sealant.cap_seam([(-3, 0.5, 0, -85, 75)]),
         "front cap seam, hairline", "2025-03-22 09:46"),
    shot("front-seam-2025-09", lambda: sealant.cap_seam([(-3, 3.2, 1.6, -175, 150)], age=0.9),
         "front cap seam, open 3 mm", "2025-09-13 09:38"),
    shot("roof-vent-2025-09", lambda: sealant.vent_corner(0.55, 0),
         "vent 1, crack in the lap sealant", "2025-09-13 10:21", turned=True),
    shot("pan-opening-2025-09", opening.opening, "belly pan, gap at the waste pipe", "2025-09-13 11:32"),
    shot("tail-lamp-2025-12", lamps.tail_lamps, "kerb-side tail lamp out", "2025-12-06 08:21"),
    shot("roof-vent-2026-03", lambda: sealant.vent_corner(2.5, 1.2, age=0.95),
         "vent 1, crack open, edge lifted", "2026-03-21 10:02"),
    shot("tread-2026-03", tread.tread, "wheel 2L, tread gauge on the inner ribs", "2026-03-21 10:55", turned=True),
    shot("window-2026-03", window.window, "window 2, bead drawn back", "2026-03-21 09:51"),
    shot("front-seam-2026-09", lambda: sealant.cap_seam([(9, 0.5, 0, -60, 70)], age=0.25, extra=6),
         "front cap seam, hairline again", "2026-09-12 09:41"),
    shot("rivet-2026-09", rivets_september, "belly pan, third rivet aft of the rear axle", "2026-09-12 11:26"),
    # Not part of the scenario: a test adds it by hand.
    shot("rivet-2026-11", rivets_november, "belly pan, third rivet aft of the rear axle", "2026-11-20 08:14"),
]
