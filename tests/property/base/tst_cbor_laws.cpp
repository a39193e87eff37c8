// SPDX-License-Identifier: Apache-2.0
// Laws of the encoding over random trees: read(write(v)) = v, and whatever is read writes the same bytes.
#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "base/text.hpp"
#include "base/value.hpp"

using namespace snugwalk;

namespace {

class Trees {
public:
    explicit Trees(unsigned seed) : m_rng(seed) {}

    Value next(int depth = 0)
    {
        switch (below(depth < 5 ? 8 : 6)) {
        case 0:
            return {};
        case 1:
            return below(2) == 1;
        case 2:
            return static_cast<std::int64_t>(m_rng()) >> below(64);
        case 3:
            return std::ldexp(static_cast<double>(static_cast<std::int64_t>(m_rng())), below(200) - 100);
        case 4:
            return word();
        case 5:
            return Bytes{bytes()};
        case 6: {
            Value::List list;
            for (int i = below(6); i > 0; --i)
                list.push_back(next(depth + 1));
            return list;
        }
        default: {
            Value::Map map;
            for (int i = below(6); i > 0; --i)
                map.emplace(word(), next(depth + 1));
            return map;
        }
        }
    }

    int below(int end) { return static_cast<int>(m_rng() % static_cast<std::uint64_t>(end)); }
    std::string bytes()
    {
        std::string out(static_cast<std::size_t>(below(40)), '\0');
        for (char &c : out)
            c = static_cast<char>(below(256));
        return out;
    }

private:
    std::string word()
    {
        static constexpr const char *letters[] = {"a", "b", "z", "é", "水", "\U00010151", " ", "\n"};
        std::string out;
        for (int i = below(30); i > 0; --i)
            out += letters[below(8)];
        return out;
    }

    std::mt19937_64 m_rng;
};

} // namespace

TEST_CASE("a tree written and read is the same tree, and JSON agrees about its shape")
{
    Trees trees(8949); // fixed: a failure must be repeatable
    for (int i = 0; i < 5000; ++i) {
        const Value tree = trees.next();
        const std::string bytes = encodeCbor(tree);
        CAPTURE(toHex(bytes));
        const auto back = decodeCbor(bytes);
        REQUIRE(back.has_value());
        CHECK(*back == tree);
        CHECK(encodeCbor(*back) == bytes);
        CHECK(parseJson(toJson(tree, false)).has_value());
    }
}

TEST_CASE("bytes with one changed are refused or are another tree's only encoding")
{
    Trees trees(42);
    int refused = 0;
    for (int i = 0; i < 5000; ++i) {
        std::string bytes = encodeCbor(trees.next());
        const auto at = static_cast<std::size_t>(trees.below(static_cast<int>(bytes.size())));
        bytes[at] = static_cast<char>(bytes[at] ^ (1 << trees.below(8)));
        CAPTURE(toHex(bytes));
        const auto back = decodeCbor(bytes);
        if (back)
            CHECK(encodeCbor(*back) == bytes);
        else
            ++refused;
    }
    CHECK(refused > 500); // or the change never reached the reader
}

TEST_CASE("noise is refused or is some tree's only encoding")
{
    Trees trees(7);
    for (int i = 0; i < 20000; ++i) {
        const std::string bytes = trees.bytes();
        CAPTURE(toHex(bytes));
        if (const auto back = decodeCbor(bytes))
            CHECK(encodeCbor(*back) == bytes);
    }
}
