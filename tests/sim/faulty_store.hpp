// SPDX-License-Identifier: Apache-2.0
// A store that drops, cuts, flips, forgets and breaks off as a seed decides.
#pragma once

#include <random>

#include "sync/memory_store.hpp"

namespace snugwalk::sim {

/// Whole numbers below a limit; the generator's own numbers, which are the same on every machine.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_rng(seed) {}
    std::size_t below(std::size_t limit) { return limit == 0 ? 0 : m_rng() % limit; }
    bool oneIn(std::size_t n) { return below(n) == 0; }
    std::int64_t between(std::int64_t low, std::int64_t high)
    {
        return low + static_cast<std::int64_t>(below(static_cast<std::size_t>(high - low + 1)));
    }

private:
    std::mt19937_64 m_rng;
};

class FaultyStore final : public Store {
public:
    /// \param fault one in how many calls goes wrong; 0 for none
    /// \param dies the call after which everything fails, as when the program is killed; 0 for never
    FaultyStore(MemoryStore &store, Dice &dice, std::size_t fault, std::size_t dies)
        : m_store(store), m_dice(dice), m_fault(fault), m_dies(dies)
    {}

    Result<std::vector<StoreFile>> list(std::string_view folder) override
    {
        SNUG_TRY(goOn());
        auto files = m_store.list(folder);
        if (files && hits()) { // a list that lags behind
            const std::size_t one = m_dice.below(files->size());
            if (!files->empty())
                files->erase(files->begin() + static_cast<std::ptrdiff_t>(one));
        }
        if (files && m_fault != 0 && files->size() > 1 && m_dice.oneIn(3)) // in no order
            std::swap(files->front(), files->back());
        return files;
    }

    Result<std::string> read(std::string_view name, std::int64_t limit) override
    {
        SNUG_TRY(goOn());
        auto bytes = m_store.read(name, limit);
        if (!bytes || !hits())
            return bytes;
        switch (m_dice.below(4)) {
        case 0:
            return Error{Errc::NotFound, "gone for now", std::string(name), ""};
        case 1:
            return bytes->substr(0, m_dice.below(bytes->size()));
        case 2:
            (*bytes)[m_dice.below(bytes->size())] ^= static_cast<char>(1U << m_dice.below(8));
            return bytes;
        default:
            return Error{Errc::Network, "the line broke", std::string(name), ""};
        }
    }

    Status publish(std::string_view name, std::string_view bytes) override
    {
        SNUG_TRY(goOn());
        if (!hits())
            return m_store.publish(name, bytes);
        switch (m_dice.below(3)) {
        case 0: // a store that is not atomic: a part under the final name
            static_cast<void>(m_store.publish(name, bytes.substr(0, m_dice.below(bytes.size()))));
            return Error{Errc::Network, "the line broke", std::string(name), ""};
        case 1: // it arrived, and nobody heard of it
            static_cast<void>(m_store.publish(name, bytes));
            return Error{Errc::Network, "the answer was lost", std::string(name), ""};
        default:
            return Error{Errc::Network, "the line broke", std::string(name), ""};
        }
    }

private:
    bool hits() { return m_fault != 0 && m_dice.oneIn(m_fault); }
    Status goOn()
    {
        if (m_dies == 0 || ++m_calls < m_dies)
            return done();
        return Error{Errc::Io, "killed", "", ""};
    }

    MemoryStore &m_store;
    Dice &m_dice;
    std::size_t m_fault;
    std::size_t m_dies;
    std::size_t m_calls = 0;
};

} // namespace snugwalk::sim
