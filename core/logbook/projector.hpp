// SPDX-License-Identifier: Apache-2.0
// Entries into the projection, thing by thing: what stands of one is read once and written once, however many
// entries touch it.
#pragma once

#include <array>
#include <optional>
#include <set>

#include "logbook/projection.hpp"
#include "logbook/thing.hpp"

namespace snugwalk {

/// Holds its statements: make one for many entries. Call within a transaction, which it must not outlive.
class Projector {
public:
    explicit Projector(sqlite::Connection &db) : m_db(db), m_things(db) {}

    /// Heads register: a value stands until an entry that names it as predecessor arrives; among values that
    /// did not know of each other the latest by (hlc, stream, seq) is shown, for marks the worst. Any order
    /// of the same entries, in any portions, ends in the same tables.
    [[nodiscard]] Status apply(const std::vector<const StoredEntry *> &entries);

private:
    struct Key {
        std::string field;
        std::int64_t stream = 0;
        std::int64_t seq = 0;
        friend auto operator<=>(const Key &, const Key &) = default;
    };
    struct Standing {
        std::int64_t hlc = 0;
        std::string value; ///< encoded
        std::string type;
        bool isStored = false;
    };
    using Standings = std::map<Key, Standing>;

    [[nodiscard]] Status prepare();
    [[nodiscard]] Status load(const Id &entity);
    [[nodiscard]] Status add(const StoredEntry &stored);
    [[nodiscard]] Status write(const Id &entity);
    [[nodiscard]] Status writeHeads(const Id &entity);
    [[nodiscard]] Status remove(sqlite::Statement &statement, const Id &entity, const Key &key);
    [[nodiscard]] Status show(const Id &entity);
    [[nodiscard]] Result<Standings::const_iterator> shownOf(Standings::const_iterator from,
                                                            Standings::const_iterator to);
    [[nodiscard]] Result<std::int64_t> rowOf(const StreamId &stream);
    [[nodiscard]] Result<StreamId> nameOf(std::int64_t row);

    sqlite::Connection &m_db;
    ThingWriter m_things;
    std::optional<sqlite::Statement> m_readHeads, m_readDead, m_dropHead, m_putDead;
    std::array<std::optional<sqlite::Statement>, 17> m_putHeads; ///< by how many rows
    std::map<StreamId, std::int64_t> m_rows;
    std::map<std::int64_t, StreamId> m_names;
    // of the thing at hand
    Standings m_heads;
    std::set<Key> m_dead;
    std::vector<Key> m_gone; ///< stored heads that are none any more
    std::vector<Key> m_freshDead;
};

} // namespace snugwalk
