// SPDX-License-Identifier: Apache-2.0
// A wheel stud by its thread: diameter, stress area, and the torque that such studs commonly get.
#pragma once

#include <optional>
#include <string_view>

#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

struct Stud {
    Length diameter;
    Length pitch;
    bool inchThread = false;
    std::optional<Torque>
        commonLow; ///< of studs of that thread, common practice, to catch a typing slip only
    std::optional<Torque> commonHigh;
};

/// "M14", "M14x1.5", "1/2-20", "9/16-18". A metric stud without pitch is taken as 1.5 mm, as on wheels.
///
/// \returns `InvalidInput` naming `stud` for what is no thread, `OutOfRange` outside 6 mm to 30 mm or for a
///          pitch over a fifth of the diameter.
[[nodiscard]] Result<Stud> parseStud(std::string_view text);

/// Tensile stress area of the thread: pi/4 (d - 0.9743 / n)^2 for inch threads, pi/4 (d - 0.9382 P)^2 metric.
///
/// Source: [ASME-B1.1] appendix B, [ISO-898-1] 9.1.6; the roots of the two threads differ
/// Tests:  tests/published/bench/wheels/tst_clamp_force.cpp
[[nodiscard]] Area stressArea(const Stud &stud);

/// Proof strength of a grade: "5", "8", "8.8", "10.9", "12.9"; nothing for others.
/// Source: [SAE-J429] 85 and 120 ksi, [ISO-898-1] 600, 830 and 970 MPa, from memory.
[[nodiscard]] std::optional<Pressure> proofStrength(std::string_view grade);

} // namespace snugwalk
