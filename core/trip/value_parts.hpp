// SPDX-License-Identifier: Apache-2.0
// The pieces that trip values are made of: quantities, times and places.
#pragma once

#include <cmath>
#include <optional>

#include "base/geo.hpp"
#include "base/units.hpp"
#include "base/value.hpp"

namespace snugwalk::trip_parts {

template <typename Q>
[[nodiscard]] Value quantity(Q amount)
{
    return Value::Map{{"value", amount.si()}, {"unit", siSymbol(DimensionOf<Q>::value)}};
}

/// Nothing when the number is not finite or the unit is not one of the dimension.
template <typename Q>
[[nodiscard]] std::optional<Q> readQuantity(const Value &value)
{
    const auto number = value["value"].asDouble();
    const auto unit = findUnit(DimensionOf<Q>::value, value["unit"].asString().value_or(""));
    if (!number || !unit || !std::isfinite(toSi(*unit, *number)))
        return std::nullopt;
    return Q::fromSi(toSi(*unit, *number));
}

[[nodiscard]] Value place(const GeoPoint &point);
[[nodiscard]] std::optional<GeoPoint> readPlace(const Value &value);

[[nodiscard]] std::optional<LocalTime> readLocal(const Value &value);
[[nodiscard]] std::optional<Instant> readInstant(const Value &value);

/// Sets the member only when there is something to say.
template <typename T, typename Make>
void put(Value &map, const char *key, const std::optional<T> &part, Make make)
{
    if (part)
        map.member(key) = make(*part);
}

} // namespace snugwalk::trip_parts
