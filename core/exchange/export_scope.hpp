// SPDX-License-Identifier: Apache-2.0
// Which entries belong to one rig.
#pragma once

#include <set>
#include <vector>

#include "base/id.hpp"
#include "logbook/sqlite.hpp"

namespace snugwalk {

/// The rig's own entity and all that name it, or name something that does: walks, marks, findings, photos.
/// Something taken away belongs to where it once was.
[[nodiscard]] Result<std::set<Id>> entitiesOfRig(sqlite::Connection &db, const Id &rig);

} // namespace snugwalk
