// SPDX-License-Identifier: Apache-2.0
// How far a seam opens and shuts with the seasons, and whether its sealant can follow.
#pragma once

#include <optional>
#include <string_view>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

enum class SeamMaterial { Aluminum, Fiberglass, Steel, Rubber };
[[nodiscard]] std::string_view slug(SeamMaterial material);
[[nodiscard]] std::optional<SeamMaterial> parseSeamMaterial(std::string_view slug);

/// Linear expansion a kelvin: aluminum 23e-6, glass fiber skin 25e-6, steel 12e-6, rubber sheet 160e-6.
/// Source: handbook values, from memory
[[nodiscard]] double expansionPerKelvin(SeamMaterial material);

struct Seam {
    double perKelvin = 23e-6;    ///< of what moves
    Length run;                  ///< free length that moves into the seam
    Length width;                ///< of the joint as it was filled
    TemperatureDifference swing; ///< from the coldest morning to the hottest skin
    double allowed = 0.25;       ///< movement class of the sealant: 0.125, 0.25, 0.5 of the width
};

struct SeamMovement {
    Estimate movement; ///< m
    Estimate strain;   ///< share of the width; warns `joint_too_narrow` above the class
    Estimate width;    ///< m, the least that keeps within the class
};

/// Movement α·L·ΔT, strain over the width, least width movement / class.
///
/// \returns `OutOfRange` naming run (0 to 30 m), width (0.5 to 100 mm), swing (0 to 150 K), class
///          (0.05 to 1) or an expansion outside 1e-6 to 1e-3.
/// Source:   expansion and classes (ISO 11600: 12.5, 25 % ...) from memory
/// Accuracy: 20 % (common practice): skins are held by screws and frames and move less than they could
/// Tests:    tests/published/bench/joints/tst_seam.cpp
[[nodiscard]] Result<SeamMovement> seamMovement(const Seam &seam);

} // namespace snugwalk
