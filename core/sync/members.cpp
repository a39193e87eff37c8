// SPDX-License-Identifier: Apache-2.0
// Evaluating control records.
#include "sync/members.hpp"

#include <algorithm>

#include "sync/record_graph.hpp"

namespace snugwalk {
namespace {

Cuts cutsIn(const Value &list)
{
    Cuts cuts;
    for (const Value &item : list.list()) {
        const auto stream = streamFromBytes(item["stream"].asBytes().value_or(""));
        const auto hash = Hash::fromBytes(item["hash"].asBytes().value_or(""));
        const auto counter = item["counter"].asInt();
        if (stream && hash && counter)
            cuts[*stream] = {*counter, *hash};
    }
    return cuts;
}

struct Revoked {
    std::size_t by = 0;              // the record
    std::optional<std::size_t> last; // of the device's own records that still count
};

class Evaluation {
public:
    Evaluation(const Id &space, const Hash &root, const std::vector<ControlRecord> &records)
        : m_root(root), m_graph(records)
    {
        m_result.space = space;
    }

    RigMembers run()
    {
        pass({});
        const std::map<Id, Revoked> revoked = m_revoked;
        const Id space = m_result.space;
        m_result = RigMembers{};
        m_result.space = space;
        m_epochs.clear();
        m_fixed = true;
        const std::vector<bool> counts = pass(revoked);
        for (std::size_t place = 0; place < m_graph.size(); ++place)
            (counts[place] ? m_result.effective : m_result.idle).push_back(m_graph.at(place));
        return std::move(m_result);
    }

private:
    // Which records count.
    std::vector<bool> pass(const std::map<Id, Revoked> &cut)
    {
        std::vector<bool> counts(m_graph.size());
        for (std::size_t place = 0; place < m_graph.size(); ++place) {
            m_place = place;
            counts[place] = mayAct(m_graph.at(place), cut) && apply(m_graph.at(place));
        }
        return counts;
    }

    // Revocations of the first pass stand in the second: whom they bind does not depend on each other.
    [[nodiscard]] bool mayAct(const ControlRecord &record, const std::map<Id, Revoked> &cut) const
    {
        if (record.hash == m_root)
            return record.action == "found";
        if (m_fixed && m_standing.count(m_place) > 0)
            return true;
        const auto own = cut.find(record.signer);
        if (own != cut.end() && (!own->second.last || !m_graph.leadsTo(m_place, *own->second.last)))
            return false;
        const Member *signer = m_result.find(record.signer);
        return signer != nullptr && signer->role() == SyncRole::Owner;
    }

    bool apply(const ControlRecord &record)
    {
        if (record.action == "found" && record.hash == m_root)
            return enroll(record, record.signer, record.publicKey, "owner") && addEpoch(record);
        if (record.action == "enroll") {
            const std::string key = record.body["key"].asBytes().value_or("");
            return key.size() == 32 && enroll(record, Id::fromBytes(blake2b(key).view().substr(0, 16)), key,
                                              record.body["role"].asString().value_or(""));
        }
        if (record.action == "revoke")
            return revoke(record);
        if (record.action == "epoch")
            return addEpoch(record);
        return record.action == "adopt" && adopt(record);
    }

    bool enroll(const ControlRecord &record, const Id &device, const std::string &key,
                const std::string &slug)
    {
        const auto role = syncRoleOf(slug);
        const std::string sealKey = record.body["seal"].asBytes().value_or("");
        if (!role || sealKey.size() != 32)
            return false;
        const bool isNew = m_result.find(device) == nullptr;
        Member &member = m_result.members[device];
        if (!isNew && !member.role() && !knowsRevocation(device))
            return false;
        if (!isNew && member.role() == SyncRole::Owner && *role != SyncRole::Owner && m_result.owners() == 1)
            return false;
        member.device = device;
        member.publicKey = key;
        member.sealKey = sealKey;
        member.name = record.body["name"].asString().value_or("");
        member.accessUntil = record.body["until"].asString().value_or("");
        member.since = record.at;
        member.standings.push_back({role, cutsIn(record.body["cuts"])});
        for (const Value &sealed : record.body["keys"].list())
            addSealed(sealed["epoch"].asBytes().value_or(""), device,
                      sealed["sealed"].asBytes().value_or(""));
        return true;
    }

