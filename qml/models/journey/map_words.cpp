// SPDX-License-Identifier: Apache-2.0
// A map's own words: degrees along its edges, the scale, and what a screen reader says of it.
#include "map_texts.hpp"
#include "trip_map.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(TripMap)
public:
    static QString spoken(const Voice &voice, const Trip &trip, const TripMap &map);
};

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

} // namespace

QVariantMap mapWords(const Voice &voice, const Trip &trip, const TripMap &map)
{
    if (map.width <= 0.0)
        return {};
    QVariantList stops;
    for (const FlatPoint &stop : map.stops)
        stops << QVariantMap{{QStringLiteral("x"), stop.x}, {QStringLiteral("y"), stop.y}};
    QVariantList land;
    for (const FlatRing &ring : map.land)
        land << QVariant(flatList(ring));
    QVariantList grid;
    for (const GridLine &line : map.grid)
        grid << QVariantMap{{QStringLiteral("at"), line.at},
                            {QStringLiteral("text"), degreesText(voice, line)},
                            {QStringLiteral("meridian"), line.meridian}};
    return {{QStringLiteral("width"), map.width},
            {QStringLiteral("height"), map.height},
            {QStringLiteral("track"), flatList(map.track)},
            {QStringLiteral("stops"), stops},
            {QStringLiteral("land"), land},
            {QStringLiteral("sea"), map.seaInView},
            {QStringLiteral("grid"), grid},
            {QStringLiteral("scale"), scaleWords(voice, map.width, map.width)},
            {QStringLiteral("dash"), dashOf(trip.road)},
            {QStringLiteral("spoken"), Words::spoken(voice, trip, map)}};
}

} // namespace snugwalk
