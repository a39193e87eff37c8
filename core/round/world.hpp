// SPDX-License-Identifier: Apache-2.0
// The world's normals and what they make of a rig's history.
#pragma once

#include <optional>
#include <string_view>

#include "due/rig_history.hpp"
#include "map/gazetteer.hpp"
#include "weather/climate.hpp"
#include "weather/coast.hpp"

namespace snugwalk {

/// Each part may be missing: what is not known then counts as the reference, and no place has a name.
struct World {
    std::optional<Climate> climate;
    std::optional<Coast> coast;
    std::optional<Gazetteer> places;

    [[nodiscard]] const Coast *coastOrNull() const { return coast ? &*coast : nullptr; }
    [[nodiscard]] const Gazetteer *placesOrNull() const { return places ? &*places : nullptr; }
};

/// From the bytes of the climate table, the coast and the places; empty bytes leave that part out.
/// \returns the error of the table that cannot be read.
[[nodiscard]] Result<World> worldFrom(std::string_view climateBytes, std::string_view coastBytes,
                                      std::string_view placeBytes = {});

/// Fills `history.weathering` from its trips, stays and records, from the first day of the log up to `now`;
/// without a trip, a stay or a record it stays empty, which is the reference.
/// \param world null where no table is at hand: days with a record of their own count all the same.
void weatherHistory(RigHistory &history, const World *world, LocalTime now);

} // namespace snugwalk
