// SPDX-License-Identifier: Apache-2.0
// Signed records of who belongs to a rig: founding, enrolling, changing a role, revoking, new keys, adopting.
#pragma once

#include <string>
#include <vector>

#include "base/time.hpp"
#include "base/value.hpp"
#include "keys/hash.hpp"
#include "sync/seal.hpp"

namespace snugwalk {

inline constexpr std::size_t maxControlBytes = std::size_t{256} * 1024;
inline constexpr std::size_t maxSeen = 64; ///< records that one names as seen
/// Of one device, so that a member cannot fill the others: far beyond a rig's life, lowest counters first.
inline constexpr std::size_t maxControlsADevice = 4096;
inline constexpr std::size_t maxControlBytesADevice = std::size_t{16} * 1024 * 1024;

/// What a record does: `found`, `enroll` (also a change of role), `revoke`, `epoch`, `adopt`. Others are of a
/// newer version: kept, forwarded, without effect here.
struct ControlRecord {
    Hash hash; ///< of the whole record
    Id space;
    Id signer;             ///< device
    std::string publicKey; ///< the signer's
    std::int64_t counter = 0;
    Hash prev;              ///< the signer's record before; zeros for its first
    std::vector<Hash> seen; ///< the latest records that the signer knew, sorted
    LocalTime at;
    std::string action;
    Value body;
};

/// Signs; `hash`, `signer` and `publicKey` are filled in by it.
struct SignedControl {
    ControlRecord record;
    std::string bytes;
};
[[nodiscard]] SignedControl signControl(const DeviceKey &key, ControlRecord record);

/// Size, shape, strict CBOR, ranges, the signer's name, the signature. `Corrupt`, `OutOfRange`.
[[nodiscard]] Result<ControlRecord> readControl(std::string_view bytes);
/// The same for a record that was verified when it was kept.
[[nodiscard]] Result<ControlRecord> readKeptControl(std::string_view bytes);

} // namespace snugwalk
