// SPDX-License-Identifier: Apache-2.0
// How much of a vibration people feel, standing or sitting.
#pragma once

#include "road/series/welch.hpp"

namespace snugwalk {

/// Magnitude of the weighting Wk for vertical vibration.
///
/// Source:   [ISO-2631-1] Wk: band limits 0.4 and 100 Hz, 12.5 Hz (Q 0.63), step 2.37 and 3.35 Hz (Q 0.91);
///           from memory
/// Accuracy: half a unit in the third digit of the printed table, at nominal thirds of an octave
/// Tests:    tests/published/road/tst_road_comfort.cpp
[[nodiscard]] double comfortWeight(double frequency);

/// Weighted rms of a spectrum of acceleration: root of the integral of Wk^2 times the density.
[[nodiscard]] double comfortRms(const Spectrum &spectrum);

} // namespace snugwalk
