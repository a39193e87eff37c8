// SPDX-License-Identifier: Apache-2.0
// Rows 10 to 12, 14 to 16, 18: damaged, forged and made-up bytes are refused before anything is done with
// them.
#include <doctest/doctest.h>

#include "base/text.hpp"
#include "row.hpp"
#include "support/party.hpp"
#include "sync/columns.hpp"
#include "sync/control.hpp"
#include "sync/envelope.hpp"
#include "sync/segment.hpp"
#include "sync/squeeze.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const DeviceKey key = DeviceKey::fromSeed(std::string(32, 'k'));
const Secret epoch = Secret::fromBytes(std::string(32, 'e')).value();

StreamId streamOf(const DeviceKey &device)
{
    StreamId stream;
    stream.device = device.deviceId();
    return stream;
}

IncomingEntry entryWith(const std::string &note)
{
    Entry entry;
    entry.id = {streamOf(key), 1};
    entry.hlc = 1'773'000'000'000LL << 16;
    entry.act = derivedId("act", "", "");
    entry.entity = derivedId("entity", "", "");
    entry.type = "mark";
    entry.by = "somebody";
    entry.at = timeAt("2026-03-14T09:00:00+13:00");
    entry.fields = {{"state", "pass"}, {"note", note}};
    return {entry, canonicalBytes(entry)};
}

// About 4 KiB: the note does not compress.
SealedSegment segmentOf4KiB()
{
    return sealSegment(key, epoch, {{}, derivedId("rig", "", ""), streamOf(key), 1, {}},
                       {entryWith(toHex(randomBytes(3600)))}, timeAt("2026-03-14T09:00:00+13:00"))
        .value();
}

// Signs any payload: what a member who means harm can do.
std::string signedSegment(std::string_view payload) { return signed1(key, "snugwalk segment 1", payload); }

// A head that is in order around plain bytes chosen by the test.
std::string segmentAround(std::string_view squeezed, std::int64_t plainSize)
{
    Value::Map members{{"v", 1},
                       {"reader", 1},
                       {"space", Bytes{std::string(derivedId("rig", "", "").view())}},
                       {"stream", Bytes{streamOf(key).bytes()}},
                       {"key", Bytes{key.publicKey()}},
                       {"counter", 1},
                       {"count", 1},
                       {"prev", Bytes{std::string(32, '\0')}},
                       {"at", "2026-03-14T09:00:00+13:00"},
                       {"epoch", Bytes{epochName(epoch)}},
                       {"nonce", Bytes{std::string(24, 'n')}},
                       {"plain", plainSize}};
    members["cipher"] = Bytes{seal(epoch, std::string(24, 'n'), squeezed, encodeCbor(Value(members)))};
    return signedSegment(encodeCbor(Value(members)));
}

bool isTaken(std::string_view bytes) { return readSegmentHead(bytes) && openSegment(bytes, epoch); }

} // namespace

