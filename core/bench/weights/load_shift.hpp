// SPDX-License-Identifier: Apache-2.0
// What a load does to tongue and axles where it is put, and what a packing list will weigh.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"
#include "bench/weights/weighing.hpp"

namespace snugwalk {

/// Places are lengths behind the coupler's ball, rear positive; one ahead of the ball is below zero.
struct LoadShift {
    Mass mass;
    std::optional<Length> from = {}; ///< nothing: it was not aboard
    std::optional<Length> to = {};   ///< nothing: it is taken out
    Length axle;                     ///< middle of the axle group
    std::optional<Mass> tongue = {}; ///< before
    std::optional<Mass> gross = {};  ///< of the trailer, before
    TongueBand band = travelTrailerBand;
};

struct Shifted {
    Estimate tongueChange; ///< kg
    Estimate axleChange;   ///< kg
    std::optional<Estimate> tongueAfter;
    std::optional<Estimate> shareAfter;
};

/// Each load at x puts m·x/xa on the axles and m·(1 - x/xa) on the tongue; a move is one taken out and one
/// put in, so that the tongue changes by m (from - to)/xa.
///
/// \returns warnings on `tongueChange`: `tongue_under_least`, `tongue_under_band` (it may sway),
///          `tongue_over_band`; `InvalidInput` naming "to" when neither place is given, "tongue" when it is
///          not below the gross weight or the move leaves no trailer; `OutOfRange` naming "mass" (0 to 10 t),
///          "axle" (0.5 to 20 m), "from", "to" (-5 to 30 m).
/// Source:   statics; a rigid body, spring bars off; range ±2 % (common practice)
/// Tests:    tests/published/bench/weights/tst_load_shift.cpp
[[nodiscard]] Result<Shifted> shiftLoad(const LoadShift &shift);

struct Packed {
    Mass mass;
    Length place; ///< behind the ball
};

struct Forecast {
    Estimate gross;  ///< kg
    Estimate axles;  ///< kg
    Estimate tongue; ///< kg
    Estimate share;  ///< of the gross weight
};

/// W = Σ m, M = Σ m x, axles M / xa, tongue W - M / xa. What an empty trailer weighed goes in as its tongue
/// at 0 and its axles at `axle`.
///
/// \returns warnings on `tongue` as `weigh`, and `forecast` always: weigh before the road; `InvalidInput`
///          naming "items" for none or over 500, or when they lift the tongue; `OutOfRange` as `shiftLoad`.
/// Range:    ±5 % of each mass and 0.1 m of each place, in quadrature (common practice)
/// Tests:    tests/published/bench/weights/tst_load_shift.cpp
[[nodiscard]] Result<Forecast> forecastWeights(std::span<const Packed> items, Length axle,
                                               const TongueBand &band);

/// What fills a tank.
enum class Liquid { Water, Propane, Gasoline, Diesel };
[[nodiscard]] std::optional<Liquid> parseLiquid(std::string_view slug);

/// \returns 8.34, 4.2, 6.1 or 7.1 lb a US gallon (common practice) with ±2 %; `OutOfRange` naming "volume"
///          outside 0 to 5,000 L.
/// Tests:    tests/published/bench/weights/tst_load_shift.cpp
[[nodiscard]] Result<Estimate> liquidMass(Liquid liquid, Volume volume);

} // namespace snugwalk
