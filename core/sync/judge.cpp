// SPDX-License-Identifier: Apache-2.0
// Whether an entry is admitted: its signer's role now, or the role it had when the file was sent.
#include <memory>

#include "sync/members.hpp"

namespace snugwalk {
namespace {

// Files of one stream that count under a cut: from the last one back, hash by hash.
class Chains {
public:
    explicit Chains(const std::vector<KeptSegment> &segments)
    {
        for (const KeptSegment &segment : segments)
            m_prev[segment.facts.hash] = segment.facts.prev;
    }
    [[nodiscard]] const std::set<Hash> &to(const Hash &last)
    {
        const auto [at, isNew] = m_chains.try_emplace(last);
        if (!isNew)
            return at->second;
        Hash hash = last;
        for (auto found = m_prev.find(hash); found != m_prev.end() && at->second.insert(hash).second;
             found = m_prev.find(hash))
            hash = found->second;
        return at->second;
    }

private:
    std::map<Hash, Hash> m_prev;
    std::map<Hash, std::set<Hash>> m_chains;
};

std::optional<std::string> judged(const RigMembers &members, Chains &chains, const KeptSegment &segment,
                                  const Entry &entry)
{
    const auto adopted = members.adopted.find(entry.id);
    if (adopted != members.adopted.end() && adopted->second == blake2b(canonicalBytes(entry)))
        return std::nullopt;
    const Member *signer = members.find(segment.facts.stream.device);
    if (signer == nullptr)
        return "written by a device that does not belong to this rig";
    const bool isCarried = entry.id.stream.device != segment.facts.stream.device;
    std::optional<std::string> reason = "written after its device was revoked";
    for (std::size_t i = signer->standings.size(); i-- > 0;) {
        const RoleSpan &standing = signer->standings[i];
        if (i + 1 < signer->standings.size()) {
            const Cuts &until = signer->standings[i + 1].until;
            const auto cut = until.find(segment.facts.stream);
            if (cut == until.end() || chains.to(cut->second.hash).count(segment.facts.hash) == 0)
                continue;
        }
        if (!standing.role)
            continue;
        auto why = isCarried && *standing.role != SyncRole::Owner
                       ? std::optional<std::string>("carried for another device by one that is no owner")
                       : outOfRole(*standing.role, members.space, entry);
        if (!why)
            return why;
        if (i + 1 == signer->standings.size())
            reason = why;
    }
    return reason;
}

} // namespace

Judge judgeOf(const RigMembers &members, const std::vector<KeptSegment> &segments)
{
    auto chains = std::make_shared<Chains>(segments);
    return [members, chains](const KeptSegment &segment, const Entry &entry) {
        return judged(members, *chains, segment, entry);
    };
}

} // namespace snugwalk
