// SPDX-License-Identifier: Apache-2.0
// Control records to signed bytes and back.
#include "sync/control.hpp"

#include <algorithm>

#include "sync/envelope.hpp"

namespace snugwalk {
namespace {

constexpr std::string_view purpose = "snugwalk control 1";

Error broken(const char *what) { return {Errc::Corrupt, std::string("a control record ") + what, "", ""}; }

} // namespace

SignedControl signControl(const DeviceKey &key, ControlRecord record)
{
    std::sort(record.seen.begin(), record.seen.end());
    Value::List seen;
    for (const Hash &hash : record.seen)
        seen.emplace_back(Bytes{std::string(hash.view())});
    record.signer = key.deviceId();
    record.publicKey = key.publicKey();
    const Value payload(Value::Map{{"v", 1},
                                   {"space", Bytes{std::string(record.space.view())}},
                                   {"key", Bytes{record.publicKey}},
                                   {"counter", record.counter},
                                   {"prev", Bytes{std::string(record.prev.view())}},
                                   {"seen", std::move(seen)},
                                   {"at", formatLocal(record.at)},
                                   {"action", record.action},
                                   {"body", record.body}});
    std::string bytes = signed1(key, purpose, encodeCbor(payload));
    record.hash = blake2b(bytes);
    return {std::move(record), std::move(bytes)};
}

Result<ControlRecord> readKeptControl(std::string_view bytes)
{
    if (bytes.size() > maxControlBytes)
        return Error{Errc::OutOfRange, "a control record larger than 256 KiB", "", ""};
    const Result<Envelope> envelope = parseSigned1(bytes);
    if (!envelope)
        return envelope.error();
    const Result<Value> v = decodeCbor(envelope->payload);
    if (!v)
        return v.error();
    const auto space = (*v)["space"].asBytes();
    const auto key = (*v)["key"].asBytes();
    const auto counter = (*v)["counter"].asInt();
    const auto prev = Hash::fromBytes((*v)["prev"].asBytes().value_or(""));
    const auto at = parseLocal((*v)["at"].asString().value_or(""));
    const auto action = (*v)["action"].asString();
    if (!space || space->size() != 16 || !key || key->size() != 32 || !counter || *counter < 1 || !prev ||
        !at || !action || !(*v)["body"].isMap() || !(*v)["v"].asInt())
        return broken("whose members cannot be read");
    ControlRecord record{blake2b(bytes),
                         Id::fromBytes(*space),
                         Id::fromBytes(blake2b(*key).view().substr(0, 16)),
                         *key,
                         *counter,
                         *prev,
                         {},
                         *at,
                         *action,
                         (*v)["body"]};
    for (const Value &item : (*v)["seen"].list()) {
        const auto hash = Hash::fromBytes(item.asBytes().value_or(""));
        if (!hash || (!record.seen.empty() && !(record.seen.back() < *hash)) || record.seen.size() == maxSeen)
            return broken("that names what it has seen wrongly");
        record.seen.push_back(*hash);
    }
    if ((record.counter == 1) != (record.prev == Hash{}))
        return broken("that is the first, or not, and says otherwise");
    return record;
}

Result<ControlRecord> readControl(std::string_view bytes)
{
    Result<ControlRecord> record = readKeptControl(bytes);
    if (record && !isSignedBy(parseSigned1(bytes).value(), record->publicKey, purpose))
        return broken("whose signature is wrong");
    return record;
}

} // namespace snugwalk
