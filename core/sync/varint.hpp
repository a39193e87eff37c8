// SPDX-License-Identifier: Apache-2.0
// Numbers of few bytes in a row, and tables whose new items need no number at all.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace snugwalk {

/// LEB128: seven bits a byte, lowest first.
inline void putVarint(std::string &out, std::uint64_t value)
{
    for (; value > 0x7f; value >>= 7U)
        out += static_cast<char>(0x80U | (value & 0x7fU));
    out += static_cast<char>(value);
}

/// Signed numbers near zero become small ones.
inline void putSigned(std::string &out, std::int64_t value)
{
    const auto bits = static_cast<std::uint64_t>(value);
    putVarint(out, (bits << 1U) ^ (value < 0 ? ~std::uint64_t{0} : 0));
}

/// Takes numbers off the front; once something is wrong it stays so. Longer forms than needed are refused.
class VarintReader {
public:
    explicit VarintReader(std::string_view bytes) : m_bytes(bytes) {}

    std::uint64_t next()
    {
        std::uint64_t value = 0;
        for (unsigned shift = 0; shift < 64 && !m_bytes.empty(); shift += 7) {
            const auto byte = static_cast<unsigned char>(m_bytes.front());
            m_bytes.remove_prefix(1);
            if (shift == 63 && byte > 1)
                break;
            value |= std::uint64_t{byte & 0x7fU} << shift;
            if (byte < 0x80) {
                m_failed = m_failed || (byte == 0 && shift > 0);
                return value;
            }
        }
        m_failed = true;
        return 0;
    }

    std::int64_t nextSigned()
    {
        const std::uint64_t value = next();
        return static_cast<std::int64_t>((value >> 1U) ^ ((value & 1U) != 0 ? ~std::uint64_t{0} : 0));
    }

    /// Everything taken, nothing wrong.
    [[nodiscard]] bool isDone() const { return !m_failed && m_bytes.empty(); }
    [[nodiscard]] bool failed() const { return m_failed; }

private:
    std::string_view m_bytes;
    bool m_failed = false;
};

/// Writes an item as how long ago it was first seen; 0 is one that is new.
template <typename T>
class Table {
public:
    void put(std::string &out, const T &item)
    {
        const auto [at, isNew] = m_places.emplace(item, items.size());
        putVarint(out, isNew ? 0 : items.size() - at->second);
        if (isNew)
            items.push_back(item);
    }
    std::vector<T> items;

private:
    std::map<T, std::size_t> m_places;
};

/// The way back. Items must come in the order of their first use, each used, none twice.
template <typename T>
class TableReader {
public:
    explicit TableReader(std::vector<T> items) : m_items(std::move(items)) {}
    /// Nothing for a number that means no item.
    [[nodiscard]] T *get(std::uint64_t ago)
    {
        if (ago == 0)
            return m_seen < m_items.size() ? &m_items[m_seen++] : nullptr;
        return ago <= m_seen ? &m_items[m_seen - ago] : nullptr;
    }
    [[nodiscard]] bool isDone() const { return m_seen == m_items.size(); }

private:
    std::vector<T> m_items;
    std::size_t m_seen = 0;
};

} // namespace snugwalk
