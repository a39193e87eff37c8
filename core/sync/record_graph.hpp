// SPDX-License-Identifier: Apache-2.0
// Which control record knew of which. Records may come from a hostile store by the hundred thousand: nothing
// here calls itself, and no question walks more than the records between its two.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "sync/control.hpp"

namespace snugwalk {

/// Records in the order that counts: by the longest way back among those known, then by hash. A record's past
/// has lower places. A circle cannot be made, since hashes name the past; records of one would be left out.
class RecordGraph {
public:
    /// \param records outlive the graph and stay where they are; one that comes twice counts once
    explicit RecordGraph(const std::vector<ControlRecord> &records);

    [[nodiscard]] std::size_t size() const { return m_order.size(); }
    [[nodiscard]] const ControlRecord &at(std::size_t place) const { return *m_order[place]; }
    [[nodiscard]] std::optional<std::size_t> placeOf(const Hash &hash) const;

    /// Whether the record at `later` had seen the one at `earlier`, itself or through others.
    [[nodiscard]] bool knows(std::size_t later, std::size_t earlier);

    /// Whether `place` is `last` or comes before it on the chain of `prev` that ends there.
    [[nodiscard]] bool leadsTo(std::size_t place, std::size_t last) const;

    /// Records and links looked at so far: what a test bounds.
    [[nodiscard]] std::uint64_t steps() const { return m_steps; }

private:
    using Places = std::vector<std::uint32_t>;

    void orderByDepth(const std::vector<const ControlRecord *> &sorted);
    void numberChains();

    std::vector<const ControlRecord *> m_order;
    std::vector<std::pair<Hash, std::uint32_t>> m_byHash;
    std::vector<Places> m_seen; ///< of each place, those it names that are known
    /// Walking all chains from their first record on: when each was entered and left.
    std::vector<std::pair<std::uint32_t, std::uint32_t>> m_span;
    Places m_visited; ///< by which question, so that nothing is cleared between two
    std::uint32_t m_question = 0;
    std::uint64_t m_steps = 0;
};

} // namespace snugwalk
