// SPDX-License-Identifier: Apache-2.0
// Writing control records.
#include "sync/share.hpp"

#include <algorithm>

#include "logbook/thing.hpp"
#include "sync/segment.hpp"
#include "sync/words.hpp"

namespace snugwalk {
namespace {

Value idBytes(const Id &id) { return Bytes{std::string(id.view())}; }
Value hashBytes(const Hash &hash) { return Bytes{std::string(hash.view())}; }

// The next record of this device, after everything it knows.
ControlRecord following(const RigMembers &members, const Keys &keys, const LocalTime &now, std::string action,
                        Value::Map body)
{
    ControlRecord next;
    next.space = members.space;
    next.counter = 1;
    next.at = now;
    next.action = std::move(action);
    next.body = Value(std::move(body));
    std::set<Hash> tips;
    std::set<Hash> seen;
    for (const auto *list : {&members.effective, &members.idle}) {
        for (const ControlRecord &record : *list) {
            tips.insert(record.hash);
            seen.insert(record.seen.begin(), record.seen.end());
            if (record.signer == keys.device.deviceId() && record.counter >= next.counter) {
                next.counter = record.counter + 1;
                next.prev = record.hash;
            }
        }
    }
    std::set_difference(tips.begin(), tips.end(), seen.begin(), seen.end(), std::back_inserter(next.seen));
    return next;
}

Status write(Logbook &book, const Keys &keys, const RigMembers &members, std::string action, Value::Map body)
{
    const SignedControl made =
        signControl(keys.device, following(members, keys, book.now(), std::move(action), std::move(body)));
    return keepControl(book, members.space, made.record.hash, made.bytes);
}

Result<RigMembers> asOwner(Logbook &book, const Keys &keys, const Id &rig)
{
    Result<RigMembers> members = membersOf(book, rig);
    if (!members)
        return members;
    const Member *me = members->find(keys.device.deviceId());
    if (me == nullptr || me->role() != SyncRole::Owner)
        return Error{Errc::Unsupported, "only an owner's device may do this", rig.shortText(),
                     "do it on an owner's device"};
    return members;
}

// Where each stream of a device stands here: the end of what counts.
Result<Value::List> cutsOf(Logbook &book, const Id &rig, const Id &device)
{
    const auto segments = segmentsOf(book, rig);
    if (!segments)
        return segments.error();
    Cuts cuts;
    for (const KeptSegment &segment : *segments) { // in order of stream and counter
        if (segment.facts.stream.device != device)
            continue;
        Cut &cut = cuts[segment.facts.stream];
        if (segment.facts.counter == cut.counter + 1 && segment.facts.prev == cut.hash)
            cut = {segment.facts.counter, segment.facts.hash};
    }
    Value::List list;
    for (const auto &[stream, cut] : cuts) {
        if (cut.counter > 0)
            list.emplace_back(Value::Map{
                {"stream", Bytes{stream.bytes()}}, {"counter", cut.counter}, {"hash", hashBytes(cut.hash)}});
    }
    return list;
}

Status freshEpoch(Logbook &book, const Keys &keys, const Id &rig)
{
    const auto members = membersOf(book, rig);
    if (!members)
        return members.error();
    const Secret key = Secret::random();
    Value::List sealed;
    for (const auto &[device, member] : members->members) {
        const auto box = sealTo(member.sealKey, key.view());
        if (member.role() && box)
            sealed.emplace_back(Value::Map{{"device", idBytes(device)}, {"sealed", Bytes{*box}}});
    }
    return write(book, keys, *members, "epoch", {{"epoch", Bytes{epochName(key)}}, {"sealed", sealed}});
}

} // namespace

RigKeys openKeys(const RigMembers &members, const Keys &keys)
{
    RigKeys opened;
    const Id device = keys.device.deviceId();
    for (const Epoch &epoch : members.epochs) {
        const auto sealed = epoch.sealed.find(device);
        if (sealed == epoch.sealed.end())
            continue;
        const auto plain = keys.pair.open(sealed->second);
        const auto key = plain ? Secret::fromBytes(*plain) : Result<Secret>(plain.error());
        if (!key || epochName(*key) != epoch.name)
            continue;
        opened.all.emplace(epoch.name, *key);
        opened.latest = epoch.name;
    }
    return opened;
}

Status shareRig(Logbook &book, const Keys &keys, const Id &rig)
{
    const Result<Thing> known = thing(book.db(), "rig", rig);
    if (!known)
        return known.error();
    const Secret key = Secret::random();
    const auto sealed = sealTo(keys.pair.publicKey(), key.view());
    if (!sealed)
        return sealed.error();
    RigMembers none;
    none.space = rig;
    const Value::List boxes{
        Value::Map{{"device", idBytes(keys.device.deviceId())}, {"sealed", Bytes{*sealed}}}};
    const SignedControl root = signControl(keys.device, following(none, keys, book.now(), "found",
                                                                  {{"seal", Bytes{keys.pair.publicKey()}},
                                                                   {"name", book.label()},
                                                                   {"epoch", Bytes{epochName(key)}},
                                                                   {"sealed", boxes}}));
    return keepRoot(book, rig, root.record.hash, root.bytes);
}

Status enrollDevice(Logbook &book, const Keys &keys, const Id &rig, const NewDevice &device)
{
    const auto members = asOwner(book, keys, rig);
    if (!members)
        return members.error();
    const Id id = Id::fromBytes(blake2b(device.publicKey).view().substr(0, 16));
    const Member *known = members->find(id);
    if (known != nullptr && known->role() == SyncRole::Owner && device.role != SyncRole::Owner &&
        members->owners() == 1)
        return Error{Errc::Conflict, "this is the last owner's device", known->name,
                     "enroll another owner first"};
    const auto cuts = cutsOf(book, rig, id);
    if (!cuts)
        return cuts.error();
    Value::List sealed;
    for (const auto &[name, key] : openKeys(*members, keys).all) {
        const auto box = sealTo(device.sealKey, key.view());
        if (!box)
            return box.error();
        sealed.emplace_back(Value::Map{{"epoch", Bytes{name}}, {"sealed", Bytes{*box}}});
    }
    return write(book, keys, *members, "enroll",
                 {{"key", Bytes{device.publicKey}},
                  {"seal", Bytes{device.sealKey}},
                  {"name", device.name},
                  {"role", slugOf(device.role)},
                  {"until", device.until},
                  {"cuts", *cuts},
                  {"keys", sealed}});
}

Status revokeDevice(Logbook &book, const Keys &keys, const Id &rig, const Id &device,
                    const std::string &reason)
{
    const auto members = asOwner(book, keys, rig);
    if (!members)
        return members.error();
    const Member *known = members->find(device);
    if (known == nullptr || !known->role())
        return Error{Errc::NotFound, "no such device belongs to this rig", device.shortText(),
                     "list the devices first"};
    if (known->role() == SyncRole::Owner && members->owners() == 1)
        return Error{Errc::Conflict, "this is the last owner's device", known->name,
                     "enroll another owner first"};
    const auto cuts = cutsOf(book, rig, device);
    if (!cuts)
        return cuts.error();
    Hash last;
    std::int64_t counter = 0;
    for (const ControlRecord &record : members->effective) {
        if (record.signer == device && record.counter > counter) {
            counter = record.counter;
            last = record.hash;
        }
    }
    SNUG_TRY(write(
        book, keys, *members, "revoke",
        {{"device", idBytes(device)}, {"reason", reason}, {"cuts", *cuts}, {"control", hashBytes(last)}}));
    SNUG_TRY(freshEpoch(book, keys, rig));
    const auto settled = settleRoles(book, rig);
    return settled ? done() : Status(settled.error());
}

Status adoptEntries(Logbook &book, const Keys &keys, const Id &rig, const std::vector<EntryId> &entries)
{
    const auto members = asOwner(book, keys, rig);
    const auto aside = asideOf(book, rig);
    if (!members || !aside)
        return members ? aside.error() : members.error();
    Value::List list;
    for (const EntryId &id : entries) {
        const auto found = std::find_if(aside->begin(), aside->end(),
                                        [&](const SetAside &item) { return item.entry.id == id; });
        if (found == aside->end())
            return Error{Errc::NotFound, "no such entry was set aside", id.stream.text(), "list them first"};
        list.emplace_back(Value::Map{{"stream", Bytes{id.stream.bytes()}},
                                     {"seq", id.seq},
                                     {"hash", hashBytes(blake2b(canonicalBytes(found->entry)))}});
    }
    SNUG_TRY(write(book, keys, *members, "adopt", {{"entries", list}}));
    const auto settled = settleRoles(book, rig);
    return settled ? done() : Status(settled.error());
}

Result<Hash> rootOf(Logbook &book, const Id &rig)
{
    const auto shared = sharedRigs(book);
    if (!shared)
        return shared.error();
    for (const auto &[id, root] : *shared) {
        if (id == rig)
            return root;
    }
    return Error{Errc::NotFound, "this rig is not shared", rig.shortText(), "share it first"};
}

Result<std::string> enrollPaperOwner(Logbook &book, const Keys &keys, const Id &rig, const std::string &name)
{
    const Keys paper(DeviceKey::random());
    SNUG_TRY(enrollDevice(book, keys, rig,
                          {paper.device.publicKey(), paper.pair.publicKey(), name, SyncRole::Owner, ""}));
    return wordsFrom(paper.device.seed());
}

Result<DeviceKey> keyFromWords(std::string_view words)
{
    const Result<std::string> seed = bytesFromWords(words);
    if (!seed)
        return seed.error();
    if (seed->size() != 32)
        return Error{Errc::InvalidInput, "these words are not a key", std::to_string(seed->size()) + " bytes",
                     "type the 24 words of the printed key"};
    return DeviceKey::fromSeed(*seed);
}

Result<ReceiveCount> settleRoles(Logbook &book, const Id &rig)
{
    const auto pending = needsJudging(book, rig);
    if (!pending)
        return pending.error();
    if (!*pending)
        return ReceiveCount{};
    const auto members = membersOf(book, rig);
    const auto segments = segmentsOf(book, rig);
    if (!members || !segments)
        return members ? segments.error() : members.error();
    return judgeAll(book, rig, judgeOf(*members, *segments));
}

} // namespace snugwalk
