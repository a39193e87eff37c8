// SPDX-License-Identifier: Apache-2.0
// Two rigs as trees of values, walked side by side.
#include "compare/rig_changes.hpp"

#include <algorithm>
#include <set>

#include "rig/rig_value.hpp"

namespace snugwalk {
namespace {

const std::set<std::string, std::less<>> apart = {"name", "fittings", "openings", "annual_distance"};

void addFittings(const Rig &then, const Rig &now, std::vector<RigChange> &out)
{
    std::set<std::string> all = then.fittings;
    all.insert(now.fittings.begin(), now.fittings.end());
    for (const std::string &fitting : all) {
        const bool before = then.fittings.count(fitting) > 0;
        if (before != (now.fittings.count(fitting) > 0))
            out.push_back({before ? RigChangeKind::Removed : RigChangeKind::Added, "fitting", fitting,
                           Value(before), Value(!before)});
    }
}

// By name; a second of the same name is told apart by a number.
std::map<std::string, Value> openingsOf(const Rig &rig)
{
    std::map<std::string, Value> out;
    const Value whole = toValue(rig);
    for (const Value &opening : whole["openings"].list()) {
        std::string name = opening["name"].asString().value_or("");
        for (int i = 2; out.count(name) > 0; ++i)
            name = opening["name"].asString().value_or("") + " (" + std::to_string(i) + ")";
        out[name] = opening;
    }
    return out;
}

void addOpenings(const Rig &then, const Rig &now, std::vector<RigChange> &out)
{
    const auto before = openingsOf(then);
    const auto after = openingsOf(now);
    for (const auto &[name, opening] : before) {
        const auto found = after.find(name);
        if (found == after.end())
            out.push_back({RigChangeKind::Removed, "opening", name, opening, Value()});
        else if (found->second != opening)
            out.push_back({RigChangeKind::Changed, "opening", name, opening, found->second});
    }
    for (const auto &[name, opening] : after) {
        if (before.count(name) == 0)
            out.push_back({RigChangeKind::Added, "opening", name, Value(), opening});
    }
}

bool isQuantity(const Value &v) { return v.map().size() == 2 && v.map().count("unit") > 0; }

void addMembers(const Value &then, const Value &now, const std::string &path, std::vector<RigChange> &out)
{
    std::set<std::string> keys;
    for (const Value *side : {&then, &now}) {
        for (const auto &[key, value] : side->map())
            keys.insert(key);
    }
    for (const std::string &key : keys) {
        const Value &before = then[key];
        const Value &after = now[key];
        if (before == after || (path.empty() && apart.count(key) > 0))
            continue;
        const bool nested = before.isMap() && after.isMap() && !isQuantity(before) && !isQuantity(after);
        if (nested) {
            addMembers(before, after, path + key + ".", out);
            continue;
        }
        const auto kind = before.isNull()  ? RigChangeKind::Added
                          : after.isNull() ? RigChangeKind::Removed
                                           : RigChangeKind::Changed;
        out.push_back({kind, path + key, {}, before, after});
    }
}

} // namespace

std::string_view slug(RigChangeKind kind)
{
    switch (kind) {
    case RigChangeKind::Added:
        return "added";
    case RigChangeKind::Removed:
        return "removed";
    case RigChangeKind::Changed:
        break;
    }
    return "changed";
}

std::vector<RigChange> rigChanges(const Rig &then, const Rig &now)
{
    std::vector<RigChange> out;
    if (then == now) // as a rule, and quick
        return out;
    addFittings(then, now, out);
    addOpenings(then, now, out);
    addMembers(toValue(then), toValue(now), {}, out);
    return out;
}

const Rig &rigAsOf(const RigHistory &history, Instant when)
{
    const RigVersion *best = nullptr;
    for (const RigVersion &version : history.rigs) {
        const bool by = version.from.instant <= when;
        const bool bestBy = best != nullptr && best->from.instant <= when;
        const bool later = best != nullptr && version.from.instant > best->from.instant;
        if (best == nullptr || (by && (!bestBy || later)) || (!by && !bestBy && !later))
            best = &version;
    }
    return best == nullptr ? history.rig : best->rig;
}

} // namespace snugwalk
