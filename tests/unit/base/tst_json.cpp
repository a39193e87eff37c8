// SPDX-License-Identifier: Apache-2.0
// JSON in and out. Source: [RFC8259].
#include <doctest/doctest.h>

#include <limits>
#include <vector>

#include "base/value.hpp"

using namespace snugwalk;

TEST_CASE("written in one line or indented, keys in order, bytes as hexadecimal")
{
    Value value;
    value.member("b") = Value::List{1, 2.5, true, Value()};
    value.member("a") = Bytes{std::string("\x00\xff", 2)};
    CHECK(toJson(value, false) == R"({"a":"00ff","b":[1,2.5,true,null]})");
    CHECK(toJson(Value::Map{{"a", 1}}, true) == "{\n  \"a\": 1\n}");
    CHECK(toJson(Value::Map{}, false) == "{}");
    CHECK(toJson("20 °C\n\"", false) == R"("20 °C\n\"")");
}

TEST_CASE("a number that JSON cannot say becomes null, bytes that are no text are replaced")
{
    // Source: [RFC8259] section 6 (Infinity and NaN are not permitted), section 8.1 (UTF-8)
    CHECK(toJson(std::numeric_limits<double>::quiet_NaN(), false) == "null");
    CHECK(toJson(std::numeric_limits<double>::infinity(), false) == "null");
    CHECK(toJson("a\xff", false) == "\"a\xEF\xBF\xBD\"");
}

TEST_CASE("the examples of the standard are read")
{
    // Source: [RFC8259] section 13, first and second example (shortened), third
    const auto image = parseJson(R"({"Image": {"Width": 800, "Height": 600, "Title": "View from 15th Floor",
        "Thumbnail": {"Url": "http://www.example.com/image/481989943", "Height": 125, "Width": 100},
        "Animated": false, "IDs": [116, 943, 234, 38793]}})");
    REQUIRE(image.has_value());
    CHECK((*image)["Image"]["Thumbnail"]["Height"].asInt() == 125);
    CHECK((*image)["Image"]["Animated"].asBool() == false);
    CHECK((*image)["Image"]["IDs"].list().at(3).asInt() == 38793);
    const auto places = parseJson(R"([{"precision": "zip", "Latitude": 37.7668, "Longitude": -122.3959}])");
    REQUIRE(places.has_value());
    CHECK(places->list().at(0)["Longitude"].asDouble() == -122.3959);
    CHECK(parseJson("\"Hello world!\"").value().asString() == "Hello world!");
    CHECK(parseJson("42").value().asInt() == 42);
    CHECK(parseJson("true").value().asBool() == true);
    // Source: [RFC8259] section 7, the G clef outside the basic plane as a surrogate pair
    CHECK(parseJson(R"("\uD834\uDD1E")").value().asString() == "\U0001D11E");
}

TEST_CASE("an integer beyond 64 bits signed is a number, not another number")
{
    CHECK(parseJson("9223372036854775807").value().asInt() == 9223372036854775807LL);
    CHECK(parseJson("-9223372036854775808").value().asInt() == std::numeric_limits<std::int64_t>::min());
    CHECK(parseJson("9223372036854775808").value().asDouble() == 9223372036854775808.0);
    CHECK(parseJson("18446744073709551615").value().asDouble() == 18446744073709551615.0);
    CHECK_FALSE(parseJson("18446744073709551615").value().asInt());
}

TEST_CASE("what is no JSON is refused")
{
    const std::vector<const char *> refused = {
        "",          " ",      "{",    "[1,]",  "{\"a\":1,}", "{'a':1}",     "{a:1}",   "[1 2]",
        "01",        "1.",     ".5",   "+1",    "nan",        "Infinity",    "tru",     "\"a",
        "\"\\x41\"", "\"\t\"", "[1]]", "1e999", "\"\xff\"",   "\"\\ud834\"", "// c\n1",
    };
    for (const std::string text : refused) {
        CAPTURE(text);
        const auto value = parseJson(text);
        REQUIRE_FALSE(value.has_value());
        CHECK(value.error().code == Errc::InvalidInput);
    }
}

TEST_CASE("the refusal gives line and column")
{
    CHECK(parseJson("{\n  \"a\": 1,\n  oops\n}").error().where == "line 3, column 3");
    CHECK(parseJson("[1, x]").error().where == "line 1, column 5");
}

TEST_CASE("depth is bounded, brackets in a text do not count")
{
    const auto lists = [](std::size_t depth) { return std::string(depth, '[') + std::string(depth, ']'); };
    CHECK(parseJson(lists(64)).has_value());
    CHECK_FALSE(parseJson(lists(65)).has_value());
    CHECK_FALSE(parseJson(std::string(1000000, '[')).has_value());
    CHECK(parseJson("\"" + std::string(1000, '[') + "\"").has_value());
    CHECK(parseJson("\"\\\"" + std::string(1000, '[') + "\"").has_value());
}

TEST_CASE("what is written is read back")
{
    Value value;
    value.member("list") =
        Value::List{1, -2, 0.1, 1e300, "text", false, Value(), Value::Map{}, Value::List{}};
    for (const bool indented : {false, true}) {
        const auto back = parseJson(toJson(value, indented));
        REQUIRE(back.has_value());
        CHECK(*back == value);
    }
}
