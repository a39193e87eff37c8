// SPDX-License-Identifier: Apache-2.0
// Hashes against another implementation, and ids that come from them.
#include <doctest/doctest.h>

#include <array>
#include <cstdio>
#include <fstream>
#include <random>
#include <set>

#include "keys/hash.hpp"

using namespace snugwalk;

namespace {

std::string randomText(std::size_t size)
{
    std::mt19937 rng(static_cast<unsigned>(size) + 7693U); // fixed: a failure must be repeatable
    std::uniform_int_distribution<int> byte(0, 255);
    std::string text(size, '\0');
    for (char &c : text)
        c = static_cast<char>(byte(rng));
    return text;
}

// What coreutils' b2sum says of the same bytes.
std::string b2sum(const std::string &bytes)
{
    const std::string path = SNUGWALK_BINARY_DIR "/tst_hash_input";
    std::ofstream(path, std::ios::binary) << bytes;
    FILE *pipe = popen((std::string(SNUGWALK_B2SUM) + " -l 256 < '" + path + "'").c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::array<char, 65> line{};
    const bool read = std::fgets(line.data(), static_cast<int>(line.size()), pipe) != nullptr;
    CHECK(pclose(pipe) == 0);
    REQUIRE(read);
    return line.data();
}

} // namespace

TEST_CASE("agrees with b2sum of coreutils, around the block of 128 bytes")
{
    for (const std::size_t size :
         {0UL, 1UL, 3UL, 127UL, 128UL, 129UL, 255UL, 256UL, 257UL, 1000UL, 70001UL}) {
        CAPTURE(size);
        const std::string bytes = randomText(size);
        CHECK(blake2b(bytes).text() == b2sum(bytes));
    }
}

TEST_CASE("bytes that arrive in parts give the same hash")
{
    const std::string bytes = randomText(1000);
    for (const std::size_t part : {1UL, 7UL, 127UL, 128UL, 129UL, 999UL}) {
        CAPTURE(part);
        Hasher hasher;
        for (std::size_t at = 0; at < bytes.size(); at += part)
            hasher.add(std::string_view(bytes).substr(at, part));
        CHECK(hasher.finish() == blake2b(bytes));
    }
}

TEST_CASE("a hash is 64 digits and reads back")
{
    const Hash hash = blake2b("abc");
    CHECK(hash.text().size() == 64);
    CHECK(Hash::parse(hash.text()) == hash);
    CHECK(Hash::fromBytes(hash.view()) == hash);
    CHECK_FALSE(Hash::parse(hash.text().substr(2)));
    CHECK_FALSE(Hash::parse(hash.text() + "00"));
    CHECK_FALSE(Hash::parse("zz" + hash.text().substr(2)));
    CHECK_FALSE(Hash::fromBytes("short"));
}

TEST_CASE("a derived id depends on every part and on where one ends")
{
    const Id id = derivedId("mark", "walk", "point");
    CHECK(id == derivedId("mark", "walk", "point"));
    const std::set<Id> different = {id,
                                    derivedId("mark", "walkp", "oint"),
                                    derivedId("markw", "alk", "point"),
                                    derivedId("mark", "point", "walk"),
                                    derivedId("finding", "walk", "point"),
                                    derivedId("mark", "", "walkpoint"),
                                    derivedId("mark", "walk", "")};
    CHECK(different.size() == 7);
}

TEST_CASE("counting ids repeat from the same seed and never within one")
{
    CountingIds a("demo");
    CountingIds b("demo");
    CountingIds c("other");
    std::set<Id> seen;
    for (int i = 0; i < 1000; ++i) {
        const Id id = a.next();
        CHECK(id == b.next());
        CHECK(id != c.next());
        CHECK(seen.insert(id).second);
    }
}

TEST_CASE("random bytes and ids do not repeat")
{
    CHECK(randomBytes(32).size() == 32);
    CHECK(randomBytes(32) != randomBytes(32));
    CHECK(randomBytes(0).empty());
    RandomIds ids;
    CHECK(ids.next() != ids.next());
    CHECK_FALSE(ids.next().isNull());
}
