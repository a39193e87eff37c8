// SPDX-License-Identifier: Apache-2.0
// What a rested 12 V battery still holds, how long that lasts, and when it freezes.
#pragma once

#include <optional>
#include <string_view>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

enum class BatteryKind { Flooded, Agm, Gel, Lithium };
[[nodiscard]] std::string_view slug(BatteryKind kind);
[[nodiscard]] std::optional<BatteryKind> parseBatteryKind(std::string_view slug);

/// Share of charge at a gravity of the electrolyte, corrected to 27 °C (80 °F): 1.130 empty, 1.190 a
/// quarter, 1.220 half, 1.250 three quarters, 1.280 full; straight between.
/// Source: [TM-5-1185] table II
[[nodiscard]] double chargeAtGravity(double gravity);

/// Temperature at which electrolyte of that gravity freezes; straight between the printed rows and held
/// to the first and last of them (1.100 at -7 °C, 1.280 at -68 °C).
/// Source: [TM-5-1185] table III
[[nodiscard]] Temperature freezesAt(double gravity);

/// Share of the capacity that cold leaves: all at 25 °C, where it is rated, 0.75 at 0 °C, 0.40 at -18 °C,
/// straight between and not below 0.2. Source: [TM-10-6140] (75 % at 32 °F, 40 % at 0 °F)
[[nodiscard]] double coldShare(Temperature battery);

struct BatteryReading {
    BatteryKind kind = BatteryKind::Flooded;
    Voltage rest; ///< nothing drawn, nothing charged
    Temperature battery = Temperature::fromSi(298.15);
    Duration rested = Duration::fromSi(4 * 3600.0); ///< since the last charge or load
};

struct BatteryState {
    Estimate charge;                    ///< share, 0 to 1
    Estimate cold;                      ///< share of the capacity that this temperature leaves
    std::optional<Temperature> freezes; ///< of its electrolyte; nothing for lithium
};

/// Lead-acid: gravity V/6 - 0.845 at 25 °C, 1.2 mV a kelvin taken off first; charge by `chargeAtGravity`.
/// AGM and gel: a table of volts. Lithium iron phosphate: volts hardly move from 20 to 95 %.
///
/// The range of a flooded one reaches up to what it would be if it left the maker with 1.265 (a printed
/// table gives 12.65, 12.45, 12.24, 12.06, 11.89 V for 100, 75, 50, 25, 0 %), and 8 points either way.
///
/// \returns `OutOfRange` naming volts (8 to 16), temperature (-40 to 60 °C) or rest (0 to 1 year).
/// Warns:    `not_rested` under 4 h, which takes a further 15 points off the low end; `surface_charge`
///           above what a rested one can show; `below_empty`; `may_freeze` within 5 K of freezing;
///           `lithium_flat`; `no_charge_below_zero` for lithium below 0 °C.
/// Source:   gravity from volts [VINAL-1955], from memory; AGM, gel and lithium common practice, no source
/// Accuracy: 5 to 8 points for a flooded one, 15 for AGM and gel, 25 or worse for lithium
/// Tests:    tests/published/bench/electric/tst_battery.cpp
[[nodiscard]] Result<BatteryState> batteryState(const BatteryReading &reading);

struct Draw {
    Charge capacity; ///< as rated
    double charge;   ///< share in it now
    Current current; ///< what is drawn at rest
    BatteryKind kind = BatteryKind::Flooded;
    Temperature battery = Temperature::fromSi(293.15);
};

struct DrawTimes {
    Estimate toHalf;     ///< s, until half of its capacity is left; 0 when it has less
    Estimate halfOfWhat; ///< s, until half of what it now holds is gone: C · share / 2 / I
};

/// Days at a steady draw. The low end adds what the battery loses by itself: 5 % a month flooded, 3 %
/// AGM, gel and lithium at 20 °C, twice that for each 10 K more.
///
/// \returns `OutOfRange` naming capacity (1 to 2,000 A·h), charge, current (1 mA to 500 A) or temperature.
/// Basis:    computed; self-discharge is common practice, no source
[[nodiscard]] Result<DrawTimes> drawTimes(const Draw &draw);

} // namespace snugwalk
