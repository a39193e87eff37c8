// SPDX-License-Identifier: Apache-2.0
// What a run of copper takes off 12 V, warm or cold.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// Diameter of a gauge: 0.127 mm · 92^((36 - n) / 39); 0 is 1/0, -1 is 2/0, -3 is 4/0.
/// \returns `OutOfRange` outside -3 to 40. Source: [NBS-HANDBOOK-100]
[[nodiscard]] Result<Length> gaugeDiameter(int gauge);
[[nodiscard]] Result<Area> gaugeArea(int gauge);
/// "12", "2/0".
[[nodiscard]] std::string gaugeName(int gauge);

/// "12", "#12", "12 AWG", "2/0", "4 mm²", "4 mm2" as a cross-section.
/// \returns `InvalidInput` or `OutOfRange` naming gauge.
[[nodiscard]] Result<Area> wireArea(std::string_view text);

struct WireRun {
    Area copper;
    Length oneWay; ///< source to load; the way back is counted
    Current current;
    Voltage supply = Voltage::fromSi(12.0);
    Temperature copperTemperature = Temperature::fromSi(293.15);
    double goal = 0.03;              ///< of the supply; brakes, lamps 0.03, other 0.10
    bool groundThroughFrame = false; ///< only one way is wire
};

struct WireDrop {
    Estimate drop;       ///< V
    Estimate share;      ///< of the supply; warns `drop_high` above the goal
    Estimate resistance; ///< Ω, there and back
    std::optional<int>
        thinnest; ///< the thinnest even gauge to 4/0 that keeps to the goal; nothing when none does
};

/// V = I · 2 L · ρ (1 + 0.00393 (t - 20 °C)) / A with ρ = 1/58 Ω·mm²/m, annealed copper.
///
/// \returns `OutOfRange` naming gauge (0.05 to 120 mm²), length (0 to 100 m), current (0 to 500 A), volts (1
/// to
///          60), temperature (-40 to 120 °C), or goal (0.5 to 50 %); `drop_all` where the drop is the whole
///          supply or more.
/// Source:   [NBS-HANDBOOK-100]: conductivity and temperature coefficient of the copper standard
/// Accuracy: 5 % (common practice): strand lay and temper; joints come on top, above 0.1 V each is one to
/// clean Tests:    tests/published/bench/electric/tst_wire.cpp
[[nodiscard]] Result<WireDrop> wireDrop(const WireRun &run);

} // namespace snugwalk
