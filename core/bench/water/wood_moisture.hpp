// SPDX-License-Identifier: Apache-2.0
// A moisture meter's reading against what wood takes up from the air around it.
#pragma once

#include <optional>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// Equilibrium moisture of wood in air.
///
/// \param humidity fraction, 0.05 to 0.95
/// \returns percent of dry mass, ±1.5 points; `OutOfRange` naming "air" outside 0 to 60 °C, or "humidity".
///
/// Formula:  M = 1800/W [Kh/(1-Kh) + (K1 Kh + 2 K1 K2 K² h²)/(1 + K1 Kh + K1 K2 K² h²)], t in °C;
///           W = 349 + 1.29 t + 0.0135 t², K = 0.805 + 0.000736 t - 0.00000273 t²,
///           K1 = 6.27 - 0.00938 t - 0.000303 t², K2 = 1.91 + 0.0407 t - 0.000293 t²
/// Source:   [FPL-GTR-282] equation 4-5, from memory
/// Accuracy: ±1 to 1.5 points between kinds of wood and between taking up and giving off (common practice)
/// Tests:    tests/published/bench/water/tst_wood_moisture.cpp, tests/reference/bench
[[nodiscard]] Result<Estimate> equilibriumMoisture(Temperature air, double humidity);

/// A meter reading of wood that was not at 20 °C: cold wood reads low by 0.175 points a kelvin at 15 %, in
/// proportion to the reading, ±0.025. Common practice; above 20 °C nothing is taken off.
/// \returns percent; `OutOfRange` naming "reading" (above 0 to 60) or "wood" (-20 to 60 °C).
[[nodiscard]] Result<Estimate> atTwentyDegrees(double reading, Temperature wood);

struct MoistureReading {
    double reading = 0.0;                   ///< percent, as the meter shows
    std::optional<Temperature> wood = {};   ///< where it was read
    Temperature air;                        ///< of the last week
    double humidity = 0.0;                  ///< fraction, of the last week
    double humidityWithin = 0.0;            ///< fraction either way, where the humidity is not measured
    std::optional<double> lastReading = {}; ///< percent, at the same station before
};

struct MoistureExcess {
    Estimate excess;    ///< points over the air's own
    Estimate baseline;  ///< percent
    Estimate corrected; ///< percent, at 20 °C
};

/// A humidity that is known within so much carries through the law into both ranges; half the spread between
/// the ends, in quadrature.
///
/// \returns warnings on `excess`: `moisture_over_baseline` above 4 points, `moisture_wet` from 20 %,
///          `moisture_rising` from 3 points since the last reading, `decay_possible` from 20 % with the wood
///          between 2 and 38 °C [FPL-GTR-282], `beyond_meter` above 30 % [FPL-GTR-6], `air_estimated` when
///          the humidity is not known within 10 points.
/// Source:   limits common practice
/// Limits:   foil, wet glue and gel coat read false; a change at one station says more than any limit
/// Tests:    tests/published/bench/water/tst_wood_moisture.cpp
[[nodiscard]] Result<MoistureExcess> moistureExcess(const MoistureReading &reading);

} // namespace snugwalk
