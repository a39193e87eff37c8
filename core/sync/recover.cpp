// SPDX-License-Identifier: Apache-2.0
// Control records alone are enough: entries come by the next exchange, under the new device's own key.
#include "sync/recover.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "sync/words.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t maxRecords = 20'000;
constexpr std::size_t markBytes = 8;
constexpr std::size_t idDigits = 32;

// Unreadable and foreign files are passed over: they may be anything.
Result<std::vector<SignedControl>> recordsIn(Store &store, const Id &rig, const std::string &folder)
{
    const auto devices = store.list(folder);
    if (!devices)
        return devices.error();
    std::vector<SignedControl> records;
    for (const StoreFile &device : *devices) {
        if (device.name.empty() || device.name.back() != '/')
            continue;
        const std::string path = folder + "/" + device.name.substr(0, device.name.size() - 1);
        const auto files = store.list(path);
        if (!files)
            return files.error();
        for (const StoreFile &file : *files) {
            const std::string name = path + "/" + file.name;
            if (!nameIsFine(name) || records.size() >= maxRecords)
                continue;
            const auto bytes = store.read(name, maxControlBytes);
            if (!bytes && (bytes.error().code == Errc::Io || bytes.error().code == Errc::Network))
                return bytes.error();
            auto record = bytes ? readControl(*bytes) : Result<ControlRecord>(bytes.error());
            if (record && record->space == rig)
                records.push_back({std::move(record).value(), *bytes});
        }
    }
    return records;
}

} // namespace

std::string rigMark(const Hash &root) { return wordsFrom(root.view().substr(0, markBytes)); }

Result<std::vector<FoundRig>> rigsOwnedBy(Store &store, const DeviceKey &key)
{
    const std::string top = "snugwalk1";
    const auto folders = store.list(top);
    if (!folders)
        return folders.error();
    std::vector<FoundRig> found;
    for (const StoreFile &folder : *folders) {
        const auto rig = folder.name.size() == idDigits + 1 && folder.name.back() == '/'
                             ? Id::parse(folder.name.substr(0, idDigits))
                             : std::nullopt;
        if (!rig)
            continue;
        const auto records = recordsIn(store, *rig, top + "/" + rig->text() + "/c");
        if (!records)
            return records.error();
        std::vector<ControlRecord> all;
        for (const SignedControl &record : *records)
            all.push_back(record.record);
        for (const ControlRecord &root : all) {
            if (root.action != "found")
                continue;
            const RigMembers members = membersFrom(*rig, root.hash, all);
            const Member *holder = members.find(key.deviceId());
            if (holder != nullptr && holder->role() == SyncRole::Owner)
                found.push_back({*rig, root.hash, *records});
        }
    }
    return found;
}

Result<FoundRig> rigOfMark(std::vector<FoundRig> found, std::string_view mark, const std::string &store)
{
    if (!mark.empty()) {
        const auto wanted = bytesFromWords(mark);
        if (!wanted)
            return wanted.error();
        std::erase_if(
            found, [&](const FoundRig &rig) { return bytesFromWords(rigMark(rig.root)).value() != *wanted; });
    }
    if (found.size() == 1)
        return found.front();
    if (found.empty())
        return Error{Errc::NotFound, "this store has no rig of that key", store,
                     mark.empty() ? "sync it once from a device that has the rig, or take another store"
                                  : "compare the mark; a rig with another one was made up by somebody"};
    return Error{Errc::Conflict, std::to_string(found.size()) + " rigs at this store name that key an owner",
                 store, "type the mark printed beside the words with --mark"};
}

Status recoverRig(Logbook &book, const Keys &mine, const DeviceKey &printed, const FoundRig &rig)
{
    const auto shared = sharedRigs(book);
    if (!shared)
        return shared.error();
    const bool isHere =
        std::find(shared->begin(), shared->end(), std::pair(rig.rig, rig.root)) != shared->end();
    if (!isHere)
        SNUG_TRY(joinRig(book, rig.rig, rig.root));
    std::vector<ControlRecord> all;
    for (const SignedControl &record : rig.records)
        all.push_back(record.record);
    const RigMembers members = membersFrom(rig.rig, rig.root, all);
    for (const SignedControl &record : rig.records) {
        if (members.find(record.record.signer) != nullptr)
            SNUG_TRY(keepControl(book, rig.rig, record.record.hash, record.bytes));
    }
    SNUG_TRY(
        enrollDevice(book, Keys(printed), rig.rig,
                     {mine.device.publicKey(), mine.pair.publicKey(), book.label(), SyncRole::Owner, ""}));
    const auto settled = settleRoles(book, rig.rig);
    return settled ? done() : Status(settled.error());
}

} // namespace snugwalk
