# SPDX-License-Identifier: Apache-2.0
"""The trips, in order. `rough_from`: the leg from which the road is as named; before it, sealed."""
from .places import (AHURIRI, DANSEYS, GODLEY, NORTH, PASS, SHORE, SOUTH, UPCOAST, WEST, back)


def trip(number, start, name, route, road, note, **more):
    return dict(id="t%d" % number, start=start, name=name, route=route, road=road, note=note,
                file="tracks/%s-%s.gpx" % (start[:10], name), **more)


TRIPS = [
    trip(1, "2024-10-05 09:05", "lindis-south", SOUTH, "smooth", "spring survey of the Manuherikia side streams"),
    trip(2, "2024-10-12 08:40", "danseys-home", DANSEYS, "gravel", "home over the gravel pass", rough_from="kyeburn",
         rough_to="duntroon"),
    trip(3, "2024-11-16 08:20", "foothills-north", NORTH, "smooth", "foothill streams"),
    trip(4, "2024-11-25 09:10", "foothills-home", back(NORTH), "smooth", "home"),
    trip(5, "2025-01-06 08:15", "shore-out", SHORE, "smooth", "river mouths; two weeks beside the sea"),
    trip(6, "2025-01-18 09:30", "shore-home", back(SHORE), "smooth", "home, rinsed underneath the same evening"),
    trip(7, "2025-02-10 07:30", "pass-out", PASS, "smooth", "over the pass; the recorder saw no sky in the gorge",
         gap=("arthurs", "otira")),
    trip(8, "2025-02-22 07:50", "pass-home", back(PASS), "smooth", "home over the pass"),
    trip(9, "2025-04-12 07:40", "west-out", WEST, "broken", "to the West Coast; a few fixes are nonsense",
         rough_from="makarora", rough_to="haast", absurd=True),
    trip(10, "2025-04-14 10:00", "upcoast", UPCOAST, "smooth", "up the coast to the lagoon"),
    trip(11, "2025-04-26 07:20", "west-home", back(UPCOAST) + back(WEST)[1:], "broken", "the long way home",
         rough_from="haast", rough_to="makarora"),
    trip(12, "2025-10-11 09:20", "godley-out", GODLEY, "washboard", "lake road, corrugated after winter",
         rough_from="tekapo", rough_to="lilybank", nmea=True),
    trip(13, "2025-10-19 09:00", "godley-home", back(GODLEY), "washboard", "home by the lake road",
         rough_from="lilybank", rough_to="tekapo"),
    trip(14, "2025-12-06 09:40", "lindis-south", SOUTH, "smooth", "left late: a tail lamp was out"),
    trip(15, "2025-12-14 08:30", "danseys-home", DANSEYS, "gravel", "home over the gravel pass", rough_from="kyeburn",
         rough_to="duntroon"),
    trip(16, "2026-01-24 08:10", "shore-out", SHORE, "smooth", "river mouths again; hubs read at the half-way stop"),
    trip(17, "2026-02-05 09:15", "shore-home", back(SHORE), "smooth", "home"),
    trip(18, "2026-02-21 07:30", "pass-out", PASS, "smooth", "over the pass"),
    trip(19, "2026-03-03 08:00", "pass-home", back(PASS), "smooth", "home over the pass"),
    trip(20, "2026-04-11 09:30", "ahuriri-out", AHURIRI, "track", "two fords and a farm track", rough_from="ahuriri",
         rough_to="ahuriri_hut"),
    trip(21, "2026-04-18 10:10", "ahuriri-home", back(AHURIRI), "track", "home", rough_from="ahuriri_hut",
         rough_to="ahuriri"),
    trip(22, "2026-10-10 08:20", "foothills-north", NORTH, "smooth", "foothill streams"),
    trip(23, "2026-10-18 09:00", "foothills-home", back(NORTH), "smooth", "home"),
    trip(24, "2026-11-07 09:10", "godley-out", GODLEY, "washboard", "lake road, graded last month",
         rough_from="tekapo", rough_to="lilybank"),
    trip(25, "2026-11-15 09:00", "godley-home", back(GODLEY), "washboard", "home by the lake road",
         rough_from="lilybank", rough_to="tekapo"),
]
