// SPDX-License-Identifier: Apache-2.0
// Roles by type of entry; the entry alone decides, so that every device decides alike.
#include "sync/roles.hpp"

#include <algorithm>
#include <array>

namespace snugwalk {
namespace {

constexpr std::array slugs = {"owner", "helper", "technician", "viewer"};
// an owner's own decisions
constexpr std::array owners = {"acceptance", "own_point", "hidden_point", "own_interval"};

bool isOwners(const std::string &type)
{
    return std::find(owners.begin(), owners.end(), type) != owners.end();
}

const Value &fieldOf(const Entry &entry, const char *field)
{
    static const Value none;
    const auto found = entry.fields.find(field);
    return found == entry.fields.end() ? none : found->second;
}

bool isUncertified(const Entry &entry)
{
    return entry.type == "mend" && fieldOf(entry, "licensed").asBool().value_or(false) &&
           fieldOf(entry, "certificate").asString().value_or("").empty();
}

} // namespace

std::string_view slugOf(SyncRole role) { return slugs.at(static_cast<std::size_t>(role)); }

std::optional<SyncRole> syncRoleOf(std::string_view slug)
{
    for (std::size_t i = 0; i < slugs.size(); ++i) {
        if (slugs.at(i) == slug)
            return static_cast<SyncRole>(i);
    }
    return std::nullopt;
}

std::optional<std::string> outOfRole(SyncRole role, const Id &space, const Entry &entry)
{
    const auto rig = Id::parse(fieldOf(entry, "rig").asString().value_or(""));
    if ((rig && *rig != space) || (entry.type == "rig" && entry.entity != space))
        return "it belongs to another rig";
    if (role == SyncRole::Owner)
        return std::nullopt;
    if (role == SyncRole::Viewer)
        return "a viewer writes nothing";
    if (isOwners(entry.type))
        return "only an owner decides this";
    if (role == SyncRole::Technician && entry.type == "rig")
        return "a technician does not change the rig";
    if (role == SyncRole::Technician && isUncertified(entry))
        return "a mend of what is licensed needs a certificate number";
    return std::nullopt;
}

} // namespace snugwalk
