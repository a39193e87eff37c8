// SPDX-License-Identifier: Apache-2.0
// Control records of one rig at one store. Only what members left is read, from the first record on, for
// anybody may put files there: whoever a record enrolls may have left records too.
#include "sync/meeting.hpp"
#include "sync/store_names.hpp"

namespace snugwalk {

// The record that founded the rig, in whosever folder it lies; nothing when it is here or not at the store.
Result<std::optional<std::string>> Meeting::freshRoot()
{
    if (!m_members.effective.empty())
        return std::optional<std::string>();
    const auto devices = m_store.list(rigFolder(m_rig) + "/c");
    if (!devices)
        return devices.error();
    const std::string name = counterName(1, m_root);
    for (const auto &device : **devices) {
        const std::string path = rigFolder(m_rig) + "/c/" + device.first;
        const auto bytes = m_store.read(path, name, maxControlBytes, [&](std::string_view found) {
            return blake2b(found) == m_root && readControl(found).has_value();
        });
        if (!bytes)
            return bytes.error();
        if (*bytes)
            return *bytes;
    }
    return std::optional<std::string>();
}

Result<std::vector<std::pair<Hash, std::string>>> Meeting::freshControls(const Id &device)
{
    std::set<std::string> known;
    std::size_t count = 0;
    for (const auto *list : {&m_members.effective, &m_members.idle}) {
        for (const ControlRecord &record : *list) {
            known.insert(record.hash.text().substr(0, shortHash));
            count += record.signer == device ? 1 : 0;
        }
    }
    const std::string path = rigFolder(m_rig) + "/c/" + device.text();
    const auto files = m_store.list(path);
    if (!files)
        return files.error();
    std::vector<std::pair<Hash, std::string>> fresh;
    std::size_t size = 0;
    for (const auto &file : **files) {
        const std::string hash = claimedHash(file.first);
        if (known.count(hash) > 0)
            continue;
        if (count >= maxControlsADevice || size >= maxControlBytesADevice)
            break;
        const auto bytes = m_store.read(path, file.first, maxControlBytes, [&](std::string_view found) {
            const auto read = readControl(found);
            return read && read->space == m_rig && read->signer == device &&
                   read->hash.text().substr(0, shortHash) == hash;
        });
        if (!bytes)
            return bytes.error();
        if (!*bytes)
            continue;
        ++count;
        size += (*bytes)->size();
        fresh.emplace_back(blake2b(**bytes), **bytes);
    }
    return fresh;
}

Status Meeting::readControls()
{
    const auto root = freshRoot();
    if (!root)
        return root.error();
    if (*root) {
        SNUG_TRY(keepControl(m_book, m_rig, m_root, **root));
        SNUG_TRY(refreshMembers());
    }
    std::set<Id> asked;
    for (bool isNews = true; isNews;) {
        isNews = false;
        for (const auto &item : m_members.members) {
            if (!asked.insert(item.first).second)
                continue;
            const auto fresh = freshControls(item.first);
            if (!fresh)
                return fresh.error();
            if (fresh->empty())
                continue;
            SNUG_TRY(keepControls(m_book, m_rig, *fresh));
            isNews = true;
        }
        if (isNews)
            SNUG_TRY(refreshMembers());
    }
    const auto settled = settleRoles(m_book, m_rig);
    return settled ? done() : Status(settled.error());
}

Status Meeting::publishControls()
{
    const auto stored = controlsOf(m_book, m_rig);
    if (!stored)
        return stored.error();
    for (const std::string &bytes : *stored) {
        const auto record = readKeptControl(bytes);
        if (!record)
            return record.error();
        SNUG_TRY(publish(rigFolder(m_rig) + "/c/" + record->signer.text(),
                         counterName(record->counter, record->hash), "ctl", bytes,
                         record->signer == m_keys.device.deviceId()));
    }
    return done();
}

} // namespace snugwalk
