// SPDX-License-Identifier: Apache-2.0
// Settling a conflict by whole versions, as a person chooses: this one, not that.
#pragma once

#include "logbook/conflicts.hpp"

namespace snugwalk {

struct KeptVersion {
    Value::Map settled;            ///< contested fields and what stands there now
    std::vector<std::string> gone; ///< fields that only the others had written
    std::vector<std::string> left; ///< contested fields in which none of the kept versions stands
};

/// In every contested field the value of the version kept; what the versions not kept wrote alone beside it
/// (the reason of a *could not look* that became a pass) is taken away. All of it stays in the log. \param
/// kept entries of `conflictsOf`; \returns `NotFound` when one of them is no version there any more,
/// `InvalidInput` when two of them contend for one field.
[[nodiscard]] Result<KeptVersion> keepVersion(Logbook &book, const Id &entity,
                                              const std::vector<EntryId> &kept, const Doer &doer);

} // namespace snugwalk
