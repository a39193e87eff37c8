// SPDX-License-Identifier: Apache-2.0
// What moved a date and by how much, in words.
#pragma once

#include "due/band.hpp"
#include "due/shift.hpp"
#include "voice.hpp"

namespace snugwalk {

/// Days as months with one decimal: "1.3 months". A month is a twelfth of 365.25 days.
[[nodiscard]] QString monthsText(const Voice &voice, double days);
/// "1.3 months sooner", "0.4 months later".
[[nodiscard]] QString movedText(const Voice &voice, double days);
/// Whether it shows at all: what rounds to 0.0 months is told as nothing.
[[nodiscard]] bool isMoved(double days);
/// "sunlight", "shaking on the road", "your own distance".
[[nodiscard]] QString causeText(const Voice &voice, const std::string &cause);
/// Days from the catalogue's date to the likely one: the sum of the parts.
[[nodiscard]] double daysMoved(const DueShift &shift);
/// One sentence that names the two causes that moved it most, with their months: the command line's own.
/// Without a decomposition it tells what else set the date.
[[nodiscard]] QString shiftSentence(const Voice &voice, const DueBand &band,
                                    const std::optional<DueShift> &shift);
/// The same for a row: "1.3 months sooner: sunlight, salt"; "" where nothing moved it.
[[nodiscard]] QString shiftShort(const Voice &voice, const DueShift &shift);
/// "The 120 days since then aged it like 182."
[[nodiscard]] QString agedSentence(const Voice &voice, const DueShift &shift);

} // namespace snugwalk
