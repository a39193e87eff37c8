// SPDX-License-Identifier: Apache-2.0
// The first day of a log, and the weathering from it on.
#include "round/world.hpp"

#include <algorithm>

#include "weather/weathering.hpp"

namespace snugwalk {
namespace {

// A date mistyped by a century must not ask for a century of days.
constexpr int yearsAtMost = 60;

std::optional<CivilDate> firstDay(const RigHistory &history, CivilDate today)
{
    std::optional<CivilDate> first;
    const auto take = [&](CivilDate date) {
        if (date <= today && (!first || date < *first))
            first = date;
    };
    for (const Trip &trip : history.trips)
        take(civilDate(trip.start));
    for (const Stay &stay : history.stays)
        take(civilDate(stay.from));
    if (!first)
        return std::nullopt;
    return std::max(*first, addMonths(today, -12 * yearsAtMost));
}

} // namespace

Result<World> worldFrom(std::string_view climateBytes, std::string_view coastBytes,
                        std::string_view placeBytes)
{
    World world;
    if (!climateBytes.empty()) {
        Result<Climate> climate = Climate::fromBytes(climateBytes);
        if (!climate)
            return climate.error();
        world.climate = std::move(climate).value();
    }
    if (!coastBytes.empty()) {
        Result<Coast> coast = Coast::fromBytes(coastBytes);
        if (!coast)
            return coast.error();
        world.coast = std::move(coast).value();
    }
    if (!placeBytes.empty()) {
        Result<Gazetteer> places = Gazetteer::fromBytes(placeBytes);
        if (!places)
            return places.error();
        world.places = std::move(places).value();
    }
    return world;
}

void weatherHistory(RigHistory &history, const World *world, LocalTime now)
{
    history.weathering = {};
    const CivilDate today = civilDate(now);
    const auto first = firstDay(history, today);
    if (!first)
        return;
    const Climate *climate = world != nullptr && world->climate ? &*world->climate : nullptr;
    const Coast *coast = world != nullptr && world->coast ? &*world->coast : nullptr;
    history.weathering =
        weatheringOf(history.trips, history.stays, history.weather, climate, coast, *first, today);
}

} // namespace snugwalk
