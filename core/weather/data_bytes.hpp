// SPDX-License-Identifier: Apache-2.0
// Reads the little-endian numbers of a data file without ever passing its end.
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "base/result.hpp"

namespace snugwalk {

/// A read past the end gives 0 and makes `whole()` false for good, so that a decoder asks once at each step.
class DataBytes {
public:
    explicit DataBytes(std::string_view bytes) : m_bytes(bytes) {}

    [[nodiscard]] bool whole() const { return m_whole; }
    [[nodiscard]] std::size_t at() const { return m_at; }
    [[nodiscard]] std::size_t left() const { return m_bytes.size() - m_at; }

    std::string_view take(std::size_t count)
    {
        if (count > left()) {
            m_whole = false;
            return {};
        }
        const std::string_view taken = m_bytes.substr(m_at, count);
        m_at += count;
        return taken;
    }
    std::uint64_t number(std::size_t width)
    {
        std::uint64_t value = 0;
        std::size_t shift = 0;
        for (const char byte : take(width)) {
            value |= std::uint64_t{static_cast<unsigned char>(byte)} << shift;
            shift += 8;
        }
        return value;
    }
    std::uint16_t u16() { return static_cast<std::uint16_t>(number(2)); }
    std::int16_t i16() { return static_cast<std::int16_t>(u16()); }
    std::uint32_t u32() { return static_cast<std::uint32_t>(number(4)); }
    double f64() { return std::bit_cast<double>(number(8)); }

    /// Zigzag and seven bits a byte; at most five bytes.
    std::int32_t varint()
    {
        std::uint64_t value = 0;
        for (int shift = 0; shift < 35; shift += 7) {
            const std::uint64_t byte = number(1);
            value |= (byte & 127U) << shift;
            if (byte < 128U && value <= 0xffffffffU) {
                const auto half = static_cast<std::int64_t>(value >> 1U);
                return static_cast<std::int32_t>((value & 1U) != 0U ? -half - 1 : half);
            }
        }
        m_whole = false;
        return 0;
    }

    /// The error for what was being read here; `what` as a clause.
    [[nodiscard]] Error fault(std::string_view file, std::string_view what) const
    {
        return Error{Errc::Corrupt, m_whole ? std::string(what) : "the file ends too early",
                     std::string(file) + ", byte " + std::to_string(m_at),
                     "install this version's data files again; days with a record of their own need none"};
    }

private:
    std::string_view m_bytes;
    std::size_t m_at = 0;
    bool m_whole = true;
};

} // namespace snugwalk
