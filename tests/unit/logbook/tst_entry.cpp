// SPDX-License-Identifier: Apache-2.0
// Entries and their bytes: the same for ever, and nothing but what the format allows is read.
#include <doctest/doctest.h>

#include "base/text.hpp"
#include "logbook/entry.hpp"
#include "support/book.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Id idOf(char c) { return Id::fromBytes(std::string(16, c)); }

StreamId streamOf(char c) { return streamFromBytes(std::string(24, c)).value(); }

Entry sample()
{
    Entry entry;
    entry.id = {streamOf('\x11'), 7};
    entry.hlc = 0x019000000000'0001;
    entry.act = idOf('\x22');
    entry.scope = idOf('\x33');
    entry.entity = idOf('\x44');
    entry.type = "mark";
    entry.fields = {{"state", "pass"}, {"note", "été"}, {"gone", Value()}, {"n", -3}, {"x", 0.5}};
    entry.prev = {{streamOf('\x11'), 3}, {streamOf('\x55'), 9}};
    entry.by = "W. Tester";
    entry.at = timeAt("2026-11-24T21:10:00+13:00");
    entry.where = GeoPoint{-44.25, 170.125, std::nullopt, std::nullopt};
    return entry;
}

// Encodes the sample with one member changed.
Result<Entry> readWith(const std::string &member, const Value &value)
{
    Value tree = decodeCbor(canonicalBytes(sample())).value();
    tree.member(member) = value;
    return entryFromBytes(encodeCbor(tree));
}

} // namespace

TEST_CASE("bytes and back, with and without what may be missing")
{
    Entry bare = sample();
    bare.scope = Id{};
    bare.where.reset();
    bare.prev.clear();
    bare.fields.clear();
    Entry undo = sample();
    undo.undoes = idOf('\x66');
    for (const Entry &entry : {sample(), bare, undo}) {
        const std::string bytes = canonicalBytes(entry);
        const Entry back = entryFromBytes(bytes).value();
        CHECK(canonicalBytes(back) == bytes);
        CHECK(back.id == entry.id);
        CHECK(back.fields == entry.fields);
        CHECK(back.prev == entry.prev);
        CHECK(back.where == entry.where);
        CHECK(back.at == entry.at);
        CHECK(back.undoes == entry.undoes);
    }
}

TEST_CASE("the bytes of one entry, worked out by hand from RFC 8949 and FORMAT.md")
{
    // Keys in bytewise order of their encoding: shorter ones first (section 4.2.1), then by letters.
    const std::string hex = "ae" // map of 14
                            "6176"
                            "01" // v: 1
                            "626174"
                            "7819"
                            "323032362d31312d32345432313a31303a30302b31333a3030" // at
                            "626279"
                            "69"
                            "572e20546573746572" // by
                            "63616374"
                            "50"
                            "22222222222222222222222222222222"
                            "63686c63"
                            "1b"
                            "0190000000000001"
                            "63736571"
                            "07"
                            "6470726576"
                            "82"
                            "82"
                            "5818"
                            "111111111111111111111111111111111111111111111111"
                            "03"
                            "82"
                            "5818"
                            "555555555555555555555555555555555555555555555555"
                            "09"
                            "6474797065"
                            "64"
                            "6d61726b" // type: mark
                            "6573636f7065"
                            "50"
                            "33333333333333333333333333333333"
                            "657768657265"
                            "a2"
                            "686c61746974756465"
                            "fbc046200000000000"
                            "696c6f6e67697475646"
                            "5"
                            "fb4065440000000000"
                            "66656e74697479"
                            "50"
                            "44444444444444444444444444444444"
                            "666669656c6473"
                            "a5"
                            "616e"
                            "22"
                            "6178"
                            "fb3fe0000000000000"
                            "64676f6e65"
                            "f6"
                            "646e6f7465"
                            "65c3a974c3a9"
                            "657374617465"
                            "6470617373"
                            "6673747265616d"
                            "5818"
                            "111111111111111111111111111111111111111111111111"
                            "66756e646f6573"
                            "f6";
    CHECK(toHex(canonicalBytes(sample())) == hex);
}

TEST_CASE("the chain: BLAKE2b-256 over the hash before and the bytes")
{
    const std::string bytes = canonicalBytes(sample());
    const Hash first = chainHash(Hash{}, bytes);
    CHECK(first == blake2b(std::string(32, '\0') + bytes));
    CHECK(chainHash(first, bytes) == blake2b(std::string(first.view()) + bytes));
    CHECK(chainHash(first, bytes) != first);
}

TEST_CASE("a member that is missing or of another kind is refused")
{
    for (const char *member :
         {"stream", "seq", "hlc", "act", "entity", "type", "fields", "prev", "by", "at"}) {
        CAPTURE(member);
        const auto broken = readWith(member, Value(Value::Map{{"not", "this"}}));
        if (std::string(member) != "fields") {
            REQUIRE_FALSE(broken);
            CHECK(broken.error().code == Errc::Corrupt);
        }
        CHECK_FALSE(readWith(member, Value(true)));
    }
    CHECK_FALSE(readWith("seq", Value(0)));
    CHECK_FALSE(readWith("act", Value(Bytes{"short"})));
    CHECK_FALSE(readWith("entity", Value())); // an entry about nothing
    CHECK_FALSE(readWith("prev", Value(Value::List{1})));
    CHECK_FALSE(readWith("prev", Value(Value::List{Value::List{Bytes{std::string(24, 'x')}, 0}})));
    CHECK_FALSE(readWith("at", Value("yesterday")));
    CHECK_FALSE(readWith("where", Value("here")));
    CHECK(readWith("v", Value(2)).error().code == Errc::Unsupported);
    CHECK(entryFromBytes("").error().code == Errc::Corrupt);
}

TEST_CASE("bytes cut short anywhere are refused")
{
    const std::string bytes = canonicalBytes(sample());
    for (std::size_t size = 0; size < bytes.size(); ++size)
        CHECK_FALSE(entryFromBytes(bytes.substr(0, size)));
}