    [[nodiscard]] bool knowsRevocation(const Id &device)
    {
        const auto revoked = m_revoked.find(device);
        return revoked != m_revoked.end() && m_graph.knows(m_place, revoked->second.by);
    }

    bool revoke(const ControlRecord &record)
    {
        const Id device = Id::fromBytes(record.body["device"].asBytes().value_or(std::string(16, '\0')));
        const auto found = m_result.members.find(device);
        if (found == m_result.members.end() || !found->second.role())
            return false;
        if (found->second.role() == SyncRole::Owner && m_result.owners() == 1)
            return false;
        const auto last = Hash::fromBytes(record.body["control"].asBytes().value_or(""));
        found->second.standings.push_back({std::nullopt, cutsIn(record.body["cuts"])});
        found->second.reason = record.body["reason"].asString().value_or("");
        m_revoked[device] = {m_place, last ? m_graph.placeOf(*last) : std::nullopt};
        m_standing.insert(m_place);
        return true;
    }

    bool addEpoch(const ControlRecord &record)
    {
        const std::string name = record.body["epoch"].asBytes().value_or("");
        if (name.size() != 8)
            return false;
        if (m_epochs.emplace(name, m_result.epochs.size()).second)
            m_result.epochs.push_back({name, {}});
        for (const Value &sealed : record.body["sealed"].list()) {
            const std::string device = sealed["device"].asBytes().value_or("");
            if (device.size() == 16)
                addSealed(name, Id::fromBytes(device), sealed["sealed"].asBytes().value_or(""));
        }
        return true;
    }

    void addSealed(const std::string &name, const Id &device, const std::string &sealed)
    {
        const auto found = m_epochs.find(name);
        if (found != m_epochs.end())
            m_result.epochs[found->second].sealed.emplace(device, sealed);
    }

    bool adopt(const ControlRecord &record)
    {
        for (const Value &item : record.body["entries"].list()) {
            const auto stream = streamFromBytes(item["stream"].asBytes().value_or(""));
            const auto seq = item["seq"].asInt();
            const auto hash = Hash::fromBytes(item["hash"].asBytes().value_or(""));
            if (stream && seq && hash)
                m_result.adopted.emplace(EntryId{*stream, *seq}, *hash);
        }
        return true;
    }

    Hash m_root;
    RecordGraph m_graph;
    std::size_t m_place = 0; // of the record at hand
    RigMembers m_result;
    std::map<std::string, std::size_t> m_epochs; // by name
    std::map<Id, Revoked> m_revoked;
    std::set<std::size_t> m_standing;
    bool m_fixed = false;
};

} // namespace

const Member *RigMembers::find(const Id &device) const
{
    const auto found = members.find(device);
    return found == members.end() ? nullptr : &found->second;
}

std::size_t RigMembers::owners() const
{
    return static_cast<std::size_t>(std::count_if(members.begin(), members.end(), [](const auto &item) {
        return item.second.role() == SyncRole::Owner;
    }));
}

RigMembers membersFrom(const Id &space, const Hash &root, std::vector<ControlRecord> records)
{
    std::erase_if(records, [&](const ControlRecord &record) { return record.space != space; });
    return Evaluation(space, root, records).run();
}

Result<RigMembers> membersOf(Logbook &book, const Id &space)
{
    const auto rigs = sharedRigs(book);
    const auto stored = controlsOf(book, space);
    if (!rigs || !stored)
        return rigs ? stored.error() : rigs.error();
    const auto rig =
        std::find_if(rigs->begin(), rigs->end(), [&](const auto &item) { return item.first == space; });
    if (rig == rigs->end())
        return Error{Errc::NotFound, "this rig is not shared", space.shortText(), "share it first"};
    std::vector<ControlRecord> records;
    for (const std::string &bytes : *stored) {
        Result<ControlRecord> record = readKeptControl(bytes);
        if (!record)
            return Error{Errc::Corrupt, "a stored record of who belongs to this rig is damaged",
                         space.shortText(), "run `snugwalk check`"};
        records.push_back(std::move(record).value());
    }
    return membersFrom(space, rig->second, std::move(records));
}

} // namespace snugwalk
