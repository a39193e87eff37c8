// SPDX-License-Identifier: Apache-2.0
// The one projected table: a row a thing, its fields as a document, with what queries sort by.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/id.hpp"
#include "base/value.hpp"
#include "logbook/sqlite.hpp"

namespace snugwalk {

struct Thing {
    Id id;
    Value doc;
};

/// A field of a thing with the value that is shown, as encoded.
struct ShownField {
    std::string_view field;
    std::string_view value;
};

/// Writes rows of things; holds its statements. Call within a transaction, which it must not outlive.
class ThingWriter {
public:
    explicit ThingWriter(sqlite::Connection &db) : m_db(db) {}
    /// Writes the row of an entity, or removes it when no field is left. Puts the fields in their order.
    [[nodiscard]] Status put(const Id &id, std::string_view type, std::vector<ShownField> &fields);

private:
    [[nodiscard]] Status remove(const Id &id);
    sqlite::Connection &m_db;
    std::optional<sqlite::Statement> m_put;
};

/// All things of a type, oldest first; of one rig when `rig` is not null.
[[nodiscard]] Result<std::vector<Thing>> thingsOfRig(sqlite::Connection &db, std::string_view type,
                                                     const Id &rig);
/// All things of a type that belong to `parent`: marks of a walk, looks and photos of a finding.
[[nodiscard]] Result<std::vector<Thing>> thingsOfParent(sqlite::Connection &db, std::string_view type,
                                                        const Id &parent);
/// The same walk and point give the same id on every device, so that two marks of one point meet.
[[nodiscard]] Id markId(const Id &walk, std::string_view point);
/// Marks of one point on every walk of a rig, walk by walk, oldest first.
[[nodiscard]] Result<std::vector<Thing>> marksOfPoint(sqlite::Connection &db, const Id &rig,
                                                      std::string_view point);
/// `Conflict` for a finished walk, `NotFound` for one that is not there. Ask within the act: the caller's
/// copy may be from before another process finished it.
[[nodiscard]] Status refuseFinished(sqlite::Connection &db, const Id &walk);
/// `NotFound` when there is none of that type.
[[nodiscard]] Result<Thing> thing(sqlite::Connection &db, std::string_view type, const Id &id);
/// The one thing whose id starts with `prefix` (hexadecimal, 4 digits at least).
[[nodiscard]] Result<Thing> thingByPrefix(sqlite::Connection &db, std::string_view type,
                                          std::string_view prefix);

} // namespace snugwalk
