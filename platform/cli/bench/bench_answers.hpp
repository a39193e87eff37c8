// SPDX-License-Identifier: Apache-2.0
// An answer of the bench as JSON and as lines for people.
#pragma once

#include <string>

#include "base/units.hpp"
#include "base/value.hpp"
#include "bench/ask/question.hpp"
#include "catalogue/texts.hpp"

namespace snugwalk::cli {

/// The first figure's members at the top, then `figures` by name, `understood`, `cautions` and what the
/// question adds of its own.
[[nodiscard]] Value benchJson(const BenchQuestion &question, const BenchAnswer &answer);

/// What was understood, each figure with its range, basis and source, warnings, cautions.
[[nodiscard]] std::string benchWords(const BenchQuestion &question, const BenchAnswer &answer,
                                     const Texts &texts, UnitSystem units);

} // namespace snugwalk::cli
