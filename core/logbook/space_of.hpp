// SPDX-License-Identifier: Apache-2.0
// Which rig's logbook an entry belongs to.
#pragma once

#include <map>

#include "logbook/entry.hpp"
#include "logbook/sqlite.hpp"

namespace snugwalk {

/// Asks the entry, then its thing, then what the thing belongs to (the walk of a mark, the finding of a
/// look), then everything ever written about the entity.
class RigFinder {
public:
    explicit RigFinder(sqlite::Connection &db) : m_db(db) {}
    /// Null when nothing tells.
    [[nodiscard]] Result<Id> rigOf(const Entry &entry);

private:
    [[nodiscard]] Result<Id> rigOfEntity(const Id &entity, int depth);
    [[nodiscard]] Result<Id> fromFields(const Value &fields, int depth);

    sqlite::Connection &m_db;
    std::map<Id, Id> m_known;
};

} // namespace snugwalk
