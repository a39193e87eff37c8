// SPDX-License-Identifier: Apache-2.0
// Sharing a rig: who belongs to it, with which role, and the keys they read it with.
#pragma once

#include "sync/members.hpp"

namespace snugwalk {

/// What a device needs to take part: all of it follows from the device's key.
struct Keys {
    explicit Keys(const DeviceKey &key) : device(key), pair(SealPair::of(key)) {}
    DeviceKey device;
    SealPair pair;
};

/// The keys of the rig that this device can open, by name, and the one to seal with (the latest; empty if
/// none).
struct RigKeys {
    std::map<std::string, Secret> all;
    std::string latest;
};
[[nodiscard]] RigKeys openKeys(const RigMembers &members, const Keys &keys);

/// The record that founded a shared rig. `NotFound` when it is not shared.
[[nodiscard]] Result<Hash> rootOf(Logbook &book, const Id &rig);

/// Begins to share a rig; this device is its first owner. `Conflict` when it is shared already, `NotFound`
/// when there is no such rig.
[[nodiscard]] Status shareRig(Logbook &book, const Keys &keys, const Id &rig);

struct NewDevice {
    std::string publicKey; ///< Ed25519
    std::string sealKey;   ///< X25519
    std::string name;
    SyncRole role = SyncRole::Helper;
    std::string until; ///< a date, only a hint to the app
};

/// Enrolls a device, or changes the role of one that belongs already. `Unsupported` unless this device is an
/// owner's; `Conflict` for the last owner.
[[nodiscard]] Status enrollDevice(Logbook &book, const Keys &keys, const Id &rig, const NewDevice &device);

/// From now on nothing of that device counts but what has arrived here; the others get a new key. What it has
/// read already it keeps: nothing can take that back. `NotFound`, `Conflict` for the last owner.
[[nodiscard]] Status revokeDevice(Logbook &book, const Keys &keys, const Id &rig, const Id &device,
                                  const std::string &reason);

/// Takes over entries that were set aside. `NotFound` for one that was not.
[[nodiscard]] Status adoptEntries(Logbook &book, const Keys &keys, const Id &rig,
                                  const std::vector<EntryId> &entries);

/// A second owner that lives on paper: its 24 words are given back and kept nowhere.
[[nodiscard]] Result<std::string> enrollPaperOwner(Logbook &book, const Keys &keys, const Id &rig,
                                                   const std::string &name);
/// The key behind such words.
[[nodiscard]] Result<DeviceKey> keyFromWords(std::string_view words);

/// Judges again what a new record may have changed, if it has not been done yet.
[[nodiscard]] Result<ReceiveCount> settleRoles(Logbook &book, const Id &rig);

} // namespace snugwalk
