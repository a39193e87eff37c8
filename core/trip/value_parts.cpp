// SPDX-License-Identifier: Apache-2.0
// Places and times in value trees.
#include "trip/value_parts.hpp"

namespace snugwalk::trip_parts {

Value place(const GeoPoint &point)
{
    Value out = Value::Map{{"latitude", point.latitude}, {"longitude", point.longitude}};
    put(out, "altitude", point.altitude, [](double metresUp) { return quantity(metres(metresUp)); });
    put(out, "accuracy", point.accuracy, quantity<Length>);
    return out;
}

std::optional<GeoPoint> readPlace(const Value &value)
{
    const auto latitude = value["latitude"].asDouble();
    const auto longitude = value["longitude"].asDouble();
    if (!latitude || !longitude)
        return std::nullopt;
    GeoPoint point{*latitude, *longitude, std::nullopt, readQuantity<Length>(value["accuracy"])};
    if (const auto altitude = readQuantity<Length>(value["altitude"]))
        point.altitude = altitude->si();
    return isValid(point) ? std::optional(point) : std::nullopt;
}

std::optional<LocalTime> readLocal(const Value &value) { return parseLocal(value.asString().value_or("")); }

std::optional<Instant> readInstant(const Value &value)
{
    const auto time = readLocal(value);
    return time ? std::optional(time->instant) : std::nullopt;
}

} // namespace snugwalk::trip_parts
