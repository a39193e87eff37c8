// SPDX-License-Identifier: Apache-2.0
// The question "what did this trip do to it?": the weather of its days and the shaking of its road.
#pragma once

#include "due/aging/age_drivers.hpp"
#include "due/rig_history.hpp"
#include "road/shake.hpp"

namespace snugwalk {

struct TripStory {
    int days = 0;              ///< civil days from start to end, both counted
    bool weatherKnown = false; ///< of each of these days
    double aged = 0.0;         ///< what they aged it, in reference days
    double agedLow = 0.0, agedHigh = 0.0;
    TripShake shake;
};

/// Formula: each weather driver's mean over the days, held within 0.25 and 4, to the power that the clock of
///          such a part has (`agingRate`), times the days; the shake is no part of it
/// Accuracy: low and high as `AgeLine` has them, some 10 and 90 %
/// Tests:   tests/unit/round/tst_trip_story.cpp
/// \param ages what it is told for, such as the drivers of a roof seal
[[nodiscard]] TripStory tripStory(const RigHistory &history, const Trip &trip, const AgeWeights &ages);

} // namespace snugwalk
