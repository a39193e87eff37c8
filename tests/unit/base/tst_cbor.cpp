// SPDX-License-Identifier: Apache-2.0
// One encoding a value, and a reader that takes nothing else. Source: [RFC8949] section 4.2.1.
#include <doctest/doctest.h>

#include <limits>
#include <string>
#include <vector>

#include "base/text.hpp"
#include "base/value.hpp"

using namespace snugwalk;

namespace {

std::string hex(const Value &value) { return toHex(encodeCbor(value)); }

Result<Value> fromHexCbor(std::string_view text)
{
    const auto bytes = fromHex(text);
    REQUIRE(bytes);
    return decodeCbor(*bytes);
}

Value entry()
{
    Value value;
    value.member("point") = "belly-pan-rivet";
    value.member("reading").member("unit") = "m";
    value.member("reading").member("value") = 0.00238125;
    value.member("photos") = Value::List{Bytes{std::string("\x00\x01\x02", 3)}, Bytes{""}};
    value.member("seq") = 70000;
    value.member("undo") = false;
    value.member("note") = Value();
    return value;
}

Value nested(int levels)
{
    Value value = 1;
    for (int i = 0; i < levels; ++i)
        value = Value::List{value};
    return value;
}

} // namespace

TEST_CASE("keys are ordered by the bytes of their encoding, shorter first")
{
    // Source: [RFC8949] section 4.2.1, bytewise lexicographic order of the encoded keys
    const Value value = Value::Map{{"b", 1}, {"aa", 2}, {"a", 3}, {"é", 4}, {"", 5}};
    CHECK(hex(value) == "a5"
                        "6005"
                        "616103"
                        "616201"
                        "62616102"
                        "62c3a904");
}

TEST_CASE("the same value always gives the same bytes, whatever the order it was made in")
{
    Value other;
    other.member("undo") = false;
    other.member("seq") = 70000;
    other.member("photos") = Value::List{Bytes{std::string("\x00\x01\x02", 3)}, Bytes{""}};
    other.member("note") = Value();
    other.member("reading").member("value") = 0.00238125;
    other.member("reading").member("unit") = "m";
    other.member("point") = "belly-pan-rivet";
    CHECK(encodeCbor(other) == encodeCbor(entry()));
}

TEST_CASE("whatever is written is read back")
{
    const auto back = decodeCbor(encodeCbor(entry()));
    REQUIRE(back.has_value());
    CHECK(*back == entry());
}

TEST_CASE("every truncation is refused")
{
    const std::string whole = encodeCbor(entry());
    for (std::size_t size = 0; size < whole.size(); ++size) {
        CAPTURE(size);
        const auto cut = decodeCbor(std::string_view(whole).substr(0, size));
        REQUIRE_FALSE(cut.has_value());
        CHECK(cut.error().code == Errc::Corrupt);
    }
}

TEST_CASE("anything but the one encoding is refused, with its place")
{
    const std::vector<std::pair<const char *, const char *>> refused = {
        {"", "nothing"},
        {"1817", "23 in two bytes"},
        {"190018", "24 in three bytes"},
        {"1a00000100", "256 in five bytes"},
        {"1b0000000000010000", "65536 in nine bytes"},
        {"3817", "-24 in two bytes"},
        {"5800", "an empty byte string with a long length"},
        {"7801"
         "61",
         "a text with a long length"},
        {"9800", "an empty list with a long length"},
        {"b800", "an empty map with a long length"},
        {"a2616101616102", "a key twice"},
        {"a2616201616102", "keys out of order"},
        {"a2626161016162"
         "02",
         "a longer key before a shorter one"},
        {"a10102", "a key that is no text"},
        {"9f01ff", "an indefinite list"},
        {"bf616101ff", "an indefinite map"},
        {"5f4101ff", "an indefinite byte string"},
        {"7f6161ff", "an indefinite text"},
        {"0000", "a byte after the end"},
        {"ff", "a break alone"},
        {"f90000", "a float in two bytes"},
        {"fa3f800000", "a float in four bytes"},
        {"fb7ff8000000000000", "not a number"},
        {"f7", "undefined"},
        {"e0", "a simple value"},
        {"f820", "a simple value in two bytes"},
        {"c074323031332d30332d32315432303a30343a30305a", "a tag"},
        {"1c", "a reserved length"},
        {"1bffffffffffffffff", "an integer beyond 64 bits"},
        {"3b8000000000000000", "a negative integer beyond 64 bits"},
        {"61ff", "a text that is no UTF-8"},
        {"63eda080", "a surrogate in a text"},
        {"5bffffffffffffffff", "a byte string longer than the world"},
        {"9bffffffffffffffff", "a list longer than the world"},
        {"bbffffffffffffffff", "a map longer than the world"},
        {"9a7fffffff00", "a list of which one item is there"},
    };
    for (const auto &[bytes, what] : refused) {
        const std::string told = what; // no lambda of Clang 14 takes a binding
        CAPTURE(told);
        const auto value = fromHexCbor(bytes);
        REQUIRE_FALSE(value.has_value());
        CHECK(value.error().code == Errc::Corrupt);
        CHECK(value.error().where.starts_with("byte "));
    }
}

TEST_CASE("depth is bounded in the reader")
{
    CHECK(decodeCbor(encodeCbor(nested(16))).has_value());
    CHECK_FALSE(decodeCbor(encodeCbor(nested(17))).has_value());
    const std::string deep(100000, '\x81'); // would overflow the stack of a careless reader
    CHECK_FALSE(decodeCbor(deep).has_value());
}

TEST_CASE("the ends of the 64 bit range and the odd doubles survive")
{
    constexpr auto least = std::numeric_limits<std::int64_t>::min();
    constexpr auto most = std::numeric_limits<std::int64_t>::max();
    for (const std::int64_t number : {least, least + 1, std::int64_t{-1}, std::int64_t{0}, most}) {
        CAPTURE(number);
        CHECK(decodeCbor(encodeCbor(number)).value().asInt() == number);
    }
    CHECK(hex(Value(most)) == "1b7fffffffffffffff");
    CHECK(hex(Value(least)) == "3b7fffffffffffffff");
    CHECK(hex(Value(-0.0)) == "fb8000000000000000");
    CHECK(decodeCbor(encodeCbor(Value(5e-324))).value().asDouble() == 5e-324);
}

TEST_CASE("what could not be read back is told before it is written")
{
    CHECK(checkEncodable(entry()).has_value());
    CHECK(checkEncodable(std::numeric_limits<double>::infinity()).has_value());
    CHECK(checkEncodable(std::numeric_limits<double>::quiet_NaN()).error().code == Errc::InvalidInput);
    CHECK(checkEncodable(Value::Map{{"note", "cut \xC3"}}).error().code == Errc::InvalidInput);
    CHECK(checkEncodable(Value::Map{{"\xff", 1}}).error().code == Errc::InvalidInput);
    CHECK(checkEncodable(nested(16)).has_value());
    CHECK(checkEncodable(nested(17)).error().code == Errc::InvalidInput);
}
