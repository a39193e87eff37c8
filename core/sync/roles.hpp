// SPDX-License-Identifier: Apache-2.0
// What each role may append. Asked when entries are merged, not only in what people see.
#pragma once

#include <optional>
#include <string>

#include "logbook/entry.hpp"

namespace snugwalk {

/// Who belongs to a rig's logbook. Technician access until a date is a hint to the app; what counts is the
/// revocation.
enum class SyncRole { Owner, Helper, Technician, Viewer };
[[nodiscard]] std::string_view slugOf(SyncRole role);
[[nodiscard]] std::optional<SyncRole> syncRoleOf(std::string_view slug);

/// Why this role may not write this entry into the logbook of `space`; nothing when it may.
/// Nobody: entries of another rig. Helper: no acceptance, no own points. Technician: the same, and a mend of
/// what is licensed only with a certificate number; nothing of the rig itself. Viewer: nothing.
[[nodiscard]] std::optional<std::string> outOfRole(SyncRole role, const Id &space, const Entry &entry);

} // namespace snugwalk
