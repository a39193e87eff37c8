// SPDX-License-Identifier: Apache-2.0
// Small climate and coast files made by hand, and the real ones.
#pragma once

#include <array>
#include <bit>
#include <cstdint>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <utility>
#include <vector>

namespace worldbytes {

inline std::string real(const std::string &name)
{
    std::ifstream file(std::string(SNUGWALK_SOURCE_DIR "/core/weather/data/") + name, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

inline std::string little(std::uint64_t value, int width)
{
    std::string out;
    for (int i = 0; i < width; ++i)
        out += static_cast<char>(value >> (8 * i) & 255U);
    return out;
}

inline std::string u16(int value) { return little(static_cast<std::uint64_t>(value), 2); }
inline std::string u32(std::size_t value) { return little(value, 4); }
inline std::string f64(double value) { return little(std::bit_cast<std::uint64_t>(value), 8); }

inline std::string varint(int value)
{
    auto left = static_cast<std::uint32_t>(value) << 1U ^ (value < 0 ? 0xffffffffU : 0U);
    std::string out;
    for (; left > 127U; left >>= 7U)
        out += static_cast<char>((left & 127U) | 128U);
    return out + static_cast<char>(left);
}

/// A stored cell as its seven codes: July, December, rain of both, height, sea distance, land.
using Cell = std::array<int, 7>;

/// Nine rows of 20 degrees from the North Pole, 18 columns; `cells` by (row, column), in that order; the
/// sea's grid is four rows of 40 degrees from 80 N and says `humidity` everywhere.
inline std::string climate(const std::vector<std::pair<std::pair<int, int>, Cell>> &cells, int humidity)
{
    std::string out = "SNUGCLI1" + u16(9) + u16(18) + u16(90) + u16(1200) + u32(cells.size()) + u16(4) +
                      u16(9) + u16(80) + u16(2400);
    for (int row = 0; row < 9; ++row) {
        std::string runs;
        int count = 0;
        for (const auto &[at, codes] : cells) {
            if (at.first == row) {
                runs += u16(at.second) + u16(1);
                ++count;
            }
        }
        out += u16(count) + runs;
    }
    for (std::size_t plane = 0; plane < 7; ++plane) {
        for (const auto &[at, codes] : cells)
            out += static_cast<char>(codes[plane]);
    }
    return out + std::string(12U * 4U * 9U, static_cast<char>(humidity));
}

using Corners = std::vector<std::pair<int, int>>; ///< x, y in half degrees from 180 W, 90 S

inline std::string coastLevel(const std::vector<Corners> &rings)
{
    std::string body;
    std::size_t corners = 0;
    for (const Corners &ring : rings) {
        body += u32(ring.size());
        corners += ring.size();
        int x = 0;
        int y = 0;
        for (const auto &[toX, toY] : ring) {
            body += varint(toX - x) + varint(toY - y);
            x = toX;
            y = toY;
        }
    }
    return f64(0.5) + f64(-180.0) + f64(0.5) + f64(-90.0) + u32(rings.size()) + u32(corners) +
           u32(body.size()) + body;
}

inline std::string coast(const std::vector<Corners> &rings)
{
    return "SNUGCST1" + u32(2) + coastLevel(rings) + coastLevel(rings);
}

/// `whole` with one to four bytes changed, another way for each `seed`.
inline std::string mutated(std::string whole, unsigned seed)
{
    std::minstd_rand next(seed + 1U);
    for (unsigned left = 1 + next() % 4; left > 0; --left)
        whole[next() % whole.size()] = static_cast<char>(next() % 256U);
    return whole;
}

} // namespace worldbytes
