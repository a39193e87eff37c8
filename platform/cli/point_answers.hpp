// SPDX-License-Identifier: Apache-2.0
// One point of the catalogue in full, as JSON and in words.
#pragma once

#include "cli/session.hpp"

namespace snugwalk::cli {

/// Every member of the point, its words and its sources.
[[nodiscard]] Value pointValue(const Point &point, const Catalogue &catalogue, const Texts &texts);
[[nodiscard]] std::string pointWords(const Point &point, const Session &session, const Texts &texts);
/// "every 6 months or 8,000 km"; the events that make it due behind it.
[[nodiscard]] std::string intervalWords(const Point &point, const Texts &texts, UnitSystem units);

} // namespace snugwalk::cli
