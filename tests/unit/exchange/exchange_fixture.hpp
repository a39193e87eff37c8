// SPDX-License-Identifier: Apache-2.0
// A logbook with a bit of everything, and the projection in words that do not depend on row numbers.
#pragma once

#include <string>
#include <vector>

#include "support/actions.hpp"

namespace snugwalk::test {

/// A walk with a pass, a finding, a look again, an undo, a mark taken back, and two photos on the disk.
void fillWithEverything(Walker &walker);

/// Adds a small picture to the logbook and its folder; \returns its hash.
Hash addPicture(Walker &walker, int shade);

/// Every row of the projection with streams by name: two logbooks with the same text answer every question
/// alike. Row numbers of streams are left out, since each file counts them in its own order.
[[nodiscard]] std::string portableProjection(Logbook &book);

/// Every entry's stream, number, bytes and hash, in order.
[[nodiscard]] std::string portableLog(Logbook &book);

} // namespace snugwalk::test
