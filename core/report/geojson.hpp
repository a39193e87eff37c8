// SPDX-License-Identifier: Apache-2.0
// Findings, trips and stays for other people's maps.
#pragma once

#include <string>

#include "catalogue/texts.hpp"
#include "report/rough_place.hpp"
#include "round/state.hpp"

namespace snugwalk {

/// One FeatureCollection, [RFC7946]: longitude before latitude, WGS84, seven digits after the point at most,
/// no altitude; a line over the 180th meridian is cut there (section 3.1.9). Findings are points where they
/// were first seen (look, else walk), trips lines along their outline, stays points. What is left out or not
/// known has the geometry `null`, and with `LeftOut` trips lose their titles too, which name places, and
/// stays have a name with `Exact` alone, for it tells which ground it was. Coarse lines go
/// through the middles of their cells; one that stays in a cell is a point. `place_detail` says which it is.
///
/// Tests: tests/unit/report/tst_geojson.cpp, tests/journey/report_formats.py (read by python3-geojson and
///        python3-shapely)
[[nodiscard]] std::string geoJsonText(const Standing &standing, const Texts &texts, PlaceDetail place);

} // namespace snugwalk
