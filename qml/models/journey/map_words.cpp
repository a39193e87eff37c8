// SPDX-License-Identifier: Apache-2.0
// A map's own words: degrees along its edges, the scale, and what a screen reader says of it.
#include <cmath>

#include "trip_map.hpp"

namespace snugwalk {
namespace {

constexpr double scaleShare = 0.34; // of the width, at most
constexpr double metresPerKm = 1000.0;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(TripMap)
public:
    static QString degrees(const Voice &voice, const GridLine &line);
    static QString spoken(const Voice &voice, const Trip &trip, const TripMap &map);
};

QString Words::degrees(const Voice &voice, const GridLine &line)
{
    double value = line.degrees;
    if (line.meridian && value > 180.0)
        value -= 360.0;
    if (line.meridian && value < -180.0)
        value += 360.0;
    const double size = std::abs(value);
    const bool isWhole = std::abs(size - std::round(size)) < 1e-9;
    const int decimals = isWhole ? 0 : std::abs(size * 10 - std::round(size * 10)) < 1e-9 ? 1 : 2;
    const QString number = voice.number(size, decimals) + QChar(0x00b0);
    if (size < 1e-9)
        return number;
    if (line.meridian)
        return value < 0.0 ? tr("%1 W", "west longitude").arg(number)
                           : tr("%1 E", "east longitude").arg(number);
    return value < 0.0 ? tr("%1 S", "south latitude").arg(number) : tr("%1 N", "north latitude").arg(number);
}

QVariantList flatList(const std::vector<FlatPoint> &points)
{
    QVariantList list;
    list.reserve(static_cast<qsizetype>(points.size() * 2));
    for (const FlatPoint &p : points)
        list << p.x << p.y;
    return list;
}

// A round length of the person's own unit.
QVariantMap scaleOf(const Voice &voice, double width)
{
    const double unitKm = voice.units == UnitSystem::Us ? miles(1.0).si() / metresPerKm : 1.0;
    double best = 0.5;
    for (const double power : {1.0, 10.0, 100.0, 1000.0}) {
        for (const double times : {1.0, 2.0, 5.0}) {
            if (times * power * unitKm <= width * scaleShare)
                best = times * power;
        }
    }
    const auto unit = findUnit(Dimension::Distance, voice.units == UnitSystem::Us ? "mi" : "km");
    return {{QStringLiteral("length"), best * unitKm},
            {QStringLiteral("text"),
             voice.number(best, best < 1.0 ? 1 : 0) + QChar(0x00a0) + Voice::text(unit->symbol)}};
}

QString Words::spoken(const Voice &voice, const Trip &trip, const TripMap &map)
{
    QStringList parts{tr("Map of the trip, north up: from %1 to %2.", "places")
                          .arg(voice.position({trip.outline.front().latitude, trip.outline.front().longitude,
                                               std::nullopt, std::nullopt}),
                               voice.position({trip.outline.back().latitude, trip.outline.back().longitude,
                                               std::nullopt, std::nullopt}))};
    if (!map.stops.empty())
        parts << tr("%n stop(s).", nullptr, static_cast<int>(map.stops.size()));
    if (!map.coastKnown)
        parts << tr("Where the sea is is not known here.");
    else if (!map.seaInView)
        parts << tr("No coast is near.");
    return parts.join(u' ');
}

// How the line of the track is broken: the worse the road, the more.
QVariantList dashOf(const Trip &trip)
{
    switch (trip.road) {
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

} // namespace

QVariantMap mapWords(const Voice &voice, const Trip &trip, const TripMap &map)
{
    if (map.width <= 0.0)
        return {};
    QVariantList stops;
    for (const FlatPoint &stop : map.stops)
        stops << QVariantMap{{QStringLiteral("x"), stop.x}, {QStringLiteral("y"), stop.y}};
    QVariantList land;
    for (const std::vector<FlatPoint> &ring : map.land)
        land << QVariant(flatList(ring));
    QVariantList grid;
    for (const GridLine &line : map.grid)
        grid << QVariantMap{{QStringLiteral("at"), line.at},
                            {QStringLiteral("text"), Words::degrees(voice, line)},
                            {QStringLiteral("meridian"), line.meridian}};
    return {{QStringLiteral("width"), map.width},
            {QStringLiteral("height"), map.height},
            {QStringLiteral("track"), flatList(map.track)},
            {QStringLiteral("stops"), stops},
            {QStringLiteral("land"), land},
            {QStringLiteral("sea"), map.seaInView},
            {QStringLiteral("grid"), grid},
            {QStringLiteral("scale"), scaleOf(voice, map.width)},
            {QStringLiteral("dash"), dashOf(trip)},
            {QStringLiteral("spoken"), Words::spoken(voice, trip, map)}};
}

} // namespace snugwalk
