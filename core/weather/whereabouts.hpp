// SPDX-License-Identifier: Apache-2.0
// Where the rig was, day by day.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "base/geo.hpp"
#include "base/time.hpp"
#include "trip/trip.hpp"

namespace snugwalk {

/// How the place of a day is known.
enum class PlaceBasis {
    Nowhere,     ///< no trip and no stay has a place
    BeforeFirst, ///< before the first place: that one
    Inherited,   ///< nothing written for the day: where it was last
    Trip,        ///< where a trip stopped or ended that day
    Stay
};

struct DayPlace {
    GeoPoint place;
    bool covered = false; ///< only a stay says so; an ended stay's roof is not counted on
    PlaceBasis basis = PlaceBasis::Nowhere;
    bool driven = false; ///< a trip was under way that day
};

/// One a day from `from` to `until`, both included; empty when they are the wrong way round. A day has the
/// place where its local date ended. Of stays that overlap, the one that began last counts; a stay without
/// end goes on until another stay begins or a trip starts, one with an end also after a trip within it.
[[nodiscard]] std::vector<DayPlace> whereabouts(std::span<const Trip> trips, std::span<const Stay> stays,
                                                CivilDate from, CivilDate until);

} // namespace snugwalk
