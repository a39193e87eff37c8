// SPDX-License-Identifier: Apache-2.0
// --keep: a result of the bench as a reading on its point, on the walk that is under way.
#pragma once

#include <string>

#include "bench/ask/typed.hpp"
#include "cli/app.hpp"
#include "cli/session.hpp"

namespace snugwalk::cli {

struct KeepOptions {
    std::string point;
    std::string place;
};

void addKeepOptions(CLI::App &sub, const BenchQuestion &question, KeepOptions &options);

/// Adds the reading to the point's mark, which stays as it is; the answer is told what was kept.
/// \returns `NotFound` when no walk is under way, the point has no such reading, or it has no mark yet: what
/// a
///          point got is said by a person, never by a figure. `Conflict` for a mark of attention, whose
///          readings go with its finding.
[[nodiscard]] Status keepReading(Session &session, const BenchQuestion &question, const BenchAnswer &answer,
                                 const BenchTexts &texts, const KeepOptions &options, Answer &told);

} // namespace snugwalk::cli
