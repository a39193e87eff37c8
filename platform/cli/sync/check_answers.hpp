// SPDX-License-Identifier: Apache-2.0
// check --store and --export.
#pragma once

#include "cli/session.hpp"

namespace snugwalk::cli {

/// The first twenty faults in one error, with how many there are.
[[nodiscard]] Error foundFaults(const std::vector<std::string> &faults, const std::string &where,
                                const std::string &act);

/// Every file of this logbook's rigs at a store against what it should be.
[[nodiscard]] Result<Answer> checkedStore(Session &session, const std::string &name);

[[nodiscard]] Result<Answer> checkedExport(const std::string &file);

} // namespace snugwalk::cli
