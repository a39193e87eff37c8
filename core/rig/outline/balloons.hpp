// SPDX-License-Identifier: Apache-2.0
// Numbered balloons at the edge of a drawing, as technical drawings have them (ISO 6433, from memory).
#pragma once

#include <vector>

#include "rig/outline/face_sheet.hpp"

namespace snugwalk::outline {

/// Rows of balloons beside a drawing, in whatever unit the spots are given.
struct BalloonBand {
    double width = 0.0; ///< from 0 on
    double side = 0.0;  ///< of the square that each balloon has to itself
    double edge = 0.0;  ///< where the band begins, as y
    bool below = false; ///< whether it goes on downwards from there
};

/// How many rows so many balloons need.
[[nodiscard]] int balloonRows(std::size_t count, double width, double side);

/// Centres by the index of `spots`, each as near its spot as its neighbours allow, at least `side` apart;
/// the leaders from spot to centre do not cross. Formula: balloons in the order of the spots, then crossing
/// leaders change their ends, which makes both together shorter and so ends.
/// Tests:   tests/unit/rig/tst_outline_balloons.cpp
[[nodiscard]] std::vector<PaperSpot> balloonSpots(const std::vector<PaperSpot> &spots,
                                                  const BalloonBand &band);

/// True when two leaders cross other than at an end that they share.
[[nodiscard]] bool doCross(PaperSpot a, PaperSpot b, PaperSpot c, PaperSpot d);

} // namespace snugwalk::outline
