// SPDX-License-Identifier: Apache-2.0
// Rounding a distance to what may be told of it.
#include "report/near_words.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"
#include "map/compass.hpp"

namespace snugwalk {
namespace {

constexpr double atThePlace = 1500.0; // metres: a town has some size itself
constexpr double roughStep = 5.0;     // kilometres or miles

} // namespace

std::optional<NearPlace> nearToTell(const Gazetteer *places, const std::optional<GeoPoint> &place,
                                    PlaceDetail detail)
{
    const auto told = placeToTell(place, detail);
    if (places == nullptr || !told)
        return std::nullopt;
    return places->nearest(*told);
}

std::string nearWords(const NearPlace &near, PlaceDetail detail, const Texts &texts, UnitSystem units,
                      const std::function<std::string(double, int)> &number)
{
    const Unit unit = *findUnit(Dimension::Distance, units == UnitSystem::Us ? "mi" : "km");
    const double perUnit = units == UnitSystem::Us ? miles(1.0).si() : kilometres(1.0).si();
    const bool isRough = detail == PlaceDetail::Coarse;
    const double step = isRough ? roughStep : 1.0;
    const double rounded = step * std::round(near.distance.si() / perUnit / step);
    if (rounded <= 0.0 || (!isRough && near.distance.si() < atThePlace))
        return texts.phrase("near_at", {near.named.name});
    const std::string distance = number(rounded, 0) + "\u00a0" + std::string(unit.symbol);
    return texts.phrase("near_" + std::string(compassPoint(near.bearing)),
                        {isRough ? texts.phrase("near_about", {distance}) : distance, near.named.name});
}

std::string nearWords(const std::optional<NearPlace> &near, PlaceDetail detail, const Texts &texts,
                      UnitSystem units)
{
    if (!near)
        return {};
    return nearWords(*near, detail, texts, units,
                     [](double value, int decimals) { return fixed(value, decimals); });
}

} // namespace snugwalk
