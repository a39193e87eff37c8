// SPDX-License-Identifier: Apache-2.0
// A line gives back the bytes it was made from, whatever is among the fields.
#include <doctest/doctest.h>

#include "exchange/entry_line.hpp"
#include "support/book.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Entry sample(Value::Map fields)
{
    CountingIds ids("line");
    Entry entry;
    entry.id.stream.device = ids.next();
    entry.id.seq = 1;
    entry.hlc = 116'000'000'000'000'001; // beyond what a double holds exactly
    entry.act = ids.next();
    entry.entity = ids.next();
    entry.type = "mark";
    entry.fields = std::move(fields);
    entry.by = "W. Tester";
    entry.at = timeAt("2026-03-14T09:00:00+13:00");
    return entry;
}

std::string lineFor(const Entry &entry)
{
    const std::string bytes = canonicalBytes(entry);
    return lineOf(bytes, chainHash(Hash{}, bytes), std::nullopt).value();
}

} // namespace

TEST_CASE("numbers, text, lists and nulls come back as they were")
{
    const Entry entry = sample({{"whole", 3},
                                {"number", 3.0},
                                {"tenth", 0.1},
                                {"tiny", 5e-324},
                                {"minus_zero", -0.0},
                                {"big", std::int64_t{9'007'199'254'740'993}},
                                {"text", "na\u00efve \u6f22 \U0001F600 \"\\/\b\n\u007f"},
                                {"gone", Value()},
                                {"list", Value::List{1, "two", Value::Map{{"three", 3.5}}}}});
    const std::string line = lineFor(entry);
    CHECK(line.find("\"cbor\"") == std::string::npos);
    CHECK(line.find('\n') == std::string::npos);
    const auto back = entryFromLine(line);
    REQUIRE(back);
    CHECK(back->entry.bytes == canonicalBytes(entry));
    CHECK(back->entry.id == entry.id);
    CHECK_FALSE(back->previous);
}

TEST_CASE("what JSON has no word for travels as bytes as well")
{
    for (const Value &value :
         {Value(Bytes{std::string("\0\xFF", 2)}), Value(Value::Map{{"deep", Bytes{"abc"}}})}) {
        const Entry entry = sample({{"odd", value}});
        const std::string line = lineFor(entry);
        CHECK(line.find("\"cbor\"") != std::string::npos);
        const auto back = entryFromLine(line);
        REQUIRE(back);
        CHECK(back->entry.bytes == canonicalBytes(entry));
    }
}

TEST_CASE("a line that shows one thing and holds another is refused")
{
    const Entry entry = sample({{"odd", Bytes{"abc"}}, {"state", "attention"}});
    std::string line = lineFor(entry);
    const std::size_t at = line.find("attention");
    REQUIRE(at != std::string::npos);
    line.replace(at, 9, "pass     ");
    const auto back = entryFromLine(line);
    REQUIRE_FALSE(back);
    CHECK(back.error().code == Errc::Corrupt);
}

TEST_CASE("what is no line is refused")
{
    const std::string line = lineFor(sample({{"a", 1}}));
    CHECK_FALSE(entryFromLine(""));
    CHECK_FALSE(entryFromLine("[]"));
    CHECK_FALSE(entryFromLine("{}"));
    CHECK_FALSE(entryFromLine(line.substr(0, line.size() - 1)));
    CHECK_FALSE(entryFromLine(std::string(100'000, '[')));
    CHECK(entryFromLine(std::string(maxLineBytes + 1, ' ')).error().code == Errc::OutOfRange);
    CHECK(entryFromLine(line));
}