TEST_CASE("row 11: one bit flipped anywhere in a segment of 4 KiB")
{
    const SealedSegment sealed = segmentOf4KiB();
    REQUIRE(isTaken(sealed.bytes));
    std::size_t bits = 0;
    std::size_t taken = 0;
    for (std::size_t at = 0; at < sealed.bytes.size(); ++at) {
        for (unsigned bit = 0; bit < 8; ++bit) {
            std::string flipped = sealed.bytes;
            flipped[at] = static_cast<char>(static_cast<unsigned char>(flipped[at]) ^ 1U << bit);
            ++bits;
            taken += readSegmentHead(flipped) ? 1 : 0; // refused before anything is opened
        }
    }
    row(11, std::to_string(bits) + " bits, " + std::to_string(taken) + " accepted");
    CHECK(bits >= 32'768);
    CHECK(taken == 0);
}

TEST_CASE("row 12: a segment and a control record cut at every length")
{
    const SealedSegment sealed = segmentOf4KiB();
    const SignedControl control = signControl(key, {{},
                                                    derivedId("rig", "", ""),
                                                    {},
                                                    {},
                                                    1,
                                                    {},
                                                    {},
                                                    timeAt("2026-03-14T09:00:00Z"),
                                                    "adopt",
                                                    Value::Map{}});
    REQUIRE(readControl(control.bytes));
    std::size_t taken = 0;
    for (std::size_t size = 0; size < sealed.bytes.size(); ++size)
        taken += readSegmentHead(std::string_view(sealed.bytes).substr(0, size)) ? 1 : 0;
    for (std::size_t size = 0; size < control.bytes.size(); ++size)
        taken += readControl(std::string_view(control.bytes).substr(0, size)) ? 1 : 0;
    row(12, std::to_string(sealed.bytes.size() + control.bytes.size()) + " lengths, " +
                std::to_string(taken) + " accepted");
    CHECK(taken == 0);
}

TEST_CASE("row 10: 1,000 partial uploads under the final name: none applied, the whole file comes later")
{
    Shared s;
    const Id thing = s.owner.home.ids.next();
    s.owner.set(thing, "trip", {{"rig", s.rig.text()}, {"title", "whole"}});
    s.owner.meet(s.store);
    std::string name;
    for (const auto &[file, bytes] : s.store.files)
        name = file.ends_with(".seg") && file > name ? file : name;
    std::string newest; // the one that the other has not
    for (const auto &[file, bytes] : s.store.files) {
        if (file.ends_with(".seg") && file.find("000000000002-") != std::string::npos)
            newest = file;
    }
    REQUIRE_FALSE(newest.empty());
    const std::string whole = s.store.files.at(newest);
    const auto before = entryCount(s.other.book());
    for (std::size_t cut = 0; cut < 1000; ++cut) {
        s.store.files.find(newest)->second = whole.substr(0, cut * whole.size() / 1000);
        const auto summary = s.other.meet(s.store);
        REQUIRE(entryCount(s.other.book()) == before);
        REQUIRE(summary.damaged >= 1);
    }
    // the writer's next exchange sees the wrong size and publishes beside it
    s.owner.meet(s.store);
    s.other.meet(s.store);
    row(10, "1000 cut points, 0 applied, then complete");
    CHECK(s.other.shown("trip", thing, "title") == Value("whole"));
}

TEST_CASE("row 14: CBOR nested two million deep, and a length of 2^39")
{
    const std::string deep(2'000'000, '\x81');
    const std::string longOne("\x9b\x00\x00\x00\x80\x00\x00\x00\x00", 9);
    const std::string longText("\x5b\x00\x00\x00\x80\x00\x00\x00\x00", 9);
    int taken = 0;
    for (const std::string &bomb : {deep, longOne, longText}) {
        CHECK_FALSE(decodeCbor(bomb));
        taken += isTaken(signedSegment(bomb)) ? 1 : 0;
        taken += readControl(signed1(key, "snugwalk control 1", bomb)) ? 1 : 0;
        taken += unpackEntries(bomb) ? 1 : 0;
        const std::string squeezed = squeeze(bomb);
        taken += isTaken(segmentAround(squeezed, static_cast<std::int64_t>(bomb.size()))) ? 1 : 0;
    }
    row(14, "3 bombs in 4 places, " + std::to_string(taken) + " accepted");
    CHECK(taken == 0);
}

TEST_CASE("row 15: compressed bombs, and frames that lie about their size")
{
    const std::string bomb = squeeze(std::string(maxPlainBytes + 1, '\0'));
    CHECK(bomb.size() < 4096);
    CHECK(openSegment(segmentAround(bomb, 100), epoch).error().code == Errc::OutOfRange);
    CHECK(readSegmentHead(segmentAround(bomb, static_cast<std::int64_t>(maxPlainBytes) + 1)).error().code ==
          Errc::OutOfRange);
    // the frame's own field for the plain size, changed byte by byte [RFC8878] section 3.1.1.1.4
    const std::string frame = squeeze(std::string(100'000, 'a'));
    int taken = 0;
    for (std::size_t at = 4; at < 10; ++at) {
        for (int value = 0; value < 256; ++value) {
            std::string lying = frame;
            lying[at] = static_cast<char>(value);
            const auto plain = unsqueeze(lying, 200'000);
            taken += lying != frame && plain && plain->size() != 100'000 ? 1 : 0;
        }
    }
    row(15, "1 bomb of 4 MiB stopped at its head, 1536 lying frames, " + std::to_string(taken) + " accepted");
    CHECK(taken == 0);
}

TEST_CASE("row 16: CBOR that is not deterministic, in the place of a payload")
{
    // RFC 8949 sections 4.2.1 and 5.6 [RFC8949]: each says something valid in a way that is not ours
    const std::vector<std::string> hex = {"1800",
                                          "1817",
                                          "190017",
                                          "1900ff",
                                          "1a0000ffff",
                                          "1b00000000ffffffff",
                                          "3800",
                                          "3817",
                                          "39000a",
                                          "5800",
                                          "580161",
                                          "590001aa",
                                          "7800",
                                          "780161",
                                          "79000161",
                                          "9800",
                                          "980101",
                                          "99000101",
                                          "b800",
                                          "b801616101",
                                          "b90001616101",
                                          "5f4161ff",
                                          "7f6161ff",
                                          "9f01ff",
                                          "bf616101ff",
                                          "9fff",
                                          "bfff",
                                          "5fff",
                                          "7fff",
                                          "f97e00",
                                          "fa7fc00000",
                                          "fb7ff8000000000000",
                                          "f93c00",
                                          "fa3f800000",
                                          "f7",
                                          "e0",
                                          "f820",
                                          "c001",
                                          "d81801",
                                          "a2616101616102",
                                          "a2616201616101",
                                          "a10102",
                                          "a1f601",
                                          "a14161f6",
                                          "61ff",
                                          "62c328",
                                          "0000",
                                          "f6f6",
                                          "ff",
                                          "1c"};
    int taken = 0;
    for (const std::string &text : hex) {
        const std::string bytes = fromHex(text).value();
        taken += decodeCbor(bytes) ? 1 : 0;
        taken += isTaken(signedSegment(bytes)) ? 1 : 0;
        taken += readControl(signed1(key, "snugwalk control 1", bytes)) ? 1 : 0;
    }
    row(16, std::to_string(hex.size()) + " vectors, " + std::to_string(taken) + " accepted");
    CHECK(hex.size() >= 50);
    CHECK(taken == 0);
}

TEST_CASE("row 18: a segment replayed for another rig or under another stream")
{
    Shared s;
    const Id second = s.owner.addRig("second");
    REQUIRE(shareRig(s.owner.book(), s.owner.keys, second));
    s.owner.set(s.owner.home.ids.next(), "trip", {{"rig", s.rig.text()}});
    s.owner.meet(s.store);
    // every file of the first rig under the second one's folder, and under other streams' folders
    int copies = 0;
    const auto files = s.store.files;
    for (const auto &[name, bytes] : files) {
        if (name.find(s.rig.text()) == std::string::npos)
            continue;
        REQUIRE(s.store.publish(replaceAll(name, s.rig.text(), second.text()), bytes));
        if (name.find("/s/") != std::string::npos)
            REQUIRE(s.store.publish(
                rigFolder(s.rig) + "/s/" + std::string(48, 'a') + name.substr(name.rfind('/')), bytes));
        ++copies;
    }
    const auto before = projectionNow(s.owner.book());
    const auto summary = s.owner.meet(s.store);
    // inside, the head of another rig bound to the cipher: changing it breaks signature and cipher both
    row(18,
        std::to_string(copies) + " files replayed, " + std::to_string(summary.entriesReceived) + " applied");
    CHECK(copies >= 4);
    CHECK(summary.entriesReceived == 0);
    CHECK(summary.damaged >= copies);
    CHECK(projectionNow(s.owner.book()) == before);
}
