// SPDX-License-Identifier: Apache-2.0
// Degrees along a map's edges, its scale, its lines.
#include "map_texts.hpp"

#include <cmath>

namespace snugwalk {
namespace {

constexpr double scaleShare = 0.34; // of the width, at most
constexpr double metresPerKm = 1000.0;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(TripMap)
};

} // namespace

QString degreesText(const Voice &voice, const GridLine &line)
{
    const double size = std::abs(line.degrees);
    const QString number = voice.number(size, line.decimals) + QChar(0x00b0);
    if (size < 1e-9)
        return number;
    if (line.meridian)
        return line.degrees < 0.0 ? Words::tr("%1 W", "west longitude").arg(number)
                                  : Words::tr("%1 E", "east longitude").arg(number);
    return line.degrees < 0.0 ? Words::tr("%1 S", "south latitude").arg(number)
                              : Words::tr("%1 N", "north latitude").arg(number);
}

QVariantMap scaleWords(const Voice &voice, double width, double paper)
{
    const bool isUs = voice.units == UnitSystem::Us;
    const double unitKm = isUs ? miles(1.0).si() / metresPerKm : 1.0;
    const double length = scaleLength(width * scaleShare, unitKm);
    const auto unit = findUnit(Dimension::Distance, isUs ? "mi" : "km");
    return {{QStringLiteral("length"), length * unitKm * paper / width},
            {QStringLiteral("text"),
             voice.number(length, length < 1.0 ? 1 : 0) + QChar(0x00a0) + Voice::text(unit->symbol)}};
}

QVariantList dashOf(RoadClass road)
{
    switch (road) {
    case RoadClass::Gravel:
    case RoadClass::Washboard:
        return {4.0, 2.0};
    case RoadClass::Track:
        return {1.5, 2.0};
    case RoadClass::Broken:
        return {8.0, 2.0};
    case RoadClass::Smooth:
    case RoadClass::Unknown:
        break;
    }
    return {};
}

QVariantList flatList(const std::vector<FlatPoint> &points)
{
    QVariantList list;
    list.reserve(static_cast<qsizetype>(points.size() * 2));
    for (const FlatPoint &p : points)
        list << p.x << p.y;
    return list;
}

} // namespace snugwalk
