# SPDX-License-Identifier: Apache-2.0
"""The invented rig: a twin-axle travel trailer of a stream-survey crew."""


def opening(name, kind, face, x, y, z, w, h):
    spot = dict(zip("xyzwh", ("%g m" % v for v in (x, y, z, w, h))))
    return dict(name=name, kind=kind, face=face, **spot)


RIG = {
    "name": "Matagouri", "kind": "travel_trailer", "practice": "australia_new_zealand",
    "measures": {"length": "6.4 m", "width": "2.3 m", "height": "2.2 m", "floor_height": "0.55 m",
                 "hitch_length": "1.25 m", "axles": ["3.3 m", "4.15 m"]},
    "hitch": "ball", "roof_walk": "no",
    "ratings": {"gvwr": "2500 kg", "gawr": ["1300 kg", "1300 kg"], "nose_max": "250 kg"},
    "tires": {"size": "195R14C", "load_range": "D", "load_index": 110, "max_load": "1060 kg",
              "max_pressure": "450 kPa", "placard": "380 kPa"},
    "wheels": {"studs": 6, "torque": "130 N·m"}, "roof": "membrane", "bearings": "adjustable",
    "openings": [
        opening("vent 1", "vent", "top", 1.1, 0, 2.75, 0.4, 0.4),
        opening("vent 2", "vent", "top", 5.6, 0.35, 2.75, 0.35, 0.35),
        opening("rooflight 1", "rooflight", "top", 3.4, 0, 2.75, 0.7, 0.5),
        opening("door", "door", "left", 4.95, -1.15, 1.6, 0.65, 1.9),
        opening("window 1", "window", "left", 2.1, -1.15, 1.85, 1.1, 0.55),
        opening("window 2", "window", "right", 1.9, 1.15, 1.85, 1.1, 0.55),
        opening("window 3", "window", "right", 4.6, 1.15, 1.85, 0.9, 0.5),
        opening("window 4", "window", "front", 0, 0, 1.9, 1.3, 0.55),
        opening("locker 1", "hatch", "left", 0.7, -1.15, 0.9, 0.8, 0.4),
        opening("locker 2", "hatch", "right", 5.6, 1.15, 0.9, 0.7, 0.4),
        opening("gas locker", "hatch", "right", 0.6, 1.15, 0.9, 0.6, 0.5),
    ],
    "fittings": sorted([
        "adjustable_bearings", "awning", "baggage_doors", "ball_coupling", "belly_pan", "electric_brakes",
        "entry_step", "fresh_water", "grease_fittings", "house_battery", "jockey_wheel", "leaf_springs",
        "lp_gas", "mains", "membrane_roof", "multi_axle", "rooflights", "safety_chains", "seven_way_plug",
        "solar", "waste_tanks", "wide_body"]),
    "annual_distance": "2500 km",
}
