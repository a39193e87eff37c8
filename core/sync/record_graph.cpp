// SPDX-License-Identifier: Apache-2.0
// Depths by taking away what waits for nothing; chains by their places in one walk over the forest of `prev`.
#include "sync/record_graph.hpp"

#include <algorithm>

namespace snugwalk {
namespace {

std::optional<std::uint32_t> find(const std::vector<std::pair<Hash, std::uint32_t>> &byHash, const Hash &hash)
{
    const auto at =
        std::lower_bound(byHash.begin(), byHash.end(), hash,
                         [](const auto &item, const Hash &wanted) { return item.first < wanted; });
    return at != byHash.end() && at->first == hash ? std::optional(at->second) : std::nullopt;
}

} // namespace

RecordGraph::RecordGraph(const std::vector<ControlRecord> &records)
{
    std::vector<const ControlRecord *> sorted;
    for (const ControlRecord &record : records)
        sorted.push_back(&record);
    std::sort(sorted.begin(), sorted.end(), [](const auto *a, const auto *b) { return a->hash < b->hash; });
    sorted.erase(std::unique(sorted.begin(), sorted.end(),
                             [](const auto *a, const auto *b) { return a->hash == b->hash; }),
                 sorted.end());
    orderByDepth(sorted);
    numberChains();
}

// `sorted` is by hash, so that a stable sort by depth leaves equals in the order of their hashes.
void RecordGraph::orderByDepth(const std::vector<const ControlRecord *> &sorted)
{
    for (std::uint32_t i = 0; i < sorted.size(); ++i)
        m_byHash.emplace_back(sorted[i]->hash, i);
    std::vector<Places> seen(sorted.size());
    std::vector<Places> seenBy(sorted.size());
    std::vector<std::size_t> waitsFor(sorted.size());
    for (std::uint32_t i = 0; i < sorted.size(); ++i) {
        for (const Hash &hash : sorted[i]->seen) {
            ++m_steps;
            if (const auto known = find(m_byHash, hash)) {
                seen[i].push_back(*known);
                seenBy[*known].push_back(i);
                ++waitsFor[i];
            }
        }
    }
    std::vector<std::uint32_t> ready;
    for (std::uint32_t i = 0; i < sorted.size(); ++i) {
        if (waitsFor[i] == 0)
            ready.push_back(i);
    }
    std::vector<std::uint32_t> depth(sorted.size(), 1);
    std::vector<std::uint32_t> order;
    while (!ready.empty()) {
        const std::uint32_t at = ready.back();
        ready.pop_back();
        order.push_back(at);
        for (const std::uint32_t next : seenBy[at]) {
            ++m_steps;
            depth[next] = std::max(depth[next], depth[at] + 1);
            if (--waitsFor[next] == 0)
                ready.push_back(next);
        }
    }
    std::sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) {
        return depth[a] != depth[b] ? depth[a] < depth[b] : a < b;
    });
    Places placeOf(sorted.size());
    for (std::uint32_t place = 0; place < order.size(); ++place)
        placeOf[order[place]] = place;
    for (const std::uint32_t i : order) {
        m_order.push_back(sorted[i]);
        for (std::uint32_t &known : seen[i])
            known = placeOf[known];
        m_seen.push_back(std::move(seen[i]));
    }
    std::erase_if(m_byHash, [&](const auto &item) { return waitsFor[item.second] != 0; });
    for (auto &[hash, place] : m_byHash)
        place = placeOf[place];
    m_visited.resize(m_order.size());
}

void RecordGraph::numberChains()
{
    m_span.resize(m_order.size());
    std::vector<Places> after(m_order.size());
    Places open;
    for (std::uint32_t place = 0; place < m_order.size(); ++place) {
        const auto before = find(m_byHash, m_order[place]->prev);
        if (before)
            after[*before].push_back(place);
        else
            open.push_back(place);
    }
    std::vector<bool> entered(m_order.size());
    std::uint32_t clock = 0;
    while (!open.empty()) {
        const std::uint32_t place = open.back();
        ++m_steps;
        if (entered[place]) {
            m_span[place].second = ++clock;
            open.pop_back();
            continue;
        }
        entered[place] = true;
        m_span[place].first = ++clock;
        open.insert(open.end(), after[place].begin(), after[place].end());
    }
}

std::optional<std::size_t> RecordGraph::placeOf(const Hash &hash) const
{
    const auto found = find(m_byHash, hash);
    return found ? std::optional<std::size_t>(*found) : std::nullopt;
}

bool RecordGraph::knows(std::size_t later, std::size_t earlier)
{
    ++m_question;
    Places open{static_cast<std::uint32_t>(later)};
    while (!open.empty()) {
        const std::uint32_t at = open.back();
        open.pop_back();
        for (const std::uint32_t known : m_seen[at]) {
            ++m_steps;
            if (known == earlier)
                return true;
            if (known > earlier && m_visited[known] != m_question) {
                m_visited[known] = m_question;
                open.push_back(known);
            }
        }
    }
    return false;
}

bool RecordGraph::leadsTo(std::size_t place, std::size_t last) const
{
    return m_span[place].first != 0 && m_span[place].first <= m_span[last].first &&
           m_span[last].second <= m_span[place].second;
}

} // namespace snugwalk
