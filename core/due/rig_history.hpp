// SPDX-License-Identifier: Apache-2.0
// All that the logbook knows about one rig, as values: the input of due, concern and compare.
#pragma once

#include <vector>

#include "catalogue/own.hpp"
#include "rig/rig.hpp"
#include "rig/rig_version.hpp"
#include "trip/trip.hpp"
#include "trip/weather_record.hpp"
#include "walk/acceptance.hpp"
#include "walk/finding_state.hpp"
#include "walk/walk.hpp"
#include "weather/weathering.hpp"

namespace snugwalk {

struct WalkRecord {
    Walk walk;
    std::vector<Mark> marks; ///< one a point at most
};

/// Every list is oldest first.
struct RigHistory {
    Rig rig;
    std::vector<WalkRecord> walks;
    std::vector<FindingHistory> findings;
    std::vector<Mend> mends;
    std::vector<Trip> trips;
    std::vector<Stay> stays;
    std::vector<WeatherRecord> weather;
    std::vector<Happening> happenings;
    std::vector<RigVersion> rigs; ///< what it was before; empty: always as it is now
    OwnChoices own;               ///< points added, hidden and re-timed by the owner
    std::vector<Stock> stocks;    ///< counts of supplies on hand
    std::vector<Acceptance> acceptances;
    Weathering weathering; ///< day by day; empty: the reference, for nothing is known
};

} // namespace snugwalk
