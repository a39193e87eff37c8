// SPDX-License-Identifier: Apache-2.0
// What every map of the app says and how it draws a road: degrees, scale, dashes.
#pragma once

#include <QVariantMap>

#include "map/grid.hpp"
#include "trip/trip.hpp"
#include "voice.hpp"

namespace snugwalk {

/// "170.5° E".
[[nodiscard]] QString degreesText(const Voice &voice, const GridLine &line);

/// A round length of the person's own unit, a third of the map at most: {length, text}.
/// \param width kilometres \param paper the same length on paper; `length` is in its unit
[[nodiscard]] QVariantMap scaleWords(const Voice &voice, double width, double paper);

/// How the line of a trip is broken: the worse the road, the more. In widths of the line.
[[nodiscard]] QVariantList dashOf(RoadClass road);

/// [x, y, x, y, …]
[[nodiscard]] QVariantList flatList(const std::vector<FlatPoint> &points);

} // namespace snugwalk
