// SPDX-License-Identifier: Apache-2.0
// A due band in words: its dates, what it rests on, how its point aged.
#pragma once

#include <string>

#include "catalogue/texts.hpp"
#include "due/band.hpp"
#include "due/shift.hpp"
#include "due/usage.hpp"

namespace snugwalk {

/// "early 2027-01-04, likely 2027-03-12, late 2027-07-30", or that it is looked at each move.
[[nodiscard]] std::string bandWords(const DueBand &band, const Texts &texts);
/// "The 61 days since it was last looked at or mended aged it like 94."
[[nodiscard]] std::string agedWords(const DueShift &shift, const Texts &texts);
/// "about 12,000 km a year, by the seasons of its own log".
[[nodiscard]] std::string usageWords(const UsageForecast &usage, const Texts &texts, UnitSystem units);
/// A note of the weather, such as `no_climate`, as a sentence.
[[nodiscard]] std::string weatherNoteWords(const std::string &note, const Texts &texts);

} // namespace snugwalk
