// SPDX-License-Identifier: Apache-2.0
// Entries of one logbook carried into another, as a sync will do it.
#pragma once

#include <vector>

#include "logbook/logbook.hpp"
#include "logbook/projection.hpp"

namespace snugwalk::test {

/// Every entry of the logbook's own stream, in order.
[[nodiscard]] std::vector<StoredEntry> ownEntries(Logbook &book);

/// Stores entries of `from` that are not there yet and projects them, in the order given, in one transaction.
void receive(Logbook &book, Logbook &from, const std::vector<StoredEntry> &entries);

} // namespace snugwalk::test
