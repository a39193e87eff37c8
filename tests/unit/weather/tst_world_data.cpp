// SPDX-License-Identifier: Apache-2.0
// Where the program finds the files of the world, and what it says when it does not.
#include <cstdlib>
#include <string>

#include <doctest/doctest.h>

#include "data/world_data.hpp"
#include "world_bytes.hpp"

namespace {

struct DataFolder {
    explicit DataFolder(const std::string &folder) { setenv("SNUGWALK_DATA", folder.c_str(), 1); }
    ~DataFolder() { unsetenv("SNUGWALK_DATA"); }
    DataFolder(const DataFolder &) = delete;
    DataFolder &operator=(const DataFolder &) = delete;
};

} // namespace

TEST_CASE("without a word from anyone the build's own copy is found")
{
    unsetenv("SNUGWALK_DATA");
    for (const char *name : {"climate.bin", "coast.bin"}) {
        const auto bytes = snugwalk::worldData(name);
        REQUIRE(bytes);
        CHECK(*bytes == worldbytes::real(name));
    }
}

TEST_CASE("a named folder is the only one that counts, and a missing file says what works without")
{
    {
        const DataFolder named(SNUGWALK_SOURCE_DIR "/core/weather/data");
        CHECK(snugwalk::worldData("coast.bin"));
    }
    const DataFolder empty(SNUGWALK_SOURCE_DIR "/core/weather");
    const auto missing = snugwalk::worldData("coast.bin");
    REQUIRE_FALSE(missing);
    CHECK(missing.error().code == snugwalk::Errc::NotFound);
    CHECK(missing.error().where == SNUGWALK_SOURCE_DIR "/core/weather/coast.bin");
    CHECK(missing.error().act.find("SNUGWALK_DATA") != std::string::npos);
    CHECK(missing.error().act.find("all else works") != std::string::npos);
}
