// SPDX-License-Identifier: Apache-2.0
// Streams that do not verify, do not fit, or were written twice: all or nothing comes in.
#include <doctest/doctest.h>

#include "exchange_fixture.hpp"
#include "logbook/import_entries.hpp"
#include "support/streams.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

struct Load {
    std::vector<ForeignStream> streams;
    std::vector<ForeignEntry> entries;
};

Load loadOf(Logbook &book)
{
    Load load;
    auto rows = book.db().prepare("SELECT name, public_key, label FROM stream").value();
    while (rows.step().value())
        load.streams.push_back({streamFromBytes(rows.bytes(0)).value(), rows.bytes(1), rows.text(2)});
    for (const StoredEntry &stored : ownEntries(book))
        load.entries.push_back({stored.entry.id, stored.bytes, stored.hash});
    return load;
}

Errc refusal(TestBook &book, const Load &load)
{
    const auto answer = importEntries(book.book(), load.streams, load.entries);
    CHECK(entryCount(book.book()) == 0);
    return answer ? Errc::Usage : answer.error().code;
}

} // namespace

TEST_CASE("a changed byte, a wrong hash, a foreign key: nothing comes in")
{
    Walker walker;
    fillWithEverything(walker);
    const Load whole = loadOf(walker.book());
    REQUIRE(whole.entries.size() > 5);
    TestBook other("other");
    Load load = whole;
    load.entries[3].bytes.back() ^= 1;
    CHECK(refusal(other, load) == Errc::Corrupt);
    load = whole;
    load.entries.back().hash.bytes[0] ^= 1;
    CHECK(refusal(other, load) == Errc::Corrupt);
    load = whole;
    load.streams.front().publicKey[0] ^= 1;
    CHECK(refusal(other, load) == Errc::Corrupt);
    load = whole;
    load.streams.clear();
    CHECK(refusal(other, load) == Errc::Corrupt);
    load = whole;
    load.entries.erase(load.entries.begin() + 2);
    CHECK(refusal(other, load) == Errc::NotFound);
    load = whole;
    CHECK(importEntries(other.book(), load.streams, load.entries,
                        [] {
                            return Status(Error{Errc::Io, "no room", "", ""});
                        })
              .error()
              .code == Errc::Io);
    CHECK(entryCount(other.book()) == 0);
    REQUIRE(importEntries(other.book(), whole.streams, whole.entries));
    CHECK(portableProjection(other.book()) == portableProjection(walker.book()));
}

TEST_CASE("entries that another wrote under the same name are a conflict, not an overwrite")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    Load load = loadOf(walker.book());
    TestBook other("other");
    REQUIRE(importEntries(other.book(), load.streams, load.entries));
    const std::string before = portableLog(other.book());

    // a copy of the file went on by itself: the same numbers, other bytes
    Entry entry = entryFromBytes(load.entries.back().bytes).value();
    entry.by = "someone else";
    ForeignEntry &last = load.entries.back();
    last.bytes = canonicalBytes(entry);
    last.hash = chainHash(load.entries[load.entries.size() - 2].hash, last.bytes);
    const auto answer = importEntries(other.book(), load.streams, load.entries);
    REQUIRE_FALSE(answer);
    CHECK(answer.error().code == Errc::Conflict);
    CHECK(portableLog(other.book()) == before);
}

TEST_CASE("a clock at the end of time is refused, so that ours can go on")
{
    Walker walker;
    Load load = loadOf(walker.book());
    Entry entry = entryFromBytes(load.entries.back().bytes).value();
    entry.hlc = std::numeric_limits<std::int64_t>::max();
    ForeignEntry &last = load.entries.back();
    last.bytes = canonicalBytes(entry);
    const Hash before = load.entries.size() < 2 ? Hash{} : load.entries[load.entries.size() - 2].hash;
    last.hash = chainHash(before, last.bytes);
    TestBook other("other");
    CHECK(refusal(other, load) == Errc::Corrupt);
}

TEST_CASE("a restored file that is behind closes its stream and goes on in another")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    walker.home.close();
    const std::string copy = walker.home.folder().file("restored.snug");
    std::filesystem::copy_file(walker.home.file(), copy);
    REQUIRE(walker.mark(attentionOn("chains-condition", 3)));
    const Load load = loadOf(walker.book());

    const StreamId first = walker.book().stream();
    {
        Logbook restored = walker.home.tryOpen(copy, false).value();
        REQUIRE(restored.stream() == first);
        const auto count = importEntries(restored, load.streams, load.entries);
        REQUIRE(count);
        CHECK(count->added > 0);
        CHECK(count->mustReopen);
    }
    Logbook restored = walker.home.tryOpen(copy, false).value();
    CHECK(restored.stream() != first);
    CHECK(restored.stream().device == first.device);
    CHECK(portableProjection(restored) == portableProjection(walker.book()));
}
