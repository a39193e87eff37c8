// SPDX-License-Identifier: Apache-2.0
// Sealing and opening segments; core/sync/FORMAT.md has the members.
#include "sync/segment.hpp"

#include "sync/columns.hpp"
#include "sync/envelope.hpp"
#include "sync/squeeze.hpp"

namespace snugwalk {
namespace {

constexpr std::string_view purpose = "snugwalk segment 1";

Error broken(const char *what) { return {Errc::Corrupt, std::string("a segment ") + what, "", ""}; }

// All members but the cipher are bound to it.
std::string boundBytes(Value::Map members)
{
    members.erase("cipher");
    return encodeCbor(Value(std::move(members)));
}

std::optional<std::string> bytesOf(const Value &value, std::size_t size)
{
    auto bytes = value.asBytes();
    return bytes && bytes->size() == size ? bytes : std::nullopt;
}

Result<SegmentHead> headFrom(const Value &v)
{
    const auto space = bytesOf(v["space"], 16);
    const auto stream = bytesOf(v["stream"], 24);
    const auto key = bytesOf(v["key"], 32);
    const auto prev = bytesOf(v["prev"], 32);
    const auto epoch = bytesOf(v["epoch"], 8);
    const auto counter = v["counter"].asInt();
    const auto count = v["count"].asInt();
    const auto plain = v["plain"].asInt();
    const auto reader = v["reader"].asInt();
    const auto at = parseLocal(v["at"].asString().value_or(""));
    if (!space || !stream || !key || !prev || !epoch || !bytesOf(v["nonce"], 24))
        return broken("whose names cannot be read");
    if (!counter || *counter < 1 || !count || *count < 1 || !plain || *plain < 1 || !reader || !at ||
        !v["cipher"].asBytes() || !v["v"].asInt())
        return broken("whose members cannot be read");
    if (*count > static_cast<std::int64_t>(maxSegmentEntries) ||
        *plain > static_cast<std::int64_t>(maxPlainBytes))
        return Error{Errc::OutOfRange, "a segment of more than may be", "", ""};
    SegmentHead head;
    head.facts = {{},
                  Id::fromBytes(*space),
                  streamFromBytes(*stream).value(),
                  *counter,
                  Hash::fromBytes(*prev).value()};
    head.publicKey = *key;
    head.count = *count;
    head.epoch = *epoch;
    head.reader = *reader;
    head.sealed = *at;
    head.plainSize = *plain;
    if ((*counter == 1) != (head.facts.prev == Hash{}))
        return broken("that is the first, or not, and says otherwise");
    if (blake2b(*key).view().substr(0, 16) != head.facts.stream.device.view())
        return broken("whose key is not its device's");
    return head;
}

Result<Value> membersOf(std::string_view bytes)
{
    if (bytes.size() > maxSegmentBytes)
        return Error{Errc::OutOfRange, "a segment larger than 8 MiB", "", ""};
    const Result<Envelope> envelope = parseSigned1(bytes);
    if (!envelope)
        return envelope.error();
    return decodeCbor(envelope->payload);
}

} // namespace

std::string epochName(const Secret &key) { return keyedHash(key, "snugwalk epoch", "").substr(0, 8); }

Result<SealedSegment> sealSegment(const DeviceKey &key, const Secret &epoch, SegmentFacts facts,
                                  const std::vector<IncomingEntry> &entries, const LocalTime &now)
{
    if (entries.empty() || entries.size() > maxSegmentEntries)
        return Error{Errc::OutOfRange, "a segment holds 1 to 10,000 entries", "", ""};
    const Result<std::string> plain = packEntries(entries);
    if (!plain)
        return plain.error();
    if (plain->size() > maxPlainBytes)
        return Error{Errc::OutOfRange, "one entry is larger than can be sent",
                     entries.front().entry.type + " " + entries.front().entry.entity.shortText(),
                     "split what it holds"};
    Value::Map members{{"v", segmentVersion},
                       {"reader", 1},
                       {"space", Bytes{std::string(facts.space.view())}},
                       {"stream", Bytes{facts.stream.bytes()}},
                       {"key", Bytes{key.publicKey()}},
                       {"counter", facts.counter},
                       {"count", entries.size()},
                       {"prev", Bytes{std::string(facts.prev.view())}},
                       {"at", formatLocal(now)},
                       {"epoch", Bytes{epochName(epoch)}},
                       {"nonce", Bytes{randomBytes(24)}},
                       {"plain", plain->size()}};
    const std::string nonce = *members["nonce"].asBytes();
    members["cipher"] = Bytes{seal(epoch, nonce, squeeze(*plain), boundBytes(members))};
    SealedSegment sealed{facts, signed1(key, purpose, encodeCbor(Value(std::move(members))))};
    sealed.facts.hash = blake2b(sealed.bytes);
    return sealed;
}

Result<SegmentHead> readSegmentHead(std::string_view bytes)
{
    const Result<Value> members = membersOf(bytes);
    if (!members)
        return members.error();
    Result<SegmentHead> head = headFrom(*members);
    if (!head)
        return head;
    if (!isSignedBy(parseSigned1(bytes).value(), head->publicKey, purpose))
        return broken("whose signature is wrong");
    head->facts.hash = blake2b(bytes);
    return head;
}

Result<std::vector<IncomingEntry>> openSegment(std::string_view bytes, const Secret &epoch)
{
    const Result<Value> members = membersOf(bytes);
    if (!members)
        return members.error();
    const Result<SegmentHead> head = headFrom(*members);
    if (!head)
        return head.error();
    if (head->reader > segmentVersion)
        return Error{Errc::Unsupported, "a segment of a newer version", "",
                     "update the program on this machine; the entries are kept until then"};
    const Result<std::string> squeezed = unseal(epoch, *(*members)["nonce"].asBytes(),
                                                *(*members)["cipher"].asBytes(), boundBytes(members->map()));
    if (!squeezed)
        return squeezed.error();
    const Result<std::string> plain = unsqueeze(*squeezed, maxPlainBytes);
    if (!plain)
        return plain.error();
    if (static_cast<std::int64_t>(plain->size()) != head->plainSize)
        return broken("whose entries have another size than it says");
    Result<std::vector<IncomingEntry>> entries = unpackEntries(*plain);
    if (entries && static_cast<std::int64_t>(entries->size()) != head->count)
        return broken("that holds another number of entries than it says");
    return entries;
}

} // namespace snugwalk
