// SPDX-License-Identifier: Apache-2.0
// What stands beside a date: its interval, the last looks, and where the catalogue has it from.
#pragma once

#include <QStringList>
#include <QVariantList>

#include "snapshot.hpp"

namespace snugwalk {

/// [{label, value}]: interval, rule that fires, basis, when to speak up.
[[nodiscard]] QVariantList whyFacts(const Shown &shown, const Catalogue &catalogue, const DueBand &band);
/// [{date, text}], newest first, marks and mends of the point.
[[nodiscard]] QVariantList lastLooks(const Shown &shown, const std::string &point);
/// Titles of the point's sources.
[[nodiscard]] QStringList sourceTitles(const Catalogue &catalogue, const std::string &point);
/// Whether a reading of the point was ever taken.
[[nodiscard]] bool hasReadings(const RigHistory &history, const std::string &point);

} // namespace snugwalk
