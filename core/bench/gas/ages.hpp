// SPDX-License-Identifier: Apache-2.0
// When a cylinder, an alarm or an extinguisher is next due, from the dates stamped on it.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "base/estimate.hpp"
#include "base/result.hpp"
#include "base/time.hpp"

namespace snugwalk {

/// What was done to a cylinder last, as its stamp says: nothing since it was made, seen from outside (E),
/// proof pressure (S), or volume by water jacket (no letter).
enum class CylinderTest { Made, Seen, Proof, Expansion };
[[nodiscard]] std::optional<CylinderTest> parseCylinderTest(std::string_view slug);

/// A date that something is due by, with what is left until then.
struct DueBy {
    CivilDate due;
    Estimate left; ///< s from the day asked to `due`, below zero when past; warns `overdue`
    Estimate age;  ///< s since the stamp
};

/// Due 10 years after it was made or tested by volume, 7 after a proof pressure test, 5 after a look from
/// outside. Sources differ, and the earliest stands; `left.high` holds the latest that one of them gives:
/// 12, 12, 10, 5.
///
/// \returns `OutOfRange` naming stamp or on: before 1940, or the stamp after the day asked.
/// Warns:    `overdue`; `due_soon` within 90 days; `sources_differ` between the earliest and the latest.
/// Source:   [PHMSA-CYLINDERS] 5 or 10 years; 12 and 7 as training pages restate [49-CFR-180.209]
/// Tests:    tests/published/bench/gas/tst_ages.cpp
[[nodiscard]] Result<DueBy> cylinderDue(CivilDate stamp, CylinderTest test, CivilDate on);

/// A kind of thing with a life from its date.
struct AgedKind {
    std::string_view slug;
    int months;       ///< the stricter end: what stands
    int monthsLatest; ///< the other end where practice differs
    std::string_view basis;
    std::string_view source;
};
/// Smoke, carbon monoxide and gas alarm, extinguisher by its examination, test and end, hose, regulator,
/// breakaway and house batteries, water filter.
[[nodiscard]] std::span<const AgedKind> agedKinds();
[[nodiscard]] const AgedKind *findAgedKind(std::string_view slug);

struct Aged {
    std::string_view kind;
    CivilDate made;
    std::optional<CivilDate> makerEnd; ///< an end date printed on it goes before ours
    CivilDate on;
};

/// \returns errors of dates as `cylinderDue` (made, end, on); `NotFound` naming item. Warns as `cylinderDue`,
///          and `maker_end_later` when the printed end is beyond what such things commonly get.
/// Source:   by kind: alarms [NFPA-72], extinguishers [NFPA-10], both as restated; the others common practice
[[nodiscard]] Result<DueBy> agedDue(const Aged &aged);

} // namespace snugwalk
