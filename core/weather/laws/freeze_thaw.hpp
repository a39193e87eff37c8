// SPDX-License-Identifier: Apache-2.0
// How often water in a joint froze and thawed.
#pragma once

#include <optional>
#include <span>

#include "base/quantity.hpp"
#include "base/result.hpp"
#include "base/units.hpp"

namespace snugwalk {

/// Lowest and highest of a day.
struct DayRange {
    Temperature low;
    Temperature high;
    friend bool operator==(const DayRange &, const DayRange &) = default;
};

/// A joint counts as frozen below the first and thawed above the second; between, it stays as it was.
struct FrostLimits {
    Temperature frozen = celsius(-1.0);
    Temperature thawed = celsius(1.0);
};

struct FreezeThaw {
    int cycles = 0;    ///< frozen, then thawed, each day's low before its high
    int highFirst = 0; ///< the same with each day's high before its low
    int days = 0;      ///< with a reading
    int missing = 0;   ///< without: each breaks the chain, for nobody knows what the joint was then
    int swapped = 0;   ///< low above high: taken the other way round
};

/// Frost in a joint as days go by.
class FreezeThawCounter {
public:
    explicit FreezeThawCounter(FrostLimits limits = {}) : m_limits(limits) {}
    /// Takes the next day, its low before its high unless told; \returns the cycles that ended in it.
    int add(const DayRange &day, bool highFirst = false);
    /// A day that nobody read.
    void forget() { m_joint = Joint::Unknown; }

private:
    enum class Joint { Unknown, Frozen, Thawed };
    int take(Temperature t);
    FrostLimits m_limits;
    Joint m_joint = Joint::Unknown;
};

/// Counts through the days in order, each day's low before its high.
///
/// \returns `InvalidInput` when the limits are the wrong way round.
/// Accuracy: the true order within a day is unknown: at most one cycle too many or few each cold spell, for
///           which `highFirst` is counted too
/// Tests:    tests/published/weather/tst_freeze_thaw.cpp
[[nodiscard]] Result<FreezeThaw> freezeThaw(std::span<const std::optional<DayRange>> days,
                                            FrostLimits limits = {});

/// Day-to-day scatter of a day's temperature about its monthly normal.
inline constexpr TemperatureDifference dayScatter = TemperatureDifference::fromSi(4.5);

/// Cycles to expect of a day whose normals are known: the chance that the day, shifted up or down by its
/// scatter, both freezes and thaws: Φ((frozen - low)/σ) - Φ((thawed - high)/σ), at least 0.
///
/// Basis:    common practice; σ = 4.5 K was fitted to days with frost a year at 50 capitals (R, `state.x77`)
/// Accuracy: a class of frost, not a count: from the months' own means it gives 1.34 (New York) and 1.545
///           (Seattle) times the cycles counted in 2012 to 2015, see tests/reference/weather/frost_days.py
[[nodiscard]] double expectedFreezeThaw(DayRange normal, FrostLimits limits = {},
                                        TemperatureDifference scatter = dayScatter);

} // namespace snugwalk
