// SPDX-License-Identifier: Apache-2.0
// Load and inflation: the least cold pressure that carries a load, from the maker's rows or by the law.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

enum class TireClass { LightTruck, SpecialTrailer, Passenger };
/// "lt", "st", "p".
[[nodiscard]] std::string_view slug(TireClass kind);
[[nodiscard]] std::optional<TireClass> parseTireClass(std::string_view slug);

/// One row of a load and inflation table, for one tire.
struct LoadRow {
    Pressure pressure;
    Mass load;
};

struct TireRating {
    TireClass kind = TireClass::LightTruck;
    Mass maxLoad;               ///< of one tire, from its sidewall or its load index
    Pressure maxPressure;       ///< cold, at that load
    std::vector<LoadRow> table; ///< the maker's or a published table, lowest first; may be empty
};

/// What passenger tires are divided by on a trailer, before anything else.
inline constexpr double passengerOnTrailer = 1.10;

/// The exponent n of L = Lmax (P / Pmax)^n: 0.70 light truck, 0.585 special trailer, 0.50 passenger.
///
/// Source:   0.70 fitted to the published rows in tests/published/bench (each within 1 %); 0.585 and 0.50
/// [TRA],
///           from memory
[[nodiscard]] double loadExponent(TireClass kind);

/// The least cold pressure that carries `load`, and no setting: heat, scrub and the placard ask for more.
///
/// Between two rows of the table the law with the exponent of those two; without a table
/// P = Pmax (k L / Lmax)^(1 / n), with k = 1.10 for passenger tires and 1 for others.
/// \returns gauge pressure in Pa. Low and high: with a table the row below and above; by the law 5 %
///          (common practice), for passenger tires up to what n = 0.585 asks.
///          `OutOfRange` naming `load` when it is over the tire's rating (`k L > Lmax`).
/// Warnings: `passenger_on_trailer`; `below_table` under the lowest row, or 35 psi (26 psi for passenger
///          tires), where no table goes.
/// Accuracy: the law is within 1 % of load of the published rows
/// Tests:    tests/published/bench/tires/tst_tire_load.cpp
[[nodiscard]] Result<Estimate> leastPressure(const TireRating &tire, Mass load);

/// The load that a cold pressure carries, the inverse of `leastPressure`.
/// \returns kg; `OutOfRange` naming `pressure` when it is over the tire's maximum or not above zero.
[[nodiscard]] Result<Estimate> loadCarried(const TireRating &tire, Pressure pressure);

/// The lowest row that carries `load`; nothing without a table, or when no row carries it.
[[nodiscard]] std::optional<LoadRow> rowFor(const TireRating &tire, Mass load);

/// `InvalidInput` naming `table` unless rows rise in pressure and load, at most to the tire's rating;
/// `OutOfRange` naming `max-load` or `max-pressure` for what no such tire has.
[[nodiscard]] Status checkRating(const TireRating &tire);

/// What to set cold: the largest of placard, least pressure and table row. A special trailer tire without a
/// table runs at the placard, or at its maximum where there is none (common practice: heat and scrub).
/// \returns nothing without a placard for other tires; `InvalidInput` when the placard is over the tire's
///          maximum.
[[nodiscard]] Result<std::optional<Estimate>> pressureForLoad(const TireRating &tire, Mass load,
                                                              std::optional<Pressure> placard);

} // namespace snugwalk
