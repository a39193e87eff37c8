// SPDX-License-Identifier: Apache-2.0
// Where sharing stands, as a value: stores, devices, what waits, what people wrote differently.
#pragma once

#include "logbook/conflicts.hpp"
#include "sync/members.hpp"
#include "sync_places.hpp"
#include "walk/walk.hpp"

namespace snugwalk {

struct KnownStore {
    SyncPlace place;
    std::int64_t waiting = 0; ///< entries of shared rigs that came or were written since
};

/// With what tells people which thing it is about.
struct ContestedThing {
    Conflict conflict;
    Value doc; ///< the thing as it is shown now
};

struct WaitingAside {
    SetAside item;
    Value doc; ///< the entry's fields
};

struct SyncState {
    std::vector<KnownStore> stores;
    Id rig;               ///< null without one
    bool shared = false;  ///< the rig
    bool joining = false; ///< some rig is shared with this logbook and not here yet
    Id self;
    std::optional<SyncRole> role; ///< of this device for the rig
    std::vector<Member> members;  ///< by name, those who were revoked last
    std::int64_t unsent = 0;      ///< entries of the rig that were given to no store yet
    std::vector<Photo> elsewhere; ///< whose original is not here
    std::vector<ContestedThing> conflicts;
    std::vector<WaitingAside> aside;
};

/// Reads; the worker's work. \param places none when null
[[nodiscard]] Result<SyncState> readSyncState(Logbook &book, SyncPlaces *places, const Id &rig);

/// Entries of all shared rigs that this logbook has.
[[nodiscard]] Result<std::int64_t> carriedEntries(Logbook &book);

} // namespace snugwalk
