// SPDX-License-Identifier: Apache-2.0
// Segments: what goes in comes out byte for byte, and the outer shape is what RFC 9052 says.
#include <doctest/doctest.h>

#include "base/text.hpp"
#include "support/party.hpp"
#include "sync/columns.hpp"
#include "sync/envelope.hpp"
#include "sync/segment.hpp"
#include "sync/squeeze.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Entry entryOf(int n)
{
    Entry entry;
    entry.id = {streamFromBytes(std::string(24, 's')).value(), n * 3 + 1};
    entry.hlc = (1'773'000'000'000LL + n * 1000) << 16;
    entry.act = derivedId("act", std::to_string(n), "");
    entry.entity = derivedId("entity", std::to_string(n / 4), "");
    entry.type = n % 2 == 0 ? "mark" : "thing of tomorrow";
    entry.by = "somebody";
    entry.at = timeAt("2026-03-14T09:00:00+13:00");
    entry.fields = {{"state", "pass"}, {"n", n}, {"deep", Value::List{Value::Map{{"x", 1.5}}, Value()}}};
    if (n % 3 == 0)
        entry.where = GeoPoint{-41.25, 174.75, 12.0, Length::fromSi(8.0)};
    if (n % 5 == 0)
        entry.scope = derivedId("walk", "", "");
    if (n > 0)
        entry.prev = {{entry.id.stream, 1}, {streamFromBytes(std::string(24, 't')).value(), 9}};
    return entry;
}

std::vector<IncomingEntry> some(int count)
{
    std::vector<IncomingEntry> entries;
    for (int n = 0; n < count; ++n)
        entries.push_back({entryOf(n), canonicalBytes(entryOf(n))});
    return entries;
}

const DeviceKey key = DeviceKey::fromSeed(std::string(32, 'k'));

SegmentFacts factsOf(const DeviceKey &device)
{
    StreamId stream;
    stream.device = device.deviceId();
    return {{}, derivedId("rig", "", ""), stream, 1, {}};
}

} // namespace

TEST_CASE("entries come back byte for byte out of their columns")
{
    for (const int count : {1, 2, 7, 100}) {
        const auto entries = some(count);
        const std::string packed = packEntries(entries).value();
        const auto back = unpackEntries(packed).value();
        REQUIRE(back.size() == entries.size());
        for (std::size_t i = 0; i < back.size(); ++i)
            CHECK(back[i].bytes == entries[i].bytes);
        CHECK(packEntries(back).value() == packed);
    }
}

TEST_CASE("what cannot be packed is refused, not changed")
{
    auto entries = some(1);
    entries[0].bytes += "x"; // not the canonical bytes
    CHECK(packEntries(entries).error().code == Errc::Unsupported);
    entries = some(1);
    for (int i = 0; i < 70; ++i)
        entries[0].entry.prev.push_back({entries[0].entry.id.stream, i + 1});
    CHECK(packEntries(entries).error().code == Errc::Unsupported);
}

TEST_CASE("a segment opens with its key and no other, and says whose it is")
{
    const Secret epoch = Secret::random();
    const auto entries = some(30);
    const auto sealed =
        sealSegment(key, epoch, factsOf(key), entries, timeAt("2026-03-14T09:00:00+13:00")).value();
    const auto head = readSegmentHead(sealed.bytes).value();
    CHECK(head.facts.hash == blake2b(sealed.bytes));
    CHECK(head.facts.stream.device == key.deviceId());
    CHECK(head.count == 30);
    CHECK(head.epoch == epochName(epoch));
    const auto opened = openSegment(sealed.bytes, epoch).value();
    REQUIRE(opened.size() == 30);
    CHECK(opened[29].bytes == entries[29].bytes);
    CHECK(openSegment(sealed.bytes, Secret::random()).error().code == Errc::Corrupt);
    // nothing readable outside: neither names of fields nor of people
    CHECK(sealed.bytes.find("somebody") == std::string::npos);
    CHECK(sealed.bytes.find("pass") == std::string::npos);
}

TEST_CASE("a signature for one purpose says nothing for another")
{
    const std::string bytes = signed1(key, "one", "payload");
    const Envelope envelope = parseSigned1(bytes).value();
    CHECK(envelope.payload == "payload");
    CHECK(isSignedBy(envelope, key.publicKey(), "one"));
    CHECK_FALSE(isSignedBy(envelope, key.publicKey(), "two"));
    CHECK_FALSE(isSignedBy(envelope, DeviceKey::random().publicKey(), "one"));
    // RFC 9052 section 4.2 [RFC9052]: tag 18, four parts, EdDSA as RFC 9053 section 2.2 [RFC9053] numbers it
    CHECK(toHex(bytes.substr(0, 8)) == "d28443a10127a047");
    for (const std::size_t size : {std::size_t{0}, std::size_t{23}, std::size_t{24}, std::size_t{255},
                                   std::size_t{256}, std::size_t{65'535}, std::size_t{65'536}}) {
        const std::string payload(size, 'p');
        CHECK(parseSigned1(signed1(key, "one", payload)).value().payload == payload);
    }
}

TEST_CASE("compressed bytes are bounded before they grow") // frames as [RFC8878] has them
{
    const std::string plain(100'000, 'a');
    const std::string small = squeeze(plain);
    CHECK(small.size() < 1000);
    CHECK(unsqueeze(small, 100'000).value() == plain);
    CHECK(unsqueeze(small, 99'999).error().code == Errc::OutOfRange);
    CHECK(unsqueeze(small + "x", 100'000).error().code == Errc::Corrupt);
    CHECK(unsqueeze(small.substr(0, small.size() - 1), 100'000).error().code == Errc::Corrupt);
    CHECK(unsqueeze("", 100).error().code == Errc::Corrupt);
    CHECK(unsqueeze(squeeze(""), 0).value().empty());
}

TEST_CASE("a thousand marks as people make them: bytes an entry")
{
    Party party("sizes");
    const Id rig = party.addRig();
    const Id walk = party.home.ids.next();
    party.set(walk, "walk", {{"rig", rig.text()}, {"kind", "before_road"}});
    for (int n = 0; n < 1000; ++n)
        party.set(derivedId("mark", walk.view(), std::to_string(n)), "mark",
                  {{"walk", walk.text()}, {"point", "point-" + std::to_string(n)}, {"state", "pass"}});
    const auto entries =
        unsentOf(party.book(), rig, 1000, maxPlainBytes, [](const StreamId &) { return true; }).value();
    REQUIRE(entries.size() == 1000);
    const auto sealed =
        sealSegment(key, Secret::random(), factsOf(key), entries, party.home.clock.now()).value();
    MESSAGE("1000 marks, each an act of its own: ", static_cast<double>(sealed.bytes.size()) / 1000.0,
            " bytes an entry");
    CHECK(sealed.bytes.size() <
          48 * 1000); // an act's and a thing's id are 32 bytes of it that nothing shortens
}
