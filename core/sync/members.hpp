// SPDX-License-Identifier: Apache-2.0
// Who belongs to a rig, worked out of its control records: the same records in any order give the same
// answer.
#pragma once

#include <map>
#include <set>

#include "logbook/receive.hpp"
#include "sync/control.hpp"
#include "sync/roles.hpp"

namespace snugwalk {

/// The last file of a stream that still counts.
struct Cut {
    std::int64_t counter = 0;
    Hash hash;
};
using Cuts = std::map<StreamId, Cut>;

/// A role from one record to the next. `until` are the streams' ends under the role before.
struct RoleSpan {
    std::optional<SyncRole> role; ///< nothing once revoked
    Cuts until;
};

struct Member {
    Id device;
    std::string publicKey;
    std::string sealKey;
    std::string name;
    std::string accessUntil; ///< a date as people gave it, empty without one; a hint only
    std::string reason;      ///< of the revocation
    LocalTime since;
    std::vector<RoleSpan> standings; ///< oldest first, never empty
    [[nodiscard]] std::optional<SyncRole> role() const { return standings.back().role; }
};

/// A key of the rig, sealed to each member.
struct Epoch {
    std::string name;
    std::map<Id, std::string> sealed;
};

struct RigMembers {
    Id space;
    std::map<Id, Member> members;
    std::vector<Epoch> epochs;            ///< in order; the last one seals
    std::map<EntryId, Hash> adopted;      ///< entries an owner took over, by the hash of their bytes
    std::vector<ControlRecord> effective; ///< in the order that counts
    std::vector<ControlRecord> idle;      ///< signed by nobody who may, or of a newer version

    [[nodiscard]] const Member *find(const Id &device) const;
    [[nodiscard]] std::size_t owners() const;
};

/// Two passes over the records in one total order: by depth among those they have seen, then by hash. The
/// first finds the revocations, whose cuts bind the second, so that a revoked owner cannot date back. Of an
/// enrollment and a revocation that did not know of each other the revocation stands; the last owner stays.
[[nodiscard]] RigMembers membersFrom(const Id &space, const Hash &root, std::vector<ControlRecord> records);

/// Verifies and evaluates what the logbook keeps of a shared rig. `NotFound` when it is not shared.
[[nodiscard]] Result<RigMembers> membersOf(Logbook &book, const Id &space);

/// Whether each entry of the rig's segments is admitted, as the records and segments stand now.
[[nodiscard]] Judge judgeOf(const RigMembers &members, const std::vector<KeptSegment> &segments);

} // namespace snugwalk
