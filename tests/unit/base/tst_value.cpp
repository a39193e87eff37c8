// SPDX-License-Identifier: Apache-2.0
// A value tree gives what it holds and nothing on any other question.
#include <doctest/doctest.h>

#include "base/value.hpp"

using namespace snugwalk;

TEST_CASE("each kind is read as itself")
{
    CHECK(Value().isNull());
    CHECK(Value(true).asBool() == true);
    CHECK(Value(7).asInt() == 7);
    CHECK(Value(7).asDouble() == 7.0);
    CHECK(Value(1.5).asDouble() == 1.5);
    CHECK(Value("a").asString() == "a");
    CHECK(Value(Bytes{"\x01"}).asBytes() == "\x01");
    CHECK(Value(Value::List{1, 2}).list().size() == 2);
    CHECK(Value(Value::Map{{"a", 1}}).map().size() == 1);
}

TEST_CASE("a question of another kind gets nothing, never a failure")
{
    const Value text("a");
    CHECK_FALSE(text.asBool());
    CHECK_FALSE(text.asInt());
    CHECK_FALSE(text.asDouble());
    CHECK_FALSE(text.asBytes());
    CHECK(text.list().empty());
    CHECK(text.map().empty());
    CHECK(text["member"].isNull());
    CHECK_FALSE(Value(1.5).asInt());
    CHECK_FALSE(Value(Bytes{"a"}).asString());
}

TEST_CASE("a literal text is text, not a truth value")
{
    CHECK(Value("false").isString());
    CHECK_FALSE(Value("false").asBool());
}

TEST_CASE("an absent optional is null, a present one its value")
{
    CHECK(Value(std::optional<double>()).isNull());
    CHECK(Value(std::optional<double>(2.5)).asDouble() == 2.5);
    CHECK(Value(std::optional<std::string>("x")).asString() == "x");
}

TEST_CASE("a member makes the map it needs")
{
    Value value;
    value.member("rig").member("length") = 7.2;
    CHECK(value["rig"]["length"].asDouble() == 7.2);
    CHECK(value["rig"]["width"].isNull());
}
