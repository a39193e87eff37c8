// SPDX-License-Identifier: Apache-2.0
// A file of entries: signed by its stream, sealed to the rig's members, chained to the file before.
#pragma once

#include <string>
#include <vector>

#include "logbook/receive.hpp"
#include "sync/seal.hpp"

namespace snugwalk {

inline constexpr std::size_t maxSegmentBytes = std::size_t{8} * 1024 * 1024;
inline constexpr std::int64_t segmentVersion = 1;

/// Names a key of a rig without telling it: 8 bytes.
[[nodiscard]] std::string epochName(const Secret &key);

/// What the outside of a segment says.
struct SegmentHead {
    SegmentFacts facts;
    std::string publicKey; ///< of the signer, whose device id it hashes to
    std::int64_t count = 0;
    std::string epoch;       ///< `epochName` of the key
    std::int64_t reader = 1; ///< the lowest version that can open it
    LocalTime sealed;        ///< by the writer's clock
    std::int64_t plainSize = 0;
};

struct SealedSegment {
    SegmentFacts facts;
    std::string bytes;
};

/// \param facts without their hash
/// \returns `OutOfRange` over 10,000 entries or 4 MiB, errors of `packEntries`.
[[nodiscard]] Result<SealedSegment> sealSegment(const DeviceKey &key, const Secret &epoch, SegmentFacts facts,
                                                const std::vector<IncomingEntry> &entries,
                                                const LocalTime &now);

/// Cheap to dear: size, outer shape, strict CBOR, ranges, the signer's name, the signature. Nothing is
/// decrypted. \returns `Corrupt`; `OutOfRange` over a limit.
[[nodiscard]] Result<SegmentHead> readSegmentHead(std::string_view bytes);

/// Decrypts, inflates within the limit, reads the entries strictly.
/// \returns `Unsupported` when a newer version wrote it, `Corrupt`.
[[nodiscard]] Result<std::vector<IncomingEntry>> openSegment(std::string_view bytes, const Secret &epoch);

} // namespace snugwalk
