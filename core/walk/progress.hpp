// SPDX-License-Identifier: Apache-2.0
// How far a walk has come: counts, and the line to go on at.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "walk/walk.hpp"

namespace snugwalk {

struct Counts {
    int points = 0;
    int pass = 0;
    int attention = 0;
    int notFitted = 0;
    int couldNotLook = 0;
    int notLooked = 0;
    friend bool operator==(const Counts &, const Counts &) = default;
};

/// Counts over every point of the tape; a point without a mark is not looked at, never a pass.
[[nodiscard]] Counts countMarks(const Walk &walk, const std::vector<Mark> &marks);

/// Index of the first tape line with a point that has no mark yet; nothing when all have one.
[[nodiscard]] std::optional<std::size_t> nextLine(const Walk &walk, const std::vector<Mark> &marks);

/// The state of a line: that of its points when they agree, else the one that needs most attention,
/// and not looked at while any of its points is.
[[nodiscard]] MarkState lineState(const TapeLine &line, const std::vector<Mark> &marks);

/// Lines with a point that has no mark yet.
[[nodiscard]] int linesLeft(const Walk &walk, const std::vector<Mark> &marks);

[[nodiscard]] const Mark *findMark(const std::vector<Mark> &marks, std::string_view point);

} // namespace snugwalk
