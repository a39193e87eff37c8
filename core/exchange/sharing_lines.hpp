// SPDX-License-Identifier: Apache-2.0
// Who shares a rig, and which signed file carried which entry: sharing.jsonl, a line a thing, out and in.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "logbook/receive.hpp"

namespace snugwalk {

/// A run of entries of one stream.
struct EntryRun {
    StreamId stream;
    std::int64_t first = 0;
    std::int64_t last = 0;
};

struct CarriedFile {
    SegmentFacts facts;
    std::string publicKey;         ///< of the stream's device
    std::string bytes;             ///< as they were signed
    std::vector<EntryRun> entries; ///< in the log that came with it; empty for one that could not be opened
};

struct SharedRecord {
    Id rig;
    Hash hash;
    std::string bytes; ///< as they were signed
};

/// Another entry under the id of one in the log.
struct TwinEntry {
    EntryId id;
    std::string bytes;
    Hash file; ///< that carried it, zeros for none
};

/// What makes one logbook of a rig out of several: all of it public to the rig's members, no private key in
/// it.
struct Sharing {
    std::vector<std::pair<Id, Hash>> rigs; ///< with the record that founded each
    std::vector<SharedRecord> records;
    std::vector<CarriedFile> files;
    std::vector<TwinEntry> twins;
    [[nodiscard]] bool isEmpty() const { return rigs.empty() && twins.empty(); }
};

/// What the logbook keeps of shared rigs. \param rig null for all.
[[nodiscard]] Result<Sharing> sharingOf(Logbook &book, const Id &rig);

/// The lines, each with a line feed; after them, for reading only, a line for each member and each entry that
/// is set aside.
[[nodiscard]] Result<std::string> sharingText(Logbook &book, const Sharing &sharing);

inline constexpr std::size_t maxSharingLine = std::size_t{20} * 1024 * 1024;

/// Adds one line. Signatures are verified, and what the line shows must be what its bytes say.
/// \returns `Corrupt`, `OutOfRange`. A line of a kind that a newer version wrote, or for reading, adds
/// nothing.
[[nodiscard]] Status addSharingLine(std::string_view line, Sharing &sharing);

/// Keeps it in the logbook and judges every entry of the rigs anew. Call within a transaction, once the
/// entries are in. Where this device has the rig's key, files are opened and compared with the entries that
/// are said to be in them. They count as not opened: the next exchange with the key opens them and takes in
/// what is missing. \returns `Conflict` for a rig that is shared here with another beginning, `Corrupt`.
[[nodiscard]] Status takeSharing(Logbook &book, const Sharing &sharing);

} // namespace snugwalk
