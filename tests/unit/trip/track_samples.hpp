// SPDX-License-Identifier: Apache-2.0
// Small tracks for tests, made on the spot.
#pragma once

#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "trip/trip.hpp"

namespace track_samples {

inline std::string readData(const std::string &name)
{
    std::ifstream in(std::string(SNUGWALK_SOURCE_DIR) + "/tests/data/tracks/" + name, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline long long dropped(const std::vector<snugwalk::Drop> &drops, std::string_view reason)
{
    for (const snugwalk::Drop &drop : drops) {
        if (drop.reason == reason)
            return drop.count;
    }
    return 0;
}

inline std::string firstWhere(const std::vector<snugwalk::Drop> &drops, std::string_view reason)
{
    for (const snugwalk::Drop &drop : drops) {
        if (drop.reason == reason)
            return drop.firstWhere;
    }
    return {};
}

/// A sentence with its checksum, from the text between `$` and `*`.
inline std::string sentence(const std::string &body)
{
    unsigned sum = 0;
    for (const char c : body)
        sum ^= static_cast<unsigned char>(c);
    char tail[8];
    std::snprintf(tail, sizeof tail, "*%02X\r\n", sum);
    return "$" + body + tail;
}

/// A fix `north` metres north of 45, 7 at `second` (spherical degree: good to 0.3 %).
inline snugwalk::Fix fixAt(double second, double north, std::optional<double> altitude = std::nullopt)
{
    snugwalk::Fix fix;
    fix.time = snugwalk::fromMillis(1'777'000'000'000LL + static_cast<long long>(second * 1000.0));
    fix.point = {45.0 + north / 111131.7746, 7.0, altitude, std::nullopt};
    return fix;
}

} // namespace track_samples
