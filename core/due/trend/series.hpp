// SPDX-License-Identifier: Apache-2.0
// Readings of one thing over time, and when that thing was replaced by a new one.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

/// Something new was put in: `place` is empty when it was not said where, so everywhere.
struct Replacement {
    Instant at{};
    std::string point;
    std::string place;
};

/// Mends with the action replace, by their findings' points and places and by the points they name;
/// oldest first.
[[nodiscard]] std::vector<Replacement> replacementsOf(const RigHistory &history);

/// True when it renews what is read at `point` and `place`. A tire replaced renews every reading of
/// tires there: tread, wear pattern, cracks, bulges and age go with it.
[[nodiscard]] bool renews(const Replacement &replacement, std::string_view point, std::string_view place);

/// The last one that renews it by `when`, or null.
[[nodiscard]] const Replacement *lastReplacement(const std::vector<Replacement> &all, std::string_view point,
                                                 std::string_view place, Instant when);

/// Happenings that a tire was changed, without saying which: a rise of tread between two looks is then
/// no question.
[[nodiscard]] bool tireChangedBetween(const RigHistory &history, std::string_view point, Instant from,
                                      Instant to);

/// What only wears and never grows back: a length with a limit on one side. Common practice, no source.
[[nodiscard]] bool isWear(const ReadingSpec &spec);

/// A wear reading that got better by more than three standard uncertainties of the difference: without a
/// replacement somebody has to be asked.
[[nodiscard]] bool isRise(const ReadingSpec &spec, double thenSi, double nowSi);

} // namespace snugwalk
