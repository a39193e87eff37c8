# SPDX-License-Identifier: Apache-2.0
"""Walks and mends up to the winter of 2025."""
from .marks import (JUN, MIA, TOM, again, cold, count, found, four, length, measured, mend, reading, spot,
                    torque, unseen, walk)

FRONT_SEAM = spot("top", 0.12, -0.25, 2.75)

EARLY = [
    walk(1, "bringing_out", MIA, "2024-09-14 09:40", "2024-09-14 11:05", "yard", [
        cold(9, (352, 350, 356, 349)),
        four("tread-depth", "tread-depth", "mm", (7.4, 7.4, 7.2, 7.3)), torque(131, 130, 132, 130),
        measured("house-battery", reading("battery-rest-voltage", "12.72 V")),
        measured("breakaway-battery", reading("breakaway-rest-voltage", "12.6 V"),
                 reading("breakaway-hold-time", "20 min")),
        unseen("bearing-repack", "needs_licensed_person", "booked with the trailer workshop for October"),
        unseen("brake-linings", "no_tool", "no inspection mirror in the yard"),
    ]),
    walk(2, "full_round", TOM, "2024-09-22 08:50", "2024-09-22 11:25", "yard", [
        cold(11, (381, 380, 383, 380)),
        four("tread-depth", "tread-depth", "mm", (7.4, 7.4, 7.2, 7.3)), torque(130, 131, 130, 130),
        unseen("roof-membrane", "wet_or_icy", "frost on the roof until after ten; seen only from the third rung"),
        unseen("roof-cable-glands", "risky_to_reach", "behind the panel; roof is not rated for a person"),
        measured("moisture-map", reading("moisture", "11 %", "window 4"), reading("moisture", "12 %", "window 1")),
        measured("nose-weight", reading("nose-weight", "196 kg")),
        measured("axle-loads", reading("axle-load", "985 kg", "axle 1"), reading("axle-load", "1010 kg", "axle 2")),
        measured("brake-current", reading("brake-current", "12.1 A")),
        found("gas-hoses", "f1", "crack", 2, spot("right", 0.6, 1.15, 0.9), length("20 mm"),
              "fine cracks in the outer layer near the regulator, no bubbles; hose marked 2014; left shut for the fitter"),
    ]),
    mend(1, "2024-09-27 14:20", "a licensed gas fitter", ["f1"], "replace",
         "both hoses replaced and tested by the fitter, certificate kept in the door pocket",
         ["gas hose 450 mm, 2"], 186.00, 70),
    walk(3, "before_road", MIA, "2024-10-05 08:10", "2024-10-05 08:24", "yard", [
        cold(6, (380, 380, 382, 381)), measured("nose-weight", reading("nose-weight", "203 kg")),
    ], "glance", ("first_of_day", "first_of_trip")),
    walk(4, "after_road", JUN, "2024-10-12 14:10", "2024-10-12 14:55", "yard", [
        four("hub-temperature", "hub-temperature", "°C", (38, 39, 41, 40)),
        measured("belly-pan-sheet", reading("pan-sag", "4 mm")),
        unseen("roof-membrane", "risky_to_reach", "gusts over the yard, ladder left in the shed"),
    ]),
    walk(5, "after_road", TOM, "2025-01-18 17:40", "2025-01-18 18:35", "yard", [
        four("hub-temperature", "hub-temperature", "°C", (44, 46, 45, 47)),
        measured("moisture-map", reading("moisture", "13 %", "window 4"), reading("moisture", "12 %", "window 1")),
        found("studs-and-seats", "f2", "corroded", 2, {"named": "wheel 2R"}, count("1"),
              "rust streak below one nut after the weeks by the sea; its paint mark is still in line",
              ["photos/wheel-nut-2025-01.jpg"]),
    ]),
    mend(2, "2025-01-19 10:15", TOM, ["f2"], "retorque",
         "seat cleaned and dried, nut put back, all six of the wheel tightened in star order to the maker's figure, marked",
         ["wheel nut M12, 1"], 6.50, 35),
    walk(6, "full_round", MIA, "2025-03-22 09:10", "2025-03-22 12:05", "yard", [
        cold(14, (379, 376, 381, 378)),
        four("tread-depth", "tread-depth", "mm", (7.2, 7.2, 6.9, 7.1)), torque(130, 130, 131, 130),
        found("front-cap-seam", "f3", "crack", 2, FRONT_SEAM, length("160 mm"),
              "hairline along the bead, kerb side of the middle; takes no fingernail yet", ["photos/front-seam-2025-03.jpg"]),
        found("lamp-lenses", "f4", "leaking", 2, spot("right", 6.3, 1.15, 1.0), count("1"),
              "water standing in the road-side marker lens"),
        found("jockey-wheel", "f5", "loose", 3, spot("front", -0.6, 0.15, 0.5), length("4 mm"),
              "clamp pad worn, the tube creeps under the nose weight"),
        measured("moisture-map", reading("moisture", "14 %", "window 4"), reading("moisture", "12 %", "window 1")),
        measured("nose-weight", reading("nose-weight", "201 kg")),
        measured("house-battery", reading("battery-rest-voltage", "12.68 V")),
        unseen("roof-cable-glands", "risky_to_reach", "behind the panel; roof is not rated for a person"),
    ]),
    mend(3, "2025-03-23 15:30", JUN, ["f4", "f5"], "replace", "marker lens with gasket, clamp pad and bolt",
         ["marker lens", "clamp pad", "bolt M10 x 60"], 41.80, 50),
    walk(7, "laying_up", JUN, "2025-06-07 13:20", "2025-06-07 15:10", "yard", [
        cold(4, (372, 370, 374, 371)),
        again("front-cap-seam", "f3", 2, length("190 mm"), "a little longer; dry underneath; shed from today"),
        measured("house-battery", reading("battery-rest-voltage", "12.74 V")),
        measured("moisture-map", reading("moisture", "14 %", "window 4"), reading("moisture", "12 %", "window 1")),
    ]),
]
