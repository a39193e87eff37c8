// SPDX-License-Identifier: Apache-2.0
// Writes twenty years of one rig into a file for the app to open.
#include <cstdio>

#include "../long_history.hpp"

using namespace snugwalk;

int main(int argc, char **argv)
{
    SNUG_ASSERT(argc == 2);
    FixedClock clock(parseLocal("2024-12-01T08:00:00Z").value());
    CountingIds ids("speed");
    Logbook book = Logbook::open(argv[1], {DeviceKey::random(), "speed", &clock, &ids}).value();
    const LongHistory written = writeTwentyYears(book, parseLocal("2005-01-01T08:00:00Z").value());
    std::printf("%d walks, %d marks, %d findings, %d trips\n", written.walks, written.marks, written.findings,
                written.trips);
    return 0;
}
