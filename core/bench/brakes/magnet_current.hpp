// SPDX-License-Identifier: Apache-2.0
// What the brake magnets draw against what their maker says they draw.
#pragma once

#include <optional>
#include <string_view>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// Diameter of the brake: 7 in, or 10 to 12 in.
enum class MagnetSize { Small, Large };

struct MagnetReading {
    Current total;                             ///< of all magnets at full gain, the engine's charger off
    int magnets = 0;                           ///< one a braked wheel
    std::optional<Current> maker = {};         ///< the maker's most for one magnet
    std::optional<Voltage> volts = {};         ///< at the magnets
    std::optional<Resistance> resistance = {}; ///< of one magnet, cold
    MagnetSize size = MagnetSize::Large;
};

enum class MagnetCall { WithinMaker, Low, High, None };
[[nodiscard]] std::string_view slug(MagnetCall call);

struct MagnetDraw {
    Estimate each;                    ///< A, mean of all
    Estimate deviation;               ///< share above the figure it is held against, below 0 under it
    Estimate figure;                  ///< A, that figure: the maker's, else what such magnets commonly draw
    std::optional<Estimate> expected; ///< A by volts over resistance
    MagnetCall call = MagnetCall::WithinMaker;
};

/// I / N against the maker's figure, within +20 % and -30 %.
///
/// \returns warnings on `each`: `magnet_low`, `magnet_high`, `magnet_none` (under 0.1 A: no brake works),
///          `not_makers_figure` (3.5 A, or 3.275 A for 7 in, commonly drawn at 12 V), `volts_outside` (under
///          12 or over 13.5 V at the magnets), `differs_from_ohms` (more than 15 % from volts over
///          resistance); `OutOfRange` naming "total" (0 to 200 A), "magnets" (1 to 12), "maker" (0.5 to 10
///          A), "volts" (6 to 16 V) or "resistance" (0.5 to 20 Ω).
/// Source:   [PA-TRAILER] for the band, [CFR49-570] 570.58 for the mean, both as quoted; the rest common
///           practice
/// Range:    ±3 % of the meter (common practice)
/// Limits:   a mean hides one dead magnet among many: one of four shows as -25 %. A current does not show
///           that the brakes stop the rig
/// Tests:    tests/published/bench/brakes/tst_magnet_current.cpp
[[nodiscard]] Result<MagnetDraw> magnetDraw(const MagnetReading &reading);

} // namespace snugwalk
