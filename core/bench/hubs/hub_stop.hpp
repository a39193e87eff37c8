// SPDX-License-Identifier: Apache-2.0
// Hub temperatures at a stop against each other and the air, and from stop to stop.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

enum class HubSide { Left, Right };

/// Hubs are listed left then right, axle by axle from the front.
struct HubStop {
    std::vector<Temperature> hubs;
    std::optional<Temperature> air = {};
    std::optional<Duration> driven = {}; ///< before the stop
    std::optional<Duration> stood = {};  ///< since the stop
    std::optional<HubSide> sunny = {};
    bool descent = false; ///< a long downhill came just before
};

/// From the least to the most: what a stop says. `CannotTell` stands in for `Alike` alone.
enum class HubCall { Alike, CannotTell, OverMates, HotOverMates, TooHot };
[[nodiscard]] std::string_view slug(HubCall call);

struct HubRound {
    std::size_t hottest = 0;                 ///< index in `hubs`
    Estimate overMates;                      ///< K, the hottest above the next
    Estimate hottestAt;                      ///< K, its temperature
    std::vector<TemperatureDifference> rise; ///< each above the air; empty without air
    HubCall call = HubCall::Alike;
};

/// Compares hubs with their mates, never with the air: a warm day warms all of them.
///
/// Over 25 °F (14 K) above its warmest mate: look at bearing and brake of that wheel before going on. Over
/// 170 °F (77 °C) as well, or over 200 °F (93 °C): stop, let it cool untouched, roll 10 minutes without hard
/// braking, read again; it holds if it comes back. After a long downhill all hot alike is no fault of one.
///
/// \returns warnings `over_mates`, `hot_over_mates`, `too_hot`, `hot_alike` (after a descent, the hubs within
///          14 K), `driven_too_short` (under 30 minutes) and `driven_unknown`, `heat_soak` (read over 5
///          minutes after the stop, when drum heat comes to the cap), `sunny_side` when the hottest faces the
///          sun. `OutOfRange` naming "hubs", "air", "driven" or "stood"; two to 12 hubs.
/// Range:    an infrared thermometer's 3 K each; 5 K more downwards on the sunny side. The call is made
///           without that allowance: sun never excuses a hub.
/// Source:   common practice. Of 20 and 30 minutes, and of 14 and 20 K, the stricter is taken
/// Tests:    tests/published/bench/hubs/tst_hub_stop.cpp
[[nodiscard]] Result<HubRound> hubsAtStop(const HubStop &stop);

/// One hub from the first stop to the last.
struct HubTrend {
    TemperatureDifference first; ///< above the mean of its mates
    TemperatureDifference last;
    bool growing = false; ///< by more than the doubt of four readings, 6 K
};

/// \returns one trend a hub, in their order; `InvalidInput` naming "stops" for fewer than two stops or
///          another number of hubs, else as `hubsAtStop`.
[[nodiscard]] Result<std::vector<HubTrend>> hubTrends(std::span<const HubStop> stops);

} // namespace snugwalk
