// SPDX-License-Identifier: Apache-2.0
// A check against the outside world, counted by its source: the program prints how many each source gave.
#pragma once

#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <map>
#include <string>

namespace snugwalk::test {

/// Prints "sourced KEY COUNT" lines when the program ends; tests/published/bench/sources_table.py adds them
/// up.
class SourceTally {
public:
    SourceTally() = default;
    SourceTally(const SourceTally &) = delete;
    SourceTally &operator=(const SourceTally &) = delete;
    ~SourceTally()
    {
        for (const auto &[key, count] : m_counts)
            std::printf("sourced %s %d\n", key.c_str(), count);
    }
    void add(const char *key) { ++m_counts[key]; }

private:
    std::map<std::string, int> m_counts;
};

/// Half a unit of the last digit printed, and what a double adds: `half(0.1)` for "65.3".
constexpr double half(double digit) { return digit * 0.5000001; }

inline SourceTally &sourceTally()
{
    static SourceTally tally;
    return tally;
}

} // namespace snugwalk::test

/// `key` of core/SOURCES.md, "CP" for common practice, "computed" for figures computed apart from the code.
#define SOURCED(key, got, want, tolerance)                                                                   \
    do {                                                                                                     \
        CHECK(std::abs((got) - (want)) <= (tolerance));                                                      \
        snugwalk::test::sourceTally().add(key);                                                              \
    } while (false)
