// SPDX-License-Identifier: Apache-2.0
// From words to a place.
#include "place_form.hpp"

#include <algorithm>
#include <cmath>

#include <QRegularExpression>

namespace snugwalk {
namespace {

constexpr double nearDegrees = 0.02; // some 2 km: the same place, however the receiver was that day

bool isNear(const GeoPoint &a, const GeoPoint &b)
{
    return std::abs(a.latitude - b.latitude) < nearDegrees &&
           std::abs(a.longitude - b.longitude) < nearDegrees;
}

} // namespace

std::optional<GeoPoint> readPlace(const QString &typed)
{
    // the letters of charts alone: O is west in one language and east in another
    static const QRegularExpression form(
        QStringLiteral("^\\s*([+\\-\\x{2212}]?\\d+(?:\\.\\d+)?)\\s*\\x{b0}?\\s*([NSns]?)[\\s,;]+"
                       "([+\\-\\x{2212}]?\\d+(?:\\.\\d+)?)\\s*\\x{b0}?\\s*([EWew]?)\\s*$"));
    const QRegularExpressionMatch match = form.match(typed);
    if (!match.hasMatch())
        return std::nullopt;
    const auto degrees = [&](int number, int letter) {
        const double value = match.captured(number).replace(QChar(0x2212), QLatin1Char('-')).toDouble();
        const QString side = match.captured(letter).toUpper();
        return side == QStringLiteral("S") || side == QStringLiteral("W") ? -value : value;
    };
    const GeoPoint place{degrees(1, 2), degrees(3, 4), std::nullopt, std::nullopt};
    return isValid(place) ? std::optional(place) : std::nullopt;
}

std::vector<KnownPlace> knownPlaces(const Shown &shown)
{
    std::vector<KnownPlace> places;
    if (shown.history() == nullptr)
        return places;
    const std::vector<Stay> &stays = shown.history()->stays;
    for (auto stay = stays.rbegin(); stay != stays.rend(); ++stay) {
        const bool isKnown = std::any_of(places.begin(), places.end(),
                                         [&](const KnownPlace &p) { return isNear(p.place, stay->place); });
        if (isKnown)
            continue;
        const QString name =
            stay->name.empty() ? shown.voice->position(stay->place) : Voice::text(stay->name);
        places.push_back({name, stay->place, stay->covered});
    }
    return places;
}

QVariantList placeChoices(const std::vector<KnownPlace> &places)
{
    QVariantList list;
    for (std::size_t i = 0; i < places.size(); ++i)
        list << QVariantMap{{QStringLiteral("slug"), QString::number(i)},
                            {QStringLiteral("name"), places[i].name}};
    return list;
}

} // namespace snugwalk
