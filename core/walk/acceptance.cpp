// SPDX-License-Identifier: Apache-2.0
// Names of roles.
#include "walk/acceptance.hpp"

#include <array>

namespace snugwalk {
namespace {

constexpr std::array<std::string_view, 5> names = {"owner", "helper", "technician", "renter", "viewer"};

} // namespace

std::string_view slug(Role role) { return names[static_cast<std::size_t>(role)]; }

std::optional<Role> parseRole(std::string_view slug)
{
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i] == slug)
            return static_cast<Role>(i);
    }
    return std::nullopt;
}

} // namespace snugwalk
