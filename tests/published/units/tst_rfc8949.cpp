// SPDX-License-Identifier: Apache-2.0
// The examples of [RFC8949] appendix A for the kinds of value we use, both ways; the others are refused.
#include <doctest/doctest.h>

#include <limits>
#include <vector>

#include "base/text.hpp"
#include "base/value.hpp"

using namespace snugwalk;

namespace {

struct Example {
    Value value;
    const char *encoded;
};

Value::List oneTo(int last)
{
    Value::List list;
    for (int i = 1; i <= last; ++i)
        list.emplace_back(i);
    return list;
}

const double infinite = std::numeric_limits<double>::infinity();

// Floats that the appendix prints in two or four bytes are left out: we always write eight.
const std::vector<Example> examples = {
    {0, "00"},
    {1, "01"},
    {10, "0a"},
    {23, "17"},
    {24, "1818"},
    {25, "1819"},
    {100, "1864"},
    {1000, "1903e8"},
    {1000000, "1a000f4240"},
    {std::int64_t{1000000000000}, "1b000000e8d4a51000"},
    {-1, "20"},
    {-10, "29"},
    {-100, "3863"},
    {-1000, "3903e7"},
    {1.1, "fb3ff199999999999a"},
    {1.0e300, "fb7e37e43c8800759c"},
    {-4.1, "fbc010666666666666"},
    {infinite, "fb7ff0000000000000"},
    {-infinite, "fbfff0000000000000"},
    {false, "f4"},
    {true, "f5"},
    {Value(), "f6"},
    {Bytes{""}, "40"},
    {Bytes{"\x01\x02\x03\x04"}, "4401020304"},
    {"", "60"},
    {"a", "6161"},
    {"IETF", "6449455446"},
    {"\"\\", "62225c"},
    {"\u00fc", "62c3bc"},
    {"\u6c34", "63e6b0b4"},
    {"\U00010151", "64f0908591"},
    {Value::List{}, "80"},
    {Value::List{1, 2, 3}, "83010203"},
    {Value::List{1, Value::List{2, 3}, Value::List{4, 5}}, "8301820203820405"},
    {oneTo(25), "98190102030405060708090a0b0c0d0e0f101112131415161718181819"},
    {Value::Map{}, "a0"},
    {Value::Map{{"a", 1}, {"b", Value::List{2, 3}}}, "a26161016162820203"},
    {Value::List{"a", Value::Map{{"b", "c"}}}, "826161a161626163"},
    {Value::Map{{"a", "A"}, {"b", "B"}, {"c", "C"}, {"d", "D"}, {"e", "E"}},
     "a56161614161626142616361436164614461656145"},
};

const std::vector<const char *> refused = {
    "1bffffffffffffffff",                           // 18446744073709551615
    "c249010000000000000000",                       // a bignum
    "3bffffffffffffffff",                           // -18446744073709551616
    "f93c00",                                       // 1.0 in two bytes
    "fa47c35000",                                   // 100000.0 in four
    "f97e00",                                       // NaN
    "fb7ff8000000000000",                           // NaN in eight
    "f7",                                           // undefined
    "f0",                                           // simple(16)
    "f8ff",                                         // simple(255)
    "c074323031332d30332d32315432303a30343a30305a", // a tagged date
    "c11a514b67b0",                                 // a tagged epoch time
    "d818456449455446",                             // a tagged byte string
    "a201020304",                                   // {1: 2, 3: 4}: keys that are no text
    "5f42010243030405ff",                           // (_ h'0102', h'030405')
    "7f657374726561646d696e67ff",                   // (_ "strea", "ming")
    "9fff",                                         // [_ ]
    "9f018202039f0405ffff",                         // [_ 1, [2, 3], [_ 4, 5]]
    "bf61610161629f0203ffff",                       // {_ "a": 1, "b": [_ 2, 3]}
};

} // namespace

TEST_CASE("the examples are written as printed and read back")
{
    for (const Example &example : examples) {
        CAPTURE(std::string(example.encoded));
        CHECK(toHex(encodeCbor(example.value)) == example.encoded);
        const auto back = decodeCbor(*fromHex(example.encoded));
        REQUIRE(back.has_value());
        CHECK(*back == example.value);
    }
}

TEST_CASE("examples of kinds and forms that we do not use are refused")
{
    for (const std::string encoded : refused) {
        CAPTURE(encoded);
        const auto value = decodeCbor(*fromHex(encoded));
        REQUIRE_FALSE(value.has_value());
        CHECK(value.error().code == Errc::Corrupt);
    }
}
