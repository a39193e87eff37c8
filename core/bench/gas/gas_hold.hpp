// SPDX-License-Identifier: Apache-2.0
// The arithmetic of a gas leak check: what the gauge did, what the temperature did, what is left over.
#pragma once

#include <optional>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// Two readings of gas shut in a pipe. The test is a licensed fitter's; this only reckons what they read.
struct GasHold {
    Pressure start;
    Pressure end;
    Duration time;
    Temperature startPipe = Temperature::fromSi(293.15);
    std::optional<Temperature> endPipe; ///< nothing: taken as the start's, and said so
    std::optional<Volume> piping;       ///< for a flow
    AbsolutePressure air = AbsolutePressure::fromSi(101325.0);
};

struct GasHoldResult {
    Estimate lost;                ///< Pa that temperature does not explain, positive when gas went
    Estimate temperature;         ///< Pa by which the temperature alone moved the gauge
    std::optional<Estimate> flow; ///< m³/s of gas at the pipe's pressure
};

/// Lost = (P1 + A) T2 / T1 - (P2 + A); by temperature = (P1 + A)(T2 / T1 - 1); flow = V · lost / (P2 + A) /
/// t. The range takes 0.3 K each way for the pipe's temperature and 0.1 inWC for each reading.
///
/// \returns `OutOfRange` naming start (0 to 35 kPa), end (-1 to 35 kPa), time (10 s to 24 h), temperatures
///          (-30 to 60 °C), piping (1 mL to 1 m³) or air (50 to 110 kPa).
/// Warns:    `fell` when the whole range is above nothing, `rose` when it is below (a valve lets by, or the
///           pipe warmed more than was measured); `not_shown` when it holds nothing: the check shows no fall,
///           which is not a proof; `temperature_moved` when temperature moved it by half an inch or more;
///           `temperature_unknown`; `too_short` under 3 min; `not_nine` when it began outside 9 ± 1/2 inWC.
/// Source:   ideal gas at constant volume; 9 ± 1/2 inWC for 3 min [LA-55-IX-175], as restated
/// Tests:    tests/published/bench/gas/tst_gas_hold.cpp
[[nodiscard]] Result<GasHoldResult> gasHold(const GasHold &hold);

/// Gas that belongs in a cylinder: 0.42 of its water capacity by weight, which is 80 % full by volume.
/// \returns kg; `OutOfRange` naming water-capacity (1 to 500 kg). Source: [NFPA-58], as a training page
/// restates it
[[nodiscard]] Result<Estimate> cylinderFill(Mass waterCapacity);

} // namespace snugwalk
