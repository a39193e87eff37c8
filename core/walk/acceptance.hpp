// SPDX-License-Identifier: Apache-2.0
// One person's own decision to move once although one point could not be looked at.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/id.hpp"
#include "base/time.hpp"

namespace snugwalk {

/// Only for *could not look*: one point, one reason, one journey. Never for a found hold.
struct Acceptance {
    Id id;
    Id rig;
    Id walk; ///< on which the point could not be looked at
    std::string point;
    std::string reason;  ///< because …
    std::string knowing; ///< what may follow
    std::string by;
    LocalTime at;
    friend bool operator==(const Acceptance &, const Acceptance &) = default;
};

/// Who does something. Only an owner accepts.
enum class Role { Owner, Helper, Technician, Renter, Viewer };
[[nodiscard]] std::string_view slug(Role role);
[[nodiscard]] std::optional<Role> parseRole(std::string_view slug);

} // namespace snugwalk
