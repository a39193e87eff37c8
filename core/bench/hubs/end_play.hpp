// SPDX-License-Identifier: Apache-2.0
// End play of a wheel bearing from a dial indicator.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// One push and one pull while the hub is turned to and fro; the dial reads more as the hub comes out.
struct PlayTrial {
    Length pushed;
    Length pulled;
};

struct PlayLimits {
    Length least;
    Length most;
};

/// 0.001 to 0.005 in. Source [TMC-RP618], as restated. Light hubs set by hand go to 0.010 in (common
/// practice); of two limits the stricter one stands.
inline constexpr PlayLimits publishedPlay = {Length::fromSi(0.001 * 0.0254), Length::fromSi(0.005 * 0.0254)};

/// `Undecided`: past a limit by less than the doubt of the readings.
enum class PlayCall { Within, Over, Under, Undecided };
[[nodiscard]] std::string_view slug(PlayCall call);

struct EndPlay {
    Estimate play; ///< m
    PlayCall call = PlayCall::Undecided;
};

/// The mean of pulled minus pushed.
///
/// \param trials one to 50, each reading within 10 mm of zero
/// \param maker  the axle maker's limits, which win
/// \returns warnings `play_over`, `play_under`, `play_undecided`, `one_reading`; `InvalidInput` naming
///          "pull" when it does not read more than "push", `OutOfRange` for a play over 0.5 mm (0.020 in),
///          which no dial on a bearing in place shows: something else moved.
///
/// Range:    half the spread of repeats and the dial's 0.0005 in (common practice) in quadrature
/// Limits:   only a dial indicator measures end play; a tire rocked by hand screens
/// Tests:    tests/published/bench/hubs/tst_bearings.cpp
[[nodiscard]] Result<EndPlay> endPlay(std::span<const PlayTrial> trials,
                                      std::optional<PlayLimits> maker = std::nullopt);

} // namespace snugwalk
