// SPDX-License-Identifier: Apache-2.0
// When a tire was made, from the date code on its sidewall, and how old it is.
#pragma once

#include <optional>
#include <string_view>

#include "base/estimate.hpp"
#include "base/result.hpp"
#include "base/time.hpp"

namespace snugwalk {

struct TireMade {
    CivilDate date{};               ///< first day of the week that the code names
    bool beforeTwoThousand = false; ///< a code of three digits: which ten years, nobody can tell
};

/// The last digits of a tire's code: week and year, "2319" is week 23 of 2019; spaces and what stands before
/// are left out. Week 1 is the first that begins on a Sunday of that year.
///
/// \returns `InvalidInput` naming `code` for no such code; `OutOfRange` for a week outside 1 to 53.
/// Source:  [49CFR574] 574.5, four digits from 2000 on
/// Accuracy: a week either way, for weeks are counted otherwise too
/// Tests:   tests/published/bench/tires/tst_tire_age.cpp
[[nodiscard]] Result<TireMade> tireMade(std::string_view code);

/// Years from the making to `on`, with a week either way; of a code with three digits at least those since
/// 1999. \returns unit "year"; `OutOfRange` naming `code` when the tire was made after `on`. Warnings:
/// `tire_review` from 6 years on, `tire_retire` from 10 on (common practice), `before_2000`.
[[nodiscard]] Result<Estimate> tireAge(const TireMade &made, CivilDate on);

} // namespace snugwalk
