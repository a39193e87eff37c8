// SPDX-License-Identifier: Apache-2.0
// What a mend used up, as people type it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "walk/walk.hpp"

namespace snugwalk {

/// "lap sealant, 2 cartridges", "3 x rivet 3/16 in", "2 cartridges of lap sealant", "hub seal". Without a
/// number it is one piece; a comma that no number and unit follow belongs to the name.
/// \returns `InvalidInput` for no name, `OutOfRange` for a number not above 0 and at most 100,000 or a
///          name over 200 bytes; the text stands in `where`.
[[nodiscard]] Result<MendPart> parsePart(std::string_view typed);

/// Several in one line: "lap sealant, 2 cartridges, primer; 3 x rivet" is three. They end at a semicolon, a
/// new line, or a comma and a blank that no amount follows. Errors as `parsePart`; nothing is no part.
[[nodiscard]] Result<std::vector<MendPart>> parseParts(std::string_view typed);

/// "lap sealant, 2 cartridges"; "rivet 3/16 in, 3"; "hub seal" alone for one piece.
[[nodiscard]] std::string partText(const MendPart &part);

/// "2", "0.5", "1.25": as few digits as say it, three after the point at most.
[[nodiscard]] std::string amountText(double amount);

} // namespace snugwalk
